/** What a run returns: record, events, summary and balance. */
import type { RunRecord } from './record.ts';
import type { Scenario, ScenarioPart } from '../scenario/scenario.ts';

export type EventKind =
  | 'first-boil'
  | 'front-through'
  | 'first-drop'
  | 'tub-warm'
  | 'vapour-escapes'
  | 'vapour-held-again'
  | 'outlet-warm'
  | 'cooling-boils'
  | 'coil-uncovered'
  | 'separator-overrun'
  | 'oil-at-inlet'
  | 'near-neutral-oil'
  | 'oil-rate-low'
  | 'pot-low'
  | 'pot-dry'
  | 'pressure-high'
  | 'over-pressure'
  | 'neck-fast'
  | 'bed-lifts'
  | 'foam-carry-over'
  | 'scorch'
  | 'circuit-overloaded'
  | 'rate-not-held'
  | 'tube-hazard'
  | 'stop-rule'
  | 'run-ends';

/** `note`: a milestone; `care`: look at it; `alarm`: someone or the batch can come to harm. */
export type Severity = 'note' | 'care' | 'alarm';

export interface RunEvent {
  readonly kind: EventKind;
  readonly time_s: number;
  readonly severity: Severity;
  /** Part of the still it belongs to. */
  readonly part: ScenarioPart;
  /** The number that triggered it, with its unit. */
  readonly value: number;
  readonly unit: string;
  /** One plain sentence; SI numbers inside are already in everyday units. */
  readonly sentence: string;
  /** What to do. */
  readonly advice: string;
}

export type EndReason =
  'duration' | 'stop-share' | 'stop-oil-rate' | 'stop-distillate' | 'pot-dry' | 'over-pressure' | 'non-finite';

/** Headline numbers; keys carry units, times never reached are `null`. */
export interface Summary {
  readonly firstBoil_s: number | null;
  readonly firstDrop_s: number | null;
  readonly end_s: number;
  readonly endReason: EndReason;
  readonly oilInCharge_kg: number;
  readonly oilCollected_kg: number;
  readonly oilCollected_mL: number;
  readonly oilDensity_kg_m3: number | null;
  readonly oilByConstituent_kg: Readonly<Record<string, number>>;
  /** Oil collected as a share of the oil in the charge. */
  readonly recovery: number | null;
  /** Times at which the collected oil reached a share of what this run collected in the end. */
  readonly t50_s: number | null;
  readonly t80_s: number | null;
  readonly t90_s: number | null;
  readonly t95_s: number | null;
  readonly t99_s: number | null;
  readonly hydrosol_kg: number;
  readonly oilDissolved_kg: number;
  readonly oilHaze_kg: number;
  readonly oilUncondensed_kg: number;
  readonly oilHydrolysed_kg: number;
  readonly oilLeft_kg: number;
  readonly waterUncondensed_kg: number;
  readonly peakSteam_kg_s: number;
  readonly peakDuty_W: number;
  readonly coolantPeakOut_C: number;
  readonly coolantUsed_kg: number;
  readonly condensatePeak_C: number | null;
  readonly condensingLengthPeak_m: number;
  readonly energyFuel_J: number;
  readonly energyToPot_J: number;
  readonly energyCost: number;
  readonly waterCost: number;
  readonly potWaterLeft_kg: number;
  readonly peakPotGauge_Pa: number;
  readonly peakNeckSpeed_m_s: number;
  readonly baseFlux_W_m2: number;
  readonly oilSinks: boolean;
}

/** Closure of one conserved quantity: `residual` = start + in − out − end, to be compared with `throughput`. */
export interface Closure {
  readonly start: number;
  readonly in: number;
  readonly out: number;
  readonly end: number;
  readonly residual: number;
  readonly throughput: number;
  readonly relative: number;
}

export interface Balance {
  readonly water_kg: Closure;
  readonly energy_J: Closure;
  readonly constituents_kg: Readonly<Record<string, Closure>>;
}

export interface NonFinite {
  readonly variable: string;
  readonly time_s: number;
}

export interface RunResult {
  readonly scenario: Scenario;
  readonly record: RunRecord;
  readonly events: readonly RunEvent[];
  readonly summary: Summary;
  readonly balance: Balance;
  /** Set when a state turned non-finite and stopped the run. */
  readonly failure: NonFinite | null;
}
