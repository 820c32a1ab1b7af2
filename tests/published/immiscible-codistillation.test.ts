/**
 * Each oil constituent alone over water at one atmosphere, against an independent calculation of the same ideal
 * (immiscible liquids, IAPWS-IF97 water, the constituent's cited vapour-pressure row), to the printed digits.
 */
import { describe, expect, it } from 'vitest';
import { constituentById, vapourPressure } from '../../sim/fluids/constituents.ts';
import { coBoilingOilShare, coBoilingTemperature, saturationOilPerSteam } from '../../sim/fluids/immiscible.ts';

const ATMOSPHERE = 101_325;

/** Constituent, boiling point °C, oil partial pressure Pa, oil mole fraction of the vapour, oil mass fraction, g water per g oil. */
const TABLE = [
  ['alpha_pinene', 95.19, 16130.07, 0.1592, 0.5888, 0.6984],
  ['beta_pinene', 96.36, 12387.76, 0.1223, 0.513, 0.9494],
  ['camphene', 95.67, 14622.6, 0.1443, 0.5605, 0.7841],
  ['sabinene', 96.11, 13201.63, 0.1303, 0.5312, 0.8827],
  ['myrcene', 97.23, 9545.24, 0.0942, 0.4402, 1.271],
  ['limonene', 97.51, 8590.21, 0.08478, 0.4119, 1.428],
  ['p_cymene', 97.57, 8381.63, 0.08272, 0.4019, 1.488],
  ['gamma_terpinene', 97.97, 7028.34, 0.06936, 0.3605, 1.774],
  ['cineole_1_8', 97.39, 8993.23, 0.08876, 0.4547, 1.199],
  ['linalool', 99.03, 3355.64, 0.03312, 0.2268, 3.41],
  ['linalyl_acetate', 99.54, 1559.43, 0.01539, 0.1455, 5.872],
  ['camphor', 98.98, 3555.09, 0.03509, 0.235, 3.254],
  ['borneol', 99.45, 1882.19, 0.01858, 0.1395, 6.17],
  ['bornyl_acetate', 99.42, 1993.74, 0.01968, 0.1795, 4.573],
  ['terpinen_4_ol', 99.37, 2183.49, 0.02155, 0.1587, 5.303],
  ['alpha_terpineol', 99.49, 1734.97, 0.01712, 0.1298, 6.704],
  ['menthol', 99.51, 1669.25, 0.01647, 0.1269, 6.883],
  ['menthone', 99.12, 3038.15, 0.02998, 0.2093, 3.778],
  ['menthyl_acetate', 99.61, 1313.41, 0.01296, 0.1263, 6.918],
  ['thymol', 99.72, 906.07, 0.008942, 0.06997, 13.29],
  ['carvacrol', 99.78, 698.83, 0.006897, 0.05474, 17.27],
  ['carvone', 99.62, 1288.76, 0.01272, 0.097, 9.309],
  ['trans_anethole', 99.7, 989.23, 0.009763, 0.07502, 12.33],
  ['eugenol', 99.85, 438.33, 0.004326, 0.03809, 25.25],
  ['eugenyl_acetate', 99.94, 123.13, 0.001215, 0.01374, 71.8],
  ['geraniol', 99.76, 775.94, 0.007658, 0.06198, 15.13],
  ['citronellal', 99.32, 2333.03, 0.02303, 0.1679, 4.955],
  ['citral', 99.67, 1083.34, 0.01069, 0.08368, 10.95],
  ['beta_caryophyllene', 99.83, 505.87, 0.004993, 0.05385, 17.57],
  ['alpha_bisabolol', 99.97, 26.39, 0.0002605, 0.003205, 311.0],
  ['chamazulene', 99.95, 76.49, 0.0007549, 0.007668, 129.4],
  ['cedrol', 99.95, 98.08, 0.000968, 0.01182, 83.61],
  ['alpha_cedrene', 99.83, 513.18, 0.005065, 0.05459, 17.32],
  ['alpha_santalol', 99.96, 61.39, 0.0006059, 0.007361, 134.8],
] as const;

describe('an oil constituent boiling together with water at 101 325 Pa', () => {
  it.each(TABLE)(
    '%s boils at %d °C and gives the tabulated share of oil',
    (id, celsius, partial, moleShare, massShare, waterPerOil) => {
      const constituent = constituentById(id);
      const T = coBoilingTemperature(ATMOSPHERE, [1], [constituent]);
      expect(Math.abs(T - 273.15 - celsius)).toBeLessThanOrEqual(0.0051);
      expect(Math.abs(vapourPressure(constituent, T) / partial - 1)).toBeLessThan(2e-4);
      expect(Math.abs(vapourPressure(constituent, T) / ATMOSPHERE / moleShare - 1)).toBeLessThan(6e-4);
      expect(Math.abs(coBoilingOilShare(ATMOSPHERE, [1], [constituent]) / massShare - 1)).toBeLessThan(1e-3);
      expect(Math.abs(1 / saturationOilPerSteam(T, [1], [constituent]) / waterPerOil - 1)).toBeLessThan(1e-3);
    },
  );
});
