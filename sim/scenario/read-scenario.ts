/** From any JSON to a complete scenario, or to one problem per mistake with path, value and allowed range. */
import type * as z from 'zod/mini';
import { constituents } from '../fluids/constituents.ts';
import { narrowestJacket } from '../geometry/jacket.ts';
import { bedRoom, packedVolume, waterRoom } from '../geometry/pot.ts';
import { botanicals } from '../library/index.ts';
import { fieldAt } from './fields.ts';
import { isObject } from './json.ts';
import { chargeFromBotanical } from './presets.ts';
import { migrated } from './migrate.ts';
import { SCENARIO_VERSION, scenarioSchema, type Scenario } from './scenario.ts';

export interface Problem {
  /** Dotted path of the field, e.g. `pot.diameter_m`; empty for the whole file. */
  readonly path: string;
  readonly value: unknown;
  /** What is allowed there, in words. */
  readonly allowed: string;
  /** One sentence naming field, value and allowed range. */
  readonly message: string;
}

export type ReadScenario =
  { readonly ok: true; readonly scenario: Scenario } | { readonly ok: false; readonly problems: readonly Problem[] };

const valueAt = (input: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (node, key) =>
      typeof node === 'object' && node !== null ? (node as Record<PropertyKey, unknown>)[key] : undefined,
    input,
  );

/** A value as JSON; its kind where JSON cannot hold it (a program may hand over anything). */
const asJson = (value: unknown): string => {
  try {
    return JSON.stringify(value) ?? typeof value;
  } catch {
    return typeof value;
  }
};

const show = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  const written = typeof value === 'number' ? String(value) : asJson(value);
  return written.length > 60 ? `${written.slice(0, 57)}…` : written;
};

const problem = (path: string, value: unknown, allowed: string): Problem => {
  const field = fieldAt(path);
  const named = field && field.path === path ? `${field.title} (${path})` : path || 'the scenario';
  return { path, value, allowed, message: `${named}: ${show(value)} is not allowed; ${allowed}.` };
};

const rangeOf = (path: string): string => {
  const field = fieldAt(path);
  if (!field || field.min === undefined || field.max === undefined) return 'a number is needed';
  const unit = field.unit === '1' ? '' : ` ${field.unit}`;
  return `allowed is ${field.min} to ${field.max}${unit}${field.nullable ? ', or null' : ''}`;
};

