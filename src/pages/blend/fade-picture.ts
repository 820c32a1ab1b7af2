/** What of a blend is in the air and what is left, as layers over a logarithmic time axis. */
import { scaleLog } from 'd3-scale';
import { line } from 'd3-shape';
import {
  fading,
  filmOfOils,
  formatDuration,
  NOTE_CLASSES,
  USUAL_SURFACES,
  type Fade,
  type Fading,
  type NoteClass,
} from '../../../sim/index.ts';
import { oilStep, type Ink } from '../../charts/model/palette.ts';
import { NEAT, type KeptBlend } from '../../state/blend-store.ts';

/** Words and all that stands below the picture follow a hand that drags a share as fast as they can be read. */
export const LATEST_ms = 200;

export const VIEWS = ['constituent', 'oil', 'note'] as const;
export type View = (typeof VIEWS)[number];

export interface Layer {
  readonly key: string;
  readonly label: string;
  readonly ink: Ink;
  /** Share of the vapour that leaves at each time. */
  readonly shares: Float64Array;
}

/** More constituents than this are told together. */
const MOST_LAYERS = 8;

export function surfaceOf({ surface, temperature_K, coefficient_m_s }: KeptBlend) {
  return { ...USUAL_SURFACES[surface], temperature_K, coefficient_m_s };
}

/** Share of each oil in the product by volume. */
export function sharesOf({ oils, strength }: KeptBlend): readonly number[] {
  const whole = oils.reduce((sum, { parts }) => sum + parts, 0);
  return oils.map(({ parts }) => (whole > 0 ? (strength * parts) / whole : 0));
}

const filmOf = (blend: KeptBlend) => filmOfOils(blend.oils, blend.diluted ? blend.strength : NEAT, surfaceOf(blend));

export function fadingOf(blend: KeptBlend, end_s?: number): Fading | null {
  const film = filmOf(blend);
  return film === null ? null : fading(film, blend.real, end_s);
}

const NOTE_WORDS: Readonly<Record<NoteClass, string>> = {
  top: 'top notes',
  middle: 'middle notes',
  base: 'base notes',
};

/** Layers from the bottom up, the least volatile first. */
export function layersOf({ film, fade: of }: Fading, view: View, oilNames: readonly string[]): readonly Layer[] {
  const count = film.ids.length;
  const { times_s, leaving_kg_m2_s: leaving } = of;
  const wholes = Float64Array.from(times_s, (_, k) => {
    let whole = 0;
    for (let i = 0; i < count; i++) whole += leaving[k * count + i] as number;
    return whole;
  });
  const sums = (weightOf: (constituent: number) => number): Float64Array => {
    const weights = Float64Array.from({ length: count }, (_, i) => weightOf(i));
    return wholes.map((whole, k) => {
      let own = 0;
      for (let i = 0; i < count; i++) own += (leaving[k * count + i] as number) * (weights[i] as number);
      return whole > 0 ? own / whole : 0;
    });
  };
  const shareOf = (constituent: number): Float64Array =>
    wholes.map((whole, k) => (whole > 0 ? (leaving[k * count + constituent] as number) / whole : 0));
  if (view === 'note')
    return [...NOTE_CLASSES]
      .reverse()
      .map((note, at) => ({
        key: note,
        label: NOTE_WORDS[note],
        ink: oilStep(1 - at / 2),
        shares: sums((i) => (film.classes[i] === note ? 1 : 0)),
      }));
  if (view === 'oil') {
    const volatility = film.origins.map(
      (of) =>
        of.reduce((sum, share, i) => sum + share * (film.loads[i] as number) * Math.log(film.rates[i] as number), 0) /
        of.reduce((sum, share, i) => sum + share * (film.loads[i] as number), 0),
    );
    const order = [...film.origins.keys()].sort((a, b) => (volatility[a] as number) - (volatility[b] as number));
    return order.map((oil, at) => ({
      key: `oil ${oil}`,
      label: oilNames[oil] ?? '',
      ink: oilStep(order.length === 1 ? 0.5 : 1 - at / (order.length - 1)),
      shares: sums((i) => film.origins[oil]?.[i] ?? 0),
    }));
  }
  const all = film.ids.map((id, i) => ({ i, id, shares: shareOf(i) }));
  const peaks = all.map(({ shares }) => shares.reduce((most, share) => Math.max(most, share), 0));
  const main = [...all].sort((a, b) => (peaks[b.i] as number) - (peaks[a.i] as number)).slice(0, MOST_LAYERS);
  const rest = all.filter((each) => !main.includes(each));
  main.sort((a, b) => (film.rates[a.i] as number) - (film.rates[b.i] as number));
  const layers = main.map(({ i, id, shares }, at): Layer => {
    const row = film.rows[i];
    return {
      key: id,
      label: row?.shortName ?? row?.name ?? id,
      ink: oilStep(main.length === 1 ? 0.5 : 1 - at / (main.length - 1)),
      shares,
    };
  });
  if (rest.length === 0) return layers;
  const together = Float64Array.from(times_s, (_, k) =>
    rest.reduce((sum, { shares }) => sum + (shares[k] as number), 0),
  );
  return [...layers, { key: 'rest', label: 'others', ink: 'gridline', shares: together }];
}

