/** Pen work: herb, hatching and waves, the same at every redraw. */
import { bottom, right, type Box } from './shapes.ts';

/** A number in [0, 1) that depends only on `n`: scatter without chance. */
export function scatter(n: number): number {
  const x = Math.sin(n * 12.9898 + 78.233) * 43758.5453;
  return x - Math.floor(x);
}

const one = (value: number): string => (Math.round(value * 10) / 10).toString();

const HERB_SPACING = 9.5;
const MOST_STROKES = 900;

/** Small curved strokes for the charge, jittered about a lattice so that no pattern shows. */
export function herbStrokes(box: Box): string {
  if (box.height < 3 || box.width < 3) return '';
  const spacing = Math.max(HERB_SPACING, Math.sqrt((box.width * box.height) / MOST_STROKES));
  let path = '';
  let n = 0;
  for (let y = box.y + spacing / 2; y < bottom(box); y += spacing) {
    for (let x = box.x + spacing / 2; x < right(box); x += spacing) {
      n++;
      const angle = scatter(n) * Math.PI * 2;
      const reach = spacing * (0.34 + 0.3 * scatter(n + 0.3));
      const bend = (scatter(n + 0.6) - 0.5) * reach * 1.3;
      const cx = Math.min(
        right(box) - reach - 1,
        Math.max(box.x + reach + 1, x + (scatter(n + 0.1) - 0.5) * spacing * 0.8),
      );
      const cy = Math.min(
        bottom(box) - reach * 0.8,
        Math.max(box.y + reach * 0.8, y + (scatter(n + 0.2) - 0.5) * spacing * 0.8),
      );
      const dx = Math.cos(angle) * reach;
      const dy = Math.sin(angle) * reach * 0.8;
      path += `M${one(cx - dx)} ${one(cy - dy)}Q${one(cx - dy * (bend / reach))} ${one(cy + dx * (bend / reach))} ${one(cx + dx)} ${one(cy + dy)}`;
    }
  }
  return path;
}

/** A quiet wavy line of unit amplitude 1 px about y = 0, from x for `width`. */
export function waveLine(x: number, width: number, length = 26): string {
  const count = Math.max(1, Math.round(width / length));
  const step = width / count;
  let path = `M${one(x)} 0`;
  for (let index = 0; index < count; index++) path += `q${one(step / 4)} -2 ${one(step / 2)} 0t${one(step / 2)} 0`;
  return path;
}

/** Short slanting strokes under a floor line. */
export function groundHatch(x: number, y: number, width: number): string {
  let path = '';
  for (let at = x + 8; at < x + width; at += 9) path += `M${one(at)} ${one(y + 1)}l-6 7`;
  return path;
}

/** A pointed flame of height `height` standing on the origin. */
export const flamePath = (half: number, height: number): string =>
  `M0 0C${one(-1.5 * half)} ${one(-0.25 * height)} ${one(-half)} ${one(-0.55 * height)} 0 ${one(-height)}C${one(0.5 * half)} ${one(-0.7 * height)} ${one(1.7 * half)} ${one(-0.35 * height)} 0 0Z`;
