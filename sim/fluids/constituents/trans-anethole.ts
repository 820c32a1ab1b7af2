import type { Constituent } from '../constituent.ts';

/**
 * Mixed-isomer row used; the LB trans row (20-90 C) has an implausible dH of 78 kJ/mol but agrees within 15 % at
 * 90-100 C.
 */
export const transAnethole: Constituent = {
  id: 'trans_anethole',
  name: 'trans-anethole',
  cas: '4180-23-8',
  otherCas: ['104-46-1'],
  formula: 'C10H12O',
  family: 'phenyl ether (solid below 21 C)',
  group: 'oxygenate',
  molarMass: { value: 0.148205, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: { value: 294.55, kind: 'published', source: 'OpenNotebook 294.5 K' },
  normalBoilingPoint: { value: 508.45, kind: 'published', source: 'CRC-phys 236.0; Yaws-Tb 234.0; LB equation 235.4' },
  criticalTemperature: { value: 723, kind: 'published', source: 'Yaws-Tc' },
  vapourPressure: {
    A: 22.94533,
    B: 5371.4912,
    C: -38.144,
    validFrom: 335.05,
    validTo: 508.05,
    phase: 'liquid',
    uncertaintyAt100C: 0.08,
    kind: 'published',
    source: 'LB-Antoine',
    note: 'row 104-46-1',
  },
  roomVapour: {
    pressure: 6,
    range: [2, 10],
    heat: 61900,
    kind: 'estimated',
    source: 'published curves extrapolated, 2.1–9.8 Pa',
  },
  liquidDensity: { value: 988.2, at: 293.15, kind: 'published', source: 'CRC-phys' },
  densitySlope: {
    value: -0.769,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 723 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 61900,
    kind: 'published',
    source: 'Hvap-Ghazerati',
    note: 'slope of the vapour-pressure equation at 25 C gives 58.7 kJ/mol',
  },
  latentHeatAt100C: {
    value: 55400,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1720,
    valueAt90C: 1960,
    kind: 'estimated',
    source: 'Dadgostar-Shaw, ±10 % (no hydrogen-bond term, so alcohols and phenols are probably 5-15 % higher)',
  },
  waterSolubility: { value: 0.111, range: [0.11, 0.111], kind: 'published', source: 'AqSolDB A, B, D, E, G' },
  fusionHeat: {
    value: 24000,
    range: [17000, 25000],
    kind: 'derived',
    source: 'United States Dispensatory, oil of anise: 85 % anethole melts at 16.6 °C',
    note: 'with any departure from ideal solution',
  },
  logP: { value: 3.39, kind: 'memory', source: 'from memory (PHYSPROP)' },
  viscosity: { value: 0.0025, at: 298.15, kind: 'memory', source: 'memory', note: '±20 %' },
  flashPoint: { value: 362.15, kind: 'published', source: 'DIPPR-FP' },
};
