/**
 * Sums and products of typed quantities: `3/8 in + 2 mm`, `2 * 1.5 kg`, `(4 + 2) * 30 cm`. Only numbers, units,
 * + − * / and brackets are read. What stands between two operators is left as it was typed; `typed-numbers.ts` reads it.
 */
import type { Unreadable } from './typed-fault.ts';

export type Operator = '+' | '-' | '*' | '/';

export type Expression =
  | { readonly kind: 'quantity'; readonly text: string }
  | { readonly kind: Operator; readonly left: Expression; readonly right: Expression; readonly text: string };

export type ParsedExpression =
  { readonly ok: true; readonly expression: Expression } | { readonly ok: false; readonly because: Unreadable };

/** Longer texts are no quantity that anybody types. */
const LONGEST = 200;

/** A number, or brackets that begin with one. A bracket that begins with a letter belongs to a unit: `W/(m K)`. */
const NUMBER_AHEAD = /\s*(?:[+-]\s*)?(?:\(\s*(?:[+-]\s*)?)*[£$€]?\.?\d/uy;
const GROUP_AHEAD = /\(\s*(?:[+-]\s*)?(?:\(\s*(?:[+-]\s*)?)*[£$€]?\.?\d/uy;
/** `3/8` and `1 3/8` are numbers; `6 mm / 2`, `1.5 / 2` and what follows `3/8` are divisions. */
const NUMERATOR = /(?<!\/ ?)(?<![\d.,/^\p{L}])\d+ ?$/u;
const DENOMINATOR = / ?\d+(?![.,\d])/uy;
/** A divisor is no fraction: `6 mm / 2 / 3` divides twice. `6 mm / 1 1/2` has a mixed number. */
const LONE_NUMBER = /^[+-]? ?\d+ ?$/u;

const OPERATORS: Readonly<Record<string, Operator>> = {
  '+': '+',
  '-': '-',
  '*': '*',
  '×': '*',
  x: '*',
  '·': '*',
  '⋅': '*',
  '/': '/',
};

class CannotRead extends Error {
  readonly because: Unreadable;
  constructor(because: Unreadable) {
    super(because.kind);
    this.because = because;
  }
}

const matchesAt = (pattern: RegExp, text: string, at: number): boolean => {
  pattern.lastIndex = at;
  return pattern.test(text);
};

/** Whether the sign at this place of a quantity stands between two of them, rather than in a number or a unit. */
function isOperator(text: string, from: number, at: number, isDivisor: boolean): boolean {
  const sign = text[at] ?? '';
  if (OPERATORS[sign] === undefined || !matchesAt(NUMBER_AHEAD, text, at + 1)) return false;
  const before = text.slice(from, at);
  if (before.trim() === '') return false;
  if (sign === 'x') return /[\d\s]$/u.test(before);
  if (sign === '/') {
    const isFraction = NUMERATOR.test(before) && matchesAt(DENOMINATOR, text, at + 1);
    return !isFraction || (isDivisor && LONE_NUMBER.test(before));
  }
  if (sign === '+' || sign === '-') return !/\^\s*$|\d[eE]$/u.test(before);
  return true;
}

/** Where the quantity that begins here ends. */
function endOfQuantity(text: string, from: number, isDivisor = false): number {
  let bracketsOfUnit = 0;
  for (let at = from; at < text.length; at++) {
    const sign = text[at];
    if (sign === '(') {
      if (matchesAt(GROUP_AHEAD, text, at)) return at;
      bracketsOfUnit += 1;
    } else if (sign === ')') {
      if (bracketsOfUnit === 0) return at;
      bracketsOfUnit -= 1;
    } else if (bracketsOfUnit === 0 && isOperator(text, from, at, isDivisor)) return at;
  }
  return text.length;
}

/** Reads a text whose spaces, minus signs and fractions are plain already. */
export function parseExpression(text: string): ParsedExpression {
  let at = 0;
  const skipSpace = () => {
    while (text[at] === ' ') at += 1;
  };

  const joined = (kind: Operator, left: Expression, right: Expression, from: number): Expression => ({
    kind,
    left,
    right,
    text: text.slice(from, at).trim(),
  });

  /** A quantity; a sign stands before its number without a space. */
  const quantity = (isDivisor: boolean): Expression => {
    const end = endOfQuantity(text, at, isDivisor);
    const typed = text
      .slice(at, end)
      .trim()
      .replace(/^([+-]) /u, '$1');
    if (typed === '' || typed === '+' || typed === '-') throw new CannotRead({ kind: 'number-missing' });
    at = end;
    return { kind: 'quantity', text: typed };
  };

  const factor = (isDivisor = false): Expression => {
    skipSpace();
    const from = at;
    const isNegative = text[at] === '-';
    if ((isNegative || text[at] === '+') && /^[+-] *\(/u.test(text.slice(at))) {
      at += 1;
      const inner = factor();
      return isNegative ? joined('*', { kind: 'quantity', text: '-1' }, inner, from) : inner;
    }
    if (text[at] !== '(') return quantity(isDivisor);
    at += 1;
    const inner = sum();
    skipSpace();
    if (text[at] !== ')') throw new CannotRead({ kind: 'closing-bracket-missing' });
    at += 1;
    skipSpace();
    const next = text[at];
    if (next === undefined || next === ')' || OPERATORS[next] !== undefined) return inner;
    if (next === '(' || /[\d.]/u.test(next)) throw new CannotRead({ kind: 'sign-missing' });
    // A unit behind the bracket holds for all of it: (3/8 + 1/4) in.
    const end = endOfQuantity(text, at);
    const unit: Expression = { kind: 'quantity', text: `1 ${text.slice(at, end).trim()}` };
    at = end;
    return joined('*', inner, unit, from);
  };

  const chain = (operators: string, operand: (isDivisor?: boolean) => Expression): Expression => {
    skipSpace();
    const from = at;
    let left = operand();
    for (skipSpace(); at < text.length; skipSpace()) {
      const operator = OPERATORS[text[at] ?? ''];
      if (operator === undefined || !operators.includes(operator)) break;
      at += 1;
      const right = operand(operator === '/');
      left = joined(operator, left, right, from);
    }
    return left;
  };
  const product = (): Expression => chain('*/', factor);
  const sum = (): Expression => chain('+-', () => product());

  if (text.length > LONGEST) return { ok: false, because: { kind: 'too-long' } };
  try {
    const expression = sum();
    if (at < text.length)
      throw new CannotRead({ kind: text[at] === ')' ? 'opening-bracket-missing' : 'sign-before-bracket-missing' });
    return { ok: true, expression };
  } catch (error) {
    if (error instanceof CannotRead) return { ok: false, because: error.because };
    throw error;
  }
}
