/** Stills beside each other, to compare them by eye. */
import type { Scenario } from '../../../sim/index.ts';
import { layoutStill, type LayoutOptions, type PlacedLayout, type StillLayout } from './still-layout.ts';

/** How often the scale is brought down to that of the smallest drawing. */
const MOST_SCALES = 6;

/** Stills beside each other: one scale, one floor, sheets of one height. */
export function layoutAlike(scenarios: readonly Scenario[], options: LayoutOptions): readonly PlacedLayout[] {
  const scaleOf = (all: readonly StillLayout[]): number => Math.min(...all.map(({ pxPerMetre }) => pxPerMetre));
  let layouts = scenarios.map((scenario) => layoutStill(scenario, options));
  for (let round = 0; round < MOST_SCALES; round++) {
    const scaleAtMost = scaleOf(layouts);
    if (layouts.every(({ pxPerMetre }) => pxPerMetre <= scaleAtMost)) break;
    layouts = layouts.map((layout, index) =>
      layout.pxPerMetre <= scaleAtMost
        ? layout
        : layoutStill(scenarios[index] as Scenario, { ...options, scaleAtMost }),
    );
  }
  const over = ({ ground }: StillLayout): number => ground.y;
  const under = ({ height, ground }: StillLayout): number => height - ground.y;
  const [above, below] = [Math.max(...layouts.map(over)), Math.max(...layouts.map(under))];
  return layouts.map((layout) => ({ layout, above: above - over(layout), below: below - under(layout) }));
}
