/** The ester whose loss the model follows. No rate at 100 °C was found in print: both are judged. */
import { band, sourced } from './provenance.ts';
import type { EsterHydrolysis } from './types.ts';

const HOUR = 3600;
const note = 'acid plant sap speeds it; part turns to alpha-terpineol, geraniol and nerol instead of linalool';

export const linalylAcetateLoss: EsterHydrolysis = {
  ester: 'linalyl_acetate',
  alcohol: 'linalool',
  rateInWater_1_s: sourced(
    band(0.26 / HOUR, 0.15 / HOUR, 0.45 / HOUR),
    'estimated',
    'lavender distilled in water held 36 % less linalyl acetate than over water (Kiran Babu and Singh, Compr. Bioact. Nat. Prod. 8, abstract), taken over 1 to 3 h',
    note,
  ),
  rateInBed_1_s: sourced(
    band(0.04 / HOUR, 0.02 / HOUR, 0.08 / HOUR),
    'estimated',
    'about a sixth of the rate in water: a guess',
    note,
  ),
};
