import { describe, expect, it } from 'vitest';
import { normalScore, Xoshiro128 } from '../../../sim/answers/ensemble/random.ts';
import {
  coilTest,
  flowToTry,
  outletsOf,
  waterThroughTube,
  type CoilTest,
} from '../../../sim/answers/home-tests/coil-test.ts';
import { bandsOfTest, settingsOf } from '../../../sim/answers/home-tests/found.ts';
import { heatUpTest, waterHeated, type HeatUpTest } from '../../../sim/answers/home-tests/heat-up-test.ts';
import type { TestFound, TestResult } from '../../../sim/answers/home-tests/home-test.ts';
import { tubAfter, tubTest, type TubTest } from '../../../sim/answers/home-tests/tub-test.ts';
import {
  englishReader,
  exampleScenario,
  homeTestMessages,
  homeTestSheet,
  type HomeTestGiven,
  type Scenario,
} from '../../../sim/index.ts';
import { faults } from '../explain/soundness.ts';

const CELSIUS = 273.15;
const still = exampleScenario('gentle-lavender');
const found = (result: TestResult): TestFound => {
  if (!result.ok) throw new Error(`refused: ${result.problem.kind}`);
  return result;
};
/** What the page shows of a found test: its words in both units, and a working that adds up. */
function expectTold(scenario: Scenario, asked: HomeTestGiven, result: TestFound): void {
  expect(faults(homeTestSheet(scenario, asked, result))).toEqual([]);
  for (const units of ['metric', 'us'] as const) {
    const messages = homeTestMessages(englishReader(units));
    const { steps, danger } = messages.words(asked.test, scenario);
    expect([...steps, danger, messages.lead(result)].join(' ')).not.toMatch(units === 'us' ? /°C|\bkg\b/u : /°F/u);
  }
}
/** Errors of a thermometer, the same for a seed. */
const errors = (seed: number) => {
  const chance = Xoshiro128.fromSeed(seed);
  return (): number => normalScore(chance.share());
};

describe('the tub test', () => {
  const tub: Scenario = {
    ...still,
    cooling: { ...still.cooling, inlet: 'pointing-up', hoseBore_m: 0.012, tubDiameter_m: 0.45, tubHeight_m: 0.5 },
  };
  const asked: TubTest = {
    start_K: 55 + CELSIUS,
    inlet_K: 15 + CELSIUS,
    caught_kg: 1,
    caught_s: 30,
    letIn_kg: 40,
    readings: [0.05, 0.15, 0.25, 0.35, 0.45].map((height_m) => ({ height_m, value_K: 0 })),
  };
  const readWith = (factor: number, error: () => number): TubTest => {
    const exact = tubAfter(tub, asked, factor);
    return {
      ...asked,
      readings: asked.readings.map((each, k) => ({ ...each, value_K: (exact[k] as number) + error() })),
    };
  };

  it('finds how far a jet mixes from five thermometers', () => {
    for (const truth of [0.4, 1, 2.5]) {
      const given = readWith(truth, () => 0);
      const result = found(tubTest(tub, given));
      const { values } = result;
      expectTold(tub, { test: 'tub', given }, result);
      expect(values[0]?.path).toBe('factors.jetMixing');
      expect(values[0]?.value).toBeGreaterThan(0.93 * truth);
      expect(values[0]?.value).toBeLessThan(1.07 * truth);
    }
  });

  it('holds the truth in about nine of ten intervals', () => {
    const held = Array.from({ length: 12 }, (_, seed) => {
      const [value] = found(tubTest(tub, readWith(1.3, errors(seed)))).values;
      return value !== undefined && value.low <= 1.3 && value.high >= 1.3;
    }).filter(Boolean).length;
    expect(held).toBeGreaterThanOrEqual(9);
  });

  it('keeps the water’s heat: warmer above, colder below, none colder than what comes in', () => {
    const after = tubAfter(tub, asked, 1);
    expect([...after].sort((a, b) => a - b)).toEqual(after);
    expect(Math.min(...after)).toBeGreaterThanOrEqual(15 + CELSIUS - 0.5);
    expect(Math.max(...after)).toBeLessThanOrEqual(55 + CELSIUS);
  });

  it('refuses what it cannot tell', () => {
    const top = { ...tub, cooling: { ...tub.cooling, inlet: 'top' as const } };
    expect(tubTest(top, asked)).toMatchObject({ problem: { kind: 'hose-from-top' } });
    expect(tubTest(exampleScenario('rosemary-jacket'), asked)).toMatchObject({ problem: { kind: 'no-tub' } });
    expect(tubTest(tub, { ...asked, readings: asked.readings.slice(0, 2) })).toMatchObject({
      problem: { kind: 'too-few-readings', needed: 3 },
    });
    expect(tubTest(tub, { ...asked, start_K: 20 + CELSIUS })).toMatchObject({ problem: { kind: 'too-close' } });
  });
});

