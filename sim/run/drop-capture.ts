/** Drop sizes caught and lost by the separator at a moment of a run, for a chart. */
import { capturedShare, shareBelowSize } from '../transfer/drop-sizes.ts';
import { hazenCapture } from '../transfer/settling.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { columnAt, type RunRecord } from './record.ts';

export interface DropCapture {
  /** Middle of each size class, m, evenly spaced in the logarithm. */
  readonly diameter_m: Float64Array;
  /** Share of the oil in each class, adding to nearly one. */
  readonly share: Float64Array;
  /** Part of that share which is caught. */
  readonly caught: Float64Array;
  readonly cutSize_m: number;
  readonly captured: number;
}

const CLASSES = 48;
const SPREADS = 3.2;

export function captureByDropSize(scenario: Scenario, record: RunRecord, time_s: number): DropCapture {
  const { separator, factors } = scenario;
  const median = separator.dropMedian_m * factors.dropSize;
  const cut = columnAt(record, 'cutSize_m', time_s);
  const width = (2 * SPREADS * Math.log(separator.dropSpread)) / CLASSES;
  const diameter_m = new Float64Array(CLASSES);
  const share = new Float64Array(CLASSES);
  const caught = new Float64Array(CLASSES);
  for (let k = 0; k < CLASSES; k++) {
    const low = median * Math.exp((k - CLASSES / 2) * width);
    const d = low * Math.exp(width / 2);
    diameter_m[k] = d;
    share[k] =
      shareBelowSize(low * Math.exp(width), median, separator.dropSpread) -
      shareBelowSize(low, median, separator.dropSpread);
    caught[k] = (share[k] as number) * (cut > 0 ? hazenCapture(d * d, cut * cut) : 1);
  }
  return { diameter_m, share, caught, cutSize_m: cut, captured: capturedShare(cut, median, separator.dropSpread) };
}
