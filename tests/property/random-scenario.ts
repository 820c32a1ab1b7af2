/**
 * Random scenarios for property tests. Every number of the schema is drawn: near its default, anywhere in its allowed
 * range, or on one of the range's ends. What is drawn is then mended until the rules that join several fields hold, so
 * that `readScenario` takes it; the length of the run follows from how many steps a test can afford.
 */
import fc from 'fast-check';
import { botanicals } from '../../sim/library/index.ts';
import {
  chargeFromBotanical,
  constituents,
  readScenario,
  scenarioFields,
  type FieldInfo,
  type ScheduleEvent,
  type Scenario,
} from '../../sim/index.ts';

/** How far from the defaults to draw; at the ends each field has its default or an end of its range. */
export type Reach = 'ordinary' | 'corner' | 'ends';

/** Shares of the fields that stand at an end of their ranges, of which each still has one. */
const SHARES_AT_ENDS = [0.02, 0.1, 0.4, 1];

/** Whether knots of a schedule may wait for an event. */
export type Plans = 'by-clock' | 'any';

type Tree = Record<string, unknown>;
type Part = Record<string, number>;
interface Knot {
  at_s: number;
  value: number;
  shape: 'step' | 'ramp';
  after?: ScheduleEvent;
}

/** Fields that only set how much a run costs, drawn apart. */
const COSTLY = new Set([
  'run.duration_s',
  'advanced.step_s',
  'advanced.recordEvery_s',
  'advanced.segments',
  'advanced.bedLayers',
  'advanced.tubLayers',
]);
/** Fields whose value follows from others. */
const JOINED = new Set(['name', 'note', 'charge.botanical', 'charge.composition', 'cooling.ice']);

/** A number of a range, on a grid of a million points, so that what is drawn stays a size that someone could mean. */
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((k) => Math.min(max, min + (max - min) * (k / 1_000_000)));
/** The same to the last bit of a double, without the numbers that are as good as zero. */
const anywhere = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => (Math.abs(value) < 1e-9 * max ? Math.max(min, 0) : value));

/** Values spread evenly in the logarithm where the range allows, else evenly. */
const spread = (min: number, max: number): fc.Arbitrary<number> =>
  min > 0 && max / min > 20
    ? between(Math.log(min), Math.log(max)).map((x) => Math.min(max, Math.max(min, Math.exp(x))))
    : between(min, max);

function numberOf(field: FieldInfo, initial: number, reach: Reach, atEnds = 0): fc.Arbitrary<number> {
  const min = field.min as number;
  const max = field.max as number;
  const half = 0.5 * Math.abs(initial) || 0.1 * (max - min);
  const near = between(Math.max(min, initial - half), Math.min(max, initial + half));
  if (reach === 'ends')
    return fc.oneof(
      { weight: Math.round(100 * (1 - atEnds)), arbitrary: fc.constant(initial) },
      { weight: Math.round(100 * atEnds), arbitrary: fc.constantFrom(min, max) },
    );
  const drawn =
    reach === 'ordinary'
      ? fc.oneof({ weight: 3, arbitrary: fc.constant(initial) }, { weight: 5, arbitrary: near })
      : fc.oneof(
          { weight: 4, arbitrary: near },
          { weight: 4, arbitrary: spread(min, max) },
          { weight: 1, arbitrary: anywhere(min, max) },
          { weight: 2, arbitrary: fc.constantFrom(min, max) },
        );
  return field.kind === 'integer' ? drawn.map((value) => Math.min(max, Math.max(min, Math.round(value)))) : drawn;
}

const scheduleOf = (field: FieldInfo, reach: Reach, plans: Plans, atEnds: number): fc.Arbitrary<Knot[]> => {
  const initial = (field.default as Knot[])[0]?.value as number;
  const knot = fc.record({
    at_s: fc.integer({ min: 1, max: 3000 }),
    value: numberOf(field, initial, reach, atEnds),
    shape: fc.constantFrom('step' as const, 'ramp' as const),
  });
  const first = numberOf(field, initial, reach, atEnds);
  const later = fc.uniqueArray(knot, { maxLength: 4, selector: (entry) => entry.at_s });
  const start = (value: number): Knot => ({ at_s: 0, value, shape: 'step' });
  const inOrder = (knots: Knot[]): Knot[] => knots.sort((a, b) => a.at_s - b.at_s);
  if (plans === 'by-clock') return fc.tuple(first, later).map(([value, knots]) => [start(value), ...inOrder(knots)]);
  // Most plans go by the clock; in some, the last knots wait for the first boil or the first drop.
  const waiting = fc.oneof(
    { weight: 3, arbitrary: fc.constant<readonly [number, number]>([4, 4]) },
    { weight: 1, arbitrary: fc.tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 4 })) },
  );
  const after = (index: number, [boil, drop]: readonly [number, number]): Pick<Knot, 'after'> => {
    if (index >= Math.max(boil, drop)) return drop < 4 ? { after: 'first-drop' } : {};
    return index >= boil ? { after: 'first-boil' } : {};
  };
  return fc
    .tuple(first, later, waiting)
    .map(([value, knots, phases]) => [
      start(value),
      ...inOrder(knots).map((entry, index) => ({ ...entry, ...after(index, phases) })),
    ]);
};

