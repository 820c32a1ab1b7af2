import type { Constituent } from '../constituent.ts';

export const cedrol: Constituent = {
  id: 'cedrol',
  name: 'cedrol',
  cas: '77-53-2',
  otherCas: [],
  formula: 'C15H26O',
  family: 'sesquiterpene alcohol (solid, mp 86 C)',
  group: 'sesquiterpene',
  molarMass: { value: 0.222372, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: { value: 359.15, kind: 'published', source: 'CRC-phys 359 K' },
  normalBoilingPoint: { value: 559.15, kind: 'published', source: 'Wikidata 559.15 K' },
  criticalTemperature: { value: 756, kind: 'estimated', source: 'estimated Tb/0.74' },
  vapourPressure: {
    A: 21.688637,
    B: 4659.3837,
    C: -100.6642,
    validFrom: 298.15,
    validTo: 559.15,
    phase: 'liquid; below 86 C subcooled',
    uncertaintyAt100C: 0.35,
    kind: 'estimated',
    source:
      'estimated: Antoine through Tb 286 C (Wikidata), dHvap(298)=88.3 kJ/mol (Nelson & Chickos 2017) and 149 C at 10 mmHg assumed equal to n-hexadecane (GC retention index ~1600)',
  },
  roomVapour: {
    pressure: 0.15,
    range: [0.08, 0.3],
    heat: 88300,
    kind: 'estimated',
    source: 'the curve in use, a fit to the subcooled liquid; good to a factor of 2',
  },
  liquidDensity: { value: 947.9, at: 363.15, kind: 'published', source: 'CRC-phys' },
  densitySlope: {
    value: -0.778,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 756 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 88300,
    kind: 'published',
    source: 'Nelson2017 (subcooled liquid)',
    note: 'slope of the vapour-pressure equation at 25 C gives 88.3 kJ/mol',
  },
  latentHeatAt100C: {
    value: 72700,
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
    value: 0.008,
    range: [0.002, 0.025],
    kind: 'estimated',
    source: 'estimated: general solubility equation with logP ~4.3, mp 86 C',
  },
  fusionHeat: {
    value: 18300,
    kind: 'estimated',
    source: 'estimated: makes the liquid three to four times as soluble as the crystal',
  },
  logP: { value: 4.33, kind: 'estimated', source: 'estimated (from memory)' },
  viscosity: {
    value: 0.1,
    at: 298.15,
    kind: 'estimated',
    source: 'estimated: no measurement found, taken as that of alpha-bisabolol',
    note: 'order of magnitude',
  },
  flashPoint: { value: 368.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
