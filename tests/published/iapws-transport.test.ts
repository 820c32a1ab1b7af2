/** Viscosity, conductivity and surface tension of water against the values that the IAPWS releases print. */
import { describe } from 'vitest';
import {
  waterConductivity,
  waterConductivityIndustrial,
  waterSurfaceTension,
  waterViscosity,
} from '../../sim/fluids/transport.ts';
import { checkPrinted, work } from './printed.ts';

const r12 = work('IAPWS R12-08')('Table 4');
const r15 = work('IAPWS R15-11');
const r1 = work('IAPWS R1-76(2014)')('Table 1');

/** T in K, ρ in kg/m³, µPa s. */
const VISCOSITY = [
  [298.15, 998, '889.735100'],
  [298.15, 1200, '1437.649467'],
  [373.15, 1000, '307.883622'],
  [433.15, 1, '14.538324'],
  [433.15, 1000, '217.685358'],
  [873.15, 1, '32.619287'],
  [873.15, 100, '35.802262'],
  [873.15, 600, '77.430195'],
  [1173.15, 1, '44.217245'],
  [1173.15, 100, '47.640433'],
  [1173.15, 400, '64.154608'],
] as const;

/** T in K, ρ in kg/m³, mW/mK without the critical enhancement. */
const CONDUCTIVITY = [
  [298.15, 0, '18.4341883'],
  [298.15, 998, '607.712868'],
  [298.15, 1200, '799.038144'],
  [873.15, 0, '79.1034659'],
] as const;

/** T in K, p in MPa, table, mW/mK with the enhancement of the industrial form. */
const INDUSTRIAL = [
  [620, 20, 'Table 7', '481.485195'],
  [650, 0.3, 'Table 8', '52.2311024'],
] as const;

/** °C, mN/m. */
const SURFACE_TENSION = [
  [0.01, '75.65'],
  [20, '72.74'],
  [40, '69.60'],
  [60, '66.24'],
  [80, '62.67'],
  [100, '58.91'],
] as const;

describe('IAPWS transport properties', () => {
  checkPrinted([
    ...VISCOSITY.map(
      ([T, rho, printed]) =>
        [`viscosity at ${T} K and ${rho} kg/m³`, () => waterViscosity(T, rho) * 1e6, printed, r12] as const,
    ),
    ...CONDUCTIVITY.map(
      ([T, rho, printed]) =>
        [
          `conductivity at ${T} K and ${rho} kg/m³`,
          () => waterConductivity(T, rho) * 1e3,
          printed,
          r15('Table 4'),
        ] as const,
    ),
    ...INDUSTRIAL.map(
      ([T, p, table, printed]) =>
        [
          `conductivity at ${T} K and ${p} MPa`,
          () => waterConductivityIndustrial(T, p * 1e6) * 1e3,
          printed,
          r15(table),
        ] as const,
    ),
    ...SURFACE_TENSION.map(
      ([t, printed]) =>
        [`surface tension at ${t} °C`, () => waterSurfaceTension(t + 273.15) * 1e3, printed, r1] as const,
    ),
  ]);
});
