/** Every part of the still as shapes in pixels, once it is settled where and how high each stands. */
import { cabinetWidth, type Along } from './along.ts';
import { coilShape, condenserBoxes, straightShape, type CondenserShape } from './condenser-shape.ts';
import { barrelCooling, coolingBoxes, tapCooling, tubCooling, tubShape, type CoolingShape } from './cooling-shape.ts';
import { heatShape, type HeatShape } from './heat-shape.ts';
import type { Heights } from './heights.ts';
import { GLASS_WALL } from './line-weights.ts';
import { neckShape, type NeckShape } from './neck-shape.ts';
import { jugBox, jugShape, separatorShape, type JugShape, type SeparatorShape } from './separator-shape.ts';
import { bottom, boxesAlong, right, roundCorners, subdivide, yAt, type Box, type Frame, type Point } from './shapes.ts';
import type { TrueSizes } from './true-sizes.ts';
import { bedShape, vesselShape, type BedShape, type VesselShape } from './vessel-shape.ts';

/** A table, stool or block that lifts a part; thin ones are rods that hold a tube. */
export interface Stand {
  readonly box: Box;
  readonly kind: 'table' | 'block' | 'rod';
}

export interface StillShapes {
  readonly pot: VesselShape;
  readonly boiler: VesselShape | null;
  /** From the boiler into the foot of the pot. */
  readonly steamPipe: readonly Point[];
  readonly bedDrain: readonly Point[];
  readonly bed: BedShape;
  readonly heat: HeatShape;
  readonly neck: NeckShape;
  readonly condenser: CondenserShape;
  readonly cooling: CoolingShape;
  readonly separator: SeparatorShape;
  readonly jug: JugShape;
  /** From the separator back to the pot, when water is returned. */
  readonly returnLine: readonly Point[];
  readonly potStands: readonly Stand[];
  readonly endStands: readonly Stand[];
}

export interface Settled {
  readonly sizes: TrueSizes;
  readonly heights: Heights;
  readonly along: Along;
  readonly tubeDrawn: number;
  readonly minimumDepth_m: number;
  readonly potFrame: Frame;
  readonly endFrame: Frame;
  /** Where the neck breaks off at the end of the pot's row; null where both rows are one. */
  readonly rowEnd: number | null;
}

const LEAST_STAND = 4;

const table = (x: number, width: number, topY: number, floorY: number): Stand[] =>
  floorY - topY > LEAST_STAND
    ? [{ kind: 'table', box: { x: x - 6, y: topY, width: width + 12, height: floorY - topY } }]
    : [];

function potShapes({ sizes, heights, along, potFrame, minimumDepth_m }: Settled) {
  const s = potFrame.pxPerMetre;
  const centre = along.potX + along.pot.pot;
  const pot = vesselShape(sizes.pot, potFrame, centre, heights.pot);
  const standY = yAt(potFrame, heights.potStand);
  const boiler =
    sizes.boiler && along.pot.boiler !== null
      ? vesselShape(sizes.boiler, potFrame, along.potX + along.pot.boiler, sizes.heat.height_m)
      : null;
  const cabinet =
    along.pot.cabinet === null ? null : { centreX: along.potX + along.pot.cabinet, width: cabinetWidth(sizes, s) };
  const heated = boiler ?? pot;
  const heatFloor = boiler ? potFrame.floorY : standY;
  const heat = heatShape(sizes.heat, heated, heatFloor, s, minimumDepth_m * s, cabinet);
  const bed = bedShape(sizes.bed, pot, sizes.pot.depth_m, s);
  const stands: Stand[] = [];
  if (boiler) {
    const legs = 0.72 * pot.outer.width;
    stands.push({
      kind: 'table',
      box: {
        x: pot.centreX - legs / 2,
        y: bottom(pot.outer),
        width: legs,
        height: Math.max(3, standY - bottom(pot.outer)),
      },
    });
    stands.push(...table(pot.outer.x, pot.outer.width, standY, potFrame.floorY));
  } else {
    const x = cabinet || heat.kind === 'immersion-element' ? pot.outer.x : Math.min(pot.outer.x, heat.body.x);
    const end =
      cabinet || heat.kind === 'immersion-element' ? right(pot.outer) : Math.max(right(pot.outer), right(heat.body));
    stands.push(...table(x, end - x, standY, potFrame.floorY));
    if (cabinet) stands.push(...table(heat.body.x, heat.body.width, standY, potFrame.floorY));
  }
  return { pot, boiler, bed, heat, potStands: stands, ...steamWays(sizes, pot, boiler, potFrame.floorY) };
}

