import type { Constituent } from '../constituent.ts';

/**
 * LB and WebBook fits give 14.4 kPa at 100 C, Yaws 17.1 kPa; corresponding states from beta-pinene gives 16.6 kPa and
 * the GC retention index (950, memory) supports the higher value, so Yaws is preferred.
 */
export const camphene: Constituent = {
  id: 'camphene',
  name: 'camphene',
  cas: '79-92-5',
  otherCas: ['5794-03-6', '5794-04-7'],
  formula: 'C10H16',
  family: 'monoterpene hydrocarbon (solid at 20 C)',
  group: 'hydrocarbon',
  molarMass: { value: 0.136238, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: { value: 324.15, kind: 'published', source: 'OpenNotebook 324 K' },
  normalBoilingPoint: { value: 433.65, kind: 'published', source: 'Yaws-Tb' },
  criticalTemperature: { value: 638, kind: 'published', source: 'Yaws-Tc' },
  vapourPressure: {
    A: 20.999859,
    B: 3623.0916,
    C: -51.266,
    validFrom: 313.75,
    validTo: 463.85,
    phase: 'liquid',
    uncertaintyAt100C: 0.08,
    kind: 'published',
    source: 'Yaws-VP',
    note: 'row 79-92-5; code 1,2',
  },
  roomVapour: {
    pressure: 470,
    range: [370, 560],
    heat: 44700,
    kind: 'estimated',
    source: 'middle of two curves of the subcooled liquid, 374 and 558 Pa, both extrapolated',
  },
  liquidDensity: {
    value: 844.6,
    at: 323.15,
    kind: 'published',
    source: 'CRC-phys (5794-04-7)',
    note: 'also 0.8675 at 25 C supercooled (Sutherland1948)',
  },
  densitySlope: {
    value: -0.856,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 638 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 44700,
    kind: 'published',
    source: 'Hvap-Ghazerati',
    note: 'slope of the vapour-pressure equation at 25 C gives 43.9 kJ/mol',
  },
  latentHeatAt100C: {
    value: 40500,
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
  waterSolubility: { value: 0.0046, range: [0.0042, 0.0046], kind: 'published', source: 'AqSolDB A, B, C' },
  logP: { value: 4.22, kind: 'published', source: 'Syrres' },
  viscosity: {
    value: 0.0013,
    at: 298.15,
    kind: 'estimated',
    source: 'estimated: no measurement found, taken as that of alpha-pinene',
    note: 'order of magnitude',
  },
  flashPoint: { value: 307.15, kind: 'published', source: 'DIPPR-FP' },
};
