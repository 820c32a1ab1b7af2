/** What a plan does not know for sure, in English. */
import type { UncertainId } from '../../answers/ensemble/factors.ts';

export const UNCERTAIN: Readonly<Record<UncertainId, string>> = {
  oilContent: 'Oil content of the charge',
  readyShare: 'Oil open to the steam at the start',
  heldRate: 'How fast the inner oil comes free',
  takeUp: 'How readily steam takes up oil',
  halfCoverage: 'How thinly the last oil lies on the plant',
  condensingFilm: 'Heat transfer, steam side',
  coolantFilm: 'Heat transfer, water side',
  rivulet: 'Cooling of the condensate',
  curvature: 'Effect of the coil’s bend',
  jetMixing: 'How far the hose mixes the tub',
  heatLoss: 'Heat loss to the air',
  evaporation: 'Evaporation from the tub',
  draught: 'Draught over the tub',
  fouling: 'Scale in the tube',
  tapTemperature: 'Tap temperature',
  dropSize: 'Size of the oil drops',
};

/** Why a width that the library does not give is as wide as it is. */
export const REASONS: Readonly<Record<UncertainId, string>> = {
  oilContent: 'crops of one plant differ by this much and more with place, year and hour of cutting',
  readyShare: 'the span of the library’s plants',
  heldRate: 'the span of the library’s plants',
  takeUp: 'the range that spans published lavender runs; nobody has measured it for other plants',
  halfCoverage: 'no measurement was found',
  condensingFilm: 'condensation in tubes is predicted to about 20 %, oil in the film not at all',
  coolantFilm: 'natural convection round close turns, and narrow jackets',
  rivulet:
    'worked out for a level surface, never measured; on clean or greasy metal it spreads or draws back, × 0.6 to × 1.4',
  curvature: 'worked out for a coil, never measured; from no effect to a little more than all of it',
  jetMixing: 'fountains and cold stores differ by a factor of five, a loose hose lies between',
  heatLoss: 'emissivity and lid are seldom known',
  evaporation: 'the relation was made for swimming pools; above 50 °C it is good to 30 %',
  draught: 'from a closed shed to an open door',
  fouling: 'from a bright tube to visible scale',
  tapTemperature: 'mains water from one week to the next',
  dropSize: 'no measured sizes of oil drops in distillate were found',
};
