/** The heat source under (or in) its vessel, in pixels. */
import { SOURCE_OVERHANG } from './along.ts';
import { bottom, right, type Box, type Point } from './shapes.ts';
import type { HeatSize } from './true-sizes.ts';
import type { VesselShape } from './vessel-shape.ts';

export interface Flame {
  readonly x: number;
  readonly baseY: number;
  /** Height and half width at full power. */
  readonly height: number;
  readonly half: number;
}

export interface HeatShape {
  readonly kind: HeatSize['kind'];
  /** Body of the source; for an element its terminal box outside the wall, for a steam generator its cabinet. */
  readonly body: Box;
  /** Where the vessel rests, and the stand or floor below the source. */
  readonly topY: number;
  readonly floorY: number;
  readonly heatedLeft: number;
  readonly heatedRight: number;
  readonly flames: readonly Flame[];
  /** Heating rod inside the vessel, or steam pipe into it. */
  readonly rod: readonly Point[];
  readonly feet: readonly Box[];
  /** A steam generator's cabinet stands beside the pot. */
  readonly beside: boolean;
}

const feetUnder = (vessel: VesselShape, floorY: number): Box[] => {
  const width = Math.max(5, vessel.outer.width * 0.07);
  const top = bottom(vessel.outer);
  return [vessel.outer.x + 4, right(vessel.outer) - 4 - width].map((x) => ({
    x,
    y: top,
    width,
    height: Math.max(0, floorY - top),
  }));
};

function flamesAbove(left: number, rightEdge: number, baseY: number, topY: number, spacing: number): Flame[] {
  const count = Math.max(2, Math.min(14, Math.round((rightEdge - left) / spacing)));
  const pitch = (rightEdge - left) / count;
  return Array.from({ length: count }, (_, index) => ({
    x: left + pitch * (index + 0.5),
    baseY,
    height: Math.max(3, baseY - topY) * (index % 2 === 0 ? 1 : 0.82),
    half: Math.min(pitch * 0.4, spacing * 0.4),
  }));
}

/** Share of the source's height at which flames begin. */
const FLAME_BASE = { 'gas-ring': 0.5, 'gas-burner': 0.4, 'wood-fire': 0.42 } as const;

/** A rod in the water, bent back once, coming in through the wall just above the base. */
function rodIn(vessel: VesselShape, minimumDepth: number): Point[] {
  const { inner } = vessel;
  const low = bottom(inner) - Math.max(3, Math.min(minimumDepth * 0.35, 0.12 * inner.height));
  const high = low - Math.max(4, Math.min(minimumDepth * 0.4, 0.08 * inner.height));
  const far = inner.x + 0.84 * inner.width;
  const enters = inner.x - vessel.wall - vessel.insulation - 2;
  return [
    { x: enters, y: low },
    { x: far, y: low },
    { x: far + 5, y: (low + high) / 2 },
    { x: far, y: high },
    { x: enters, y: high },
  ];
}

/**
 * @param minimumDepth depth of liquid that covers the element, px
 * @param cabinet centre and width of a steam generator's cabinet, when it stands beside the pot
 */
export function heatShape(
  size: HeatSize,
  vessel: VesselShape,
  floorY: number,
  pxPerMetre: number,
  minimumDepth: number,
  cabinet: { readonly centreX: number; readonly width: number } | null,
): HeatShape {
  const topY = bottom(vessel.outer);
  const half = Math.min(vessel.inner.width, size.width_m * pxPerMetre) / 2;
  const heatedLeft = vessel.centreX - half;
  const heatedRight = vessel.centreX + half;
  const shared = { kind: size.kind, topY, floorY, heatedLeft, heatedRight, beside: cabinet !== null };
  const under = (overhang: number): Box => ({
    x: vessel.centreX - half * overhang,
    y: topY,
    width: 2 * half * overhang,
    height: Math.max(2, floorY - topY),
  });
  switch (size.kind) {
    case 'electric-plate':
    case 'induction':
      return { ...shared, body: under(SOURCE_OVERHANG), flames: [], rod: [], feet: [] };
    case 'gas-ring':
    case 'gas-burner':
    case 'wood-fire': {
      const base = floorY - (floorY - topY) * FLAME_BASE[size.kind];
      const reach = size.kind === 'gas-burner' ? 0.72 : 0.9;
      const flames = flamesAbove(
        vessel.centreX - half * reach,
        vessel.centreX + half * reach,
        base,
        topY + 1,
        size.kind === 'wood-fire' ? 22 : 15,
      );
      return { ...shared, body: under(size.kind === 'wood-fire' ? SOURCE_OVERHANG : 1.05), flames, rod: [], feet: [] };
    }
    case 'immersion-element':
    case 'steam-generator': {
      const feet = feetUnder(vessel, floorY);
      if (cabinet) {
        const tall = Math.max(44, 0.85 * vessel.inner.height);
        const body = { x: cabinet.centreX - cabinet.width / 2, y: floorY - tall, width: cabinet.width, height: tall };
        const enters = bottom(vessel.inner) - 5;
        const rise = Math.min(enters, body.y + 10);
        const between = (right(body) + vessel.outer.x) / 2;
        const rod = [
          { x: right(body), y: rise },
          { x: between, y: rise },
          { x: between, y: enters },
          { x: vessel.inner.x + 0.8 * vessel.inner.width, y: enters },
        ];
        return { ...shared, body, flames: [], rod, feet };
      }
      const rod = rodIn(vessel, minimumDepth);
      const first = rod[0] as Point;
      const last = rod[rod.length - 1] as Point;
      const box = { x: first.x - 16, y: last.y - 6, width: 16, height: Math.max(12, first.y - last.y + 12) };
      return { ...shared, body: box, flames: [], rod, feet };
    }
  }
}