export interface AreaShape {
  readonly layer: Layer;
  readonly path: string;
  /** Where its name fits, if anywhere. */
  readonly label: { readonly x: number; readonly y: number } | null;
}

export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const LABEL_HEIGHT_px = 16;
const LETTER_px = 7.2;

export const timeScale = (times_s: Float64Array, { left, right }: Frame) =>
  scaleLog()
    .domain([times_s[0] as number, times_s.at(-1) as number])
    .range([left, right]);

/** Where the times stand across a frame. */
export function placesOf(times_s: Float64Array, frame: Frame): Float64Array {
  const x = timeScale(times_s, frame);
  return times_s.map((time_s) => x(time_s));
}

const tenth = (at: number): string => String(Math.round(at * 10) / 10);

/**
 * Layers on top of each other, in a frame whose height is the whole. Each reaches from its upper edge down to the floor,
 * so that the one drawn after it, which is lower, covers the rest: one edge a layer instead of two.
 */
export function areasOf(layers: readonly Layer[], xs: Float64Array, frame: Frame): readonly AreaShape[] {
  const count = xs.length;
  const high = frame.bottom - frame.top;
  const across = Array.from(xs, tenth);
  const floor = `L${across[count - 1] ?? ''},${frame.bottom}L${across[0] ?? ''},${frame.bottom}Z`;
  const sums = new Float64Array(count);
  const found = layers.map((layer) => {
    const half = (layer.label.length * LETTER_px) / 2;
    let best = LABEL_HEIGHT_px;
    let label: AreaShape['label'] = null;
    let path = '';
    for (let k = 0; k < count; k++) {
      const share = layer.shares[k] as number;
      const at = xs[k] as number;
      const thick = share * high;
      const top = frame.bottom - ((sums[k] as number) + share) * high;
      sums[k] = (sums[k] as number) + share;
      path += `${k === 0 ? 'M' : 'L'}${across[k] as string},${tenth(top)}`;
      if (thick <= best || at - half < frame.left + 4 || at + half > frame.right - 4) continue;
      best = thick;
      label = { x: at, y: top + thick / 2 };
    }
    return { layer, path: path + floor, label, half, best };
  });
  // The widest names stand; one that would run into another is left to the sentence.
  const stand = new Set<AreaShape['label']>();
  for (const { label, half } of [...found].sort((a, b) => b.best - a.best)) {
    const clear = found.every(
      (other) =>
        other.label === null ||
        label === null ||
        !stand.has(other.label) ||
        Math.abs(other.label.y - label.y) >= LABEL_HEIGHT_px ||
        Math.abs(other.label.x - label.x) >= half + other.half,
    );
    if (label !== null && clear) stand.add(label);
  }
  return found.map(({ layer, path, label }) => ({ layer, path, label: stand.has(label) ? label : null }));
}

/** What is left, as a line in a frame. */
export const leftLine = ({ leftShare }: Fade, xs: Float64Array, frame: Frame): string =>
  line<number>()
    .digits(1)
    .x((_, k) => xs[k] as number)
    .y((left) => frame.bottom - left * (frame.bottom - frame.top))(leftShare) ?? '';

/** Round times that a logarithmic axis names. */
const HOUR_s = 3600;
const DAY_s = 86400;
const NAMED_s = [10, 60, 600, HOUR_s, 10 * HOUR_s, 4 * DAY_s, 30 * DAY_s, 365 * DAY_s];

export const timeWords = (time_s: number): string => {
  if (time_s < 59.5) return `${Math.round(time_s)}\u202fs`;
  if (time_s < 100 * HOUR_s) return formatDuration(time_s < HOUR_s ? time_s : Math.round(time_s / 60) * 60);
  const days = time_s / DAY_s;
  return days < 100 ? `${Math.round(days)} days` : `${Math.round(days / 30.44)} months`;
};

export const ticksOf = (times_s: Float64Array): readonly number[] =>
  NAMED_s.filter((time) => time >= (times_s[0] as number) && time <= (times_s.at(-1) as number));

/** Row of the time that is nearest to a place on the axis, 0 to 1. */
export const rowAtPlace = (place: number, count: number): number =>
  Math.max(0, Math.min(count - 1, Math.round(place * (count - 1))));
