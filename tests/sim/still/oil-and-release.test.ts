/** The oil’s tables, the release of oil from a plant cell and its parting in the separator, each by itself. */
import { oilMoles } from '../../../sim/scenario/presets.ts';
import { describe, expect, it } from 'vitest';
import { constituentById, liquidDensity, vapourPressure, waterSolubility } from '../../../sim/fluids/constituents.ts';
import { saturationOilPerSteam } from '../../../sim/fluids/immiscible.ts';
import { liquidDensity as waterDensity, liquidEnthalpy, saturationPressure } from '../../../sim/fluids/water.ts';
import { chargeFromBotanical, constituents, type Scenario } from '../../../sim/index.ts';
import { Oil } from '../../../sim/still/oil.ts';
import { Release } from '../../../sim/still/release.ts';
import { Separator } from '../../../sim/still/separator.ts';
import { ENTHALPY_ZERO, LiquidStream } from '../../../sim/still/stream.ts';
import { LossTable } from '../../../sim/still/surface-loss.ts';
import { scenarioOf } from './ideal-still.ts';

const BOIL = 373.15;

describe('the oil’s tables', () => {
  const oil = new Oil(constituents.slice(0, 12).map((row) => ({ constituent: row.id, share: 1 / 12 })));

  it.each([[293.15], [330.1], [371.77], [399.9]])('agree with the formulas at %d K', (T) => {
    oil.ids.forEach((id, i) => {
      const row = constituentById(id);
      expect(oil.pressureRatio(i, T) / (vapourPressure(row, T) / saturationPressure(T)), id).toBeCloseTo(1, 3);
      if (T < BOIL)
        expect(oil.solubilityRatio(i, T) / (waterSolubility(row, T) / waterDensity(T)), id).toBeCloseTo(1, 3);
      const only = new Float64Array(oil.count);
      only[i] = 1;
      expect(oil.mixtureDensity(only, T) / liquidDensity(row, T), id).toBeCloseTo(1, 4);
    });
  });

  it('call vapour saturated when it holds what water and oil together give off', () => {
    const one = new Oil([{ constituent: 'limonene', share: 1 }]);
    const mass = new Float64Array([saturationOilPerSteam(370, [1], [constituentById('limonene')])]);
    expect(one.saturation(mass, 1, 370)).toBeCloseTo(1, 4);
    expect(one.saturation(new Float64Array([0]), 1, 370)).toBe(0);
  });
});

const EQUAL = [
  { constituent: 'linalool', share: 0.5 },
  { constituent: 'limonene', share: 0.5 },
];

const plant = (release: Partial<Scenario['charge']['release']>, more: Partial<Scenario['charge']> = {}): Scenario => {
  const base = scenarioOf({}).charge;
  return scenarioOf({
    charge: {
      ...base,
      botanical: 'own',
      mass_kg: 1,
      moisture: 0.5,
      oilContent: 0.02,
      composition: EQUAL,
      ...more,
      release: { ...base.release, ...release },
    },
  });
};
const each = (value: number) => ({ hydrocarbon: value, oxygenate: value, sesquiterpene: value });

