/** The draughtsman's break: two S-curves with a gap, where a run is drawn shorter or longer than it is. */
import type { Point } from '../geometry/shapes.ts';

interface BreakMarkProps {
  readonly at: Point;
  /** Direction of the run, unit length. */
  readonly dx: number;
  readonly dy: number;
  readonly half: number;
}

export function BreakMark(props: BreakMarkProps) {
  const angle = () => (Math.atan2(props.dy, props.dx) * 180) / Math.PI;
  const curve = (x: number) =>
    `M${x} ${-props.half}C${x + 5} ${-props.half * 0.4} ${x - 5} ${props.half * 0.4} ${x} ${props.half}`;
  return (
    <g transform={`translate(${props.at.x} ${props.at.y}) rotate(${angle()})`}>
      <path
        class="drawing-gap"
        d={`${curve(-3)}L3 ${props.half}C-2 ${props.half * 0.4} 8 ${-props.half * 0.4} 3 ${-props.half}Z`}
      />
      <path class="drawing-break" d={curve(-3) + curve(3)} />
    </g>
  );
}
