/** Vapour leaving the outlet: curls that cannot be taken for anything else. */
import type { Point } from '../geometry/shapes.ts';

export function Escape(props: { readonly at: Point }) {
  const curl = (dx: number, tall: number) =>
    `M${props.at.x + dx} ${props.at.y - 2}c9 ${-0.28 * tall} -8 ${-0.45 * tall} 1 ${-0.7 * tall}c5 ${-0.14 * tall} 11 ${-0.02 * tall} 8 ${0.06 * tall}`;
  return <path class="drawing-escape" d={curl(0, 38) + curl(8, 52) + curl(16, 34)} />;
}
