import type { Constituent } from '../constituent.ts';

/**
 * Below 60 C use the LB row (1.85 Pa at 25 C); the WebBook row extrapolates to 2.9 Pa. At 100 C: WebBook 442, LB 386
 * (extrapolated), Yaws 465 Pa.
 */
export const eugenol: Constituent = {
  id: 'eugenol',
  name: 'eugenol',
  cas: '97-53-0',
  otherCas: [],
  formula: 'C10H12O2',
  family: 'phenol',
  group: 'oxygenate',
  molarMass: { value: 0.164204, kind: 'computed', source: 'IUPAC atomic weights' },
  meltingPoint: { value: 264.15, kind: 'published', source: 'OpenNotebook 264 K' },
  normalBoilingPoint: { value: 526.45, kind: 'published', source: 'Yaws-Tb' },
  criticalTemperature: { value: 740.6, kind: 'published', source: 'DIPPR (Pina-Martinez), `chemicals` data tables' },
  vapourPressure: {
    A: 23.230712,
    B: 5672.0753,
    C: -42.226,
    validFrom: 351.65,
    validTo: 526.75,
    phase: 'liquid',
    uncertaintyAt100C: 0.1,
    kind: 'published',
    source: 'WebBook',
    note: 'row 97-53-0',
  },
  roomVapour: {
    pressure: 1.85,
    range: [1.3, 3.9],
    heat: 66300,
    kind: 'published',
    source: 'the published curve that holds below 333 K',
  },
  liquidDensity: { value: 1065.2, at: 293.15, kind: 'published', source: 'CRC-phys' },
  densitySlope: {
    value: -0.799,
    kind: 'estimated',
    source:
      'estimated: Rackett/Yamada-Gunn form with ZRA 0.262 and Tc 740.6 K, mean slope over 30 K from the reference temperature',
  },
  latentHeatAt25C: {
    value: 66300,
    kind: 'published',
    source: 'Hvap-Ghazerati',
    note: 'slope of the vapour-pressure equation at 25 C gives 64 kJ/mol',
  },
  latentHeatAt100C: {
    value: 60000,
    kind: 'derived',
    source: 'Clausius-Clapeyron slope of the recommended Antoine equation at 100 C (ideal vapour)',
  },
  heatCapacity: {
    valueAt25C: 1650,
    valueAt90C: 1890,
    kind: 'estimated',
    source: 'Dadgostar-Shaw, ±10 % (no hydrogen-bond term, so alcohols and phenols are probably 5-15 % higher)',
  },
  waterSolubility: {
    value: 2.46,
    range: [1.154, 4.5],
    kind: 'memory',
    source: 'AqSolDB A 1154, B/D/E/G 4500; PHYSPROP 2463 (memory) taken as representative - factor 2 uncertain',
  },
  logP: { value: 2.27, kind: 'published', source: 'Syrres' },
  viscosity: {
    value: 0.00733,
    at: 298.15,
    kind: 'published',
    source: 'ViswNat correlation (270-380 K) at 25 C',
    note: '±10 %',
  },
  flashPoint: { value: 385.15, kind: 'memory', source: 'memory', note: 'supplier closed-cup value, ±6 C' },
};
