/**
 * Drawings to build from as SVG, to scale: one unit is a millimetre of paper, and ink is the current colour, so that they
 * follow the page and print black.
 */
import {
  coilFigure,
  jacketFigure,
  neckFigure,
  separatorFigure,
  type Figure,
  type Place,
} from '../answers/building-sheet/figures.ts';
import type { SheetMeasures } from '../answers/building-sheet/measures.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { buildingSheetMessages } from './building-sheet.ts';
import type { Reader } from './language.ts';

/** Round scales of drawings. */
const SCALES = [1, 2, 2.5, 4, 5, 8, 10, 15, 20, 25, 40, 50] as const;
const TEXT = 3.7;
/** Room for the still itself on the paper, mm. */
const ROOM: Readonly<Record<Figure['id'], readonly [wide: number, tall: number]>> = {
  coil: [84, 72],
  jacket: [120, 40],
  neck: [74, 56],
  separator: [34, 40],
};
/** Between the still and the ends of the words, mm. */
const MARGIN: Readonly<Record<Figure['id'], { left: number; right: number; top: number; bottom: number }>> = {
  coil: { left: 46, right: 68, top: 8, bottom: 24 },
  jacket: { left: 30, right: 46, top: 8, bottom: 26 },
  neck: { left: 38, right: 20, top: 11, bottom: 18 },
  separator: { left: 38, right: 76, top: 10, bottom: 18 },
};

const WIDTHS: Readonly<Record<Figure['lines'][number]['stroke'], number>> = {
  wall: 0.6,
  tube: 0.4,
  hidden: 0.25,
  water: 0.4,
  centre: 0.2,
};
const DASHES: Readonly<Partial<Record<Figure['lines'][number]['stroke'], string>>> = {
  hidden: '1.6 1',
  centre: '4 1 0.8 1',
};

export interface DrawnFigure {
  readonly id: Figure['id'];
  readonly title: string;
  readonly scale: number;
  readonly width_mm: number;
  readonly height_mm: number;
  /** What stands inside an `svg` of that size. */
  readonly body: string;
}

