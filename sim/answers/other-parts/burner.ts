/** How much heat a wanted rate of distillate needs, from what a run of the same pot took at its own rate. */
import { tableLatentHeat } from '../../fluids/water-table.ts';
import { heatSources } from '../../library/index.ts';
import type { RunResult } from '../../run/result.ts';

export interface BurnerSize {
  readonly wanted_kg_s: number;
  /** Means over the part of the run that distils at nine tenths of its highest rate and more. */
  readonly seen_kg_s: number;
  readonly seenPotPower_W: number;
  readonly latent_J_kg: number;
  /** What does not leave as distillate at that rate: lost to the room, or condensed before the condenser. */
  readonly lost_W: number;
  /** Into the pot, and of the source, for the wanted rate. */
  readonly potPower_W: number;
  readonly power_W: number;
  /** With the highest and the lowest share into the pot that sources of this kind have. */
  readonly leastPower_W: number;
  readonly mostPower_W: number;
  readonly ratedPower_W: number;
}

const NEAR_HIGHEST = 0.9;

const mean = (values: readonly number[]): number => values.reduce((sum, next) => sum + next, 0) / values.length;

/** Rows of the run that distil at nearly its highest rate. */
function busyRows({ record }: Pick<RunResult, 'record'>): readonly number[] {
  const rates = record.columns.condensateRate_kg_s.subarray(0, record.rows);
  const highest = rates.reduce((most, rate) => Math.max(most, rate), 0);
  return highest > 0 ? [...rates.keys()].filter((row) => (rates[row] as number) >= NEAR_HIGHEST * highest) : [];
}

/** Rate of distillate that a run itself has when it is busy, kg/s; zero where nothing comes over. */
export function ownRate(result: Pick<RunResult, 'record'>): number {
  const rows = busyRows(result);
  return rows.length === 0 ? 0 : mean(rows.map((row) => result.record.columns.condensateRate_kg_s[row] as number));
}

/** Power that the source has while the run is busy, W; `null` where nothing comes over. */
export function busyPower(result: Pick<RunResult, 'record'>): number | null {
  const rows = busyRows(result);
  return rows.length === 0 ? null : mean(rows.map((row) => result.record.columns.sourcePower_W[row] as number));
}

/** `null` where nothing comes over, or where more heat comes over than went in, so that the run tells nothing. */
export function burnerFor(result: RunResult, wanted_kg_s: number): BurnerSize | null {
  const { scenario, record } = result;
  const { potPower_W, potTemperature_K } = record.columns;
  const rows = busyRows(result);
  if (rows.length === 0) return null;
  const seen_kg_s = ownRate(result);
  const seenPotPower_W = mean(rows.map((row) => potPower_W[row] as number));
  const latent_J_kg = tableLatentHeat(mean(rows.map((row) => potTemperature_K[row] as number)));
  const lost_W = seenPotPower_W - seen_kg_s * latent_J_kg;
  if (!(lost_W >= 0)) return null;
  const { kind, shareToPot, ratedPower_W } = scenario.heat;
  const power = wanted_kg_s * latent_J_kg + lost_W;
  const shares = heatSources.filter((source) => source.kind === kind).map(({ efficiency }) => efficiency.value);
  return {
    wanted_kg_s,
    seen_kg_s,
    seenPotPower_W,
    latent_J_kg,
    lost_W,
    potPower_W: power,
    power_W: power / shareToPot,
    leastPower_W: power / Math.max(shareToPot, ...shares.map(({ high }) => high)),
    mostPower_W: power / Math.min(shareToPot, ...shares.map(({ low }) => low)),
    ratedPower_W,
  };
}
