import type { Constituent } from '../constituent.ts';

/**
 * Use the subcooled-liquid curve for camphor dissolved in oil (Raoult), the sublimation curve for pure solid camphor.
 * The two LB curves meet at 178 C and imply dHfus 7.0 kJ/mol there. WebBook extrapolates badly below its range.
 */
export const camphor: Constituent = {
  id: 'camphor',
  name: 'camphor',
  cas: '76-22-2',
  otherCas: ['464-49-3', '21368-68-3'],
  formula: 'C10H16O',
  family: 'ketone (solid, mp 178 C)',
  group: 'oxygenate',
  molarMass: { value: 0.152237, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: { value: 451.65, kind: 'published', source: 'OpenNotebook 451.6 K; CRC-phys 451.85' },
  normalBoilingPoint: { value: 480.55, kind: 'published', source: 'Yaws-Tb (CRC-phys 209.0)' },
  criticalTemperature: { value: 709, kind: 'published', source: 'Yaws-Tc' },
  vapourPressure: {
    A: 21.399765,
    B: 4227.1272,
    C: -52.462,
    validFrom: 451.05,
    validTo: 505.05,
    phase: 'liquid; below 178 C = subcooled liquid, extrapolated',
    uncertaintyAt100C: 0.12,
    kind: 'published',
    source: 'LB-Antoine',
    note: 'row 464-49-3',
  },
  roomVapour: {
    pressure: 60,
    range: [30, 70],
    heat: 54900,
    kind: 'estimated',
    source: 'subcooled liquid extrapolated, 48–66 Pa; the solid sublimes with 60 Pa',
  },
  liquidDensity: {
    value: 960,
    at: 298.15,
    kind: 'estimated',
    source: 'estimated partial density when dissolved in oil',
  },
  densitySlope: {
    value: -0.776,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 709 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 54900,
    kind: 'published',
    source: 'Hvap-Ghazerati',
    note: 'slope of the vapour-pressure equation at 25 C gives 51.8 kJ/mol',
  },
  latentHeatAt100C: {
    value: 47600,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1880,
    valueAt90C: 2130,
    kind: 'estimated',
    source: 'Dadgostar-Shaw, ±10 % (no hydrogen-bond term, so alcohols and phenols are probably 5-15 % higher)',
  },
  waterSolubility: {
    value: 1.57,
    range: [1.24, 2],
    kind: 'published',
    source: 'AqSolDB B, C, D, E, G, H (100 mg/L rows rejected)',
  },
  fusionHeat: {
    value: 6800,
    kind: 'memory',
    source: 'memory',
    note: 'a plastic crystal at room temperature; the heat is that of its melting',
  },
  logP: { value: 2.38, kind: 'published', source: 'Syrres' },
  viscosity: {
    value: 0.0022,
    at: 298.15,
    kind: 'estimated',
    source: 'estimated: no measurement found, taken as that of menthone',
    note: 'order of magnitude',
  },
  flashPoint: { value: 338.65, kind: 'published', source: 'DIPPR-FP' },
};
