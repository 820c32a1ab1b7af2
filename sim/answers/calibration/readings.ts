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

/** Used where the user states none; judgement, by how each is read. */
export const DEFAULT_UNCERTAINTY: Readonly<Record<ReadingKind, Uncertainty>> = {
  oil_mL: { absolute: 0.2, relative: 0.03 },
  oil_kg: { absolute: 0.0002, relative: 0.02 },
  outlet_K: { absolute: 2, relative: 0 },
  tub_K: { absolute: 1.5, relative: 0 },
  distillate_kg: { absolute: 0.02, relative: 0.02 },
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

/** A reading, its time or its uncertainty that cannot be. */
export interface ReadingProblem {
  readonly kind: 'bad-uncertainty' | 'bad-reading';
  /** Line of the log, from 1. */
  readonly line: number;
  readonly reading: ReadingKind;
  readonly time_s: number;
  /** In the reading's own unit. */
  readonly value: number;
  readonly sigma: number;
}

/** The first thing that is wrong with readings; `null` when nothing is. */
export function readingsProblem(readings: readonly Reading[]): ReadingProblem | null {
  const isSure = ({ sigma }: Reading) => sigma > 0 && Number.isFinite(sigma);
  const isNumber = (value: number) => Number.isFinite(value) && value >= 0;
  const wrong = readings.find((reading) => !isNumber(reading.time_s) || !isNumber(reading.value) || !isSure(reading));
  if (!wrong) return null;
  const { point, kind, time_s, value, sigma } = wrong;
  return {
    kind: isSure(wrong) ? 'bad-reading' : 'bad-uncertainty',
    line: point + 1,
    reading: kind,
    time_s,
    value,
    sigma,
  };
}

/** Readings of a kind that a fit takes: a logger's thousands say no more of a few factors than their means. */
export const MOST_OF_A_KIND = 300;

/** The mean of readings of a kind, each by its certainty: as sure as all of them together. */
function meanOf(readings: readonly Reading[]): Reading {
  const [first] = readings as readonly [Reading, ...Reading[]];
  let weight = 0;
  let time_s = 0;
  let value = 0;
  for (const reading of readings) {
    const own = 1 / (reading.sigma * reading.sigma);
    weight += own;
    time_s += own * reading.time_s;
    value += own * reading.value;
  }
  return { ...first, time_s: time_s / weight, value: value / weight, sigma: 1 / Math.sqrt(weight) };
}

/** Readings that follow each other drawn together into means where there are more of a kind than a fit takes. */
export function thinned(readings: readonly Reading[]): readonly Reading[] {
  return READING_KINDS.flatMap((kind) => {
    const own = readings.filter((reading) => reading.kind === kind);
    if (own.length <= MOST_OF_A_KIND) return own;
    own.sort((a, b) => a.time_s - b.time_s);
    return Array.from({ length: MOST_OF_A_KIND }, (_, group) =>
      meanOf(
        own.slice(
          Math.floor((group * own.length) / MOST_OF_A_KIND),
          Math.floor(((group + 1) * own.length) / MOST_OF_A_KIND),
        ),
      ),
    );
  });
}
