/** Shapes onto a canvas. */
import { areaOnto, traceOnto } from '../model/paths.ts';
import { colourOf, heatColours, type Palette } from '../model/palette.ts';
import type { FieldShape, Shape } from '../model/shapes.ts';

const FIELD_STEPS = 64;

export function drawShapes(context: CanvasRenderingContext2D, shapes: readonly Shape[], palette: Palette): void {
  context.lineJoin = 'round';
  context.lineCap = 'round';
  for (const shape of shapes) drawShape(context, shape, palette);
  context.setLineDash([]);
  context.globalAlpha = 1;
}

function drawShape(context: CanvasRenderingContext2D, shape: Shape, palette: Palette): void {
  switch (shape.kind) {
    case 'line':
      context.globalAlpha = 1;
      context.strokeStyle = colourOf(palette, shape.ink);
      context.lineWidth = shape.width;
      context.setLineDash([...shape.dash]);
      context.beginPath();
      traceOnto(context, shape.points);
      context.stroke();
      return;
    case 'area':
      context.globalAlpha = shape.opacity;
      context.fillStyle = colourOf(palette, shape.ink);
      context.beginPath();
      areaOnto(context, shape.upper, shape.lower);
      context.fill();
      return;
    case 'dots':
      drawDots(context, shape.points, palette, colourOf(palette, shape.ink));
      return;
    case 'field':
      drawField(context, shape, palette);
      return;
  }
}

function drawDots(context: CanvasRenderingContext2D, points: Float64Array, palette: Palette, colour: string): void {
  context.globalAlpha = 1;
  context.setLineDash([]);
  context.lineWidth = 1.5;
  context.strokeStyle = colour;
  context.fillStyle = palette.paper;
  for (let at = 0; at + 1 < points.length; at += 2) {
    if (Number.isNaN(points[at])) continue;
    context.beginPath();
    context.arc(points[at] as number, points[at + 1] as number, 3.5, 0, 2 * Math.PI);
    context.fill();
    context.stroke();
  }
}

function drawField(context: CanvasRenderingContext2D, field: FieldShape, palette: Palette): void {
  const colours = heatColours(palette, FIELD_STEPS);
  const width = field.width / field.columns;
  const height = field.height / field.cells;
  context.globalAlpha = 1;
  for (let column = 0; column < field.columns; column += 1) {
    for (let cell = 0; cell < field.cells; cell += 1) {
      const share = field.shares[column * field.cells + cell] as number;
      context.fillStyle = colours[Math.round(Math.max(0, Math.min(1, share)) * (FIELD_STEPS - 1))] ?? palette.paper;
      // A hair wider and higher, so that no seam shows between neighbours.
      context.fillRect(
        field.left + column * width,
        field.top + (field.cells - 1 - cell) * height,
        width + 0.4,
        height + 0.4,
      );
    }
  }
}
