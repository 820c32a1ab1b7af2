/** Where each part's words would like to stand. */
import type { Candidate, LabelId, Wish } from './labels.ts';
import { bottom, middle, right, type Box } from './shapes.ts';
import { pointAlong } from './condenser-shape.ts';
import { jugBox } from './separator-shape.ts';
import type { StillShapes } from './still-shapes.ts';
import type { VesselShape } from './vessel-shape.ts';

/** Letters that a part's words may need: its name, and the longest line of live numbers. */
const ROOM: Readonly<Record<LabelId, readonly [name: number, line: number]>> = {
  heat: [15, 20],
  boiler: [6, 24],
  pot: [3, 24],
  charge: [6, 25],
  neck: [4, 17],
  condenser: [11, 32],
  cooling: [14, 31],
  separator: [9, 18],
  receiver: [8, 11],
};

export const NAME_SIZE = 15;
export const LINE_SIZE = 13;
/** Mean width of a letter of the text face as a share of its size: bold names, and lines that are mostly digits. */
export const NAME_LETTER = 0.54;
export const LINE_LETTER = 0.44;

export const NAME_HEIGHT = 18;
export const LINE_HEIGHT = 17;

export const labelSize = (id: LabelId, textScale: number): { width: number; height: number } => {
  const [name, line] = ROOM[id];
  return {
    width: Math.ceil(Math.max(name * NAME_SIZE * NAME_LETTER, line * LINE_SIZE * LINE_LETTER) * textScale),
    height: (NAME_HEIGHT + LINE_HEIGHT) * textScale,
  };
};

const leftOf = (x: number, y: number, slide = 120): Candidate => ({ x, y, align: 'end', slide });
const rightOf = (x: number, y: number, slide = 120): Candidate => ({ x, y, align: 'start', slide });
const over = (x: number, y: number, slide = 160): Candidate => ({ x, y, align: 'middle', slide, sideways: true });

type WishFor = (id: LabelId, anchor: Box, candidates: readonly Candidate[]) => Wish<LabelId>;

const point = (x: number, y: number): Box => ({ x: x - 4, y: y - 4, width: 8, height: 8 });

/** The lower part of a vessel, where its water stands. */
const lower = ({ inner }: VesselShape, share: number): Box => ({
  ...inner,
  y: inner.y + (1 - share) * inner.height,
  height: share * inner.height,
});

function potWishes(shapes: StillShapes, wish: WishFor, ts: number): Wish<LabelId>[] {
  const { pot, boiler, bed, heat, neck } = shapes;
  const first = boiler ?? pot;
  const half = 18 * ts;
  const column = Math.min(first.outer.x, heat.body.x) - 16;
  const potRight = right(pot.outer) + 16;
  const leftTaken = boiler !== null || heat.beside;
  const beside = (y: number): Candidate[] =>
    leftTaken ? [rightOf(potRight, y), leftOf(pot.outer.x - 12, y)] : [leftOf(column, y), rightOf(potRight, y)];
  // Stacked upward from the heat source, so that three labels find room beside a small pot.
  const step = 2 * half + 7;
  const heatY = Math.min(middle(heat.body).y, heat.floorY - half - 5);
  const waterY = Math.min(bottom(first.inner) - Math.min(0.16 * first.inner.height, 24), heatY - step);
  const bedTop = bed.submerged ? { ...bed.place, height: 0.4 * bed.place.height } : bed.place;
  const wishes = [wish('heat', heat.body, [leftOf(column, heatY), rightOf(potRight, heatY)])];
  if (boiler) {
    wishes.push(
      wish('boiler', boiler.inner, [
        leftOf(column, boiler.inner.y + 0.4 * boiler.inner.height),
        over(boiler.centreX, boiler.lidTop - half - 10),
      ]),
    );
    wishes.push(wish('charge', bedTop, beside(middle(bedTop).y)));
    wishes.push(wish('pot', lower(pot, 0.2), beside(bottom(pot.inner) - 0.1 * pot.inner.height)));
  } else {
    wishes.push(wish('pot', lower(pot, 0.3), beside(waterY)));
    wishes.push(wish('charge', bedTop, beside(Math.min(middle(bedTop).y, waterY - step))));
  }
  const nw = neck.width / 2 + neck.insulation;
  const { midRun } = neck;
  wishes.push(
    wish('neck', point(midRun.x, midRun.y), [
      over(midRun.x, midRun.y + nw + half + 8, 120),
      over(midRun.x, midRun.y - nw - half - 8, 120),
      rightOf(midRun.x + 12, midRun.y - nw - half - 8, 60),
      {
        ...leftOf(pot.centreX - nw - 14, pot.lidTop - half - 10, 60),
        anchor: point(pot.centreX + 2, pot.lidTop - half - 6),
      },
      rightOf(right(shapes.condenser.box) + nw + 24, midRun.y, 40),
      rightOf(potRight, midRun.y + nw + half + 12, 160),
    ]),
  );
  return wishes;
}

