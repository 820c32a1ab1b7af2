import { describe, expect, it } from 'vitest';
import {
  exampleScenario,
  examples,
  readScenario,
  simulate,
  type RunResult,
  type Scenario,
  type ScenarioInput,
} from '../../../sim/index.ts';
import { tryCondenser } from '../../../sim/answers/condenser-size/trial.ts';
import { sizeCondenser, withLength } from '../../../sim/answers/condenser-size/shortest-length.ts';

/** Whether a direct run fails by its own account: vapour escapes, or the warmest half minute of distillate is above the limit. */
const fails = ({ events, summary, scenario }: RunResult): boolean =>
  events.some(({ kind }) => kind === 'vapour-escapes') ||
  (summary.condensatePeak_C as number) > scenario.condenser.outletLimit_K - 273.15;

const scenarioOf = (input: ScenarioInput): Scenario => {
  const read = readScenario(input);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.scenario;
};

const gentle: ScenarioInput = { ...examples[0]?.scenario, run: { duration_s: 4200 } };

/** Every example but the one whose tube is too thin for its boil at any length. */
const sizeable = examples.map(({ id }) => id).filter((id) => id !== 'thyme-thin-tube');

describe('the shortest condenser that holds', () => {
  it('finds no length for a tube that is too thin for its boil', () => {
    expect(sizeCondenser(exampleScenario('thyme-thin-tube'))).toMatchObject({ verdict: 'pressure', length_m: null });
  });

  describe.each(sizeable)('of %s', (id) => {
    const scenario = exampleScenario(id);
    const { verdict, trial, length_m } = sizeCondenser(scenario);
    const length = length_m as number;
    const run = simulate(withLength(scenario, length));

    it('holds in a direct run, and 97 % of it does not', () => {
      expect(verdict).toBe('holds');
      expect(fails(run)).toBe(false);
      expect(fails(simulate(withLength(scenario, 0.97 * length)))).toBe(true);
    });

    it('says the same warmest distillate and the same limit as the run and its events', () => {
      for (const result of [run, simulate(withLength(scenario, 0.96 * length))]) {
        const kinds = result.events.map(({ kind }) => kind);
        expect(kinds.includes('outlet-warm')).toBe(
          (result.summary.condensatePeak_C as number) > scenario.condenser.outletLimit_K - 273.15,
        );
        expect(tryCondenser(result.scenario).holds).toBe(
          !kinds.includes('outlet-warm') && !kinds.includes('vapour-escapes'),
        );
      }
      expect((trial.warmestOutlet_K as number) - 273.15).toBeCloseTo(run.summary.condensatePeak_C as number, 9);
    });
  });

  it('is the same whatever length the scenario has and wherever the search begins, within its closeness', () => {
    const scenario = exampleScenario('class-glass');
    const found = [0.05, 0.4, 3, 60].map(
      (length) => sizeCondenser(withLength(scenario, length), { confirm: false }).length_m as number,
    );
    expect(Math.max(...found) / Math.min(...found)).toBeLessThan(1.03);
    expect(sizeCondenser(scenario, { confirm: false })).toEqual(sizeCondenser(scenario, { confirm: false }));
  });

  it('grows as the outlet limit falls and as the boil gets harder', () => {
    const length = (change: ScenarioInput): number =>
      sizeCondenser(scenarioOf({ ...gentle, ...change }), { confirm: false }).length_m as number;
    const at35 = length({});
    expect(length({ condenser: { ...gentle.condenser, outletLimit_K: 298.15 } })).toBeGreaterThan(1.1 * at35);
    expect(length({ heat: { ...gentle.heat, setting: [{ at_s: 0, value: 1 }] } })).toBeGreaterThan(1.1 * at35);
  });

  it.each([
    ['10 mm', 0.01, 0.012],
    ['26 mm', 0.026, 0.028],
  ])('hardly hangs on the layers that the tub is divided into: %s', (_, insideDiameter_m, outsideDiameter_m) => {
    const length = (advanced: ScenarioInput['advanced']): number =>
      sizeCondenser(
        scenarioOf({
          ...examples[0]?.scenario,
          condenser: { ...gentle.condenser, insideDiameter_m, outsideDiameter_m },
          advanced,
        }),
        { confirm: false },
      ).length_m as number;
    expect(Math.abs(length({}) / length({ tubLayers: 20 }) - 1)).toBeLessThan(0.03);
  });

  it('is found by five or fewer coarse trials where the start is near', () => {
    for (const { id } of examples.slice(2))
      expect(sizeCondenser(exampleScenario(id), { confirm: false }).trials, id).toBeLessThanOrEqual(5);
  });
});

describe('a condenser that no length saves', () => {
  it('says that the cooling water becomes too warm where the tub is small, still and lukewarm', () => {
    const scenario = scenarioOf({
      ...gentle,
      cooling: { flow_kg_s: [{ at_s: 0, value: 0 }], tubDiameter_m: 0.28, tubHeight_m: 0.08, startTemperature_K: 300 },
    });
    const { verdict, length_m, trial } = sizeCondenser(scenario);
    expect({ verdict, length_m }).toEqual({ verdict: 'coolant-warm', length_m: null });
    expect(trial.failure?.coolant_K).toBeGreaterThan(scenario.condenser.outletLimit_K - 1);
  });

  it('says that the tube is too narrow where it holds back the vapour', () => {
    const scenario = scenarioOf({
      ...gentle,
      condenser: { ...gentle.condenser, insideDiameter_m: 0.003, outsideDiameter_m: 0.004 },
    });
    expect(sizeCondenser(scenario)).toMatchObject({ verdict: 'pressure', trial: { failure: { kind: 'pressure' } } });
  });

  it('says that a hundred metres are too short where the water never comes within a hair of the limit', () => {
    const scenario = scenarioOf({
      ...gentle,
      condenser: { ...gentle.condenser, fouling_m2K_W: 0.005, outletLimit_K: 289 },
      factors: { coolantFilm: 0.05, condensingFilm: 0.05, fouling: 10 },
    });
    expect(['never', 'coolant-warm']).toContain(sizeCondenser(scenario).verdict);
  });

  it('needs no length where nothing comes over', () => {
    expect(sizeCondenser(scenarioOf({ ...gentle, run: { duration_s: 300 } })).verdict).toBe('no-vapour');
  });
});
