/**
 * A published relation as data: what it gives, what it takes, where it holds, who published it, and how to
 * evaluate it. The step loop calls the plain functions; tests, the desk reference (`limbeck look-up`) and the
 * shown working read these entries, so that prose and code cannot drift apart.
 */

/** One input of a relation. */
export interface Argument {
  /** SI unit, `1` for a pure number. */
  readonly unit: string;
  /** Plain words, e.g. `bore of the tube`. */
  readonly says: string;
  /** Closed range in which the source supports the relation; omitted when the source gives none. */
  readonly range?: readonly [number, number];
}

/** A validity limit on something computed from the inputs, such as a Reynolds number. */
export interface ValidityCheck {
  readonly symbol: string;
  readonly says: string;
  readonly range: readonly [number, number];
  value(values: Readonly<Record<string, number>>): number;
}

export interface Correlation {
  /** Kebab-case name by which the desk reference calls it. */
  readonly name: string;
  /** One plain sentence: the quantity and the situation. */
  readonly says: string;
  /** Inputs by textbook symbol, in the order a reader would give them. */
  readonly arguments: Readonly<Record<string, Argument>>;
  readonly result: { readonly symbol: string; readonly unit: string };
  /** The relation as TeX, in the source's arrangement. */
  readonly tex: string;
  /** Publication, edition, equation or table; `from memory` where it was not re-read. */
  readonly source: string;
  /** What the function does outside its range. */
  readonly outside: string;
  readonly checks?: readonly ValidityCheck[];
  evaluate(values: Readonly<Record<string, number>>): number;
}

/** Identity helper that lets an entry be written with full type checking. */
export const correlation = (entry: Correlation): Correlation => entry;

/** What a relation says of itself, without the way to evaluate it. */
export type CorrelationText = Omit<Correlation, 'evaluate'>;

const valueOf = (name: string, values: Readonly<Record<string, number>>, symbol: string): number => {
  const value = values[symbol];
  if (value === undefined) throw new RangeError(`${name}: argument ${symbol} is missing`);
  return value;
};

/**
 * Ties an entry to the plain function it describes: the entry's arguments, in the order in which they are
 * written, are the function's positional arguments. Only the desk reference evaluates through the entry; the
 * step loop calls the function itself.
 */
export const positionalCorrelation = (
  text: CorrelationText,
  compute: (...scalars: number[]) => number,
): Correlation => {
  const symbols = Object.keys(text.arguments);
  return correlation({
    ...text,
    evaluate: (values) => compute(...symbols.map((symbol) => valueOf(text.name, values, symbol))),
  });
};
