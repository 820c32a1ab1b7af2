/** Values of a chart at an x, in words. */
import type { Chart } from './chart.ts';
import type { EndLabel } from './end-labels.ts';
import { shownUnit, shownWords, type UnitSystem } from './measure.ts';
import { readLine } from './sample.ts';

/** Value in SI of the series or derived reading with this key, in the run at hand. */
export function readKey(chart: Chart, key: string, x: number): number {
  for (const lane of chart.lanes) {
    const series = lane.series.find((line) => line.key === key && line.run === 0);
    if (series) return readLine(series, x);
  }
  const derived = chart.derived.find((reading) => reading.key === key);
  return derived ? readKey(chart, derived.minuend, x) - readKey(chart, derived.subtrahend, x) : NaN;
}

/** `99.8 °C` */
export function readingWords(chart: Chart, label: EndLabel, x: number, system: UnitSystem): string {
  const unit = shownUnit(label.measure, system);
  return shownWords(unit.fromSI(readKey(chart, label.key, x)), unit.decimals, unit.label);
}

/** All values in a sentence, for a screen reader: `Pot 99.8 °C, Vapour 99.2 °C`. */
export const spokenReading = (chart: Chart, labels: readonly EndLabel[], x: number, system: UnitSystem): string =>
  labels.map((label) => `${label.label} ${readingWords(chart, label, x, system)}`).join(', ');
