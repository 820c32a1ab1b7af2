/**
 * The condenser close up, laid out straight from its vapour end: vapour thinning out, liquid gathering, the water around
 * it by shade, and arrows as long as the heat that passes each length. Length is to scale, the bore is not.
 */
import {
  condenserAt,
  formatQuantity,
  isBundle,
  isCoil,
  type CondenserMoment,
  type RunResult,
  type Scenario,
  type UnitSystem,
} from '../../../sim/index.ts';
import type { DataTable } from '../export/data-table.ts';
import { CHART_NAMES } from '../model/chart.ts';
import { shownUnit } from '../model/measure.ts';
import { arrow, scattered, type Mark, type Picture, type PictureFrame } from './picture.ts';

const LINE = 17;
/** Bore of the tube and water on either side of it, px, where the height is free. */
const BORE = 46;
const BATH = 34;
const WALL = 3;
const LEAST_BATH = 16;
/** Liquid fills so much of the bore when all has condensed. */
const FULL_OF_LIQUID = 0.4;
/** Dots of vapour where nothing has condensed yet, and their way along the tube for a second of the run, px. */
const DOTS = 320;
const DRIFT = 0.9;
/** Slices of water of one shade, and arrows of heat. */
const SLICES = 24;
const ARROWS = 12;
/** Water between these is shaded from cold to hot, as in the drawing of the still. */
const COLD_K = 283.15;
const HOT_K = 363.15;
const DEEPEST = 0.42;

const warmthOf = (temperature_K: number): number =>
  Math.min(1, Math.max(0, (temperature_K - COLD_K) / (HOT_K - COLD_K)));

const cellAtShare = (values: Float64Array, share: number): number =>
  values[Math.min(values.length - 1, Math.floor(share * values.length))] ?? 0;

interface Words {
  readonly enters: string;
  readonly leaves: string;
  readonly ends: string;
  readonly heat: string;
  readonly water: string;
}

function wordsOf(moment: CondenserMoment, { condenser }: Scenario, units: UnitSystem): Words {
  const length = (value: number) => formatQuantity(value, 'm', units, { hint: 'condensingLength_m' });
  const warm = (value: number) => formatQuantity(value, 'K', units, { decimals: 0 });
  const { coolant_K, duty_W, halfOfHeat_m, condensing_m } = moment;
  const [atVapour, atOutlet] = [coolant_K[0] ?? 0, coolant_K[coolant_K.length - 1] ?? 0];
  const each = isBundle(condenser) ? ' of each tube' : '';
  const around = isCoil(condenser) ? 'Tub' : 'Water';
  return {
    enters: `Vapour comes in at ${warm(moment.inside_K[0] ?? 0)}`,
    leaves: moment.escapes ? 'Vapour leaves the end' : `Liquid leaves at ${warm(moment.distillate_K)}`,
    ends: moment.escapes
      ? `Not all condenses in ${length(condenser.length_m)}${each}`
      : `All has condensed after ${length(condensing_m)} of ${length(condenser.length_m)}${each}`,
    heat:
      halfOfHeat_m === null
        ? ''
        : `${formatQuantity(duty_W, 'W', units)} into the water, half of it in the first ${length(halfOfHeat_m)}`,
    water:
      Math.abs(atVapour - atOutlet) < 1
        ? `${around} ${warm(atVapour)}`
        : `${around} ${warm(atVapour)} by the vapour, ${warm(atOutlet)} by the outlet`,
  };
}

export const CONDENSER_SAYS = 'The condenser at this moment, laid out straight from its vapour end.';

const saysOf = (moment: CondenserMoment, words: Words): string =>
  moment.vapour_kg_s > 0
    ? `${CONDENSER_SAYS} ${words.enters}. ${words.ends}. ${words.leaves}. ${words.heat}. ${words.water}.`
    : `${CONDENSER_SAYS} No vapour comes at this moment. ${words.water}.`;