describe('the release of oil', () => {
  it('frees held oil first-order, once hot and wet: nothing below 60 °C, slower when dry, by Arrhenius in between', () => {
    const scenario = plant({ readyShare: each(0), heldRate_1_s: each(0.001), activationEnergy_J_mol: 60_000 });
    const oil = new Oil(scenario.charge.composition);
    const freed = (T: number, water: number): number => {
      const release = new Release(scenario, oil, 1);
      for (let step = 0; step < 100; step++) release.advance(0, T, water, 1);
      return -Math.log(release.total(release.held) / 0.01) / 100;
    };
    expect(freed(330, 1)).toBeCloseTo(0, 12);
    expect(freed(BOIL, 1)).toBeCloseTo(0.001, 7);
    expect(freed(363.15, 1) / 0.001).toBeCloseTo(Math.exp((-60_000 / 8.314462618) * (1 / 363.15 - 1 / BOIL)), 3);
    expect(freed(BOIL, 0.05)).toBeLessThan(0.0005);
  });

  it('saturates the steam with Raoult’s share while oil lies open, and none slips past but the bypass', () => {
    for (const bypass of [0, 0.3]) {
      const scenario = plant(
        { readyShare: each(1), takeUp: each(1000), takeUpExponent: 1, halfCoverage_mol_kg: 0 },
        { bypass },
      );
      const oil = new Oil(scenario.charge.composition);
      const release = new Release(scenario, oil, 1);
      release.setApproach(1, 0.01);
      const out = new Float64Array(2);
      release.takeUp(0, 371, 1e-6, new Float64Array(2), out);
      expect(oil.saturation(out, 1e-6, 371)).toBeCloseTo(1 - bypass, 3);
    }
  });

  it('leaves the last traces first-order: half the driving force at half coverage', () => {
    const scenario = plant(
      { readyShare: each(1), takeUp: each(1000), takeUpExponent: 1, halfCoverage_mol_kg: 0.5 * oilMoles(0.02, EQUAL) },
      { bypass: 0 },
    );
    const oil = new Oil(scenario.charge.composition);
    const release = new Release(scenario, oil, 1);
    release.ready.forEach((mass, i) => (release.ready[i] = 0.5 * mass));
    release.setApproach(1, 0.01);
    const out = new Float64Array(2);
    release.takeUp(0, 371, 1e-7, new Float64Array(2), out);
    expect(oil.saturation(out, 1e-7, 371)).toBeCloseTo(0.5, 3);
  });

  it('takes up less from each kilogram of fast steam, more each second', () => {
    const scenario = plant({ readyShare: each(1), takeUp: each(0.05), takeUpExponent: 0.4 });
    const oil = new Oil(scenario.charge.composition);
    const taken = (G: number): number => {
      const release = new Release(scenario, oil, 1);
      release.setApproach(0.1, G);
      const out = new Float64Array(2);
      release.takeUp(0, 371, G * 0.01, new Float64Array(2), out);
      return (out[0] as number) + (out[1] as number);
    };
    expect(taken(0.04) / 0.04).toBeLessThan(taken(0.01) / 0.01);
    expect(taken(0.04)).toBeGreaterThan(taken(0.01));
  });

  it('never leaves a negative stock, however much steam passes in a step', () => {
    const scenario = plant({ readyShare: each(1), takeUp: each(1000), takeUpExponent: 1, halfCoverage_mol_kg: 0 });
    const oil = new Oil(scenario.charge.composition);
    const release = new Release(scenario, oil, 1);
    release.setApproach(1, 0.01);
    const out = new Float64Array(2);
    let over = 0;
    for (let step = 0; step < 50; step++) {
      release.takeUp(0, 371, 1000, new Float64Array(2), out);
      over += (out[0] as number) + (out[1] as number);
      expect(Math.min(...release.ready)).toBeGreaterThanOrEqual(0);
      expect(Number.isFinite(over)).toBe(true);
    }
    expect(over).toBeCloseTo(0.01, 12);
  });

  it('turns linalyl acetate to linalool in the ratio of their molar masses, at its rate', () => {
    const scenario = plant(
      { readyShare: each(1), heldRate_1_s: each(0) },
      { composition: [{ constituent: 'linalyl_acetate', share: 1 }], hydrolysisBed_1_s: 0.0001 },
    );
    const oil = new Oil(scenario.charge.composition);
    const release = new Release(scenario, oil, 1);
    let water = 0;
    for (let step = 0; step < 1000; step++) water += release.advance(0, BOIL, 1, 1);
    expect(release.hydrolysed).toBeCloseTo(0.01 * (1 - Math.exp(-0.1)), 7);
    expect(release.alcoholFormed / release.hydrolysed).toBeCloseTo(154.253 / 196.29, 4);
    expect(water / release.hydrolysed).toBeCloseTo(18.015 / 196.29, 4);
    expect(release.total(release.ready)).toBeCloseTo(0.01 - release.hydrolysed + release.alcoholFormed, 12);
  });
});

describe('the separator', () => {
  const scenario = scenarioOf({
    charge: { ...chargeFromBotanical('lavender-true'), mass_kg: 1 },
    separator: { bore_m: 0.06, height_m: 0.2 },
  });
  const oil = new Oil(scenario.charge.composition);
  const entering = (water: number, oilMass: number, T: number): LiquidStream => {
    const stream = new LiquidStream(oil.count);
    stream.water = water;
    scenario.charge.composition.forEach(({ share }, i) => (stream.oil[i] = oilMass * share));
    stream.enthalpy = water * liquidEnthalpy(T) + oilMass * oil.heatCapacity * (T - ENTHALPY_ZERO);
    return stream;
  };
  const separatorOf = (): Separator => new Separator(scenario, oil, new LossTable([], 293.15, 101_325, 0));

  it('parts every constituent into caught, dissolved and haze, to the last bit or nearly', () => {
    const separator = separatorOf();
    const stream = entering(0.0005, 0.00001, 300);
    separator.step(stream, 1);
    for (let i = 0; i < oil.count; i++)
      expect(
        (separator.caught[i] as number) + (separator.dissolving[i] as number) + (separator.hazing[i] as number),
      ).toBeCloseTo(stream.oil[i] as number, 18);
  });

  it('dissolves all of a trace, and of plenty what Raoult’s law and the solubilities allow', () => {
    const separator = separatorOf();
    separator.step(entering(0.0005, 1e-12, 293.15), 1);
    expect(separator.caught.every((mass) => Math.abs(mass) < 1e-20)).toBe(true);
    const plenty = entering(0.0005, 0.0005, 293.15);
    separator.step(plenty, 1);
    const moles = oil.ids.map((_, i) => (plenty.oil[i] as number) / (oil.molarMass[i] as number));
    const all = moles.reduce((sum, n) => sum + n, 0);
    oil.ids.forEach((id, i) => {
      const expected = ((moles[i] as number) / all) * 0.0005 * oil.solubilityRatio(i, separator.temperature);
      if (expected > 0) expect((separator.dissolving[i] as number) / expected, id).toBeCloseTo(1, 1);
    });
  });

  it('warms towards what runs in and keeps its enthalpy', () => {
    const separator = separatorOf();
    let came = separator.enthalpy;
    for (let step = 0; step < 12_000; step++) {
      const stream = entering(0.0005, 0.000005, 310);
      came += stream.enthalpy;
      separator.step(stream, 1);
      separator.keep(1);
    }
    expect(separator.temperature).toBeCloseTo(310, 1);
    expect((separator.enthalpy + separator.productEnthalpy) / came).toBeCloseTo(1, 12);
  });
});