describe('the coil test', () => {
  /** A tube of 10 mm bore in 15 °C water, slope 3°, from boiling: solved on another grid by another program. */
  const tubeWith = (curvature: number): Scenario => ({
    ...still,
    factors: { ...still.factors, curvature, rivulet: 1, coolantFilm: 1 },
    condenser: {
      ...still.condenser,
      kind: 'coil-in-tub',
      material: 'copper',
      insideDiameter_m: 0.01,
      outsideDiameter_m: 0.012,
      coilDiameter_m: 0.25,
      coilPitch_m: Math.PI * 0.25 * Math.tan((3 * Math.PI) / 180),
      fouling_m2K_W: 0,
    },
  });
  const outlet = (kg_h: number, length_m: number, curvature: number): number =>
    waterThroughTube(tubeWith(curvature), length_m, {
      caught_kg: kg_h,
      caught_s: 3600,
      inlet_K: 100 + CELSIUS,
      bath_K: 15 + CELSIUS,
    }).outlet_K - CELSIUS;

  it.each([
    [3, 1, 36.3, 24.0],
    [6, 1, 54.6, 36.3],
    [6, 2, 37.6, 22.7],
    [12, 1, 70.2, 51.3],
    [12, 3, 46.0, 25.6],
  ])('lets %d kg/h through %d m leave as warm as solved apart', (kg_h, length, straight, coil) => {
    expect(Math.abs(outlet(kg_h, length, 0) - straight)).toBeLessThan(1.5);
    expect(Math.abs(outlet(kg_h, length, 0.7) - coil)).toBeLessThan(1.5);
  });

  const asked = (scenario: Scenario, truth: number, error: () => number): CoilTest => {
    const readings = [6, 9, 12].map((kg_h) => ({
      caught_kg: kg_h / 60,
      caught_s: 60,
      inlet_K: 96 + CELSIUS,
      outlet_K: 0,
      bath_K: 16 + CELSIUS,
    }));
    const exact = outletsOf(scenario, { length_m: 1.5, readings }, truth);
    return {
      length_m: 1.5,
      readings: readings.map((each, k) => ({ ...each, outlet_K: (exact[k] as number) + error() })),
    };
  };

  it('finds the bend of a coil', () => {
    const scenario = tubeWith(0.7);
    for (const truth of [0.2, 0.7, 1]) {
      const given = asked(scenario, truth, () => 0);
      const result = found(coilTest(scenario, given));
      const [value] = result.values;
      expectTold(scenario, { test: 'coil', given }, result);
      expect(value?.path).toBe('factors.curvature');
      expect(Math.abs((value?.value ?? 0) - truth)).toBeLessThan(0.03);
    }
  });

  it('finds the condensate factor of a straight tube', () => {
    const scenario = exampleScenario('rosemary-jacket');
    const sloping: Scenario = {
      ...scenario,
      condenser: { ...scenario.condenser, kind: 'jacketed-tube', orientation: 'sloping' },
    };
    const given = asked(sloping, 1.4, () => 0);
    const result = found(coilTest(sloping, given));
    const [value] = result.values;
    expectTold(sloping, { test: 'coil', given }, result);
    expect(value?.path).toBe('factors.rivulet');
    expect(value?.value).toBeCloseTo(1.4, 1);
  });

  it('holds the truth in about nine of ten intervals', () => {
    const scenario = tubeWith(0.7);
    const held = Array.from({ length: 12 }, (_, seed) => {
      const [value] = found(coilTest(scenario, asked(scenario, 0.5, errors(seed)))).values;
      return value !== undefined && value.low <= 0.5 && value.high >= 0.5;
    }).filter(Boolean).length;
    expect(held).toBeGreaterThanOrEqual(9);
  });

  it('names a flow at which the outlet stands clear of the bath', () => {
    const { flow_kg_s, outlet_K } = flowToTry(tubeWith(0.7), 1.5, 96 + CELSIUS, 16 + CELSIUS);
    expect(outlet_K).toBeGreaterThan(26 + CELSIUS);
    expect(flow_kg_s).toBeCloseTo(6 / 3600, 9);
  });

  it('refuses an outlet that cannot be, and one that says nothing', () => {
    const scenario = tubeWith(0.7);
    const given = asked(scenario, 0.7, () => 0);
    const hot = given.readings.map((each, k) => (k === 1 ? { ...each, outlet_K: 99 + CELSIUS } : each));
    expect(coilTest(scenario, { ...given, readings: hot })).toMatchObject({
      problem: { kind: 'impossible', reading: 2 },
    });
    const cold = given.readings.map((each) => ({ ...each, outlet_K: each.bath_K + 1 }));
    expect(coilTest(scenario, { ...given, readings: cold })).toMatchObject({ problem: { kind: 'too-close' } });
  });
});

