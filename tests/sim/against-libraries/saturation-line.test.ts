/**
 * Water and steam on the saturation line against python iapws 1.5.5 (IF97 with R12-08, R15-11 and R1-76): its values,
 * and a table computed with it, to the table's six digits.
 */
import { describe, expect, it } from 'vitest';
import { waterConductivityIndustrial } from '../../../sim/fluids/transport.ts';
import * as water from '../../../sim/fluids/water.ts';

/** Function of `water.ts`, t in °C, expected in SI, relative tolerance. */
const CHECKS = [
  ['saturationPressure', 20, 2339.2148, 0.0002],
  ['liquidDensity', 20, 998.16081, 0.0002],
  ['liquidHeatCapacity', 20, 4185.1025, 0.002],
  ['latentHeat', 20, 2453549.6, 0.0005],
  ['liquidViscosity', 20, 0.0010016273, 0.005],
  ['liquidConductivity', 20, 0.59795275, 0.005],
  ['liquidExpansivity', 20, 0.00020645927, 0.02],
  ['saturationPressure', 25, 3169.7469, 0.0002],
  ['liquidDensity', 25, 997.00383, 0.0002],
  ['latentHeat', 25, 2441705.7, 0.0005],
  ['saturationPressure', 40, 7384.4275, 0.0002],
  ['liquidDensity', 40, 992.18315, 0.0002],
  ['liquidHeatCapacity', 40, 4178.7844, 0.002],
  ['latentHeat', 40, 2406001.4, 0.0005],
  ['liquidViscosity', 40, 0.00065271924, 0.005],
  ['liquidConductivity', 40, 0.6284455, 0.005],
  ['liquidExpansivity', 40, 0.00038491879, 0.02],
  ['saturationPressure', 60, 19945.802, 0.0002],
  ['liquidDensity', 60, 983.17513, 0.0002],
  ['latentHeat', 60, 2357691.0, 0.0005],
  ['liquidViscosity', 60, 0.0004660237, 0.005],
  ['liquidConductivity', 60, 0.65097554, 0.005],
  ['surfaceTension', 60, 0.066238263, 0.005],
  ['saturationPressure', 80, 47414.72, 0.0002],
  ['liquidDensity', 80, 971.77879, 0.0002],
  ['liquidHeatCapacity', 80, 4195.6339, 0.002],
  ['latentHeat', 80, 2308065.7, 0.0005],
  ['liquidViscosity', 80, 0.0003540437, 0.005],
  ['liquidConductivity', 80, 0.66698036, 0.005],
  ['vapourDensity', 80, 0.29366287, 0.002],
  ['saturationPressure', 95, 84608.938, 0.0002],
  ['latentHeat', 95, 2269595.4, 0.0005],
  ['vapourDensity', 95, 0.50488516, 0.002],
  ['vapourViscosity', 95, 1.2058521e-5, 0.01],
  ['vapourConductivity', 95, 0.0240875, 0.01],
  ['saturationPressure', 100, 101417.98, 0.0002],
  ['liquidDensity', 100, 958.35428, 0.0002],
  ['liquidHeatCapacity', 100, 4216.6451, 0.002],
  ['liquidEnthalpy', 100, 419099.15, 0.001],
  ['latentHeat', 100, 2256472.9, 0.0005],
  ['vapourDensity', 100, 0.59813599, 0.002],
  ['liquidViscosity', 100, 0.00028158502, 0.005],
  ['liquidConductivity', 100, 0.67721684, 0.005],
  ['vapourViscosity', 100, 1.2232158e-5, 0.01],
  ['vapourConductivity', 100, 0.024570224, 0.01],
  ['surfaceTension', 100, 0.058911869, 0.005],
  ['liquidExpansivity', 100, 0.00075101003, 0.02],
  ['saturationPressure', 105, 120902.06, 0.0002],
  ['liquidDensity', 105, 954.70771, 0.0002],
  ['latentHeat', 105, 2243180.2, 0.0005],
  ['vapourDensity', 105, 0.70498243, 0.002],
] as const;

/** p in Pa, expected boiling point in °C, absolute tolerance. */
const BOILING_POINTS = [
  [101325, 99.9743, 0.002],
  [105000, 100.97557, 0.003],
] as const;

