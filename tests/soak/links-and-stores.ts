/** Links that lost or changed letters on their way, and values in the store that no build of ours wrote. */
import fc from 'fast-check';
import { examples, readScenario } from '../../sim/index.ts';
import { bottlingShape } from '../../src/state/bottling-store.ts';
import { blendShape } from '../../src/state/blend-store.ts';
import { comparedShape } from '../../src/state/comparison-store.ts';
import { gatheredShape } from '../../src/state/gathered-store.ts';
import { homeTestsShape } from '../../src/state/home-test-store.ts';
import { benchShape } from '../../src/state/kept-bench.ts';
import { readShape, type Shape } from '../../src/state/kept-shape.ts';
import { stillShape } from '../../src/state/kept-still.ts';
import { logShape } from '../../src/state/logbook-schema.ts';
import { ownPlantsShape } from '../../src/state/own-plants-store.ts';
import { priceListShape } from '../../src/state/price-list.ts';
import { quantityShape } from '../../src/state/quantity-store.ts';
import { readShareHash, shareHash } from '../../src/state/share-link.ts';
import { stillRunShape } from '../../src/state/still-run.ts';
import { anyJson, text, throughJson } from './hostile-values.ts';
import type { Part } from './part.ts';

const scenarios = examples.map(({ scenario }) => {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error('an example cannot be read');
  return read.scenario;
});
const links = Promise.all(scenarios.map(shareHash));

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.=#% ';

/** What may happen to a link between two people: a letter goes, comes or changes, an end is cut, something is put behind. */
const accident = fc.record({
  kind: fc.constantFrom('change', 'lose', 'add', 'cut', 'behind', 'double'),
  where: fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
  letter: fc.constantFrom(...LETTERS),
  more: text,
});

function after(link: string, { kind, where, letter, more }: typeof accident extends fc.Arbitrary<infer T> ? T : never) {
  const at = Math.floor(where * link.length);
  const [front, back] = [link.slice(0, at), link.slice(at)];
  if (kind === 'change') return front + letter + back.slice(1);
  if (kind === 'lose') return front + back.slice(1);
  if (kind === 'add') return front + letter + back;
  if (kind === 'cut') return front;
  return kind === 'behind' ? link + more : link + link;
}

const damagedLinksOpenNothingElse = fc.asyncProperty(
  fc.nat({ max: scenarios.length - 1 }),
  accident,
  async (which, happened) => {
    const link = (await links)[which] as string;
    const damaged = after(link, happened);
    const read = await readShareHash(damaged);
    if (!read.ok && read.message === '') throw new Error('a refusal without words');
    if (!read.ok || damaged === link) return;
    const opened = readScenario(read.json);
    if (!opened.ok || JSON.stringify(opened.scenario) !== JSON.stringify(scenarios[which]))
      throw new Error(`another still opens: ${damaged}`);
  },
);

/** Kept in the very form in which they are read. */
const AS_READ: readonly Shape<unknown>[] = [
  stillShape,
  comparedShape,
  logShape,
  priceListShape,
  quantityShape,
  bottlingShape,
  blendShape,
  gatheredShape,
  homeTestsShape,
];
const SHAPES: readonly Shape<unknown>[] = [...AS_READ, benchShape, stillRunShape, ownPlantsShape];

/** What really is kept, with one of its parts gone wrong. */
const kept = fc
  .tuple(fc.constantFrom('scenario', 'still', 'time_s', 'units', 'name', 'rows', 'factors'), anyJson)
  .map(([key, value]): unknown => ({
    still: 'of-today',
    scenario: scenarios[0],
    name: 'Lavender',
    touched: false,
    visit: null,
    time_s: 60,
    speed: 60,
    units: 'metric',
    rows: [],
    factors: [],
    [key]: value,
  }));

const storesAreReadOrLeft = fc.property(
  fc.constantFrom(...SHAPES),
  fc.oneof(anyJson, kept),
  fc.constantFrom(0, 1, 2, 99),
  (shape, given, version) => {
    const value = throughJson(given);
    const before = JSON.stringify(value);
    const found = readShape({ version: Math.min(version, shape.version), value, revision: 'r', changed_ms: 0 }, shape);
    if (found.kind === 'nothing') throw new Error('what is kept was not seen');
    if (JSON.stringify(value) !== before) throw new Error('what is kept was changed in reading');
    const newer = readShape({ version: shape.version + 1, value, revision: 'r', changed_ms: 0 }, shape);
    if (shape.version !== Infinity && newer.kind !== 'unread') throw new Error('a newer build’s value was taken');
    if (found.kind !== 'read' || !AS_READ.includes(shape)) return;
    const again = readShape(
      { version: shape.version, value: throughJson(found.value), revision: 'r', changed_ms: 0 },
      shape,
    );
    if (again.kind !== 'read') throw new Error('what was read cannot be kept and read again');
  },
);

export const linksAndStores: readonly Part[] = [
  {
    name: 'links',
    says: 'links with an accident on their way',
    few: 150,
    many: 100_000,
    check: (asked) => fc.check(damagedLinksOpenNothingElse, asked),
  },
  {
    name: 'stores',
    says: 'values that lie in the store',
    few: 300,
    many: 100_000,
    check: (asked) => fc.check(storesAreReadOrLeft, asked),
  },
];
