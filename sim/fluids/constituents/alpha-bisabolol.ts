import type { Constituent } from '../constituent.ts';

export const alphaBisabolol: Constituent = {
  id: 'alpha_bisabolol',
  name: 'alpha-bisabolol',
  shortName: 'α-bisabolol',
  cas: '23089-26-1',
  otherCas: ['515-69-5'],
  formula: 'C15H26O',
  family: 'sesquiterpene alcohol',
  group: 'sesquiterpene',
  molarMass: { value: 0.222372, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: null,
  normalBoilingPoint: {
    value: 574.85,
    kind: 'estimated',
    source: 'Keating2017 (calculated there from GC correlation)',
  },
  criticalTemperature: { value: 777, kind: 'estimated', source: 'estimated Tb/0.74' },
  vapourPressure: {
    A: 23.028838,
    B: 5553.2806,
    C: -92.0214,
    validFrom: 298.15,
    validTo: 573.15,
    phase: 'liquid',
    uncertaintyAt100C: 0.6,
    kind: 'estimated',
    source:
      "estimated: Antoine through p(298)=0.020 Pa, dHvap(298)=96.6 kJ/mol and Tb=574.8 K of Keating 2017 (all three from correlation GC); at 153 C it gives 4.6 mmHg whereas a catalogue 'bp 153 C at 12 mmHg' (memory) would be 2.6x higher",
  },
  roomVapour: {
    pressure: 0.02,
    range: [0.017, 0.023],
    heat: 96600,
    kind: 'published',
    source: 'measured, 0.020 ± 0.003 Pa, 96.6 kJ/mol (Keating 2017, abstract)',
  },
  liquidDensity: { value: 921, at: 293.15, kind: 'published', source: 'CommonChem molar volume (23089-26-1)' },
  densitySlope: {
    value: -0.644,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 777 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 96600,
    kind: 'published',
    source: 'Keating2017',
    note: 'slope of the vapour-pressure equation at 25 C gives 96.6 kJ/mol',
  },
  latentHeatAt100C: {
    value: 81300,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1950,
    valueAt90C: 2200,
    kind: 'estimated',
    source: 'Dadgostar-Shaw, ±10 % (no hydrogen-bond term, so alcohols and phenols are probably 5-15 % higher)',
  },
  waterSolubility: {
    value: 0.015,
    range: [0.005, 0.03],
    kind: 'estimated',
    source: 'estimated: by nerolidol, its nearest measured kin, 0.014-0.023 (AqSolDB A)',
  },
  logP: { value: 5.1, kind: 'estimated', source: 'estimated (from memory)' },
  viscosity: { value: 0.1, at: 298.15, kind: 'estimated', source: 'class value; viscous', note: 'order of magnitude' },
  flashPoint: { value: 403.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
