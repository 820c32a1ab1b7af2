/** What becomes of oil and hydrosol after the still: the public face of the layer. */
export {
  blendFilm,
  CARRIER,
  COEFFICIENT_RANGE_m_s,
  fade,
  fadeOfRealMixture,
  fadeSummary,
  logTimes,
  SURFACES,
  timeLeftAt,
  USUAL_SURFACES,
  type BlendFilm,
  type BlendOil,
  type Fade,
  type FadeSummary,
  type Surface,
  type SurfaceKind,
} from './blend.ts';
export {
  BOTTLE_SIZES_m3,
  DISSOLVED_OXYGEN_mol_m3,
  FILL_RANGE,
  peroxideAtFill,
  planBottles,
  USUAL_FILL,
} from './bottles.ts';
export {
  amountsOf,
  dropsFromWeighing,
  DROPS_RANGE_per_mL,
  DROPS_TO_KEEP_A_CAP_per_mL,
  USUAL_DROPS_per_mL,
} from './drops.ts';
export { absorbedShare, flashPoint } from './exposure.ts';
export { dryingTime, timeToLose } from './film.ts';
export { odourSpans, type OdourBand, type OdourSpan } from './odour.ts';
export {
  countAfter,
  HYDROSOL,
  hydrosolLife,
  keeping,
  KEEPING_DOUBT,
  type HydrosolStart,
  type Keeping,
} from './keeping.ts';
export { freezesAt, NOTE_CLASSES, oilDensity, viscosityOf, type NoteClass, type OilShare } from './oil.ts';
export {
  COST_KINDS,
  costs,
  type CostAnswer,
  moistureFromWeighings,
  oilFrom,
  plantFor,
  USUAL_CHAMBER_FILL,
  USUAL_LOSS,
  type BatchCosts,
  type QuantityAnswer,
  type QuantityQuestion,
  type Spread,
} from './quantities.ts';
export {
  drying,
  DRYING_SALT,
  FILTER_KINDS,
  FILTERS,
  LEAST_TO_FILTER_m3,
  standing,
  WATER_DROPS_m,
  WATER_HELD_FACTOR,
  waterHolder,
  type FilterKind,
} from './standing.ts';
export { judgeDilution, mostOf, type DilutionFinding, type DilutionVerdict, type MixedOil } from './dilution.ts';
export { allergenLabel, USES, usualLevels, type Use } from '../library/use-limits.ts';
export { dissolvedOil } from './hydrosol.ts';
export { HAZE, hazeTime } from './haze.ts';
export { quantityQuestion, yieldOf } from './plan-question.ts';
export { fadeTimes, fading, filmOfOils, isReal, type Fading } from './fading.ts';
export { leftToBottle } from './standing.ts';
