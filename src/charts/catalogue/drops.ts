/** Oil drops by size at one moment: what the separator catches and what it loses. */
import { type DropCapture, formatQuantity } from '../../../sim/index.ts';
import { CHART_NAMES, type Chart, type Series } from '../model/chart.ts';
import type { Domain } from '../model/domain.ts';
import type { Flag } from '../model/event-words.ts';
import { shownWords, type UnitSystem } from '../model/measure.ts';
import type { Ink } from '../model/palette.ts';
import { SOLID, THICK } from './runs.ts';

/** Share of all separable oil that is caught, or lost, in words for the end of its layer. */
export function captureWords(capture: DropCapture, key: string): string {
  const share = key === 'caught' ? capture.captured : 1 - capture.captured;
  return shownWords(100 * share, 0, '%');
}

/** A flag at the smallest drop that is caught whole. */
export function cutSizeFlag({ cutSize_m, diameter_m }: DropCapture, system: UnitSystem): readonly Flag[] {
  const last = diameter_m[diameter_m.length - 1] ?? 0;
  if (!(cutSize_m > 0) || cutSize_m < (diameter_m[0] ?? Infinity) || cutSize_m > last) return [];
  const words = `catches all over ${formatQuantity(cutSize_m, 'm', system, { hint: 'cutSize_m' })}`;
  return [{ x: Math.log10(cutSize_m), words, severity: 'note', sentence: `The separator ${words}.`, rank: 1 }];
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
    title: CHART_NAMES.drops,
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
          layer('caught', 'Caught', 'share of the oil in this size that is caught', 'oil-tint', caught),
          layer(
            'lost',
            'Lost',
            'share of the oil in this size that passes with the water',
            'water-tint',
            share.map((whole, index) => whole - (caught[index] as number)),
          ),
        ],
      },
    ],
  };
}
