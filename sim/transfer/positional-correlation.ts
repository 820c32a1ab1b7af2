import { correlation, type Correlation } from '../correlation.ts';

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
