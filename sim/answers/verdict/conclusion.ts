/** What can be concluded from a whole run: facts with their numbers in SI, to be said by `sim/messages`. */
import type { BoilingVessel, CondenserKind, EndReason, Severity, StateVariable } from '../../run/result.ts';
import type { ScenarioPart } from '../../scenario/scenario.ts';
import type { TubeVerdict } from '../condenser-size/tubes.ts';

/** The shortest condenser that is enough, found for one that is not. */
export interface EnoughLength {
  /** `null` where no length is. */
  readonly length_m: number | null;
  /** Why no length is; `null` where one is. */
  readonly because: TubeVerdict | null;
}

/** The length in which a condenser condenses everything, and its own. */
export interface CondenserEnough {
  readonly condenser: CondenserKind;
  readonly peak_m: number;
  readonly length_m: number;
}

/** The numbers of each kind of conclusion. Whatever is not named a time or a peak is of the whole run. */
export interface ConclusionValues {
  'run-failed': { readonly variable: StateVariable };
  'ran-dry': { readonly vessel: BoilingVessel };
  'too-much-pressure': { readonly limit_Pa: number };
  /** Cooling water that runs off hot enough to scald. */
  'overflow-scalds': { readonly peak_K: number };
  /** Hot enough to scald in minutes; `condenses` is how the condenser fares where all is well but for that, else `null`. */
  'overflow-warm': { readonly peak_K: number; readonly condenses: CondenserEnough | null };
  'little-oil': { readonly recovery: number; readonly oil_kg: number; readonly density_kg_m3: number | null };
  /** What the coil needs of its tub, and what the tub has, m. */
  'coil-too-deep': { readonly needs_m: number; readonly has_m: number };
  'coil-too-wide': { readonly needs_m: number; readonly has_m: number };
  'never-boils': { readonly duration_s: number };
  'never-drips': { readonly firstBoil_s: number };
  /** `enough` is `null` while the length that is enough is not known. */
  'condenser-fails': {
    readonly condenser: CondenserKind;
    readonly length_m: number;
    readonly enough: EnoughLength | null;
  };
  'condenser-scant': { readonly condenser: CondenserKind; readonly reserve_m: number };
  'condenser-enough': CondenserEnough;
  'distillate-warm': { readonly peak_K: number; readonly limit_K: number };
  'distillate-cool': { readonly peak_K: number; readonly limit_K: number };
  'first-drop': Readonly<Record<never, never>>;
  'no-oil': Readonly<Record<never, never>>;
  /** `share` of the oil that is collected in the end is in the receiver. */
  'most-oil': { readonly share: number; readonly oil_kg: number; readonly density_kg_m3: number | null };
  products: {
    readonly oil_kg: number;
    readonly density_kg_m3: number | null;
    readonly recovery: number | null;
    readonly hydrosol_kg: number;
  };
  'cooling-water': {
    readonly used_kg: number;
    readonly peak_K: number;
    /** Where the water comes from: runs through, stands in the tub, goes round from a barrel, or nowhere. */
    readonly supply: 'tap' | 'tub' | 'barrel' | 'none';
  };
  'separator-catches': { readonly share: number; readonly dissolved_kg: number; readonly density_kg_m3: number | null };
  /** Oil that makes the kept hydrosol cloudy, and the time in which nine tenths of it leave a jar; `null` for over a month. */
  'cloudy-hydrosol': {
    readonly haze_kg: number;
    readonly density_kg_m3: number | null;
    readonly depth_m: number;
    readonly clears_s: number | null;
    readonly sinks: boolean;
  };
  'run-length': { readonly duration_s: number; readonly reason: EndReason };
  energy: { readonly fuel_J: number; readonly cost: number; readonly pricesAreDefault: boolean };
  'pot-water': { readonly water_kg: number; readonly vessel: BoilingVessel };
}

export type ConclusionKind = keyof ConclusionValues;

export type Conclusion<Kind extends ConclusionKind = ConclusionKind> = {
  [K in Kind]: {
    readonly kind: K;
    readonly severity: Severity | 'good';
    readonly part: ScenarioPart;
    /** Where in the run to look; `null` where the whole run is meant. */
    readonly time_s: number | null;
    readonly values: ConclusionValues[K];
  };
}[Kind];

export const conclude = <K extends ConclusionKind>(
  kind: K,
  severity: Severity | 'good',
  part: ScenarioPart,
  time_s: number | null,
  values: ConclusionValues[K],
): Conclusion<K> => ({ kind, severity, part, time_s, values });