/** What XML has no way to write: control characters and halves of pairs. */
const UNWRITABLE = /[^\t\n\r -\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

const escaped = (text: string): string =>
  text.replace(UNWRITABLE, '\uFFFD').replaceAll('&', '&amp;').replaceAll('<', '&lt;');
const mm = (value: number): string => String(Number(value.toFixed(3)));

function boundsOf({ lines, circles }: Figure) {
  const points = lines.flatMap((line) => line.points);
  const radii = circles.flatMap(({ centre: [x, y], diameter_m }): Place[] => [
    [x - diameter_m / 2, y - diameter_m / 2],
    [x + diameter_m / 2, y + diameter_m / 2],
  ]);
  const all = [...points, ...radii];
  const xs = all.map(([x]) => x);
  const ys = all.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

const ANCHORS = { left: 'end', right: 'start', above: 'start', below: 'middle', middle: 'middle' } as const;

const text = ([x, y]: Place, anchor: string, words: string): string =>
  `<text x="${mm(x)}" y="${mm(y)}" text-anchor="${anchor}" font-size="${TEXT}" fill="currentColor">${escaped(words)}</text>`;

function drawn(figure: Figure, scenario: Scenario, reader: Reader): DrawnFigure {
  const messages = buildingSheetMessages(reader);
  const bounds = boundsOf(figure);
  const [wide, tall] = ROOM[figure.id];
  const need = Math.max(((bounds.right - bounds.left) * 1000) / wide, ((bounds.bottom - bounds.top) * 1000) / tall);
  const scale = SCALES.find((each) => each >= need) ?? Math.ceil(need / 10) * 10;
  const margin = MARGIN[figure.id];
  const perMetre = 1000 / scale;
  const at = ([x, y]: Place): Place => [
    margin.left + (x - bounds.left) * perMetre,
    margin.top + (y - bounds.top) * perMetre,
  ];
  const path = (points: readonly Place[], closed: boolean): string =>
    `M${points.map((point) => at(point).map(mm).join(',')).join('L')}${closed ? 'Z' : ''}`;
  const lines = figure.lines.map(({ stroke, points, closed = false }) => {
    const dash = DASHES[stroke];
    return `<path class="sheet-${stroke}" d="${path(points, closed)}" fill="none" stroke="currentColor" stroke-width="${WIDTHS[stroke]}"${dash === undefined ? '' : ` stroke-dasharray="${dash}"`}/>`;
  });
  const circles = figure.circles.map(({ centre, diameter_m }) => {
    const [x, y] = at(centre);
    return `<circle class="sheet-tube" cx="${mm(x)}" cy="${mm(y)}" r="${mm((diameter_m / 2) * perMetre)}" fill="none" stroke="currentColor" stroke-width="0.4"/>`;
  });
  const dimensions = figure.dimensions.map(({ name, from, to, beside_mm, words }) => {
    const [a, b] = [at(from), at(to)];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const normal: Place = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
    const moved = ([x, y]: Place, by: number): Place => [x + by * normal[0], y + by * normal[1]];
    const [from_mm, to_mm] = [moved(a, beside_mm), moved(b, beside_mm)];
    const past = beside_mm + Math.sign(beside_mm) * 1.2;
    const witness = [a, b].map((end) => {
      const [x0, y0] = moved(end, Math.sign(beside_mm) * 0.8);
      const [x1, y1] = moved(end, past);
      return `<path d="M${mm(x0)},${mm(y0)}L${mm(x1)},${mm(y1)}" stroke="currentColor" stroke-width="0.15"/>`;
    });
    const ticks = [from_mm, to_mm].map(
      ([x, y]) =>
        `<path d="M${mm(x - 0.8)},${mm(y + 0.8)}L${mm(x + 0.8)},${mm(y - 0.8)}" stroke="currentColor" stroke-width="0.4"/>`,
    );
    const middle: Place = [(from_mm[0] + to_mm[0]) / 2, (from_mm[1] + to_mm[1]) / 2];
    const [dx, dy] = { left: [-1.8, 1.2], right: [1.8, 1.2], above: [2, -1.4], below: [0, 4.4] }[words] as [
      number,
      number,
    ];
    const value_m = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const line = `<line x1="${mm(from_mm[0])}" y1="${mm(from_mm[1])}" x2="${mm(to_mm[0])}" y2="${mm(to_mm[1])}" stroke="currentColor" stroke-width="0.2"/>`;
    const told = text([middle[0] + dx, middle[1] + dy], ANCHORS[words], messages.dimension(name, value_m));
    return `<g data-dimension="${name}">${witness.join('')}${ticks.join('')}${line}${told}</g>`;
  });
  const labels = figure.labels.map(({ name, at: place, side }) => {
    const [x, y] = at(place);
    const by = side === 'middle' ? 0 : side === 'right' ? 2 : -2;
    return text([x + by, y - 0.6], ANCHORS[side], messages.label(name, scenario));
  });
  return {
    id: figure.id,
    title: messages.figure(figure.id),
    scale,
    width_mm: margin.left + (bounds.right - bounds.left) * perMetre + margin.right,
    height_mm: margin.top + (bounds.bottom - bounds.top) * perMetre + margin.bottom,
    body: [...lines, ...circles, ...dimensions, ...labels].join(''),
  };
}

/** Condenser, swan neck and separator, each at its own round scale. */
export function sheetDrawings(measures: SheetMeasures, scenario: Scenario, reader: Reader): readonly DrawnFigure[] {
  const condenser = measures.coil
    ? [coilFigure(measures.coil, scenario.cooling.inlet === 'top' ? 'top' : 'bottom')]
    : measures.jacket
      ? [jacketFigure(measures.jacket, measures.ends)]
      : [];
  return [...condenser, neckFigure(measures.neck), separatorFigure(measures.separator)].map((figure) =>
    drawn(figure, scenario, reader),
  );
}

const FONT = 'font-family="Source Sans 3, system-ui, sans-serif"';

/** One drawing by itself. */
export const figureSvg = ({ width_mm, height_mm, body }: DrawnFigure): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width_mm)}mm" height="${mm(height_mm)}mm" viewBox="0 0 ${mm(width_mm)} ${mm(height_mm)}" ${FONT}>${body}</svg>`;

const PAGE = { width: 210, edge: 12, title: 8, gap: 10 } as const;

/** All drawings under each other on one page, with their titles and scales. */
export function sheetSvg(name: string, figures: readonly DrawnFigure[], reader: Reader): string {
  const messages = buildingSheetMessages(reader);
  let y: number = PAGE.edge + PAGE.title;
  const parts: string[] = [text([PAGE.edge, PAGE.edge], 'start', `${name}: ${messages.title.toLowerCase()}`)];
  for (const figure of figures) {
    parts.push(text([PAGE.edge, y], 'start', `${figure.title}, ${messages.scale(figure.scale)}`));
    parts.push(
      `<g data-figure="${figure.id}" data-scale="${figure.scale}" transform="translate(${PAGE.edge} ${mm(y + 2)})">${figure.body}</g>`,
    );
    y += figure.height_mm + PAGE.gap;
  }
  const width = Math.max(PAGE.width, ...figures.map(({ width_mm }) => width_mm + 2 * PAGE.edge));
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(y)}mm" viewBox="0 0 ${mm(width)} ${mm(y)}" color="#1e2b33" ${FONT}><rect width="100%" height="100%" fill="#ffffff"/>${parts.join('')}</svg>\n`;
}
