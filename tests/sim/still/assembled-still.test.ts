/**
 * The whole still in situations whose answer a calculation by hand knows. Each test works the answer out from the fluid
 * properties (IAPWS formulations) and the relations of `tests/sim/second-methods`, not from the still's own tables.
 */
import { describe, expect, it } from 'vitest';
import { constituentById } from '../../../sim/fluids/constituents.ts';
import { coBoilingTemperature, saturationOilPerSteam } from '../../../sim/fluids/immiscible.ts';
import {
  latentHeat,
  liquidDensity,
  liquidEnthalpy,
  liquidHeatCapacity,
  liquidViscosity,
  saturationTemperature,
  vapourEnthalpy,
} from '../../../sim/fluids/water.ts';
import { chargeFromBotanical, columnAt, findMaterial, simulate, type Scenario } from '../../../sim/index.ts';
import { Oil } from '../../../sim/still/oil.ts';
import { Separator } from '../../../sim/still/separator.ts';
import { ENTHALPY_ZERO, LiquidStream } from '../../../sim/still/stream.ts';
import { LossTable } from '../../../sim/still/surface-loss.ts';
import { bareLoss } from '../second-methods/outside-films.ts';
import { coilLength } from '../second-methods/condenser-chain.ts';
import { BOILS_AT_100_C, idealStill, runTo } from './ideal-still.ts';

const K = 273.15;
const HOUR = 3600;
const G = 9.80665;
const copper = findMaterial('copper').conductivity_W_mK.value;

const relative = (found: number, wanted: number): number => Math.abs(found / wanted - 1);

/** A tub so large that a short run does not warm it. */
const lake = { tubDiameter_m: 3, tubHeight_m: 3, flow_kg_s: [{ at_s: 0, value: 0 }] };

describe('the boil', () => {
  it('makes P/h_fg of steam: 2000 W less 250 W give 2.792 kg/h', () => {
    const run = runTo(
      idealStill({ heat: { ratedPower_W: 2000, shareToPot: 0.875 }, cooling: { ...lake, startTemperature_K: K + 20 } }),
      900,
    );
    const steam = run.still.pot.out.water / run.stepLength;
    expect(relative(steam, 1750 / latentHeat(saturationTemperature(101_325 + run.still.gauge())))).toBeLessThan(1e-4);
    expect(relative(steam * HOUR, 2.791884)).toBeLessThan(0.002);
  });

  it('makes P/(h_v − h_l,feed) when as much cold water runs back: 3200 W and 20 °C give 4.445 kg/h', () => {
    const run = runTo(
      idealStill({
        heat: { ratedPower_W: 3200 },
        condenser: { length_m: 40, coilDiameter_m: 0.5, insideDiameter_m: 0.016, outsideDiameter_m: 0.018 },
        cooling: { ...lake, startTemperature_K: K + 20 },
        separator: { bore_m: 0.02, height_m: 0.06, returnShare: 1 },
      }),
      1800,
    );
    const { pot, separator } = run.still;
    const steam = pot.out.water / run.stepLength;
    expect(separator.temperature - K).toBeCloseTo(20, 0);
    expect(
      relative(steam, 3200 / (vapourEnthalpy(pot.boilingTemperature) - liquidEnthalpy(separator.temperature))),
    ).toBeLessThan(1e-3);
    expect(relative(steam * HOUR, 4.4452704)).toBeLessThan(0.002);
  });

  it('comes after ΣM c ΔT / P: 20 L from 15 °C with 2550 W in 46.48 min and the time its wall takes', () => {
    const scenario = idealStill({
      heat: { ratedPower_W: 3000, shareToPot: 0.85 },
      pot: {
        water_kg: 20 * 0.99905,
        waterTemperature_K: K + 15,
        wallThickness_m: 0.0005,
        diameter_m: 0.3,
        height_m: 0.4,
      },
      run: { duration_s: 4000 },
    });
    const boil = saturationTemperature(101_325);
    const steel = findMaterial('stainless-steel');
    const wetted = scenario.pot.water_kg / 998 / ((Math.PI / 4) * 0.3 ** 2);
    const wall =
      steel.density_kg_m3.value *
      steel.heatCapacity_J_kgK.value *
      0.0005 *
      ((Math.PI / 4) * 0.3 ** 2 + Math.PI * 0.3 * wetted);
    const water = scenario.pot.water_kg * (liquidEnthalpy(boil) - liquidEnthalpy(K + 15));
    const found = simulate(scenario).summary.firstBoil_s as number;
    const byHand = (water + wall * (boil - K - 15)) / 2550;
    // The first steam is seen at the end of the step in which it rises.
    expect(Math.abs(found - byHand)).toBeLessThan(2);
    expect(relative(found - (wall * (boil - K - 15)) / 2550, 46.480421 * 60)).toBeLessThan(0.003);
  });

  // Boiling points at geometric altitude: ISO 2533 pressure and the IF97 saturation line.
  it.each([
    [0, 99.9743],
    [500, 98.312612],
    [1500, 94.984178],
    [3000, 89.977032],
  ])('stands at its altitude’s temperature: %d m, %d °C', (altitude_m, published) => {
    const run = runTo(
      idealStill({
        site: { altitude_m, barometer_Pa: null },
        pot: { waterTemperature_K: K + 85 },
        heat: { ratedPower_W: 1500 },
        condenser: { insideDiameter_m: 0.02, outsideDiameter_m: 0.022 },
        cooling: { ...lake },
      }),
      900,
    );
    expect(run.still.pot.out.water).toBeGreaterThan(0);
    expect(Math.abs(run.still.pot.temperature - K - published)).toBeLessThan(0.02);
  });
});

