import type { BotanicalRow } from '../botanical-row.ts';
import { driedDensity, driedMoisture, freshDensity, freshMoisture, handbookMinutes, HERB } from '../common-rows.ts';
import { linalylAcetateLoss } from '../ester-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'stick', diameter_m: 0.002, length_m: 0.15, share: 0.5 },
    { shape: 'stick', diameter_m: 0.003, length_m: 0.007, share: 0.5 },
  ],
  'estimated',
  'stalk and calyx, botany; calyx width 3 mm recalled',
);

export const lavandin: BotanicalRow = {
  id: 'lavandin',
  kind: 'flower',
  name: sourced('lavandin (Grosso type)', 'memory', 'general botany'),
  latinName: sourced('Lavandula x intermedia Emeric ex Loisel.', 'memory', 'general botany'),
  part: sourced('flowering tops', 'memory', 'trade practice'),
  usualState: sourced('wilted 1–3 days in the field, or green-chopped into containers', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.625, 0.55, 0.7),
      oil_mL_kg: sourced(
        band(15, 9, 25),
        'read',
        'Cerpa, Mato and Cocero, AIChE J. 54 (2008) 909–917, abstract',
        'bench steam runs of lavandin Super, another cultivar than Grosso, averaged 1.36 ± 0.14 % w/w = 15 mL/kg (charge moisture not seen); ends from memory of trade yields 1–2 %',
      ),
      bulkDensity_kg_m3: freshDensity(120, 200, HERB),
      particleDensity_kg_m3: sourced(850, 'estimated', 'leafy tissue is 15–30 % gas space; 850 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(2.47, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.1, 0.08, 0.12),
      oil_mL_kg: sourced(
        band(65, 40, 83),
        'estimated',
        'judged from Erbaş and Baydar, Effects of harvest time and drying temperature … in lavandin, Turkish J. Field Crops, abstract, cultivar Super A',
        'dried flowers without stem of Super A, another cultivar than Grosso: 73–82.5 mL/kg; no figure of Grosso was found; low end for stalk and other cultivars estimated',
      ),
      bulkDensity_kg_m3: driedDensity(80, 130),
      particleDensity_kg_m3: sourced(600, 'estimated', 'dried tissue with its gas space, 500 to 700 kg/m³'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(2.5, 'estimated', 'dried plant swells to 2 to 4 times its mass when soaked'),
    },
  },
  defaultCharge: {
    state: 'fresh',
    packing: 'packed',
    layout: 'water-and-steam',
    mass_kg: 2,
    cut: 'whole flowering tops, wilted a day, pressed down by hand',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['linalyl_acetate', 0.31],
      ['linalool', 0.31],
      ['camphor', 0.075],
      ['myrcene', 0.055],
      ['cineole_1_8', 0.065],
      ['beta_caryophyllene', 0.055],
      ['borneol', 0.05],
      ['terpinen_4_ol', 0.035],
      ['bornyl_acetate', 0.025],
      ['camphene', 0.02],
    ],
    'estimated',
    'mid-range of remembered ISO 8902 limits, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: { home: handbookMinutes(30, 90), field: handbookMinutes(20, 45) },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.15, 0, 0.5], heldRate_1_min: [0.06, 0.035, 0.09] },
      oxygenate: { readyShare: [0.15, 0, 0.5], heldRate_1_min: [0.072, 0.04, 0.09] },
      takeUp: [0.05, 0.02, 0.1],
      why: '0.072 per minute is the release rate of the lavandin model; ready share as lavender',
    }),
    curves: [],
    note: 'the stated rate is the release step alone, of lavandin Super with steam in excess',
  },
  hydrolysis: [linalylAcetateLoss],
};
