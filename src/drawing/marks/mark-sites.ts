/** Where moving marks live: measured flow lines and regions of the drawing, computed once for a layout. */
import type { StillLayout } from '../geometry/still-layout.ts';
import type { Box, Point } from '../geometry/shapes.ts';
import { flowLine, type FlowLine } from './flow-lines.ts';

export interface VapourRun extends FlowLine {
  /** Shares of the cooled length at the ends of this visible piece. */
  readonly from: number;
  readonly to: number;
}

export interface MarkSites {
  readonly pxPerMetre: number;
  readonly potInner: Box;
  /** Vessel whose water boils. */
  readonly boiling: Box;
  readonly bed: Box;
  readonly submerged: boolean;
  /** Bottom of the vapour space over the bed or the water is state; its top is this dome. */
  readonly domes: readonly { readonly inner: Box; readonly rise: number }[];
  readonly steamPipe: FlowLine | null;
  readonly neck: FlowLine;
  readonly neckWidth: number;
  readonly feed: FlowLine | null;
  readonly tubes: readonly VapourRun[];
  readonly tubeWidth: number;
  readonly tail: FlowLine;
  readonly tip: Point;
  readonly dropEndY: number;
  readonly hoses: readonly FlowLine[];
  readonly separator: {
    readonly glass: Box;
    readonly surfaceY: number;
    readonly inletY: number;
    readonly centreX: number;
  };
  readonly spill: Point;
  readonly jug: { readonly glass: Box; readonly pxPerKg: number };
  readonly neckBore_m: number;
  readonly potDiameter_m: number;
}

const lineOrNone = (points: readonly Point[]): FlowLine | null => (points.length < 2 ? null : flowLine(points));

export function markSites(layout: StillLayout): MarkSites {
  const { shapes, sizes } = layout;
  const { pot, boiler, bed, neck, condenser, cooling, separator, jug } = shapes;
  return {
    pxPerMetre: layout.pxPerMetre,
    potInner: pot.inner,
    boiling: (boiler ?? pot).inner,
    bed: bed.box,
    submerged: bed.submerged,
    domes: (boiler ? [pot, boiler] : [pot]).map((vessel) => ({
      inner: vessel.inner,
      rise: Math.max(2, vessel.inner.y - vessel.lidTop - vessel.wall),
    })),
    steamPipe: lineOrNone(shapes.steamPipe),
    neck: flowLine(neck.run),
    neckWidth: neck.width,
    feed: lineOrNone(condenser.feed),
    tubes: condenser.runs.map((run) => ({ ...flowLine(run.points), from: run.from, to: run.to })),
    tubeWidth: condenser.tubeWidth,
    tail: flowLine(condenser.tail),
    tip: condenser.tail[condenser.tail.length - 1] as Point,
    dropEndY: separator.funnel.neckY,
    hoses: [cooling.supply, cooling.drain].filter((points) => points.length > 1).map(flowLine),
    separator: {
      glass: separator.glass,
      surfaceY: separator.surfaceY,
      inletY: separator.funnel.endY,
      centreX: separator.centreX,
    },
    spill: separator.spill,
    jug,
    neckBore_m: sizes.neck.bore_m,
    potDiameter_m: sizes.pot.diameter_m,
  };
}
