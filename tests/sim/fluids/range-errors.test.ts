import { describe, expect, it } from 'vitest';
import { airDensity, airViscosity } from '../../../sim/fluids/air.ts';
import { standardPressure, vapourPressureInAir } from '../../../sim/fluids/atmosphere.ts';
import { constituentById, liquidViscosity, vapourPressure, waterSolubility } from '../../../sim/fluids/constituents.ts';
import { region1Volume } from '../../../sim/fluids/if97-region1.ts';
import { region2Volume } from '../../../sim/fluids/if97-region2.ts';
import { region4SaturationPressure, region4SaturationTemperature } from '../../../sim/fluids/if97-region4.ts';
import { coBoilingTemperature, moleFractions } from '../../../sim/fluids/immiscible.ts';
import { waterConductivityIndustrial, waterViscosity } from '../../../sim/fluids/transport.ts';
import * as water from '../../../sim/fluids/water.ts';

const pinene = constituentById('alpha_pinene');

/** What is asked, and the message it must bring. */
const REFUSALS: readonly (readonly [string, () => number | number[]])[] = [
  ['saturation pressure: temperature 412 K is outside 273.15–403.15 K', () => water.saturationPressure(412)],
  [
    'saturation temperature: pressure 300000 Pa is outside 611.2127–270259.6 Pa',
    () => water.saturationTemperature(300_000),
  ],
  ['liquid density: temperature 273.1 K is outside 273.15–403.15 K', () => water.liquidDensity(273.1)],
  ['latent heat: temperature NaN K is outside 273.15–403.15 K', () => water.latentHeat(Number.NaN)],
  ['liquid Prandtl number: temperature 500 K is outside 273.15–403.15 K', () => water.liquidPrandtl(500)],
  ['surface tension: temperature 500 K is outside 273.15–403.15 K', () => water.surfaceTension(500)],
  ['saturation pressure: temperature 650 K is outside 273.15–647.096 K', () => region4SaturationPressure(650)],
  ['saturation temperature: pressure 600 Pa is outside 611.213–22064000 Pa', () => region4SaturationTemperature(600)],
  ['liquid water volume: temperature 700 K is outside 273.15–623.15 K', () => region1Volume(700, 3e6)],
  ['liquid water volume: pressure 200000000 Pa is outside 3536.589–100000000 Pa', () => region1Volume(300, 2e8)],
  ['liquid water volume: pressure 3000 Pa is outside 3536.589–100000000 Pa', () => region1Volume(300, 3000)],
  ['steam volume: pressure 4000 Pa is outside 0.001–3536.589 Pa', () => region2Volume(300, 4000)],
  ['steam volume: pressure 0 Pa is outside 0.001–3536.589 Pa', () => region2Volume(300, 0)],
  ['steam volume: temperature 1100 K is outside 273.15–1073.15 K', () => region2Volume(1100, 1e5)],
  ['steam volume: pressure 20000000 Pa is outside 0.001–16529270 Pa', () => region2Volume(623.151, 2e7)],
  ['water viscosity: density -1 kg/m³ is outside 0–1250 kg/m³', () => waterViscosity(300, -1)],
  ['steam state: pressure 25000000 Pa is outside', () => waterConductivityIndustrial(640, 25e6)],
  ['air density: temperature 100 K is outside 220–1000 K', () => airDensity(100, 1e5)],
  ['air viscosity: temperature 1200 K is outside 220–1000 K', () => airViscosity(1200)],
  ['standard pressure: altitude 12000 m is outside -2000–11000 m', () => standardPressure(12_000)],
  ['vapour in air: relative humidity 1.2 is outside 0–1', () => vapourPressureInAir(300, 1.2)],
  ['vapour pressure of alpha-pinene: temperature 500 K is outside 253.15–453.15 K', () => vapourPressure(pinene, 500)],
  [
    'water solubility of alpha-pinene: temperature 400 K is outside 273.15–373.15 K',
    () => waterSolubility(pinene, 400),
  ],
  [
    'liquid viscosity of alpha-santalol: temperature 254 K is outside',
    () => liquidViscosity(constituentById('alpha_santalol'), 254),
  ],
  [
    'co-boiling temperature: pressure 500 Pa is outside 611.2127–270259.6 Pa',
    () => coBoilingTemperature(500, [1], [pinene]),
  ],
  ['co-boiling temperature: 2 fractions for 1 constituents', () => coBoilingTemperature(1e5, [0.5, 0.5], [pinene])],
  [
    'co-boiling temperature: sum of the fractions 0.9 is outside 0.999999–1.000001',
    () => coBoilingTemperature(1e5, [0.9], [pinene]),
  ],
  ['mole fractions: fraction -0.1 is outside 0–1.000001', () => moleFractions([-0.1, 1.1], [pinene, pinene])],
];

describe('a property asked for outside its range', () => {
  it.each(REFUSALS)('answers “%s”', (message, ask) => {
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(message);
  });

  it('refuses an unknown constituent by its id', () => {
    expect(() => constituentById('unobtainium')).toThrow(new RangeError('constituent: no data for “unobtainium”'));
  });

  it('takes a saturated state typed with rounded digits on either side of the line', () => {
    expect(region1Volume(373.15, 101_417.9)).toBeCloseTo(1 / 958.354, 8);
    expect(region2Volume(373.15, 101_418)).toBeCloseTo(1 / 0.598136, 5);
  });
});