/** Columns of the table: function of `water.ts` and the table's unit in SI. */
const COLUMNS = [
  ['saturationPressure', 1e3],
  ['liquidDensity', 1],
  ['liquidHeatCapacity', 1],
  ['liquidEnthalpy', 1e3],
  ['latentHeat', 1e3],
  ['vapourDensity', 1],
  ['vapourHeatCapacity', 1],
  ['liquidViscosity', 1e-6],
  ['liquidConductivity', 1e-3],
  ['liquidPrandtl', 1],
  ['surfaceTension', 1e-3],
  ['liquidExpansivity', 1e-6],
  ['vapourViscosity', 1e-6],
  ['vapourConductivity', 1e-3],
] as const;

/** t in °C, then the columns, six significant digits: kPa, kg/m³, J/(kg K), kJ/kg, kJ/kg, kg/m³, J/(kg K), µPa s, mW/(m K), 1, mN/m, 1e-6/K, µPa s, mW/(m K). */
const TABLE: readonly (readonly number[])[] = [
  [
    0.01, 0.611657, 999.794, 4219.9, 0.000611783, 2500.91, 0.00485443, 1888.22, 1791.35, 555.6, 13.6057, 75.6463,
    -67.8899, 8.94578, 16.7606,
  ],
  [
    5, 0.872575, 999.918, 4205.38, 21.0194, 2489.05, 0.00680194, 1891.66, 1518.32, 567.724, 11.2468, 74.9417, 15.989,
    9.09023, 17.0833,
  ],
  [
    10, 1.22818, 999.654, 4195.83, 42.0211, 2477.21, 0.00940657, 1895.73, 1305.99, 578.711, 9.46883, 74.221, 87.8887,
    9.23844, 17.4122,
  ],
  [
    15, 1.70574, 999.055, 4189.43, 62.9837, 2465.38, 0.0128401, 1900.43, 1137.62, 588.738, 8.09528, 73.4858, 150.666,
    9.38981, 17.7468,
  ],
  [
    20, 2.33921, 998.161, 4185.1, 83.9199, 2453.55, 0.0173126, 1905.74, 1001.63, 597.953, 7.01044, 72.7361, 206.459,
    9.54406, 18.0871,
  ],
  [
    25, 3.16975, 997.004, 4182.18, 104.838, 2441.71, 0.0230726, 1911.62, 890.036, 606.461, 6.13773, 71.9722, 256.798,
    9.70092, 18.4333,
  ],
  [
    30, 4.24669, 995.609, 4180.28, 125.745, 2429.84, 0.0304122, 1918.02, 797.224, 614.342, 5.4247, 71.1942, 302.799,
    9.86016, 18.7856,
  ],
  [
    35, 5.62862, 993.996, 4179.19, 146.645, 2417.94, 0.0396702, 1924.9, 719.12, 621.655, 4.83442, 70.4021, 345.295,
    10.0215, 19.1442,
  ],
  [
    40, 7.38443, 992.183, 4178.78, 167.541, 2406, 0.0512373, 1932.23, 652.719, 628.446, 4.34019, 69.5963, 384.919,
    10.1848, 19.5093,
  ],
  [
    45, 9.59439, 990.183, 4178.99, 188.437, 2394.02, 0.065559, 1940, 595.758, 634.748, 3.92229, 68.7768, 422.163,
    10.3499, 19.8814,
  ],
  [
    50, 12.3513, 988.009, 4179.76, 209.336, 2381.97, 0.0831403, 1948.25, 546.504, 640.59, 3.56587, 67.9439, 457.419,
    10.5165, 20.2608,
  ],
  [
    55, 15.7614, 985.67, 4181.08, 230.241, 2369.87, 0.104549, 1957.01, 503.613, 645.993, 3.25955, 67.0977, 491.002,
    10.6844, 20.6478,
  ],
  [
    60, 19.9458, 983.175, 4182.95, 251.154, 2357.69, 0.130418, 1966.36, 466.024, 650.976, 2.99451, 66.2383, 523.174,
    10.8535, 21.0431,
  ],
  [
    65, 25.0411, 980.532, 4185.34, 272.079, 2345.43, 0.161451, 1976.4, 432.893, 655.553, 2.76377, 65.3659, 554.155,
    11.0237, 21.447,
  ],
  [
    70, 31.2006, 977.748, 4188.25, 293.018, 2333.08, 0.198423, 1987.26, 403.539, 659.739, 2.5618, 64.4808, 584.134,
    11.1947, 21.8602,
  ],
  [
    75, 38.5954, 974.829, 4191.68, 313.974, 2320.63, 0.242185, 1999.05, 377.407, 663.544, 2.38412, 63.583, 613.274,
    11.3665, 22.2832,
  ],
  [
    80, 47.4147, 971.779, 4195.63, 334.949, 2308.07, 0.293663, 2011.92, 354.044, 666.98, 2.22711, 62.6729, 641.721,
    11.5389, 22.7168,
  ],
  [
    85, 57.8675, 968.603, 4200.1, 355.946, 2295.38, 0.353865, 2026.03, 333.07, 670.057, 2.08778, 61.7505, 669.604,
    11.7118, 23.1616,
  ],
  [
    90, 70.1824, 965.304, 4205.09, 376.968, 2282.56, 0.423882, 2041.55, 314.172, 672.782, 1.96367, 60.816, 697.042,
    11.885, 23.6182,
  ],
  [
    95, 84.6089, 961.887, 4210.6, 398.019, 2269.6, 0.504885, 2058.64, 297.085, 675.166, 1.85274, 59.8698, 724.144,
    12.0585, 24.0875,
  ],
  [
    100, 101.418, 958.354, 4216.65, 419.099, 2256.47, 0.598136, 2077.49, 281.585, 677.217, 1.75327, 58.9119, 751.01,
    12.2322, 24.5702,
  ],
  [
    105, 120.902, 954.708, 4223.23, 440.213, 2243.18, 0.704982, 2098.28, 267.482, 678.942, 1.66382, 57.9425, 777.737,
    12.4059, 25.0672,
  ],
];

