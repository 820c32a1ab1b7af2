/** Every part of the still as shapes in pixels, once it is settled where and how high each stands. */
import { cabinetWidth, isTucked, type Along, type Arrangement } from './along.ts';
import { coilShape, condenserBoxes, straightShape, type CondenserShape } from './condenser-shape.ts';
import { barrelCooling, coolingBoxes, tapCooling, tubCooling, tubShape, type CoolingShape } from './cooling-shape.ts';
import { heatShape, type HeatShape } from './heat-shape.ts';
import type { Heights } from './heights.ts';
import { GLASS_WALL } from './line-weights.ts';
import { neckShape, type NeckShape } from './neck-shape.ts';
import {
  jugBox,
  jugShape,
  separatorShape,
  tuckedSeparator,
  type JugShape,
  type SeparatorShape,
} from './separator-shape.ts';
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
  readonly frame: Frame;
  readonly arrangement: Arrangement;
}

const LEAST_STAND = 4;

const table = (x: number, width: number, topY: number, floorY: number): Stand[] =>
  floorY - topY > LEAST_STAND
    ? [{ kind: 'table', box: { x: x - 6, y: topY, width: width + 12, height: floorY - topY } }]
    : [];

function potShapes({ sizes, heights, along, frame, minimumDepth_m }: Settled) {
  const s = frame.pxPerMetre;
  const centre = along.potX + along.pot.pot;
  const pot = vesselShape(sizes.pot, frame, centre, heights.pot);
  const standY = yAt(frame, heights.potStand);
  const boiler =
    sizes.boiler && along.pot.boiler !== null
      ? vesselShape(sizes.boiler, frame, along.potX + along.pot.boiler, sizes.heat.height_m)
      : null;
  const cabinet =
    along.pot.cabinet === null ? null : { centreX: along.potX + along.pot.cabinet, width: cabinetWidth(sizes, s) };
  const heated = boiler ?? pot;
  const heatFloor = boiler ? frame.floorY : standY;
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
    stands.push(...table(pot.outer.x, pot.outer.width, standY, frame.floorY));
  } else {
    const x = cabinet || heat.kind === 'immersion-element' ? pot.outer.x : Math.min(pot.outer.x, heat.body.x);
    const end =
      cabinet || heat.kind === 'immersion-element' ? right(pot.outer) : Math.max(right(pot.outer), right(heat.body));
    stands.push(...table(x, end - x, standY, frame.floorY));
    if (cabinet) stands.push(...table(heat.body.x, heat.body.width, standY, frame.floorY));
  }
  return { pot, boiler, bed, heat, potStands: stands, ...steamWays(sizes, pot, boiler, frame.floorY) };
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

