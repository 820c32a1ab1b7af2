/** Where each part's words would like to stand. */
import type { Candidate, HazardId, LabelId, Wish } from './labels.ts';
import { bottom, middle, right, type Point } from './shapes.ts';
import { pointAlong } from './condenser-shape.ts';
import { jugBox } from './separator-shape.ts';
import type { StillShapes } from './still-shapes.ts';

/** Letters that a part's words may need: its name, and the longest line of live numbers. */
const ROOM: Readonly<Record<LabelId, readonly [name: number, line: number]>> = {
  heat: [17, 20],
  boiler: [6, 19],
  pot: [3, 19],
  charge: [6, 23],
  neck: [4, 17],
  condenser: [9, 28],
  cooling: [13, 26],
  separator: [9, 22],
  receiver: [8, 18],
};

const NAME_SIZE = 15;
const LINE_SIZE = 13;
/** Mean width of a letter of the text face as a share of its size: bold names, and lines that are mostly digits. */
const NAME_LETTER = 0.54;
const LINE_LETTER = 0.475;

export const NAME_HEIGHT = 18;
export const LINE_HEIGHT = 17;

export const labelSize = (id: LabelId, textScale: number): { width: number; height: number } => {
  const [name, line] = ROOM[id];
  return {
    width: Math.ceil(Math.max(name * NAME_SIZE * NAME_LETTER, line * LINE_SIZE * LINE_LETTER) * textScale),
    height: (NAME_HEIGHT + LINE_HEIGHT) * textScale,
  };
};

export const HAZARD_WIDTH = 178;
export const HAZARD_HEIGHT = 52;

const leftOf = (x: number, y: number, slide = 120): Candidate => ({ x, y, align: 'end', slide });
const rightOf = (x: number, y: number, slide = 120): Candidate => ({ x, y, align: 'start', slide });
const over = (x: number, y: number, slide = 160): Candidate => ({ x, y, align: 'middle', slide, sideways: true });

function potWishes(shapes: StillShapes, wish: (id: LabelId, anchor: Point, candidates: readonly Candidate[]) => Wish<LabelId>, ts: number): Wish<LabelId>[] {
  const { pot, boiler, bed, heat, neck } = shapes;
  const first = boiler ?? pot;
  const half = 18 * ts;
  const leftEdge = Math.min(first.outer.x, heat.body.x);
  const column = leftEdge - 16;
  const potRight = right(pot.outer) + 16;
  const beside = (y: number, slide?: number) => (boiler || heat.kind === 'steam-generator' ? [rightOf(potRight, y, slide), leftOf(pot.outer.x - 12, y, slide)] : [leftOf(column, y, slide), rightOf(potRight, y, slide)]);
  const heatY = heat.body.y + heat.body.height / 2;
  const waterY = bottom(first.inner) - Math.min(0.16 * first.inner.height, 24);
  const bedMiddle = middle(bed.box);
  const wishes = [
    wish('heat', { x: Math.max(heat.body.x, heat.body.x + Math.min(6, heat.body.width / 2)), y: heatY }, [leftOf(column, heatY), rightOf(potRight, heatY)]),
    boiler
      ? wish('boiler', { x: boiler.inner.x + 4, y: waterY }, [leftOf(column, boiler.inner.y + 0.4 * boiler.inner.height), over(boiler.centreX, boiler.lidTop - half - 10)])
      : wish('pot', { x: pot.inner.x + 5, y: waterY }, [leftOf(column, waterY), rightOf(potRight, waterY)]),
    wish('charge', boiler || heat.kind === 'steam-generator' ? { x: right(bed.box) - 6, y: bedMiddle.y } : { x: bed.box.x + 5, y: bedMiddle.y - (bed.submerged ? 0.2 * bed.box.height : 0) }, beside(bedMiddle.y - (bed.submerged ? 0.25 * bed.box.height : 0))),
  ];
  if (boiler) wishes.push(wish('pot', { x: right(pot.outer) - 1, y: bottom(pot.inner) - 8 }, beside(bottom(pot.inner) - 0.15 * pot.inner.height)));
  const nw = neck.width / 2 + neck.insulation;
  const { midRun } = neck;
  wishes.push(wish('neck', midRun, [over(midRun.x, midRun.y + nw + half + 8, 70), over(midRun.x, midRun.y - nw - half - 8, 120), rightOf(midRun.x + 12, midRun.y - nw - half - 8, 60), rightOf(potRight, midRun.y + nw + half + 12, 160)]));
  return wishes;
}