function condenserWish(shapes: StillShapes, wish: WishFor, half: number): Wish<LabelId> {
  const { condenser, cooling } = shapes;
  const { box } = condenser;
  const tub = cooling.tub;
  const mid = middle(box);
  if (condenser.kind === 'coil' && tub) {
    const y = box.y + 0.3 * box.height;
    return wish('condenser', box, [
      rightOf(right(tub.outer) + (cooling.drain.length > 0 ? 30 : 14), y, 160),
      leftOf(tub.outer.x - 14, y, 160),
      over(mid.x, tub.outer.y - half - 12),
    ]);
  }
  const onTube = pointAlong(condenser.runs, 0.5) ?? mid;
  const clear = condenser.jacketHalf + half + 22;
  return wish('condenser', point(onTube.x, onTube.y), [
    over(onTube.x, onTube.y - clear, 140),
    rightOf(right(box) + 16, mid.y, 120),
    over(onTube.x, onTube.y + clear, 140),
  ]);
}

function coolingWish({ condenser, cooling }: StillShapes, wish: WishFor, half: number): Wish<LabelId> {
  const tub = cooling.tub;
  const first = cooling.supply[0];
  if (!tub) {
    const at = first ?? middle(condenser.box);
    const drain = point((cooling.gully ?? at).x, at.y - 8);
    return wish('cooling', point(at.x - 5, at.y), [
      leftOf(at.x - 20, at.y - 8, 120),
      rightOf(at.x + 24, at.y - 8, 120),
      { ...leftOf(at.x - 20, at.y - 8, 420), sideways: true, towards: -1 },
      { ...leftOf(cooling.box.x - 6, at.y - 8, 120), anchor: drain },
      { ...rightOf(right(cooling.box) + 8, at.y - 8, 120), anchor: drain },
    ]);
  }
  const centre = middle(tub.outer);
  if (condenser.kind === 'coil')
    return wish('cooling', tub.water, [
      leftOf(tub.outer.x - 14, bottom(tub.water) - 0.42 * tub.water.height, 110),
      rightOf(right(tub.outer) + (cooling.drain.length > 0 ? 30 : 14), tub.outer.y + half, 130),
      over(centre.x, tub.outer.y - half - 12),
    ]);
  return wish('cooling', tub.water, [
    over(centre.x, tub.outer.y - half - 22, 60),
    rightOf(right(tub.outer) + 10, centre.y),
    leftOf(tub.outer.x - 12, centre.y),
  ]);
}

function endWishes(shapes: StillShapes, wish: WishFor, ts: number): Wish<LabelId>[] {
  const { separator, jug } = shapes;
  const half = 18 * ts;
  const jb = jugBox(jug);
  const farRight = Math.max(right(jb), right(separator.box)) + 14;
  return [
    condenserWish(shapes, wish, half),
    coolingWish(shapes, wish, half),
    wish('separator', separator.glass, [
      rightOf(right(separator.glass) + 16, separator.glass.y - half - 2, 90),
      rightOf(farRight, separator.glass.y + half, 90),
      over(separator.centreX, separator.box.y - half - 20, 120),
      leftOf(separator.box.x - 12, middle(separator.glass).y, 90),
    ]),
    wish('receiver', jb, [rightOf(farRight, middle(jb).y, 60), over(middle(jb).x, jb.y - half - 16, 60)]),
  ];
}

/** The wishes of the pot's row and of the condenser's row. */
export function labelWishes(
  shapes: StillShapes,
  textScale: number,
): { readonly pot: Wish<LabelId>[]; readonly condenser: Wish<LabelId>[] } {
  const wish: WishFor = (id, anchor, candidates) => ({ id, ...labelSize(id, textScale), anchor, candidates });
  return { pot: potWishes(shapes, wish, textScale), condenser: endWishes(shapes, wish, textScale) };
}
