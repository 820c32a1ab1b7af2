/** The desk reference in English. Values stand as they are typed at the command line, in SI. */
import type { Argument, Role } from '../../correlation.ts';
import type { LookUpProblem } from '../../reference/look-up.ts';

/** Up to seven significant figures, as a reader would write the number. */
const plain = (value: number): string => String(Number(value.toPrecision(7)));

/** A range in SI: `273.15 to 403.15 K`, or that the source gives none. */
const range = (limits: readonly [number, number] | null, unit: string): string => {
  if (limits === null) return 'no limits given';
  const suffix = unit === '1' ? '' : ` ${unit}`;
  return limits[1] >= Number.MAX_VALUE
    ? `at least ${plain(limits[0])}${suffix}`
    : `${plain(limits[0])} to ${plain(limits[1])}${suffix}`;
};

/** `T is the temperature in K, 273.15 to 403.15 K`. */
const argumentWords = (symbol: string, { says, unit, range: limits }: Argument): string =>
  `${symbol} is the ${says} ${unit === '1' ? 'as a pure number' : `in ${unit}`}, ${range(limits ?? null, unit)}`;

const PROBLEMS: {
  readonly [K in LookUpProblem['kind']]: (problem: Extract<LookUpProblem, { readonly kind: K }>) => string;
} = {
  'unknown-name': ({ name, closest }) =>
    `“${name}” is not in the desk reference; the closest are ${closest.join(', ')}.`,
  missing: ({ symbol, argument }) => `${symbol} is missing: ${argumentWords(symbol, argument)}.`,
  unreadable: ({ symbol, argument, typed }) =>
    `${symbol}=${typed} is not a number: ${argumentWords(symbol, argument)}.`,
  'not-an-argument': ({ symbol, entry }) =>
    `${symbol} is not an argument of ${entry.name}; it takes ${Object.entries(entry.arguments)
      .map(([known, argument]) => argumentWords(known, argument))
      .join('; ')}.`,
  'no-value': ({ entry, values }) =>
    `${entry.name} has no finite value for ${Object.entries(values)
      .map(([symbol, given]) => `${symbol} = ${given}`)
      .join(', ')}.`,
  'out-of-range': ({ detail }) => `${detail}.`,
};

/** How runs use a relation. */
const ROLES: Readonly<Record<Role, string>> = {
  engine: 'Every run uses it.',
  'other-form': 'Runs use the same formulation in another form, a table or all constituents at once.',
  'look-up': 'For readers: no run needs it.',
  alternative: 'For comparison: runs use another relation for this.',
};

export const lookUp = () => ({ problems: PROBLEMS, roles: ROLES, range });
