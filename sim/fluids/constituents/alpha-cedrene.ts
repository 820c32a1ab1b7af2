import type { Constituent } from '../constituent.ts';

export const alphaCedrene: Constituent = {
  id: 'alpha_cedrene',
  name: 'alpha-cedrene',
  shortName: 'α-cedrene',
  cas: '469-61-4',
  otherCas: [],
  formula: 'C15H24',
  family: 'sesquiterpene hydrocarbon',
  group: 'sesquiterpene',
  molarMass: { value: 0.204357, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: null,
  normalBoilingPoint: { value: 535.65, kind: 'published', source: 'CRC-phys 535.65 K' },
  criticalTemperature: { value: 744, kind: 'estimated', source: 'estimated Tb/0.72' },
  vapourPressure: {
    A: 21.435682,
    B: 4634.2215,
    C: -68,
    validFrom: 333.15,
    validTo: 536.15,
    phase: 'liquid',
    uncertaintyAt100C: 0.2,
    kind: 'estimated',
    source:
      'estimated: two-point (124-126 C at 12 mmHg, from memory; Tb 262.5 C, CRC) with C=-68 K as fitted for caryophyllene',
  },
  roomVapour: {
    pressure: 3.0,
    range: [2.0, 4.5],
    heat: 64700,
    kind: 'estimated',
    source: 'the curve in use, a fit, 3.7 Pa, a little lowered',
  },
  liquidDensity: { value: 934, at: 293.15, kind: 'memory', source: 'memory' },
  densitySlope: {
    value: -0.696,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 744 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 64700,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the Antoine equation at 25 C (extrapolated below its range)',
    note: 'slope of the vapour-pressure equation at 25 C gives 64.7 kJ/mol',
  },
  latentHeatAt100C: {
    value: 57600,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1830,
    valueAt90C: 2080,
    kind: 'estimated',
    source: 'Dadgostar-Shaw times 0.935 (the bias found on alpha-pinene, limonene, p-cymene)',
  },
  waterSolubility: {
    value: 0.00015,
    range: [5e-5, 0.001],
    kind: 'estimated',
    source: 'from memory (EPI-type estimate)',
  },
  logP: { value: 5.74, kind: 'estimated', source: 'estimated (from memory)' },
  viscosity: {
    value: 0.009,
    at: 298.15,
    kind: 'estimated',
    source: 'class value for tricyclic sesquiterpene',
    note: '±50 %',
  },
  flashPoint: { value: 377.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
