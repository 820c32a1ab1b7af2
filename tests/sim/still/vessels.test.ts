/** Fire, walls, vapour space and tub, each by itself against what a short calculation gives. */
import { describe, expect, it } from 'vitest';
import { WATER_MOLAR_MASS } from '../../../sim/constants.ts';
import {
  latentHeat,
  liquidEnthalpy,
  liquidHeatCapacity,
  saturationTemperature,
  vapourDensity,
  vapourEnthalpy,
} from '../../../sim/fluids/water.ts';
import { tableLiquidEnthalpy } from '../../../sim/fluids/water-table.ts';
import { HeatSource } from '../../../sim/still/heat-source.ts';
import { Oil } from '../../../sim/still/oil.ts';
import { LiquidStream, VapourStream } from '../../../sim/still/stream.ts';
import { LossTable, surfaceFlux, surfaceLoss, type LossSurface } from '../../../sim/still/surface-loss.ts';
import { ICE_MELTING, Tub } from '../../../sim/still/tub.ts';
import { VapourSpace } from '../../../sim/still/vapour-space.ts';
import { WallCell } from '../../../sim/still/wall-cell.ts';
import { scenarioOf } from './ideal-still.ts';

const AIR = 293.15;
const P = 101_325;
const steady = (watts: number): LossTable =>
  new LossTable(
    [{ facing: 'up', length: 1, area: 1, emissivity: 1, insulation: 0, insulationConductivity: 1, radius: null }],
    AIR,
    P,
    watts /
      surfaceLoss(
        { facing: 'up', length: 1, area: 1, emissivity: 1, insulation: 0, insulationConductivity: 1, radius: null },
        373.15,
        AIR,
        P,
      ).loss,
  );

describe('a heat source', () => {
  const { heat } = scenarioOf({ heat: { ratedPower_W: 2000, shareToPot: 0.7, lag_s: 120 } });

  it('follows a new setting to 63 % in one lag, whatever the step', () => {
    for (const dt of [0.1, 1, 10]) {
      const source = new HeatSource(heat);
      source.setting = 1;
      for (let time = dt; time <= 120 + 1e-9; time += dt) source.step(dt);
      expect(source.stored / (2000 * 120)).toBeCloseTo(1 - Math.exp(-1), 9);
    }
  });

  it('loses nothing: what it takes it gives, keeps or misses with', () => {
    const source = new HeatSource(heat);
    let [taken, given, missed] = [0, 0, 0];
    for (let step = 0; step < 900; step++) {
      source.setting = step < 400 ? 1 : 0.2;
      source.step(1);
      taken += source.taken;
      given += source.toPot;
      missed += source.missed;
    }
    expect(given + missed + source.stored).toBeCloseTo(taken, 5);
    expect(given / (given + missed)).toBeCloseTo(0.7, 12);
  });

  it('gives at once what it takes when it has no lag', () => {
    const source = new HeatSource({ ...heat, lag_s: 0 });
    source.setting = 0.5;
    source.step(1);
    expect(source.toPot).toBeCloseTo(700, 9);
    expect(source.stored).toBe(0);
  });
});

describe('heat lost by a surface', () => {
  const side: LossSurface = {
    facing: 'side',
    length: 0.4,
    area: 2,
    emissivity: 0.2,
    insulation: 0,
    insulationConductivity: 0.04,
    radius: null,
  };

  it('is about 574 W/m² for a bare side of 0.4 m at 95 °C in air at 20 °C, and 697 W/m² for a lid of 0.3 m (independent evaluation)', () => {
    expect(surfaceFlux('side', 0.4, 0.2, 368.15, AIR, P).flux).toBeCloseTo(574, -1);
    expect(surfaceFlux('up', 0.3 / 4, 0.2, 368.15, AIR, P).flux).toBeCloseTo(697, -1);
  });

  it('is none without a difference, and turns round below it', () => {
    expect(surfaceLoss(side, AIR, AIR, P).loss).toBe(0);
    expect(surfaceLoss(side, AIR - 10, AIR, P).loss).toBeLessThan(0);
  });

  it('falls steadily with insulation, from the bare loss at a hair’s thickness to conduction alone when thick', () => {
    const losses = [0, 1e-12, 1e-4, 0.01, 0.05, 0.2].map(
      (insulation) => surfaceLoss({ ...side, insulation }, 368.15, AIR, P).loss,
    );
    expect(losses[1]).toBeCloseTo(losses[0] as number, 4);
    for (let k = 2; k < losses.length; k++) expect(losses[k]).toBeLessThan(losses[k - 1] as number);
    expect(losses[5] as number).toBeLessThan((2 * 75 * 0.04) / 0.2);
    expect(losses[5] as number).toBeGreaterThan((0.9 * 2 * 75 * 0.04) / 0.2);
  });

  it('is read from its table within a quarter of a percent', () => {
    const table = new LossTable([side], AIR, P, 1);
    for (let T = 300; T <= 400; T += 3.3)
      expect(Math.abs(table.at(T) / surfaceLoss(side, T, AIR, P).loss - 1), `${T} K`).toBeLessThan(
        T > 310 ? 0.0025 : 0.03,
      );
  });
});

