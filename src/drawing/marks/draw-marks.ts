/**
 * Steam, bubbles, drops and flowing water as marks at their places for a state and phases. What draws them is a
 * painter, so that the same marks can be counted in a test and painted on a canvas.
 */
import { bottom, right, type Box } from '../geometry/shapes.ts';
import { scatter } from '../geometry/strokes.ts';
import { STREAM_FROM, vapourLeftAt, type StillState } from '../still-state.ts';
import type { FlowLine } from './flow-lines.ts';
import type { MarkSites } from './mark-sites.ts';
import type { Phases } from './phases.ts';

export type Ink = 'steam' | 'heat' | 'water' | 'oil' | 'alarm';

export interface Painter {
  /** Starts a batch of marks in one colour. */
  begin(ink: Ink): void;
  dot(x: number, y: number, radius: number): void;
  ring(x: number, y: number, radius: number): void;
  line(x1: number, y1: number, x2: number, y2: number, width: number): void;
  end(): void;
}

const SCATTER_TABLE = Float32Array.from({ length: 4096 }, (_, n) => scatter(n + 1));
const chance = (n: number): number => SCATTER_TABLE[n & 4095] as number;
const wrap = (value: number): number => value - Math.floor(value);

/** Steam rate at which stipple and bubbles are densest, kg/s. */
const FULL_BOIL = 0.0008;
/** Area of steam that one mote stands for when it is densest, px². */
const MOTE_AREA = 85;
const MOST_MOTES = 380;

const boilShare = (state: StillState): number =>
  state.steam_kg_s <= 0 ? 0 : 0.35 + 0.65 * Math.min(1, state.steam_kg_s / FULL_BOIL);

/** Motes rising in a box whose top may be a dome. */
function rising(
  painter: Painter,
  box: Box,
  seed: number,
  density: number,
  phase: number,
  dome: { readonly inner: Box; readonly rise: number } | null,
): void {
  const top = dome ? dome.inner.y - dome.rise : box.y;
  const tall = bottom(box) - top;
  if (tall < 2 || box.width < 3) return;
  const count = Math.min(MOST_MOTES, Math.round((box.width * tall * density) / MOTE_AREA));
  for (let n = 0; n < count; n++) {
    const u = chance(seed + 3 * n);
    const x = box.x + 2 + u * (box.width - 4);
    const y =
      bottom(box) - wrap(chance(seed + 3 * n + 1) + (phase * (0.75 + 0.5 * chance(seed + 3 * n + 2))) / tall) * tall;
    if (dome && y < dome.inner.y) {
      const across = (x - dome.inner.x) / dome.inner.width - 0.5;
      if (dome.inner.y - y > dome.rise * Math.sqrt(Math.max(0, 1 - 4 * across * across)) - 2) continue;
    }
    painter.dot(x, y, 0.85);
  }
}

function steam(painter: Painter, sites: MarkSites, state: StillState, phases: Phases): void {
  if (state.steam_kg_s <= 0) return;
  const density = boilShare(state);
  const liquidY = bottom(sites.boiling) - state.potDepth_m * sites.pxPerMetre;
  const [overBed, overBoiler] = sites.domes;
  painter.begin('steam');
  if (overBoiler)
    rising(
      painter,
      { ...sites.boiling, height: Math.max(0, liquidY - sites.boiling.y) },
      11,
      density,
      phases.bed,
      overBoiler,
    );
  if (sites.submerged && overBed) {
    rising(
      painter,
      { ...sites.potInner, height: Math.max(0, liquidY - sites.potInner.y) },
      29,
      density,
      phases.bed,
      overBed,
    );
  } else if (overBed) {
    const foot = bottom(sites.bed);
    if (!overBoiler && liquidY > foot + 3)
      rising(painter, { ...sites.potInner, y: foot + 2, height: liquidY - foot - 2 }, 53, density, phases.bed, null);
    const front = Math.min(sites.bed.height, state.frontHeight_m * sites.pxPerMetre);
    rising(painter, { ...sites.bed, y: foot - front, height: front }, 71, density * 0.8, phases.bed, null);
    if (state.vapour_kg_s > 0)
      rising(
        painter,
        { ...sites.potInner, height: Math.max(0, sites.bed.y - sites.potInner.y) },
        97,
        density,
        phases.bed,
        overBed,
      );
  }
  painter.end();
}

const MOST_BUBBLES = 64;

