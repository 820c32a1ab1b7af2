/**
 * The separator close up, to scale: layer, interface, haze and both ways out; beside it a lens in which the drops of the
 * moment rise or sink, each as large as the model has it beside the others.
 */
import {
  englishReader,
  formatQuantity,
  quantities,
  separatorAt,
  type RunResult,
  type SeparatorMoment,
  type UnitSystem,
} from '../../../sim/index.ts';
import type { DataTable } from '../export/data-table.ts';
import { CHART_NAMES } from '../model/chart.ts';
import { shownUnit } from '../model/measure.ts';
import { arrow, scattered, type Mark, type Picture, type PictureFrame } from './picture.ts';

/** Drops in the lens, each for the same share of the oil. */
const DROPS = 22;
/** The largest of them fills so much of the lens. */
const LARGEST_SHARE = 0.3;
/** Movement in the lens for a second of the run, px, of a drop that moves with the water. */
const DRIFT = 0.35;
/** A millionth of haze in the water is drawn as so many dots. */
const DOTS_PER_MILLIONTH = 0.4;
const MOST_DOTS = 150;
const LINE = 17;

/** Diameters that stand for equal shares of the oil, smallest first. */
export function typicalDrops({ capture }: SeparatorMoment, count: number): readonly number[] {
  const { diameter_m, share } = capture;
  const drops: number[] = [];
  let sum = 0;
  diameter_m.forEach((d, index) => {
    sum += share[index] as number;
    while (drops.length < count && sum >= (drops.length + 0.5) / count) drops.push(d);
  });
  return drops;
}

interface Seen {
  readonly moment: SeparatorMoment;
  readonly sinks: boolean;
  readonly density_kg_m3: number | null;
  /** Oil in the kept water as haze, as a share of its mass. */
  readonly haze: number;
  /** Whether drops come at this moment. */
  readonly drips: boolean;
}

function seenAt({ scenario, record, summary }: RunResult, time_s: number): Seen {
  const moment = separatorAt(scenario, record, time_s);
  const drips = moment.water_kg_s > 0 && moment.oilRate_kg_s > 0 && moment.capture.cutSize_m > 0;
  const free = drips ? moment.oilRate_kg_s / Math.max(1e-9, moment.capture.captured) : 0;
  return {
    moment,
    sinks: summary.oilSinks,
    density_kg_m3: summary.oilDensity_kg_m3,
    haze: drips ? (free * (1 - moment.capture.captured)) / moment.water_kg_s : 0,
    drips,
  };
}

interface Words {
  readonly layer: string;
  readonly cut: string;
  readonly caught: string;
  readonly water: string;
  readonly hydrosol: string;
  readonly haze: string;
}

function wordsOf({ moment, sinks, density_kg_m3, haze }: Seen, units: UnitSystem): Words {
  const q = quantities(englishReader(units));
  const { capture } = moment;
  const fine = { hint: 'wall', significant: 2 };
  return {
    layer:
      moment.oil_kg > 0
        ? `${formatQuantity(moment.layer_m, 'm', units, fine)} thick, ${q.oil(moment.oil_kg, density_kg_m3)}`
        : 'none yet',
    cut: `over ${formatQuantity(capture.cutSize_m, 'm', units, { hint: 'cutSize_m' })}: all caught`,
    caught: `${formatQuantity(capture.captured, '1', units, { hint: 'share' })} of the oil caught`,
    water: `water ${sinks ? 'rises' : 'sinks'} ${formatQuantity(60 * moment.overflow_m_s, 'm', units, fine)}/min`,
    hydrosol: formatQuantity(moment.water_kg_s, 'kg/s', units, { hint: 'condensateRate_kg_s' }),
    haze: haze > 0 ? `haze: ${Number((1e6 * haze).toPrecision(2))} ppm` : 'clear',
  };
}

export const SEPARATOR_SAYS = 'The separator at this moment, drawn to scale, and drops of oil under a lens.';

