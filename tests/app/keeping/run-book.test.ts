import { beforeEach, describe, expect, test, vi } from 'vitest';
import { createKeptStore } from '../../../src/state/kept-store.ts';
import { changesFrom } from '../../../src/state/old-stores.ts';
import { newId } from '../../../src/state/new-id.ts';
import { NO_FACTS } from '../../../src/state/run-facts.ts';
import { writesOver } from '../../../src/state/kept-writes.ts';
import type { LoggedRun } from '../../../src/state/logbook-schema.ts';
import type * as LogbookStore from '../../../src/state/logbook-store.ts';
import { memoryDatabase, type MemoryDatabase } from './memory-database.ts';

/** As the first builds wrote it. */
const OLD_BOOK = {
  kind: 'limbeck-run-book',
  version: 1,
  logs: [
    {
      id: 'mb3k2x0a-1',
      name: 'First of June',
      notes: 'windy',
      scenario: { name: 'Gentle lavender' },
      units: { oil: 'mL', temperature: '°C', distillate: 'L' },
      rows: [{ time: '30', oil: '2.5', outlet: '', tub: '', distillate: '0.6' }],
      draft: '',
      factors: ['oilContent'],
    },
    { id: 'odd', rows: 'many' },
    { id: 'mb3k2x0a-2', name: 'Second', notes: '', scenario: null, units: {}, rows: [], draft: 'x', factors: [] },
  ],
  stills: [
    {
      id: 'mb3k2x0a-3',
      name: 'As logged',
      scenario: { name: 'x' },
      bands: {
        oilContent: { low: 0.9, high: 1.1, source: 'fit to logged points' },
        heldRate: { low: 'much', high: 2 },
      },
    },
  ],
  unread: [{ later: true }],
};

let database: MemoryDatabase;
let book: typeof LogbookStore;

/** Each visit has a page of its own. */
async function visit(old?: unknown) {
  vi.resetModules();
  book = await import('../../../src/state/logbook-store.ts');
  await book.openLogbook(
    createKeptStore({
      database,
      drafts: null,
      window: 'one',
      writes: () => Promise.resolve(writesOver(null)),
      oldEntries: () => Promise.resolve(changesFrom({ bench: undefined, compared: undefined, runBook: old }, 1)),
      now: () => Date.now(),
    }),
  );
  database.writings.length = 0;
}
const written = () => vi.waitFor(() => expect(database.writings.length).toBeGreaterThan(0), { timeout: 3000 });
const names = () => book.logbook().logs.map(({ name }) => name);
const blank = (name: string): LoggedRun => ({
  id: newId(),
  name,
  notes: '',
  scenario: null,
  units: { oil: 'mL', temperature: '°C', distillate: 'L' },
  rows: [],
  draft: '',
  factors: [],
  zero: 'heat-on',
  zeroAt: '',
  facts: NO_FACTS,
  photos: [],
});

beforeEach(() => {
  database = memoryDatabase();
});

describe('the run book of an older build', () => {
  test('is taken over: logs and stills in their order, what cannot be read untouched', async () => {
    await visit(OLD_BOOK);
    const { logs, stills, unread } = book.logbook();
    expect(names()).toEqual(['First of June', 'Second']);
    expect(logs[0]).toMatchObject({ rows: OLD_BOOK.logs[0]?.rows, factors: ['oilContent'], notes: 'windy' });
    expect(logs[1]).toMatchObject({ draft: 'x', units: { oil: 'mL', temperature: '°C', distillate: 'L' } });
    expect(stills.map(({ name, bands }) => [name, bands])).toEqual([
      ['As logged', { oilContent: { low: 0.9, high: 1.1, origin: 'fit' } }],
    ]);
    expect(unread).toEqual([{ id: 'odd', rows: 'many' }, { later: true }]);
    expect(new Set(logs.map(({ id }) => id)).size).toBe(2);
  });

  test('that is none at all is kept as it is', async () => {
    await visit({ kind: 'of another time', pages: 3 });
    expect(book.logbook()).toEqual({ logs: [], stills: [], unread: [{ kind: 'of another time', pages: 3 }] });
  });
});

