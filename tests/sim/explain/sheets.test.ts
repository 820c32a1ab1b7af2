import katex from 'katex';
import { describe, expect, it } from 'vitest';
import { surveyRun } from '../../../sim/explain/moment.ts';
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

const sheetOf = (sheets: readonly WorkingSheet[], id: string): WorkingSheet => {
  const found = sheets.find((entry) => entry.id === id);
  if (!found) throw new Error(`no sheet ${id}`);
  return found;
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
          expect(katex.renderToString(tex, { throwOnError: true, strict: 'error' }), `${sheet.id}: ${tex}`).toContain(
            'katex',
          );
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

  it('comes to the run’s own numbers', () => {
    for (const {
      id: name,
      result: { value },
      ofRun,
    } of sheets)
      expect(Math.abs(value - ofRun.value), name).toBeLessThanOrEqual(1e-6 * Math.abs(ofRun.value) + 1e-12);
  });

  it('explains the numbers of the summary', () => {
    const { summary } = result;
    const shown = (name: string) => sheetOf(sheets, name).result.value;
    const near = (name: string, value: number | null) =>
      expect(shown(name) / (value as number), name).toBeCloseTo(1, 6);
    near('time-to-boil', summary.firstBoil_s);
    near('steam-rate', summary.peakSteam_kg_s);
    near('condensing-length', summary.condensingLengthPeak_m);
    near('outlet-temperature', (summary.condensatePeak_C as number) + 273.15);
    near('recovery', summary.recovery);
    near('time-to-90', summary.t90_s);
    near('cost', summary.energyCost + summary.waterCost);
  });

  it('finds by the chain of films what the run condenses in that piece of tube, to one part in fifty', () => {
    const flux = sheetOf(workingSheets(result, 0.8 * result.summary.end_s), 'condensing-length').steps.find(
      ({ result: { tex } }) => tex === "q'",
    );
    const ofRun = Number(/counts with ([\d.e+-]+) W\/m/.exec(flux?.valid.says[0] ?? '')?.[1]);
    expect((flux?.result.value as number) / ofRun).toBeCloseTo(1, 1.4);
  });
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
      expect(sheetOf(sheets, id).result.value / recorded(name), id).toBeCloseTo(1, 9);
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

describe('the survey of a run', () => {
  it('finds the summary’s smoothed peaks with the summary’s own smoothing', () => {
    const scenario = exampleScenario('hard-boiled-lavender');
    const { summary } = simulate(scenario);
    const survey = surveyRun(scenario);
    expect(survey.steam?.smoothed).toBe(summary.peakSteam_kg_s);
    expect(survey.length?.smoothed).toBe(summary.condensingLengthPeak_m);
    expect(survey.gauge?.smoothed).toBe(summary.peakPotGauge_Pa);
    expect((survey.outlet?.flowTimesTemperature.smoothed as number) / (survey.outlet?.flow.smoothed as number)).toBe(
      (summary.condensatePeak_C as number) + 273.15,
    );
    expect(survey.times.at(-1)).toBe(summary.end_s);
  });
});
