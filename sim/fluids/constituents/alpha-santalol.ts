import type { Constituent } from '../constituent.ts';

export const alphaSantalol: Constituent = {
  id: 'alpha_santalol',
  name: 'alpha-santalol',
  shortName: 'α-santalol',
  cas: '115-71-9',
  otherCas: [],
  formula: 'C15H24O',
  family: 'sesquiterpene primary alcohol',
  group: 'sesquiterpene',
  molarMass: { value: 0.220356, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: null,
  normalBoilingPoint: { value: 574.65, kind: 'published', source: 'CRC-phys 574.65 K; Gildemeister 300-302 C' },
  criticalTemperature: { value: 777, kind: 'estimated', source: 'estimated Tb/0.74' },
  vapourPressure: {
    A: 21.000487,
    B: 4343.2078,
    C: -115.8567,
    validFrom: 373.15,
    validTo: 574.15,
    phase: 'liquid',
    uncertaintyAt100C: 0.4,
    kind: 'estimated',
    source:
      'estimated: least-squares Antoine on Gildemeister boiling points (155 C/8 mm, 162-163 C/13 mm, 300-301 C/760, 301-302 C/752 mm) and Landolt-Börnstein 140-210 C, with a loose dHvap(298)=95±6 kJ/mol prior (analogy to bisabolol)',
  },
  roomVapour: {
    pressure: 0.03,
    range: [0.01, 0.06],
    heat: 96600,
    kind: 'estimated',
    source: 'between a fit, 0.059 Pa, and a published curve, 0.011 Pa',
  },
  liquidDensity: { value: 967.9, at: 293.15, kind: 'published', source: 'CRC-phys' },
  densitySlope: {
    value: -0.677,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 777 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 96600,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the Antoine equation at 25 C (extrapolated below its range)',
    note: 'slope of the vapour-pressure equation at 25 C gives 96.6 kJ/mol',
  },
  latentHeatAt100C: {
    value: 76000,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1900,
    valueAt90C: 2160,
    kind: 'estimated',
    source: 'Dadgostar-Shaw, ±10 % (no hydrogen-bond term, so alcohols and phenols are probably 5-15 % higher)',
  },
  waterSolubility: {
    value: 0.01,
    range: [0.002, 0.05],
    kind: 'estimated',
    source: 'estimated: general solubility equation with logP ~4.5',
  },
  logP: { value: 4.5, kind: 'estimated', source: 'estimated (from memory)' },
  viscosity: { value: 0.15, at: 298.15, kind: 'estimated', source: 'class value; viscous', note: 'order of magnitude' },
  flashPoint: null,
};
