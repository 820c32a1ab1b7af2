/** Windows that change the same still at once: nothing is lost, and both are told. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Scenario } from '../../../sim/index.ts';
import { clashWords } from '../../../src/state/clash-words.ts';
import { SHELF, type KeptStill } from '../../../src/state/kept-still.ts';
import { chance, device } from './one-device.ts';
import { glass, joins, lavender, namesOn, openPage, settled } from './one-page.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('two windows', () => {
  test('follow each other, and changes of different fields are one', async () => {
    const { open } = device(chance(11), joins);
    const one = await openPage(open());
    one.bench.change('note', 'begun');
    await settled();
    const other = await openPage(open());
    one.bench.change('condenser.length_m', 2);
    await settled();
    expect(other.bench.scenario().condenser.length_m).toBe(2);
    one.bench.change('condenser.length_m', 3);
    other.bench.change('note', 'calm');
    await settled();
    for (const { bench } of [one, other])
      expect([bench.scenario().condenser.length_m, bench.scenario().note]).toEqual([3, 'calm']);
    expect(namesOn(one)).toEqual([lavender.name]);
  });

  test('that change the same field at once go on with a still each, and say so', async () => {
    const { open } = device(chance(12), joins);
    const one = await openPage(open());
    one.bench.change('note', 'begun');
    await settled();
    const other = await openPage(open());
    one.bench.change('condenser.length_m', 2);
    other.bench.change('condenser.length_m', 3);
    await settled();
    expect([one, other].map(({ bench }) => bench.scenario().condenser.length_m)).toEqual([2, 3]);
    expect(new Set([one, other].map(({ bench }) => bench.desk().still.id)).size).toBe(2);
    expect(namesOn(one).sort()).toEqual([lavender.name, `${lavender.name} (other window)`]);
    const words = [one, other].flatMap(({ told, store }) => [
      ...told,
      ...store.clashes().flatMap((clash) => clashWords(clash) ?? []),
    ]);
    expect(words).toHaveLength(2);
    for (const said of words)
      expect(said).toMatch(/was changed in two windows at once\. Both are kept among your stills/u);
    one.bench.change('note', 'one');
    other.bench.change('note', 'other');
    await settled();
    expect([one, other].map(({ bench }) => bench.scenario().note)).toEqual(['one', 'other']);
  });

  test('keep what one deletes while the other changes it, and say so', async () => {
    const { open } = device(chance(13), joins);
    const one = await openPage(open());
    one.bench.change('name', 'Mine');
    const { id } = one.bench.desk().still;
    await settled();
    const other = await openPage(open());
    await one.bench.load(glass);
    await settled();
    one.shelf.setDeleted(id, true);
    other.bench.change('note', 'windy');
    await settled();
    for (const page of [one, other]) expect(namesOn(page)).toContain('Mine');
    const words = [one, other].flatMap(({ store }) => store.clashes().flatMap((clash) => clashWords(clash) ?? []));
    expect(words.join()).toMatch(/“Mine” was (?:deleted|changed) in another window/u);
  });

  const PATHS = ['name', 'note', 'condenser.length_m'] as const;

  test.each(Array.from({ length: 10 }, (_, index) => index))(
    'lose nothing that nobody has replaced: 20 orders from %i0 on',
    { timeout: 60_000 },
    async (tens) => {
      for (let seed = tens * 20; seed < tens * 20 + 20; seed++) {
        const draw = chance(seed + 1000);
        const pick = <T>(all: readonly T[]): T | undefined => all[Math.floor(draw() * all.length)];
        const { entries, open } = device(draw, joins);
        const windows = [await openPage(open()), await openPage(open())];
        const wrote = new Set<string>();
        const replaced = new Set<string>();
        let count = 0;
        const tokensOf = ({ name, note, condenser }: Scenario) => [
          name.replaceAll(' (other window)', ''),
          note,
          String(condenser.length_m),
        ];

        for (let step = 0; step < 24; step++) {
          const place = Math.floor(draw() * windows.length);
          const page = windows[place];
          if (!page) continue;
          const { bench, shelf } = page;
          const what = draw();
          if (what < 0.1) {
            await bench.load(pick([glass, lavender]));
          } else if (what < 0.2) {
            const still = pick(shelf.stills().filter(({ deleted_ms }) => deleted_ms === null));
            if (still) await shelf.open(still.id);
          } else if (what < 0.25) {
            for (const token of tokensOf(bench.scenario())) replaced.add(token);
            bench.undo();
          } else if (what < 0.3) {
            page.close();
            windows[place] = await openPage(open());
          } else {
            const path = pick(PATHS) ?? 'note';
            const value = path === 'condenser.length_m' ? 2 + (count += 1) / 1e6 : `${path} ${String((count += 1))}`;
            replaced.add(tokensOf(bench.scenario())[PATHS.indexOf(path)] ?? '');
            wrote.add(String(value));
            bench.change(path, value);
          }
          if (draw() < 0.5) await vi.advanceTimersByTimeAsync(draw() * 900);
        }
        await vi.advanceTimersByTimeAsync(30_000);
        for (const { store } of windows) store.catchUp();
        await vi.advanceTimersByTimeAsync(30_000);

        const kept = [...entries].filter(([key]) => key.startsWith(SHELF)).map(([, { value }]) => value as KeptStill);
        const text = JSON.stringify(kept.map(({ scenario }) => tokensOf(scenario as Scenario)));
        const missing = [...wrote].filter((token) => !replaced.has(token) && !text.includes(token));
        expect({ seed, missing }).toEqual({ seed, missing: [] });
        for (const { bench } of windows) {
          const { id } = bench.desk().still;
          const there = entries.get(SHELF + id)?.value as KeptStill | undefined;
          if (there) expect([seed, tokensOf(there.scenario as Scenario)]).toEqual([seed, tokensOf(bench.scenario())]);
          else expect([seed, bench.desk().still.touched]).toEqual([seed, false]);
        }
        for (const each of windows) each.close();
      }
    },
  );
});
