/**
 * When to stop. The user picks the rule; the run tells the minute, what is in the receiver by then, what the next
 * millilitre would cost, and whether the pot's water and the cooling last so long.
 */
import { columnAt, type RunRecord } from '../../run/record.ts';
import type { EventKind, RunResult } from '../../run/result.ts';
import { OIL_RATE_SPAN_S, type StopRule } from '../../run/stop-rules.ts';
import { timeToCollect } from '../../run/summary.ts';
import { runLength, spentAt, type Spent } from './run-length.ts';

export interface StopAdvice {
  readonly rule: StopRule;
  /** What the run has spent and gained when the rule says stop; `null` when it never does in this run. */
  readonly stop: Spent | null;
  /** Whole minute after the heat went on by which the rule holds; `null` as above. */
  readonly minute: number | null;
  /** Of the obtainable oil, collected by then (by the end of the run when the rule never holds). */
  readonly share: number;
  /** Oil of the ten minutes before. */
  readonly lastTenMinutes_mL: number;
  /** Price of a millilitre over the ten minutes after; `null` when no more comes in this run. */
  readonly costOfNext: number | null;
  /** Whether the pot is neither low nor dry until then; when it is first. */
  readonly potLasts: boolean;
  readonly potLow_s: number | null;
  /** Whether the cooling holds all the vapour until then; when it first did not. */
  readonly coolingLasts: boolean;
  readonly escapes_s: number | null;
  readonly coolantThen_K: number;
}

/** Oil of the ten minutes up to a time, kg. */
const inTenMinutes = (record: RunRecord, time_s: number): number =>
  columnAt(record, 'oilCollected_kg', time_s) -
  columnAt(record, 'oilCollected_kg', Math.max(0, time_s - OIL_RATE_SPAN_S));

/** Price of a millilitre over the ten minutes after a time; `null` when none comes. */
function costOfNext(result: RunResult, time_s: number): number | null {
  const last = result.record.columns.time_s[result.record.rows - 1] as number;
  const from = spentAt(result, time_s);
  const to = spentAt(result, Math.min(last, time_s + OIL_RATE_SPAN_S));
  const gained = to.oil_mL - from.oil_mL;
  return gained > 0 ? (to.cost - from.cost) / gained : null;
}

/** First row from which the oil is past its best ten minutes, with ten minutes of oil behind it. */
function pastTheBest(record: RunRecord): number {
  const first = timeToCollect(record, Number.MIN_VALUE);
  if (first === null) return record.rows;
  let best = record.rows;
  let most = -Infinity;
  for (let row = 0; row < record.rows; row++) {
    const time = record.columns.time_s[row] as number;
    if (time < first + OIL_RATE_SPAN_S) continue;
    const amount = inTenMinutes(record, time);
    if (amount > most) {
      most = amount;
      best = row;
    }
  }
  return best;
}

function stopTime(result: RunResult, rule: StopRule): number | null {
  const { record } = result;
  if (rule.kind === 'share') return timeToCollect(record, rule.share * runLength(result).obtainable_kg);
  for (let row = pastTheBest(record); row < record.rows; row++) {
    const time = record.columns.time_s[row] as number;
    if (rule.kind === 'oil-in-ten-minutes') {
      const volume = spentAt(result, time).oil_mL - spentAt(result, Math.max(0, time - OIL_RATE_SPAN_S)).oil_mL;
      if (volume < rule.below_mL) return time;
    } else {
      const last = row === record.rows - 1;
      const price = costOfNext(result, time);
      if (!last && (price === null || price > rule.above)) return time;
    }
  }
  return null;
}

const firstOf = (result: RunResult, kinds: readonly EventKind[]): number | null =>
  result.events.find((event) => kinds.includes(event.kind))?.time_s ?? null;

/** What a stop rule says of a run. A run carried on past its plan (`runOn`) can answer later stops. */
export function stopAdvice(result: RunResult, rule: StopRule): StopAdvice {
  const { record } = result;
  const time = stopTime(result, rule);
  const end = record.columns.time_s[record.rows - 1] as number;
  const then = time ?? end;
  const spent = spentAt(result, then);
  const { obtainable_kg } = runLength(result);
  const potLow = firstOf(result, ['pot-low', 'pot-dry']);
  const escapes = firstOf(result, ['vapour-escapes', 'cooling-boils']);
  const before = spentAt(result, Math.max(0, then - OIL_RATE_SPAN_S));
  return {
    rule,
    stop: time === null ? null : spent,
    minute: time === null ? null : Math.ceil(time / 60),
    share: obtainable_kg > 0 ? spent.oil_kg / obtainable_kg : 0,
    lastTenMinutes_mL: spent.oil_mL - before.oil_mL,
    costOfNext: costOfNext(result, then),
    potLasts: potLow === null || potLow > then,
    potLow_s: potLow,
    coolingLasts: escapes === null || escapes > then,
    escapes_s: escapes,
    coolantThen_K: columnAt(record, 'coolantOut_K', then),
  };
}
