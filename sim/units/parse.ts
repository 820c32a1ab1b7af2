/** Typed quantities to SI: `3/8 in`, `1.2 kW`, `65 F`, `1 h 30`, `40 %`, `0,8 mm`, or a bare number in the shown unit. */
import { displayUnit, kindOf, type DisplayUnit } from './display.ts';
import { formatRange, withUnit } from './format.ts';
import { editableNumber, groupedDigits } from './numbers.ts';
import { KINDS, type KindName, type UnitSystem } from './scales.ts';
import { splitTyped, type Term } from './typed-numbers.ts';
import type { Conversion } from './unit-engine.ts';
import { recapitalised, unitWords, type TemperatureReading } from './unit-words.ts';

/** What is asked for; a scenario's field information fits as it is. */
export interface AskedQuantity {
  readonly title: string;
  readonly unit: string;
  /** Path of the field or name of a kind; decides the unit a bare number has. */
  readonly path?: string;
  readonly min?: number;
  readonly max?: number;
  readonly nullable?: boolean;
  /** `integer` asks for a whole number. */
  readonly kind?: string;
}

export type ParsedQuantity =
  | { readonly ok: true; readonly value: number | null; readonly note: string | null }
  | { readonly ok: false; readonly message: string };

/** mathjs spelling of each stored unit, and what such a quantity is called. */
const STORED: Readonly<Record<string, { readonly as: string; readonly called: string }>> = {
  m: { as: 'm', called: 'a length' },
  K: { as: 'K', called: 'a temperature' },
  kg: { as: 'kg', called: 'a weight' },
  'm³': { as: 'm^3', called: 'a volume' },
  'kg/s': { as: 'kg/s', called: 'a flow' },
  Pa: { as: 'Pa', called: 'a pressure' },
  W: { as: 'W', called: 'a power' },
  J: { as: 'J', called: 'an energy' },
  s: { as: 's', called: 'a time' },
  'kg/kg': { as: 'kg/kg', called: 'a share by weight' },
  'mol/kg': { as: 'mol/kg', called: 'an amount by weight' },
  'kg/m³': { as: 'kg/m^3', called: 'a weight by volume' },
  'kg/m': { as: 'kg/m', called: 'a weight by length' },
  'm/s': { as: 'm/s', called: 'a speed' },
  'W/m': { as: 'W/m', called: 'a heat by length' },
  'W/m²': { as: 'W/m^2', called: 'a heat by area' },
  'W/(m K)': { as: 'W/(m K)', called: 'a conductivity' },
  'm² K/W': { as: 'm^2 K/W', called: 'a thermal resistance' },
  'J/(kg K)': { as: 'J/(kg K)', called: 'a heat capacity' },
  'W/(m² K)': { as: 'W/(m^2 K)', called: 'a heat transfer coefficient' },
  'm K/W': { as: 'm K/W', called: 'a thermal resistance by length' },
  'Pa s': { as: 'Pa s', called: 'a viscosity' },
  'm²/s': { as: 'm^2/s', called: 'a kinematic viscosity or diffusivity' },
  'N/m': { as: 'N/m', called: 'a surface tension' },
  N: { as: 'N', called: 'a force' },
  'kg/(m² s)': { as: 'kg/(m^2 s)', called: 'a flow by area' },
  'm³/s': { as: 'm^3/s', called: 'a flow by volume' },
  'm²': { as: 'm^2', called: 'an area' },
  'm/s²': { as: 'm/s^2', called: 'an acceleration' },
  'Pa/m': { as: 'Pa/m', called: 'a pressure by length' },
  'Pa/K': { as: 'Pa/K', called: 'a pressure by temperature' },
  'J/kg': { as: 'J/kg', called: 'an energy by weight' },
  'm³/kg': { as: 'm^3/kg', called: 'a volume by weight' },
  'W/K': { as: 'W/K', called: 'a heat by temperature' },
  'J/K': { as: 'J/K', called: 'a heat capacity of the whole' },
  '1/K': { as: 'K^-1', called: 'an expansion by temperature' },
  'J/mol': { as: 'J/mol', called: 'an energy by amount' },
  '1/s': { as: 's^-1', called: 'a rate' },
  V: { as: 'V', called: 'a voltage' },
  A: { as: 'A', called: 'a current' },
  rad: { as: 'rad', called: 'an angle' },
  '1/J': { as: 'J^-1', called: 'a price by energy' },
  '1/m': { as: 'm^-1', called: 'a price by length' },
  '1/m³': { as: 'm^-3', called: 'a price by volume' },
};