/** Temperatures in kelvin vary by degrees, not by a share of themselves. */
const kelvin = (field: FieldInfo, initial: number): fc.Arbitrary<number> =>
  between(Math.max(field.min as number, initial - 12), Math.min(field.max as number, initial + 12));

function valueOf(field: FieldInfo, reach: Reach, plans: Plans, atEnds: number): fc.Arbitrary<unknown> {
  if (field.kind === 'choice') return fc.constantFrom(...(field.options as readonly string[]));
  if (field.kind === 'schedule') return scheduleOf(field, reach, plans, atEnds);
  if (field.nullable) {
    const middle = 0.5 * ((field.min as number) + (field.max as number));
    return fc.oneof(
      { weight: 4, arbitrary: fc.constant(null) },
      { weight: 1, arbitrary: numberOf(field, middle, reach, atEnds) },
    );
  }
  if (field.unit === 'K' && reach === 'ordinary') return kelvin(field, field.default as number);
  return numberOf(field, field.default as number, reach, atEnds);
}

const put = (tree: Tree, path: string, value: unknown): void => {
  const keys = path.split('.');
  const last = keys.pop() as string;
  let node = tree;
  for (const key of keys) {
    if (node[key] === undefined) node[key] = {};
    node = node[key] as Tree;
  }
  node[last] = value;
};

/** An oil of one to eight constituents with shares that add up to one. */
const ownOil: fc.Arbitrary<{ constituent: string; share: number }[]> = fc
  .uniqueArray(fc.tuple(fc.constantFrom(...constituents.map((row) => row.id)), fc.integer({ min: 1, max: 1000 })), {
    minLength: 1,
    maxLength: 8,
    selector: ([id]) => id,
  })
  .map((rows) => {
    const total = rows.reduce((sum, [, parts]) => sum + parts, 0);
    return rows.map(([constituent, parts]) => ({ constituent, share: parts / total }));
  });

const ice = fc
  .uniqueArray(fc.record({ at_s: fc.integer({ min: 0, max: 3000 }), mass_kg: between(0.01, 20) }), {
    maxLength: 3,
    selector: (entry) => entry.at_s,
  })
  .map((rows) => rows.sort((a, b) => a.at_s - b.at_s));

const part = (tree: Tree, name: string): Part => tree[name] as Part;
const get = (values: Part, key: string): number => values[key] as number;

/** Brings tube, jacket, coil, neck and separator into sizes that fit each other. */
function mendApparatus(tree: Tree): void {
  const condenser = part(tree, 'condenser');
  const inside = get(condenser, 'insideDiameter_m');
  condenser['outsideDiameter_m'] = Math.min(0.1, Math.max(get(condenser, 'outsideDiameter_m'), inside * 1.05, 0.003));
  const outside = get(condenser, 'outsideDiameter_m');
  let tubes = get(condenser, 'tubes');
  while (
    tree['condenser'] &&
    (condenser['kind'] as unknown) === 'bundle' &&
    tubes > 1 &&
    outside * Math.sqrt(tubes * 1.2) * 1.05 > 0.5
  )
    tubes--;
  condenser['tubes'] = tubes;
  const width = (condenser['kind'] as unknown) === 'bundle' ? outside * Math.sqrt(tubes * 1.2) : outside;
  condenser['jacketDiameter_m'] = Math.min(0.5, Math.max(get(condenser, 'jacketDiameter_m'), width * 1.05));
  condenser['coilPitch_m'] = Math.max(get(condenser, 'coilPitch_m'), outside);
  condenser['coilDiameter_m'] = Math.max(get(condenser, 'coilDiameter_m'), 2 * outside);
  const neck = part(tree, 'neck');
  neck['risingLength_m'] = Math.min(get(neck, 'risingLength_m'), get(neck, 'length_m'));
  const separator = part(tree, 'separator');
  separator['inletDepth_m'] = Math.min(get(separator, 'inletDepth_m'), 0.9 * get(separator, 'height_m'));
}

