import type { Constituent } from '../constituent.ts';

export const gammaTerpinene: Constituent = {
  id: 'gamma_terpinene',
  name: 'gamma-terpinene',
  shortName: 'γ-terpinene',
  cas: '99-85-4',
  otherCas: [],
  formula: 'C10H16',
  family: 'monoterpene hydrocarbon',
  group: 'hydrocarbon',
  molarMass: { value: 0.136238, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: { value: 263.15, kind: 'published', source: 'OpenNotebook 263 K' },
  normalBoilingPoint: { value: 456.15, kind: 'published', source: 'Yaws-Tb, CRC-phys' },
  criticalTemperature: { value: 661, kind: 'published', source: 'Yaws-Tc' },
  vapourPressure: {
    A: 21.119656,
    B: 3748.4419,
    C: -65.4255,
    validFrom: 323.15,
    validTo: 456.15,
    phase: 'liquid',
    uncertaintyAt100C: 0.08,
    kind: 'estimated',
    source:
      "estimated: corresponding states - p-cymene Antoine (Landolt-Börnstein) with temperature scaled to Tb 456.15 K; gives dHvap(25)=51.2 against 51.4 kJ/mol listed. Yaws' own set gives 15 % more at 100 C and is not consistent with its GC retention index",
  },
  roomVapour: {
    pressure: 147,
    range: [120, 212],
    heat: 51400,
    kind: 'estimated',
    source: 'the curve in use, 150 Pa, a little lowered',
  },
  liquidDensity: { value: 849, at: 293.15, kind: 'published', source: 'CRC-phys' },
  densitySlope: {
    value: -0.76,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 661 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 51400,
    kind: 'published',
    source: 'Hvap-Ghazerati',
    note: 'slope of the vapour-pressure equation at 25 C gives 51.2 kJ/mol',
  },
  latentHeatAt100C: {
    value: 45800,
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
  waterSolubility: { value: 0.0087, range: [0.0087, 0.0087], kind: 'published', source: 'AqSolDB B' },
  logP: { value: 4.5, kind: 'published', source: 'Syrres (row named Terpinene)' },
  viscosity: { value: 0.00095, at: 298.15, kind: 'estimated', source: 'class value (limonene-like)', note: '±20 %' },
  flashPoint: { value: 325.65, kind: 'published', source: 'DIPPR-FP' },
};