function saysOf(seen: Seen, words: Words): string {
  const layer = `Oil layer ${words.layer}${seen.sinks ? ', at the bottom' : ''}.`;
  if (!seen.drips) return `${SEPARATOR_SAYS} ${layer} No drops come at this moment.`;
  return `${SEPARATOR_SAYS} ${layer} The ${words.water}. Drops ${words.cut}. In all, ${words.caught}. Hydrosol leaves at ${words.hydrosol}, ${words.haze}.`;
}

interface Room {
  readonly glass: { readonly x: number; readonly top: number; readonly width: number; readonly foot: number };
  readonly pxPerMetre: number;
  readonly surface: number;
  /** Left edge of the lens and of the words. */
  readonly column: number;
  readonly height: number;
}

const FUNNEL = 26;
const BELOW = 12;
/** Rim above, and crest of the water's way out, as shares of the height to the spout. */
const RIM = 1.08;
const CREST = 0.96;
const LEG = 26;

function roomIn({ scenario }: RunResult, { width, height, textScale }: PictureFrame): Room {
  const { bore_m, height_m } = scenario.separator;
  const tall = height ?? Math.round(Math.max(270, Math.min(360, 0.62 * width)) * Math.sqrt(textScale));
  const widest = 0.36 * width - LEG - 20;
  const pxPerMetre = Math.min((tall - FUNNEL - BELOW) / (RIM * height_m), widest / bore_m);
  const foot = FUNNEL + RIM * height_m * pxPerMetre;
  const glass = { x: 22, top: FUNNEL, width: bore_m * pxPerMetre, foot };
  return {
    glass,
    pxPerMetre,
    surface: foot - CREST * height_m * pxPerMetre,
    column: glass.x + glass.width + LEG + 34 * textScale,
    height: tall,
  };
}

function vessel(seen: Seen, room: Room, inletDepth_m: number): Mark[] {
  const { glass, surface, pxPerMetre } = room;
  const { x, width, top, foot } = glass;
  const right = x + width;
  const layer = Math.min(foot - surface, Math.max(seen.moment.oil_kg > 0 ? 1 : 0, seen.moment.layer_m * pxPerMetre));
  const [oilTop, interfaceY] = seen.sinks ? [foot - layer, foot - layer] : [surface, surface + layer];
  const water = seen.sinks ? [surface, foot - layer] : [interfaceY, foot];
  const [waterTop, waterFoot] = water as [number, number];
  const dots = Math.min(MOST_DOTS, Math.round(1e6 * seen.haze * DOTS_PER_MILLIONTH));
  const middle = x + width / 2;
  const stemEnd = Math.min(foot - 6, surface + inletDepth_m * pxPerMetre);
  const low = foot - 12;
  const out = right + LEG;
  const leg = seen.sinks ? `M${right} ${surface}H${out}v16` : `M${right} ${low}H${right + 14}V${surface}H${out}v16`;
  return [
    { tag: 'path', d: `M${x} ${waterTop}H${right}V${waterFoot}H${x}Z`, fill: 'water-tint' },
    ...Array.from({ length: dots }, (_, index): Mark => {
      const at = scattered(index);
      return {
        tag: 'circle',
        cx: x + 3 + at.x * (width - 6),
        cy: waterTop + 2 + at.y * Math.max(0, waterFoot - waterTop - 4),
        r: 0.9,
        fill: 'oil',
        opacity: 0.7,
      };
    }),
    { tag: 'path', d: `M${x} ${oilTop}H${right}V${oilTop + layer}H${x}Z`, fill: 'oil-tint' },
    { tag: 'path', d: `M${x} ${surface}H${right}`, stroke: seen.sinks ? 'water' : 'oil', width: 1.6 },
    ...(layer > 0 ? [{ tag: 'path', d: `M${x} ${interfaceY}H${right}`, stroke: 'oil', width: 1.2 } as const] : []),
    // The way in: a funnel and its stem.
    {
      tag: 'path',
      d: `M${middle - 14} 4L${middle - 3} ${top - 4}V${stemEnd}M${middle + 14} 4L${middle + 3} ${top - 4}V${stemEnd}`,
      stroke: 'ink',
      width: 1.1,
    },
    // The ways out: oil by the spout or the tap, water by the leg.
    { tag: 'path', d: leg, stroke: 'ink', width: 7 },
    { tag: 'path', d: leg, stroke: 'water-tint', width: 4.6 },
    ...(seen.drips ? [{ tag: 'path', d: arrow(out, surface + 20, 16), stroke: 'water', width: 1.4 } as const] : []),
    {
      tag: 'path',
      d: seen.sinks ? `M${x} ${foot - 5}h-12v8` : `M${x} ${surface - 2}l-12 6`,
      stroke: 'ink',
      width: 2.2,
    },
    { tag: 'path', d: `M${x} ${top}V${foot}H${right}V${top}`, stroke: 'ink', width: 2.2 },
  ];
}

