/** Texts of the library for a reader: quantities, which stand in braces, are written in the reader's units. */
import { ZERO_CELSIUS } from '../constants.ts';
import { withUnit, type KindName } from '../units/index.ts';
import type { Reader } from './language.ts';
import { quantities } from './quantities.ts';

interface Unit {
  readonly kind: KindName;
  readonly si: string;
  readonly toSI: (written: number) => number;
}

const times =
  (size: number): Unit['toSI'] =>
  (written) =>
    size * written;

/** Units in which the texts of the library write quantities. */
const UNITS: Readonly<Record<string, Unit>> = {
  '°C': { kind: 'temperature', si: 'K', toSI: (written) => written + ZERO_CELSIUS },
  K: { kind: 'temperatureDifference', si: 'K', toSI: times(1) },
  cm: { kind: 'size', si: 'm', toSI: times(0.01) },
  mm: { kind: 'bore', si: 'm', toSI: times(0.001) },
  L: { kind: 'volume', si: 'm³', toSI: times(0.001) },
  kPa: { kind: 'pressure', si: 'Pa', toSI: times(1000) },
};

/** Kinds that texts give in whole numbers. */
const WHOLE: ReadonlySet<KindName> = new Set(['temperature', 'temperatureDifference', 'size']);

const IN_BRACES = /\{([\d.]+)(?:–([\d.]+))? ([^}]+)\}/gu;

/** A text of the library as it is read; quantities that it gives in braces are in the reader's units. */
export function libraryText(text: string, reader: Reader): string {
  const q = quantities(reader);
  return text.replace(IN_BRACES, (whole, first: string, last: string | undefined, written: string) => {
    const unit = UNITS[written];
    if (unit === undefined) throw new RangeError(`a text of the library gives ${whole} in a unit that is not known`);
    if (reader.units === 'metric') return withUnit(last === undefined ? first : `${first}–${last}`, written);
    const { kind, si, toSI } = unit;
    // A hand’s breadth of stalk is no measurement: no more digits than the text gives.
    if (last !== undefined && kind === 'size') {
      const low = q.of(kind, toSI(Number(first)), { significant: 2, bare: true });
      return `${low}–${q.of(kind, toSI(Number(last)), { significant: 2 })}`;
    }
    return last === undefined
      ? q.of(kind, toSI(Number(first)), WHOLE.has(kind) ? { decimals: 0 } : {})
      : q.range(toSI(Number(first)), toSI(Number(last)), si, kind);
  });
}