function bubbles(painter: Painter, sites: MarkSites, state: StillState, phases: Phases): void {
  const depth = state.potDepth_m * sites.pxPerMetre;
  if (state.steam_kg_s <= 0 || depth < 6) return;
  const box = sites.boiling;
  const count = Math.min(
    MOST_BUBBLES,
    Math.ceil(((MOST_BUBBLES * state.steam_kg_s) / FULL_BOIL) * Math.min(1, box.width / 200)),
  );
  const largest = Math.min(4.4, depth / 5);
  painter.begin('water');
  for (let n = 0; n < count; n++) {
    const lift = wrap(chance(5 * n) + (phases.bubbles * (0.7 + 0.6 * chance(5 * n + 1))) / depth);
    const radius = largest * (0.32 + 0.4 * chance(5 * n + 2)) * (0.6 + 0.4 * lift);
    const sway = 2.5 * Math.sin(lift * 9 + n);
    painter.ring(
      Math.min(right(box) - radius - 1, Math.max(box.x + radius + 1, box.x + chance(5 * n + 3) * box.width + sway)),
      bottom(box) - radius - lift * (depth - 2 * radius),
      radius,
    );
  }
  painter.end();
}

/** Motes along a line, scattered across its width. */
function along(
  painter: Painter,
  line: FlowLine,
  spacing: number,
  phase: number,
  width: number,
  radius: number,
  seed: number,
  shown: (at: number) => number,
): void {
  const lanes = Math.max(1, Math.min(4, Math.floor(width / 6)));
  const count = Math.floor(line.length / spacing);
  const reach = Math.max(0, width / 2 - 1 - radius);
  for (let lane = 0; lane < lanes; lane++) {
    for (let n = 0; n < count; n++) {
      const id = seed + lane * 131 + n;
      const off = (2 * chance(id + 3) - 1) * reach;
      const at = wrap((n + 0.8 * chance(id) + phase / spacing) / count) * (line.xs.length - 1);
      const index = at | 0;
      if (shown(at / line.xs.length) <= chance(id + 7)) continue;
      const before = Math.max(0, index - 2);
      const after = Math.min(line.xs.length - 1, index + 2);
      const dx = (line.xs[after] as number) - (line.xs[before] as number);
      const dy = (line.ys[after] as number) - (line.ys[before] as number);
      const size = Math.hypot(dx, dy) || 1;
      painter.dot(
        (line.xs[index] as number) - (dy / size) * off,
        (line.ys[index] as number) + (dx / size) * off,
        radius,
      );
    }
  }
}

const always = () => 1;

function vapour(painter: Painter, sites: MarkSites, state: StillState, phases: Phases): void {
  if (sites.steamPipe && state.steam_kg_s > 0) {
    painter.begin('steam');
    along(painter, sites.steamPipe, 7, phases.bed * 2, 6, 0.9, 5, always);
    painter.end();
  }
  if (state.vapour_kg_s <= 0) return;
  painter.begin('steam');
  along(painter, sites.neck, 6.5, phases.neck, sites.neckWidth, 0.95, 17, always);
  painter.end();
  painter.begin('heat');
  const radius = Math.max(1, Math.min(2.1, sites.tubeWidth * 0.19));
  if (sites.feed) along(painter, sites.feed, 6, phases.neck, sites.tubeWidth, radius, 31, always);
  sites.tubes.forEach((run, index) => {
    along(painter, run, 6.5, phases.neck, sites.tubeWidth, radius, 43 + index * 59, (share) =>
      vapourLeftAt(state, run.from + share * (run.to - run.from)),
    );
  });
  painter.end();
}

/** Time a drop takes from tip to funnel on screen, s. */
const FALL_TIME = 0.32;

/** Drops under a point: falling freely, as many as the rate gives, or a thin stream when they run together. */
function dropsFrom(painter: Painter, x: number, fromY: number, toY: number, perSecond: number, phase: number): void {
  if (perSecond <= 0 || toY <= fromY + 2) return;
  if (perSecond > STREAM_FROM) {
    const width = Math.min(3.2, 1 + 0.05 * perSecond);
    painter.line(x, fromY, x, toY, width);
    return;
  }
  const hanging = wrap(phase);
  painter.dot(x, fromY + 1, 0.8 + 1.5 * hanging);
  for (let n = 0; n < STREAM_FROM; n++) {
    const age = (hanging + n) / perSecond;
    if (age >= FALL_TIME) break;
    painter.dot(x, fromY + 3 + (toY - fromY - 3) * (age / FALL_TIME) ** 2, 2.2);
  }
}

function distillate(painter: Painter, sites: MarkSites, state: StillState, phases: Phases): void {
  painter.begin('water');
  dropsFrom(painter, sites.tip.x, sites.tip.y, sites.dropEndY, state.dropsPerSecond, phases.drops);
  const jugY = bottom(sites.jug.glass) - Math.min(sites.jug.glass.height, state.hydrosol_kg * sites.jug.pxPerKg);
  if (state.hydrosol_kg > 0)
    dropsFrom(painter, sites.spill.x, sites.spill.y, jugY, state.dropsPerSecond, phases.drops + 0.5);
  painter.end();
}

