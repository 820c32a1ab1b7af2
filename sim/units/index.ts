/** Units at the edge: how numbers are shown, and how typed numbers are read. */
export { CURRENCIES, inCurrency, priceUnit, type Currency } from './currency.ts';
export { displayUnit, type DisplayUnit } from './display.ts';
export { tradeFraction } from './feet-and-inches.ts';
export { durationParts, formatDuration, isBefore, type DurationPart } from './duration.ts';
export {
  formatQuantity,
  formatRange,
  formatTemperatureDifference,
  limitParts,
  quantityParts,
  rangeParts,
  withUnit,
  type FormatOptions,
  type QuantityParts,
} from './format.ts';
export { formatNumber, groupedDigits, MINUS, NO_NUMBER, THIN_SPACE } from './numbers.ts';
export type { AskedQuantity } from './asked-quantity.ts';
export { fieldText, readBareNumber } from './parse.ts';
export type { StoredUnit } from './stored-units.ts';
export type { NumberFault, ReadingFault, Unreadable } from './typed-fault.ts';
export { kindUnit, type KindName, type UnitLabel, type UnitSystem } from './scales.ts';