describe('the heat-up test', () => {
  const asked: HeatUpTest = {
    water_kg: 8,
    start_K: 16 + CELSIUS,
    air_K: 20 + CELSIUS,
    setting: 1,
    off_s: 1500,
    readings: [300, 600, 900, 1200, 1500, 3000, 4500].map((time_s) => ({ time_s, value_K: 0 })),
  };
  const readWith = (share: number, loss: number, error: () => number): HeatUpTest => {
    const exact = waterHeated(still, asked, share, loss);
    return {
      ...asked,
      readings: asked.readings.map((each, k) => ({ ...each, value_K: (exact[k] as number) + error() })),
    };
  };

  it('finds the heat that arrives and the heat that is lost', () => {
    const given = readWith(0.6, 1.6, () => 0);
    const result = found(heatUpTest(still, given));
    const { values, reducedChiSquare } = result;
    expectTold(still, { test: 'heat-up', given }, result);
    expect(values.map(({ path }) => path)).toEqual(['heat.shareToPot', 'factors.heatLoss']);
    expect(values[0]?.value).toBeCloseTo(0.6, 2);
    expect(values[1]?.value).toBeCloseTo(1.6, 1);
    expect(reducedChiSquare).toBeLessThan(0.05);
  });

  it('holds the truth in about nine of ten intervals', () => {
    const held = Array.from({ length: 6 }, (_, seed) =>
      found(heatUpTest(still, readWith(0.6, 1.6, errors(seed)))).values.map(
        ({ low, high }, k) => low <= (k === 0 ? 0.6 : 1.6) && high >= (k === 0 ? 0.6 : 1.6),
      ),
    ).flat();
    expect(held.filter(Boolean).length).toBeGreaterThanOrEqual(9);
  });

  it('hands the still its values, and the next plans the interval of what they draw', () => {
    const result = found(
      heatUpTest(
        still,
        readWith(0.6, 1.6, () => 0),
      ),
    );
    expect(Object.keys(settingsOf(result))).toEqual(['heat.shareToPot', 'factors.heatLoss']);
    const bands = bandsOfTest(result);
    expect(Object.keys(bands)).toEqual(['heatLoss']);
    expect(bands.heatLoss?.low).toBeLessThan(1);
    expect(bands.heatLoss?.high).toBeGreaterThan(1);
  });

  it('refuses too few readings and water that hardly warmed', () => {
    expect(heatUpTest(still, { ...asked, readings: asked.readings.slice(0, 3) })).toMatchObject({
      problem: { kind: 'too-few-readings', needed: 4 },
    });
    const cold = asked.readings.map((each) => ({ ...each, value_K: 20 + CELSIUS }));
    expect(heatUpTest(still, { ...asked, readings: cold })).toMatchObject({ problem: { kind: 'too-close' } });
  });
});
