import { describe, expect, it } from 'vitest';
import { constituentById, liquidDensity as oilDensity } from '../../../sim/fluids/constituents.ts';
import { liquidDensity } from '../../../sim/fluids/water.ts';
import {
  EVENT_KINDS,
  exampleScenario,
  simulate,
  type EventKind,
  type RunEvent,
  type RunResult,
} from '../../../sim/index.ts';
import { scenarioOf } from '../still/ideal-still.ts';
import { own, provoked, smallSeparator, steps, warm } from './provoked-events.ts';

const told = <K extends EventKind>(result: RunResult, kind: K): RunEvent<K> => {
  const event = result.events.find((entry) => entry.kind === kind);
  if (event === undefined)
    throw new Error(`${kind} is not told; told are ${result.events.map((entry) => entry.kind).join(', ')}`);
  return event as RunEvent<K>;
};

describe('the events of a run', () => {
  it('are provoked each by a still here', () => {
    expect([...new Set(provoked.map(({ kind }) => kind))].sort()).toEqual([...EVENT_KINDS].sort());
  });

  it.each(provoked)('tell $kind with its time, part and numbers', ({ kind, scenario, holds }) => {
    const result = simulate(scenario());
    const event = told(result, kind);
    expect(event.time_s).toBeGreaterThanOrEqual(0);
    expect(event.time_s).toBeLessThanOrEqual(result.summary.end_s);
    expect(holds(event), JSON.stringify(event.values)).toBe(true);
    for (const value of Object.values(event.values))
      if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
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
    expect(told(result, 'circuit-overloaded').values.peak_W).toBe(4000);
  });

  it('ask no circuit to carry a flame', () => {
    const heat = { setting: steps([0, 1]), ratedPower_W: 4000, supplyVolts_V: 230, supplyAmps_A: 13 };
    for (const kind of ['gas-ring', 'gas-burner', 'wood-fire'] as const) {
      const { events } = simulate(scenarioOf({ heat: { ...heat, kind }, run: { duration_s: 60 } }));
      expect(events.map((event) => event.kind)).not.toContain('circuit-overloaded');
    }
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
    const difference = (at: number): number => liquidDensity(at) - oilDensity(constituentById('trans_anethole'), at);
    const { advised_K, differenceThere_kg_m3 } = event.values;
    expect(difference(advised_K)).toBeGreaterThan(19.5);
    expect(difference(advised_K - 1.5)).toBeLessThan(20);
    expect(differenceThere_kg_m3).toBeCloseTo(difference(advised_K), 0);
  });

  it('say nothing of oil that hardly parts when all that comes is dissolved', () => {
    const { events, record } = simulate(
      scenarioOf({
        pot: { ...warm, diameter_m: 0.4, height_m: 0.4, water_kg: 12 },
        // Quick sesquiterpenes, so that only what dissolves is left to come at the end.
        charge: { botanical: 'sage', mass_kg: 1, release: { heldRate_1_s: { sesquiterpene: 0.003 } } },
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
      const result = simulate(smallSeparator(constituent));
      const layers = result.record.columns.oilLayer_m;
      const { layer_m } = told(result, 'oil-at-inlet').values;
      expect(layer_m).toBeGreaterThan(reached);
      expect(layer_m).toBeLessThan(reached + 0.001);
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
    const into = (kg_h: number): readonly RunEvent<'tube-hazard'>[] =>
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
      ).events.filter((event) => event.kind === 'tube-hazard');
    expect(into(3)).toEqual([]);
    const [event, more] = into(4);
    expect(more).toBeUndefined();
    expect(event?.values.because).toBe('speed');
    // 92 m/s at 10 kg/h, computed from the IAPWS density of steam at 100 °C.
    expect((event?.values.speed_m_s as number) / (0.4 * 92)).toBeCloseTo(1, 1);
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