/** Weights that are water, so that a volume says as much: 1 kg per litre. */
const WATER_KINDS: ReadonlySet<KindName> = new Set(['water', 'coolantFlow', 'distillateFlow', 'steamFlow']);
const AS_WATER = 'Taken as water, 1 kg to the litre.';
const PERCENT: Readonly<Record<string, number>> = { '%': 0.01, 'per cent': 0.01, percent: 0.01, '‰': 0.001 };
const LEFT_OPEN: ReadonlySet<string> = new Set(['', 'open', 'none', '–', '-']);

const temperatureReading = (kind: KindName | null, si: string): TemperatureReading => {
  if (kind === 'temperature') return 'absolute';
  if (kind === 'temperatureDifference') return 'difference';
  return si.includes('K') ? 'compound' : 'none';
};

type Convert = (value: number, from: string, to: string) => Conversion;

const convertSpelled = (convert: Convert, value: number, unit: string, to: string): Conversion => {
  const asTyped = convert(value, unit, to);
  return asTyped.is === 'unknown-unit' ? convert(value, recapitalised(unit), to) : asTyped;
};

type TermReading =
  | { readonly is: 'number'; readonly value: number; readonly asWater: boolean }
  | { readonly is: 'no-engine' }
  | Exclude<Conversion, { is: 'number' }>;

/** Units are read by a file fetched when first needed; without a connection it may not come. */
const unitEngine = (): Promise<{ readonly convert: Convert } | null> =>
  import('./unit-engine.ts').then(
    ({ convert }) => ({ convert }),
    () => null,
  );

async function readTerm(term: Term, kind: KindName | null, si: string): Promise<TermReading> {
  if (si === '1' || si === 'kg/kg') {
    const share = PERCENT[term.unit.toLowerCase()];
    if (share !== undefined) return { is: 'number', value: term.number * share, asWater: false };
  }
  const stored = STORED[si];
  if (stored === undefined) return { is: 'other-quantity' };
  const engine = await unitEngine();
  if (engine === null) return { is: 'no-engine' };
  const { convert } = engine;
  const unit = unitWords(term.unit, temperatureReading(kind, si));
  const direct = convertSpelled(convert, term.number, unit, kind === 'temperatureDifference' ? 'K' : stored.as);
  if (direct.is === 'number') return { ...direct, asWater: false };
  if (direct.is === 'unknown-unit' || kind === null || !WATER_KINDS.has(kind)) return direct;
  const volume = convertSpelled(convert, term.number, unit, si === 'kg' ? 'L' : 'L/s');
  return volume.is === 'number' ? { ...volume, asWater: true } : volume;
}

/** A last number without a unit after hours means minutes, after minutes seconds. */
const NEXT_SMALLER: readonly (readonly [RegExp, string])[] = [
  [/^h(?:(?:ou)?rs?)?$/iu, 'min'],
  [/^min(?:ute)?s?$/iu, 's'],
];

const withImpliedUnit = (terms: readonly Term[]): readonly Term[] => {
  const last = terms.at(-1);
  const before = terms.at(-2);
  if (last === undefined || before === undefined || last.unit !== '') return terms;
  const implied = NEXT_SMALLER.find(([pattern]) => pattern.test(before.unit))?.[1];
  return implied === undefined ? terms : [...terms.slice(0, -1), { number: last.number, unit: implied }];
};