describe('the loss to the air', () => {
  const bare = { diameter_m: 0.3, height_m: 0.4, emissivity: 0.2, waterTemperature_K: 372, wallThickness_m: 0.0003 };
  const calm = { heat: { ratedPower_W: 2000 }, factors: { heatLoss: 1 }, cooling: lake };

  it.each([
    ['water in which the plant would lie', 10, { layout: 'water' }, []],
    ['water under a grid', 7, { layout: 'water-and-steam', gridHeight_m: 0.2 }, []],
    ['little water under a grid', 3, { layout: 'water-and-steam', gridHeight_m: 0.2 }, []],
    ['a separate boiler', 5, { layout: 'steam' }, [{ D: 0.25, H: 0.35 }]],
  ] as const)(
    'is that of every side and lid with steam or boiling water behind it: %s',
    (_, water_kg, layout, boiler) => {
      const run = runTo(
        idealStill({
          ...calm,
          pot: { ...bare, ...layout, water_kg },
          boiler: { diameter_m: 0.25, height_m: 0.35, insulationThickness_m: 0 },
        }),
        1200,
      );
      const { pot, head, airPressure } = run.still;
      expect(pot.out.water).toBeGreaterThan(0);
      const byHand = bareLoss([{ D: 0.3, H: 0.4 }, ...boiler], 0.2, pot.temperature, airPressure);
      expect(relative((pot.loss + head.loss) / run.stepLength, byHand), `${byHand} W by hand`).toBeLessThan(0.005);
    },
  );

  it('does not fall as the water does', () => {
    const run = runTo(idealStill({ ...calm, pot: { ...bare, layout: 'water', water_kg: 10 } }), 900);
    const { pot, head } = run.still;
    const full = (pot.loss + head.loss) / run.stepLength;
    const before = pot.water;
    run.advance(7200);
    expect(before - pot.water).toBeGreaterThan(4);
    expect(relative((pot.loss + head.loss) / run.stepLength, full)).toBeLessThan(0.002);
  });
});

describe('a separate boiler', () => {
  // Wet steam of dryness x carries (1 − x)/x of water for a kilogram of vapour.
  it.each([
    ['waste', 0],
    ['waste', 1],
    ['boiler', 0],
    ['boiler', 1],
  ] as const)('loses vapour over dryness when what drains goes to %s, %d kg of plant', (drain, mass_kg) => {
    const run = runTo(
      idealStill({
        heat: { ratedPower_W: 2000 },
        pot: { layout: 'steam', water_kg: 8, wallThickness_m: 0.0002 },
        boiler: { dryness: 0.8, drain },
        charge: { mass_kg },
        cooling: lake,
      }),
      1800,
    );
    const { still } = run;
    const { pot } = still;
    const [before, overBefore] = [pot.water, still.keptWater];
    run.advance(2400);
    const lost = before - pot.water;
    const over = still.keptWater - overBefore;
    expect(over).toBeGreaterThan(0.3);
    expect(relative(lost, drain === 'waste' ? over / 0.8 : over)).toBeLessThan(0.003);
  });
});

