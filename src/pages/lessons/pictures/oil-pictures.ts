/** Pictures about the oil, each drawn from the numbers of its lesson. */
import { quantities, type LessonFacts } from '../../../../sim/index.ts';
import type { Mark, Picture } from '../../../charts/pictures/picture.ts';
import type { Sheet } from './heat-pictures.ts';
import { bars, forceArrow, line, outline, rect, words } from './marks.ts';

const ML = 1e-6;

/** Two vapour pressures that add up to the air's, below the boiling point of either. */
export function pressuresAddUp(facts: LessonFacts['two-liquids'], sheet: Sheet): Picture {
  const { width, height, text, reader } = sheet;
  const q = quantities(reader);
  const { at_K, waterAt_Pa, oilAt_Pa, air_Pa, together_K, water_K } = facts;
  const low = 353.15;
  const high = at_K.at(-1) ?? 378.15;
  const shown = at_K.map((T, index) => ({ T, index })).filter(({ T }) => T >= low);
  const most = 1.25 * air_Pa;
  const [left, right, top, bottom] = [text, width - text, 1.2 * text, height - 3.2 * text];
  const x = (T: number) => left + ((T - low) / (high - low)) * (right - left);
  const y = (p: number) => bottom - (Math.min(p, most) / most) * (bottom - top);
  const Ts = shown.map(({ T }) => T);
  const curve = (values: readonly number[]) => shown.map(({ index }) => values[index] ?? 0);
  const sum = curve(waterAt_Pa).map((water, index) => water + (curve(oilAt_Pa)[index] ?? 0));
  const together = x(together_K);
  return {
    width,
    height,
    says: `At ${q.temperature(together_K, { decimals: 1 })} the pressures of water and oil add up to the air's; water alone needs ${q.temperature(water_K, { decimals: 1 })}.`,
    marks: [
      outline(`M${left},${top}V${bottom}H${right}`, 1.25),
      { tag: 'path', d: `M${left},${y(air_Pa)}H${right}`, stroke: 'ink', width: 2, dash: '8 5' },
      words(left + 0.4 * text, y(air_Pa) - 0.5 * text, `air ${q.pressure(air_Pa)}`, 'start', 'ink', true),
      line(Ts, curve(waterAt_Pa), x, y, 'water', 0.18 * text, '4 5'),
      line(Ts, curve(oilAt_Pa), x, y, 'oil', 0.2 * text, '12 5'),
      line(Ts, sum, x, y, 'ink', 0.2 * text),
      words(
        x(low) + 0.6 * text,
        y(waterAt_Pa[shown[0]?.index ?? 0] ?? 0) + 1.9 * text,
        'water',
        'start',
        'water',
        true,
      ),
      words(x(low) + 0.6 * text, y(oilAt_Pa[shown[0]?.index ?? 0] ?? 0) - 0.6 * text, 'oil', 'start', 'oil', true),
      words(x(low) + 0.6 * text, y(sum[0] ?? 0) - 0.9 * text, 'together', 'start', 'ink', true),
      outline(`M${together},${y(air_Pa)}V${bottom}`, 1.6, 'copper'),
      outline(`M${x(water_K)},${y(air_Pa)}V${bottom}`, 1.2, 'water'),
      words(
        together - 0.3 * text,
        bottom + 1.4 * text,
        q.temperature(together_K, { decimals: 1 }),
        'end',
        'copper',
        true,
      ),
      words(
        x(water_K) + 0.3 * text,
        bottom + 1.4 * text,
        q.temperature(water_K, { decimals: 1 }),
        'start',
        'water',
        true,
      ),
      words(together - 0.3 * text, bottom + 2.7 * text, 'together', 'end'),
      words(x(water_K) + 0.3 * text, bottom + 2.7 * text, 'water', 'start'),
    ],
  };
}

/** Three drops in water: what pushes each up, and what pulls it down. */
export function dropsWithForces(facts: LessonFacts['float-or-sink'], sheet: Sheet): Picture {
  const { width, height, text, reader } = sheet;
  const q = quantities(reader);
  const middle = height / 2 - 0.5 * text;
  const longest = 0.5 * (height - 9 * text);
  /** Differences are small beside the weights, so they are drawn larger than they are. */
  const stretch = 3;
  const drops = [
    ['lavender', facts.lavender_kg_m3],
    ['clove', facts.clove_kg_m3],
    ['both mixed', facts.mixed_kg_m3],
  ] as const;
  return {
    width,
    height,
    says: drops
      .map(
        ([name, oil]) =>
          `${name}: ${oil < facts.water_kg_m3 ? 'pushed up' : 'pulled down'} by ${q.density(Math.abs(facts.water_kg_m3 - oil))}.`,
      )
      .join(' '),
    marks: [
      rect(0, 2.4 * text, width, height - 5.4 * text, 'water', 0.16),
      ...drops.flatMap(([name, oil], index): readonly Mark[] => {
        const x = ((index + 0.5) * width) / 3;
        const more = (stretch * (oil - facts.water_kg_m3)) / facts.water_kg_m3;
        const r = 1.3 * text;
        const net = facts.water_kg_m3 - oil;
        const way = Math.abs(net) < facts.least_kg_m3 ? 'hardly moves' : net > 0 ? 'rises' : 'sinks';
        return [
          words(x, 1.6 * text, name, 'middle', 'ink', true),
          { tag: 'circle', cx: x, cy: middle, r, fill: 'oil-tint', stroke: 'oil', width: 1.6 },
          forceArrow(x, middle - r, -longest * 0.75, text, 'water'),
          forceArrow(x, middle + r, longest * 0.75 * (1 + more), text, 'copper'),
          words(x, height - 1.7 * text, way, 'middle', 'ink', true),
        ];
      }),
      words(width / 2, height - 0.3 * text, 'up: push of the water · down: weight', 'middle', 'ink-muted'),
    ],
  };
}

