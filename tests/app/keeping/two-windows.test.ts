/** Windows that write at once, in orders drawn from seeds: nothing that nobody has replaced may be missing. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { comparedShape } from '../../../src/state/comparison-store.ts';
import type { Kept, Shape } from '../../../src/state/kept-shape.ts';
import type { KeptStore } from '../../../src/state/kept-store.ts';
import { logShape, type LoggedRun } from '../../../src/state/logbook-schema.ts';
import { CONFLICT, threeWay } from '../../../src/state/three-way.ts';
import { chance, device } from './one-device.ts';

const LOGS = 'run-book/log/';
const FIELDS = ['notes', 'draft', 'zeroAt'] as const;

const aLog = (id: string): LoggedRun =>
  logShape.read({ id, name: id, notes: '', rows: [], draft: '', factors: [], facts: {} }, logShape.version) ??
  (() => {
    throw new Error('no such log');
  })();

/** What one window shows of the run book. */
async function look(store: KeptStore): Promise<Map<string, LoggedRun>> {
  const shown = new Map<string, LoggedRun>();
  const show = (key: string, kept: Kept<LoggedRun>) => {
    if (kept.kind === 'read') shown.set(key, kept.value);
    else shown.delete(key);
  };
  let isOpen = false;
  const meanwhile: (() => void)[] = [];
  store.follow(LOGS, logShape, (key, kept) => {
    if (isOpen) show(key, kept);
    else meanwhile.push(() => show(key, kept));
  });
  for (const [key, kept] of await store.readAll(LOGS, logShape)) show(key, kept);
  isOpen = true;
  for (const change of meanwhile) change();
  return shown;
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('windows that write at once', () => {
  test.each(Array.from({ length: 10 }, (_, index) => index))('lose nothing: 20 orders from %i0 on', async (tens) => {
    for (let seed = tens * 20; seed < tens * 20 + 20; seed++) {
      const draw = chance(seed);
      const pick = <T>(all: readonly T[]): T | undefined => all[Math.floor(draw() * all.length)];
      const { entries, open } = device(draw);
      const newWindow = async () => {
        const opened = open();
        const looking = look(opened.store);
        await vi.advanceTimersByTimeAsync(1500);
        return { ...opened, shown: await looking };
      };
      const windows = [await newWindow(), await newWindow(), await newWindow()];
      const wrote = new Set<string>();
      const replaced = new Set<string>();
      let count = 0;

      for (let step = 0; step < 40; step++) {
        const place = Math.floor(draw() * windows.length);
        const at = windows[place];
        if (!at) continue;
        const key = pick([...at.shown.keys()]);
        const log = key === undefined ? undefined : at.shown.get(key);
        const what = draw();
        if (!key || !log || what < 0.15) {
          const made = LOGS + `new-${String((count += 1))}`;
          at.shown.set(made, aLog(made));
          at.store.keep(made, logShape, at.shown.get(made));
        } else if (what < 0.22) {
          for (const field of FIELDS) replaced.add(log[field]);
          at.shown.delete(key);
          at.store.keep(key, logShape, undefined);
        } else if (what < 0.27) {
          at.close();
          windows[place] = await newWindow();
        } else {
          const field = pick(FIELDS) ?? 'notes';
          const token = `${field} ${String((count += 1))}`;
          replaced.add(log[field]);
          wrote.add(token);
          const changed = { ...log, [field]: token };
          at.shown.set(key, changed);
          at.store.keep(key, logShape, changed);
        }
        if (draw() < 0.5) await vi.advanceTimersByTimeAsync(draw() * 700);
      }
      await vi.advanceTimersByTimeAsync(30_000);

      // Windows that were closed in the moment of writing have told nobody.
      for (const { store } of windows) store.catchUp();
      await vi.advanceTimersByTimeAsync(60_000);

      const text = JSON.stringify([...entries].filter(([key]) => key.startsWith(LOGS)));
      const missing = [...wrote].filter((token) => !replaced.has(token) && !text.includes(`"${token}"`));
      expect({ seed, missing }).toEqual({ seed, missing: [] });
      for (const { shown } of windows)
        expect([seed, [...shown.keys()].sort()]).toEqual([
          seed,
          [...entries.keys()].filter((key) => key.startsWith(LOGS)).sort(),
        ]);
    }
  });

  test('tell of what both changed, and each shows both', async () => {
    const { open } = device(chance(1));
    const one = open();
    const other = open();
    const key = `${LOGS}a`;
    one.store.keep(key, logShape, aLog('a'));
    await vi.advanceTimersByTimeAsync(2000);
    const [shownHere, shownThere] = [look(one.store), look(other.store)];
    await vi.advanceTimersByTimeAsync(1000);
    one.store.keep(key, logShape, { ...aLog('a'), notes: 'calm' });
    other.store.keep(key, logShape, { ...aLog('a'), notes: 'windy', draft: '5' });
    await vi.advanceTimersByTimeAsync(5000);
    const clashes = [...one.store.clashes(), ...other.store.clashes()];
    expect(clashes).toHaveLength(1);
    expect(clashes[0]).toMatchObject({ key });
    expect(clashes[0]?.beside).toHaveLength(1);
    for (const shown of [await shownHere, await shownThere])
      expect([...shown.values()].map(({ name, notes }) => [name, notes])).toEqual(
        expect.arrayContaining([
          ['a', expect.any(String)],
          ['a (other window)', expect.any(String)],
        ]),
      );
    expect([...(await shownHere).values()].map(({ notes }) => notes).sort()).toEqual(['calm', 'windy']);
  });

  test('join what they changed in different parts, and say nothing', async () => {
    const { entries, open } = device(chance(2));
    const [one, other] = [open(), open()];
    const key = `${LOGS}a`;
    one.store.keep(key, logShape, aLog('a'));
    await vi.advanceTimersByTimeAsync(2000);
    const looking = [look(one.store), look(other.store)];
    await vi.advanceTimersByTimeAsync(1000);
    await Promise.all(looking);
    one.store.keep(key, logShape, { ...aLog('a'), notes: 'calm' });
    other.store.keep(key, logShape, { ...aLog('a'), draft: '5' });
    await vi.advanceTimersByTimeAsync(5000);
    expect(entries.get(key)?.value).toMatchObject({ notes: 'calm', draft: '5' });
    expect([...entries.keys()].filter((each) => each.startsWith(LOGS))).toEqual([key]);
    expect([...one.store.clashes(), ...other.store.clashes()].filter(({ beside }) => beside.length > 0)).toEqual([]);
  });

  test('do not write over what a newer build keeps, and put it aside', async () => {
    const { entries, open } = device(chance(3));
    const { store } = open();
    const shape: Shape<number> = { version: 1, read: (value) => (typeof value === 'number' ? value : null) };
    const reading = store.read('a', shape);
    await vi.advanceTimersByTimeAsync(2000);
    await reading;
    entries.set('a', { version: 9, changed_ms: 1, value: 'of tomorrow', revision: 'z.1' });
    store.keep('a', shape, 5);
    await vi.advanceTimersByTimeAsync(2000);
    expect(entries.get('a')?.value).toBe(5);
    expect([...entries].filter(([key]) => key.startsWith('aside/a/')).map(([, { value }]) => value)).toEqual([
      'of tomorrow',
    ]);
  });
});

describe('two comparisons', () => {
  const run = (name: string) => ({ scenario: { name }, origin: null });
  const both = (mine: readonly unknown[], theirs: readonly unknown[], base?: readonly unknown[]) =>
    Object.entries(comparedShape.both?.('compared', mine, theirs, base) ?? {});

  test('become one where there is room', () => {
    expect(both([run('a'), run('b')], [run('a'), run('c')], [run('a')])).toEqual([
      ['compared', [run('a'), run('b'), run('c')]],
    ]);
  });

  test('are kept beside each other where there is none', () => {
    const [mine, theirs] = [
      [run('a'), run('b'), run('c')],
      [run('d'), run('e')],
    ];
    const kept = both(mine, theirs);
    expect(kept.map(([, value]) => value)).toEqual([mine, theirs]);
    expect(kept[1]?.[0]).toMatch(/^compared-beside\//);
  });
});

test.each([
  [
    { a: 1, b: 1 },
    { a: 2, b: 1 },
    { a: 1, b: 3 },
    { a: 2, b: 3 },
  ],
  [{ a: 1 }, { a: 2 }, { a: 3 }, CONFLICT],
  [{ a: 1 }, { a: 2 }, { a: 2 }, { a: 2 }],
  [undefined, { a: 1 }, { a: 2 }, CONFLICT],
  [
    [1, 2, 3],
    [9, 2, 3],
    [1, 2, 8],
    [9, 2, 8],
  ],
  [[1], [1, 2], [1, 3], CONFLICT],
  [{ a: 1, b: 1 }, { a: 1 }, { a: 2, b: 1 }, { a: 2 }],
  [{}, { a: 1 }, { b: 2 }, { b: 2, a: 1 }],
])('from %j, %j and %j join to %j', (base, mine, theirs, joined) => {
  expect(threeWay(base, mine, theirs)).toEqual(joined);
});
