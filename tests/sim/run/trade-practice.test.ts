/** What everyone who distils knows: common practice, no source. The model must agree without having been told. */
import { describe, expect, it } from 'vitest';
import { botanicals, columnAt, exampleScenario, examples, simulate, type RunResult } from '../../../sim/index.ts';
import { scenarioOf, type Parts } from '../still/ideal-still.ts';

const at = (value: number) => [{ at_s: 0, value }];

/** A charge of dried lavender over water, boiled at a share of 2 kW, in a coil that holds it all. */
const lavenderAt = (setting: number, more: Parts = {}): RunResult =>
  simulate(
    scenarioOf({
      pot: { waterTemperature_K: 365, water_kg: 9.5 },
      charge: { botanical: 'lavender-true', state: 'dry', mass_kg: 2, bulkDensity_kg_m3: 150 },
      heat: { ratedPower_W: 2400, setting: at(setting) },
      condenser: { length_m: 8 },
      run: { duration_s: 9000 },
      advanced: { segments: 40 },
      ...more,
    }),
  );

const oilOver = (result: RunResult, time: number): number =>
  columnAt(result.record, 'oilCollected_kg', time) / result.summary.oilInCharge_kg;

/** Kilograms of distillate water with which a share of the charge's oil came over. */
function waterFor(result: RunResult, share: number): number {
  const row = result.record.columns.time_s.findIndex((time) => oilOver(result, time) >= share);
  if (row < 0) throw new Error(`${share} of the oil never came over`);
  return result.record.columns.hydrosol_kg[row] as number;
}

describe('common practice, no source', () => {
  it('starts a water distillation with water that covers the charge and leaves room to boil', () => {
    const immersed = examples
      .map(({ id }) => exampleScenario(id))
      .filter((scenario) => scenario.pot.layout === 'water' && scenario.charge.mass_kg > 0);
    expect(immersed.length).toBeGreaterThan(1);
    for (const scenario of immersed) {
      const { pot, charge, name } = scenario;
      const section = (Math.PI / 4) * pot.diameter_m ** 2;
      const level = columnAt(
        simulate({ ...scenario, run: { ...scenario.run, duration_s: 60 } }).record,
        'potDepth_m',
        0,
      );
      expect(level, name).toBeGreaterThan(charge.mass_kg / charge.bulkDensity_kg_m3 / section);
      expect(level, name).toBeLessThan(0.85 * pot.height_m);
    }
  });

  it('sees most oils float and a few sink', () => {
    const sinking = botanicals
      .map((row) => row.id)
      .filter(
        (botanical) =>
          simulate(
            scenarioOf({
              pot: { waterTemperature_K: 371, height_m: 0.6 },
              charge: { botanical, mass_kg: 1 },
              heat: { ratedPower_W: 3000, lag_s: 0 },
              run: { duration_s: 1200 },
            }),
          ).summary.oilSinks,
      );
    expect(sinking).toContain('clove-bud');
    expect(sinking.length).toBeLessThanOrEqual(3);
  }, 60_000);

  it('gets more oil with a litre of water from a gentle boil than from a hard one, and more a minute from the hard one', () => {
    const gentle = lavenderAt(0.45);
    const hard = lavenderAt(1);
    for (const share of [0.3, 0.5]) {
      const [little, much] = [waterFor(gentle, share), waterFor(hard, share)];
      expect(little, `${share}: ${little} kg against ${much} kg`).toBeLessThan(0.9 * much);
    }
    expect(hard.summary.t50_s as number).toBeLessThan(gentle.summary.t50_s as number);
  });

  it('catches water with a little oil', () => {
    for (const { id } of examples) {
      const { summary } = simulate(exampleScenario(id));
      const oil = summary.oilCollected_kg + summary.oilDissolved_kg + summary.oilHaze_kg;
      const share = oil / (oil + summary.hydrosol_kg);
      expect(share, id).toBeGreaterThan(0);
      // Cohobation keeps the oil and returns the water, so what is kept holds more of it.
      expect(share, id).toBeLessThan(exampleScenario(id).separator.returnShare > 0 ? 0.25 : 0.05);
    }
  }, 60_000);

  it('gets no hotter steam from a harder flame, only more of it', () => {
    const wide: Parts = {
      condenser: { length_m: 8, insideDiameter_m: 0.02, outsideDiameter_m: 0.022 },
      neck: { bore_m: 0.04 },
      charge: { mass_kg: 0 },
    };
    const [gentle, hard] = [lavenderAt(0.4, wide), lavenderAt(1, wide)] as const;
    const steam = (result: RunResult) =>
      [columnAt(result.record, 'vapourTemperature_K', 3000), columnAt(result.record, 'vapourRate_kg_s', 3000)] as const;
    expect(Math.abs(steam(hard)[0] - steam(gentle)[0])).toBeLessThan(0.1);
    expect(steam(hard)[1]).toBeGreaterThan(2 * steam(gentle)[1]);
  });

  // The hose ends above: on the floor a fast jet mixes the tub, and the coil's lowest turns lie in warmer water.
  it('warms the outlet by turning the tap down', () => {
    for (const kind of ['jacketed-tube', 'coil-in-tub'] as const) {
      const outlet = [0.06, 0.03, 0.012].map((flow) => {
        const { record } = lavenderAt(0.8, {
          condenser: { kind, insideDiameter_m: 0.014, outsideDiameter_m: 0.016, jacketDiameter_m: 0.022, length_m: 3 },
          cooling: { flow_kg_s: at(flow), inlet: 'top' },
          charge: { mass_kg: 0 },
          run: { duration_s: 5000 },
        });
        return [columnAt(record, 'coolantOut_K', 5000), columnAt(record, 'condensateTemperature_K', 5000)] as const;
      });
      for (let k = 1; k < outlet.length; k++) {
        expect(outlet[k]?.[0], kind).toBeGreaterThan((outlet[k - 1]?.[0] as number) + 1);
        expect(outlet[k]?.[1], kind).toBeGreaterThan(outlet[k - 1]?.[1] as number);
      }
    }
  });

  it('loses oil at the outlet when the tub is left to warm through', () => {
    const { summary, events } = simulate(exampleScenario('hard-boiled-lavender'));
    expect(events.some((event) => event.kind === 'vapour-escapes')).toBe(true);
    expect(summary.oilUncondensed_kg).toBeGreaterThan(0.02 * summary.oilInCharge_kg);
    expect(simulate(exampleScenario('gentle-lavender')).summary.oilUncondensed_kg).toBeLessThan(
      1e-6 * summary.oilInCharge_kg,
    );
  });

  it('keeps the pot from running dry by returning the water', () => {
    const left = [0, 0.9].map(
      (returnShare) =>
        lavenderAt(0.8, { separator: { returnShare }, run: { duration_s: 6000 } }).summary.potWaterLeft_kg,
    );
    expect(left[1]).toBeGreaterThan((left[0] as number) + 1);
  });

  it('saves fuel with insulation, and waits longer for a colder filling', () => {
    const bare = lavenderAt(0.8, { run: { duration_s: 5400 } });
    const wrapped = lavenderAt(0.8, {
      run: { duration_s: 5400 },
      pot: { waterTemperature_K: 365, water_kg: 9.5, insulationThickness_m: 0.03 },
    });
    expect(wrapped.summary.hydrosol_kg).toBeGreaterThan(1.03 * bare.summary.hydrosol_kg);
    const cold = lavenderAt(0.8, { pot: { waterTemperature_K: 283, water_kg: 9.5 } });
    expect(cold.summary.firstDrop_s as number).toBeGreaterThan((bare.summary.firstDrop_s as number) + 900);
  });
});
