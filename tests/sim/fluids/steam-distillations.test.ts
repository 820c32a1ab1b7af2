/**
 * Steam distillations that teaching knows, common practice, no source: the pair boils where the pressures add up, and the
 * vapour carries them in the ratio of pressure times molar mass. Pure-component pressures: Landolt-Börnstein IV/20
 * Antoine rows as carried in the data tables of python chemicals 1.5.2. The limits are the digits usually given.
 *
 * Left out, with the reason: nitrobenzene (the usual exercise rests on an old 27 mmHg; modern pressures give 16, not
 * 20 wt %), benzyl alcohol and cyclohexanol (partly miscible, so not this model).
 */
import { describe, expect, it } from 'vitest';
import { constituentById, vapourPressure } from '../../../sim/fluids/constituents.ts';
import type { VapourCurve } from '../../../sim/fluids/vapour-curve.ts';
import {
  coBoilingOilShare,
  coBoilingTemperature,
  coBoilingTemperatureQuick,
  oilPerSteam,
} from '../../../sim/fluids/immiscible.ts';
import { saturationPressure } from '../../../sim/fluids/water.ts';

const MMHG = 133.322_387;

interface Organic {
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly molarMass: number;
}

const CHLOROBENZENE: Organic = { A: 20.968882588816086, B: 3300.9284246889392, C: -55.277, molarMass: 0.11256 };
const BROMOBENZENE: Organic = { A: 20.908048290659185, B: 3454.906895027637, C: -60.898, molarMass: 0.15701 };
const ANILINE: Organic = { A: 21.664332364453077, B: 3897.746967867531, C: -72.71, molarMass: 0.09313 };
const TOLUENE: Organic = { A: 20.839385203186104, B: 3056.958021160755, C: -55.525, molarMass: 0.09214 };

/** A curve that is the published equation throughout. */
const curves = ({ A, B, C }: Organic): readonly VapourCurve[] => [{ A, B, C, join: 0, cubic: [0, 0, 0, 0] }];

/** Temperature °C, partial pressures Pa, organic mass fraction of the vapour over the organic liquid and water. */
function boilWithWater(organic: Organic, P: number) {
  const T = coBoilingTemperatureQuick(P, [1], curves(organic), Number.NaN);
  const organicPressure = Math.exp(organic.A - organic.B / (T + organic.C));
  const waterPressure = saturationPressure(T);
  const ratio = oilPerSteam(organicPressure, waterPressure, organic.molarMass);
  return { celsius: T - 273.15, organicPressure, waterPressure, ratio, massFraction: ratio / (1 + ratio) };
}

const near = (value: number, expected: number, abs: number): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(abs);

describe('water and a liquid that does not mix with it', () => {
  it('chlorobenzene at 740.2 mmHg: 90.3 °C from 530.1 + 210.1 mmHg, over 70 wt % organic', () => {
    const { celsius, organicPressure, waterPressure, massFraction } = boilWithWater(CHLOROBENZENE, 740.2 * MMHG);
    near(celsius, 90.3, 0.25);
    near(waterPressure / MMHG, 530.1, 0.01 * 530.1);
    near(organicPressure / MMHG, 210.1, 0.02 * 210.1);
    near(massFraction, 0.7151, 5e-4);
  });

  it('chlorobenzene at 101 kPa: about 90 °C and 2.46 kg per kg of water', () => {
    const { celsius, ratio } = boilWithWater(CHLOROBENZENE, 101_000);
    near(celsius, 90, 1);
    near(ratio, 2.46, 0.02 * 2.46);
  });

  it('bromobenzene at 760 mmHg: 95 °C, 640 + 120 mmHg, 1.63 kg per kg of water', () => {
    const { celsius, organicPressure, waterPressure, ratio } = boilWithWater(BROMOBENZENE, 101_325);
    near(celsius, 95, 0.5);
    near(waterPressure / MMHG, 640, 5);
    near(organicPressure / MMHG, 120, 5);
    near(ratio, 1.63, 0.03);
  });

  it('aniline at 760 mmHg: 98.5 °C from 43 + 717 mmHg, ideal 23.7 wt %', () => {
    const { celsius, organicPressure, waterPressure, massFraction } = boilWithWater(ANILINE, 101_325);
    near(celsius, 98.5, 0.15);
    near(organicPressure / MMHG, 43, 1.5);
    near(waterPressure / MMHG, 717, 2);
    near(massFraction, 0.237, 0.01);
  });

  it('toluene at 760 mmHg: 84.1–85 °C and about 80 wt %', () => {
    const { celsius, massFraction } = boilWithWater(TOLUENE, 101_325);
    expect(celsius).toBeGreaterThan(84.1);
    expect(celsius).toBeLessThan(85);
    near(massFraction, 0.8, 0.01);
  });
});

describe('oil constituents over water', () => {
  it('alpha-pinene, turpentine’s chief part, boils with water at 95–95.6 °C', () => {
    const celsius = coBoilingTemperature(101_325, [1], [constituentById('alpha_pinene')]) - 273.15;
    expect(celsius).toBeGreaterThan(95);
    expect(celsius).toBeLessThan(95.6);
  });

  it('1,8-cineole makes about 43 wt % of its distillate', () => {
    near(coBoilingOilShare(101_325, [1], [constituentById('cineole_1_8')]), 0.43, 0.03);
  });

  it('eugenol has about 3–4 mmHg at 100 °C and boils with water just under 100 °C', () => {
    const eugenol = constituentById('eugenol');
    const mmHg = vapourPressure(eugenol, 373.15) / MMHG;
    expect(mmHg).toBeGreaterThan(2.8);
    expect(mmHg).toBeLessThan(4);
    near(coBoilingTemperature(101_325, [1], [eugenol]) - 273.15, 99.8, 0.1);
    near(coBoilingOilShare(101_325, [1], [eugenol]), 0.033, 0.006);
  });
});
