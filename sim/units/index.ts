/** Units at the edge: how numbers are shown, and how typed numbers are read. */
export { displayUnit, type DisplayUnit } from './display.ts';
export { formatDuration } from './duration.ts';
export { formatQuantity, formatRange, formatTemperatureDifference, type FormatOptions } from './format.ts';
export { formatNumber, MINUS, NO_NUMBER, THIN_SPACE } from './numbers.ts';
export { allowedWords, fieldText, parseQuantity, type AskedQuantity, type ParsedQuantity } from './parse.ts';
export type { KindName, UnitSystem } from './scales.ts';
