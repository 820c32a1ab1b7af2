/** Scenarios of earlier versions in today's shape, so that files, links and kept stills go on opening. */
import { constituentById } from '../fluids/constituents.ts';
import { isObject } from './json.ts';
import { oilMoles } from './presets.ts';
import { SCENARIO_VERSION } from './scenario.ts';

type Json = Record<string, unknown>;

const isEntry = (entry: unknown): entry is { constituent: string; share: number } => {
  if (!isObject(entry) || typeof entry['constituent'] !== 'string' || typeof entry['share'] !== 'number') return false;
  try {
    constituentById(entry['constituent']);
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
};

/** Half coverage was a share of the first oil; it is an amount on a kilogram of dry plant now. */
function withHalfCoverage(charge: Json): Json {
  const { release, oilContent, composition } = charge;
  if (!isObject(release) || !('halfCoverage' in release)) return charge;
  const { halfCoverage, ...others } = release;
  const known =
    typeof halfCoverage === 'number' &&
    typeof oilContent === 'number' &&
    Array.isArray(composition) &&
    composition.every(isEntry);
  return {
    ...charge,
    release: known ? { ...others, halfCoverage_mol_kg: halfCoverage * oilMoles(oilContent, composition) } : others,
  };
}

/** Speed at which a tub of any usual size is mixed through, m/s. */
const MIXES_THROUGH = 0.05;

/** Any stirring mixed a tub through; it works against its layers now, and a slow spoon no longer does. */
function withStirring(cooling: Json): Json {
  const { stir_m_s } = cooling;
  return typeof stir_m_s === 'number' && stir_m_s > 0 && stir_m_s < MIXES_THROUGH
    ? { ...cooling, stir_m_s: MIXES_THROUGH }
    : cooling;
}

/** Steps from each version to the next, the first from version 1. */
const steps: readonly ((input: Json) => Json)[] = [
  (input) => (isObject(input['charge']) ? { ...input, charge: withHalfCoverage(input['charge']) } : input),
  (input) => (isObject(input['cooling']) ? { ...input, cooling: withStirring(input['cooling']) } : input),
];

/** The input as today's version; what names no version, or none that is known, stays as it is. */
export function migrated(input: Json): Json {
  const { version } = input;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1 || version >= SCENARIO_VERSION)
    return input;
  return { ...steps.slice(version - 1).reduce((json, step) => step(json), input), version: SCENARIO_VERSION };
}