/** A kilogram of saturated steam, with oil if given. */
function steam(oil: Oil, water: number, T: number, oilMass = 0): VapourStream {
  const stream = new VapourStream(oil.count);
  stream.water = water;
  stream.oil[0] = oilMass;
  stream.temperature = T;
  stream.enthalpy = water * vapourEnthalpy(T) + oil.latentOf(stream.oil) + oilMass * oil.heatCapacity * (T - 273.16);
  return stream;
}

describe('a wall that vapour passes', () => {
  const oil = new Oil([{ constituent: 'limonene', share: 1 }]);
  const dew = saturationTemperature(P);

  it('takes all the steam while it is cold, then its heat loss and no more', () => {
    const wall = new WallCell(1000, steady(100), oil, AIR);
    const drip = new LiquidStream(1);
    let condensed = 0;
    for (let step = 0; step < 400; step++) {
      const passing = steam(oil, 0.0005, dew);
      wall.step(passing, P, drip, 1);
      condensed += drip.water;
      if (step < 20) expect(passing.water).toBe(0);
      expect(passing.water + drip.water).toBeCloseTo(0.0005, 15);
    }
    expect(wall.temperature).toBeCloseTo(dew, 6);
    expect(drip.water * latentHeat(dew)).toBeCloseTo(100, 0);
    expect(condensed * latentHeat(dew)).toBeGreaterThan(1000 * (dew - AIR));
  });

  it('condenses water alone while the vapour is lean in oil, and both from saturation on', () => {
    const wall = new WallCell(1e-6, steady(400), oil, dew);
    const lean = steam(oil, 0.001, dew, 0.00002);
    const drip = new LiquidStream(1);
    wall.step(lean, P, drip, 1);
    expect(drip.water).toBeGreaterThan(0.0001);
    expect(drip.oil[0]).toBe(0);
    const rich = steam(oil, 0.001, dew, 0.0006);
    const before = oil.saturation(
      rich.oil,
      rich.water,
      saturationTemperature(P / (1 + oil.molarRatio(rich.oil, rich.water))),
    );
    expect(before).toBeGreaterThan(0.8);
    wall.step(rich, P, drip, 1);
    expect(drip.oil[0] as number).toBeGreaterThan(0);
    expect(oil.saturation(rich.oil, rich.water, rich.temperature)).toBeLessThanOrEqual(1.0001);
  });

  it('keeps enthalpy: what came less what left is in the wall or lost', () => {
    const wall = new WallCell(500, steady(50), oil, 320);
    const drip = new LiquidStream(1);
    for (let step = 0; step < 60; step++) {
      const passing = steam(oil, 0.0004, dew, 0.0001);
      const [came, stood] = [passing.enthalpy, wall.heat()];
      wall.step(passing, P, drip, 1);
      expect(passing.enthalpy + drip.enthalpy + wall.heat() - stood + wall.loss).toBeCloseTo(came, 8);
    }
  });
});