describe('the run book', () => {
  test('writes the one log that changed, and finds all again at the next visit', async () => {
    await visit(OLD_BOOK);
    book.addLogs([blank('Third')]);
    await written();
    database.writings.length = 0;
    book.changeLog(book.logbook().logs[0]?.id ?? '', { notes: 'calm' });
    await written();
    expect(database.writings).toEqual([['run-book/log/000000']]);
    await visit();
    expect(names()).toEqual(['First of June', 'Second', 'Third']);
    expect(book.logbook().logs[0]?.notes).toBe('calm');
    expect(book.logbook().unread).toHaveLength(2);
  });

  test('takes over from a file only what it does not have, however often it is opened', async () => {
    await visit(OLD_BOOK);
    const own = book.logbook();
    expect(book.addLogbook(own)).toEqual({ logs: 0, stills: 0 });
    expect(book.addLogbook({ ...own, logs: [...own.logs, blank('From a friend')] })).toEqual({ logs: 1, stills: 0 });
    expect(names()).toEqual(['First of June', 'Second', 'From a friend']);
    expect(book.logbook().unread).toHaveLength(2);
  });

  test('lends its place to an invented one, which leaves no trace', async () => {
    await visit(OLD_BOOK);
    book.openInvented({ logs: [blank('Invented')], stills: [], unread: [] });
    book.changeLog(book.logbook().logs[0]?.id ?? '', { notes: 'tried' });
    book.addLogs([blank('Tried too')]);
    expect(names()).toEqual(['Invented', 'Tried too']);
    book.closeInvented();
    expect(names()).toEqual(['First of June', 'Second']);
    await visit();
    expect(names()).toEqual(['First of June', 'Second']);
  });

  test('takes a log out and puts it back where it was', async () => {
    await visit(OLD_BOOK);
    book.addLogs([blank('Third')]);
    const putBack = book.removeLog(book.logbook().logs[1]?.id ?? '');
    expect(names()).toEqual(['First of June', 'Third']);
    putBack();
    expect(names()).toEqual(['First of June', 'Second', 'Third']);
    await written();
    await visit();
    expect(names()).toEqual(['First of June', 'Second', 'Third']);
  });

  test('keeps a log that is begun before it is open', async () => {
    vi.resetModules();
    book = await import('../../../src/state/logbook-store.ts');
    const store = createKeptStore({
      database,
      drafts: null,
      window: 'one',
      writes: () => Promise.resolve(writesOver(null)),
      oldEntries: () => Promise.resolve(changesFrom({ bench: undefined, compared: undefined, runBook: OLD_BOOK }, 1)),
      now: () => Date.now(),
    });
    const opening = book.openLogbook(store);
    book.addLogs([blank('In haste')]);
    await opening;
    expect(names()).toEqual(['First of June', 'Second', 'In haste']);
  });

  test('hands what it cannot read from a file on to the next visit', async () => {
    await visit();
    book.addLogbook({ logs: [], stills: [], unread: [{ of: 'tomorrow' }] });
    await written();
    await visit();
    expect(book.logbook().unread).toEqual([{ of: 'tomorrow' }]);
  });
});

test('older builds’ bench and comparison become entries as they are, and nothing comes of nothing', () => {
  const bench = { scenario: { name: 'x' }, time_s: 5 };
  const changes = changesFrom({ bench, compared: [{ name: 'a' }, { name: 'b' }], runBook: undefined }, 7);
  expect(changes).toEqual([
    { key: 'bench', entry: { version: 1, changed_ms: 7, value: bench } },
    { key: 'compared', entry: { version: 1, changed_ms: 7, value: [{ name: 'a' }, { name: 'b' }] } },
  ]);
  expect(changesFrom({ bench: undefined, compared: undefined, runBook: undefined }, 7)).toEqual([]);
});
