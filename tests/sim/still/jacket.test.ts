/** Water that stands in a jacket round a tube that is hotter than water in the open can be. */
import { describe, expect, it } from 'vitest';
import { latentHeat, liquidEnthalpy, saturationTemperature, vapourEnthalpy } from '../../../sim/fluids/water.ts';
import { Condenser } from '../../../sim/still/condenser.ts';
import { Jacket } from '../../../sim/still/jacket.ts';
import { Oil } from '../../../sim/still/oil.ts';
import { LiquidStream, VapourStream } from '../../../sim/still/stream.ts';
import { scenarioOf } from './ideal-still.ts';

const AIR_PRESSURE = 101_325;
const BOILING = saturationTemperature(AIR_PRESSURE);
/** Steam of 1.3 bar in the tube, seven kelvin hotter than water in the open. */
const STEAM_PRESSURE = 130_000;
const RATE = 0.0005;

function narrowJacket(flow: 'counterflow' | 'parallel', jacketSupply: 'tap' | 'barrel' = 'tap') {
  const scenario = scenarioOf({
    charge: { mass_kg: 0 },
    condenser: {
      kind: 'jacketed-tube',
      outsideDiameter_m: 0.012,
      insideDiameter_m: 0.01,
      jacketDiameter_m: 0.0126,
      flow,
    },
    cooling: { flow_kg_s: [{ at_s: 0, value: 0, shape: 'step' }], jacketSupply },
  });
  return {
    condenser: new Condenser(scenario, new Oil([{ constituent: 'limonene', share: 1 }])),
    jacket: new Jacket(scenario, AIR_PRESSURE),
  };
}

/** A step of `dt` seconds; returns the heat that the condenser gave, J. */
function step({ condenser, jacket }: ReturnType<typeof narrowJacket>, dt: number, pressure: number): number {
  const vapour = new VapourStream(1);
  const dew = saturationTemperature(pressure);
  vapour.water = RATE * dt;
  vapour.enthalpy = vapour.water * vapourEnthalpy(dew);
  vapour.temperature = dew;
  condenser.step(vapour, new LiquidStream(1), pressure, jacket, dt);
  jacket.step(0, dt);
  return condenser.duty;
}

describe.each(['counterflow', 'parallel'] as const)('water that stands in a narrow jacket, %s', (flow) => {
  it('is warmed by steam below 100 °C to the steam’s temperature, no further, in steps of any length', () => {
    const still = narrowJacket(flow);
    for (const dt of [0.5, 5, 1, 10, ...Array.from({ length: 200 }, () => 4)]) {
      step(still, dt, 90_000);
      // The heat capacity by which the step is foreseen differs from the enthalpy's by a fraction of a percent.
      expect(Math.max(...still.jacket.segmentTemperature)).toBeLessThanOrEqual(still.condenser.dewTemperature + 0.1);
    }
    expect(still.jacket.boils).toBe(false);
    expect(still.condenser.escaped.water).toBeGreaterThan(0.9 * RATE * 4);
  });

  it('boils off at 100 °C by what the tube gives, and then nothing is condensed', () => {
    const still = narrowJacket(flow);
    const { jacket, condenser } = still;
    const start = { mass: jacket.mass(), enthalpy: jacket.enthalpy() };
    let heat = 0;
    let boiled = 0;
    for (let count = 0; count < 400; count++) {
      heat += step(still, 2, STEAM_PRESSURE);
      if (jacket.boils) boiled++;
      expect(Math.max(...jacket.segmentTemperature)).toBeLessThanOrEqual(BOILING + 1e-6);
    }
    expect(boiled).toBeGreaterThan(10);
    expect(jacket.mass()).toBeLessThan(1e-9);
    expect(jacket.evaporated).toBeCloseTo(start.mass, 12);
    // Warmed to the boil and boiled off: the heat that takes, by the steam tables, superheats nothing but the last drops.
    const needed = start.mass * (liquidEnthalpy(BOILING) + latentHeat(BOILING)) - start.enthalpy;
    expect(heat / needed).toBeGreaterThan(1 - 1e-9);
    expect(heat / needed).toBeLessThan(1.01);
    expect(start.enthalpy + heat - jacket.evaporatedEnthalpy).toBeCloseTo(jacket.enthalpy(), 3);
    expect(condenser.duty).toBe(0);
    expect(condenser.escaped.water).toBe(RATE * 2);
  });

  it('is filled up again when the tap is opened', () => {
    const still = narrowJacket(flow);
    const { jacket } = still;
    const full = jacket.mass();
    for (let count = 0; count < 400; count++) step(still, 2, STEAM_PRESSURE);
    jacket.flow = 0.05;
    jacket.inletTemperature = 288.15;
    for (let count = 0; count < 30; count++) step(still, 2, STEAM_PRESSURE);
    expect(jacket.mass()).toBeCloseTo(full, 12);
    expect(jacket.used - jacket.overflow - jacket.evaporated).toBeCloseTo(0, 12);
    expect(still.condenser.escaped.water).toBe(0);
  });
});

describe('a jacket on a barrel', () => {
  it('boils off no more than its barrel gives, and loses neither water nor heat', () => {
    const still = narrowJacket('counterflow', 'barrel');
    const { jacket } = still;
    const start = { mass: jacket.mass(), enthalpy: jacket.enthalpy() };
    jacket.flow = 0.0001;
    let heat = 0;
    for (let count = 0; count < 500; count++) heat += step(still, 5, STEAM_PRESSURE);
    expect(jacket.evaporated).toBeGreaterThan(0.01);
    expect(jacket.mass() + jacket.evaporated + jacket.overflow).toBeCloseTo(start.mass, 9);
    const left = jacket.enthalpy() + jacket.evaporatedEnthalpy + jacket.overflowEnthalpy + jacket.lossEnergy;
    expect((left - start.enthalpy) / heat).toBeCloseTo(1, 9);
  });
});
