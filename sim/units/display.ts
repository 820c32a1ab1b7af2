/** From a unit, a system and what the number is for, to the unit in which it is shown. */
import { FIELD_KINDS } from './field-kinds.ts';
import {
  EVERYDAY_UNITS,
  KINDS,
  KIND_OF_UNIT,
  type Kind,
  type KindName,
  type Scale,
  type UnitSystem,
} from './scales.ts';

export interface DisplayUnit {
  /** Symbol to print after the number; empty for pure numbers. */
  readonly label: string;
  /** Decimals for a column or an axis. */
  readonly decimals: number;
  fromSI(value: number): number;
  toSI(shown: number): number;
}

/**
 * The kind of a quantity: by the hint if it names a field, a column or a kind of the same unit, else by the unit.
 * An unknown unit is shown as it stands.
 */
export function kindOf(unit: string, hint?: string): KindName | null {
  const plain = EVERYDAY_UNITS[unit];
  const base = plain === undefined ? unit : KINDS[plain.kind].si;
  if (hint !== undefined) {
    const named = hint in KINDS ? (hint as KindName) : FIELD_KINDS[hint];
    if (named !== undefined && KINDS[named].si === base) return named;
  }
  return plain?.kind ?? KIND_OF_UNIT[unit] ?? null;
}

/** The stored number in SI, for units in which some results already stand (`mL`, `°C`). */
export function everydayToSI(value: number, unit: string): number {
  const everyday = EVERYDAY_UNITS[unit];
  return everyday === undefined ? value : value * everyday.size + everyday.zero;
}

/** Smallest share of a scale's unit that is still shown in it: 0.9996 kg is a kilogram, not 1000 g. */
const LEAST_OF_SCALE = 0.9995;

/** The scale that fits the size of a number, or the usual one when no number is given. */
export function scaleFor(kind: Kind, system: UnitSystem, valueSI?: number): Scale {
  const scales = kind[system];
  const usual = scales[0];
  if (valueSI === undefined || !Number.isFinite(valueSI) || valueSI === 0) return usual;
  let best: Scale | null = null;
  let smallest = usual;
  for (const scale of scales) {
    if (scale.size < smallest.size) smallest = scale;
    if (Math.abs(valueSI) >= LEAST_OF_SCALE * scale.size && (best === null || scale.size > best.size)) best = scale;
  }
  return best ?? smallest;
}

const asStored = (label: string): Scale => ({ label, size: 1, zero: 0, decimals: 2, significant: 3 });

/** Scale for a stored unit; `near` (in the stored unit) lets it follow the size of the numbers. */
export function displayScale(unit: string, system: UnitSystem, hint?: string, near?: number): Scale {
  const name = kindOf(unit, hint);
  if (name === null) return asStored(unit);
  return scaleFor(KINDS[name], system, near === undefined ? undefined : everydayToSI(near, unit));
}

/**
 * How to show numbers stored in `unit`.
 * @param hint path of a scenario field, name of a record column or summary key, or a kind such as `coolantFlow`
 * @param near a typical or largest number, in the stored unit, to choose between mm and m, g and kg
 */
export function displayUnit(unit: string, system: UnitSystem, hint?: string, near?: number): DisplayUnit {
  const scale = displayScale(unit, system, hint, near);
  const everyday = EVERYDAY_UNITS[unit];
  const size = everyday?.size ?? 1;
  const zero = everyday?.zero ?? 0;
  return {
    label: scale.label,
    decimals: scale.decimals,
    fromSI: (value) => (value * size + zero - scale.zero) / scale.size,
    toSI: (shown) => (shown * scale.size + scale.zero - zero) / size,
  };
}