/** Where the tube lies in the picture, px. */
interface Tube {
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly bore: number;
  readonly bath: number;
}

function tubeIn({ width, height, textScale }: PictureFrame): Tube & { readonly height: number } {
  const above = LINE * textScale * 1.6;
  const below = LINE * textScale * 3.4;
  const free = height === undefined ? BORE + 2 * BATH : Math.max(BORE / 2 + 2 * LEAST_BATH, height - above - below);
  const bore = Math.min(BORE, free / 3);
  const bath = (free - bore) / 2;
  return { left: 0, width, top: above + bath, bore, bath, height: height ?? Math.round(above + free + below) };
}

/** A box as a path. */
const box = (x: number, y: number, width: number, height: number): string => `M${x} ${y}h${width}v${height}h${-width}Z`;

function water(moment: CondenserMoment, { left, width, top, bore, bath }: Tube): Mark[] {
  const slice = width / SLICES;
  return [
    { tag: 'path', d: box(left, top - bath, width, bore + 2 * bath), fill: 'water-tint' },
    ...Array.from({ length: SLICES }, (_, index): Mark => {
      const warmth = warmthOf(cellAtShare(moment.coolant_K, (index + 0.5) / SLICES));
      return {
        tag: 'path',
        d: box(left + index * slice, top - bath, slice, bore + 2 * bath),
        fill: 'copper',
        opacity: DEEPEST * warmth,
      };
    }),
  ];
}

/** Arrows out through the wall, as long as the heat that passes there against the most that passes anywhere. */
function heat(moment: CondenserMoment, { left, width, top, bore, bath }: Tube): Mark[] {
  const most = Math.max(...moment.heat_W_m);
  if (!(most > 0)) return [];
  return Array.from({ length: ARROWS }, (_, index) => {
    const share = (index + 0.5) / ARROWS;
    const length = (bath - WALL - 4) * (Math.max(0, cellAtShare(moment.heat_W_m, share)) / most);
    const x = left + share * width;
    if (length < 4) return [];
    return [
      { tag: 'path', d: arrow(x, top - WALL, -length), stroke: 'ink', width: 1.3 },
      { tag: 'path', d: arrow(x, top + bore + WALL, length), stroke: 'ink', width: 1.3 },
    ] as const;
  }).flat();
}

function inside(moment: CondenserMoment, { left, width, top, bore }: Tube, drift: number): Mark[] {
  const { vapourShare } = moment;
  const foot = top + bore;
  const marks: Mark[] = [{ tag: 'path', d: box(left, top, width, bore), fill: 'paper' }];
  const step = width / vapourShare.length;
  const surface = (share: number): number => foot - FULL_OF_LIQUID * bore * (1 - share);
  const crest = Array.from(vapourShare, (share, cell) => `L${left + (cell + 1) * step} ${surface(share)}`).join('');
  marks.push({ tag: 'path', d: `M${left} ${foot}${crest}V${foot}Z`, fill: 'water', opacity: 0.55 });
  let dots = '';
  for (let dot = 0; dot < DOTS; dot += 1) {
    const along = (scattered(dot).x + drift / width) % 1;
    const share = along * vapourShare.length < 1 ? 1 : cellAtShare(vapourShare, along - 1 / vapourShare.length);
    // As many dots of a length as there is vapour left in it.
    if ((dot + 0.5) / DOTS > share) continue;
    const depth = surface(cellAtShare(vapourShare, along)) - top - 6;
    // Heights by squares: multiples would stand in slanting rows.
    const down = (0.618034 * dot * dot) % 1;
    if (depth > 0) dots += `M${(along * width).toFixed(1)} ${(top + 3 + down * depth).toFixed(1)}h0`;
  }
  if (dots !== '') marks.push({ tag: 'path', d: dots, stroke: 'steam', width: 2.6, round: true });
  return marks;
}

