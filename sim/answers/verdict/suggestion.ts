/**
 * What is worth trying next: against a fault what may mend it, else a question. Nothing is offered before the model has
 * tried it, so this file only says what to try, in order of liking, and how to judge what came of it.
 */
import { isCoil } from '../../geometry/condenser-kind.ts';
import { longestCoil } from '../../geometry/coil.ts';
import type { RunResult } from '../../run/result.ts';
import type { EnoughLength } from './conclusion.ts';
import { verdictOf, type Fact, type Verdict } from './verdict.ts';

export type Suggestion =
  | { readonly kind: 'heat'; readonly setting: number }
  | { readonly kind: 'tap'; readonly flow_kg_s: number }
  | { readonly kind: 'length'; readonly length_m: number }
  | { readonly kind: 'charge'; readonly mass_kg: number };

/** A suggestion that was tried, with what came of it. */
export interface Tried {
  readonly wish: Suggestion;
  /** Whether it is meant as a question, and not to mend a fault. */
  readonly isQuestion: boolean;
  readonly before: RunResult;
  readonly after: RunResult;
  /** What the run then comes to. */
  readonly lead: Fact;
}

/** How the controls stand that a suggestion may turn. */
export interface Controls {
  /** `null` where a controller turns the heat by itself. */
  readonly heat: number | null;
  readonly tap_kg_s: number;
}

const FULL = 1;
const LEAST_SETTING = 0.05;
const inHundredths = (setting: number): number =>
  Math.min(FULL, Math.max(LEAST_SETTING, Math.round(100 * setting) / 100));
const inCentimetres = (length_m: number): number => Math.round(100 * length_m) / 100;
/** Litres a minute in fiftieths, which can be set by hand. */
const FLOW_STEP = 0.02 / 60;
const settable = (flow_kg_s: number): number => Math.max(1, Math.round(flow_kg_s / FLOW_STEP)) * FLOW_STEP;
/** Where no water runs, a thin stream, kg/s. */
const THIN_STREAM = 0.3 / 60;

const heats = ({ heat }: Controls, shares: readonly number[]): Suggestion[] =>
  heat === null
    ? []
    : shares
        .map((share) => inHundredths(share * heat))
        .filter((setting) => setting !== heat)
        .map((setting) => ({ kind: 'heat', setting }));

const taps = ({ tap_kg_s }: Controls, shares: readonly number[]): Suggestion[] =>
  shares.map((share) => ({ kind: 'tap', flow_kg_s: settable(share * (tap_kg_s > 0 ? tap_kg_s : THIN_STREAM)) }));

const lengths = ({ scenario }: RunResult, shares: readonly number[]): Suggestion[] =>
  shares.map((share) => ({ kind: 'length', length_m: inCentimetres(share * scenario.condenser.length_m) }));

const LESS_HEAT = [0.9, 0.8, 0.7, 0.6, 0.5, 0.4];

/** What may mend the fault that leads, the least change first. */
function remedies(result: RunResult, { lead }: Verdict, now: Controls, enough: EnoughLength | null): Suggestion[] {
  const { condenser, cooling } = result.scenario;
  switch (lead.kind) {
    case 'condenser-fails':
      return [
        ...(enough?.length_m ? [{ kind: 'length', length_m: enough.length_m } as const] : []),
        ...heats(now, LESS_HEAT),
        ...taps(now, [1.5, 2, 3]),
      ];
    case 'condenser-scant':
      return [...lengths(result, [1.25, 1.5, 2]), ...heats(now, LESS_HEAT)];
    case 'overflow-scalds':
    case 'overflow-warm':
    case 'tub-hot':
    case 'tub-warm':
      return [...taps(now, [1.5, 2, 3]), ...heats(now, LESS_HEAT)];
    case 'distillate-warm':
      return [...taps(now, [1.5, 2, 3]), ...lengths(result, [1.5, 2, 3]), ...heats(now, LESS_HEAT)];
    case 'never-boils':
    case 'never-drips':
    case 'little-oil':
      return now.heat === null ? [] : heats(now, [FULL / now.heat]);
    case 'coil-too-deep': {
      const length_m = isCoil(condenser) ? Math.floor(10 * longestCoil(condenser, cooling)) / 10 : 0;
      return length_m > 0 ? [{ kind: 'length', length_m }] : [];
    }
    default:
      return heats(now, LESS_HEAT);
  }
}

/** Questions worth trying where nothing is wrong. */
function questions(result: RunResult, now: Controls): Suggestion[] {
  const { mass_kg } = result.scenario.charge;
  return [
    ...(now.heat === null ? [] : heats(now, [FULL / now.heat])),
    ...(now.tap_kg_s > 0 ? taps(now, [0.5]) : []),
    ...(mass_kg > 0 ? [{ kind: 'charge', mass_kg: mass_kg / 2 } as const] : []),
    ...heats(now, [0.6]),
    ...lengths(result, [0.6]),
  ];
}

const isWell = ({ lead }: Verdict): boolean => lead.severity === 'good' || lead.severity === 'note';

/** What to try for a run, in order of liking. `turn` counts on, so that where all is well a different question comes each time. */
export function suggestionsFor(
  result: RunResult,
  verdict: Verdict,
  now: Controls,
  enough: EnoughLength | null,
  turn: number,
): readonly Suggestion[] {
  if (result.failure) return [];
  if (!isWell(verdict)) return remedies(result, verdict, now, enough);
  const all = questions(result, now);
  const asked = all[turn % Math.max(1, all.length)];
  return asked ? [asked] : [];
}

/** Whether one of the faults of a run after a remedy is new and as grave as the fault it ended; a small reserve is enough. */
function raises(was: Verdict, is: Verdict): boolean {
  const faults = ({ lead, warnings, paragraphs }: Verdict): readonly Fact[] =>
    [lead, ...warnings, ...paragraphs.flat()].filter(({ severity }) => severity === 'alarm' || severity === 'care');
  const had = new Set(faults(was).map(({ kind }) => kind));
  return faults(is).some(
    ({ kind, severity }) =>
      !had.has(kind) && kind !== 'condenser-scant' && (severity === 'alarm' || was.lead.severity === 'care'),
  );
}

const hasFault = ({ lead, warnings, paragraphs }: Verdict, kind: Fact['kind']): boolean =>
  [lead, ...warnings, ...paragraphs.flat()].some((fact) => fact.kind === kind);

/**
 * What came of trying a suggestion; `null` where it is not worth offering. A remedy must end the fault that led, and
 * raise none as grave; a question may end as it will.
 */
export function judgeTrial(wish: Suggestion, before: RunResult, after: RunResult): Tried | null {
  if (after.failure) return null;
  const was = verdictOf(before);
  const is = verdictOf(after);
  const isQuestion = isWell(was);
  if (!isQuestion && (hasFault(is, was.lead.kind) || raises(was, is))) return null;
  return { wish, isQuestion, before, after, lead: is.lead };
}
