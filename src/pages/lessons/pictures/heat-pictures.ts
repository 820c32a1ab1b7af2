/** Pictures about heat and steam, each drawn from the run of its lesson. */
import { columnAt, quantities, rowAt, type LessonFacts, type Reader, type RunResult } from '../../../../sim/index.ts';
import { energyLedger } from '../../../charts/model/energy-ledger.ts';
import { energyDiagram, PLACE_WORDS } from '../../../charts/sankey/energy-diagram.ts';
import type { Mark, Picture } from '../../../charts/pictures/picture.ts';
import { bars, forceArrow, line, outline, person, rect, words } from './marks.ts';

export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly text: number;
  readonly reader: Reader;
  /** How far the time mark of the picture has come, 0–1. */
  readonly mark: number;
}

const MOST_POINTS = 120;

/** Temperature over the heat put in: the slope of warming, and the long flat stretch of boiling away. */
export function flatStretch(run: RunResult, facts: LessonFacts['heat-of-steam'], sheet: Sheet): Picture {
  const { width, height, text, reader, mark } = sheet;
  const q = quantities(reader);
  const { record } = run;
  const every = Math.max(1, Math.ceil(record.rows / MOST_POINTS));
  const heat: number[] = [];
  const warmth: number[] = [];
  for (let row = 0; row < record.rows; row += every) {
    heat.push((record.columns.potEnergy_J[row] as number) - (record.columns.lossEnergy_J[row] as number));
    warmth.push(record.columns.potTemperature_K[row] as number);
  }
  const total = facts.heatUp_J + facts.boilAway_J;
  const coldest = Math.min(...warmth);
  const [left, right, top, bottom] = [1.2 * text, width - text, 3.4 * text, height - 4.4 * text];
  const x = (energy: number) => left + (Math.min(energy, total) / total) * (right - left);
  const y = (T: number) => bottom - ((T - coldest) / (facts.boil_K - coldest)) * (bottom - top);
  const middle = x(facts.heatUp_J);
  const now_J = mark * total;
  const reached = heat.filter((energy) => energy <= now_J).length;
  const now = x(now_J);
  return {
    width,
    height,
    says: `Temperature against heat: it rises while ${q.energy(facts.heatUp_J)} go in, then stays while ${q.energy(facts.boilAway_J)} boil water away.`,
    marks: [
      rect(left, bottom, Math.min(now, middle) - left, 1.1 * text, 'copper', 0.5),
      rect(middle, bottom, Math.max(0, now - middle), 1.1 * text, 'copper', 0.9),
      outline(`M${left},${top - text}V${bottom}H${right}`, 1.25),
      outline(`M${middle},${top}V${bottom + 1.1 * text}`, 0.8),
      line(heat, warmth, x, y, 'ink-muted', 0.06 * text),
      line(heat.slice(0, Math.max(1, reached)), warmth.slice(0, Math.max(1, reached)), x, y, 'ink', 0.18 * text),
      words(left + 0.5 * text, top - 1.5 * text, `${q.temperature(facts.boil_K)} and no more`, 'start', 'ink', true),
      words(left, bottom + 2.5 * text, 'to heat it:'),
      words(left, bottom + 3.8 * text, q.energy(facts.heatUp_J), 'start', 'copper', true),
      words(right, bottom + 2.5 * text, 'to boil part of it away:', 'end'),
      words(right, bottom + 3.8 * text, q.energy(facts.boilAway_J), 'end', 'copper', true),
    ],
  };
}

/** Before this much of a run there is hardly a kilojoule to share out. */
const FIRST_SHARE = 0.02;

/** Where each kilojoule went by the time mark. */
export function kilojoules(run: RunResult, sheet: Sheet): Picture {
  const { width, height, text, reader, mark } = sheet;
  const q = quantities(reader);
  const ledger = energyLedger(run.record, Math.max(FIRST_SHARE, mark) * run.summary.end_s);
  const diagram = energyDiagram(ledger, {
    left: 0,
    right: width - 10 * text,
    top: 3.2 * text,
    height: Math.max(6 * text, height - 6.4 * text),
    textScale: text / 13,
  });
  const label = (energy_J: number) => q.energy(energy_J);
  const whole = energyDiagram(energyLedger(run.record, run.summary.end_s), {
    left: 0,
    right: width,
    top: 0,
    height,
    textScale: 1,
  });
  return {
    width,
    height,
    says: whole.places.map(({ place, energy_J }) => `${PLACE_WORDS[place].label}: ${label(energy_J)}.`).join(' '),
    marks: [
      ...diagram.flows.map((flow): Mark => ({
        tag: 'path',
        d: flow.path,
        stroke: flow.tint,
        width: Math.max(1, flow.width),
        opacity: 0.45,
      })),
      ...diagram.places.map((place) =>
        rect(place.x, place.top, place.width, Math.max(1, place.height), PLACE_WORDS[place.place].ink),
      ),
      ...diagram.places.flatMap(({ place, energy_J, label: at }): readonly Mark[] =>
        at.y === null || place === 'still'
          ? []
          : [
              words(at.x, at.y - 0.1 * text, PLACE_WORDS[place].label, at.anchor),
              words(at.x, at.y + 1.1 * text, label(energy_J), at.anchor, 'ink', true),
            ],
      ),
    ],
  };
}

