/** Pictures about the oil, each drawn from the numbers of its lesson. */
import { columnAt, curveAt, quantities, type LessonFacts, type RunResult } from '../../../../sim/index.ts';
import type { Mark, Picture } from '../../../charts/pictures/picture.ts';
import type { Sheet } from './heat-pictures.ts';
import { bars, forceArrow, line, outline, rect, words } from './marks.ts';

const ML = 1e-6;
/** The picture of the two pressures begins at 80 °C. */
export const PICTURE_FROM_K = 353.15;

/** Two vapour pressures that add up to the air's, below the boiling point of either. */
export function pressuresAddUp(facts: LessonFacts['two-liquids'], sheet: Sheet): Picture {
  const { width, height, text, reader, mark } = sheet;
  const q = quantities(reader);
  const { at_K, waterAt_Pa, oilAt_Pa, air_Pa, together_K, water_K } = facts;
  const low = PICTURE_FROM_K;
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
  const now_K = low + mark * (together_K - low);
  const at = (values: readonly number[]) => curveAt({ at_s: Ts, values }, now_K);
  const [water, both] = [at(curve(waterAt_Pa)), at(sum)];
  const isThere = mark >= 1;
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
      rect(x(now_K) - 0.45 * text, y(water), 0.9 * text, bottom - y(water), 'water', 0.75),
      rect(x(now_K) - 0.45 * text, y(both), 0.9 * text, Math.max(1, y(water) - y(both)), 'oil', 0.95),
      outline(`M${x(water_K)},${y(air_Pa)}V${bottom}`, 1.2, 'water'),
      words(
        Math.max(x(now_K) - 0.3 * text, left + 3.5 * text),
        bottom + 1.4 * text,
        q.temperature(now_K, { decimals: 1 }),
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
      ...(isThere ? [words(together - 0.3 * text, bottom + 2.7 * text, 'together', 'end')] : []),
      words(x(water_K) + 0.3 * text, bottom + 2.7 * text, 'water', 'start'),
    ],
  };
}

/** A drop that differs so much from water goes as far as the picture lets it. */
const FAR_kg_m3 = 60;

