/** What a run returns: record, events, summary and balance. */
import type { RunRecord } from './record.ts';
import type { Scenario, ScenarioPart } from '../scenario/scenario.ts';

/** The numbers of each kind of event, in SI. */
export interface EventValues {
  'first-boil': { readonly boilingPoint_K: number };
  'front-through': { readonly bedHeight_m: number };
  'first-drop': { readonly distillate_kg: number };
  /** Cooling water that scalds in minutes, and in seconds. */
  'tub-warm': { readonly water_K: number; readonly limit_K: number; readonly condenser: CondenserKind };
  'tub-hot': { readonly water_K: number; readonly limit_K: number; readonly condenser: CondenserKind };
  /** `share` is that of the vapour which reaches the condenser. */
  'vapour-escapes': { readonly escaping_kg_s: number; readonly share: number };
  'vapour-held-again': { readonly condensingLength_m: number };
  'outlet-warm': { readonly distillate_K: number; readonly limit_K: number };
  'cooling-boils': { readonly water_K: number };
  /** Share of the oil's moles that would be crystals of one constituent at the wall where the tube ends. */
  'oil-freezes': {
    readonly constituent: string;
    readonly wall_K: number;
    readonly freezes_K: number;
    readonly solidShare: number;
  };
  'coil-uncovered': { readonly depth_m: number };
  'separator-overrun': { readonly captureShare: number; readonly limit: number };
  'oil-at-inlet': { readonly layer_m: number };
  /** Water less oil, now and at the temperature advised; negative for an oil that sinks. */
  'near-neutral-oil': {
    readonly difference_kg_m3: number;
    readonly water_kg_m3: number;
    readonly temperature_K: number;
    readonly advised_K: number;
    readonly differenceThere_kg_m3: number;
    readonly waterThere_kg_m3: number;
  };
  'oil-rate-low': { readonly oilRate_kg_s: number; readonly limit_kg_s: number; readonly over_s: number };
  'pot-low': { readonly water_kg: number; readonly vessel: BoilingVessel };
  'pot-dry': { readonly water_kg: number; readonly vessel: BoilingVessel };
  'pressure-high': { readonly gauge_Pa: number; readonly limit_Pa: number };
  'over-pressure': { readonly gauge_Pa: number; readonly limit_Pa: number };
  'neck-fast': { readonly speed_m_s: number; readonly limit_m_s: number };
  /** What the steam lifts with, and what the charge weighs, over its cross-section. */
  'bed-lifts': { readonly pressureDrop_Pa: number; readonly weight_Pa: number };
  'foam-carry-over': { readonly speed_m_s: number; readonly limit_m_s: number; readonly vessel: BoilingVessel };
  scorch: { readonly flux_W_m2: number; readonly limit_W_m2: number };
  'circuit-overloaded': { readonly peak_W: number; readonly limit_W: number };
  'rate-not-held': { readonly rate_kg_s: number; readonly target_kg_s: number };
  /** `because` tells which limit was passed: of the pressure that the tube holds back, or of the speed at its inlet. */
  'tube-hazard': {
    readonly because: 'pressure' | 'speed';
    readonly pressureDrop_Pa: number;
    readonly speed_m_s: number;
  };
  'stop-rule':
    | { readonly rule: 'stop-share'; readonly share: number; readonly limit: number }
    | { readonly rule: 'stop-distillate'; readonly distillate_kg: number; readonly limit_kg: number }
    | { readonly rule: 'stop-oil-rate'; readonly oilRate_kg_s: number; readonly limit_kg_s: number };
  'run-ends': { readonly duration_s: number };
}

export type EventKind = keyof EventValues;

export type CondenserKind = Scenario['condenser']['kind'];

/** The vessel in which the water boils. */
export type BoilingVessel = 'pot' | 'boiler';

/** `note`: a milestone; `care`: look at it; `alarm`: someone or the batch can come to harm. */
export type Severity = 'note' | 'care' | 'alarm';

/** A fact of the run at a moment. What it is called and what to do about it is said by `sim/messages`. */
export type RunEvent<Kind extends EventKind = EventKind> = {
  [K in Kind]: {
    readonly kind: K;
    readonly time_s: number;
    readonly severity: Severity;
    /** Part of the still it belongs to. */
    readonly part: ScenarioPart;
    readonly values: EventValues[K];
  };
}[Kind];

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
  /** Time in which nine tenths of the haze leave a standing jar; `null` where a month does not do or nothing is known. */
  readonly hazeClears_s: number | null;
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

/** What a run keeps account of, as far as it can turn into no number. */
export type StateVariable =
  | 'heat-source'
  | 'charge-oil'
  | 'coolant-temperature'
  | 'separator-temperature'
  | 'distillate-temperature'
  | 'lid-temperature'
  | 'neck-temperature'
  | 'bed-temperature'
  | 'pot-water'
  | 'pot-temperature'
  | 'vapour';

export interface NonFinite {
  readonly variable: StateVariable;
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
