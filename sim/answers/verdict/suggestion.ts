/** The one thing worth trying next. */
import type { RunResult } from '../../run/result.ts';
import type { EnoughLength } from './conclusion.ts';
import type { Verdict } from './verdict.ts';

export type Suggestion =
  | { readonly kind: 'heat-up'; readonly setting: number }
  | { readonly kind: 'heat-down'; readonly setting: number }
  | { readonly kind: 'tap-down'; readonly flow_kg_s: number }
  | { readonly kind: 'lengthen'; readonly length_m: number };

const FULL = 1;
/** A heat setting from here on leaves nothing worth turning up. */
const NEARLY_FULL = 0.95;
const LEAST_SETTING = 0.05;
/** Share of the present heat that is suggested where less is needed. */
const LESS = 0.6;

export function suggestionFor(
  result: RunResult,
  verdict: Verdict,
  now: { readonly heat: number; readonly tap_kg_s: number },
  enough: EnoughLength | null,
): Suggestion | null {
  const turnDown: Suggestion = {
    kind: 'heat-down',
    setting: Math.max(LEAST_SETTING, Math.round(100 * LESS * now.heat) / 100),
  };
  if (result.scenario.heat.control !== 'schedule') return null;
  switch (verdict.lead.kind) {
    case 'condenser-fails':
      return enough?.length_m ? { kind: 'lengthen', length_m: enough.length_m } : turnDown;
    case 'ran-dry':
    case 'too-much-pressure':
      return turnDown;
    case 'never-boils':
    case 'never-drips':
    case 'condenser-enough':
    case 'condenser-scant':
      if (now.heat < NEARLY_FULL) return { kind: 'heat-up', setting: FULL };
      return now.tap_kg_s > 0 ? { kind: 'tap-down', flow_kg_s: now.tap_kg_s / 2 } : turnDown;
    default:
      return null;
  }
}
