/** A relation over one of its arguments, with a mark where the reader stands. */
import { scaleLinear, scaleLog } from 'd3-scale';
import { line } from 'd3-shape';
import { createMemo, createSignal, For, Show } from 'solid-js';
import { displayUnit, formatNumber, type Correlation, type Curve, type UnitSystem } from '../../../sim/index.ts';
import { extentOf, niceDomain, tickDecimals, valueTicks } from '../../charts/model/domain.ts';
import { createWidth } from '../../ui/width.ts';
import { kindShown } from './shown-kind.ts';
import '../../charts/plot/plot.css';

export interface CurvePlotProps {
  readonly entry: Correlation;
  readonly values: Readonly<Record<string, number>>;
  readonly curve: Curve;
  readonly value: number | null;
  readonly units: UnitSystem;
}

/** Widest that a curve is drawn, px, and how wide before it is measured. */
const WIDEST = 640;
const NARROWEST = 240;
const HEIGHT = 260;
const LEFT = 72;
const RIGHT = 16;
const TOP = 28;
const BOTTOM = 48;
const MOST_TICKS = 6;
/** A step from zero, or to it, of more than this share of the height is a jump. */
const JUMP = 0.4;

const superscript = (power: number): string =>
  [...String(power)].map((digit) => (digit === '-' ? '⁻' : ('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)] ?? ''))).join('');

const tickText = (value: number, decimals: number): string => {
  if (value !== 0 && (Math.abs(value) >= 1e5 || decimals > 4)) {
    const [mantissa = '1', exponent = '0'] = value.toExponential(1).split('e');
    return `${Number(mantissa)}·10${superscript(Number(exponent))}`;
  }
  return formatNumber(value, decimals);
};

export function CurvePlot(props: CurvePlotProps) {
  const [box, setBox] = createSignal<HTMLElement>();
  const room = createWidth(box);
  const width = () => Math.max(NARROWEST, Math.min(WIDEST, room()));
  const argument = () => props.entry.arguments[curve().symbol];
  const curve = () => props.curve;
  const xUnit = createMemo(() => {
    const { unit = '1', isDifference } = argument() ?? {};
    const hint = kindShown(isDifference ? { unit, isDifference } : { unit }, props.values[curve().symbol] ?? 0);
    return displayUnit(unit, props.units, hint);
  });
  const yUnit = createMemo(() => {
    const { result } = props.entry;
    const largest = curve().ys.reduce<number>((most, y) => Math.max(most, Math.abs(y ?? 0)), 0);
    return displayUnit(result.unit, props.units, kindShown(result, largest), largest);
  });
  const points = createMemo(() =>
    curve().xs.map((x, index): readonly [number, number | null] => {
      const y = curve().ys[index] ?? null;
      return [xUnit().fromSI(x), y === null ? null : yUnit().fromSI(y)];
    }),
  );
  const x = createMemo(() => {
    const ends = [xUnit().fromSI(curve().from), xUnit().fromSI(curve().to)];
    return (curve().isLogarithmic ? scaleLog() : scaleLinear()).domain(ends).range([LEFT, width() - RIGHT]);
  });
  const yDomain = createMemo(() => {
    const extent = extentOf([points().flatMap(([, value]) => (value === null ? [] : [value]))]);
    const span = extent === null ? 1 : Math.max(extent[1] - extent[0], 1e-6 * Math.abs(extent[1])) || 1;
    const fromZero = extent !== null && extent[0] >= 0 && extent[0] < extent[1] / 2;
    return niceDomain(extent, { fromZero, leastSpan: span });
  });
  const y = createMemo(() =>
    scaleLinear()
      .domain([...yDomain()])
      .range([HEIGHT - BOTTOM, TOP]),
  );
  const xTicks = createMemo(() => {
    const ticks = x().ticks(Math.min(MOST_TICKS, Math.floor(width() / 80)));
    if (!curve().isLogarithmic) return ticks;
    const decades = ticks.filter((tick) => Math.abs(Math.log10(tick) - Math.round(Math.log10(tick))) < 1e-9);
    const step = Math.ceil(decades.length / MOST_TICKS);
    return decades.filter((_, index) => index % step === 0);
  });
  const yTicks = createMemo(() => valueTicks(yDomain(), HEIGHT - TOP - BOTTOM));
  /** Pieces of the curve in pixels: it breaks off where there is no value, and where it jumps. */
  const path = createMemo(() => {
    const [across, up] = [x(), y()];
    const jump = JUMP * (HEIGHT - TOP - BOTTOM);
    const pixels = points().flatMap(([at, value], index, all) => {
      if (value === null) return [null];
      const point = [across(at), up(value)] as const;
      const before = all[index - 1]?.[1] ?? null;
      const isJump = (before === 0 || value === 0) && before !== null && Math.abs(up(before) - point[1]) > jump;
      return isJump ? [null, point] : [point];
    });
    return (
      line<readonly [number, number] | null>()
        .defined((point) => point !== null)
        .x((point) => point?.[0] ?? 0)
        .y((point) => point?.[1] ?? 0)(pixels) ?? ''
    );
  });
  const here = () => {
    const at = props.values[curve().symbol];
    if (props.value === null || at === undefined || at < curve().from || at > curve().to) return null;
    return [x()(xUnit().fromSI(at)), y()(yUnit().fromSI(props.value))] as const;
  };
  const xName = () => `${argument()?.says ?? curve().symbol}${xUnit().label === '' ? '' : ` (${xUnit().label})`}`;
  return (
    <div ref={setBox}>
      <svg class="reference-curve" width={width()} height={HEIGHT} role="img" aria-label={`Curve over ${xName()}`}>
        <For each={yTicks()}>
          {(tick) => (
            <>
              <line class="chart-grid" x1={LEFT} x2={width() - RIGHT} y1={y()(tick)} y2={y()(tick)} />
              <text class="chart-tick" x={LEFT - 8} y={y()(tick)} dy="0.32em" text-anchor="end">
                {tickText(tick, tickDecimals(yTicks()))}
              </text>
            </>
          )}
        </For>
        <For each={xTicks()}>
          {(tick) => (
            <>
              <line class="chart-grid" x1={x()(tick)} x2={x()(tick)} y1={TOP} y2={HEIGHT - BOTTOM} />
              <text class="chart-tick" x={x()(tick)} y={HEIGHT - BOTTOM + 18} text-anchor="middle">
                {tickText(tick, tickDecimals(curve().isLogarithmic ? [tick] : xTicks()))}
              </text>
            </>
          )}
        </For>
        <text class="chart-tick" x={0} y={14}>
          {yUnit().label}
        </text>
        <text class="chart-tick" x={(LEFT + width() - RIGHT) / 2} y={HEIGHT - 8} text-anchor="middle">
          {xName()}
        </text>
        <path class="reference-trace" d={path()} />
        <Show when={here()}>{(at) => <circle class="reference-here" cx={at()[0]} cy={at()[1]} r="5" />}</Show>
      </svg>
    </div>
  );
}
