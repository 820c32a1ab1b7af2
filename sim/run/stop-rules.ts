/**
 * When a run stops by rule: the rules that a scenario sets for its own run, and those that a reader may ask of a
 * finished one. Both judge a rate of oil over the same ten minutes.
 */
import type { Scenario } from '../scenario/scenario.ts';

/** Time over which a rate of oil is judged, s: ten minutes. */
export const OIL_RATE_SPAN_S = 600;

/** Mean rate of oil over the ten minutes, kg/s. @param collected oil now, @param before oil ten minutes ago, kg */
export const meanOilRate = (collected: number, before: number): number => (collected - before) / OIL_RATE_SPAN_S;

/** A scenario's rule that stops its run, by the name of the end it gives. */
export type RunStopRule = 'stop-share' | 'stop-distillate' | 'stop-oil-rate';

/**
 * The scenario's rule that holds now, if one does. The rule on the rate waits until oil has come for ten minutes.
 * @param collected oil collected, @param inCharge oil in the charge at the start, @param distillate water come over,
 * kept or returned, kg; @param before oil collected ten minutes ago, kg, zero in the first ten
 */
export function runStopRule(
  { stopAtShare, stopAtDistillate_kg, stopAtOilRate_kg_s }: Scenario['run'],
  collected: number,
  inCharge: number,
  distillate: number,
  before: number,
): RunStopRule | null {
  if (stopAtShare !== null && inCharge > 0 && collected >= stopAtShare * inCharge) return 'stop-share';
  if (stopAtDistillate_kg !== null && distillate >= stopAtDistillate_kg) return 'stop-distillate';
  if (stopAtOilRate_kg_s !== null && before > 0 && meanOilRate(collected, before) < stopAtOilRate_kg_s)
    return 'stop-oil-rate';
  return null;
}

/** A rule that a reader asks of a finished run. */
export type StopRule =
  /** Stop when this share of the obtainable oil is in the receiver. */
  | { readonly kind: 'share'; readonly share: number }
  /** Stop when the last ten minutes brought less than this. */
  | { readonly kind: 'oil-in-ten-minutes'; readonly below_mL: number }
  /** Stop when the next millilitre costs more energy and water than this, in the user's currency. */
  | { readonly kind: 'cost-of-next'; readonly above: number };

type StopRuleKind = StopRule['kind'];

/** The number of each kind of rule: its unit, what it is when the user names none, and what is allowed. */
export const STOP_RULES = {
  share: { unit: '1', usual: 0.9, min: 0.05, max: 0.999 },
  'oil-in-ten-minutes': { unit: 'mL', usual: 0.5, min: 0.001, max: 10_000 },
  'cost-of-next': { unit: '1', usual: 0.5, min: 0.0001, max: 100_000 },
} as const satisfies Readonly<
  Record<StopRuleKind, { readonly unit: string; readonly usual: number; readonly min: number; readonly max: number }>
>;

export const STOP_RULE_KINDS = Object.keys(STOP_RULES) as readonly StopRuleKind[];

/** A rule of a kind, with its usual number when none is given. */
export function stopRule(kind: StopRuleKind, number: number = STOP_RULES[kind].usual): StopRule {
  switch (kind) {
    case 'share':
      return { kind, share: number };
    case 'oil-in-ten-minutes':
      return { kind, below_mL: number };
    case 'cost-of-next':
      return { kind, above: number };
  }
}
