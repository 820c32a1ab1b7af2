/** Shapes as SVG paths: the exported twin of what a canvas shows. */
import { withoutStraights } from '../model/decimate.ts';
import { areaPath, tracePath } from '../model/paths.ts';
import { colourOf, heatColours, type Palette } from '../model/palette.ts';
import type { FieldShape, Shape } from '../model/shapes.ts';
import { element } from './svg-markup.ts';

/** Pixels by which a line in a file may differ from its points. */
const TOLERANCE = 0.05;

/** Colour steps of a field; cells of one step in a row become one rectangle. */
const FIELD_STEPS = 32;

export function shapeMarkup(shape: Shape, palette: Palette): string {
  switch (shape.kind) {
    case 'line':
      return element('path', {
        d: tracePath(withoutStraights(shape.points, TOLERANCE)),
        fill: 'none',
        stroke: colourOf(palette, shape.ink),
        'stroke-width': shape.width,
        'stroke-dasharray': shape.dash.length > 0 ? shape.dash.join(' ') : undefined,
        'stroke-linejoin': 'round',
        'stroke-linecap': 'round',
      });
    case 'area':
      return element('path', {
        d: areaPath(withoutStraights(shape.upper, TOLERANCE), withoutStraights(shape.lower, TOLERANCE)),
        fill: colourOf(palette, shape.ink),
        'fill-opacity': shape.opacity,
      });
    case 'dots': {
      const circles: string[] = [];
      for (let at = 0; at + 1 < shape.points.length; at += 2) {
        const [cx, cy] = [shape.points[at] as number, shape.points[at + 1] as number];
        if (Number.isFinite(cx))
          circles.push(
            element('circle', {
              cx,
              cy,
              r: 3.5,
              fill: palette.paper,
              stroke: colourOf(palette, shape.ink),
              'stroke-width': 1.5,
            }),
          );
      }
      return circles.join('');
    }
    case 'field':
      return fieldMarkup(shape, palette);
  }
}

function fieldMarkup({ left, top, width, height, columns, cells, shares }: FieldShape, palette: Palette): string {
  const colours = heatColours(palette, FIELD_STEPS);
  const columnWidth = width / columns;
  const cellHeight = height / cells;
  const stepAt = (column: number, cell: number): number =>
    Math.round(Math.max(0, Math.min(1, shares[column * cells + cell] as number)) * (FIELD_STEPS - 1));
  const rectangles: string[] = [];
  for (let cell = 0; cell < cells; cell += 1) {
    let start = 0;
    for (let column = 1; column <= columns; column += 1) {
      if (column < columns && stepAt(column, cell) === stepAt(start, cell)) continue;
      rectangles.push(
        element('rect', {
          x: left + start * columnWidth,
          y: top + (cells - 1 - cell) * cellHeight,
          // A hair wider and higher, so that no seam shows between neighbours.
          width: (column - start) * columnWidth + 0.3,
          height: cellHeight + 0.3,
          fill: colours[stepAt(start, cell)],
        }),
      );
      start = column;
    }
  }
  return element('g', { 'shape-rendering': 'crispEdges' }, ...rectangles);
}
