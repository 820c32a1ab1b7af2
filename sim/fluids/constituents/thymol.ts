import type { Constituent } from '../constituent.ts';

/** Do not use the Yaws code-2 row (named 5-methyl-2-propylphenol; 55 Pa at 100 C) which is wrong. */
export const thymol: Constituent = {
  id: 'thymol',
  name: 'thymol',
  cas: '89-83-8',
  otherCas: [],
  formula: 'C10H14O',
  family: 'phenol (solid, mp 50 C)',
  group: 'oxygenate',
  molarMass: { value: 0.150221, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: { value: 323.15, kind: 'published', source: 'CRC-phys 322.75 K' },
  normalBoilingPoint: {
    value: 505.85,
    kind: 'published',
    source: 'Yaws-Tb 505.65 K; CRC-phys 233.0; LB equation 231.1',
  },
  criticalTemperature: { value: 698, kind: 'published', source: 'CRC/IUPAC critical, `chemicals` data tables' },
  vapourPressure: {
    A: 22.811112,
    B: 5029.0254,
    C: -58.598,
    validFrom: 339.05,
    validTo: 514.05,
    phase: 'liquid',
    uncertaintyAt100C: 0.1,
    kind: 'published',
    source: 'LB-Antoine',
    note: 'row 89-83-8',
  },
  roomVapour: {
    pressure: 4.0,
    range: [2.5, 6.2],
    heat: 70000,
    kind: 'derived',
    source:
      'subcooled liquid from the solid, 2.2 Pa, by a heat of fusion of 21 kJ/mol and 322.65 K: 4.3 Pa; a published curve reads 6.2 Pa',
  },
  liquidDensity: { value: 968, at: 298.15, kind: 'estimated', source: 'estimated, subcooled liquid / dissolved' },
  densitySlope: {
    value: -0.802,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 698 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 70000,
    kind: 'published',
    source: 'Hvap-Ghazerati, WebBook 70.0',
    note: 'slope of the vapour-pressure equation at 25 C gives 64.8 kJ/mol',
  },
  latentHeatAt100C: {
    value: 58800,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1800,
    valueAt90C: 2050,
    kind: 'estimated',
    source: 'Dadgostar-Shaw, ±10 % (no hydrogen-bond term, so alcohols and phenols are probably 5-15 % higher)',
  },
  waterSolubility: { value: 0.9, range: [0.9, 1], kind: 'published', source: 'AqSolDB A-I' },
  fusionHeat: {
    value: 21000,
    kind: 'memory',
    source: 'memory',
    note: '17.5 kJ/mol in other sources would make the liquid 1.7 instead of 1.9 times as soluble',
  },
  logP: { value: 3.3, kind: 'published', source: 'Syrres' },
  viscosity: {
    value: 0.022,
    at: 298.15,
    kind: 'estimated',
    source: 'estimated: no measurement found, taken as that of carvacrol',
    note: 'order of magnitude',
  },
  flashPoint: { value: 375.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
