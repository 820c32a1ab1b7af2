import type { Constituent } from '../constituent.ts';

/** Stull 1947 as remembered (20 mmHg at 99.8 C) gives 2.7 kPa at 100 C. */
export const citronellal: Constituent = {
  id: 'citronellal',
  name: 'citronellal',
  cas: '106-23-0',
  otherCas: ['2385-77-5', '5949-05-3'],
  formula: 'C10H18O',
  family: 'aldehyde',
  group: 'oxygenate',
  molarMass: { value: 0.154253, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: null,
  normalBoilingPoint: { value: 480.15, kind: 'published', source: 'Yaws-Tb 480.15 K; WebBook 481 K; CRC-phys 205' },
  criticalTemperature: { value: 670, kind: 'published', source: 'Yaws-Tc' },
  vapourPressure: {
    A: 21.875648,
    B: 4205.7304,
    C: -74.632,
    validFrom: 361.15,
    validTo: 510.15,
    phase: 'liquid',
    uncertaintyAt100C: 0.1,
    kind: 'published',
    source: 'Yaws-VP',
    note: 'row 106-23-0; code 1,2',
  },
  roomVapour: {
    pressure: 25,
    range: [20, 37],
    heat: 58000,
    kind: 'estimated',
    source: 'published curves extrapolated, 20.5–21.3 Pa, raised',
  },
  liquidDensity: { value: 853, at: 293.15, kind: 'published', source: 'CRC-phys' },
  densitySlope: {
    value: -0.747,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 670 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 62200,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the Antoine equation at 25 C (extrapolated below its range)',
    note: 'slope of the vapour-pressure equation at 25 C gives 62.2 kJ/mol',
  },
  latentHeatAt100C: {
    value: 54600,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1940,
    valueAt90C: 2200,
    kind: 'estimated',
    source: 'Dadgostar-Shaw, ±10 % (no hydrogen-bond term, so alcohols and phenols are probably 5-15 % higher)',
  },
  waterSolubility: {
    value: 0.088,
    range: [0.038, 0.088],
    kind: 'published',
    source: 'AqSolDB A 88; PHYSPROP estimate about 38 (memory)',
  },
  logP: { value: 3.83, kind: 'published', source: 'Syrres (R-form)' },
  viscosity: {
    value: 0.0016,
    at: 298.15,
    kind: 'estimated',
    source: 'class value for acyclic aldehyde',
    note: '±30 %',
  },
  flashPoint: { value: 349.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
