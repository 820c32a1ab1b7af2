/** The ranked bars of the uncertain values as numbers, and as a picture that stands alone. */
import { type Influence, formatNumber } from '../../../sim/index.ts';
import type { Palette } from '../../charts/model/palette.ts';
import { element, picture, words as escaped } from '../../charts/export/svg-markup.ts';

export interface Reach {
  readonly planned: number | null;
  /** Share of the way from the least to the greatest value of all rows. */
  at(value: number | null): number;
}

export function reach(rows: readonly Pick<Influence, 'atLow' | 'atHigh'>[], planned: number | null): Reach {
  const values = [...rows.flatMap(({ atLow, atHigh }) => [atLow, atHigh]), planned].filter((value) => value !== null);
  const low = Math.min(...values);
  const span = Math.max(...values) - low;
  return { planned, at: (value) => (value === null || !(span > 0) ? 0.5 : (value - low) / span) };
}

export interface InfluencePicture {
  readonly title: string;
  readonly subtitle: string;
  readonly rows: readonly Influence[];
  readonly bounds: Reach;
  readonly name: (row: Influence) => string;
  readonly words: (value: number | null) => string;
  readonly palette: Palette;
}

const ROW = 28;
const NAMES = 260;
const TRACK = 380;
const WIDTH = 960;

export function influencePicture({ title, subtitle, rows, bounds, name, words, palette }: InfluencePicture): string {
  const x = (value: number | null): number => NAMES + TRACK * bounds.at(value);
  const body = rows.map((row, index) => {
    const y = index * ROW + ROW / 2;
    const [from, to] = [x(row.atLow), x(row.atHigh)];
    return element(
      'g',
      {},
      element('text', { x: 0, y: y + 4 }, escaped(name(row))),
      element('path', { d: `M${NAMES},${y}h${TRACK}`, stroke: palette.gridline, 'stroke-width': 0.5 }),
      element('rect', {
        x: Math.min(from, to),
        y: y - 6,
        width: Math.max(1, Math.abs(to - from)),
        height: 12,
        fill: palette['oil-tint'],
        stroke: palette.oil,
        'stroke-width': 0.75,
      }),
      element('text', { x: NAMES + TRACK + 16, y: y + 4 }, escaped(`${words(row.atLow)} to ${words(row.atHigh)}`)),
      element(
        'text',
        { x: WIDTH, y: y + 4, 'text-anchor': 'end', fill: palette['ink-muted'] },
        row.spearman === null ? '–' : formatNumber(row.spearman, 2),
      ),
    );
  });
  const height = rows.length * ROW;
  const planned =
    bounds.planned === null
      ? ''
      : element('path', { d: `M${x(bounds.planned)},0V${height}`, stroke: palette.copper, 'stroke-width': 1.25 });
  const says =
    'Each uncertain value alone, from low to high; the line is the plan. At the end the rank correlation over all runs.';
  return picture({ width: WIDTH, height, title, says, subtitle }, palette, body.join('') + planned);
}