/** Fits water and charge into the vessels. */
function mendFilling(tree: Tree): void {
  const pot = part(tree, 'pot');
  const boiler = part(tree, 'boiler');
  const charge = part(tree, 'charge');
  const layout = pot['layout'] as unknown as string;
  const section = (Math.PI / 4) * get(pot, 'diameter_m') ** 2;
  const height = get(pot, 'height_m');
  pot['gridHeight_m'] = Math.min(get(pot, 'gridHeight_m'), 0.6 * height);
  if (layout === 'water') {
    const room = 0.94 * section * height * 1000;
    charge['mass_kg'] = Math.min(get(charge, 'mass_kg'), 0.4 * room);
    pot['water_kg'] = Math.max(0.05, Math.min(get(pot, 'water_kg'), room - get(charge, 'mass_kg')));
    return;
  }
  const grid = layout === 'water-and-steam' ? Math.max(get(pot, 'gridHeight_m'), 0.06 / (section * 1000)) : 0;
  if (layout === 'water-and-steam') pot['gridHeight_m'] = Math.min(grid, 0.99 * height);
  const bedRoom = section * (height - grid) * get(charge, 'bulkDensity_kg_m3');
  charge['mass_kg'] = Math.max(0, Math.min(get(charge, 'mass_kg'), 0.98 * bedRoom));
  const waterRoom =
    layout === 'steam'
      ? 0.9 * (Math.PI / 4) * get(boiler, 'diameter_m') ** 2 * get(boiler, 'height_m') * 1000
      : section * get(pot, 'gridHeight_m') * 1000;
  pot['water_kg'] = Math.max(0.05, Math.min(get(pot, 'water_kg'), 0.98 * waterRoom));
}

export interface RandomOptions {
  readonly reach: Reach;
  readonly plans?: Plans;
  /** Most steps a run may take; at the ends a run has its whole length, in steps as long as that leaves it. */
  readonly steps: number;
}

/** The cost of a run: step, length, how often it is recorded, how finely it is divided. */
const costOf = ({ reach, steps }: RandomOptions) =>
  fc.record({
    step_s:
      reach === 'ordinary' ? fc.constantFrom(0.5, 1, 2) : fc.oneof(fc.constantFrom(0.05, 1, 5, 10), between(0.05, 10)),
    steps: fc.integer({ min: 60, max: steps }),
    rows: fc.integer({ min: 5, max: 60 }),
    bedLayers: fc.integer({ min: 1, max: 12 }),
    tubLayers: fc.integer({ min: 1, max: 8 }),
    segments: reach === 'ordinary' ? fc.integer({ min: 30, max: 60 }) : fc.integer({ min: 5, max: 40 }),
    warm: fc.boolean(),
  });

/** Lengths of a run at the ends, s: the shortest, most often the usual, and the longest that may be planned. */
const WHOLE_LENGTHS_s = [60, 10_800, 10_800, 10_800, 259_200];

/** Any valid scenario within reach. */
export function anyScenario(options: RandomOptions): fc.Arbitrary<Scenario> {
  const { reach, plans = 'any' } = options;
  const drawn = scenarioFields.filter((field) => !COSTLY.has(field.path) && !JOINED.has(field.path));
  const valuesAt = (atEnds: number) => fc.tuple(...drawn.map((field) => valueOf(field, reach, plans, atEnds)));
  const isAtEnds = reach === 'ends';
  // Elsewhere nothing more is drawn than was before there were ends: the stills of a seed stay what they are.
  const values = isAtEnds ? fc.oneof(...SHARES_AT_ENDS.map(valuesAt)) : valuesAt(0);
  const plant = fc.constantFrom<(string | null)[]>(null, null, ...botanicals.map((row) => row.id));
  const length = isAtEnds ? fc.constantFrom(...WHOLE_LENGTHS_s) : fc.constant(0);
  return fc
    .tuple(values, costOf(options), plant, ownOil, ice, length)
    .map(([list, cost, id, oil, additions, whole]) => {
      const tree: Tree = {};
      drawn.forEach((field, index) => put(tree, field.path, list[index]));
      const charge = tree['charge'] as Tree;
      if (id === null) Object.assign(charge, { botanical: 'own', composition: oil });
      else Object.assign(charge, chargeFromBotanical(id));
      put(tree, 'cooling.ice', additions);
      const duration_s = isAtEnds ? whole : Math.max(60, Math.min(259_200, cost.steps * cost.step_s));
      const step_s = isAtEnds ? Math.min(10, Math.max(cost.step_s, whole / options.steps)) : cost.step_s;
      put(tree, 'advanced', {
        step_s,
        recordEvery_s: Math.min(600, Math.max(step_s, duration_s / cost.rows)),
        bedLayers: cost.bedLayers,
        tubLayers: cost.tubLayers,
        segments: cost.segments,
      });
      put(tree, 'run.duration_s', duration_s);
      // Most runs begin close to the boil, so that a short run shows the whole still; below it at the highest site too.
      if (cost.warm) put(tree, 'pot.waterTemperature_K', 354);
      mendApparatus(tree);
      mendFilling(tree);
      const read = readScenario(tree);
      if (!read.ok) throw new Error(`the random scenario was not mended: ${JSON.stringify(read.problems)}`);
      return read.scenario;
    });
}

/** A scenario with the smallest run that still passes every part, for tests that only read it. */
export const shortScenario = (reach: Reach): fc.Arbitrary<Scenario> => anyScenario({ reach, steps: 60 });