/** Round lengths for the bar that tells the scale of the lens. */
const SHORTEST_BAR_M = 2e-5;
const BARS_M = [SHORTEST_BAR_M, 5e-5, 1e-4, 2e-4, 5e-4, 1e-3, 2e-3, 5e-3];

function lens(
  seen: Seen,
  at: { readonly x: number; readonly y: number },
  radius: number,
  frame: PictureFrame,
  time_s: number,
): Mark[] {
  const { moment, sinks } = seen;
  const drops = typicalDrops(moment, DROPS);
  const largest = drops[Math.floor(0.9 * drops.length)] ?? moment.capture.cutSize_m;
  const pxPerMetre = (LARGEST_SHARE * radius) / largest;
  const marks: Mark[] = [
    { tag: 'circle', cx: at.x, cy: at.y, r: radius, fill: 'water-tint', stroke: 'ink', width: 1.6 },
  ];
  [...drops].reverse().forEach((d, index) => {
    const r = Math.max(1, Math.min(0.34 * radius, (d * pxPerMetre) / 2));
    const speed = (d / moment.capture.cutSize_m) ** 2;
    // Up towards the layer, or off with the water.
    const net = Math.max(-1, Math.min(2, speed - 1)) * (sinks ? 1 : -1);
    const reach = radius - r - 2;
    const place = scattered(index);
    const across = (2 * place.x - 1) * reach * 0.92;
    const half = Math.sqrt(Math.max(0, reach * reach - across * across));
    const drift = frame.isCalm ? 0 : time_s * DRIFT * net;
    const along = half > 0 ? ((((place.y * 2 * half + drift) % (2 * half)) + 2 * half) % (2 * half)) - half : 0;
    const isCaught = speed >= 1;
    marks.push({
      tag: 'circle',
      cx: at.x + across,
      cy: at.y + along,
      r,
      fill: isCaught ? 'oil-tint' : 'paper',
      stroke: 'oil',
      width: isCaught ? 1.2 : 0.8,
      ...(isCaught ? {} : { dash: '2 1.5' }),
    });
    if (r > 3 && Math.abs(net) > 0.05)
      marks.push({ tag: 'path', d: arrow(at.x + across, at.y + along, net * 9), stroke: 'ink', width: 1 });
  });
  const longest = (0.9 * radius) / pxPerMetre;
  const bar = BARS_M.findLast((each) => each <= longest) ?? SHORTEST_BAR_M;
  const length = bar * pxPerMetre;
  const y = at.y + radius + 12;
  marks.push(
    { tag: 'path', d: `M${at.x - radius} ${y}v-6m0 3h${length}m0 3v-6`, stroke: 'ink', width: 1 },
    {
      tag: 'text',
      x: at.x - radius + length + 6,
      y: y + 1,
      words: formatQuantity(bar, 'm', frame.units, { hint: 'cutSize_m' }),
      fill: 'ink-muted',
    },
  );
  return marks;
}

const HALF_LETTER = 4;
const LEAST_LENS = 16;
const GREATEST_LENS = 72;
/** Under the lens its scale, beside it its words, px. */
const BAR_ROOM = 20;
const BESIDE_LENS = 152;

