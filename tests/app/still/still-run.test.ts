import { describe, expect, it } from 'vitest';
import { exampleScenario, stopRule } from '../../../sim/index.ts';
import { toLoggedRun } from '../../../src/pages/at-the-still/to-logbook.ts';
import { odd } from '../../../src/pages/at-the-still/log-kinds.ts';
import {
  counted,
  joined,
  readingsOf,
  sheetStateOf,
  soFarOf,
  stillRunShape,
  turnsOf,
  writtenRun,
  type StillEntry,
  type StillRun,
} from '../../../src/state/still-run.ts';

const START = Date.UTC(2026, 5, 20, 9);
const plan = exampleScenario('gentle-lavender');
const entry = (id: string, kind: StillEntry['kind'], minute: number, more: Partial<StillEntry> = {}): StillEntry => ({
  id,
  kind,
  at_ms: START + 60_000 * minute,
  changed_ms: START + 60_000 * minute,
  value: null,
  text: '',
  place: null,
  gone: false,
  ...more,
});
const run: StillRun = {
  id: 'a',
  started_ms: START,
  changed_ms: START,
  ended_ms: null,
  name: 'Gentle lavender',
  scenario: plan,
  rule: stopRule('oil-in-ten-minutes', 0.7),
  receiver_kg: 2,
  entries: [
    entry('1', 'first-drop', 29),
    entry('2', 'heat', 30, { value: 0.5, place: 1 }),
    entry('3', 'oil', 40, { value: 4 }),
    entry('4', 'outlet', 40.2, { value: 298.15 }),
    entry('5', 'oil', 50, { value: 80, gone: true }),
    entry('6', 'note', 51, { text: 'sweet' }),
    entry('7', 'tub', 60, { value: 320 }),
    entry('8', 'heat-off', 90),
    entry('9', 'photo', 92, { text: '0badcafe-3' }),
  ],
};

describe('a run at the still', () => {
  it('comes back from the store as it was', () => {
    expect(stillRunShape.read(JSON.parse(JSON.stringify(writtenRun(run))), 1)).toEqual({
      ...run,
      scenario: JSON.parse(JSON.stringify(plan)) as unknown,
    });
    expect(stillRunShape.read({ id: 3 }, 1)).toBeNull();
  });

  it('gives the model what was read and turned, but not what was taken back', () => {
    expect(readingsOf(run).map(({ kind, time_s, value }) => [kind, time_s, value])).toEqual([
      ['firstDrop_s', 1740, 1740],
      ['oil_mL', 2400, 4],
      ['outlet_K', 2412, 298.15],
      ['tub_K', 3600, 320],
    ]);
    expect(turnsOf(run)).toEqual([
      { control: 'heat', time_s: 1800, value: 0.5, place: 1 },
      { control: 'heat', time_s: 5400, value: 0, isLast: true },
    ]);
    expect(soFarOf(run).at_s).toBe(5400);
    expect(sheetStateOf(run)).toMatchObject({ firstDrop_s: 1740, lastReading_s: 3600, tub: { value_K: 320 } });
  });

  it('is one run in two tabs: each entry as it was changed last', () => {
    const corrected = {
      ...run,
      entries: run.entries.map((each) => (each.id === '3' ? { ...each, value: 4.5, changed_ms: START + 9e6 } : each)),
    };
    const added = { ...run, entries: [...run.entries, entry('10', 'oil', 70, { value: 11 })] };
    const both = joined(corrected, added);
    expect(both.entries).toHaveLength(10);
    expect(both.entries.find(({ id }) => id === '3')?.value).toBe(4.5);
    expect(joined(added, corrected).entries).toEqual(both.entries);
    expect(joined({ ...run, ended_ms: START + 5 }, run).ended_ms).toBe(START + 5);
  });

  it('is one run where two tabs start at once, and where one ends and begins another', () => {
    const first = { ...run, id: 'a', entries: [entry('1', 'note', 1)] };
    const second = { ...run, id: 'b', entries: [entry('2', 'note', 2)] };
    const over = { ...first, ended_ms: START + 5 };
    // Whoever is stored first goes on, with what was logged in both.
    expect(counted(second, first, null)).toMatchObject({ id: 'a', entries: [{ id: '1' }, { id: '2' }] });
    expect(counted(second, first, { ...over, id: 'before' })?.id).toBe('a');
    // This tab has ended the first and begun the second, or another has.
    expect(counted(second, over, null)).toBe(second);
    expect(counted(second, first, first)).toBe(second);
    expect(counted(first, second, first)).toBe(second);
    expect(counted(over, second, null)).toBe(second);
    expect(counted(null, run, null)).toBe(run);
    expect(counted(run, null, null)).toBe(run);
  });

  it('becomes an entry of the run book, with the plan as it was followed', () => {
    const log = toLoggedRun(run, plan, 'x', 'metric');
    expect(log.name).toBe('Gentle lavender, 20 June 2026');
    expect(log.rows.map(({ time, oil, outlet, tub }) => [time, oil, outlet, tub])).toEqual([
      ['40', '4', '25', ''],
      ['60', '', '', '46.9'],
    ]);
    expect(log.notes).toContain('First drop');
    expect(log.notes).toContain('sweet');
    expect(log.notes).not.toContain('0badcafe');
    expect(log.photos).toEqual([{ id: '0badcafe-3', at_s: 5520, words: '' }]);
    expect((log.scenario as typeof plan).heat.setting.at(-1)).toMatchObject({ at_s: 5400, value: 0 });
    expect(toLoggedRun(run, plan, 'x', 'us').rows[0]?.outlet).toBe('77');
  });
});

describe('what is typed', () => {
  it('is asked about where it cannot well be', () => {
    expect(odd('oil', 3, run.entries, 'metric')).toMatch(/less than/u);
    expect(odd('oil', 5, run.entries.slice(0, 4), 'metric')).toBeNull();
    expect(odd('oil', 1e9, [], 'metric')).toMatch(/outside/u);
    expect(odd('outlet', 400, [], 'metric')).toMatch(/outside/u);
    expect(odd('tub', 310, run.entries, 'us')).toBeNull();
  });
});
