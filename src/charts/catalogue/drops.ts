/** Oil drops by size at one moment: what the separator catches and what it loses. */
import type { Chart, Series } from '../model/chart.ts';
import type { Domain } from '../model/domain.ts';
import type { Ink } from '../model/palette.ts';
import { SOLID, THICK } from './runs.ts';

/** Size classes with the share of the oil in each and how much of that share is caught (0–1). */
export interface DropCapture {
  readonly diameter_m: ArrayLike<number>;
  readonly share: ArrayLike<number>;
  readonly caught: ArrayLike<number>;
}

export interface CaptureTotals {
  readonly caught: number;
  readonly lost: number;
}

export function captureTotals({ share, caught }: DropCapture): CaptureTotals {
  let kept = 0;
  let all = 0;
  for (let index = 0; index < share.length; index += 1) {
    all += share[index] as number;
    kept += (share[index] as number) * (caught[index] as number);
  }
  return all > 0 ? { caught: kept / all, lost: 1 - kept / all } : { caught: NaN, lost: NaN };
}

/** Extent of the sizes on the logarithmic axis. */
export function dropDomain({ diameter_m }: DropCapture): Domain {
  const low = diameter_m[0] ?? 1e-6;
  const high = diameter_m[diameter_m.length - 1] ?? 1e-3;
  return [Math.log10(low), Math.log10(Math.max(high, low * 1.01))];
}

export function dropsChart(capture: DropCapture): Chart {
  const { diameter_m, share, caught } = capture;
  const xs = Float64Array.from({ length: diameter_m.length }, (_, index) => Math.log10(diameter_m[index] as number));
  const amounts = (partOf: (caughtPart: number) => number): Float64Array =>
    Float64Array.from({ length: share.length }, (_, index) => (share[index] as number) * partOf(caught[index] as number));
  const layer = (key: string, label: string, says: string, ink: Ink, values: Float64Array): Series => ({
    key,
    label,
    says,
    measure: 'share',
    run: 0,
    runName: '',
    xs,
    values,
    ink,
    weight: THICK,
    dash: SOLID,
    labelled: 'end',
  });
  return {
    id: 'drops',
    title: 'Drops caught',
    says: 'Oil by drop size: the share of each size that the separator catches, and the share that passes with the water.',
    xAxis: 'drop',
    derived: [],
    lanes: [
      {
        kind: 'stack',
        key: 'share',
        title: 'Share of the oil in each size',
        measure: 'share',
        policy: { fromZero: true, leastSpan: 1 },
        parts: 1,
        series: [
          layer('caught', 'Caught', 'share of the oil in this size that is caught', 'oil-wash', amounts((part) => part)),
          layer('lost', 'Lost', 'share of the oil in this size that passes with the water', 'water-wash', amounts((part) => 1 - part)),
        ],
      },
    ],
  };
}