/** Three drops in water: what pushes each up, and what pulls it down. */
export function dropsWithForces(facts: LessonFacts['float-or-sink'], sheet: Sheet): Picture {
  const { width, height, text, reader, mark } = sheet;
  const q = quantities(reader);
  const rest = height / 2 - 0.5 * text;
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
        const middle = rest - mark * Math.min(1, Math.max(-1, net / FAR_kg_m3)) * 1.2 * text;
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

const oilAt_mL = ({ record, summary }: RunResult, time_s: number): number =>
  columnAt(record, 'oilCollected_kg', time_s) / (summary.oilDensity_kg_m3 ?? NaN) / ML;

/** When so much water had come over, s. */
function timeOfWater({ record, summary }: RunResult, water_kg: number): number {
  const { time_s, hydrosol_kg, returned_kg } = record.columns;
  for (let row = 0; row < record.rows; row++)
    if ((hydrosol_kg[row] as number) + (returned_kg[row] as number) >= water_kg) return time_s[row] as number;
  return summary.end_s;
}

/** Oil of the two boils, by the clock and by the water. */
export function twoBoils(runs: readonly RunResult[], facts: LessonFacts['gentle-or-hard'], sheet: Sheet): Picture {
  const { text, width, height, reader, mark } = sheet;
  const q = quantities(reader);
  const bar = (name: string, value: number, isHatched: boolean) => ({
    name,
    value,
    says: q.oilVolume(value * ML),
    fill: 'oil' as const,
    isHatched,
  });
  const time = q.time(60 * Math.round((mark * facts.time_s) / 60));
  const water = q.water(mark * facts.water_kg);
  const byTime = (run: RunResult | undefined) => (run ? oilAt_mL(run, mark * facts.time_s) : 0);
  const byWater = (run: RunResult | undefined) => (run ? oilAt_mL(run, timeOfWater(run, mark * facts.water_kg)) : 0);
  const [gentle, hard] = runs;
  return {
    width,
    height,
    says: `At ${q.time(60 * Math.round(facts.time_s / 60))} and after ${q.water(facts.water_kg)}: oil of the gentle and of the hard boil.`,
    marks: bars(
      [
        bar(`gentle, at ${time}`, byTime(gentle), false),
        bar(`hard, at ${time}`, byTime(hard), true),
        bar(`gentle, after ${water}`, byWater(gentle), false),
        bar(`hard, after ${water}`, byWater(hard), true),
      ],
      0.5 * text,
      0,
      width,
      text,
      [facts.gentleByTime_mL, facts.hardByTime_mL, facts.gentleByWater_mL, facts.hardByWater_mL],
    ),
  };
}

/** What nine tenths of the oil cost, and what the last tenth. */
export function lastTenth(run: RunResult, facts: LessonFacts['when-to-stop'], sheet: Sheet): Picture {
  const { text, width, height, reader, mark } = sheet;
  const q = quantities(reader);
  const at_s = mark * facts.end_s;
  const oil = columnAt(run.record, 'oilCollected_kg', at_s) / run.summary.oilCollected_kg;
  const gas_J = columnAt(run.record, 'fuelEnergy_J', at_s);
  const all_J = facts.energyNine_J + facts.energyRest_J;
  const [nineGas_J, restGas_J] = [Math.min(gas_J, facts.energyNine_J), Math.max(0, gas_J - facts.energyNine_J)];
  return {
    width,
    height,
    says: `Nine tenths took ${q.energy(facts.energyNine_J)}, the last tenth ${q.energy(facts.energyRest_J)}.`,
    marks: bars(
      [
        { name: 'nine tenths of the oil', value: Math.min(0.9, oil), says: q.share(Math.min(0.9, oil)), fill: 'oil' },
        { name: 'their gas', value: nineGas_J / all_J, says: q.energy(nineGas_J), fill: 'copper' },
        {
          name: 'the last tenth',
          value: Math.max(0, oil - 0.9),
          says: q.share(Math.max(0, oil - 0.9)),
          fill: 'oil',
          isHatched: true,
        },
        { name: 'its gas', value: restGas_J / all_J, says: q.energy(restGas_J), fill: 'copper', isHatched: true },
      ],
      0.5 * text,
      0,
      width,
      text,
      [0.9],
    ),
  };
}

/** Oil that has gone with the water, dissolved or as haze. */
const waterOilAt_mL = ({ record, summary }: RunResult, time_s: number): number =>
  (columnAt(record, 'oilDissolved_kg', time_s) + columnAt(record, 'oilHaze_kg', time_s)) /
  (summary.oilDensity_kg_m3 ?? NaN) /
  ML;

/** Oil collected with and without returning the water, and what stays in it. */
export function withReturn(runs: readonly RunResult[], facts: LessonFacts['water-back'], sheet: Sheet): Picture {
  const { text, width, height, reader, mark } = sheet;
  const q = quantities(reader);
  const inWater = (facts.oilWithout_mL * facts.inWater) / (1 - facts.inWater);
  const [kept, returned] = runs;
  const oilNow = (run: RunResult | undefined) => (run ? oilAt_mL(run, mark * run.summary.end_s) : 0);
  const inWaterNow = kept ? waterOilAt_mL(kept, mark * kept.summary.end_s) : 0;
  const fine = (mL: number) => q.oilVolume(mL * ML, { decimals: 2 });
  return {
    width,
    height,
    says: `Water kept: ${fine(facts.oilWithout_mL)} of oil and ${fine(inWater)} in the water. Water returned: ${fine(facts.oilWith_mL)}.`,
    marks: bars(
      [
        { name: 'water kept: oil in the jar', value: oilNow(kept), says: fine(oilNow(kept)), fill: 'oil' },
        {
          name: 'water kept: oil in the water',
          value: inWaterNow,
          says: fine(inWaterNow),
          fill: 'water',
          isHatched: true,
        },
        { name: 'water returned: oil in the jar', value: oilNow(returned), says: fine(oilNow(returned)), fill: 'oil' },
      ],
      0.5 * text,
      0,
      width,
      text,
      [facts.oilWithout_mL, facts.oilWith_mL, inWater],
    ),
  };
}
