/** Paints marks on a canvas, one path for each colour. */
import type { Ink, Painter } from './draw-marks.ts';

export type Inks = Readonly<Record<Ink, { readonly stroke: string; readonly fill: string }>>;

const TOKENS: Readonly<Record<Ink, readonly [stroke: string, fill: string]>> = {
  steam: ['--steam', '--steam'],
  heat: ['--copper', '--copper'],
  water: ['--water', '--water'],
  oil: ['--oil', '--oil-tint'],
  alarm: ['--alarm', '--alarm'],
};

/** The theme's colours as they stand on an element. */
export function inksOf(element: Element): Inks {
  const style = getComputedStyle(element);
  const read = (ink: Ink) => {
    const [stroke, fill] = TOKENS[ink];
    return { stroke: style.getPropertyValue(stroke).trim(), fill: style.getPropertyValue(fill).trim() };
  };
  return { steam: read('steam'), heat: read('heat'), water: read('water'), oil: read('oil'), alarm: read('alarm') };
}

const FULL_CIRCLE = 2 * Math.PI;
/** Dots this small are drawn as squares: no eye tells them apart, and squares cost a tenth. */
const SQUARE_BELOW = 1;

export function createCanvasPainter(context: CanvasRenderingContext2D, inks: Inks): Painter {
  let fills = new Path2D();
  let rings = new Path2D();
  context.lineCap = 'round';
  return {
    begin(ink) {
      context.fillStyle = inks[ink].fill;
      context.strokeStyle = inks[ink].stroke;
      fills = new Path2D();
      rings = new Path2D();
    },
    dot(x, y, radius) {
      if (radius < SQUARE_BELOW) {
        context.fillRect(x - radius, y - radius, 2 * radius, 2 * radius);
        return;
      }
      fills.moveTo(x + radius, y);
      fills.arc(x, y, radius, 0, FULL_CIRCLE);
    },
    ring(x, y, radius) {
      rings.moveTo(x + radius, y);
      rings.arc(x, y, radius, 0, FULL_CIRCLE);
    },
    line(x1, y1, x2, y2, width) {
      context.lineWidth = width;
      context.beginPath();
      context.moveTo(x1, y1);
      context.lineTo(x2, y2);
      context.stroke();
    },
    end() {
      context.fill(fills);
      context.lineWidth = 0.9;
      context.stroke(rings);
    },
  };
}
