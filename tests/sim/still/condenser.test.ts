/** The condenser by itself, fed with steam. */
import { describe, expect, it } from 'vitest';
import { saturationTemperature, vapourEnthalpy } from '../../../sim/fluids/water.ts';
import { CoilTub } from '../../../sim/still/coil-tub.ts';
import { Condenser } from '../../../sim/still/condenser.ts';
import { Oil } from '../../../sim/still/oil.ts';
import { LiquidStream, VapourStream } from '../../../sim/still/stream.ts';
import { scenarioOf } from './ideal-still.ts';

const AIR_PRESSURE = 101_325;

function steamInto(tubFill: number, steps: number): Condenser {
  const scenario = scenarioOf({
    charge: { mass_kg: 0 },
    cooling: { tubFill, flow_kg_s: [{ at_s: 0, value: 0, shape: 'step' }] },
  });
  const oil = new Oil([{ constituent: 'limonene', share: 1 }]);
  const condenser = new Condenser(scenario, oil);
  const tub = new CoilTub(scenario, AIR_PRESSURE);
  const dew = saturationTemperature(AIR_PRESSURE);
  for (let step = 0; step < steps; step++) {
    const vapour = new VapourStream(1);
    vapour.water = 0.0005;
    vapour.enthalpy = 0.0005 * vapourEnthalpy(dew);
    vapour.temperature = dew;
    condenser.step(vapour, new LiquidStream(1), AIR_PRESSURE, tub, 1);
    tub.step(step, 1);
  }
  return condenser;
}

describe('a condenser', () => {
  it('keeps its last temperature of the distillate while a coil above the water condenses nothing', () => {
    const dry = steamInto(0.1, 5);
    expect(dry.condensate.water).toBe(0);
    expect(dry.escaped.water).toBe(0.0005);
    expect(Number.isFinite(dry.condensateTemperature)).toBe(true);
  });

  it('reports the terms that its length follows from', () => {
    const { terms, condensing, condensingLength, segmentLength, duty, condensate } = steamInto(1, 60);
    expect(terms.vapourEnthalpy - terms.asLiquid).toBe(terms.latent);
    expect(condensingLength).toBe((terms.whole + terms.left / terms.possible) * segmentLength);
    expect(terms.vapourEnthalpy - duty).toBe(condensate.enthalpy);
    expect(condensing[terms.whole] as number).toBeGreaterThan(0);
  });
});
