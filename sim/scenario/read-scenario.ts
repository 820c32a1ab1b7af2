/** From any JSON to a complete scenario, or to one problem per mistake with path, value and allowed range. */
import { isCoil } from '../geometry/condenser-kind.ts';
import type * as z from 'zod/mini';
import { constituents } from '../fluids/constituents.ts';
import { narrowestJacket } from '../geometry/jacket.ts';
import { bedRoom, packedVolume, waterRoom } from '../geometry/pot.ts';
import { botanicals } from '../library/index.ts';
import { fieldAt } from './fields.ts';
import { isObject } from './json.ts';
import { isOwnPlant } from './own-name.ts';
import { chargeFromBotanical } from './presets.ts';
import { cellsOf } from './cost.ts';
import { MOST_CELL_STEPS } from './limits.ts';
import { migrated } from './migrate.ts';
import {
  problemAt,
  type Bounds,
  type NeededType,
  type Problem,
  type ProblemKind,
  type ProblemValues,
} from './problem.ts';
import { SCENARIO_VERSION, scenarioSchema, type Scenario } from './scenario.ts';

export type ReadScenario =
  { readonly ok: true; readonly scenario: Scenario } | { readonly ok: false; readonly problems: readonly Problem[] };

const valueAt = (input: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (node, key) =>
      typeof node === 'object' && node !== null ? (node as Record<PropertyKey, unknown>)[key] : undefined,
    input,
  );

const NEEDED_TYPES: Readonly<Record<string, NeededType>> = {
  object: 'object',
  array: 'list',
  string: 'text',
  boolean: 'truth',
};

function fromIssue(issue: z.core.$ZodIssue, input: unknown): Problem[] {
  const path = issue.path.map(String).join('.');
  const value = valueAt(input, issue.path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) =>
        problemAt(path ? `${path}.${key}` : key, valueAt(input, [...issue.path, key]), 'unknown-field', {}),
      );
    case 'invalid_value':
      return [problemAt(path, value, 'not-an-option', { options: issue.values.map(String) })];
    case 'too_small': {
      const least = Number(issue.minimum);
      return [
        isOfNumber(issue.origin)
          ? outside(path, value, { least })
          : problemAt(path, value, 'too-few-entries', { least }),
      ];
    }
    case 'too_big': {
      const most = Number(issue.maximum);
      if (isOfNumber(issue.origin)) return [outside(path, value, { most })];
      return [problemAt(path, value, issue.origin === 'string' ? 'too-long-a-text' : 'too-many-entries', { most })];
    }
    case 'invalid_type': {
      const needed = NEEDED_TYPES[issue.expected];
      return [needed ? problemAt(path, value, 'other-type', { needed }) : notANumber(path, value)];
    }
    case 'custom': {
      const before_s: unknown = issue.params?.['before_s'];
      if (issue.params?.['isPhase'] === true) return [problemAt(path, value, 'schedule-phases-out-of-order', {})];
      return [
        typeof before_s === 'number'
          ? problemAt(path, value, 'schedule-out-of-order', { before_s })
          : problemAt(path, value, 'schedule-begins-late', {}),
      ];
    }
    default:
      // The schema has no other checks; a new one must get a kind of its own.
      throw new Error(`No kind of problem stands for the schema's issue "${issue.code}" at ${path}.`);
  }
}

const isOfNumber = (origin: string): boolean => origin === 'number' || origin === 'int';

/** The range of a field that is a number or a schedule's value; entries of lists and times have only the bound met. */
function rangeOf(path: string): (Bounds & { readonly orOpen: boolean }) | null {
  const field = fieldAt(path);
  if (!field || field.kind === 'list' || path.endsWith('.at_s')) return null;
  const { min, max, nullable } = field;
  return min === undefined || max === undefined ? null : { min, max, orOpen: nullable };
}

function outside(path: string, value: unknown, met: { readonly least: number } | { readonly most: number }): Problem {
  const range = rangeOf(path);
  if (range) return problemAt(path, value, 'outside-range', range);
  return 'least' in met ? problemAt(path, value, 'below-least', met) : problemAt(path, value, 'above-most', met);
}

const notANumber = (path: string, value: unknown): Problem =>
  problemAt(path, value, 'not-a-number', rangeOf(path) ?? { orOpen: false });

const known = new Set(botanicals.map((row) => row.id));
const oilConstituents = new Set(constituents.map((row) => row.id));

/** A charge's own release over the plant's, group by group. */
const withGroups = (
  own: Record<string, unknown>,
  plant: Readonly<Record<string, unknown>> = {},
): Record<string, unknown> => ({
  ...plant,
  ...Object.fromEntries(
    Object.entries(own).map(([key, value]) => {
      const usual = plant[key];
      return [key, isObject(value) && isObject(usual) ? { ...usual, ...value } : value];
    }),
  ),
});

