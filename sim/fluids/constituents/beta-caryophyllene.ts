import type { Constituent } from '../constituent.ts';

export const betaCaryophyllene: Constituent = {
  id: 'beta_caryophyllene',
  name: 'beta-caryophyllene',
  shortName: 'β-caryophyllene',
  cas: '87-44-5',
  otherCas: [],
  formula: 'C15H24',
  family: 'sesquiterpene hydrocarbon',
  group: 'sesquiterpene',
  molarMass: { value: 0.204357, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: null,
  normalBoilingPoint: {
    value: 532.65,
    kind: 'estimated',
    source: 'midpoint of 256-259 C (trade page) and 262-264 C (public encyclopaedia)',
  },
  criticalTemperature: { value: 740, kind: 'estimated', source: 'estimated Tb/0.72' },
  vapourPressure: {
    A: 21.594147,
    B: 4686.504,
    C: -68.0294,
    validFrom: 298.15,
    validTo: 533.15,
    phase: 'liquid',
    uncertaintyAt100C: 0.15,
    kind: 'estimated',
    source:
      'estimated: least-squares Antoine on Merck reduced-pressure boiling points (118-119 C at 9.7 mmHg, 129-130 C at 14 mmHg), Tb 259.5±4 C (256-259 and 262-264 both quoted) and dHvap(298)=65.5 kJ/mol (Ghazerati/Chickos)',
  },
  roomVapour: {
    pressure: 3.0,
    range: [1.7, 4.5],
    heat: 65500,
    kind: 'estimated',
    source: 'the curve in use, a fit, 3.4 Pa, a little lowered',
  },
  liquidDensity: { value: 907.5, at: 293.15, kind: 'published', source: 'CRC-phys (Merck 0.9052 at 17 C)' },
  densitySlope: {
    value: -0.682,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 740 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 65500,
    kind: 'published',
    source: 'Hvap-Ghazerati',
    note: 'slope of the vapour-pressure equation at 25 C gives 65.4 kJ/mol',
  },
  latentHeatAt100C: {
    value: 58300,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1830,
    valueAt90C: 2080,
    kind: 'estimated',
    source: 'Dadgostar-Shaw times 0.935 (the bias found on alpha-pinene, limonene, p-cymene)',
  },
  waterSolubility: { value: 9e-5, range: [5e-5, 0.0001], kind: 'published', source: 'AqSolDB A 0.088-0.094' },
  logP: { value: 6.3, kind: 'estimated', source: 'estimated (KOWWIN-type, from memory)' },
  viscosity: {
    value: 0.007,
    at: 298.15,
    kind: 'estimated',
    source: 'class value for bicyclic sesquiterpene',
    note: '±50 %',
  },
  flashPoint: { value: 371.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
