import type { Constituent } from '../constituent.ts';

export const chamazulene: Constituent = {
  id: 'chamazulene',
  name: 'chamazulene',
  cas: '529-05-5',
  otherCas: [],
  formula: 'C14H16',
  family: 'azulene hydrocarbon formed from matricin in the still',
  group: 'sesquiterpene',
  molarMass: { value: 0.184282, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: null,
  normalBoilingPoint: { value: 579.15, kind: 'estimated', source: 'guess from GC retention index ~1730 (memory)' },
  criticalTemperature: { value: 827, kind: 'estimated', source: 'estimated Tb/0.7' },
  vapourPressure: {
    A: 21.229081,
    B: 4697.7036,
    C: -95,
    validFrom: 333.15,
    validTo: 579.15,
    phase: 'liquid',
    uncertaintyAt100C: 0.35,
    kind: 'estimated',
    source:
      'estimated: two-point (161 C at 12 mmHg, Merck; Tb 306 C guessed from its GC retention index ~1730 against n-alkanes) with C=-95 K like alkylnaphthalenes in Landolt-Börnstein',
  },
  roomVapour: {
    pressure: 0.15,
    range: [0.05, 0.3],
    heat: 84100,
    kind: 'estimated',
    source: 'the curve in use, a fit; good to a factor of 2–3',
  },
  liquidDensity: { value: 988.3, at: 293.15, kind: 'published', source: 'Merck-chamaz' },
  densitySlope: {
    value: -0.632,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 827 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 84100,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the Antoine equation at 25 C (extrapolated below its range)',
    note: 'slope of the vapour-pressure equation at 25 C gives 84.1 kJ/mol',
  },
  latentHeatAt100C: {
    value: 70300,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1660,
    valueAt90C: 1900,
    kind: 'estimated',
    source: 'Dadgostar-Shaw times 0.935 (the bias found on alpha-pinene, limonene, p-cymene)',
  },
  waterSolubility: {
    value: 0.005,
    range: [0.0005, 0.01],
    kind: 'estimated',
    source: 'estimated: general solubility equation with logP ~5',
  },
  logP: { value: 5, kind: 'estimated', source: 'estimated (azulene ~3.2 plus alkyl increments)' },
  viscosity: {
    value: 0.007,
    at: 298.15,
    kind: 'estimated',
    source: 'estimated: no measurement found, taken as that of beta-caryophyllene',
    note: 'order of magnitude',
  },
  flashPoint: null,
};