describe('the vapour space', () => {
  const oil = new Oil([{ constituent: 'limonene', share: 1 }]);

  it('lets nothing out until it is full, then as much as comes, and forgets what was in it', () => {
    const space = new VapourSpace(0.02, P, oil.molarMass);
    const T = saturationTemperature(P);
    const full = 0.02 * vapourDensity(T);
    let out = 0;
    for (let step = 0; step < 300; step++) {
      const passing = steam(oil, 0.0005, T, step < 10 ? 0.0003 : 0);
      space.pass(passing);
      out += passing.water;
    }
    expect(space.water / full).toBeCloseTo(1, 5);
    expect(out).toBeCloseTo(300 * 0.0005 - full, 6);
    expect(space.oil[0] as number).toBeLessThan(1e-3 * 0.003);
  });

  it('lets no more moles out than come in when they turn rich in oil and cooler', () => {
    const space = new VapourSpace(0.02, P, oil.molarMass);
    const T = saturationTemperature(P);
    for (let step = 0; step < 50; step++) space.pass(steam(oil, 0.0005, T, 0));
    const moles = ({ water, oil: [limonene = 0] }: { water: number; oil: Float64Array }): number =>
      water / WATER_MOLAR_MASS + limonene / (oil.molarMass[0] as number);
    const rich = steam(oil, 0.0005, T - 5, 0.0003);
    const came = moles(rich);
    space.pass(rich);
    expect(moles(rich)).toBeCloseTo(came, 12);
  });
});

