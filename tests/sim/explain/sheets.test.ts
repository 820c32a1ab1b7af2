import katex from 'katex';
import { describe, expect, it } from 'vitest';
import { numberTex } from '../../../sim/explain/tex.ts';
import {
  exampleScenario,
  examples,
  simulate,
  workingSheets,
  WORKING_IDS,
  type RunResult,
  type WorkingSheet,
} from '../../../sim/index.ts';
import { mismatch } from './equation.ts';
import { differences } from './numbers-of-run.ts';
import { faults } from './soundness.ts';

const sheetOf = (sheets: readonly WorkingSheet[], id: string): WorkingSheet => {
  const found = sheets.find((entry) => entry.id === id);
  if (!found) throw new Error(`no sheet ${id}`);
  return found;
};

/** Most signs and equations come again in every example, and parse as well the second time. */
const parsed = new Set<string>();
const parse = (tex: string, where: string) => {
  if (parsed.has(tex)) return;
  expect(katex.renderToString(tex, { throwOnError: true, strict: 'error' }), `${where}: ${tex}`).toContain('katex');
  parsed.add(tex);
};

describe.each(examples.map(({ id }) => id))('the working of %s', (id) => {
  const result = simulate(exampleScenario(id));
  const sheets = workingSheets(result);

  it('has a sheet for every headline number that this still has', () => {
    const onTap = result.scenario.condenser.kind !== 'coil-in-tub' && result.scenario.cooling.jacketSupply === 'tap';
    expect(sheets.map((sheet) => sheet.id)).toEqual(WORKING_IDS.filter((name) => !(onTap && name === 'tub-warming')));
  });

  it('parses, and shows every value that is put in, with where it comes from', () => {
    for (const sheet of sheets)
      for (const step of sheet.steps) {
        for (const tex of [step.tex, step.substituted, step.result.tex, ...step.symbols.map((entry) => entry.tex)])
          parse(tex, sheet.id);
        for (const { tex, value, says, from } of step.symbols) {
          expect(step.substituted, `${sheet.id}: ${tex}`).toContain(numberTex(value));
          expect(Number.isFinite(value), `${sheet.id}: ${tex}`).toBe(true);
          expect(says.length).toBeGreaterThan(1);
          expect(from.length).toBeGreaterThan(3);
        }
        expect(step.substituted).toContain(numberTex(step.result.value));
        expect(step.source.length).toBeGreaterThan(5);
        expect(step.title.length).toBeGreaterThan(3);
      }
  });

  it('shows the run’s own numbers to the last bit, at the headline moments and at any other', () => {
    expect(differences(result, sheets, true)).toEqual([]);
    const shown = workingSheets(result, 0.55 * result.summary.end_s);
    expect(differences(result, shown, false)).toEqual([]);
    expect(shown.flatMap(faults)).toEqual([]);
  });

  it('derives every result from the values that it shows', () => expect(sheets.flatMap(faults)).toEqual([]));
});

describe('the working at a moment', () => {
  const result = simulate(exampleScenario('gentle-lavender'));
  const at = 4000;
  const sheets = workingSheets(result, at);

  it('shows what the record holds at that time', () => {
    const row = result.record.columns.time_s.indexOf(at);
    const recorded = (name: keyof RunResult['record']['columns']) => result.record.columns[name][row] as number;
    for (const [id, name] of [
      ['steam-rate', 'steamRate_kg_s'],
      ['heat-loss', 'lossPower_W'],
      ['condensing-length', 'condensingLength_m'],
      ['outlet-temperature', 'condensateTemperature_K'],
      ['coil-pressure-drop', 'condenserDrop_Pa'],
      ['separator-cut', 'cutSize_m'],
      ['captured-share', 'captureShare'],
    ] as const) {
      expect(sheetOf(sheets, id).result.value, id).toBe(recorded(name));
    }
    expect(sheetOf(sheets, 'steam-rate').time_s).toBe(at);
  });

  it('has the tub warm as the record’s mean does, to a percent', () => {
    const rate = sheetOf(sheets, 'tub-warming').result.value;
    const row = result.record.columns.time_s.indexOf(at);
    const mean = result.record.columns.tubMean_K;
    const recorded = ((mean[row + 1] as number) - (mean[row - 1] as number)) / 20;
    expect(rate / recorded).toBeCloseTo(1, 1);
    expect(sheetOf(sheets, 'cooling-rise').result.value).toBeCloseTo(
      (mean[row] as number) - result.scenario.cooling.startTemperature_K,
      1,
    );
  });

  it('leaves out what has not happened yet', () => {
    const early = workingSheets(result, 60).map(({ id }) => id);
    for (const id of [
      'steam-rate',
      'condensing-length',
      'outlet-temperature',
      'coil-pressure-drop',
      'separator-cut',
      'captured-share',
      'leg-difference',
    ])
      expect(early).not.toContain(id);
    expect(early).toContain('time-to-boil');
  });

  it('takes a time beyond the run as its end', () =>
    expect(sheetOf(workingSheets(result, 1e9), 'steam-rate').time_s).toBe(result.summary.end_s));
});

describe('the working of a still that gets nowhere', () => {
  const cold = {
    ...exampleScenario('gentle-lavender'),
    run: { duration_s: 120, stopAtShare: null, stopAtOilRate_kg_s: null, stopAtDistillate_kg: null },
  };

  it('has the sheets that still make sense', () => {
    expect(workingSheets(simulate(cold)).map(({ id }) => id)).toEqual([
      'oil-in-vapour',
      'cooling-rise',
      'recovery',
      'cost',
    ]);
  });

  it('without a charge speaks of water alone', () => {
    const bare = exampleScenario('gentle-lavender');
    const ids = workingSheets(simulate({ ...bare, charge: { ...bare.charge, mass_kg: 0 } })).map(({ id }) => id);
    expect(ids).toEqual([
      'time-to-boil',
      'steam-rate',
      'heat-loss',
      'condensing-length',
      'outlet-temperature',
      'coil-pressure-drop',
      'cooling-rise',
      'tub-warming',
      'cost',
    ]);
  });
});

describe('a sheet', () => {
  const sheet = sheetOf(workingSheets(simulate(exampleScenario('rosemary-jacket'))), 'outlet-temperature');

  it('is found out when a shown value is not the one that was reckoned with', () => {
    const changed = sheet.steps.map((step) => ({
      ...step,
      symbols: step.symbols.map((symbol) => ({ ...symbol, value: symbol.value * (1 + 1e-6) })),
    }));
    for (const step of changed) expect(faults({ ...sheet, steps: [step] }).length, step.title).toBeGreaterThan(0);
  });

  it('is found out when its equation has another sign', () => {
    const balance = sheet.steps.find(({ tex }) => tex.includes('-\\dot Q'));
    if (!balance) throw new Error('the sheet has no balance');
    expect(mismatch(balance)).toBeLessThan(1e-12);
    expect(mismatch({ ...balance, tex: balance.tex.replace('-\\dot Q', '+\\dot Q') })).toBeGreaterThan(1e-3);
  });
});