function endWishes(shapes: StillShapes, wish: (id: LabelId, anchor: Point, candidates: readonly Candidate[]) => Wish<LabelId>, ts: number): Wish<LabelId>[] {
  const { condenser, cooling, separator, jug } = shapes;
  const half = 18 * ts;
  const tub = cooling.tub;
  const jb = jugBox(jug);
  const farRight = Math.max(right(jb), separator.box.x + separator.box.width) + 14;
  const tubRight = tub ? right(tub.outer) + (cooling.drain.length > 0 ? 30 : 14) : 0;
  const tubLeft = tub ? tub.outer.x - 14 : 0;
  const mid = middle(condenser.box);
  const onTube = pointAlong(condenser.runs, 0.5) ?? mid;
  const isCoil = condenser.kind === 'coil';
  const clear = condenser.jacketHalf + half + 22;
  const condenserWish = isCoil
    ? wish('condenser', { x: right(condenser.box) - 1, y: condenser.box.y + 0.3 * condenser.box.height }, [rightOf(tubRight, condenser.box.y + 0.3 * condenser.box.height, 160), leftOf(tubLeft, condenser.box.y + 0.3 * condenser.box.height, 160), over(mid.x, cooling.box.y - half - 12)])
    : wish('condenser', onTube, [over(onTube.x, onTube.y - clear, 140), rightOf(right(condenser.box) + 16, mid.y, 120), over(onTube.x, onTube.y + clear, 140)]);
  const first = cooling.supply[0];
  const coolingAnchor = isCoil && tub
    ? { x: tub.outer.x + 2, y: bottom(tub.water) - 0.3 * tub.water.height }
    : tub ? { x: middle(tub.outer).x, y: tub.outer.y + 2 } : (first ?? mid);
  const coolingWish = isCoil && tub
    ? wish('cooling', coolingAnchor, [leftOf(tubLeft, bottom(tub.water) - 0.42 * tub.water.height, 110), rightOf(tubRight, tub.outer.y + half, 130), over(middle(tub.outer).x, tub.outer.y - half - 12)])
    : tub
      ? wish('cooling', coolingAnchor, [over(middle(tub.outer).x, tub.outer.y - half - 22, 60), rightOf(right(tub.outer) + 10, middle(tub.outer).y), leftOf(tub.outer.x - 12, middle(tub.outer).y)])
      : wish('cooling', coolingAnchor, [leftOf(cooling.box.x - 6, coolingAnchor.y, 120), rightOf(right(cooling.box) + 8, coolingAnchor.y, 120), over(coolingAnchor.x, coolingAnchor.y - half - 34)]);
  const separatorAnchor = { x: right(separator.glass) - 2, y: separator.glass.y + 6 };
  const jugMid = middle(jb);
  const separatorWish = wish('separator', separatorAnchor, [rightOf(right(separator.glass) + 16, separator.glass.y - half - 2, 90), rightOf(farRight, separator.glass.y + half, 90), over(separator.centreX, separator.box.y - half - 20, 120), leftOf(separator.box.x - 12, middle(separator.glass).y, 90)]);
  const receiverWish = wish('receiver', { x: right(jb) - 1, y: jugMid.y }, [rightOf(farRight, jugMid.y, 60), over(jugMid.x, jb.y - half - 16, 60)]);
  return [condenserWish, coolingWish, separatorWish, receiverWish];
}

/** The wishes of the pot's row and of the condenser's row. */
export function labelWishes(shapes: StillShapes, textScale: number): { readonly pot: Wish<LabelId>[]; readonly condenser: Wish<LabelId>[] } {
  const wish = (id: LabelId, anchor: Point, candidates: readonly Candidate[]): Wish<LabelId> => ({ id, ...labelSize(id, textScale), anchor, candidates });
  return { pot: potWishes(shapes, wish, textScale), condenser: endWishes(shapes, wish, textScale) };
}

/** Cautions want to stand at the hazard itself; they come after the labels and may find no room. */
export function hazardWishes(shapes: StillShapes, textScale: number): { readonly pot: Wish<HazardId>[]; readonly condenser: Wish<HazardId>[] } {
  const { pot, boiler, heat, condenser, cooling, separator } = shapes;
  const size = { width: HAZARD_WIDTH * textScale, height: HAZARD_HEIGHT * textScale };
  const half = size.height / 2;
  const hot = boiler ?? pot;
  const tip = separator.funnel.topY - 6;
  const lidLeft = { x: pot.outer.x + 0.2 * pot.outer.width, y: pot.lidTop + 6 };
  const flame = { x: heat.body.x, y: bottom(hot.outer) };
  const tipAt = { x: separator.centreX + 6, y: tip };
  const tub = cooling.tub;
  const tubTop = tub ? { x: tub.outer.x + 0.85 * tub.outer.width, y: tub.rimY + 4 } : null;
  const lid: Wish<HazardId> = { id: 'lid', ...size, anchor: lidLeft, candidates: [leftOf(pot.outer.x - 10, pot.lidTop - 8, 60), leftOf(lidLeft.x, pot.lidTop - half - 10, 40), over(pot.centreX, pot.lidTop - half - 40, 120)] };
  const flameWish: Wish<HazardId> = { id: 'flame', ...size, anchor: flame, candidates: [leftOf(hot.outer.x - 14, bottom(hot.outer), 90), rightOf(right(hot.outer) + 14, bottom(hot.outer), 90)] };
  const outlet: Wish<HazardId> = { id: 'outlet', ...size, anchor: tipAt, candidates: [rightOf(separator.centreX + 26, tip - 10, 90), leftOf(separator.centreX - 26, tip, 90), over(separator.centreX, tip - half - 60, 120)] };
  const tubWish: Wish<HazardId>[] = tubTop && tub ? [{ id: 'tub', ...size, anchor: tubTop, candidates: [rightOf(right(tub.outer) + 12, tub.rimY - 8, 70), over(middle(tub.outer).x + 40, tub.rimY - half - 10, 110), leftOf(tub.outer.x - 12, tub.rimY - 8, 70)] }] : [];
  return { pot: [lid, flameWish], condenser: [outlet, ...tubWish].filter(() => condenser.runs.length > 0) };
}
