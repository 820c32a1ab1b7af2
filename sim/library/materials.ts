/** What stills are made of and wrapped in, near the boil. */
import { findRow } from './find-row.ts';
import type { Provenance, Sourced } from './provenance.ts';
import type { Material } from './types.ts';

const design: Provenance = {
  kind: 'seen',
  source: 'EN 12524 / ISO 10456 design thermal values, as tabulated in an open-source library',
};
const surface = (value: number, note: string): Sourced<number> => ({
  value,
  kind: 'memory',
  source: 'emissivity tables of heat-transfer handbooks',
  note,
});
const from = (provenance: Provenance, value: number): Sourced<number> => ({ value, ...provenance });
const recalled = (value: number): Sourced<number> => ({
  value,
  kind: 'memory',
  source: 'handbook values for the material class',
});
const lagging = surface(0.9, 'cloth, felt or paint outside');
const steelBetween: Provenance = {
  kind: 'derived',
  source: 'Incropera and DeWitt, appendix A, from memory: 304 steel between 27 and 127 °C, taken at 90 °C',
};
const wool: Provenance = {
  kind: 'seen',
  source: 'ASHRAE Handbook of Fundamentals insulation table, as tabulated in an open-source library',
};

const insulation = (
  id: string,
  name: string,
  conductivity: Sourced<number>,
  density: number,
  heatCapacity: number,
): Material => ({
  id,
  name,
  kind: 'insulation',
  conductivity_W_mK: conductivity,
  density_kg_m3: recalled(density),
  heatCapacity_J_kgK: recalled(heatCapacity),
  emissivity: lagging,
});

export const materials: readonly Material[] = [
  {
    id: 'copper',
    name: 'copper',
    kind: 'metal',
    conductivity_W_mK: {
      value: 339,
      kind: 'memory',
      source: 'handbook values of phosphorus-deoxidised copper',
      note: '305 to 385 with purity; the choice hardly moves a condenser',
    },
    density_kg_m3: { value: 8940, kind: 'memory', source: 'handbook values of phosphorus-deoxidised copper' },
    heatCapacity_J_kgK: { value: 385, kind: 'memory', source: 'handbook values of phosphorus-deoxidised copper' },
    emissivity: surface(0.6, 'tarnished 0.6 to 0.8, polished 0.03 to 0.05'),
  },
  {
    id: 'stainless-steel',
    name: 'stainless steel',
    kind: 'metal',
    conductivity_W_mK: from(steelBetween, 16),
    density_kg_m3: from(design, 7900),
    heatCapacity_J_kgK: from(steelBetween, 500),
    emissivity: surface(0.2, 'clean and bright 0.1 to 0.3, heat-coloured to 0.6'),
  },
  {
    id: 'carbon-steel',
    name: 'carbon steel',
    kind: 'metal',
    conductivity_W_mK: from(design, 50),
    density_kg_m3: from(design, 7800),
    heatCapacity_J_kgK: from(design, 450),
    emissivity: surface(0.8, 'oxidised or painted'),
  },
  {
    id: 'aluminium',
    name: 'aluminium',
    kind: 'metal',
    conductivity_W_mK: from(design, 160),
    density_kg_m3: from(design, 2800),
    heatCapacity_J_kgK: from(design, 880),
    emissivity: surface(0.1, 'bright 0.05, dulled 0.1 to 0.2'),
  },
  {
    id: 'brass',
    name: 'brass',
    kind: 'metal',
    conductivity_W_mK: from(design, 120),
    density_kg_m3: from(design, 8400),
    heatCapacity_J_kgK: from(design, 380),
    emissivity: surface(0.6, 'tarnished'),
  },
  {
    id: 'borosilicate-glass',
    name: 'borosilicate glass',
    kind: 'glass',
    conductivity_W_mK: { value: 1.2, kind: 'seen', source: 'ISO 3585 borosilicate glass 3.3, at 90 °C' },
    density_kg_m3: { value: 2230, kind: 'seen', source: 'ISO 3585 borosilicate glass 3.3' },
    heatCapacity_J_kgK: { value: 980, kind: 'seen', source: 'ISO 3585 borosilicate glass 3.3, mean 20 to 100 °C' },
    emissivity: surface(0.9, 'glass'),
  },
  {
    id: 'soda-lime-glass',
    name: 'soda-lime glass',
    kind: 'glass',
    conductivity_W_mK: from(design, 1),
    density_kg_m3: from(design, 2500),
    heatCapacity_J_kgK: from(design, 750),
    emissivity: surface(0.9, 'glass'),
  },
  {
    id: 'polyethylene',
    name: 'polyethylene',
    kind: 'plastic',
    conductivity_W_mK: from(design, 0.5),
    density_kg_m3: from(design, 980),
    heatCapacity_J_kgK: from(design, 1800),
    emissivity: surface(0.9, 'plastic'),
  },
  {
    id: 'wood',
    name: 'softwood',
    kind: 'wood',
    conductivity_W_mK: from(design, 0.13),
    density_kg_m3: from(design, 500),
    heatCapacity_J_kgK: from(design, 1600),
    emissivity: surface(0.9, 'wood'),
  },
  insulation(
    'mineral-wool',
    'mineral wool felt',
    { ...from(wool, 0.04), note: '0.035 to 0.04 at 24 °C; about a fifth more at 60 to 70 °C' },
    32,
    840,
  ),
  insulation('glass-fibre', 'glass-fibre batt', from(wool, 0.0465), 15, 840),
  insulation('cellular-glass', 'cellular glass', from(wool, 0.048), 120, 840),
  insulation('felt', 'wool felt or folded towel', { ...from(design, 0.05), note: 'row for felt underlay' }, 120, 1300),
  insulation(
    'elastomeric-foam',
    'flexible elastomeric foam',
    { ...from(design, 0.05), note: 'to about 105 °C (memory)' },
    65,
    1500,
  ),
  insulation('silicone-foam', 'silicone foam', from(design, 0.12), 400, 1000),
  insulation(
    'cork',
    'cork',
    { value: 0.045, kind: 'memory', source: 'handbook values for expanded cork board' },
    120,
    1560,
  ),
];

export const findMaterial = (id: string): Material => findRow('material', materials, id);
