import type { Constituent } from '../constituent.ts';

/**
 * No handbook Antoine found for linalool. The fit reads 32 Pa at 25 C against 21-27 Pa measured, so it is given as
 * valid from 60 C. Stull 1947 as remembered gives 3.45 kPa at 100 C, corresponding states from alpha-terpineol 3.6
 * kPa.
 */
export const linalool: Constituent = {
  id: 'linalool',
  name: 'linalool',
  cas: '78-70-6',
  otherCas: ['126-91-0'],
  formula: 'C10H18O',
  family: 'acyclic tertiary alcohol',
  group: 'oxygenate',
  molarMass: { value: 0.154253, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: null,
  normalBoilingPoint: {
    value: 471.45,
    kind: 'published',
    source: 'WebBook 471.8 K; encyclopaedia 198-199 C; Yaws-Tb 197.0',
  },
  criticalTemperature: { value: 655, kind: 'estimated', source: 'estimated Tb/0.72' },
  vapourPressure: {
    A: 21.294012,
    B: 3734.359,
    C: -88.7538,
    validFrom: 333.15,
    validTo: 471.15,
    phase: 'liquid',
    uncertaintyAt100C: 0.12,
    kind: 'estimated',
    source:
      'estimated: least-squares Antoine on p(25 C)=24 Pa (mean of 21 ICSC, 23 German encyclopaedia, 27 static 1999), bp 86.5 C at 14 mmHg (Merck, from memory), 194-197 C at 720 mmHg (supplier literature value), 198.3 C at 760 mmHg, dHvap(25)=60.2 kJ/mol',
  },
  roomVapour: {
    pressure: 23,
    range: [21, 32],
    heat: 64000,
    kind: 'published',
    source: 'measured, 21, 23 and 27 Pa; the curve from 333 K reads 32 Pa',
  },
  liquidDensity: {
    value: 861,
    at: 293.15,
    kind: 'published',
    source:
      'encyclopaedia 0.858-0.868; sp.gr. 0.870 at 15/4 (open-access article table), 0.860 at 20/4 (supplier page); rounded',
  },
  densitySlope: {
    value: -0.782,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 655 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 60200,
    kind: 'published',
    source: 'Hvap-Ghazerati',
    note: 'slope of the vapour-pressure equation at 25 C gives 62.9 kJ/mol',
  },
  latentHeatAt100C: {
    value: 53500,
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
    value: 1.59,
    range: [1.45, 1.6],
    kind: 'published',
    source: 'AqSolDB B, D, E, G; ICSC 1600; 1450 supplier',
  },
  logP: { value: 2.97, kind: 'published', source: 'Syrres' },
  viscosity: { value: 0.0045, at: 298.15, kind: 'memory', source: 'memory', note: '±8 %' },
  flashPoint: {
    value: 348.15,
    kind: 'published',
    source: 'ICSC, supplier safety data sheet (public encyclopaedia 55)',
  },
};
