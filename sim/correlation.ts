/**
 * A published relation as data: what it gives, what it takes, where it holds, who published it, and how to
 * evaluate it. It is stated here once: a function's comment only names its entry. The step loop calls the plain
 * functions; tests, the desk reference (`limbeck look-up`) and the shown working read the entries.
 */

/** One input of a relation. */
export interface Argument {
  /** SI unit, `1` for a pure number. */
  readonly unit: string;
  /** Plain words, e.g. `bore of the tube`. */
  readonly says: string;
  /** Closed range in which the source supports the relation; omitted when the source gives none. */
  readonly range?: readonly [number, number];
  /** A difference of temperatures: no zero to shift between kelvin and degrees. */
  readonly isDifference?: true;
}

/** A validity limit on something computed from the inputs, such as a Reynolds number. */
export interface ValidityCheck {
  readonly symbol: string;
  readonly says: string;
  readonly range: readonly [number, number];
  value(values: Readonly<Record<string, number>>): number;
}

/**
 * How runs use a relation. `engine`: they call it. `other-form`: they use the same formulation in another form, a table
 * or all constituents at once. `look-up`: no run needs it, a reader may. `alternative`: it stands for comparison with
 * the relation that runs use.
 */
export type Role = 'engine' | 'other-form' | 'look-up' | 'alternative';

export interface Correlation {
  /** Kebab-case name by which the desk reference calls it. */
  readonly name: string;
  /** One plain sentence: the quantity and the situation. */
  readonly says: string;
  /** Inputs by textbook symbol, in the order of the function's positional arguments. */
  readonly arguments: Readonly<Record<string, Argument>>;
  readonly result: { readonly symbol: string; readonly unit: string; readonly isDifference?: true };
  /** The relation as TeX, in the source's arrangement. */
  readonly tex: string;
  /** Publication, edition, equation or table; `from memory` where it was not re-read. */
  readonly source: string;
  /** What the function does outside its range; where it throws a RangeError it `gives no value`. */
  readonly outside: string;
  readonly checks?: readonly ValidityCheck[];
  /** `engine` when left out. */
  readonly role?: Role;
  /** The plain function, which the step loop calls. */
  readonly compute: (...scalars: number[]) => number;
  /** The same from named values. */
  evaluate(values: Readonly<Record<string, number>>): number;
}

/** An entry as it is written. */
export type CorrelationEntry = Omit<Correlation, 'evaluate'>;

const valueOf = (name: string, values: Readonly<Record<string, number>>, symbol: string): number => {
  const value = values[symbol];
  if (value === undefined) throw new RangeError(`${name}: argument ${symbol} is missing`);
  return value;
};

export const correlation = (entry: CorrelationEntry): Correlation => ({
  ...entry,
  evaluate: (values) =>
    entry.compute(...Object.keys(entry.arguments).map((symbol) => valueOf(entry.name, values, symbol))),
});

/** A relation that no run needs. */
export const forReaders = (entry: CorrelationEntry): Correlation => correlation({ ...entry, role: 'look-up' });

/** A relation for comparison with the one that runs use. */
export const alternative = (entry: CorrelationEntry): Correlation => correlation({ ...entry, role: 'alternative' });

/** Entries under a heading that a reader may leaf through. */
export interface Topic {
  readonly title: string;
  readonly entries: readonly Correlation[];
}

/** The entry of that name. */
export function entryNamed(entries: readonly Correlation[], name: string): Correlation {
  const found = entries.find((entry) => entry.name === name);
  if (found === undefined) throw new RangeError(`no entry ${name}`);
  return found;
}

/** A relation whose properties are looked up, so that a reader types temperatures: equation and source are the base's. */
export const withProperties = (
  base: Correlation,
  properties: string,
  entry: Pick<CorrelationEntry, 'name' | 'says' | 'arguments' | 'outside' | 'compute'>,
): Correlation => forReaders({ ...entry, result: base.result, tex: base.tex, source: `${base.source}; ${properties}` });
