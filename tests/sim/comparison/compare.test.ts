import { describe, expect, it } from 'vitest';
import {
  compareRuns,
  exampleScenario,
  gentleAgainstHard,
  simulate,
  type CompareRow,
  type RunResult,
} from '../../../sim/index.ts';

const runs = ['gentle-lavender', 'hard-boiled-lavender', 'rosemary-jacket'].map((id) => simulate(exampleScenario(id)));
const [gentle, hard] = runs as [RunResult, RunResult, RunResult];
const comparison = compareRuns(runs);
const row = (id: CompareRow['id']): CompareRow => comparison.rows.find((entry) => entry.id === id) as CompareRow;

describe('the table of a comparison', () => {
  it('gives each run its number and the difference from the first', () => {
    expect(row('oil').values).toEqual(runs.map(({ summary }) => summary.oilCollected_mL));
    expect(row('oil').differences[0]).toBe(0);
    expect(row('oil').differences[1]).toBeCloseTo(hard.summary.oilCollected_mL - gentle.summary.oilCollected_mL, 12);
    expect(row('timeTo90').values[1]).toBe(hard.summary.t90_s);
    expect(row('coolantUsed').values[0]).toBeCloseTo(gentle.summary.coolantUsed_kg / 0.998, 9);
    expect(row('cost').values[0]).toBeCloseTo(gentle.summary.energyCost + gentle.summary.waterCost, 12);
    expect(row('coilNeeded').values[2]).toBe(runs[2]?.summary.condensingLengthPeak_m);
  });

  it('has a share for every constituent of any of the oils, adding to one in each run', () => {
    const shares = comparison.rows.filter(({ id }) => id.startsWith('share-'));
    for (let run = 0; run < 3; run++)
      expect(shares.reduce((sum, { values }) => sum + (values[run] as number), 0)).toBeCloseTo(1, 9);
    expect(row('share-linalool').values[0]).toBeGreaterThan(0.2);
    expect(row('share-cineole_1_8').constituent).toBe('cineole_1_8');
    expect(row('oil').constituent).toBe(null);
  });

  it('lists alarms before cares and names the worst', () => {
    const [first, second] = comparison.runs;
    expect(second?.worst).toBe('alarm');
    expect(second?.cautions[0]?.severity).toBe('alarm');
    expect(first?.worst).not.toBe('alarm');
  });

  it('tells runs of one name apart', () => {
    expect(compareRuns([gentle, hard, gentle]).runs.map(({ name, number }) => [name, number])).toEqual([
      ['Gentle lavender', 1],
      [hard.scenario.name, null],
      ['Gentle lavender', 3],
    ]);
  });

  it('compares two to four runs, no fewer and no more', () => {
    expect(() => compareRuns([gentle])).toThrow('1 runs; two to four');
    expect(() => compareRuns([gentle, gentle, gentle, gentle, gentle])).toThrow(RangeError);
  });

  it('leaves open what a run never reached', () => {
    const dry = simulate({ ...gentle.scenario, charge: { ...gentle.scenario.charge, mass_kg: 0 } });
    const with_ = compareRuns([gentle, dry]);
    const at = (id: CompareRow['id']) => with_.rows.find((entry) => entry.id === id) as CompareRow;
    expect(at('timeTo90')).toMatchObject({ values: [gentle.summary.t90_s, null], differences: [0, null] });
    expect(at('costPerOil').values[1]).toBeNull();
    expect(with_.conclusion[1]).toEqual({ kind: 'time-unknown' });
  });
});

describe('gentle against hard', () => {
  const pair = gentleAgainstHard(gentle.scenario);
  const [soft, fierce] = [simulate(pair.gentle), simulate(pair.hard)];

  it('passes the same steam through the same charge at two speeds', () => {
    const came = ({ record }: RunResult) => record.columns.hydrosol_kg[record.rows - 1] as number;
    const own = came(gentle);
    expect(came(soft) / own).toBeCloseTo(1, 2);
    expect(came(fierce) / own).toBeCloseTo(1, 2);
    expect(soft.summary.endReason).toBe('stop-distillate');
  });

  it('sends 40 % of full power’s steam to the condenser', () => {
    const middle = (result: RunResult, name: 'vapourRate_kg_s') =>
      result.record.columns[name][Math.floor(result.record.rows * 0.7)] as number;
    expect(middle(soft, 'vapourRate_kg_s') / middle(fierce, 'vapourRate_kg_s')).toBeCloseTo(0.4, 1);
  });

  it('shows that a gentle boil carries more oil per kilogram of steam, a hard one more per minute', () => {
    const { rows } = compareRuns([soft, fierce]);
    const values = (id: CompareRow['id']) => rows.find((entry) => entry.id === id)?.values as number[];
    expect(values('oilPerSteam')[0]).toBeGreaterThan(values('oilPerSteam')[1] as number);
    expect(values('timeTo90')[0]).toBeGreaterThan(values('timeTo90')[1] as number);
  });

  it('doubles and halves the rate of a controller that holds one', () => {
    const holding = gentleAgainstHard({
      ...gentle.scenario,
      heat: { ...gentle.scenario.heat, control: 'hold-rate', targetRate_kg_s: 0.0003 },
    });
    expect(holding.gentle.heat.targetRate_kg_s).toBeCloseTo(0.00015, 12);
    expect(holding.hard.heat.targetRate_kg_s).toBeCloseTo(0.0006, 12);
  });

  it('keeps the duration of a still that never boils', () => {
    const cold = gentleAgainstHard({ ...gentle.scenario, run: { ...gentle.scenario.run, duration_s: 300 } });
    expect(cold.gentle.run).toEqual({
      duration_s: 300,
      stopAtShare: null,
      stopAtOilRate_kg_s: null,
      stopAtDistillate_kg: null,
    });
    expect(cold.gentle.heat.setting).toEqual([{ at_s: 0, value: 0.4, shape: 'step' }]);
  });

  it('keeps the names within the length that a file may have', () => {
    const named = gentleAgainstHard({ ...gentle.scenario, name: 'x'.repeat(120) });
    expect(named.hard.name.length).toBeLessThanOrEqual(120);
    expect(pair.gentle.name).toBe('Gentle lavender, gentle');
  });
});
