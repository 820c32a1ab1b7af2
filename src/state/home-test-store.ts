/** What was read in tests of the still at home, kept on this device; what is not read yet is `null`. */
import { createSignal, untrack } from 'solid-js';
import * as z from 'zod/mini';
import type { HomeTest, HomeTestGiven } from '../../sim/index.ts';
import { keptStore } from './browser-store.ts';
import type { Shape } from './kept-shape.ts';

/** Values in SI by the names that the tests give them. */
export type TestNotes = Readonly<Record<string, number | null>>;

export interface NotedTest {
  readonly said: TestNotes;
  readonly rows: readonly TestNotes[];
}

export type NotedTests = Readonly<Record<HomeTest, NotedTest>>;

/** What each test asks for, in the order of its steps: of the whole, and of each reading. */
export const TEST_NOTES: Readonly<
  Record<HomeTest, { readonly said: readonly string[]; readonly row: readonly string[]; readonly rows: number }>
> = {
  tub: { said: ['start_K', 'caught_kg', 'caught_s', 'inlet_K', 'letIn_kg'], row: ['height_m', 'value_K'], rows: 5 },
  coil: { said: ['length_m'], row: ['caught_kg', 'caught_s', 'inlet_K', 'outlet_K', 'bath_K'], rows: 3 },
  'heat-up': { said: ['water_kg', 'start_K', 'air_K', 'setting', 'off_s'], row: ['time_s', 'value_K'], rows: 7 },
};

/** May stay open: the heat was not turned off. */
const OPTIONAL: readonly string[] = ['off_s'];

const blank = (names: readonly string[]): TestNotes => Object.fromEntries(names.map((name) => [name, null]));
const isBlank = (row: TestNotes): boolean => Object.values(row).every((value) => value === null);

/** With the names that a test has and no others, and with rows to type on in. */
function whole(test: HomeTest, { said, rows }: NotedTest): NotedTest {
  const { said: names, row, rows: usual } = TEST_NOTES[test];
  const pick = (from: TestNotes, of: readonly string[]) =>
    Object.fromEntries(of.map((name) => [name, from[name] ?? null]));
  const typed = rows.map((each) => pick(each, row));
  const more = Math.max(0, usual - typed.length);
  return { said: pick(said, names), rows: [...typed, ...Array.from({ length: more }, () => blank(row))] };
}

const wholeTests = (noted: NotedTests): NotedTests => ({
  tub: whole('tub', noted.tub),
  coil: whole('coil', noted.coil),
  'heat-up': whole('heat-up', noted['heat-up']),
});

const NOTHING: NotedTest = { said: {}, rows: [] };
const NO_TESTS = wholeTests({ tub: NOTHING, coil: NOTHING, 'heat-up': NOTHING });

const notes = z.catch(z.record(z.string(), z.catch(z.nullable(z.number()), null)), {});
const noted = z.catch(z.object({ said: notes, rows: z.catch(z.array(notes), []) }), { said: {}, rows: [] });
const schema = z.object({ tub: noted, coil: noted, 'heat-up': noted });

export const homeTestsShape: Shape<NotedTests> = {
  version: 1,
  read: (value) => {
    const read = schema.safeParse(value);
    return read.success ? wholeTests(read.data) : null;
  },
};

const KEY = 'home-tests';
const [homeTests, setHomeTests] = createSignal<NotedTests>(NO_TESTS);
export { homeTests };

let opening: Promise<void> | null = null;

export function openHomeTests(): Promise<void> {
  opening ??= (async () => {
    try {
      const kept = await keptStore().read(KEY, homeTestsShape);
      if (kept.kind === 'read') setHomeTests(kept.value);
    } catch {
      // A browser that keeps nothing begins with empty sheets.
    }
  })();
  return opening;
}

function change(test: HomeTest, next: NotedTest): void {
  const after = setHomeTests({ ...untrack(homeTests), [test]: next });
  keptStore().keep(KEY, homeTestsShape, after);
}

export const sayOfTest = (test: HomeTest, name: string, value: number | null): void => {
  const now = untrack(homeTests)[test];
  change(test, { ...now, said: { ...now.said, [name]: value } });
};

export const readInTest = (test: HomeTest, place: number, name: string, value: number | null): void => {
  const now = untrack(homeTests)[test];
  change(test, { ...now, rows: now.rows.map((row, k) => (k === place ? { ...row, [name]: value } : row)) });
};

export const addTestRow = (test: HomeTest): void => {
  const now = untrack(homeTests)[test];
  change(test, { ...now, rows: [...now.rows, blank(TEST_NOTES[test].row)] });
};

export const clearTest = (test: HomeTest): (() => void) => {
  const before = untrack(homeTests)[test];
  change(test, whole(test, NOTHING));
  return () => change(test, before);
};

/** Names that are still to be said, and the readings that are begun but not whole, by their places. */
export function missingOf(
  test: HomeTest,
  { said, rows }: NotedTest,
): { readonly said: readonly string[]; readonly rows: readonly number[] } {
  return {
    said: TEST_NOTES[test].said.filter((name) => said[name] === null && !OPTIONAL.includes(name)),
    rows: rows.flatMap((row, place) => (!isBlank(row) && Object.values(row).includes(null) ? [place] : [])),
  };
}

/** What the model is asked; `null` while something is missing. */
export function askedOf(test: HomeTest, now: NotedTest): HomeTestGiven | null {
  const missing = missingOf(test, now);
  if (missing.said.length > 0 || missing.rows.length > 0) return null;
  const given = { ...now.said, readings: now.rows.filter((row) => !isBlank(row)) };
  return { test, given } as unknown as HomeTestGiven;
}
