/** Esters that lose their acid in the hot still. No rate at 100 °C was found in print: all are judged. */
import { band, sourced } from './botanical-row.ts';
import type { EsterHydrolysis } from './types.ts';

const HOUR = 3600;
const activationEnergy_J_mol = sourced(
  70_000,
  'estimated',
  'hydrolysis of esters, 50 to 90 kJ/mol',
  'matters little within a few kelvin of 100 °C',
);

/** Per hour. */
const loss = (
  ester: string,
  alcohol: string,
  water: readonly [number, number, number],
  bed: readonly [number, number, number],
  source: string,
  note: string,
): EsterHydrolysis => ({
  ester,
  alcohol,
  rateInWater_1_s: sourced(band(water[0] / HOUR, water[1] / HOUR, water[2] / HOUR), 'estimated', source, note),
  rateInBed_1_s: sourced(
    band(bed[0] / HOUR, bed[1] / HOUR, bed[2] / HOUR),
    'estimated',
    'about a sixth of the rate in water: a guess',
    note,
  ),
  activationEnergy_J_mol,
});

export const linalylAcetateLoss = loss(
  'linalyl_acetate',
  'linalool',
  [0.26, 0.15, 0.45],
  [0.04, 0.02, 0.08],
  'lavender distilled in water held 36 % less linalyl acetate than over water (Kiran Babu and Singh, Compr. Bioact. Nat. Prod. 8, abstract), taken over 1 to 3 h',
  'acid plant sap speeds it; part turns to alpha-terpineol, geraniol and nerol instead of linalool',
);

export const menthylAcetateLoss = loss(
  'menthyl_acetate',
  'menthol',
  [0.1, 0.03, 0.2],
  [0.015, 0.005, 0.04],
  'a secondary ester, slower than linalyl acetate',
  'at 25 °C its rate is 0.005 per hour between pH 4 and 7 (ECHA registration, OECD test 111)',
);

export const eugenylAcetateLoss = loss(
  'eugenyl_acetate',
  'eugenol',
  [0.25, 0.1, 0.5],
  [0.04, 0.015, 0.1],
  'an ester of a phenol, taken as fast as linalyl acetate',
  'long water distillation is known to turn the acetate to eugenol',
);
