import type { Constituent } from '../constituent.ts';

/**
 * Hydrolyses in hot acidic water during long distillations, so an effective rather than pure-component loss matters
 * more than vapour pressure.
 */
export const linalylAcetate: Constituent = {
  id: 'linalyl_acetate',
  name: 'linalyl acetate',
  cas: '115-95-7',
  otherCas: [],
  formula: 'C12H20O2',
  family: 'ester',
  group: 'oxygenate',
  molarMass: { value: 0.19629, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: null,
  normalBoilingPoint: { value: 493.15, kind: 'published', source: 'WebBook 493.2 K, CommonChem 220 C' },
  criticalTemperature: { value: 704, kind: 'estimated', source: 'estimated Tb/0.7' },
  vapourPressure: {
    A: 22.4386,
    B: 4768.3129,
    C: -56.626,
    validFrom: 328.05,
    validTo: 493.05,
    phase: 'liquid',
    uncertaintyAt100C: 0.08,
    kind: 'published',
    source: 'LB-Antoine',
    note: 'row 115-95-7',
  },
  roomVapour: {
    pressure: 14.8,
    range: [10, 20],
    heat: 57800,
    kind: 'published',
    source: 'two published curves extrapolated over 30 K, 14.8–14.9 Pa',
  },
  liquidDensity: {
    value: 895,
    at: 293.15,
    kind: 'published',
    source: 'CRC-phys (0.895 at 20 C; suppliers ~0.901 at 25, memory)',
  },
  densitySlope: {
    value: -0.725,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 704 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 57800,
    kind: 'published',
    source: 'Hvap-Ghazerati',
    note: 'slope of the vapour-pressure equation at 25 C gives 60.4 kJ/mol',
  },
  latentHeatAt100C: {
    value: 55100,
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
    value: 0.03,
    range: [0.03, 0.5],
    kind: 'published',
    source: 'AqSolDB A 30 (REACH; hydrolyses to linalool); PHYSPROP estimate about 500 (memory)',
  },
  logP: { value: 3.93, kind: 'published', source: 'Syrres' },
  viscosity: { value: 0.0022, at: 298.15, kind: 'estimated', source: 'class value for C12 ester', note: '±30 %' },
  flashPoint: { value: 358.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