function steamWays(
  sizes: TrueSizes,
  pot: VesselShape,
  boiler: VesselShape | null,
  floorY: number,
): { steamPipe: Point[]; bedDrain: Point[] } {
  if (!boiler) return { steamPipe: [], bedDrain: [] };
  const between = (right(boiler.outer) + pot.outer.x) / 2;
  const leaves = { x: right(boiler.inner) - 3, y: boiler.inner.y + 0.1 * boiler.inner.height };
  const enters = {
    x: pot.inner.x + 0.3 * pot.inner.width,
    y: bottom(pot.inner) - Math.max(3, 0.025 * pot.inner.height),
  };
  const steamPipe = roundCorners([leaves, { x: between, y: leaves.y }, { x: between, y: enters.y }, enters], 14);
  const foot = { x: pot.inner.x + 0.72 * pot.inner.width, y: bottom(pot.outer) - pot.wall };
  const low = Math.min(floorY - 4, bottom(pot.outer) + 10);
  const bedDrain =
    sizes.bedDrain === 'boiler'
      ? roundCorners(
          [
            foot,
            { x: foot.x, y: low },
            { x: right(boiler.outer) + 10, y: low },
            { x: right(boiler.outer) + 10, y: bottom(boiler.inner) - 8 },
            { x: right(boiler.inner) - 3, y: bottom(boiler.inner) - 8 },
          ],
          6,
        )
      : [foot, { x: foot.x, y: Math.max(low, floorY - 5) }];
  return { steamPipe, bedDrain };
}

function condenserParts({ sizes, heights, along, tubeDrawn, endFrame }: Settled) {
  const s = endFrame.pxPerMetre;
  const { condenser, tub } = sizes;
  const group = along.condenser;
  const x0 = along.condenserX;
  const inlet = { x: x0 + group.inlet, y: yAt(endFrame, heights.inlet) };
  const tip = { x: x0 + group.separator, y: yAt(endFrame, heights.tip) };
  const baseY = yAt(endFrame, heights.condenser);
  if (condenser.kind === 'coil' && tub) {
    const centreX = x0 + (group.left + group.right) / 2;
    const shape = tubShape(
      centreX,
      yAt(endFrame, heights.condenser + tub.height_m),
      baseY,
      tub.diameter_m * s,
      tub.freeboard_m * s,
      s,
    );
    return {
      condenser: coilShape(condenser, tub, endFrame, {
        centreX,
        overflowY: shape.water.y,
        tubBaseY: bottom(shape.water),
        inletTop: inlet,
        tip,
      }),
      cooling: tubCooling(shape, sizes.inlet, endFrame.floorY),
      stands: table(shape.outer.x, shape.outer.width, baseY, endFrame.floorY),
    };
  }
  if (condenser.kind !== 'straight') throw new Error('a coil needs a tub to stand in');
  const tube = straightShape(condenser, tubeDrawn, endFrame, { inlet, tip, hosesAbove: tub !== null });
  const place = {
    condenser: tube,
    counterflow: condenser.counterflow,
    upright: condenser.upright,
    floorY: endFrame.floorY,
  };
  const barrel =
    tub && group.barrel !== null
      ? tubShape(
          x0 + group.barrel,
          endFrame.floorY - tub.height_m * s,
          endFrame.floorY,
          tub.diameter_m * s,
          tub.freeboard_m * s,
          s,
        )
      : null;
  return {
    condenser: tube,
    cooling: barrel ? barrelCooling(place, barrel) : tapCooling(place),
    stands: rodsUnder(tube, condenser.upright, endFrame.floorY),
  };
}

function rodsUnder(tube: CondenserShape, upright: boolean, floorY: number): Stand[] {
  const [start, end] = (tube.runs[0]?.points ?? []) as readonly [Point, Point];
  const half = tube.jacketHalf;
  if (upright)
    return [
      {
        kind: 'rod',
        box: {
          x: start.x - half - 8,
          y: start.y + 0.1 * (end.y - start.y),
          width: 3,
          height: floorY - start.y - 0.1 * (end.y - start.y),
        },
      },
    ];
  return [0.2, 0.66].map((share) => {
    const x = start.x + share * (end.x - start.x);
    const y = start.y + share * (end.y - start.y) + half;
    return { kind: 'rod' as const, box: { x: x - 1.5, y, width: 3, height: floorY - y } };
  });
}

