/** Units at the edge: how numbers are shown, and how typed numbers are read. */
export { displayUnit, type DisplayUnit } from './display.ts';
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
export { formatNumber, MINUS, NO_NUMBER, THIN_SPACE } from './numbers.ts';
export { allowedWords, type AskedQuantity, type ParsedQuantity } from './asked-quantity.ts';
export { fieldText, parseQuantity } from './parse.ts';
export { kindUnit, type KindName, type UnitLabel, type UnitSystem } from './scales.ts';