export function separatorPicture(result: RunResult, time_s: number, frame: PictureFrame): Picture {
  const seen = seenAt(result, time_s);
  const words = wordsOf(seen, frame.units);
  const room = roomIn(result, frame);
  const { glass, surface, column } = room;
  const line = LINE * frame.textScale;
  const right = glass.x + glass.width;
  const marks = vessel(seen, room, result.scenario.separator.inletDepth_m);
  const say = (x: number, y: number, said: string, fill: 'ink' | 'ink-muted' | 'oil' | 'water', bold = false): void => {
    marks.push({ tag: 'text', x, y, words: said, fill, bold });
  };
  const layerY = seen.sinks ? glass.foot - 4 : surface + 2;
  const wordsY = seen.sinks ? room.height - 1.6 * line : line - HALF_LETTER;
  say(column, wordsY, 'Oil layer', 'ink', true);
  say(column, wordsY + line, words.layer, 'oil');
  marks.push({
    tag: 'path',
    d: `M${column - 6} ${wordsY - HALF_LETTER}L${right - 6} ${layerY}`,
    stroke: 'ink-muted',
    width: 0.6,
  });
  const outY = seen.sinks ? line - HALF_LETTER : room.height - 2.6 * line;
  say(column, outY, 'Hydrosol leaves', 'ink', true);
  say(column, outY + line, seen.drips ? words.hydrosol : 'nothing at this moment', 'water');
  if (seen.drips) say(column, outY + 2 * line, words.haze, 'water');
  const free = { top: (seen.sinks ? 3.4 : 2.4) * line, foot: room.height - (seen.sinks ? 2.8 : 3.8) * line };
  if (!seen.drips) {
    say(column, (free.top + free.foot) / 2, 'No drops come now.', 'ink-muted');
    return { marks, width: frame.width, height: room.height, says: saysOf(seen, words) };
  }
  const told = ['Under the lens', words.water, words.cut, words.caught];
  const tall = free.foot - free.top - BAR_ROOM;
  const greatest = Math.min(GREATEST_LENS * Math.sqrt(frame.textScale), (frame.width - column) / 2);
  const across = Math.max(LEAST_LENS, Math.min(greatest, tall / 2));
  const beside = frame.width - column > 2 * across + 14 + BESIDE_LENS * frame.textScale;
  const radius = beside ? across : Math.max(LEAST_LENS, Math.min(greatest, (tall - told.length * line) / 2));
  const at = { x: column + radius, y: free.top + radius };
  marks.push(...lens(seen, at, radius, frame, time_s));
  const textX = beside ? column + 2 * radius + 14 : column;
  const textY = beside ? Math.max(free.top + 12, at.y - 1.2 * line) : at.y + radius + BAR_ROOM + line;
  const fitting = told.filter((_, index) => textY + index * line <= free.foot + 0.25 * line);
  if (fitting.length > 1)
    fitting.forEach((each, index) =>
      say(textX, textY + index * line, each, index === 0 ? 'ink' : 'ink-muted', index === 0),
    );
  return { marks, width: frame.width, height: room.height, says: saysOf(seen, words) };
}

/** Each size of drop: how fast it moves, and how much of it is caught. */
export function separatorTable(result: RunResult, time_s: number, units: UnitSystem): DataTable {
  const { speed_m_s, capture } = separatorAt(result.scenario, result.record, time_s);
  const drop = shownUnit('dropSize', units);
  const share = shownUnit('share', units);
  return {
    caption: CHART_NAMES.separator,
    rows: capture.diameter_m.length,
    columns: [
      {
        title: 'Drop',
        says: 'diameter of the drop',
        unit: drop.label,
        decimals: drop.decimals,
        values: capture.diameter_m.map((d) => drop.fromSI(d)),
      },
      {
        title: 'Speed',
        says: 'speed through the water towards the layer of oil, length a minute',
        unit: `${units === 'us' ? 'in' : 'mm'}/min`,
        decimals: 2,
        values: speed_m_s.map((v) => (60 * v) / (units === 'us' ? 0.0254 : 0.001)),
      },
      {
        title: 'Of the oil',
        says: 'share of the oil in drops of this size',
        unit: share.label,
        decimals: 2,
        values: capture.share.map((each) => share.fromSI(each)),
      },
      {
        title: 'Caught',
        says: 'share of the oil that is in drops of this size and is caught',
        unit: share.label,
        decimals: 2,
        values: capture.caught.map((each) => share.fromSI(each)),
      },
    ],
  };
}
