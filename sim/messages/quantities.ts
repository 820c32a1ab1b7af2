/**
 * Quantities in sentences, written for a reader in the units that the reader chose: value and unit joined by a thin
 * space, `99 °C`, `1 h 05 min`, or spoken in whole words for those who listen, `99 degrees Celsius`, `1 hour 5 minutes`.
 * Every argument is in SI; a number that is missing or never reached gives a dash.
 */
import {
  displayUnit,
  durationParts,
  fieldText,
  formatDuration,
  formatNumber,
  groupedDigits,
  inCurrency,
  isBefore,
  kindUnit,
  limitParts,
  MINUS,
  NO_NUMBER,
  quantityParts,
  rangeParts,
  withUnit,
  type FormatOptions,
  type KindName,
  type UnitSystem,
} from '../units/index.ts';
import { spokenUnits } from './english/units.ts';
import type { Language, Reader } from './language.ts';

type SpokenUnits = typeof spokenUnits;

const SPOKEN: Readonly<Record<Language, SpokenUnits>> = { en: spokenUnits };

type Value = number | null | undefined;

export type WriteOptions = Pick<FormatOptions, 'decimals' | 'significant' | 'signed' | 'near' | 'bare'>;

type Write = (value: Value, options?: WriteOptions) => string;

export interface Quantities {
  readonly units: UnitSystem;
  readonly reader: Reader;
  /** A time since the heat went on, or a span of time, s. */
  readonly time: (time_s: Value) => string;
  /** K, to the whole degree unless told otherwise. */
  readonly temperature: Write;
  /** A rise or a difference, K. */
  readonly temperatureDifference: Write;
  /** Water or distillate by volume, kg. */
  readonly water: Write;
  /** Plant or hardware by weight, kg. */
  readonly mass: Write;
  /** Oil, kg: by volume where its density is known, kg/m³, else by weight. */
  readonly oil: (mass_kg: Value, density_kg_m3: number | null, options?: WriteOptions) => string;
  /** Oil by weight, kg. */
  readonly oilMass: Write;
  /** m³. */
  readonly oilVolume: Write;
  /** Of a vessel, m³. */
  readonly volume: Write;
  /** Pa. */
  readonly pressure: Write;
  /** W. */
  readonly power: Write;
  /** J. */
  readonly energy: Write;
  /** Cooling water, kg/s. */
  readonly waterFlow: Write;
  /** kg/s. */
  readonly distillateFlow: Write;
  /** kg/s. */
  readonly steamFlow: Write;
  /** kg/s. */
  readonly oilFlow: Write;
  /** m/s. */
  readonly speed: Write;
  /** Of a tube, m. */
  readonly tubeLength: Write;
  /** Of a vessel or a layer, m. */
  readonly size: Write;
  /** Inside of a neck or jacket, m. */
  readonly bore: Write;
  /** Of a tube's wall or bore, m. */
  readonly wall: Write;
  /** Outside diameter of a tube, m. */
  readonly tubeOutside: Write;
  /** Diameter of an oil drop, m. */
  readonly drop: Write;
  /** m. */
  readonly altitude: Write;
  /** kg/m³. */
  readonly density: Write;
  /** W/m². */
  readonly heatFlux: Write;
  /** kg/m. */
  readonly massPerLength: Write;
  /** 1 is the whole. */
  readonly share: Write;
  /** A pure number. */
  readonly number: Write;
  /** In the reader's currency. */
  readonly cost: (amount: Value) => string;
  /** A number of any kind, in SI. */
  readonly of: (kind: KindName, value: Value, options?: WriteOptions) => string;
  /** A number as a field, column or headline stores it: `hint` is its path or name. */
  readonly stored: (value: Value, unit: string, hint?: string, options?: WriteOptions) => string;
  /** A number in the unit in which its field is typed, with the field's digits. */
  readonly typed: (value: number, unit: string, path?: string) => string;
  /** `50–1500 mm`, each end rounded inward so that what is printed is allowed. */
  readonly range: (min: number, max: number, unit: string, hint?: string) => string;
  /** The least or most that is allowed, rounded to the allowed side. */
  readonly limit: (which: 'least' | 'most', value: number, unit: string, hint?: string) => string;
  /** Two numbers in one unit, to the digit at which they differ. */
  readonly apart: (kind: KindName, first: number, second: number) => readonly [string, string];
}

/** More decimals than anyone can measure; two numbers that agree this far are the same. */
const MOST_DECIMALS = 6;

const WHOLE_DEGREES: WriteOptions = { decimals: 0 };

type Join = (number: string, label: string) => string;
type WriteTime = (time_s: number) => string;