/** `allowed is 50–1500 mm`, or nothing when there are no limits. */
export function allowedWords(asked: AskedQuantity, system: UnitSystem): string {
  if (asked.min === undefined || asked.max === undefined) return '';
  const open = asked.nullable === true ? ', or leave it empty' : '';
  return `allowed is ${formatRange(asked.min, asked.max, asked.unit, system, asked.path)}${open}`;
}

/** Digits kept of a typed number, so that 3/8 in is stored as 0.009525 and not as 0.009524999999999999. */
const TYPED_DIGITS = 14;

/** A limit typed as a field shows it, rounded to four digits, is that limit. */
const LIMIT_SLACK = 5.01e-4;

const withinLimits = (value: number, asked: AskedQuantity, shownAs: DisplayUnit): number | null => {
  const { min = -Infinity, max = Infinity } = asked;
  if (value >= min && value <= max) return value;
  const limit = value < min ? min : max;
  const shownLimit = shownAs.fromSI(limit);
  return Math.abs(shownAs.fromSI(value) - shownLimit) <= LIMIT_SLACK * Math.abs(shownLimit) ? limit : null;
};

/** Reads what was typed into a field. Never throws for any text; the message names field, value and allowed range. */
export async function parseQuantity(typed: string, asked: AskedQuantity, system: UnitSystem): Promise<ParsedQuantity> {
  const text = typed.trim();
  const allowed = allowedWords(asked, system);
  const fail = (because: string): ParsedQuantity => ({
    ok: false,
    message: `${asked.title}: ${because}${allowed === '' ? '' : `; ${allowed}`}.`,
  });
  if (asked.nullable === true && LEFT_OPEN.has(text.toLowerCase())) return { ok: true, value: null, note: null };
  if (text === '') return fail('a number is needed');

  const kind = kindOf(asked.unit, asked.path);
  const si = kind === null ? asked.unit : KINDS[kind].si;
  const shownAs = displayUnit(asked.unit, system, asked.path);
  const split = splitTyped(text, system, si === 's');
  if (!split.ok) return fail(`“${text}” can't be read: ${split.because}`);

  const terms = withImpliedUnit(split.terms);
  let value = 0;
  let asWater = false;
  for (const term of terms) {
    if (term.unit === '' || (term.unit === '°' && si === 'K')) {
      if (terms.length > 1) return fail(`“${text}” can't be read: one of its numbers has no unit`);
      value = shownAs.toSI(term.number);
      continue;
    }
    const reading = await readTerm(term, kind, si);
    if (reading.is === 'no-engine')
      return fail(
        `other units can't be read just now; type the number${shownAs.label === '' ? '' : ` in ${shownAs.label}`}`,
      );
    if (reading.is === 'unknown-unit') return fail(`the unit “${term.unit}” is not known here`);
    if (reading.is === 'other-quantity') return fail(`“${text}” is not ${STORED[si]?.called ?? 'a plain number'}`);
    if (terms.length > 1 && si === 'K') return fail(`“${text}” can't be read: one temperature is needed`);
    value += reading.value;
    asWater ||= reading.asWater;
  }

  value = Number(value.toPrecision(TYPED_DIGITS));
  const shown = withUnit(groupedDigits(editableNumber(shownAs.fromSI(value))), shownAs.label);
  if (asked.kind === 'integer' && !Number.isInteger(value)) return fail(`${shown} is not a whole number`);
  const kept = withinLimits(value, asked, shownAs);
  if (kept === null) return fail(`${shown} is too ${value < (asked.min ?? -Infinity) ? 'little' : 'much'}`);
  return { ok: true, value: kept, note: asWater ? AS_WATER : null };
}

/** The text to put into a field for a stored value: the number in the shown unit, or nothing when left open. */
export const fieldText = (
  value: number | null,
  asked: Pick<AskedQuantity, 'unit' | 'path'>,
  system: UnitSystem,
): string => (value === null ? '' : editableNumber(displayUnit(asked.unit, system, asked.path).fromSI(value)));