/** Fills the charge from the botanical it names, where the file says nothing itself. */
function withBotanical(input: Record<string, unknown>): Record<string, unknown> {
  const charge = input['charge'] === undefined ? {} : input['charge'];
  if (!isObject(charge)) return input;
  const id = charge['botanical'] === undefined ? 'lavender-true' : charge['botanical'];
  if (typeof id !== 'string' || !known.has(id)) return input;
  const state = charge['state'] === 'fresh' || charge['state'] === 'dry' ? charge['state'] : undefined;
  const preset = chargeFromBotanical(id, state);
  const release = isObject(charge['release'])
    ? withGroups(charge['release'], preset.release)
    : (charge['release'] ?? preset.release);
  return { ...input, charge: { ...preset, ...charge, state: charge['state'] ?? preset.state, release } };
}

/** Rules that join several fields. */
function crossProblems(scenario: Scenario): Problem[] {
  const { charge, condenser, neck, pot, separator } = scenario;
  const found: Problem[] = [];
  const add = <K extends ProblemKind>(path: string, value: unknown, kind: K, values: ProblemValues[K]) =>
    found.push(problemAt(path, value, kind, values));
  if (!isOwnPlant(charge.botanical) && !known.has(charge.botanical))
    add('charge.botanical', charge.botanical, 'unknown-botanical', {});
  charge.composition.forEach(({ constituent }, index) => {
    const path = `charge.composition.${index}.constituent`;
    if (!oilConstituents.has(constituent)) add(path, constituent, 'unknown-constituent', {});
    if (charge.composition.findIndex((entry) => entry.constituent === constituent) < index)
      add(path, constituent, 'constituent-twice', {});
  });
  const sum = charge.composition.reduce((total, entry) => total + entry.share, 0);
  if (Math.abs(sum - 1) > 1e-6) add('charge.composition', Number(sum.toPrecision(6)), 'shares-not-whole', {});
  const { insideDiameter_m, outsideDiameter_m, jacketDiameter_m, coilPitch_m, coilDiameter_m } = condenser;
  if (insideDiameter_m >= outsideDiameter_m)
    add('condenser.insideDiameter_m', insideDiameter_m, 'bore-not-within-tube', { outside_m: outsideDiameter_m });
  if (!isCoil(condenser)) {
    const least_m = narrowestJacket(condenser);
    if (jacketDiameter_m < least_m)
      add('condenser.jacketDiameter_m', jacketDiameter_m, 'jacket-too-narrow', { least_m });
  } else {
    if (coilPitch_m < outsideDiameter_m)
      add('condenser.coilPitch_m', coilPitch_m, 'turns-too-close', { least_m: outsideDiameter_m });
    if (coilDiameter_m < 2 * outsideDiameter_m)
      add('condenser.coilDiameter_m', coilDiameter_m, 'coil-too-tight', { least_m: 2 * outsideDiameter_m });
  }
  if (neck.risingLength_m > neck.length_m)
    add('neck.risingLength_m', neck.risingLength_m, 'rise-longer-than-neck', { most_m: neck.length_m });
  if (separator.inletDepth_m >= separator.height_m)
    add('separator.inletDepth_m', separator.inletDepth_m, 'inlet-below-separator', { below_m: separator.height_m });
  const room_kg = waterRoom(scenario) * 1000;
  const plantRoom = bedRoom(pot);
  if (pot.layout === 'water-and-steam' && pot.gridHeight_m >= pot.height_m)
    add('pot.gridHeight_m', pot.gridHeight_m, 'grid-above-pot', { below_m: pot.height_m });
  else if (pot.layout !== 'water' && packedVolume(charge) > plantRoom)
    add('charge.mass_kg', charge.mass_kg, 'charge-too-large', { most_kg: plantRoom * charge.bulkDensity_kg_m3 });
  if (pot.layout === 'water' && pot.water_kg + charge.mass_kg > 0.95 * room_kg)
    add('pot.water_kg', pot.water_kg, 'pot-too-full', { most_kg: 0.95 * room_kg });
  else if (pot.layout === 'steam' && pot.water_kg > 0.9 * room_kg)
    add('pot.water_kg', pot.water_kg, 'boiler-too-full', { most_kg: 0.9 * room_kg });
  else if (pot.layout === 'water-and-steam' && charge.mass_kg > 0 && pot.water_kg > room_kg)
    add('pot.water_kg', pot.water_kg, 'water-above-grid', { most_kg: room_kg });
  const { step_s } = scenario.advanced;
  const least_s = (scenario.run.duration_s * cellsOf(scenario.advanced)) / MOST_CELL_STEPS;
  if (step_s < least_s)
    add('advanced.step_s', step_s, 'takes-too-long', { least_s: Number(least_s.toPrecision(2)) + 0.001 });
  return found;
}

/** Reads a scenario from parsed JSON. Nothing is changed in place; on any problem nothing is returned but the list. */
export function readScenario(given: unknown): ReadScenario {
  if (!isObject(given)) return { ok: false, problems: [problemAt('', given, 'not-a-scenario', {})] };
  const input = migrated(given);
  const version = input['version'];
  if (version !== undefined && version !== SCENARIO_VERSION)
    return { ok: false, problems: [problemAt('version', version, 'other-version', { version: SCENARIO_VERSION })] };
  const filled = withBotanical(input);
  const parsed = scenarioSchema.safeParse(filled);
  if (!parsed.success) return { ok: false, problems: parsed.error.issues.flatMap((issue) => fromIssue(issue, filled)) };
  const problems = crossProblems(parsed.data);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, scenario: parsed.data };
}