function build(reader: Reader, join: Join, time: WriteTime): Quantities {
  const { units } = reader;
  const stored = (value: Value, unit: string, hint?: string, options: FormatOptions = {}): string => {
    if (value === null || value === undefined || !Number.isFinite(value)) return NO_NUMBER;
    const plus = options.signed === true && value > 0 ? '+' : '';
    const hinted = hint === undefined ? options : { ...options, hint };
    const parts = quantityParts(value, unit, units, hinted);
    if (parts.time_s !== null && options.bare !== true) return plus + time(parts.time_s);
    if (options.bare === true) return plus + parts.number;
    const lead = parts.lead ? `${join(parts.lead.number, parts.lead.label)} ` : '';
    return plus + lead + join(parts.number, parts.label);
  };
  const of = (kind: KindName, value: Value, options: FormatOptions = {}): string =>
    stored(value, kindUnit(kind), kind, options);
  const write =
    (kind: KindName, usual: WriteOptions = {}): Write =>
    (value, options) =>
      of(kind, value, options === undefined ? usual : { ...usual, ...options });
  const apart = (kind: KindName, first: number, second: number): readonly [string, string] => {
    const near = Math.max(Math.abs(first), Math.abs(second));
    const pair = (options: WriteOptions) =>
      [of(kind, first, { near, ...options }), of(kind, second, { near, ...options })] as const;
    const usual = pair(kind === 'temperature' ? WHOLE_DEGREES : {});
    if (first === second || usual[0] !== usual[1]) return usual;
    for (let decimals = 1; decimals <= MOST_DECIMALS; decimals++) {
      const finer = pair({ decimals });
      if (finer[0] !== finer[1]) return finer;
    }
    return usual;
  };
  return {
    units,
    reader,
    time: (time_s) => of('duration', time_s),
    temperature: write('temperature', WHOLE_DEGREES),
    temperatureDifference: write('temperatureDifference'),
    water: write('water'),
    mass: write('mass'),
    oil: (mass_kg, density_kg_m3, options = {}) => of('oil', mass_kg, { ...options, density_kg_m3 }),
    oilMass: write('oil'),
    oilVolume: write('oilVolume'),
    volume: write('volume'),
    pressure: write('pressure'),
    power: write('power'),
    energy: write('energy'),
    waterFlow: write('coolantFlow'),
    distillateFlow: write('distillateFlow'),
    steamFlow: write('steamFlow'),
    oilFlow: write('oilFlow'),
    speed: write('speed'),
    tubeLength: write('run'),
    size: write('size'),
    bore: write('bore'),
    wall: write('wall'),
    tubeOutside: write('tubeOutside'),
    drop: write('drop'),
    altitude: write('altitude'),
    density: write('density'),
    heatFlux: write('heatFlux'),
    massPerLength: write('massPerLength'),
    share: write('share'),
    number: write('number'),
    cost: (amount) =>
      amount === null || amount === undefined
        ? NO_NUMBER
        : inCurrency(formatNumber(amount, 2), reader.currency ?? null),
    of,
    stored,
    typed: (value, unit, path) => {
      const asked = path === undefined ? { unit } : { unit, path };
      return join(groupedDigits(fieldText(value, asked, units)), displayUnit(unit, units, path).label);
    },
    range: (min, max, unit, hint) => {
      const { number, label } = rangeParts(min, max, unit, units, hint);
      return join(number, label);
    },
    limit: (which, value, unit, hint) => {
      const { number, label } = limitParts(value, which, unit, units, hint);
      return join(number, label);
    },
    apart,
  };
}

const spokenJoin =
  (words: SpokenUnits): Join =>
  (number, label) => {
    if (label === '') return number;
    const [one, many] = words[label as keyof SpokenUnits] ?? [label, label];
    return `${number} ${number === '1' ? one : many}`;
  };

const spokenTime =
  (join: Join): WriteTime =>
  (time_s) =>
    (isBefore(time_s) ? MINUS : '') +
    durationParts(time_s)
      .map(({ value, decimals, unit }) => join(formatNumber(value, decimals), unit))
      .join(' ');

const made = new Map<string, Quantities>();

const once = (key: string, make: () => Quantities): Quantities => {
  const known = made.get(key) ?? make();
  made.set(key, known);
  return known;
};

const keyOf = ({ language, units, currency }: Reader): string => `${language} ${units} ${currency ?? ''}`;

/** Quantities as they are written for a reader. */
export const quantities = (reader: Reader): Quantities =>
  once(keyOf(reader), () => build(reader, withUnit, formatDuration));

/** Quantities as they are read out to a reader, units in whole words. */
export const spokenQuantities = (reader: Reader): Quantities =>
  once(`${keyOf(reader)} spoken`, () => {
    const join = spokenJoin(SPOKEN[reader.language]);
    return build(reader, join, spokenTime(join));
  });
