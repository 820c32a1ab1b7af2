/** The one thing worth trying next. */
import type { RunResult } from '../../sim/index.ts';
import type { LengthThatHolds, Verdict } from './verdict-sentences.ts';

export type Suggestion =
  | { readonly kind: 'heat'; readonly words: string; readonly setting: number }
  | { readonly kind: 'tap'; readonly words: string; readonly flow_kg_s: number }
  | { readonly kind: 'coil'; readonly words: string; readonly length_m: number };

const FULL = 1;
/** A heat setting from here on leaves nothing worth turning up. */
const NEARLY_FULL = 0.95;

export function suggestionFor(
  result: RunResult,
  verdict: Verdict,
  now: { readonly heat: number; readonly tap_kg_s: number },
  holds: LengthThatHolds | null,
  length: (length_m: number) => string,
): Suggestion | null {
  const turnDown: Suggestion = {
    kind: 'heat',
    words: 'Turn the heat down',
    setting: Math.max(0.05, Math.round(now.heat * 60) / 100),
  };
  if (result.scenario.heat.control !== 'schedule') return null;
  switch (verdict.lead.id) {
    case 'condenser-fails':
      return holds?.length_m
        ? { kind: 'coil', words: `Give it ${length(holds.length_m)}`, length_m: holds.length_m }
        : turnDown;
    case 'pot-dry':
    case 'over-pressure':
      return turnDown;
    case 'never-boils':
    case 'never-drips':
    case 'condenser-holds':
    case 'condenser-scant':
      if (now.heat < NEARLY_FULL) return { kind: 'heat', words: 'Turn up the heat', setting: FULL };
      return now.tap_kg_s > 0
        ? { kind: 'tap', words: 'Turn the tap down by half', flow_kg_s: now.tap_kg_s / 2 }
        : turnDown;
    default:
      return null;
  }
}
