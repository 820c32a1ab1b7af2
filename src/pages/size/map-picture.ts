/** The picture of a condenser as an SVG that stands alone, and its points as a table. */
import type { DataTable } from '../../charts/export/data-table.ts';
import { element, picture, words as escaped } from '../../charts/export/svg-markup.ts';
import type { Palette } from '../../charts/model/palette.ts';
import { displayUnit, type UnitSystem } from '../../../sim/index.ts';
import { axisName, axisUnit, type MapAxes } from './map-axes.ts';
import { ownLabel } from './own-label.ts';
import { FINEST, placeOf, type MapField } from './map-grid.ts';
import { plotHeight, plotWidth, type MapFrame, type MapShapes } from './map-shapes.ts';

export interface MapWords {
  readonly title: string;
  readonly subtitle: string;
  readonly says: string;
  readonly warm: string;
  readonly escapes: string;
  readonly holds: string;
  readonly tooTall: string;
  readonly own: string;
  readonly doubt: string;
}

export interface MapPicture {
  readonly frame: MapFrame;
  readonly shapes: MapShapes;
  readonly axes: MapAxes;
  readonly words: MapWords;
  readonly own: { readonly x: number; readonly y: number };
  readonly palette: Palette;
}

type At = { readonly x: number; readonly y: number } | null;

export function mapPicture({ frame, shapes, axes, words, own, palette }: MapPicture): string {
  const { left, top } = frame;
  const [width, height] = [plotWidth(frame), plotHeight(frame)];
  const bottom = top + height;
  const halo = {
    stroke: palette.paper,
    'stroke-width': 4,
    'stroke-linejoin': 'round',
    'paint-order': 'stroke',
  } as const;
  const label = (at: At, text: string, fill: string) =>
    at ? element('text', { x: at.x, y: at.y + 4, 'text-anchor': 'middle', fill, ...halo }, escaped(text)) : '';
  const body = [
    element(
      'defs',
      {},
      element('clipPath', { id: 'plot' }, element('rect', { x: left, y: top, width, height })),
      element(
        'pattern',
        { id: 'warm', width: 9, height: 9, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' },
        element('path', { d: 'M0,0V9', stroke: palette.copper, 'stroke-width': 0.75 }),
      ),
      element(
        'pattern',
        { id: 'escapes', width: 5, height: 5, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(-45)' },
        element('path', { d: 'M0,0V5', stroke: palette.alarm, 'stroke-width': 1 }),
      ),
    ),
    element(
      'g',
      { 'clip-path': 'url(#plot)', fill: 'none' },
      element('path', {
        d: shapes.doubtful,
        fill: palette.copper,
        'fill-opacity': 0.12,
        stroke: palette.copper,
        'stroke-dasharray': '7 4',
      }),
      element('path', { d: shapes.warm, fill: 'url(#warm)' }),
      ...shapes.isotherms.map(({ path }) => element('path', { d: path, stroke: palette.water, 'stroke-width': 1 })),
      element('path', { d: shapes.warm, stroke: palette.copper, 'stroke-width': 1.75 }),
      element('path', { d: shapes.escapes, fill: palette.paper }),
      element('path', { d: shapes.escapes, fill: 'url(#escapes)', stroke: palette.alarm, 'stroke-width': 1.75 }),
      ...(shapes.tooTallBelow_px === null
        ? []
        : [
            element('rect', {
              x: left,
              y: top,
              width,
              height: shapes.tooTallBelow_px - top,
              fill: palette.paper,
              'fill-opacity': 0.6,
            }),
            element('path', {
              d: `M${left},${shapes.tooTallBelow_px}h${width}`,
              stroke: palette['ink-muted'],
              'stroke-dasharray': '6 4',
            }),
          ]),
    ),
    ...axes.across.map(
      ({ at_px, words: said }) =>
        element('path', { d: `M${at_px},${bottom}v5`, stroke: palette['ink-muted'] }) +
        element(
          'text',
          { x: at_px, y: bottom + 20, 'text-anchor': 'middle', fill: palette['ink-muted'] },
          escaped(said),
        ),
    ),
    ...axes.up.map(
      ({ at_px, words: said }) =>
        element('path', { d: `M${left},${at_px}h-5`, stroke: palette['ink-muted'] }) +
        element('text', { x: left - 9, y: at_px + 4, 'text-anchor': 'end', fill: palette['ink-muted'] }, escaped(said)),
    ),
    element('path', { d: `M${left},${top}V${bottom}H${left + width}`, fill: 'none', stroke: palette['ink-muted'] }),
    element(
      'text',
      { x: left + width, y: bottom + 38, 'text-anchor': 'end', fill: palette['ink-muted'] },
      escaped(axes.acrossTitle),
    ),
    element('text', { x: left, y: top - 10, fill: palette['ink-muted'] }, escaped(axes.upTitle)),
    ...shapes.isotherms.map(({ label: at, words: said }) => label(at, said, palette.water)),
    label(shapes.warmLabel, words.warm, palette.copper),
    label(shapes.escapesLabel, words.escapes, palette.alarm),
    label(shapes.holdsLabel, words.holds, palette.ink),
    label(shapes.doubtLabel, words.doubt, palette.copper),
    label(shapes.tooTallLabel, words.tooTall, palette['ink-muted']),
    element('circle', { cx: own.x, cy: own.y, r: 7, fill: palette.paper, stroke: palette.copper, 'stroke-width': 3 }),
    element('text', { ...ownLabel(own, frame, shapes), fill: palette.ink, ...halo }, escaped(words.own)),
  ];
  return picture(
    { width: frame.width, height: frame.height, title: words.title, says: words.says, subtitle: words.subtitle },
    palette,
    body.join(''),
  );
}

/** Every point that was reckoned. */
export function mapTable({ bounds, readings, stride }: MapField, units: UnitSystem): DataTable {
  const xUnit = axisUnit(bounds.axis, units);
  const length = displayUnit('m', units, 'run');
  const temperature = displayUnit('K', units, 'temperature');
  const rows = [];
  for (let row = 0; row < FINEST; row += stride) {
    for (let column = 0; column < FINEST; column += stride) {
      const reading = readings.get(placeOf(column, row));
      if (reading) rows.push(reading);
    }
  }
  return {
    caption: 'Condenser map',
    rows: rows.length,
    columns: [
      {
        title: axisName(bounds.axis),
        unit: xUnit.label,
        says: '',
        decimals: 3,
        values: rows.map(({ x }) => xUnit.fromSI(x)),
      },
      {
        title: 'Length',
        unit: length.label,
        says: '',
        decimals: 3,
        values: rows.map(({ length_m }) => length.fromSI(length_m)),
      },
      {
        title: 'Warmest distillate',
        unit: temperature.label,
        says: '',
        decimals: 1,
        values: rows.map(({ outlet_K }) => (outlet_K === null ? Number.NaN : temperature.fromSI(outlet_K))),
      },
      {
        title: 'Fails by',
        unit: '',
        says: '',
        decimals: 0,
        values: rows.map(({ fails, pressure }) => (pressure ? 'pressure' : fails ? 'escaping vapour' : '')),
      },
    ],
  };
}
