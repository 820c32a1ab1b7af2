import type { Constituent } from '../constituent.ts';

export const pCymene: Constituent = {
  id: 'p_cymene',
  name: 'p-cymene',
  cas: '99-87-6',
  otherCas: [],
  formula: 'C10H14',
  family: 'aromatic monoterpene hydrocarbon',
  group: 'hydrocarbon',
  molarMass: { value: 0.134222, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: { value: 205.15, kind: 'published', source: 'CRC-phys 205 K' },
  normalBoilingPoint: { value: 450.25, kind: 'published', source: 'Yaws-Tb' },
  criticalTemperature: { value: 652, kind: 'published', source: 'Yaws-Tc' },
  vapourPressure: {
    A: 21.119656,
    B: 3700.001,
    C: -64.58,
    validFrom: 338.05,
    validTo: 480.05,
    phase: 'liquid',
    uncertaintyAt100C: 0.02,
    kind: 'published',
    source: 'LB-Antoine',
    note: 'row 99-87-6',
  },
  roomVapour: {
    pressure: 196,
    range: [190, 210],
    heat: 49500,
    kind: 'published',
    source: 'three published curves extrapolated, 194–210 Pa',
  },
  liquidDensity: { value: 857.3, at: 293.15, kind: 'published', source: 'CRC-phys' },
  densitySlope: {
    value: -0.784,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 652 K, mean slope over 30 K from the reference temperature',
    note: 'COSTALD with the critical constants of Yaws-Tc, scaled to the reference density, gives -0.81',
  },
  latentHeatAt25C: {
    value: 49500,
    kind: 'published',
    source: 'Hvap-Ghazerati',
    note: 'slope of the vapour-pressure equation at 25 C gives 50.1 kJ/mol',
  },
  latentHeatAt100C: {
    value: 45000,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1770,
    valueAt90C: 1993,
    kind: 'estimated',
    source:
      '25 C: CRC-thermo 236.4 and Poling 237.7 J/mol/K; 90 C: estimated, times 1.126, by which cumene rises in Zabransky (quasi-polynomial)',
    note: 'Toluene, ethylbenzene, p-xylene, propylbenzene and four butylbenzenes rise by 1.11 to 1.14 there',
  },
  waterSolubility: { value: 0.0234, range: [0.0228, 0.0234], kind: 'published', source: 'AqSolDB B, D, E, G' },
  logP: { value: 4.1, kind: 'published', source: 'Syrres; CRC-logP 4.1' },
  viscosity: {
    value: 0.00081,
    at: 298.15,
    kind: 'estimated',
    source:
      'estimated: cumene times p-xylene over toluene, the same methyl group added (Perry and VDI-PPDS rows of `chemicals` give 0.81 and 0.82 mPa s)',
    note: '±8 %',
  },
  flashPoint: { value: 320.15, kind: 'published', source: 'IEC-FP, NFPA-FP' },
};
