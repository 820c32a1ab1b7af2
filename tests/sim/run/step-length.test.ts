/** How long the steps of a run are: never across a row, a knot or ice, fine at the first vapour, long where all is quiet. */
import { describe, expect, it } from 'vitest';
import { exampleScenario, Run, type Scenario } from '../../../sim/index.ts';

interface Step {
  readonly from: number;
  readonly length: number;
}

function stepsOf(scenario: Scenario): Step[] {
  const run = new Run(scenario);
  const steps: Step[] = [];
  while (!run.ended) {
    const from = run.time();
    run.takeStep();
    steps.push({ from, length: run.stepLength });
  }
  return steps;
}

const lavender = exampleScenario('gentle-lavender');
const ends = ({ from, length }: Step): number => from + length;
const crosses =
  (time: number) =>
  (step: Step): boolean =>
    step.from < time - 1e-9 && ends(step) > time + 1e-9;

describe('the steps of a run', () => {
  it('follow each other without a gap, and take three hours in less than a third of their seconds', () => {
    const steps = stepsOf({ ...lavender, run: { ...lavender.run, duration_s: 10_800 } });
    for (const [k, step] of steps.entries()) expect(step.from).toBeCloseTo(k === 0 ? 0 : ends(steps[k - 1] as Step), 9);
    expect(steps.length).toBeLessThan(10_800 / 3);
    expect(Math.max(...steps.map(({ length }) => length))).toBe(5);
    expect(Math.min(...steps.map(({ length }) => length))).toBe(0.25);
  });

  it('end at every row of the record, at every change of heat and tap, and when ice comes in', () => {
    const scenario: Scenario = {
      ...lavender,
      heat: {
        ...lavender.heat,
        control: 'schedule',
        setting: [
          { at_s: 0, value: 1, shape: 'step' },
          { at_s: 3607, value: 0.6, shape: 'step' },
        ],
      },
      cooling: {
        ...lavender.cooling,
        flow_kg_s: [
          { at_s: 0, value: 0.006, shape: 'step' },
          { at_s: 4203, value: 0.01, shape: 'step' },
        ],
        ice: [{ at_s: 5111, mass_kg: 2 }],
      },
      advanced: { ...lavender.advanced, recordEvery_s: 17 },
    };
    const steps = stepsOf(scenario);
    for (const time of [3607, 4203, 5111]) expect(steps.filter(crosses(time))).toEqual([]);
    for (let row = 17; row < lavender.run.duration_s; row += 17) expect(steps.filter(crosses(row))).toEqual([]);
    expect(steps.some(({ length }) => length === 5)).toBe(true);
  });

  it('are single again after a control has changed', () => {
    const changed: Scenario = {
      ...lavender,
      cooling: {
        ...lavender.cooling,
        flow_kg_s: [
          { at_s: 0, value: 0.006, shape: 'step' },
          { at_s: 5400, value: 0.012, shape: 'step' },
        ],
      },
    };
    const steps = stepsOf(changed);
    expect(steps.find((step) => ends(step) === 5400)?.length).toBe(5);
    expect(steps.find(({ from }) => from === 5400)?.length).toBe(1);
  });

  it('are a tenth as long everywhere at a tenth of the step', () => {
    const short = { ...lavender, run: { ...lavender.run, duration_s: 3600 } };
    const steps = stepsOf({ ...short, advanced: { ...short.advanced, step_s: 0.1 } });
    expect(Math.max(...steps.map(({ length }) => length))).toBeCloseTo(0.5, 9);
    expect(Math.min(...steps.map(({ length }) => length))).toBeCloseTo(0.025, 9);
  });

  it('come close to the end of a pot that boils dry one at a time', () => {
    const steps = stepsOf(exampleScenario('juniper-dry-pot'));
    expect((steps.at(-1) as Step).length).toBe(1);
  });
});