const DASH = 9;
const DASH_GAP = 14;

function coolingWater(painter: Painter, sites: MarkSites, state: StillState, phases: Phases): void {
  if (state.coolantFlow_kg_s <= 0) return;
  painter.begin('water');
  for (const hose of sites.hoses) {
    for (let at = phases.coolant % DASH_GAP; at + DASH * 0.6 < hose.length; at += DASH_GAP) {
      const a = at | 0;
      const b = Math.min(hose.xs.length - 1, (at + DASH * 0.6) | 0);
      painter.line(hose.xs[a] as number, hose.ys[a] as number, hose.xs[b] as number, hose.ys[b] as number, 1.8);
    }
  }
  painter.end();
}

const MOST_OIL_DROPS = 22;
/** Oil rate at which the most drops are shown, kg/s. */
const FULL_OIL = 4e-6;
const MOST_HAZE = 60;
/** Haze at which the water is drawn cloudiest, kg of oil per kg of water. */
const FULL_HAZE = 4e-4;

function oilAndHaze(painter: Painter, sites: MarkSites, state: StillState, phases: Phases): void {
  const { glass, surfaceY, inletY, centreX } = sites.separator;
  const layer = Math.min(bottom(glass) - surfaceY, state.oilLayer_m * sites.pxPerMetre);
  const end = state.oilSinks ? bottom(glass) - layer : surfaceY + layer;
  painter.begin('oil');
  if (state.oilRate_kg_s > 0) {
    const count = Math.min(MOST_OIL_DROPS, Math.ceil((MOST_OIL_DROPS * state.oilRate_kg_s) / FULL_OIL));
    const span = Math.abs(inletY - end);
    for (let n = 0; n < count && span > 3; n++) {
      const part = wrap(chance(7 * n) + (phases.oil * (0.6 + 0.8 * chance(7 * n + 1))) / span);
      const spread = glass.width * 0.42 * Math.min(1, part * 2.2);
      painter.dot(
        centreX + (chance(7 * n + 2) * 2 - 1) * spread,
        inletY + (end - inletY) * part,
        Math.min(2.2, 0.8 + 1.4 * chance(7 * n + 3)),
      );
    }
  }
  const cloudy = Math.min(1, state.haze / FULL_HAZE);
  const specks = Math.round(MOST_HAZE * cloudy);
  const jugY = bottom(sites.jug.glass) - Math.min(sites.jug.glass.height, state.hydrosol_kg * sites.jug.pxPerKg);
  for (let n = 0; n < specks; n++) {
    const inJug = n % 2 === 0;
    const box = inJug ? sites.jug.glass : glass;
    const top = inJug ? jugY : state.oilSinks ? surfaceY : end;
    const tall = bottom(box) - top;
    if (tall > 3)
      painter.dot(
        box.x + 1.5 + chance(11 * n + 1) * (box.width - 3),
        top + 1.5 + chance(11 * n + 2) * (tall - 3),
        0.55,
      );
  }
  painter.end();
}

const PUFFS = 26;
const PUFF_RISE = 46;

function escape(painter: Painter, sites: MarkSites, state: StillState, phases: Phases): void {
  if (!state.alarms.escaping) return;
  painter.begin('alarm');
  along(
    painter,
    sites.tail,
    5.5,
    phases.neck,
    sites.tubeWidth,
    Math.max(1.1, Math.min(2.2, sites.tubeWidth * 0.2)),
    211,
    always,
  );
  painter.end();
}

export type DrawMarks = (painter: Painter, sites: MarkSites, state: StillState, phases: Phases) => void;

/** What rises from the outlet; it lies under the drawing, so that it covers no words. */
export const drawPlume: DrawMarks = (painter, sites, state, phases) => {
  if (!state.alarms.escaping) return;
  painter.begin('alarm');
  for (let n = 0; n < PUFFS; n++) {
    const part = wrap(chance(13 * n) + (phases.escape * (0.7 + 0.5 * chance(13 * n + 1))) / PUFF_RISE);
    const spread = 4 + 18 * part;
    painter.ring(
      sites.tip.x - 1 + (chance(13 * n + 2) * 2 - 1) * spread + 6 * part,
      sites.tip.y + 4 - PUFF_RISE * part,
      1 + 3.6 * part * (0.6 + 0.4 * chance(13 * n + 3)),
    );
  }
  painter.end();
};

export const drawMarks: DrawMarks = (painter, sites, state, phases) => {
  steam(painter, sites, state, phases);
  bubbles(painter, sites, state, phases);
  vapour(painter, sites, state, phases);
  coolingWater(painter, sites, state, phases);
  distillate(painter, sites, state, phases);
  oilAndHaze(painter, sites, state, phases);
  escape(painter, sites, state, phases);
};