/** As in `water.ts`, but conductivities and the Prandtl number with the critical enhancement that the table includes. */
function asTabulated(property: (typeof COLUMNS)[number][0], T: number): number {
  const liquid = waterConductivityIndustrial(T, water.saturationPressure(T) * (1 + 1e-12));
  if (property === 'liquidConductivity') return liquid;
  if (property === 'vapourConductivity') return waterConductivityIndustrial(T, water.saturationPressure(T));
  if (property === 'liquidPrandtl') return (water.liquidHeatCapacity(T) * water.liquidViscosity(T)) / liquid;
  return water[property](T);
}

describe('the saturation line of water', () => {
  it.each(CHECKS)('%s at %d °C is %d', (property, celsius, expected, rel) => {
    expect(Math.abs(water[property](celsius + 273.15) / expected - 1)).toBeLessThanOrEqual(rel);
  });

  it.each(BOILING_POINTS)('water under %d Pa boils at %d °C', (p, expected, abs) => {
    expect(Math.abs(water.saturationTemperature(p) - 273.15 - expected)).toBeLessThanOrEqual(abs);
  });

  it.each(COLUMNS)('%s agrees with the table to its six digits', (property, unit) => {
    const column = 1 + COLUMNS.findIndex(([name]) => name === property);
    for (const row of TABLE) {
      const expected = row[column] as number;
      const lastDigit = 10 ** (Math.floor(Math.log10(Math.abs(expected))) - 5);
      expect(Math.abs(asTabulated(property, (row[0] as number) + 273.15) / unit - expected)).toBeLessThanOrEqual(
        0.51 * lastDigit,
      );
    }
  });

  it('loses at most 0.006 % up to 105 °C by leaving out the critical enhancement of conductivity', () => {
    for (let celsius = 1; celsius <= 105; celsius += 4) {
      const T = celsius + 273.15;
      const p = water.saturationPressure(T);
      const share = (value: number, whole: number): number => Math.abs(value / whole - 1);
      expect(share(water.liquidConductivity(T), waterConductivityIndustrial(T, p * (1 + 1e-9)))).toBeLessThanOrEqual(
        6e-5,
      );
      expect(share(water.vapourConductivity(T), waterConductivityIndustrial(T, p))).toBeLessThanOrEqual(6e-5);
    }
  });
});
