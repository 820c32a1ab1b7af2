import { describe, expect, it } from 'vitest';
import { constituentById, liquidDensity as oilDensity } from '../../../sim/fluids/constituents.ts';
import { liquidDensity } from '../../../sim/fluids/water.ts';
import {
  exampleScenario,
  simulate,
  type EventKind,
  type RunEvent,
  type RunResult,
  type Scenario,
} from '../../../sim/index.ts';
import { scenarioOf, type Parts } from '../still/ideal-still.ts';

const steps = (...knots: readonly (readonly [number, number])[]) => knots.map(([at_s, value]) => ({ at_s, value }));
const warm = { waterTemperature_K: 370 };
const own = (constituent: string): Parts['charge'] => ({
  botanical: 'own',
  mass_kg: 1,
  moisture: 0.3,
  oilContent: 0.05,
  composition: [{ constituent, share: 1 }],
});

/** For each kind of event a still in which it must be told, and what its number must be near to or beyond. */
const provoked: readonly (readonly [EventKind, () => Scenario, (value: number) => boolean])[] = [
  ['first-boil', () => exampleScenario('gentle-lavender'), (T) => Math.abs(T - 372.7) < 1],
  ['front-through', () => exampleScenario('gentle-lavender'), (height) => height > 0.1 && height < 0.2],
  ['first-drop', () => exampleScenario('gentle-lavender'), (time) => time > 900 && time < 3600],
  [
    'run-ends',
    () => exampleScenario('gentle-lavender'),
    (time) => time === exampleScenario('gentle-lavender').run.duration_s,
  ],
  ['tub-warm', () => exampleScenario('hard-boiled-lavender'), (T) => T >= 333.15],
  ['vapour-escapes', () => exampleScenario('hard-boiled-lavender'), (rate) => rate > 0],
  [
    'cooling-boils',
    () =>
      scenarioOf({
        pot: warm,
        heat: { ratedPower_W: 4000 },
        charge: { mass_kg: 0 },
        condenser: { length_m: 20, coilPitch_m: 0.013, coilDiameter_m: 0.2, insideDiameter_m: 0.01 },
        cooling: { tubDiameter_m: 0.25, tubHeight_m: 0.5, flow_kg_s: steps([0, 0]) },
      }),
    (T) => T > 360,
  ],
  ['pot-dry', () => exampleScenario('hard-boiled-lavender'), (water) => water < 0.1],
  ['pot-low', () => exampleScenario('hard-boiled-lavender'), (water) => water < 1.3],
  [
    'vapour-held-again',
    () =>
      scenarioOf({
        pot: warm,
        heat: { ratedPower_W: 4000, lag_s: 10, setting: steps([0, 1], [1500, 0.2]) },
        charge: { mass_kg: 0 },
        condenser: { length_m: 0.6 },
      }),
    (length) => length > 0 && length < 0.6,
  ],
  [
    'outlet-warm',
    () =>
      scenarioOf({
        pot: warm,
        heat: { ratedPower_W: 2000 },
        charge: { mass_kg: 0 },
        condenser: { length_m: 0.8, outletLimit_K: 303.15 },
      }),
    (T) => T > 303.15,
  ],
  [
    'coil-uncovered',
    () =>
      scenarioOf({
        pot: warm,
        cooling: { tubFill: 0.6, flow_kg_s: steps([0, 0]) },
        charge: { mass_kg: 0 },
        run: { duration_s: 60 },
      }),
    (depth) => Math.abs(depth - 0.3) < 0.01,
  ],
  [
    'separator-overrun',
    () => scenarioOf({ pot: warm, separator: { bore_m: 0.02, dropMedian_m: 0.00005 } }),
    (share) => share < 0.9,
  ],
  [
    'near-neutral-oil',
    () => scenarioOf({ pot: warm, charge: own('trans_anethole') }),
    (difference) => Math.abs(difference) < 15,
  ],
  [
    'pressure-high',
    () =>
      scenarioOf({
        pot: warm,
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 6000 },
        condenser: { insideDiameter_m: 0.006, outsideDiameter_m: 0.008, coilPitch_m: 0.03 },
      }),
    (gauge) => gauge > 5000,
  ],
  [
    'over-pressure',
    () =>
      scenarioOf({
        pot: warm,
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 9000 },
        condenser: { insideDiameter_m: 0.004, outsideDiameter_m: 0.006, coilPitch_m: 0.03 },
      }),
    (gauge) => gauge >= 50_000,
  ],
  [
    'tube-hazard',
    () =>
      scenarioOf({
        pot: warm,
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 6000 },
        condenser: { insideDiameter_m: 0.006, outsideDiameter_m: 0.008, coilPitch_m: 0.03 },
      }),
    (drop) => drop > 2000,
  ],
  [
    'neck-fast',
    () => scenarioOf({ pot: warm, charge: { mass_kg: 0 }, heat: { ratedPower_W: 4000 }, neck: { bore_m: 0.008 } }),
    (speed) => speed > 30,
  ],
  [
    'bed-lifts',
    () =>
      scenarioOf({
        pot: { ...warm, diameter_m: 0.2, height_m: 0.4, water_kg: 3 },
        heat: { ratedPower_W: 6000 },
        charge: { ...own('linalool'), particleSize_m: 0.0002, voidShare: 0.4, bulkDensity_kg_m3: 150 },
        condenser: { insideDiameter_m: 0.02, outsideDiameter_m: 0.022 },
      }),
    (drop) => drop > 150 * 9.81 * 0.2,
  ],
  [
    'foam-carry-over',
    () =>
      scenarioOf({
        pot: { ...warm, diameter_m: 0.1, height_m: 0.4, water_kg: 0.9 },
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 30_000, lag_s: 0 },
        neck: { bore_m: 0.08 },
        condenser: { insideDiameter_m: 0.04, outsideDiameter_m: 0.042 },
      }),
    (speed) => speed > 1.5,
  ],
  [
    'scorch',
    () =>
      scenarioOf({
        pot: { layout: 'water', diameter_m: 0.2, water_kg: 4 },
        charge: own('linalool'),
        heat: { ratedPower_W: 5000 },
        run: { duration_s: 60 },
      }),
    (flux) => flux > 70_000,
  ],
  [
    'circuit-overloaded',
    () => scenarioOf({ heat: { ratedPower_W: 4000, supplyVolts_V: 230, supplyAmps_A: 13 }, run: { duration_s: 60 } }),
    (power) => power === 4000,
  ],
  [
    'rate-not-held',
    () =>
      scenarioOf({
        pot: warm,
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 800, control: 'hold-rate', targetRate_kg_s: 0.001 },
      }),
    (rate) => rate > 0 && rate < 800 / 2.2e6,
  ],
  [
    'oil-rate-low',
    () => scenarioOf({ pot: warm, run: { duration_s: 36_000, stopAtOilRate_kg_s: 2e-6 } }),
    (rate) => rate > 0 && rate < 2e-6,
  ],
  [
    'stop-rule',
    () => scenarioOf({ pot: warm, run: { duration_s: 36_000, stopAtDistillate_kg: 0.2 } }),
    (kept) => kept >= 0.2,
  ],
];