/** Along the floor from the separator's water to the pot (or boiler), when water is run back. */
function returnLine(settled: Settled, separator: SeparatorShape, jug: JugShape, vessel: VesselShape): Point[] {
  if (!settled.sizes.returns) return [];
  const floor = settled.endFrame.floorY + 12;
  const x = jug.glass.x - GLASS_WALL - 5;
  const down = [
    { x, y: separator.surfaceY },
    { x, y: floor },
  ];
  if (settled.rowEnd !== null) return roundCorners([...down, { x: 10, y: floor }], 8);
  const entersX = right(vessel.outer) + 12;
  const entersY = bottom(vessel.inner) - 10;
  return roundCorners(
    [...down, { x: entersX, y: floor }, { x: entersX, y: entersY }, { x: right(vessel.inner) - 3, y: entersY }],
    8,
  );
}

export function stillShapes(settled: Settled): StillShapes {
  const { sizes, heights, along, potFrame, endFrame, rowEnd } = settled;
  const front = potShapes(settled);
  const end = condenserParts(settled);
  const jug = jugShape(sizes, endFrame, along.condenserX + along.condenser.jug);
  const separator = separatorShape(sizes, heights, endFrame, along.condenserX + along.condenser.separator, jug);
  const lidTop = { x: front.pot.centreX, y: front.pot.lidTop + 1 };
  const apexX = front.pot.centreX + heights.riseAcross * potFrame.pxPerMetre;
  const inlet = { x: along.condenserX + along.condenser.inlet, y: yAt(endFrame, heights.inlet) };
  const apexLimit = rowEnd ?? inlet.x;
  const apex = {
    x: Math.min(apexX, lidTop.x + 0.8 * Math.max(4, apexLimit - lidTop.x)),
    y: Math.min(yAt(potFrame, heights.apex), front.pot.lidTop - 8),
  };
  const upright = !(sizes.condenser.kind === 'straight' && !sizes.condenser.upright);
  const neck = neckShape(
    sizes.neck.bore_m,
    sizes.neck.insulation_m,
    potFrame.pxPerMetre,
    { lidTop, apex, inlet, endsUpright: upright },
    along.neck,
    rowEnd,
  );
  const lifted = bottom(separator.glass) + GLASS_WALL;
  const endStands: Stand[] = [...end.stands];
  if (endFrame.floorY - lifted > 1.5)
    endStands.push({
      kind: 'block',
      box: { x: separator.glass.x - 5, y: lifted, width: separator.glass.width + 10, height: endFrame.floorY - lifted },
    });
  return {
    ...front,
    condenser: end.condenser,
    cooling: end.cooling,
    separator,
    jug,
    neck,
    returnLine: returnLine(settled, separator, jug, front.boiler ?? front.pot),
    endStands,
  };
}

const lidBox = (vessel: VesselShape): Box => ({
  x: vessel.outer.x - 2,
  y: vessel.lidTop,
  width: vessel.outer.width + 4,
  height: bottom(vessel.outer) - vessel.lidTop,
});

export interface Obstacles {
  /** Pot, heat and neck; the neck's second piece, where there is one, belongs to the other row. */
  readonly pot: readonly Box[];
  readonly end: readonly Box[];
}

/** Everything drawn, as boxes that words must keep off. */
export function obstaclesOf(shapes: StillShapes): Obstacles {
  const { neck, condenser, separator } = shapes;
  const tip = condenser.tail[condenser.tail.length - 1] as Point;
  const pieces = neck.pieces.map((piece) => boxesAlong(subdivide(piece, 24), neck.width + 2 * neck.insulation + 4));
  return {
    pot: [
      lidBox(shapes.pot),
      ...(shapes.boiler ? [lidBox(shapes.boiler)] : []),
      ...boxesAlong(shapes.steamPipe, 10),
      ...boxesAlong(shapes.bedDrain, 8),
      shapes.heat.body,
      ...shapes.heat.feet,
      ...boxesAlong(shapes.heat.rod, 6),
      ...(pieces[0] ?? []),
      ...shapes.potStands.map((stand) => stand.box),
    ],
    end: [
      ...(pieces[1] ?? []),
      ...condenserBoxes(condenser),
      ...coolingBoxes(shapes.cooling),
      separator.box,
      { x: separator.centreX - 5, y: tip.y, width: 10, height: Math.max(1, separator.funnel.topY - tip.y) },
      jugBox(shapes.jug),
      ...boxesAlong(shapes.returnLine, 6),
      ...shapes.endStands.map((stand) => stand.box),
    ],
  };
}
