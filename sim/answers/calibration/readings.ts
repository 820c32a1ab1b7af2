/** Readings of a real run: what can be logged, how sure each is, and what the model says of the same thing. */
import { columnAt } from '../../run/record.ts';
import type { RunResult } from '../../run/result.ts';

/** One line of a log; anything but the time may be missing. Times count from when the heat went on. */
export interface LoggedPoint {
  readonly time_s: number;
  /** Oil in the receiver, by volume at 20 °C or by mass. */
  readonly oil_mL?: number | undefined;
  readonly oil_kg?: number | undefined;
  /** Temperature of the distillate as it leaves the condenser. */
  readonly outlet_K?: number | undefined;
  /** Mean temperature of the tub, barrel or jacket water, stirred. */
  readonly tub_K?: number | undefined;
  /** Distillate so far, water and oil, kept or returned. */
  readonly distillate_kg?: number | undefined;
}

export const READING_KINDS = ['oil_mL', 'oil_kg', 'outlet_K', 'tub_K', 'distillate_kg'] as const;
export type ReadingKind = (typeof READING_KINDS)[number];

/** Standard uncertainty of a reading: both parts together, as the root of the sum of squares. */
export interface Uncertainty {
  /** In the reading's own unit. */
  readonly absolute: number;
  /** Share of the reading. */
  readonly relative: number;
}

/** Used where the user states none; judgement. */
export const DEFAULT_UNCERTAINTY: Readonly<Record<ReadingKind, Uncertainty & { readonly source: string }>> = {
  oil_mL: {
    absolute: 0.2,
    relative: 0.03,
    source: 'judgement: a graduated tube with a curved surface, drops clinging to glass',
  },
  oil_kg: { absolute: 0.0002, relative: 0.02, source: 'judgement: a kitchen balance to 0.1 g and wet glass' },
  outlet_K: { absolute: 2, relative: 0, source: 'judgement: a probe in a thin stream' },
  tub_K: { absolute: 1.5, relative: 0, source: 'judgement: a stirred tub and a household thermometer' },
  distillate_kg: { absolute: 0.02, relative: 0.02, source: 'judgement: jug or kitchen balance' },
};

export interface Reading {
  /** Place of its line in the log. */
  readonly point: number;
  readonly kind: ReadingKind;
  readonly time_s: number;
  readonly value: number;
  /** Standard uncertainty, in the reading's unit. */
  readonly sigma: number;
}

export type StatedUncertainty = Readonly<Partial<Record<ReadingKind, Uncertainty>>>;

/** Every reading of a log, line by line. */
export function readingsOf(points: readonly LoggedPoint[], stated: StatedUncertainty = {}): Reading[] {
  return points.flatMap((line, point) =>
    READING_KINDS.flatMap((kind): Reading[] => {
      const value = line[kind];
      if (value === undefined) return [];
      const { absolute, relative } = stated[kind] ?? DEFAULT_UNCERTAINTY[kind];
      return [{ point, kind, time_s: line.time_s, value, sigma: Math.hypot(absolute, relative * value) }];
    }),
  );
}

/** What a run says of a reading, in the reading's unit. */
export function predictedReading(
  { record, summary }: RunResult,
  { kind, time_s }: Pick<Reading, 'kind' | 'time_s'>,
): number {
  const at = (name: Parameters<typeof columnAt>[1]): number => columnAt(record, name, time_s);
  switch (kind) {
    case 'oil_kg':
      return at('oilCollected_kg');
    case 'oil_mL':
      return summary.oilDensity_kg_m3 === null ? 0 : (at('oilCollected_kg') / summary.oilDensity_kg_m3) * 1e6;
    case 'outlet_K':
      return at('condensateTemperature_K');
    case 'tub_K':
      return at('tubMean_K');
    case 'distillate_kg':
      return at('hydrosol_kg') + at('returned_kg') + at('oilCollected_kg');
  }
}

/** What is wrong with readings, in one sentence; `null` when nothing is. */
export function readingsProblem(readings: readonly Reading[]): string | null {
  const wrong = readings.find(
    ({ time_s, value, sigma }) =>
      !Number.isFinite(time_s) ||
      time_s < 0 ||
      !Number.isFinite(value) ||
      value < 0 ||
      !(sigma > 0) ||
      !Number.isFinite(sigma),
  );
  if (!wrong) return null;
  const what = !(wrong.sigma > 0)
    ? `its uncertainty is ${wrong.sigma}`
    : `it reads ${wrong.value} at ${wrong.time_s} s`;
  return `Line ${wrong.point + 1}, ${wrong.kind}: ${what}; times and readings must be numbers from zero up, with an uncertainty above zero.`;
}
