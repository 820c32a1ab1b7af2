import type { Constituent } from '../constituent.ts';

export const terpinen4Ol: Constituent = {
  id: 'terpinen_4_ol',
  name: 'terpinen-4-ol',
  cas: '562-74-3',
  otherCas: ['20126-76-5'],
  formula: 'C10H18O',
  family: 'tertiary alcohol',
  group: 'oxygenate',
  molarMass: { value: 0.154253, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: null,
  normalBoilingPoint: {
    value: 484.65,
    kind: 'estimated',
    source: 'between CRC-phys 209.0 and 212 (supplier, from memory)',
  },
  criticalTemperature: { value: 673, kind: 'estimated', source: 'estimated Tb/0.72' },
  vapourPressure: {
    A: 22.620066,
    B: 4840.5023,
    C: -48.332,
    validFrom: 333.15,
    validTo: 485.15,
    phase: 'liquid',
    uncertaintyAt100C: 0.15,
    kind: 'estimated',
    source:
      'estimated: corresponding states - alpha-terpineol Antoine (Landolt-Börnstein) scaled to Tb 484.65 K (CRC 482.15 K; 485 K in supplier data, memory)',
  },
  roomVapour: {
    pressure: 8,
    range: [6, 26],
    heat: 60000,
    kind: 'estimated',
    source: 'the curve extrapolates to 26 Pa, as those of alcohols overshoot; an older estimate of 6.4 Pa from memory',
  },
  liquidDensity: { value: 926, at: 293.15, kind: 'published', source: 'CRC-phys' },
  densitySlope: {
    value: -0.805,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 673 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 55500,
    kind: 'published',
    source: 'Hvap-Ghazerati',
    note: 'slope of the vapour-pressure equation at 25 C gives 57.3 kJ/mol',
  },
  latentHeatAt100C: {
    value: 53100,
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
    value: 1.49,
    range: [0.387, 1.767],
    kind: 'published',
    source: 'trade page 1491 ppm; AqSolDB A 387 and 1767',
  },
  logP: { value: 3.26, kind: 'published', source: 'Syrres' },
  viscosity: {
    value: 0.014,
    at: 298.15,
    kind: 'estimated',
    source: 'class value for cyclic tertiary alcohol',
    note: '±50 %',
  },
  flashPoint: { value: 352.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