/** Steam left along the coil at a moment, and where the last of it is gone, m. */
function steamAt(run: RunResult | undefined, time_s: number): readonly [left: readonly number[], gone_m: number] {
  if (!run) return [[], 0];
  const { cells, data } = run.record.grids.condenserVapourShare;
  const row = rowAt(run.record, time_s);
  return [
    Array.from(data.subarray(row * cells, (row + 1) * cells)),
    columnAt(run.record, 'condensingLength_m', time_s),
  ];
}

/** The two coils as ladders of segments: how much steam is left at each rung, from the vapour end. */
export function ladders(runs: readonly RunResult[], facts: LessonFacts['steam-in-the-coil'], sheet: Sheet): Picture {
  const { width, height, text, reader, mark } = sheet;
  const q = quantities(reader);
  const left = 0.5 * text;
  const across = width - 2 * left;
  const ladder = (top: number, name: string, share: readonly number[], gone_m: number): readonly Mark[] => {
    const step = across / share.length;
    const high = 2.6 * text;
    const end = left + Math.min(1, gone_m / facts.length_m) * across;
    return [
      words(left, top, name, 'start', 'ink', true),
      rect(left, top + 0.6 * text, across, high, 'water', 0.22),
      ...share.map((part, index) =>
        rect(left + index * step, top + 0.6 * text + high * (1 - part), step, high * part, 'steam', 0.9),
      ),
      outline(
        share.map((_, index) => `M${(left + (index + 1) * step).toFixed(1)},${top + 0.6 * text}v${high}`).join(''),
        0.5,
      ),
      outline(`M${left},${top + 0.6 * text}h${across}v${high}h${-across}z`),
      outline(`M${end},${top + 0.2 * text}v${high + 1.4 * text}`, 2, 'copper'),
      words(
        Math.min(end + 0.3 * text, left + across),
        top + high + 2 * text,
        `steam gone: ${q.tubeLength(gone_m)}`,
        end > width / 2 ? 'end' : 'start',
        'copper',
        true,
      ),
    ];
  };
  return {
    width,
    height,
    says: `Steam left along the coil: gone after ${q.tubeLength(facts.cold_m)} in the cold tub, ${q.tubeLength(facts.warm_m)} in the warm one.`,
    marks: [
      ...ladder(1.5 * text, `Tub at ${q.temperature(facts.coldTub_K)}`, ...steamAt(runs[0], mark * facts.coldAt_s)),
      ...ladder(
        Math.max(8.5 * text, height / 2),
        `Tub at ${q.temperature(facts.warmTub_K)}`,
        ...steamAt(runs[1], mark * facts.warmAt_s),
      ),
    ],
  };
}

