/** Where everything stands: gutters shared by all charts, lanes below each other, the time axis under them. */
import type { Chart } from './chart.ts';

export interface Gutters {
  readonly left: number;
  readonly right: number;
}

/** Narrower than this, values stand in a table under the chart instead of beside it. */
const WIDE_FROM = 620;

export const isWide = (width: number, textScale = 1): boolean => width >= WIDE_FROM * textScale;

/** Least share of the width that lines are drawn in. */
const LEAST_PLOT = 0.4;

/**
 * Space for axis numbers on the left and for names, the longest of a constituent included, and values on the right. Where
 * they would leave no room for the lines, as with large text on a phone, the names stand in the table alone.
 */
export function gutters(width: number, textScale = 1): Gutters {
  const scaled = (left: number, right: number) => ({
    left: Math.round(left * textScale),
    right: Math.round(right * textScale),
  });
  if (isWide(width, textScale)) return scaled(52, 168);
  return scaled(44, width * (1 - LEAST_PLOT) < 152 * textScale ? 12 : 108);
}

/** Whether names stand beside the lines. */
export const hasNames = ({ width, right, line }: ChartLayout): boolean => width - right > 2 * line;

/** The same where every pixel counts: names without values. */
export const closeGutters = (textScale = 1): Gutters => ({
  left: Math.round(40 * textScale),
  right: Math.round(112 * textScale),
});

export interface LaneBox {
  readonly top: number;
  readonly height: number;
}

export interface ChartLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  /** Distance of the plot's right edge from the left edge of the chart. */
  readonly right: number;
  readonly plotWidth: number;
  readonly plotHeight: number;
  readonly lanes: readonly LaneBox[];
  readonly axisTop: number;
  readonly textScale: number;
  /** Height of a line of small text. */
  readonly line: number;
}

const LANE_GAP = 36;
const TOP = 22;
const AXIS = 24;

export interface LayoutRequest {
  readonly width: number;
  readonly gutters: Gutters;
  readonly textScale: number;
  /** Parts of the height each lane takes. */
  readonly parts: readonly number[];
  /** Height of one part. */
  readonly partHeight: number;
}

export function layOut({ width, gutters: { left, right }, textScale, parts, partHeight }: LayoutRequest): ChartLayout {
  const lanes: LaneBox[] = [];
  const top = Math.round(TOP * textScale);
  let edge = top;
  for (const part of parts) {
    const height = Math.round(part * partHeight);
    lanes.push({ top: edge, height });
    edge += height + Math.round(LANE_GAP * textScale);
  }
  const axisTop = edge - Math.round(LANE_GAP * textScale);
  const plotWidth = Math.max(40, width - left - right);
  return {
    width,
    height: axisTop + Math.round(AXIS * textScale),
    left,
    right: left + plotWidth,
    plotWidth,
    plotHeight: axisTop,
    lanes,
    axisTop,
    textScale,
    line: Math.round(17 * textScale),
  };
}

/** Height of a lane of one part: a sixth of the width, neither a slit nor a wall. */
export const partHeight = (width: number, textScale = 1): number =>
  Math.round(Math.max(128, Math.min(width / 6, 220)) * Math.sqrt(textScale));

export const layOutChart = (chart: Chart, width: number, inset: Gutters, textScale: number): ChartLayout =>
  layOut({
    width,
    gutters: inset,
    textScale,
    parts: chart.lanes.map(({ parts }) => parts),
    partHeight: partHeight(width, textScale),
  });

/** A lane no lower than this can be read, px. */
const LEAST_LANE = 24;

/** Within a given height: the lanes share what the axis and the gaps leave. */
export function layOutChartIn(
  chart: Chart,
  width: number,
  height: number,
  inset: Gutters,
  textScale: number,
): ChartLayout {
  const parts = chart.lanes.map((lane) => lane.parts);
  const fixed = TOP + AXIS + LANE_GAP * (parts.length - 1);
  const sum = parts.reduce((total, part) => total + part, 0);
  const share = Math.max(LEAST_LANE, height - Math.ceil(fixed * textScale) - parts.length) / sum;
  return layOut({ width, gutters: inset, textScale, parts, partHeight: share });
}

/** From the end of a line, which may lie before the end of the axis, to its name. */
export const leaderPath = ({ left, right }: ChartLayout, endX: number, from: number, to: number): string =>
  `M${Math.min(left + endX, right) + 1},${from}L${right + 5},${from}L${right + 10},${to}`;
