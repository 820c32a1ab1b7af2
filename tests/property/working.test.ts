/** The shown working against the run, for random valid scenarios: what the sheets derive is what the run computed. */
import fc from 'fast-check';
import katex from 'katex';
import { describe, expect, it } from 'vitest';
import { simulate, workingSheets, type WorkingSheet } from '../../sim/index.ts';
import { anyScenario, type Reach } from './random-scenario.ts';

/** Sheets whose number is a small difference of large ones: their rounding counts against what they are taken from. */
const SCALE: Readonly<Record<string, number>> = { 'cooling-rise': 300, 'tub-warming': 300, 'leg-difference': 1 };
const ROUNDING = 1e-9;

const drift = ({ id, result, ofRun }: WorkingSheet): string[] => {
  const allowed = 1e-6 * Math.abs(ofRun.value) + ROUNDING * (SCALE[id] ?? 0);
  return Math.abs(result.value - ofRun.value) <= allowed
    ? []
    : [`${id}: ${result.value} is shown, the run has ${ofRun.value}`];
};

const unsound = ({ id, steps }: WorkingSheet): string[] =>
  steps.flatMap(({ title, result, symbols }) => [
    ...(Number.isFinite(result.value) ? [] : [`${id}, ${title}: ${result.value}`]),
    ...symbols
      .filter(({ value }) => !Number.isFinite(value))
      .map(({ tex, value }) => `${id}, ${title}: ${tex} is ${value}`),
  ]);

/** Chain of the films of one piece of tube, and what the run condenses there. */
function chainOfFilms(sheets: readonly WorkingSheet[]): readonly [number, number] | null {
  const flux = sheets.find(({ id }) => id === 'condensing-length')?.steps.find(({ result }) => result.tex === "q'");
  const ofRun = /counts with ([\d.e+-]+) W\/m/.exec(flux?.valid.says[0] ?? '')?.[1];
  return flux === undefined || ofRun === undefined ? null : [flux.result.value, Number(ofRun)];
}

describe.each<readonly [Reach, number]>([
  ['ordinary', 30],
  ['corner', 40],
])('the working of a random %s run', (reach, numRuns) => {
  it('comes to the run’s own numbers within 1e-6, at the headline moments and at any other', () => {
    let shown = 0;
    fc.assert(
      fc.property(anyScenario({ reach, steps: 250 }), fc.double({ min: 0, max: 1, noNaN: true }), (scenario, share) => {
        const result = simulate(scenario);
        fc.pre(result.failure === null);
        const sheets = [...workingSheets(result), ...workingSheets(result, share * result.summary.end_s)];
        shown += sheets.length;
        expect(sheets.flatMap(drift)).toEqual([]);
        expect(sheets.flatMap(unsound)).toEqual([]);
      }),
      { numRuns, interruptAfterTimeLimit: 20_000, markInterruptAsFailure: false },
    );
    expect(shown).toBeGreaterThan(40);
  });
});

describe('the equations of a random run', () => {
  it('parse', () => {
    fc.assert(
      fc.property(anyScenario({ reach: 'corner', steps: 120 }), (scenario) => {
        const result = simulate(scenario);
        for (const { steps } of workingSheets(result))
          for (const { tex, substituted } of steps)
            for (const equation of [tex, substituted])
              expect(katex.renderToString(equation, { throwOnError: true, strict: 'error' })).toContain('katex');
      }),
      { numRuns: 12, interruptAfterTimeLimit: 20_000, markInterruptAsFailure: false },
    );
  });
});

describe('the chain of films in a settled run', () => {
  it('passes the heat that the run’s own conductance passes, within 5 %', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyScenario({ reach: 'ordinary', steps: 400 }), (scenario) => {
        const steady = {
          ...scenario,
          heat: { ...scenario.heat, control: 'schedule' as const, setting: scenario.heat.setting.slice(0, 1) },
          cooling: { ...scenario.cooling, flow_kg_s: scenario.cooling.flow_kg_s.slice(0, 1), ice: [] },
        };
        const result = simulate(steady);
        fc.pre(
          result.failure === null &&
            result.summary.firstDrop_s !== null &&
            result.summary.end_s - result.summary.firstDrop_s > 120,
        );
        const chain = chainOfFilms(workingSheets(result, result.summary.end_s));
        if (chain === null) return;
        seen++;
        expect(chain[0] / chain[1]).toBeGreaterThan(0.95);
        expect(chain[0] / chain[1]).toBeLessThan(1.05);
      }),
      { numRuns: 16, seed: 11 },
    );
    expect(seen).toBeGreaterThan(3);
  }, 180_000);
});