describe('a tub', () => {
  const { cooling, site } = scenarioOf({
    site: { airTemperature_K: AIR },
    cooling: { tubDiameter_m: 0.4, tubHeight_m: 0.5, startTemperature_K: AIR },
  });
  const tubOf = (layers: number, more: Partial<typeof cooling> = {}): Tub =>
    new Tub({ ...cooling, ...more }, site, P, { heatLoss: 0, evaporation: 1, jetMixing: 1 }, layers);

  it('warms where the heat goes in and above, never below', () => {
    const tub = tubOf(5);
    for (let step = 0; step < 600; step++) {
      tub.addHeat(2, 1000);
      tub.step(step, 0, 0, 1);
    }
    const T = [...tub.temperature];
    expect(T[0]).toBeCloseTo(T[2] as number, 9);
    expect(T[3]).toBeCloseTo(AIR, 3);
    const rise = 600_000 / (3 * tub.layerMass() * liquidHeatCapacity(300));
    expect((T[0] as number) - AIR).toBeCloseTo(rise, 1);
  });

  it('is pushed up by water let in at the bottom, the top running over', () => {
    const tub = tubOf(4, { startTemperature_K: 330 });
    for (let step = 0; step < 2000; step++) tub.step(step, 0.01, 285, 1);
    expect(tub.overflow).toBeCloseTo(20, 9);
    const T = [...tub.temperature];
    for (let k = 1; k < 4; k++) expect(T[k]).toBeLessThanOrEqual((T[k - 1] as number) + 1e-9);
    expect(T[3]).toBeLessThan(310);
    expect(T[0]).toBeGreaterThan(325);
    expect(tub.water).toBeCloseTo(tub.fullMass, 9);
  });

  it('keeps its enthalpy: heat in is heat stored or run over', () => {
    const tub = tubOf(6);
    const before = tub.enthalpy();
    for (let step = 0; step < 500; step++) {
      tub.addHeat(step % 6, 800);
      tub.step(step, 0.01, 288, 1);
    }
    expect((tub.enthalpy() + tub.overflowEnthalpy - before) / (500 * 800 + 5 * tableLiquidEnthalpy(288))).toBeCloseTo(
      1,
      12,
    );
  });

  it('takes ice at its time, in whatever order it is listed, and several lots at once', () => {
    const tub = tubOf(3, {
      startTemperature_K: 274,
      ice: [
        { at_s: 60, mass_kg: 3 },
        { at_s: 0, mass_kg: 2 },
        { at_s: 60, mass_kg: 1 },
      ],
    });
    const added: number[] = [];
    for (let step = 0; step < 62; step++) {
      tub.step(step, 0, 0, 1);
      added.push(tub.iceAdded);
    }
    expect([added[0], added[59], added[60], added[61]]).toEqual([2, 2, 6, 6]);
  });

  it('comes together the faster the harder it is stirred, to one temperature', () => {
    const spread = (stir_m_s: number): number => {
      const tub = tubOf(6, { stir_m_s });
      tub.addHeat(0, 500_000);
      for (let step = 0; step < 60; step++) tub.step(step, 0, AIR, 1);
      return (tub.temperature[0] as number) - (tub.temperature[5] as number);
    };
    expect(spread(0)).toBeGreaterThan(10);
    expect(spread(0.02)).toBeLessThan(0.95 * spread(0));
    expect(spread(0.04)).toBeLessThan(0.7 * spread(0.02));
    expect(spread(0.2)).toBeLessThan(1e-6);
  });

  /** A tub of 60 °C that has taken in half a filling of 15 °C: bottom, middle and surface, °C. */
  const filled = (flow: number, more: Partial<typeof cooling>): number[] => {
    const tub = tubOf(12, { startTemperature_K: 333.15, ...more });
    const steps = Math.round((0.5 * tub.fullMass) / flow);
    for (let step = 0; step < steps; step++) tub.step(step, flow, 288.15, 1);
    return [tub.temperature[11] as number, tub.temperature[6] as number, tub.surface()].map((T) => T - 273.15);
  };

  it('stays cold below and warm above when a slow hose lies on the floor, and mixes with a nozzle, a fast hose or one from above', () => {
    const [bottom, , surface] = filled(0.7 / 60, { inlet: 'laid' }) as [number, number, number];
    expect(bottom).toBeLessThan(18);
    expect(surface).toBeGreaterThan(59);
    const upward = filled(0.7 / 60, { inlet: 'pointing-up' })[0] as number;
    const nozzle = filled(0.7 / 60, { inlet: 'pointing-up', hoseBore_m: 0.006 })[0] as number;
    expect(upward).toBeGreaterThan(bottom + 1);
    expect(nozzle).toBeGreaterThan(upward + 5);
    expect(filled(0.7 / 60, { inlet: 'perforated', holes: 20, holeBore_m: 0.006 })[0] as number).toBeLessThan(
      bottom + 1,
    );
    for (const [flow, more] of [
      [10 / 60, { inlet: 'laid' as const }],
      [1 / 60, { inlet: 'top' as const }],
    ] as const) {
      const [low, middle, high] = filled(flow, more) as [number, number, number];
      expect(high - low).toBeLessThan(8);
      expect(middle).toBeGreaterThan(35);
    }
  });

  it('says how deep the incoming water mixes it', () => {
    const depth = (flow: number, more: Partial<typeof cooling>): number => {
      const tub = tubOf(12, { startTemperature_K: 333.15, ...more });
      tub.step(0, flow, 288.15, 1);
      return tub.mixedDepth();
    };
    expect(depth(0, {})).toBe(0);
    expect(depth(0.3 / 60, { inlet: 'laid' })).toBeLessThan(0.01);
    expect(depth(2 / 60, { inlet: 'laid' })).toBeGreaterThan(0.06);
    expect(depth(2 / 60, { inlet: 'pointing-up' })).toBeGreaterThan(depth(2 / 60, { inlet: 'laid' }));
    expect(depth(1 / 60, { inlet: 'top' })).toBeCloseTo(0.5, 9);
  });

  it('never freezes, however shallow the water and however strong the draught', () => {
    const dry = { ...site, airSpeed_m_s: 5, relativeHumidity: 0 };
    const tub = new Tub(
      { ...cooling, tubHeight_m: 0.05, tubFill: 0.1, startTemperature_K: 353 },
      dry,
      P,
      { heatLoss: 10, evaporation: 10, jetMixing: 1 },
      6,
    );
    for (let step = 0; step < 60; step++) tub.step(10 * step, 0, AIR, 10);
    for (const T of tub.temperature) expect(T).toBeGreaterThan(273);
  });

  it('melts the ice that is put on it, and is cooler for it by 333.6 kJ a kilogram', () => {
    const tub = tubOf(1, { startTemperature_K: 323.15, tubFill: 0.8, ice: [{ at_s: 10, mass_kg: 2 }] });
    const water = tub.water;
    for (let step = 0; step < 7200; step++) tub.step(step, 0, 0, 1);
    expect(tub.ice).toBeLessThan(1e-9);
    expect(tub.water).toBeCloseTo(water + 2, 9);
    const expected = (water * liquidEnthalpy(323.15) - 2 * ICE_MELTING) / (water + 2);
    expect(liquidEnthalpy(tub.temperature[0] as number) / expected).toBeCloseTo(1, 6);
  });
});
