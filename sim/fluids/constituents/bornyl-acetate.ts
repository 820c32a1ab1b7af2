import type { Constituent } from '../constituent.ts';

/**
 * LB (Stull-type) curve gives 2.0 kPa at 100 C; GC retention index (1287, memory) against linalyl and menthyl acetate
 * suggests 1.3-1.6 kPa.
 */
export const bornylAcetate: Constituent = {
  id: 'bornyl_acetate',
  name: 'bornyl acetate',
  cas: '76-49-3',
  otherCas: ['5655-61-8', '20347-65-3'],
  formula: 'C12H20O2',
  family: 'ester',
  group: 'oxygenate',
  molarMass: { value: 0.19629, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: { value: 300.15, kind: 'published', source: 'CRC-phys 300-302 K' },
  normalBoilingPoint: {
    value: 496.65,
    kind: 'published',
    source: 'CRC-phys/Yaws-Tb (l-form 496.65 K; d-form 501 K in CRC)',
  },
  criticalTemperature: { value: 710, kind: 'estimated', source: 'estimated Tb/0.7' },
  vapourPressure: {
    A: 22.272537,
    B: 4969.1191,
    C: -33.952,
    validFrom: 320.05,
    validTo: 496.05,
    phase: 'liquid',
    uncertaintyAt100C: 0.35,
    kind: 'published',
    source: 'LB-Antoine',
    note: 'row 76-49-3',
  },
  roomVapour: {
    pressure: 15,
    range: [10, 32],
    heat: 55000,
    kind: 'estimated',
    source: 'scaled to linalyl and menthyl acetate; the published curve reads 32 Pa, too high against retention',
  },
  liquidDensity: { value: 982, at: 298.15, kind: 'published', source: 'CRC-phys' },
  densitySlope: {
    value: -0.792,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 710 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 52600,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the Antoine equation at 25 C (extrapolated below its range)',
    note: 'slope of the vapour-pressure equation at 25 C gives 52.6 kJ/mol',
  },
  latentHeatAt100C: {
    value: 50000,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1850,
    valueAt90C: 2100,
    kind: 'estimated',
    source: 'Dadgostar-Shaw, ±10 % (no hydrogen-bond term, so alcohols and phenols are probably 5-15 % higher)',
  },
  waterSolubility: {
    value: 0.06,
    range: [0.023, 0.16],
    kind: 'published',
    source: 'AqSolDB A 160 and 62.6, C 23 - inconsistent',
  },
  logP: { value: 3.86, kind: 'estimated', source: 'from memory (estimate)' },
  viscosity: {
    value: 0.003,
    at: 298.15,
    kind: 'estimated',
    source: 'estimated: no measurement found, taken as that of menthyl acetate',
    note: 'order of magnitude',
  },
  flashPoint: { value: 358.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