describe('the condenser’s heat', () => {
  const steamOf = (kg_h: number): number => (kg_h / HOUR) * latentHeat(saturationTemperature(101_325));

  it('is the drop from steam to distillate: 3 kg/h to 40 °C are 2090 W', () => {
    const run = runTo(
      idealStill({ heat: { ratedPower_W: steamOf(3) }, cooling: { ...lake, startTemperature_K: K + 15 } }),
      900,
    );
    const { condenser } = run.still;
    const [steam, duty] = [run.still.arrivingWater / run.stepLength, condenser.duty / run.stepLength];
    expect(relative(steam * HOUR, 3)).toBeLessThan(2e-4);
    const byHand = steam * (vapourEnthalpy(condenser.dewTemperature) - liquidEnthalpy(condenser.condensateTemperature));
    expect(relative(duty, byHand)).toBeLessThan(1e-4);
    const to40 = duty + steam * (liquidEnthalpy(condenser.condensateTemperature) - liquidEnthalpy(K + 40));
    expect(relative(to40, 2089.9226)).toBeLessThan(0.001);
  });

  it('warms once-through water by Q/(ṁ c_p): 40 kg/h take 3 kg/h from 15 to 60 °C when it leaves at 40 °C', () => {
    const flow = 39.989227 / HOUR;
    const run = runTo(
      idealStill({
        heat: { ratedPower_W: steamOf(3) },
        condenser: {
          kind: 'jacketed-tube',
          insideDiameter_m: 0.012,
          outsideDiameter_m: 0.014,
          jacketDiameter_m: 0.02,
          length_m: 6,
        },
        cooling: {
          jacketSupply: 'tap',
          flow_kg_s: [{ at_s: 0, value: flow }],
          tapTemperature_K: [{ at_s: 0, value: K + 15 }],
          startTemperature_K: K + 15,
        },
      }),
      3000,
    );
    const { condenser, coolant } = run.still;
    const [steam, duty] = [run.still.arrivingWater / run.stepLength, condenser.duty / run.stepLength];
    const rise = liquidEnthalpy(coolant.outletTemperature) - liquidEnthalpy(K + 15);
    expect(relative(rise, duty / flow)).toBeLessThan(1e-4);
    expect(relative(coolant.outletTemperature - K - 15, duty / flow / liquidHeatCapacity(K + 37))).toBeLessThan(2e-3);
    const to40 = duty + steam * (liquidEnthalpy(condenser.condensateTemperature) - liquidEnthalpy(K + 40));
    expect(relative(to40 / (liquidEnthalpy(K + 60) - liquidEnthalpy(K + 15)), flow)).toBeLessThan(0.003);
  });

  it('warms a still tub by ṁ Δh/(M c): 3 kg/h and 60 L give 30.5 K/h', () => {
    const scenario = idealStill({
      heat: { ratedPower_W: steamOf(3) },
      cooling: {
        tubDiameter_m: 0.4,
        tubHeight_m: 0.06 / ((Math.PI / 4) * 0.4 ** 2),
        startTemperature_K: K + 20,
        stir_m_s: 0.1,
        flow_kg_s: [{ at_s: 0, value: 0 }],
      },
      condenser: { coilTopDepth_m: 0.02 },
    });
    const run = runTo(scenario, 300);
    const start = run.still.coolant.meanTemperature();
    const before = run.still.dutyEnergy;
    run.advance(420);
    const { coolant, condenser, dutyEnergy } = run.still;
    const steam = run.still.arrivingWater / run.stepLength;
    const rate = (coolant.meanTemperature() - start) / 120;
    const mass = coolant.mass();
    expect(relative(rate, (dutyEnergy - before) / 120 / (mass * liquidHeatCapacity(K + 25)))).toBeLessThan(2e-3);
    const to30 =
      rate +
      (steam * (liquidEnthalpy(condenser.condensateTemperature) - liquidEnthalpy(K + 30))) /
        (mass * liquidHeatCapacity(K + 20));
    expect(relative(to30 * HOUR, 30.517721)).toBeLessThan(0.003);
  });
});

