/** A chart as a picture that stands alone: axes, grid, lines, names with their last values, event flags. */
import type { EndLabel } from '../model/end-labels.ts';
import { timedWords, untimedWords, type Flag } from '../model/event-words.ts';
import { leaderPath, type ChartLayout } from '../model/layout.ts';
import type { UnitSystem } from '../model/measure.ts';
import { colourOf, type Palette } from '../model/palette.ts';
import { placeFlags } from '../model/place-flags.ts';
import { pixelOf, type PreparedChart, type PreparedLane } from '../model/prepare.ts';
import { readingWords } from '../model/reading.ts';
import { shapesOf } from '../model/shapes.ts';
import { formatNumber } from '../../../sim/index.ts';
import { shapeMarkup } from './shape-markup.ts';
import { element, picture, words } from './svg-markup.ts';

export interface ChartPicture {
  readonly prepared: PreparedChart;
  readonly labels: readonly EndLabel[];
  readonly flags: readonly Flag[];
  readonly palette: Palette;
  readonly system: UnitSystem;
  /** Name of the run and, for a chart of one moment, the moment. */
  readonly subtitle: string;
  /** Where the values beside the names are read. */
  readonly readAt: number;
  /** What stands beside a name instead of a value read there. */
  readonly restingWords?: ((label: EndLabel) => string) | undefined;
}

const FLAG_ROW = 18;
/** Rough width of a letter of 13 px text, for flags in a picture that nothing measures. */
const LETTER = 6.4;

export function chartPicture({
  prepared,
  labels,
  flags,
  palette,
  system,
  subtitle,
  readAt,
  restingWords,
}: ChartPicture): string {
  const { chart, layout } = prepared;
  const valueOf = (label: EndLabel): string => restingWords?.(label) ?? readingWords(chart, label, readAt, system);
  const body = [
    element(
      'g',
      { transform: `translate(0 ${FLAG_ROW})` },
      axesMarkup(prepared, palette),
      tracesMarkup(prepared, palette),
      labelsMarkup(labels, valueOf, layout, palette),
    ),
    flagsMarkup(flags, prepared, palette),
  ];
  return picture(
    { width: layout.width, height: layout.height + FLAG_ROW, title: chart.title, says: chart.says, subtitle },
    palette,
    body.join(''),
  );
}

function axesMarkup(prepared: PreparedChart, palette: Palette): string {
  const { layout, ticks } = prepared;
  const across = ticks.map(({ at, words: name }) => {
    const x = layout.left + pixelOf(prepared, at);
    return (
      element('path', {
        d: `M${x},${layout.lanes[0]?.top ?? 0}V${layout.axisTop}`,
        stroke: palette.gridline,
        'stroke-width': 0.5,
      }) +
      element('text', { x, y: layout.axisTop + 17, 'text-anchor': 'middle', fill: palette['ink-muted'] }, words(name))
    );
  });
  return element(
    'g',
    { class: 'axes' },
    ...across,
    ...prepared.lanes.map((lane, index) => laneMarkup(lane, layout, index, palette)),
  );
}

function laneMarkup(lane: PreparedLane, layout: ChartLayout, index: number, palette: Palette): string {
  const top = layout.lanes[index]?.top ?? 0;
  const rows = lane.ticks.map((tick) => {
    const y = lane.y.offset + lane.y.slope * tick;
    return (
      element('path', { d: `M${layout.left},${y}H${layout.right}`, stroke: palette.gridline, 'stroke-width': 0.5 }) +
      element(
        'text',
        { x: layout.left - 8, y: y + 4, 'text-anchor': 'end', fill: palette['ink-muted'] },
        words(formatNumber(tick, lane.tickDecimals)),
      )
    );
  });
  return element(
    'g',
    {},
    ...rows,
    element(
      'text',
      { x: layout.left - 8, y: top - 10, 'text-anchor': 'end', fill: palette['ink-muted'] },
      words(lane.unit.label),
    ),
    element('text', { x: layout.left, y: top - 10, fill: palette['ink-muted'] }, words(lane.lane.title)),
  );
}

const tracesMarkup = (prepared: PreparedChart, palette: Palette): string =>
  element(
    'g',
    { transform: `translate(${prepared.layout.left} 0)` },
    ...shapesOf(prepared).map((shape) => shapeMarkup(shape, palette)),
  );

function labelsMarkup(
  labels: readonly EndLabel[],
  valueOf: (label: EndLabel) => string,
  layout: ChartLayout,
  palette: Palette,
): string {
  const placed = labels.flatMap((label) => {
    if (label.y === null) return [];
    const x = layout.right + 14;
    const colour = label.patch ? palette.ink : colourOf(palette, label.ink);
    return [
      element('path', {
        d: leaderPath(layout, label.endX, label.wantedY, label.y),
        fill: 'none',
        stroke: palette.border,
        'stroke-width': 0.75,
      }),
      ...(label.patch
        ? [element('rect', { x, y: label.y - 5, width: 9, height: 9, fill: colourOf(palette, label.ink) })]
        : []),
      element('text', { x: label.patch ? x + 14 : x, y: label.y + 4, fill: colour }, words(label.label)),
      element('text', { x: layout.width, y: label.y + 4, 'text-anchor': 'end', fill: colour }, words(valueOf(label))),
    ];
  });
  return element('g', { class: 'names' }, ...placed);
}

function flagsMarkup(flags: readonly Flag[], prepared: PreparedChart, palette: Palette): string {
  const { layout } = prepared;
  const inside = flags.filter(({ x }) => x >= prepared.xDomain[0] && x <= prepared.xDomain[1]);
  const wordsOf = prepared.chart.xAxis === 'time' ? timedWords : untimedWords;
  /** An alarm carries a shape as well, at the head of its staff. */
  const headOf = (at: number, severity: Flag['severity'], colour: string) =>
    severity === 'alarm' ? element('path', { d: `M${at - 4},7h8L${at},0Z`, fill: colour }) : '';
  const sides = placeFlags(
    inside.map((flag) => ({ x: pixelOf(prepared, flag.x), width: wordsOf(flag).length * LETTER + 6, rank: flag.rank })),
    layout.plotWidth,
  );
  const marks = inside.map((flag, index) => {
    const { x, severity } = flag;
    const at = layout.left + pixelOf(prepared, x);
    const colour = severity === 'alarm' ? palette.alarm : palette['ink-muted'];
    const side = sides[index];
    return (
      element('path', {
        d: `M${at},6V${layout.axisTop + FLAG_ROW}`,
        stroke: colour,
        'stroke-width': severity === 'alarm' ? 1 : 0.75,
        'stroke-dasharray': '1 3',
      }) +
      headOf(at, severity, colour) +
      (side === 'none'
        ? element('circle', { cx: at, cy: 8, r: 2.5, fill: colour })
        : element(
            'text',
            {
              x: side === 'right' ? at + 4 : at - 4,
              y: 13,
              'text-anchor': side === 'right' ? 'start' : 'end',
              fill: colour,
            },
            words(wordsOf(flag)),
          ))
    );
  });
  return element('g', { class: 'flags' }, ...marks);
}