/** The layers of the tub, top to bottom, at four moments from the closing of the tap. */
export function tubLayers(run: RunResult, facts: LessonFacts['tap-off'], sheet: Sheet): Picture {
  const { width, height, text, reader, mark } = sheet;
  const q = quantities(reader);
  const { cells, data } = run.record.grids.tubTemperature_K;
  const last_s = facts.escapes_s ?? facts.tooWarm_s ?? run.summary.end_s;
  const moments = [0, 1, 2, 3].map((k) => facts.closed_s + (k / 3) * (last_s - facts.closed_s));
  const now_s = facts.closed_s + mark * (last_s - facts.closed_s);
  const gap = 1.2 * text;
  const wide = (width - 3 * gap) / 4;
  const [top, bottom] = [2.2 * text, height - 3.4 * text];
  const high = (bottom - top) / cells;
  return {
    width,
    height,
    says: `The tub fills with heat from the top: at ${moments.map((time_s) => q.time(60 * Math.round(time_s / 60))).join(', ')}.`,
    marks: moments.flatMap((moment_s, index): readonly Mark[] => {
      const left = index * (wide + gap);
      const tub = outline(`M${left},${top}V${bottom}H${left + wide}V${top}`);
      // The tub of a moment fills from the one before it on.
      if (now_s < (moments[index - 1] ?? 0)) return [tub];
      const time_s = Math.min(now_s, moment_s);
      const row = rowAt(run.record, time_s);
      const layers = Array.from(data.subarray(row * cells, (row + 1) * cells));
      return [
        ...layers.map((T, layer) => {
          const warm = Math.min(1, Math.max(0, (T - 288) / 80));
          return rect(left, top + layer * high, wide, high + 0.4, 'copper', 0.08 + 0.85 * warm);
        }),
        tub,
        words(left + wide / 2, top - 0.7 * text, q.temperature(layers[0] ?? NaN), 'middle'),
        words(left + wide / 2, bottom + 1.4 * text, q.temperature(layers.at(-1) ?? NaN), 'middle'),
        words(left + wide / 2, bottom + 2.9 * text, q.time(60 * Math.round(time_s / 60)), 'middle', 'copper', true),
      ];
    }),
  };
}

/** The lid of a closed pot after a minute, with as many people on it as the steam pushes like. */
export function peopleOnLid(facts: LessonFacts['closed-outlet'], sheet: Sheet): Picture {
  const { width, height, text, reader, mark } = sheet;
  const q = quantities(reader);
  const people = Math.max(1, Math.ceil(facts.minutePeople - 1e-9));
  const now = facts.peopleAt[Math.round(mark * (facts.peopleAt.length - 1))] ?? facts.minutePeople;
  const lid = 0.5 * height;
  const [left, right] = [0.16 * width, 0.84 * width];
  const tall = Math.min(0.42 * height, (1.6 * (right - left)) / people);
  return {
    width,
    height,
    says: `After a minute the steam pushes the lid like ${q.number(facts.minutePeople, { decimals: 1 })} people who stand on it.`,
    marks: [
      ...Array.from({ length: Math.ceil(now - 1e-9) }, (_, index) => {
        const part = Math.min(1, now - index);
        return person(left + ((index + 0.5) * (right - left)) / people, lid, tall * Math.max(0.15, part));
      }).flat(),
      outline(`M${left - text},${lid}H${right + text}`, 0.3 * text),
      outline(`M${left},${lid}V${height - 3 * text}H${right}V${lid}`),
      rect(left, lid + 0.62 * (height - 3 * text - lid), right - left, 0.38 * (height - 3 * text - lid), 'water', 0.35),
      ...[0.2, 0.4, 0.6, 0.8].map((share) =>
        forceArrow(
          left + share * (right - left),
          lid + 0.3 * height,
          -0.24 * height * Math.max(0.05, now / facts.minutePeople),
          text,
          'alarm',
        ),
      ),
      words(
        width / 2,
        height - 0.8 * text,
        `${q.number(now, { decimals: 1 })} people, in the model only`,
        'middle',
        'alarm',
        true,
      ),
    ],
  };
}

/** Water left in both pots over time. */
export function waterLeft(runs: readonly RunResult[], facts: LessonFacts['dry-pot'], sheet: Sheet): Picture {
  const { reader, text, width, height, mark } = sheet;
  const q = quantities(reader);
  const [little, enough] = runs;
  const end_s = facts.dry_s ?? little?.summary.end_s ?? 0;
  const at_s = mark * end_s;
  const left = (run: RunResult | undefined, time_s: number) => (run ? columnAt(run.record, 'potWater_kg', time_s) : 0);
  return {
    width,
    height,
    says: `When the first pot is dry, the other holds ${q.water(left(enough, end_s))}.`,
    marks: bars(
      [
        { name: 'too little: at the start', value: facts.water_kg, says: q.water(facts.water_kg), fill: 'water' },
        {
          name: `too little: at ${q.time(60 * Math.round(at_s / 60))}`,
          value: left(little, at_s),
          says: q.water(left(little, at_s)),
          fill: 'alarm',
          isHatched: true,
        },
        { name: 'enough: at the start', value: facts.enough_kg, says: q.water(facts.enough_kg), fill: 'water' },
        {
          name: `enough: at ${q.time(60 * Math.round(at_s / 60))}`,
          value: left(enough, at_s),
          says: q.water(left(enough, at_s)),
          fill: 'water',
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
