import type { Constituent } from '../constituent.ts';

export const sabinene: Constituent = {
  id: 'sabinene',
  name: 'sabinene',
  cas: '3387-41-5',
  otherCas: [],
  formula: 'C10H16',
  family: 'monoterpene hydrocarbon',
  group: 'hydrocarbon',
  molarMass: { value: 0.136238, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: null,
  normalBoilingPoint: {
    value: 437.05,
    kind: 'published',
    source: 'mean of WebBook 436.70, Yaws-Tb 436.85, CommonChem 437.15 K',
  },
  criticalTemperature: { value: 650, kind: 'estimated', source: 'estimated Tb/0.672' },
  vapourPressure: {
    A: 20.629988,
    B: 3371.5681,
    C: -66.6567,
    validFrom: 293.15,
    validTo: 437.15,
    phase: 'liquid',
    uncertaintyAt100C: 0.06,
    kind: 'estimated',
    source:
      'estimated: corresponding states - beta-pinene Antoine (Landolt-Börnstein) scaled to Tb 437.0 K (WebBook 436.7, Yaws 436.85, CAS 437.15 K)',
  },
  roomVapour: {
    pressure: 430,
    range: [340, 520],
    heat: 46500,
    kind: 'estimated',
    source: 'the curve in use, a fit from 293 K',
  },
  liquidDensity: {
    value: 842,
    at: 293.15,
    kind: 'published',
    source: 'Gildemeister (Wallach 0.842 at 20 C); CommonChem molar volume gives 842',
  },
  densitySlope: {
    value: -0.774,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 650 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 46500,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the Antoine equation at 25 C',
    note: 'slope of the vapour-pressure equation at 25 C gives 46.5 kJ/mol',
  },
  latentHeatAt100C: {
    value: 41600,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1830,
    valueAt90C: 2070,
    kind: 'estimated',
    source:
      'estimated: by analogy, mean of alpha-pinene and limonene (Zabransky); Dadgostar-Shaw reads 7 % high for this family',
  },
  waterSolubility: {
    value: 0.006,
    range: [0.0025, 0.011],
    kind: 'estimated',
    source: 'estimated: between alpha- and beta-pinene, no measurement found',
  },
  logP: { value: 4.7, kind: 'estimated', source: 'estimated (KOWWIN-type, from memory)' },
  viscosity: {
    value: 0.0013,
    at: 298.15,
    kind: 'estimated',
    source: 'class value for bicyclic monoterpenes',
    note: '±30 %',
  },
  flashPoint: { value: 310.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
