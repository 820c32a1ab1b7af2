/** One typed text, read for what one field asks. */
import type { AskedQuantity } from './asked-quantity.ts';
import { displayUnit, kindOf, type DisplayUnit } from './display.ts';
import { parseExpression, type Expression } from './expression.ts';
import { KINDS, type KindName, type UnitSystem } from './scales.ts';
import { fromDegrees, fromShownUnit } from './shown-units.ts';
import { isStoredUnit, STORED_UNITS, type StoredUnit } from './stored-units.ts';
import type { ReadingFault, Unreadable } from './typed-fault.ts';
import { plainText, splitTyped, type Term } from './typed-numbers.ts';
import type * as UnitEngine from './unit-engine.ts';
import type { Amount } from './unit-engine.ts';
import { recapitalised, unitWords, type TemperatureReading } from './unit-words.ts';

/** Weights that are water, so that a volume says as much: 1 kg per litre. */
const WATER_KINDS: ReadonlySet<KindName> = new Set(['water', 'coolantFlow', 'distillateFlow', 'steamFlow']);
const WATER_DENSITY = 1000;
const PERCENT: Readonly<Record<string, number>> = { '%': 0.01, 'per cent': 0.01, percent: 0.01, '‰': 0.001 };

const temperatureReading = (kind: KindName | null, si: string): TemperatureReading => {
  if (kind === 'temperature') return 'absolute';
  if (kind === 'temperatureDifference') return 'difference';
  return si.includes('K') ? 'compound' : 'none';
};

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

/** Why a text is refused. */
export class Refusal extends Error {
  readonly fault: ReadingFault;
  constructor(fault: ReadingFault) {
    super(fault.kind);
    this.fault = fault;
  }
}
/** The file that knows units is needed first. */
export class UnitsMissing extends Error {}

interface Amounts {
  readonly value: number;
  readonly asWater: boolean;
}

export interface Reading extends Amounts {
  /** Whether it is a sum or a product of what was typed. */
  readonly isWorkedOut: boolean;
}

/** Reads one text for one field; refuses by throwing. */
export class QuantityReader {
  readonly #text: string;
  readonly #asked: AskedQuantity;
  readonly #system: UnitSystem;
  readonly #engine: typeof UnitEngine | null;
  readonly #kind: KindName | null;
  readonly #si: string;
  readonly #shownAs: DisplayUnit;

  /** @param engine what was fetched to read units, if it was */
  constructor(text: string, asked: AskedQuantity, system: UnitSystem, engine: typeof UnitEngine | null) {
    this.#text = text;
    this.#asked = asked;
    this.#system = system;
    this.#engine = engine;
    this.#kind = kindOf(asked.unit, asked.path);
    this.#si = this.#kind === null ? asked.unit : KINDS[this.#kind].si;
    this.#shownAs = displayUnit(asked.unit, system, asked.path);
  }

