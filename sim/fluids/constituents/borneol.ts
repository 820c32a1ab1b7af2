import type { Constituent } from '../constituent.ts';

/** Sublimation row in LB extrapolates badly to 25 C (2.6 Pa, dH 86); only use 78-159 C. */
export const borneol: Constituent = {
  id: 'borneol',
  name: 'borneol',
  cas: '507-70-0',
  otherCas: ['464-43-7', '464-45-9'],
  formula: 'C10H18O',
  family: 'alcohol (solid, mp 207 C)',
  group: 'oxygenate',
  molarMass: { value: 0.154253, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: { value: 480.65, kind: 'published', source: 'OpenNotebook 480.65 K' },
  normalBoilingPoint: { value: 486.15, kind: 'published', source: 'WebBook 486.4 K, Yaws-Tb 485.8 K' },
  criticalTemperature: { value: 694, kind: 'estimated', source: 'estimated Tb/0.7' },
  vapourPressure: {
    A: 20.552847,
    B: 3355.1503,
    C: -114.7623,
    validFrom: 333.15,
    validTo: 486.15,
    phase: 'subcooled liquid',
    uncertaintyAt100C: 0.2,
    kind: 'estimated',
    source:
      'estimated: subcooled-liquid curve = Landolt-Börnstein sublimation pressure (78-159 C) times exp[dHfus/R(1/T-1/Tm)] with dHfus 7.0 kJ/mol (assumed equal to camphor, whose two LB curves imply 7.0) and Tm 480.65 K, joined to Tb 213 C',
  },
  roomVapour: {
    pressure: 9.5,
    range: [5, 15],
    heat: 60000,
    kind: 'estimated',
    source: 'fit to the subcooled liquid; the heat of 73.7 kJ/mol stored for the solid is too steep for it',
  },
  liquidDensity: {
    value: 960,
    at: 298.15,
    kind: 'estimated',
    source: 'estimated partial density when dissolved in oil',
  },
  densitySlope: {
    value: -0.803,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 694 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 73700,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the Antoine equation at 25 C (extrapolated below its range)',
    note: 'slope of the vapour-pressure equation at 25 C gives 73.7 kJ/mol',
  },
  latentHeatAt100C: {
    value: 58200,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1940,
    valueAt90C: 2200,
    kind: 'estimated',
    source: 'Dadgostar-Shaw, ±10 % (no hydrogen-bond term, so alcohols and phenols are probably 5-15 % higher)',
  },
  waterSolubility: { value: 0.74, range: [0.585, 0.74], kind: 'published', source: 'AqSolDB B, D, E, G; A 586' },
  fusionHeat: {
    value: 7000,
    kind: 'memory',
    source: 'memory',
    note: 'a plastic crystal at room temperature; one enantiomer may have a further transition near 346 K',
  },
  logP: { value: 2.69, kind: 'published', source: 'Syrres (3.01 for the (-) row)' },
  viscosity: {
    value: 0.014,
    at: 298.15,
    kind: 'estimated',
    source: 'estimated: no measurement found, taken as that of terpinen-4-ol',
    note: 'order of magnitude',
  },
  flashPoint: { value: 338.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
