import type { Constituent } from '../constituent.ts';

export const betaPinene: Constituent = {
  id: 'beta_pinene',
  name: 'beta-pinene',
  shortName: 'β-pinene',
  cas: '127-91-3',
  otherCas: ['18172-67-3'],
  formula: 'C10H16',
  family: 'monoterpene hydrocarbon',
  group: 'hydrocarbon',
  molarMass: { value: 0.136238, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: { value: 212.15, kind: 'published', source: 'OpenNotebook' },
  normalBoilingPoint: { value: 439.15, kind: 'published', source: 'Yaws-Tb' },
  criticalTemperature: { value: 643, kind: 'published', source: 'Yaws-Tc' },
  vapourPressure: {
    A: 20.629988,
    B: 3389.6401,
    C: -67.014,
    validFrom: 293.05,
    validTo: 439.05,
    phase: 'liquid',
    uncertaintyAt100C: 0.03,
    kind: 'published',
    source: 'LB-Antoine',
    note: 'row 127-91-3',
  },
  roomVapour: {
    pressure: 390,
    range: [370, 480],
    heat: 45800,
    kind: 'published',
    source: 'the curve in use, which is within its range from 293 K',
  },
  liquidDensity: { value: 860, at: 298.15, kind: 'published', source: 'CRC-phys' },
  densitySlope: {
    value: -0.813,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 643 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 45800,
    kind: 'published',
    source: 'Hvap-Ghazerati',
    note: 'slope of the vapour-pressure equation at 25 C gives 46.9 kJ/mol',
  },
  latentHeatAt100C: {
    value: 41900,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1830,
    valueAt90C: 2054,
    kind: 'published',
    source:
      '90 C: Zabransky (318-403 K, uncertainty class V); 25 C: estimated by analogy with alpha-pinene and limonene',
  },
  waterSolubility: {
    value: 0.007,
    range: [0.0049, 0.011],
    kind: 'published',
    source: 'AqSolDB A 6.95 and 11.03 (row 0.02 rejected)',
  },
  logP: { value: 4.16, kind: 'published', source: 'Syrres' },
  viscosity: { value: 0.0016, at: 298.15, kind: 'memory', source: 'memory', note: '±10 %' },
  flashPoint: { value: 310.65, kind: 'published', source: 'DIPPR-FP' },
};