  read(): Reading {
    const parsed = parseExpression(plainText(this.#text));
    if (!parsed.ok) throw this.#unreadable(parsed.because);
    const { expression } = parsed;
    const isWorkedOut = expression.kind !== 'quantity';
    if (!isWorkedOut) return { ...this.#quantity(this.#termsOf(expression.text), this.#text), isWorkedOut };
    if (!this.#hasUnits(expression))
      return { value: this.#bare(this.#number(expression)), asWater: false, isWorkedOut };
    if (this.#kind === 'temperature') throw this.#unreadable({ kind: 'several-temperatures' });
    return { ...this.#combined(expression), isWorkedOut };
  }

  #unreadable(because: Unreadable): Refusal {
    return new Refusal({ kind: 'unreadable', typed: this.#text, because });
  }

  get #stored(): StoredUnit | null {
    return isStoredUnit(this.#si) ? this.#si : null;
  }

  #notAsked(part: string): Refusal {
    const fault = { kind: 'other-quantity', part, asked: this.#stored } as const;
    return part === this.#text ? new Refusal(fault) : this.#unreadable(fault);
  }

  #bare(number: number): number {
    return this.#asked.bareNumbers === 'SI' ? number : this.#shownAs.toSI(number);
  }

  #termsOf(typed: string): readonly Term[] {
    const split = splitTyped(typed, this.#system, this.#si === 's');
    if (!split.ok) throw this.#unreadable(split.because);
    return withImpliedUnit(split.terms);
  }

  /** `3/8 in`, `5 ft 3 in`, or a bare number. @param text what was typed for it */
  #quantity(terms: readonly Term[], text: string): Amounts {
    let value = 0;
    let asWater = false;
    for (const term of terms) {
      if (term.unit === '' || (term.unit === '°' && this.#si === 'K')) {
        if (terms.length > 1) throw this.#unreadable({ kind: 'unit-missing' });
        return { value: this.#bare(term.number), asWater: false };
      }
      const read = this.#shownTerm(term) ?? this.#anyTerm(term, text);
      if (terms.length > 1 && this.#si === 'K') throw this.#unreadable({ kind: 'several-temperatures' });
      value += read.value;
      asWater ||= read.asWater;
    }
    return { value, asWater };
  }

  /** A unit that the page shows. */
  #shownTerm({ number, unit }: Term): Amounts | null {
    if (this.#si === '1' || this.#si === 'kg/kg') {
      const share = PERCENT[unit.toLowerCase()];
      if (share !== undefined) return { value: number * share, asWater: false };
    }
    const value = fromShownUnit(number, unit, this.#si) ?? fromDegrees(number, unit, this.#kind);
    if (value !== null) return { value, asWater: false };
    if (!this.#isWater) return null;
    const volume = fromShownUnit(number, unit, this.#si === 'kg' ? 'm³' : 'm³/s');
    return volume === null ? null : { value: volume * WATER_DENSITY, asWater: true };
  }

  #anyTerm({ number, unit }: Term, text: string): Amounts {
    if (this.#stored === null) throw this.#notAsked(text);
    return this.#inAsked(this.#amountOf(number, unit), text);
  }

  get #isWater(): boolean {
    return this.#kind !== null && WATER_KINDS.has(this.#kind);
  }

  get #units(): typeof UnitEngine {
    if (this.#engine === null) throw new UnitsMissing();
    return this.#engine;
  }

  #amountOf(number: number, typed: string): Amount {
    const { amountOf } = this.#units;
    const unit = unitWords(typed, temperatureReading(this.#kind, this.#si));
    const found = amountOf(number, unit) ?? amountOf(number, recapitalised(unit));
    if (found === null) throw new Refusal({ kind: 'unit-unknown', unit: typed });
    return found;
  }

  /** @param text what the amount was typed as */
  #inAsked(amount: Amount, text: string): Amounts {
    const { amountIn } = this.#units;
    const stored = this.#si === '1' ? 'kg/kg' : this.#stored;
    if (stored === null) throw this.#notAsked(text);
    const value = amountIn(amount, this.#kind === 'temperatureDifference' ? 'K' : STORED_UNITS[stored]);
    if (value !== null) return { value, asWater: false };
    const volume = this.#isWater ? amountIn(amount, this.#si === 'kg' ? 'm^3' : 'm^3/s') : null;
    if (volume === null) throw this.#notAsked(text);
    return { value: volume * WATER_DENSITY, asWater: true };
  }

  /** Whether any number of an expression has a unit. */
  #hasUnits(expression: Expression): boolean {
    if (expression.kind === 'quantity') return this.#termsOf(expression.text).some(({ unit }) => unit !== '');
    return this.#hasUnits(expression.left) || this.#hasUnits(expression.right);
  }

  /** An expression of bare numbers. */
  #number(expression: Expression): number {
    if (expression.kind === 'quantity') {
      const terms = this.#termsOf(expression.text);
      if (terms.length > 1) throw this.#unreadable({ kind: 'sign-missing' });
      return terms[0]?.number ?? 0;
    }
    const [left, right] = [this.#number(expression.left), this.#number(expression.right)];
    switch (expression.kind) {
      case '+':
        return left + right;
      case '-':
        return left - right;
      case '*':
        return left * right;
      case '/':
        return this.#divided(left, right);
    }
  }

  #divided(left: number, right: number): number {
    if (right === 0) throw this.#unreadable({ kind: 'division-by-zero' });
    return left / right;
  }

  /**
   * A sum, whose parts must each be what is asked for, so that the odd one can be named, or a multiple of what is asked
   * for. Only products of units need the units.
   */
  #combined(expression: Expression): Amounts {
    const { kind, text } = expression;
    if (!this.#hasUnits(expression)) throw this.#unreadable({ kind: 'unit-needed', part: text });
    if (kind === 'quantity') return this.#quantity(this.#termsOf(text), text);
    const { left, right } = expression;
    if (kind === '+' || kind === '-') {
      const [one, other] = [this.#combined(left), this.#combined(right)];
      return {
        value: kind === '+' ? one.value + other.value : one.value - other.value,
        asWater: one.asWater || other.asWater,
      };
    }
    const scaled = ({ value, asWater }: Amounts, by: number): Amounts => ({ value: value * by, asWater });
    if (!this.#hasUnits(right)) {
      const number = this.#number(right);
      return scaled(this.#combined(left), kind === '*' ? number : this.#divided(1, number));
    }
    if (kind === '*' && !this.#hasUnits(left)) return scaled(this.#combined(right), this.#number(left));
    return this.#inAsked(this.#amount(expression), text);
  }

  #amount(expression: Expression): Amount {
    const { sumOf, productOf, quotientOf } = this.#units;
    if (expression.kind === 'quantity') {
      const terms = this.#termsOf(expression.text);
      if (terms.length > 1 && terms.some(({ unit }) => unit === '')) throw this.#unreadable({ kind: 'unit-missing' });
      return terms
        .map(({ number, unit }): Amount => {
          const share = unit === '' ? 1 : PERCENT[unit.toLowerCase()];
          return share === undefined ? this.#amountOf(number, unit) : number * share;
        })
        .reduce((left, right) => this.#added(sumOf(left, right), expression.text, expression.text));
    }
    const { left, right } = expression;
    if (expression.kind === '*') return productOf(this.#amount(left), this.#amount(right));
    if (expression.kind === '/') {
      const divisor = this.#amount(right);
      if (divisor === 0 || (typeof divisor !== 'number' && divisor.value === 0))
        throw this.#unreadable({ kind: 'division-by-zero' });
      return quotientOf(this.#amount(left), divisor);
    }
    for (const [one, other] of [
      [left, right],
      [right, left],
    ] as const)
      if (!this.#hasUnits(one) && this.#hasUnits(other))
        throw this.#unreadable({ kind: 'unit-needed', part: one.text });
    const second = this.#amount(right);
    return this.#added(
      sumOf(this.#amount(left), expression.kind === '+' ? second : productOf(-1, second)),
      left.text,
      right.text,
    );
  }

  #added(sum: Amount | null, left: string, right: string): Amount {
    if (sum === null) throw this.#unreadable({ kind: 'not-addable', left, right });
    return sum;
  }
}