export function condenserPicture(result: RunResult, time_s: number, frame: PictureFrame): Picture {
  const { scenario, record } = result;
  const { length_m } = scenario.condenser;
  const moment = condenserAt(length_m, record, time_s);
  const words = wordsOf(moment, scenario, frame.units);
  const tube = tubeIn(frame);
  const { left, width, top, bore, bath } = tube;
  const line = LINE * frame.textScale;
  const right = left + width;
  const comes = moment.vapour_kg_s > 0;
  const marks: Mark[] = [...water(moment, tube)];
  if (comes) marks.push(...heat(moment, tube), ...inside(moment, tube, frame.isCalm ? 0 : time_s * DRIFT));
  else marks.push({ tag: 'path', d: box(left, top, width, bore), fill: 'paper' });
  marks.push({
    tag: 'path',
    d: `M${left} ${top - WALL / 2}h${width}M${left} ${top + bore + WALL / 2}h${width}`,
    stroke: 'copper',
    width: WALL,
  });
  const foot = top + bore + bath;
  const heading = line - 4;
  const below = foot + line;
  if (!comes) {
    marks.push({ tag: 'text', x: left, y: heading, words: 'No vapour comes now.', fill: 'ink-muted' });
    marks.push({ tag: 'text', x: left, y: below, words: words.water, fill: 'water' });
    return { marks, width: frame.width, height: tube.height, says: saysOf(moment, words) };
  }
  marks.push({ tag: 'text', x: left, y: heading, words: words.enters, fill: 'ink', bold: true });
  marks.push({
    tag: 'text',
    x: right,
    y: heading,
    words: words.leaves,
    fill: moment.escapes ? 'alarm' : 'ink',
    bold: true,
    anchor: 'end',
  });
  if (!moment.escapes) {
    const x = left + (width * moment.condensing_m) / length_m;
    marks.push({ tag: 'path', d: `M${x} ${top - bath}V${foot + 4}`, stroke: 'ink', width: 1.2, dash: '4 3' });
  }
  marks.push({ tag: 'text', x: left, y: below, words: words.ends, fill: moment.escapes ? 'alarm' : 'ink' });
  marks.push({ tag: 'text', x: left, y: below + line, words: words.heat, fill: 'ink-muted' });
  marks.push({ tag: 'text', x: left, y: below + 2 * line, words: words.water, fill: 'water' });
  return { marks, width: frame.width, height: tube.height, says: saysOf(moment, words) };
}

/** Each segment of the tube: where it is, what is vapour still, how warm all is, and the heat that passes. */
export function condenserTable(result: RunResult, time_s: number, units: UnitSystem): DataTable {
  const { length_m } = result.scenario.condenser;
  const moment = condenserAt(length_m, result.record, time_s);
  const cells = moment.vapourShare.length;
  const along = shownUnit('tubeLength', units);
  const share = shownUnit('share', units);
  const warm = shownUnit('temperature', units);
  const heatShown = shownUnit('heatPerLength', units);
  const column = (title: string, says: string, shown: typeof along, values: ArrayLike<number>) => ({
    title,
    says,
    unit: shown.label,
    decimals: shown.decimals,
    values: Float64Array.from(values, (value) => shown.fromSI(value)),
  });
  return {
    caption: CHART_NAMES.tube,
    rows: cells,
    columns: [
      column(
        'Along the tube',
        'end of the piece of tube, from the vapour end',
        along,
        Float64Array.from({ length: cells }, (_, cell) => ((cell + 1) * length_m) / cells),
      ),
      column('Vapour', 'share of what came in that is vapour still', share, moment.vapourShare),
      column('Inside', 'temperature inside the tube', warm, moment.inside_K),
      column('Coolant', 'temperature of the cooling water', warm, moment.coolant_K),
      column('Heat', 'heat that passes each length of tube', heatShown, moment.heat_W_m),
    ],
  };
}