function condenserParts({ sizes, heights, along, tubeDrawn, frame, arrangement }: Settled) {
  const s = frame.pxPerMetre;
  const { condenser, tub } = sizes;
  const group = along.condenser;
  const x0 = along.condenserX;
  const inlet = { x: x0 + group.inlet, y: yAt(frame, heights.inlet) };
  const tip = { x: x0 + group.separator, y: yAt(frame, heights.tip) };
  const baseY = yAt(frame, heights.condenser);
  if (condenser.kind === 'coil' && tub) {
    const centreX = x0 + (group.left + group.right) / 2;
    const shape = tubShape(
      centreX,
      yAt(frame, heights.condenser + tub.height_m),
      baseY,
      tub.diameter_m * s,
      tub.freeboard_m * s,
      s,
    );
    return {
      condenser: coilShape(condenser, tub, frame, {
        centreX,
        overflowY: shape.water.y,
        tubBaseY: bottom(shape.water),
        inletTop: inlet,
        tip,
      }),
      cooling: tubCooling(shape, sizes.inlet, frame.floorY, arrangement),
      stands: table(shape.outer.x, shape.outer.width, baseY, frame.floorY),
    };
  }
  if (condenser.kind !== 'straight') throw new Error('a coil needs a tub to stand in');
  const tube = straightShape(condenser, tubeDrawn, frame, { inlet, tip, hosesAbove: tub !== null });
  const place = {
    condenser: tube,
    counterflow: condenser.counterflow,
    upright: condenser.upright,
    floorY: frame.floorY,
  };
  const barrel =
    tub && group.barrel !== null
      ? tubShape(
          x0 + group.barrel,
          frame.floorY - tub.height_m * s,
          frame.floorY,
          tub.diameter_m * s,
          tub.freeboard_m * s,
          s,
        )
      : null;
  return {
    condenser: tube,
    cooling: barrel ? barrelCooling(place, barrel) : tapCooling(place),
    stands: rodsUnder(tube, condenser.upright, frame.floorY),
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
  const floor = settled.frame.floorY + 12;
  const x = jug.glass.x < separator.centreX ? right(jug.glass) + GLASS_WALL + 5 : jug.glass.x - GLASS_WALL - 5;
  const down = [
    { x, y: separator.surfaceY },
    { x, y: floor },
  ];
  const entersX = right(vessel.outer) + 12;
  const entersY = bottom(vessel.inner) - 10;
  return roundCorners(
    [...down, { x: entersX, y: floor }, { x: entersX, y: entersY }, { x: right(vessel.inner) - 3, y: entersY }],
    8,
  );
}

export function stillShapes(settled: Settled): StillShapes {
  const { sizes, heights, along, frame } = settled;
  const front = potShapes(settled);
  const end = condenserParts(settled);
  const jug = jugShape(sizes, frame, along.condenserX + along.condenser.jug);
  const separatorX = along.condenserX + along.condenser.separator;
  const separator = (isTucked(sizes, settled.arrangement) ? tuckedSeparator : separatorShape)(
    sizes,
    heights,
    frame,
    separatorX,
    jug,
  );
  const lidTop = { x: front.pot.centreX, y: front.pot.lidTop + 1 };
  const apexX = front.pot.centreX + heights.riseAcross * frame.pxPerMetre;
  const inlet = { x: along.condenserX + along.condenser.inlet, y: yAt(frame, heights.inlet) };
  const apex = {
    x: Math.min(apexX, lidTop.x + 0.8 * Math.max(4, inlet.x - lidTop.x)),
    y: Math.min(yAt(frame, heights.apex), front.pot.lidTop - 8),
  };
  const upright = !(sizes.condenser.kind === 'straight' && !sizes.condenser.upright);
  const neck = neckShape(
    sizes.neck.bore_m,
    sizes.neck.insulation_m,
    frame.pxPerMetre,
    { lidTop, apex, inlet, endsUpright: upright },
    along.neck,
  );
  const lifted = bottom(separator.glass) + GLASS_WALL;
  const endStands: Stand[] = [...end.stands];
  if (frame.floorY - lifted > 1.5)
    endStands.push({
      kind: 'block',
      box: { x: separator.glass.x - 5, y: lifted, width: separator.glass.width + 10, height: frame.floorY - lifted },
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

/** Everything drawn, as boxes that words must keep off. */
export function obstaclesOf(shapes: StillShapes): readonly Box[] {
  const { neck, condenser, separator } = shapes;
  const tip = condenser.tail[condenser.tail.length - 1] as Point;
  return [
    lidBox(shapes.pot),
    ...(shapes.boiler ? [lidBox(shapes.boiler)] : []),
    ...boxesAlong(shapes.steamPipe, 10),
    ...boxesAlong(shapes.bedDrain, 8),
    shapes.heat.body,
    ...shapes.heat.feet,
    ...boxesAlong(shapes.heat.rod, 6),
    ...boxesAlong(subdivide(neck.run, 24), neck.width + 2 * neck.insulation + 4),
    ...shapes.potStands.map((stand) => stand.box),
    ...condenserBoxes(condenser),
    ...coolingBoxes(shapes.cooling),
    separator.box,
    { x: separator.centreX - 5, y: tip.y, width: 10, height: Math.max(1, separator.funnel.topY - tip.y) },
    jugBox(shapes.jug),
    ...boxesAlong(shapes.returnLine, 6),
    ...shapes.endStands.map((stand) => stand.box),
  ];
}