function fromIssue(issue: z.core.$ZodIssue, input: unknown): Problem[] {
  const path = issue.path.map(String).join('.');
  const value = valueAt(input, issue.path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => {
        const whole = path ? `${path}.${key}` : key;
        return problem(whole, valueAt(input, [...issue.path, key]), 'no field has this name');
      });
    case 'invalid_value':
      return [problem(path, value, `allowed is ${issue.values.map((option) => show(option)).join(', ')}`)];
    case 'too_small':
    case 'too_big': {
      if (issue.origin === 'number' || issue.origin === 'int') {
        const direct = fieldAt(path);
        const words =
          direct?.kind === 'list' || (direct?.kind === 'schedule' && path.endsWith('at_s'))
            ? issue.code === 'too_small'
              ? `at least ${issue.minimum} is needed`
              : `at most ${issue.maximum} is allowed`
            : rangeOf(path);
        return [problem(path, value, words)];
      }
      const bound = issue.code === 'too_small' ? `at least ${issue.minimum}` : `at most ${issue.maximum}`;
      return [problem(path, value, `${bound} ${issue.origin === 'string' ? 'characters' : 'entries'} are allowed`)];
    }
    case 'invalid_type': {
      const number = issue.expected === 'number' || issue.expected === 'int';
      return [problem(path, value, number ? rangeOf(path) : `a ${issue.expected} is needed`)];
    }
    default:
      return [problem(path, value, issue.message)];
  }
}

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
  const add = (path: string, value: unknown, allowed: string) => found.push(problem(path, value, allowed));
  if (charge.botanical !== 'own' && !known.has(charge.botanical))
    add('charge.botanical', charge.botanical, 'allowed is an id of the library or "own"');
  charge.composition.forEach(({ constituent }, index) => {
    if (!oilConstituents.has(constituent))
      add(`charge.composition.${index}.constituent`, constituent, 'the id of a known oil constituent is needed');
    if (charge.composition.findIndex((entry) => entry.constituent === constituent) < index)
      add(`charge.composition.${index}.constituent`, constituent, 'each constituent may stand once');
  });
  const sum = charge.composition.reduce((total, entry) => total + entry.share, 0);
  if (Math.abs(sum - 1) > 1e-6) add('charge.composition', Number(sum.toPrecision(6)), 'the shares must add up to 1');
  if (condenser.insideDiameter_m >= condenser.outsideDiameter_m)
    add(
      'condenser.insideDiameter_m',
      condenser.insideDiameter_m,
      `it must be less than the outside diameter, ${condenser.outsideDiameter_m} m`,
    );
  if (condenser.kind !== 'coil-in-tub') {
    const narrowest = narrowestJacket(condenser);
    if (condenser.jacketDiameter_m < narrowest)
      add(
        'condenser.jacketDiameter_m',
        condenser.jacketDiameter_m,
        `it must be at least ${narrowest.toPrecision(4)} m to hold the tube or tubes`,
      );
  } else {
    if (condenser.coilPitch_m < condenser.outsideDiameter_m)
      add(
        'condenser.coilPitch_m',
        condenser.coilPitch_m,
        `it must be at least the tube's outside diameter, ${condenser.outsideDiameter_m} m`,
      );
    if (condenser.coilDiameter_m < 2 * condenser.outsideDiameter_m)
      add(
        'condenser.coilDiameter_m',
        condenser.coilDiameter_m,
        `it must be at least twice the tube's outside diameter, ${condenser.outsideDiameter_m} m`,
      );
  }
  if (neck.risingLength_m > neck.length_m)
    add('neck.risingLength_m', neck.risingLength_m, `it must be at most the neck length, ${neck.length_m} m`);
  if (separator.inletDepth_m >= separator.height_m)
    add(
      'separator.inletDepth_m',
      separator.inletDepth_m,
      `it must be less than the separator height, ${separator.height_m} m`,
    );
  const room = waterRoom(scenario) * 1000;
  const plantRoom = bedRoom(pot);
  if (pot.layout === 'water-and-steam' && pot.gridHeight_m >= pot.height_m)
    add('pot.gridHeight_m', pot.gridHeight_m, `it must be less than the pot height, ${pot.height_m} m`);
  else if (pot.layout !== 'water' && packedVolume(charge) > plantRoom)
    add(
      'charge.mass_kg',
      charge.mass_kg,
      `the pot holds at most ${(plantRoom * charge.bulkDensity_kg_m3).toPrecision(3)} kg at this packing density`,
    );
  if (pot.layout === 'water' && pot.water_kg + charge.mass_kg > 0.95 * room)
    add(
      'pot.water_kg',
      pot.water_kg,
      `water and charge together must stay below ${(0.95 * room).toPrecision(3)} kg in this pot`,
    );
  else if (pot.layout === 'steam' && pot.water_kg > 0.9 * room)
    add('pot.water_kg', pot.water_kg, `the boiler holds at most ${(0.9 * room).toPrecision(3)} kg`);
  else if (pot.layout === 'water-and-steam' && charge.mass_kg > 0 && pot.water_kg > room)
    add('pot.water_kg', pot.water_kg, `at most ${room.toPrecision(3)} kg fit under the grid`);
  return found;
}

/** Reads a scenario from parsed JSON. Nothing is changed in place; on any problem nothing is returned but the list. */
export function readScenario(given: unknown): ReadScenario {
  if (!isObject(given))
    return { ok: false, problems: [problem('', given, 'a JSON object with the fields of a scenario is needed')] };
  const input = migrated(given);
  if (input['version'] !== undefined && input['version'] !== SCENARIO_VERSION)
    return {
      ok: false,
      problems: [problem('version', input['version'], `this program reads version ${SCENARIO_VERSION}`)],
    };
  const filled = withBotanical(input);
  const parsed = scenarioSchema.safeParse(filled);
  if (!parsed.success) return { ok: false, problems: parsed.error.issues.flatMap((issue) => fromIssue(issue, filled)) };
  const problems = crossProblems(parsed.data);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, scenario: parsed.data };
}
