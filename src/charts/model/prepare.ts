/** A chart with units, bounds and pixels settled: what every way of drawing it starts from. */
import type { Chart, Lane, LinesLane, Series, StackLane } from './chart.ts';
import { linearMap, type LinearMap } from './decimate.ts';
import { extentOf, settleDomain, tickDecimals, valueTicks, type Domain } from './domain.ts';
import type { ChartLayout } from './layout.ts';
import { shownUnit, type DisplayUnit, type UnitSystem } from './measure.ts';
import { stackTotals } from './stack.ts';
import { xTicks, type XTick } from './x-axis.ts';

export interface PreparedLane {
  readonly lane: Lane;
  readonly unit: DisplayUnit;
  /** In the unit shown. */
  readonly domain: Domain;
  /** From the unit shown to pixels below the top of the chart. */
  readonly y: LinearMap;
  readonly ticks: readonly number[];
  readonly tickDecimals: number;
  /** Pixels of a value in SI. */
  yOf(value: number): number;
}

export interface PreparedChart {
  readonly chart: Chart;
  readonly layout: ChartLayout;
  readonly xDomain: Domain;
  /** From x to pixels right of the plot's left edge. */
  readonly x: LinearMap;
  readonly ticks: readonly XTick[];
  readonly lanes: readonly PreparedLane[];
}

/** Bounds in use, by lane and unit: a change of unit asks for new ones, a change of run does not. */
export type Bounds = Readonly<Record<string, Domain>>;

const boundsKey = (lane: Lane, unit: DisplayUnit): string => `${lane.key} ${unit.label}`;

/** Bounds for every lane, keeping earlier ones where they still serve. */
export function settleBounds(chart: Chart, system: UnitSystem, earlier: Bounds = {}): Bounds {
  return Object.fromEntries(
    chart.lanes.map((lane) => {
      const unit = shownUnit(lane.measure, system);
      const key = boundsKey(lane, unit);
      return [
        key,
        lane.kind === 'strip'
          ? stripBounds(lane.extent, unit)
          : settleDomain(earlier[key], laneExtent(lane, unit), lane.policy),
      ];
    }),
  );
}

const stripBounds = ([low, high]: Domain, unit: DisplayUnit): Domain => [
  unit.fromSI(low),
  Math.max(unit.fromSI(high), unit.fromSI(low) + 1e-6),
];

function laneExtent(lane: LinesLane | StackLane, unit: DisplayUnit): Domain | null {
  if (lane.extent) return [unit.fromSI(lane.extent[0]), unit.fromSI(lane.extent[1])];
  const drawn = lane.series.filter(({ hidden }) => hidden !== true);
  switch (lane.kind) {
    case 'stack': {
      const behind = drawn.filter(({ run }) => run > 0).map(({ values }) => values);
      return extentOf([stackTotals(drawn.filter(({ run }) => run === 0)), ...behind], unit.fromSI);
    }
    case 'lines':
      return extentOf(
        [
          ...drawn.map(({ values }) => values),
          ...lane.bands.flatMap(({ low, high }) => [low, high]),
          ...lane.points.map(({ points }) => points.map(({ value }) => value)),
        ],
        unit.fromSI,
      );
  }
}

export function prepare(
  chart: Chart,
  layout: ChartLayout,
  bounds: Bounds,
  xDomain: Domain,
  system: UnitSystem,
): PreparedChart {
  return {
    chart,
    layout,
    xDomain,
    x: linearMap(xDomain, [0, layout.plotWidth]),
    ticks: xTicks(chart.xAxis, xDomain, layout.plotWidth / layout.textScale, system),
    lanes: chart.lanes.map((lane, index) => {
      const unit = shownUnit(lane.measure, system);
      const { top, height } = layout.lanes[index] ?? { top: 0, height: 1 };
      const domain = bounds[boundsKey(lane, unit)] ?? [0, 1];
      const y = linearMap(domain, [top + height, top]);
      const ticks = valueTicks(domain, height / layout.textScale);
      return {
        lane,
        unit,
        domain,
        y,
        ticks,
        tickDecimals: tickDecimals(ticks),
        yOf: (value) => y.offset + y.slope * unit.fromSI(value),
      };
    }),
  };
}

/** The same axes over another moment's lines. */
export const withChart = (frame: PreparedChart, chart: Chart): PreparedChart => ({
  ...frame,
  chart,
  lanes: frame.lanes.map((prepared, index) => ({ ...prepared, lane: chart.lanes[index] ?? prepared.lane })),
});

/** Pixels right of the plot's left edge. */
export const pixelOf = ({ x }: PreparedChart, at: number): number => x.offset + x.slope * at;

/** The x at a pixel, inside the axis. */
export function xAtPixel({ x, xDomain: [low, high] }: PreparedChart, pixel: number): number {
  return x.slope === 0 ? low : Math.max(low, Math.min(high, (pixel - x.offset) / x.slope));
}

/** Last finite value of a line, or `NaN`. */
export function lastValue({ values }: Series): number {
  for (let index = values.length - 1; index >= 0; index -= 1) {
    const value = values[index] as number;
    if (Number.isFinite(value)) return value;
  }
  return NaN;
}
