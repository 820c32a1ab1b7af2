/**
 * Evaluates the equation of a working as it is shown, from the values that are put in: a small reader of the TeX that
 * the sheets use. Every value comes with the size of what it was summed from, against which rounding counts.
 */
import {
  tableLiquidEnthalpy,
  tableSaturationTemperature,
  tableTemperatureFromLiquidEnthalpy,
} from '../../../sim/fluids/water-table.ts';
import type { WorkingStep } from '../../../sim/index.ts';

interface Sized {
  readonly value: number;
  readonly size: number;
}

const sized = (value: number): Sized => ({ value, size: Math.abs(value) });
const sum = (a: Sized, b: Sized, sign: number): Sized => ({ value: a.value + sign * b.value, size: a.size + b.size });
const product = (a: Sized, b: Sized): Sized => ({ value: a.value * b.value, size: a.size * b.size });
const through = (compute: (x: number) => number, { value, size }: Sized): Sized => {
  const result = compute(value);
  return { value: result, size: value === 0 ? Math.abs(result) : (Math.abs(result) * size) / Math.abs(value) };
};
const quotient = (a: Sized, b: Sized): Sized =>
  product(
    a,
    through((x) => 1 / x, b),
  );

const FUNCTIONS: Readonly<Record<string, (x: number) => number>> = {
  'T_{sat}': tableSaturationTemperature,
  T_l: tableTemperatureFromLiquidEnthalpy,
  h_l: tableLiquidEnthalpy,
};

class Reader {
  private at = 0;
  private readonly tex: string;
  private readonly values: ReadonlyMap<string, number>;
  private readonly names: readonly string[];

  constructor(tex: string, values: ReadonlyMap<string, number>) {
    this.tex = tex;
    this.values = values;
    this.names = [...values.keys(), ...Object.keys(FUNCTIONS)].sort((a, b) => b.length - a.length);
  }

  read(): Sized {
    const result = this.expression();
    if (this.at < this.tex.length) throw new Error(`cannot read “${this.tex.slice(this.at)}” of ${this.tex}`);
    return result;
  }

  private skip(): void {
    const space = /^(?:\s|\\[, !])+/.exec(this.tex.slice(this.at));
    if (space) this.at += space[0].length;
  }

  private take(...wanted: readonly string[]): boolean {
    this.skip();
    const found = wanted.find((text) => this.tex.startsWith(text, this.at));
    if (found === undefined) return false;
    this.at += found.length;
    return true;
  }

  private expect(...wanted: readonly string[]): void {
    if (!this.take(...wanted)) throw new Error(`${wanted.join(' or ')} is missing at “${this.tex.slice(this.at)}”`);
  }

  private expression(): Sized {
    const negative = this.take('-');
    let result = this.term();
    if (negative) result = { value: -result.value, size: result.size };
    for (;;) {
      if (this.take('+')) result = sum(result, this.term(), 1);
      else if (this.take('-')) result = sum(result, this.term(), -1);
      else return result;
    }
  }

  private term(): Sized {
    let result = this.power();
    for (;;) {
      this.skip();
      if (this.take('/')) result = quotient(result, this.power());
      else if (this.at >= this.tex.length || /^(?:[-+=),}]|\\right)/.test(this.tex.slice(this.at))) return result;
      else result = product(result, this.power());
    }
  }

  private power(): Sized {
    const base = this.factor();
    if (!this.take('^')) return base;
    const exponent = Number(this.tex[this.at]);
    this.at++;
    return { value: base.value ** exponent, size: base.size ** exponent };
  }

  private bracketed(): Sized[] {
    this.expect('\\left(', '(');
    const found = [this.expression()];
    while (this.take(',')) found.push(this.expression());
    this.expect('\\right)', ')');
    return found;
  }

  private group(): Sized {
    this.expect('{');
    const result = this.expression();
    this.expect('}');
    return result;
  }

  private factor(): Sized {
    this.skip();
    const rest = this.tex.slice(this.at);
    const name = this.names.find((each) => rest.startsWith(each));
    if (name !== undefined) {
      this.at += name.length;
      const value = this.values.get(name);
      if (value !== undefined) return sized(value);
      return through(FUNCTIONS[name] as (x: number) => number, this.bracketed()[0] as Sized);
    }
    if (this.take('\\frac')) return quotient(this.group(), this.group());
    if (this.take('\\pi')) return sized(Math.PI);
    if (this.take('\\ln')) return through(Math.log, this.bracketed()[0] as Sized);
    if (this.take('\\min')) return this.bracketed().reduce((a, b) => (b.value < a.value ? b : a));
    const number = /^\d+(?:\.\d+)?/.exec(rest);
    if (number) {
      this.at += number[0].length;
      return sized(Number(number[0]));
    }
    return this.bracketed()[0] as Sized;
  }
}

/** How far the two sides of a step's equation lie apart, over the size of what they are summed from. */
export function mismatch({ tex, symbols, result }: WorkingStep): number {
  const values = new Map([
    [result.tex, result.value],
    ...symbols.map(({ tex: name, value }) => [name, value] as const),
  ]);
  const [left = '', right = ''] = (tex.split(',\\quad')[0] as string).split('=');
  const [a, b] = [left, right].map((side) => new Reader(side.trim(), values).read()) as [Sized, Sized];
  return Math.abs(a.value - b.value) / (a.size + b.size || 1);
}