const told = (result: RunResult, kind: EventKind): RunEvent => {
  const event = result.events.find((entry) => entry.kind === kind);
  if (event === undefined)
    throw new Error(`${kind} is not told; told are ${result.events.map((entry) => entry.kind).join(', ')}`);
  return event;
};

describe('the events of a run', () => {
  it.each(provoked)('tell %s with time, number, sentence and advice', (kind, scenario, holds) => {
    const result = simulate(scenario());
    const event = told(result, kind);
    expect(event.time_s).toBeGreaterThanOrEqual(0);
    expect(event.time_s).toBeLessThanOrEqual(result.summary.end_s);
    expect(holds(event.value), `${event.value} ${event.unit}`).toBe(true);
    expect(event.unit).toMatch(/^\S+$/);
    expect(event.sentence).toMatch(/^[A-Z\d].*\.$/);
    expect(event.sentence).not.toMatch(/NaN|undefined|Infinity/);
    expect(event.advice).toMatch(/^[A-Z].*\.$/);
    expect(Object.keys(result.scenario)).toContain(event.part);
  });

  it('come in the order of time, each told once but for vapour that comes and goes', () => {
    const { events } = simulate(exampleScenario('hard-boiled-lavender'));
    expect(events.map((event) => event.time_s)).toEqual(events.map((event) => event.time_s).sort((a, b) => a - b));
    const once = events
      .filter((event) => event.kind !== 'vapour-escapes' && event.kind !== 'vapour-held-again')
      .map((event) => event.kind);
    expect(new Set(once).size).toBe(once.length);
  });

  it('raise no alarm in a gentle run that holds its vapour', () => {
    const { events } = simulate(exampleScenario('gentle-lavender'));
    expect(events.filter((event) => event.severity === 'alarm')).toEqual([]);
  });

  it('speak of full power when a controller may take it', () => {
    const result = simulate(
      scenarioOf({
        heat: {
          control: 'hold-rate',
          setting: steps([0, 0.3]),
          ratedPower_W: 4000,
          supplyVolts_V: 230,
          supplyAmps_A: 13,
        },
        run: { duration_s: 60 },
      }),
    );
    expect(told(result, 'circuit-overloaded').value).toBe(4000);
  });

  it('warn that the pot is low before it runs dry, in every layout', () => {
    for (const layout of ['water', 'water-and-steam', 'steam'] as const) {
      const result = simulate(
        scenarioOf({
          pot: { ...warm, layout, water_kg: 2.5 },
          heat: { ratedPower_W: 6000, lag_s: 0 },
          charge: { mass_kg: 0.5 },
          condenser: { insideDiameter_m: 0.02, outsideDiameter_m: 0.022 },
        }),
      );
      expect(result.summary.endReason, layout).toBe('pot-dry');
      expect(told(result, 'pot-low').time_s, layout).toBeLessThan(told(result, 'pot-dry').time_s);
    }
  });

  it('advise a receiver’s temperature at which a near-neutral oil parts from water, by the densities of both', () => {
    const event = told(simulate(scenarioOf({ pot: warm, charge: own('trans_anethole') })), 'near-neutral-oil');
    const T = 273.15 + Number(/at about (\d+)\u202f°C/.exec(event.advice)?.[1]);
    const difference = (at: number): number => liquidDensity(at) - oilDensity(constituentById('trans_anethole'), at);
    expect(difference(T), event.advice).toBeGreaterThan(19.5);
    expect(difference(T - 1.5), event.advice).toBeLessThan(20);
  });

  it('say nothing of oil that hardly parts when all that comes is dissolved', () => {
    const { events, record } = simulate(
      scenarioOf({
        pot: { ...warm, diameter_m: 0.4, height_m: 0.4, water_kg: 12 },
        charge: { botanical: 'sage', mass_kg: 1 },
        heat: { ratedPower_W: 3500 },
        condenser: { length_m: 8 },
        run: { duration_s: 14_400 },
      }),
    );
    expect(record.columns.oilRate_kg_s[record.rows - 1]).toBe(0);
    expect(events.map(({ kind }) => kind)).not.toContain('near-neutral-oil');
  });

  it.each([
    ['limonene', 0.012],
    ['eugenol', 0.038],
  ] as const)(
    'tell when the oil has grown to the inlet of a small separator, and hold no more than it: %s at %d m',
    (constituent, reached) => {
      const { events, record } = simulate(
        scenarioOf({
          pot: { ...warm, water_kg: 9 },
          charge: { ...own(constituent), release: { takeUp: { hydrocarbon: 2, oxygenate: 2 } } },
          condenser: { length_m: 8 },
          separator: { bore_m: 0.02, height_m: 0.05, inletDepth_m: 0.012, dropMedian_m: 0.002 },
          run: { duration_s: 10_800 },
        }),
      );
      const layers = record.columns.oilLayer_m;
      const event = events.find(({ kind }) => kind === 'oil-at-inlet');
      expect(event?.value).toBeGreaterThan(reached);
      expect(event?.value).toBeLessThan(reached + 0.001);
      expect(Math.max(...layers)).toBeLessThanOrEqual(0.05);
      expect(Math.max(...layers)).toBeGreaterThan(reached);
    },
  );

  it('tell nothing of a rate that the source can hold', () => {
    const { events, summary } = simulate(
      scenarioOf({
        pot: warm,
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 2000, control: 'hold-rate', targetRate_kg_s: 0.0005 },
      }),
    );
    expect(summary.firstDrop_s).not.toBeNull();
    expect(events.map(({ kind }) => kind)).not.toContain('rate-not-held');
  });

  it('tell of vapour that rushes into the tube before the tube holds much back: 3 kg/h in 8 mm are 27 m/s, 4 kg/h 37 m/s', () => {
    const into = (kg_h: number): readonly RunEvent[] =>
      simulate(
        scenarioOf({
          pot: warm,
          charge: { mass_kg: 0 },
          heat: { ratedPower_W: (kg_h / 3600) * 2.2565e6, shareToPot: 1, lag_s: 0 },
          factors: { heatLoss: 0 },
          neck: { bore_m: 0.03 },
          condenser: { insideDiameter_m: 0.008, outsideDiameter_m: 0.01, length_m: 2 },
          run: { duration_s: 1200 },
        }),
      ).events.filter(({ kind }) => kind === 'tube-hazard');
    expect(into(3)).toEqual([]);
    const [event, more] = into(4);
    expect(more).toBeUndefined();
    expect(event?.unit).toBe('m/s');
    // 92 m/s at 10 kg/h, computed from the IAPWS density of steam at 100 °C.
    expect((event?.value as number) / (0.4 * 92)).toBeCloseTo(1, 1);
  });

  it('look for spray where the water boils, in the boiler and not in the pot it feeds', () => {
    const fed = (boiler: number, pot: number): readonly EventKind[] =>
      simulate(
        scenarioOf({
          pot: { ...warm, layout: 'steam', diameter_m: pot, height_m: 0.4, water_kg: 2 },
          boiler: { diameter_m: boiler, height_m: 0.5 },
          charge: { mass_kg: 0 },
          heat: { ratedPower_W: 30_000, lag_s: 0 },
          neck: { bore_m: 0.08 },
          condenser: { insideDiameter_m: 0.04, outsideDiameter_m: 0.042 },
          run: { duration_s: 120 },
        }),
      ).events.map(({ kind }) => kind);
    expect(fed(0.1, 0.3)).toContain('foam-carry-over');
    expect(fed(0.3, 0.1)).not.toContain('foam-carry-over');
  });
});