describe('the length that condenses', () => {
  it('agrees with the chain by hand for 3 kg/h in a 10/12 mm coil, at 20 and at 70 °C water', () => {
    for (const [water, ideal] of [
      [20, 0.45442341],
      [70, 1.2504402],
    ] as const) {
      const run = runTo(
        idealStill({
          site: { barometer_Pa: BOILS_AT_100_C },
          heat: { ratedPower_W: (3 / HOUR) * latentHeat(K + 100) },
          condenser: { insideDiameter_m: 0.01, outsideDiameter_m: 0.012, coilPitch_m: 0.05 },
          cooling: { ...lake, startTemperature_K: K + water },
          // Water at one temperature, as the calculation by hand takes it: the layers of standing water warm round the coil.
          advanced: { segments: 120, tubLayers: 1 },
        }),
        900,
      );
      const { condenser } = run.still;
      const steam = run.still.arrivingWater / run.stepLength;
      const byHand = coilLength(steam, condenser.dewTemperature, K + water, { D_i: 0.01, D_o: 0.012, k: copper });
      expect(relative(condenser.condensingLength, byHand), `${water} °C, by hand ${byHand} m`).toBeLessThan(0.01);
      expect(relative(condenser.condensingLength, ideal), `${water} °C`).toBeLessThan(0.02);
    }
  });

  it('does not care in a jacket whether the water meets the vapour or runs with it', () => {
    const lengths = (['counterflow', 'parallel'] as const).map((flow) => {
      const run = runTo(
        idealStill({
          heat: { ratedPower_W: 2000 },
          condenser: {
            kind: 'jacketed-tube',
            insideDiameter_m: 0.014,
            outsideDiameter_m: 0.016,
            jacketDiameter_m: 0.022,
            length_m: 3,
            flow,
          },
          cooling: {
            jacketSupply: 'tap',
            flow_kg_s: [{ at_s: 0, value: 0.2 }],
            tapTemperature_K: [{ at_s: 0, value: K + 15 }],
            startTemperature_K: K + 15,
          },
          advanced: { segments: 120 },
        }),
        900,
      );
      return run.still.condenser.condensingLength;
    });
    expect(lengths[0]).toBeGreaterThan(0.15);
    expect(relative(lengths[0] as number, lengths[1] as number)).toBeLessThan(0.01);
  });
});

const each = (value: number) => ({ hydrocarbon: value, oxygenate: value, sesquiterpene: value });

/** A charge whose one constituent all lies ready and is taken up as fast as the vapour can hold it. */
const openOil = (constituent: string): Scenario['charge'] => ({
  ...idealStill({}).charge,
  botanical: 'own',
  mass_kg: 1,
  moisture: 0.5,
  oilContent: 0.3,
  holding_kg_kg: 2,
  bypass: 0,
  composition: [{ constituent, share: 1 }],
  release: {
    readyShare: each(1),
    heldRate_1_s: each(0),
    activationEnergy_J_mol: 0,
    takeUp: each(1000),
    takeUpExponent: 1,
    halfCoverage_mol_kg: 0,
  },
});