/** The three jars to scale, with the oil that each loses. */
export function jars(facts: LessonFacts['drops-rise'], sheet: Sheet): Picture {
  const { width, height, text, reader } = sheet;
  const q = quantities(reader);
  const shapes = [
    { name: 'tall', bore: 0.05, high: 0.4, lost: facts.tallLost },
    { name: 'wide', bore: 0.1, high: 0.1, lost: facts.wideLost },
    { name: 'tiny', bore: 0.035, high: 0.1, lost: facts.tinyLost },
  ];
  const floor = height - 3.2 * text;
  const scale = Math.min((floor - 1.2 * text) / 0.4, width / 0.4);
  return {
    width,
    height,
    says: shapes.map(({ name, lost }) => `The ${name} jar loses ${q.share(lost, { decimals: 1 })}.`).join(' '),
    marks: shapes.flatMap(({ name, bore, high, lost }, index): readonly Mark[] => {
      const x = ((index + 0.5) * width) / 3;
      const [wide, tall] = [bore * scale, high * scale];
      return [
        rect(x - wide / 2, floor - tall * 0.92, wide, tall * 0.92, 'water', 0.25),
        rect(x - wide / 2, floor - tall * 0.92, wide, Math.max(2, tall * 0.06), 'oil-tint'),
        outline(`M${x - wide / 2},${floor - tall}V${floor}H${x + wide / 2}V${floor - tall}`),
        forceArrow(x, floor - 0.75 * tall, Math.min(0.5 * tall, (1.2 * text * (0.1 / bore) ** 2) / 2), text, 'water'),
        words(x, floor + 1.4 * text, name, 'middle'),
        words(x, floor + 2.7 * text, `${q.share(lost, { decimals: 1 })} lost`, 'middle', 'oil', true),
      ];
    }),
  };
}

/** Oil of the two boils, by the clock and by the water. */
export function twoBoils(facts: LessonFacts['gentle-or-hard'], sheet: Sheet): Picture {
  const { text, width, height, reader } = sheet;
  const q = quantities(reader);
  const bar = (name: string, value: number, isHatched: boolean) => ({
    name,
    value,
    says: q.oilVolume(value * ML),
    fill: 'oil' as const,
    isHatched,
  });
  const time = q.time(60 * Math.round(facts.time_s / 60));
  return {
    width,
    height,
    says: `At ${time} and after ${q.water(facts.water_kg)}: oil of the gentle and of the hard boil.`,
    marks: bars(
      [
        bar(`gentle, at ${time}`, facts.gentleByTime_mL, false),
        bar(`hard, at ${time}`, facts.hardByTime_mL, true),
        bar(`gentle, after ${q.water(facts.water_kg)}`, facts.gentleByWater_mL, false),
        bar(`hard, after ${q.water(facts.water_kg)}`, facts.hardByWater_mL, true),
      ],
      0.5 * text,
      0,
      width,
      text,
    ),
  };
}

/** What nine tenths of the oil cost, and what the last tenth. */
export function lastTenth(facts: LessonFacts['when-to-stop'], sheet: Sheet): Picture {
  const { text, width, height, reader } = sheet;
  const q = quantities(reader);
  return {
    width,
    height,
    says: `Nine tenths took ${q.energy(facts.energyNine_J)}, the last tenth ${q.energy(facts.energyRest_J)}.`,
    marks: bars(
      [
        { name: 'nine tenths of the oil', value: 0.9, says: q.share(0.9), fill: 'oil' },
        {
          name: 'their gas',
          value: facts.energyNine_J / (facts.energyNine_J + facts.energyRest_J),
          says: q.energy(facts.energyNine_J),
          fill: 'copper',
        },
        { name: 'the last tenth', value: 0.1, says: q.share(0.1), fill: 'oil', isHatched: true },
        {
          name: 'its gas',
          value: facts.energyRest_J / (facts.energyNine_J + facts.energyRest_J),
          says: q.energy(facts.energyRest_J),
          fill: 'copper',
          isHatched: true,
        },
      ],
      0.5 * text,
      0,
      width,
      text,
    ),
  };
}

/** Oil collected with and without returning the water, and what stays in it. */
export function withReturn(facts: LessonFacts['water-back'], sheet: Sheet): Picture {
  const { text, width, height, reader } = sheet;
  const q = quantities(reader);
  const inWater = (facts.oilWithout_mL * facts.inWater) / (1 - facts.inWater);
  const fine = (mL: number) => q.oilVolume(mL * ML, { decimals: 2 });
  return {
    width,
    height,
    says: `Water kept: ${fine(facts.oilWithout_mL)} of oil and ${fine(inWater)} in the water. Water returned: ${fine(facts.oilWith_mL)}.`,
    marks: bars(
      [
        {
          name: 'water kept: oil in the jar',
          value: facts.oilWithout_mL,
          says: fine(facts.oilWithout_mL),
          fill: 'oil',
        },
        { name: 'water kept: oil in the water', value: inWater, says: fine(inWater), fill: 'water', isHatched: true },
        { name: 'water returned: oil in the jar', value: facts.oilWith_mL, says: fine(facts.oilWith_mL), fill: 'oil' },
      ],
      0.5 * text,
      0,
      width,
      text,
    ),
  };
}
