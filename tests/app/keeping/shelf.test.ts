/** Stills on the shelf: versions, visitors, and what is cleared away. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Scenario } from '../../../sim/index.ts';
import { newStill, SHELF, type KeptStill } from '../../../src/state/kept-still.ts';
import {
  DELETED_KEPT_DAYS,
  MOST_VERSIONS,
  outlived,
  superfluous,
  type Shelf,
  type ShelfStill,
  type Version,
} from '../../../src/state/shelf.ts';
import { chance, device } from './one-device.ts';
import { glass, joins, lavender, namesOn, openPage, settled, type Window } from './one-page.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('the shelf', () => {
  test('has a still once it is changed, not while it is only looked at', async () => {
    const { open } = device(chance(1), joins);
    const page = await openPage(open());
    expect(namesOn(page)).toEqual([]);
    await page.bench.load(glass);
    await settled();
    expect(namesOn(page)).toEqual([]);
    page.bench.change('name', 'Tern Hollow glass');
    await settled();
    expect(namesOn(page)).toEqual(['Tern Hollow glass']);
    page.bench.undo();
    page.bench.undo();
    expect(page.bench.scenario().name).toBe(lavender.name);
    page.close();

    const again = await openPage(open());
    expect(namesOn(again)).toEqual([]);
    expect(again.bench.scenario().name).toBe(lavender.name);
  });

  test('makes a version of a still before its first change, after a pause, and when another is opened', async () => {
    const { open } = device(chance(2), joins);
    const { bench, shelf } = await openPage(open());
    const { id } = bench.desk().still;
    const lengths = async () =>
      (await versionsOf(shelf, id)).map(({ scenario }) => (scenario as Scenario).condenser.length_m);
    bench.change('condenser.length_m', 2);
    await settled();
    expect(await lengths()).toEqual([lavender.condenser.length_m]);
    bench.change('condenser.length_m', 2.5);
    bench.change('condenser.length_m', 3);
    await vi.advanceTimersByTimeAsync(70_000);
    expect(await lengths()).toEqual([3, lavender.condenser.length_m]);
    bench.change('condenser.length_m', 4);
    await bench.load(glass);
    await settled();
    expect(await lengths()).toEqual([4, 3, lavender.condenser.length_m]);
  });

  test('goes back to a version, and what stood there is one from then on', async () => {
    const { open } = device(chance(3), joins);
    const { bench, shelf } = await openPage(open());
    const { id } = bench.desk().still;
    bench.change('condenser.length_m', 2);
    await settled();
    const [first] = await versionsOf(shelf, id);
    expect(first && (await shelf.goBack(id, first))).toBeNull();
    await settled();
    expect(bench.scenario().condenser.length_m).toBe(lavender.condenser.length_m);
    expect(bench.desk().still.id).toBe(id);
    expect((await versionsOf(shelf, id)).map(({ scenario }) => (scenario as Scenario).condenser.length_m)).toEqual([
      2,
      lavender.condenser.length_m,
    ]);
    bench.undo();
    expect(bench.scenario().condenser.length_m).toBe(2);
  });

  test('renames, copies, deletes and restores, and opens what it has', async () => {
    const { open } = device(chance(4), joins);
    const page = await openPage(open());
    const { bench, shelf } = page;
    bench.change('name', 'One');
    const one = bench.desk().still.id;
    await settled();
    shelf.copy(one);
    shelf.copy(one);
    expect(namesOn(page).sort()).toEqual(['One', 'One (2)', 'One (3)']);
    const copy = shelf.stills().find(({ scenario }) => (scenario as Scenario).name === 'One (2)')?.id ?? '';
    shelf.rename(copy, 'Other');
    shelf.rename(one, 'First');
    expect(bench.scenario().name).toBe('First');
    expect(await shelf.open(copy)).toBeNull();
    expect([bench.scenario().name, bench.desk().still.id]).toEqual(['Other', copy]);
    shelf.setDeleted(one, true);
    expect(namesOn(page).sort()).toEqual(['One (3)', 'Other']);
    await settled();
    page.close();

    const next = await openPage(open());
    expect(next.bench.scenario().name).toBe('Other');
    expect(namesOn(next).sort()).toEqual(['One (3)', 'Other']);
    next.shelf.setDeleted(one, false);
    expect(namesOn(next).sort()).toEqual(['First', 'One (3)', 'Other']);
    expect(await next.shelf.open('of another device')).toBe('It is no longer kept on this device.');
  });

  test('renamed on the shelf, a still that undo brings back has its new name', async () => {
    const { open } = device(chance(5), joins);
    const { bench, shelf } = await openPage(open());
    bench.change('name', 'One');
    const one = bench.desk().still.id;
    await bench.load(glass);
    await settled();
    shelf.rename(one, 'Renamed');
    await settled();
    bench.undo();
    expect([bench.desk().still.id, bench.scenario().name]).toEqual([one, 'Renamed']);
  });

  test('opening a still is no change of it', async () => {
    const { open, entries } = device(chance(6), joins);
    const { bench, shelf } = await openPage(open());
    bench.change('name', 'One');
    const one = bench.desk().still.id;
    await bench.load(glass);
    await settled();
    const before = entries.get(SHELF + one);
    await vi.advanceTimersByTimeAsync(100_000);
    await shelf.open(one);
    await settled();
    expect(entries.get(SHELF + one)).toEqual(before);
  });
});

const versionsOf = async (shelf: Shelf, id: string): Promise<readonly Version[]> => {
  const reading = shelf.versionsOf(id);
  await vi.advanceTimersByTimeAsync(2500);
  return reading;
};

describe('a visitor', () => {
  const visitOf = ({ bench }: Window, from: 'link' | 'file' = 'link') => {
    const { id, visit } = bench.desk().still;
    return newStill(false, { from, home: visit?.home ?? id, isOwn: true });
  };

  test('leaves the own still as it was, is there after a reload with what was changed, and goes when asked', async () => {
    const { open } = device(chance(7), joins);
    const page = await openPage(open());
    page.bench.change('name', 'Mine');
    await page.bench.load(glass, visitOf(page));
    page.bench.change('condenser.length_m', 0.4);
    expect(namesOn(page).sort()).toEqual([glass.name, 'Mine'].sort());
    await settled();
    page.close();

    const next = await openPage(open());
    expect(next.bench.desk().still.visit).toMatchObject({ from: 'link' });
    expect(next.bench.scenario().condenser.length_m).toBe(0.4);
    expect(await next.shelf.goHome()).toBeNull();
    expect([next.bench.scenario().name, next.bench.desk().still.visit]).toEqual(['Mine', null]);
    next.bench.undo();
    expect(next.bench.desk().still.visit).toMatchObject({ from: 'link' });
  });

  test('that follows another stands beside the same still, and the other stays where it was changed', async () => {
    const { open } = device(chance(8), joins);
    const page = await openPage(open());
    page.bench.change('name', 'Mine');
    await page.bench.load({ name: 'First visitor' }, visitOf(page));
    page.bench.change('condenser.length_m', 0.4);
    await page.bench.load({ name: 'Second visitor' }, visitOf(page, 'file'));
    await settled();
    expect(namesOn(page).sort()).toEqual(['First visitor', 'Mine']);
    expect(await page.shelf.goHome()).toBeNull();
    expect(page.bench.scenario().name).toBe('Mine');
  });

  test('that is kept is the reader’s own, and undo makes it a visitor again', async () => {
    const { open } = device(chance(9), joins);
    const page = await openPage(open());
    await page.bench.load(glass, visitOf(page));
    page.shelf.keepVisitor();
    await settled();
    expect(page.bench.desk().still).toMatchObject({ touched: true, visit: null });
    expect(namesOn(page)).toEqual([glass.name]);
    page.bench.undo();
    expect(page.bench.desk().still.visit).toMatchObject({ from: 'link' });
  });
});

test('what this build cannot read is left as it is and shown, on the shelf and put aside', async () => {
  const { open, entries } = device(chance(10), joins);
  const newer = { version: 9, changed_ms: 1, value: { whatever: 1 } };
  const broken = { version: 1, changed_ms: 1, value: { scenario: 'none' } };
  const oldBench = { version: 1, changed_ms: 1, value: { scenario: { version: 99, name: 'Of tomorrow' } } };
  entries.set(`${SHELF}newer`, newer).set(`${SHELF}broken`, broken).set('bench', oldBench);
  const page = await openPage(open());
  page.bench.change('name', 'Mine');
  await settled();
  page.close();
  const next = await openPage(open());
  expect(next.bench.scenario().name).toBe('Mine');
  expect([entries.get(`${SHELF}newer`), entries.get(`${SHELF}broken`)]).toEqual([newer, broken]);
  const looking = next.shelf.lookAside();
  await settled();
  await looking;
  expect(next.shelf.unread().map(({ value }) => value)).toEqual(
    expect.arrayContaining([newer.value, broken.value, oldBench.value]),
  );
});

test('what an older build keeps after this one comes before what this window showed', async () => {
  const shown = new Map<string, string>();
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => shown.get(key) ?? null,
    setItem: (key: string, value: string) => shown.set(key, value),
  });
  const { open, entries } = device(chance(14), joins);
  const page = await openPage(open());
  page.bench.change('name', 'Of this build');
  await settled();
  page.close();
  const again = await openPage(open());
  expect(again.bench.scenario().name).toBe('Of this build');
  again.close();
  const view = entries.get('bench');
  if (view) entries.set('aside/bench/1', view);
  entries.set('bench', { version: 1, changed_ms: 2, value: { scenario: { name: 'Of an older build' } } });
  const last = await openPage(open());
  vi.unstubAllGlobals();
  expect(last.bench.scenario().name).toBe('Of an older build');
  await settled();
  expect(namesOn(last).sort()).toEqual(['Of an older build', 'Of this build']);
  const looking = last.shelf.lookAside();
  await settled();
  await looking;
  expect(last.shelf.unread()).toEqual([]);
});

describe('versions', () => {
  const version = (made_ms: number, name: string): Version => ({ key: String(made_ms), made_ms, scenario: { name } });
  const left = (names: string) => {
    const all = [...names].map((name, index) => version(100 - index, name));
    const thinned = new Set(superfluous(all));
    return all.filter((each) => !thinned.has(each)).map(({ scenario }) => (scenario as Scenario).name);
  };

  test.each([
    ['abc', ['a', 'b', 'c']],
    ['aab', ['a', 'b']],
    ['abab', ['a', 'b']],
    ['', []],
  ])('of %s, newest first, leave %j', (all, names) => {
    expect(left(all)).toEqual(names);
  });

  test('equal ones in a row count from when the first was made, and of more than twenty the last are kept', () => {
    expect(superfluous([version(3, 'a'), version(2, 'a'), version(1, 'b')]).map(({ key }) => key)).toEqual(['3']);
    const many = Array.from({ length: 25 }, (_, index) => version(100 - index, `n${index}`));
    expect(superfluous(many).map(({ key }) => key)).toEqual(many.slice(MOST_VERSIONS).map(({ key }) => key));
  });
});

test('what is long deleted or was only looked at is cleared away, what somebody stands beside is not', () => {
  const day_ms = 86_400_000;
  const now_ms = 100 * day_ms;
  const still = (id: string, parts: Partial<KeptStill>): ShelfStill => ({
    id,
    scenario: {},
    touched: true,
    visit: null,
    changed_ms: 0,
    deleted_ms: null,
    split: null,
    ...parts,
  });
  const long = now_ms - (DELETED_KEPT_DAYS + 1) * day_ms;
  const short = now_ms - (DELETED_KEPT_DAYS - 1) * day_ms;
  const all = [
    still('own', {}),
    still('long deleted', { deleted_ms: long }),
    still('deleted', { deleted_ms: short }),
    still('looked at', { touched: false, changed_ms: long }),
    still('looked at lately', { touched: false, changed_ms: short }),
    still('home', { touched: false, changed_ms: long }),
    still('visitor', { visit: { from: 'link', home: 'home', isOwn: false }, changed_ms: long }),
    still('on the bench', { touched: false, changed_ms: long }),
  ];
  expect(outlived(all, 'on the bench', now_ms).map(({ id }) => id)).toEqual(['long deleted', 'looked at']);
});
