/**
 * Splits typed text into numbers and the words after them: `1 1/2 in`, `5 ft 3 in`, `1 h 30`, `0,8 mm`,
 * `10 000 W`. Units stay words; their meaning is mathjs's business.
 */
import type { UnitSystem } from './scales.ts';
import type { Unreadable } from './typed-fault.ts';

export interface Term {
  readonly number: number;
  /** Words after the number, as typed; empty for a bare number. */
  readonly unit: string;
}

export type SplitText =
  | { readonly ok: true; readonly terms: readonly [Term, ...Term[]] }
  | { readonly ok: false; readonly because: Unreadable };

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅙': '1/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** One kind of space, one kind of minus, fractions written out. */
export const plainText = (typed: string): string =>
  typed
    .replace(/[\u00a0\u2000-\u200a\u202f]/gu, ' ')
    .replace(/[\u2212\u2012\u2013]/gu, '-')
    .replace(/[½⅓⅔¼¾⅕⅙⅛⅜⅝⅞]/gu, (sign) => ` ${VULGAR[sign] ?? ''} `)
    .replace(/\s+/gu, ' ')
    .trim();

const GROUPED = /(?<![\d.,])\d{1,3}(?: \d{3})+(?![\d/])/gu;
const COMMA_NUMBER = /\d[\d.,]*,[\d.,]*\d/gu;

/** Commas resolved to decimal points or dropped; `null` when a comma could mean either. */
function withoutCommas(text: string, system: UnitSystem): string | null {
  let unclear = false;
  const resolved = text.replace(COMMA_NUMBER, (number) => {
    const lastComma = number.lastIndexOf(',');
    const lastPoint = number.lastIndexOf('.');
    if (lastPoint > lastComma) return number.replace(/,/gu, '');
    if (lastPoint >= 0) return number.replace(/\./gu, '').replace(',', '.');
    const grouped = /^[1-9]\d{0,2}(?:,\d{3})+$/u.test(number);
    if (!grouped) return number.replace(',', '.');
    if (system === 'us' || number.split(',').length > 2) return number.replace(/,/gu, '');
    unclear = true;
    return number;
  });
  return unclear ? null : resolved;
}

const NUMBER = String.raw`[+-]?(?:\d+ )?\d+ ?/ ?\d+|[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;
/** Words: anything but a space followed by a digit or sign that would start the next number. */
const TERM = new RegExp(String.raw`(${NUMBER}) ?((?:(?! ?[+-]?\.?\d)[^\d]|(?<=[\^A-Za-z-])\d)*)`, 'gyu');

const valueOf = (number: string): number => {
  const fraction = /^([+-]?)(?:(\d+) )?(\d+) ?\/ ?(\d+)$/u.exec(number);
  if (fraction === null) return Number(number);
  const size = Number(fraction[2] ?? 0) + Number(fraction[3]) / Number(fraction[4]);
  return fraction[1] === '-' ? -size : size;
};

const clockTerms = (text: string): Term[] | null => {
  const clock = /^(\d+):([0-5]\d)(?::([0-5]\d))?$/u.exec(text);
  if (clock === null) return null;
  return [
    { number: Number(clock[1]), unit: 'h' },
    { number: Number(clock[2]), unit: 'min' },
    { number: Number(clock[3] ?? 0), unit: 's' },
  ];
};

/** @param isTime whether `1:52`, `1h30` and a bare last number after hours or minutes make sense */
export function splitTyped(typed: string, system: UnitSystem, isTime: boolean): SplitText {
  const commas = withoutCommas(
    plainText(typed)
      .replace(/^[£$€] ?/u, '')
      .replace(GROUPED, (group) => group.replace(/ /gu, '')),
    system,
  );
  if (commas === null) return { ok: false, because: { kind: 'comma-unclear' } };
  const clock = isTime ? clockTerms(commas) : null;
  const spaced = (isTime ? commas.replace(/(?<=[a-z])(?=\d)/giu, ' ') : commas)
    .replace(/(?<=\d) 1 ?(?=\/ ?[A-Za-z])/gu, ' ')
    .replace(/\bper 1000 gal/giu, 'per kgal');
  const terms: Term[] = clock ?? [];
  if (clock === null) {
    TERM.lastIndex = 0;
    let at = 0;
    for (let match = TERM.exec(spaced); match !== null && match[0] !== ''; match = TERM.exec(spaced)) {
      terms.push({ number: valueOf(match[1] ?? ''), unit: (match[2] ?? '').trim() });
      at = TERM.lastIndex;
      if (spaced[at] === ' ') TERM.lastIndex = at += 1;
      if (at >= spaced.length) break;
    }
    if (at < spaced.length) return { ok: false, because: { kind: 'no-number' } };
  }
  const [first, ...rest] = terms;
  if (first === undefined) return { ok: false, because: { kind: 'no-number' } };
  if (!terms.every((term) => Number.isFinite(term.number))) return { ok: false, because: { kind: 'not-finite' } };
  return { ok: true, terms: [first, ...rest] };
}
