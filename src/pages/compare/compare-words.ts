/** Numbers of a comparison as people say them. */
import {
  type CompareRow,
  displayUnit,
  formatDuration,
  formatNumber,
  formatQuantity,
  NO_NUMBER,
  type UnitSystem,
} from '../../../sim/index.ts';
import { money } from '../run-length/length-words.ts';

interface Said {
  readonly signed?: boolean;
}

/** Oil by volume per kilogram of water, said by the gallon. */
function perGallon(value_mL_kg: number): string {
  const oil = displayUnit('m³', 'us', 'oilVolume');
  const water = displayUnit('m³', 'us', 'volume');
  return `${formatNumber(oil.fromSI(value_mL_kg * 1e-6) / water.fromSI(1e-3), 2)}\u202f${oil.label}/${water.label}`;
}

export function compareWords(
  { id, unit }: Pick<CompareRow, 'id' | 'unit'>,
  value: number | null,
  units: UnitSystem,
  { signed = false }: Said = {},
): string {
  if (value === null || !Number.isFinite(value)) return NO_NUMBER;
  const plus = signed && value > 0 ? '+' : '';
  if (id === 'cost') return plus + money(value);
  if (id === 'costPerOil') return plus + formatNumber(value, 3);
  switch (unit) {
    case 's':
      return plus + formatDuration(value);
    case 'mL':
      return formatQuantity(value * 1e-6, 'm³', units, { hint: 'oilVolume', decimals: 1, signed });
    case 'mL/kg':
      return units === 'us' ? plus + perGallon(value) : `${plus}${formatNumber(value, 2)}\u202fmL/kg`;
    case 'kg':
      return formatQuantity(value, 'kg', units, { hint: id === 'distillate' ? 'water' : 'oil', signed });
    case '1':
      return `${plus}${formatNumber(100 * value, 1)}\u202f%`;
    case '°C':
      // A difference of temperatures has no zero to shift.
      return signed
        ? formatQuantity(value, 'K', units, { hint: 'temperatureDifference', signed })
        : formatQuantity(value, '°C', units, { decimals: 1 });
    case 'm':
      return formatQuantity(value, 'm', units, { hint: 'run', signed });
    default:
      return formatQuantity(value, unit, units, { signed });
  }
}

/** Parts of the larger value below which two are told as the same. */
const SAME = 0.001;

/** A difference from the first boil; what would be rounded away is told as none. */
export function differenceWords(row: CompareRow, index: number, units: UnitSystem): string {
  const [first, own, difference] = [row.values[0] ?? null, row.values[index] ?? null, row.differences[index] ?? null];
  if (first === null || own === null || difference === null) return NO_NUMBER;
  const words = compareWords(row, difference, units, { signed: true });
  const isSame = Math.abs(difference) <= SAME * Math.max(Math.abs(first), Math.abs(own)) || !/[1-9]/u.test(words);
  return isSame ? 'the same' : words;
}

/** Place of the better value of a row, where one is; `null` where none is better or all are alike. */
export function bestOf({ better, values }: CompareRow): number | null {
  if (better === 'neither') return null;
  const known = values.filter((value) => value !== null);
  if (known.length < 2) return null;
  const best = better === 'more' ? Math.max(...known) : Math.min(...known);
  const worst = better === 'more' ? Math.min(...known) : Math.max(...known);
  if (Math.abs(best - worst) <= 0.005 * Math.max(Math.abs(best), Math.abs(worst))) return null;
  return values.indexOf(best);
}
