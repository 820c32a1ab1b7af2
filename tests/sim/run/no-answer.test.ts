/** What the answers make of runs whose calculation fails: no number of them. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  answerLesson,
  calibrate,
  examples,
  gentleAgainstHard,
  readScenario,
  sizeOwnTube,
  simulate,
  summariseEnsemble,
  ensembleDesign,
  runMember,
  workingSheets,
  type Scenario,
} from '../../../sim/index.ts';
import { outletsAt } from '../../../src/workers/condenser-map.ts';
import { Still } from '../../../sim/still/still.ts';

const takeStep = Reflect.get<Still, 'step'>(Still.prototype, 'step');
const scenario = (readScenario(examples[0]?.scenario) as { scenario: Scenario }).scenario;

describe('where the calculation fails a minute after heat on', () => {
  beforeEach(() => {
    vi.spyOn(Still.prototype, 'step').mockImplementation(function (this: Still, time, length) {
      takeStep.call(this, time, length);
      if (time > 60) this.pot.enthalpy = NaN;
    });
  });
  afterEach(() => vi.restoreAllMocks());

  it('the record ends with the last numbers that are sound', () => {
    const { record, failure, summary } = simulate(scenario);
    expect(summary.endReason).toBe('non-finite');
    expect(failure?.variable).toBe('pot-temperature');
    for (const column of Object.values(record.columns)) expect(column.every(Number.isFinite)).toBe(true);
    for (const { data } of Object.values(record.grids)) expect(data.every(Number.isFinite)).toBe(true);
  });

  it('there is no working, fit, length or point of the picture', () => {
    expect(workingSheets(simulate(scenario))).toEqual([]);
    const points = [30, 40, 50, 60, 70, 80].map((minute) => ({ time_s: minute * 60, oil_kg: minute / 1e4 }));
    expect(calibrate(scenario, points, ['oilContent'])).toMatchObject({ ok: false, problem: { kind: 'broke-off' } });
    expect(sizeOwnTube(scenario, { margin: 0 })).toMatchObject({ verdict: 'calculation-failed', length_m: null });
    expect(outletsAt(scenario, 'flow', [{ x: 0.03, length_m: 3 }], 'rough')).toEqual([
      { x: 0.03, length_m: 3, outlet_K: null, fails: false, pressure: false },
    ]);
  });

  it('no likely run counts', () => {
    const design = ensembleDesign(scenario, 20, 1, {});
    const draws = design.rows.flatMap(({ kind }, index) => (kind === 'draw' ? [index] : []));
    const { failed, headline } = summariseEnsemble(
      design,
      draws.map((index) => runMember(design, index)),
    );
    expect(failed).toBe(draws.length);
    expect(headline.oil_mL).toMatchObject({ counted: 0, p50: null });
  });

  it('a gentle and a hard boil keep the length that was planned, and a lesson gives no answer', () => {
    const { gentle, hard } = gentleAgainstHard(scenario);
    expect([gentle, hard].map(({ run }) => run.stopAtDistillate_kg)).toEqual([null, null]);
    expect(() => answerLesson('harder-flame')).toThrow('failed');
  });
});