describe('the oil', () => {
  it.each([
    ['limonene', 'water'],
    ['limonene', 'water-and-steam'],
    ['limonene', 'steam'],
    ['eugenol', 'water'],
    ['eugenol', 'water-and-steam'],
  ] as const)(
    'leaves at the immiscible saturation share when the plant holds nothing back: %s, %s layout',
    (constituent, layout) => {
      const run = runTo(
        idealStill({
          pot: {
            layout,
            water_kg: 3.5,
            diameter_m: 0.2,
            height_m: 0.4,
            wallThickness_m: 0.0002,
            waterTemperature_K: K + 95,
          },
          heat: { ratedPower_W: 1000 },
          charge: openOil(constituent),
          condenser: { insideDiameter_m: 0.02, outsideDiameter_m: 0.022 },
          cooling: lake,
        }),
        layout === 'water' ? 250 : 560,
      );
      const { arrivingOil, arrivingWater, lidTemperature, pot } = run.still;
      const oil = [constituentById(constituent)];
      const together = coBoilingTemperature(101_325 + run.still.gauge(), [1], oil);
      expect(Math.abs(lidTemperature - together)).toBeLessThan(0.05);
      if (layout === 'water') expect(Math.abs(pot.temperature - together)).toBeLessThan(0.05);
      expect(relative(arrivingOil / arrivingWater, saturationOilPerSteam(together, [1], oil))).toBeLessThan(0.005);
    },
  );

  it.each(['water', 'water-and-steam'] as const)(
    'decays at the release rate when all of it is held: first order to 0.5 %, %s layout',
    (layout) => {
      const rate = 0.0006;
      const charge = openOil('linalool');
      const scenario = idealStill({
        pot: { layout, water_kg: 3.5, diameter_m: 0.2, height_m: 0.4, waterTemperature_K: K + 98 },
        heat: { ratedPower_W: 1500 },
        cooling: lake,
        run: { duration_s: 5400 },
        charge: {
          ...charge,
          mass_kg: 0.5,
          oilContent: 0.005,
          release: { ...charge.release, readyShare: each(0), heldRate_1_s: each(rate) },
        },
      });
      const { record } = simulate(scenario);
      const left = (time: number): number =>
        columnAt(record, 'oilHeld_kg', time) + columnAt(record, 'oilReady_kg', time);
      const times = Array.from({ length: 31 }, (_, k) => 1500 + k * 100);
      const mean = times.reduce((sum, time) => sum + time, 0) / times.length;
      const slope =
        times.reduce((sum, time) => sum + (time - mean) * Math.log(left(time)), 0) /
        times.reduce((sum, time) => sum + (time - mean) ** 2, 0);
      expect(relative(-slope, rate)).toBeLessThan(0.005);
    },
  );
});

describe('the separator', () => {
  const lavender = {
    charge: chargeFromBotanical('lavender-true'),
    separator: { bore_m: 0.08, height_m: 0.2 },
    site: { airTemperature_K: K + 30 },
  };

  it('catches whole what rises faster than Q/A: Stokes’ size at the flow and temperature of a run', () => {
    const run = runTo(
      idealStill({
        charge: openOil('limonene'),
        separator: { ...lavender.separator, turbulenceFactor: 1 },
        heat: { ratedPower_W: 2250 },
        cooling: { ...lake, startTemperature_K: K + 20 },
        pot: { diameter_m: 0.3 },
      }),
      250,
    );
    const { separator, condenser, oil } = run.still;
    const T = separator.temperature;
    const drho = liquidDensity(T) - oil.mixtureDensity(condenser.condensate.oil, T);
    const v = condenser.condensate.water / run.stepLength / liquidDensity(T) / ((Math.PI / 4) * 0.08 ** 2);
    expect(relative(separator.cutSize, Math.sqrt((18 * liquidViscosity(T) * v) / (drho * G)))).toBeLessThan(0.005);
  });

  // 60 mL/min through 80 mm by 200 mm with lavender oil at 30 °C (Δρ 120.1 kg/m³, μ 0.797 mPa s): calculated by hand.
  it.each([
    [1, 49e-6],
    [1.5, 60e-6],
  ])('with a turbulence factor of %d cuts lavender drops at %d m', (turbulenceFactor, published) => {
    const scenario = idealStill({ ...lavender, separator: { ...lavender.separator, turbulenceFactor } });
    const oil = new Oil(scenario.charge.composition);
    const separator = new Separator(scenario, oil, new LossTable([], K + 30, 101_325, 0));
    const entering = new LiquidStream(oil.count);
    entering.water = 1e-6 * liquidDensity(K + 30);
    scenario.charge.composition.forEach(({ share }, i) => (entering.oil[i] = 1e-3 * entering.water * share));
    entering.enthalpy =
      entering.water * liquidEnthalpy(K + 30) + entering.oilTotal() * oil.heatCapacity * (K + 30 - ENTHALPY_ZERO);
    for (let step = 0; step < 30; step++) separator.step(entering, 1);
    expect(separator.temperature - K).toBeCloseTo(30, 3);
    expect(separator.cutSize, `Δρ ${separator.densityDifference}`).toBeGreaterThan(published - 0.5e-6);
    expect(separator.cutSize, `Δρ ${separator.densityDifference}`).toBeLessThan(published + 0.5e-6);
  });
});
