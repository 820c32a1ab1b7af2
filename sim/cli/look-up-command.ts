/** `limbeck look-up`: one property or relation by name, or which there are. */
import type { Correlation } from '../correlation.ts';
import { englishReader } from '../messages/language.ts';
import { lookUpMessages, lookUpProblem } from '../messages/look-up.ts';
import { correlations } from '../reference/entries.ts';
import { lookUp, type LookUpAnswer } from '../reference/look-up.ts';
import { searchReference } from '../reference/search.ts';
import { BadInput } from './bad-input.ts';
import { isSet, readWords } from './options.ts';
import { toJson } from './print.ts';

/** The desk reference speaks SI to every reader. */
const READER = englishReader('metric');
const { range: rangeInSI, roles } = lookUpMessages(READER);

const GREEK: Readonly<Record<string, string>> = {
  Delta: 'Δ',
  Phi: 'Φ',
  alpha: 'α',
  delta: 'δ',
  eta: 'η',
  gamma: 'γ',
  rho: 'ρ',
  theta: 'θ',
  varepsilon: 'ε',
  varphi: 'φ',
};

/** A symbol of an equation as a terminal can show it: `\\Delta T_{lm}` becomes `ΔT_lm`. */
const plainSymbol = (tex: string): string =>
  tex
    .replace(
      /\\([A-Za-z]+)\s*/g,
      (_, name: string) =>
        GREEK[name] ?? (name === 'dot' || name === 'bar' || name === 'operatorname' ? '' : `${name} `),
    )
    .replace(/[{}]/g, '');

const rangeWords = ({
  range,
  unit,
}: {
  readonly range?: readonly [number, number] | null;
  readonly unit: string;
}): string => rangeInSI(range ?? null, unit);

const unitWords = (unit: string): string => (unit === '1' ? '' : ` ${unit}`);

const described = ({ name, says, arguments: args, result, source, outside, tex, checks, role }: Correlation) => ({
  name,
  says,
  role: role ?? 'engine',
  arguments: args,
  result,
  source,
  outside,
  tex,
  ...(checks
    ? { checks: checks.map((check) => ({ symbol: check.symbol, says: check.says, range: check.range })) }
    : {}),
});

const listed = ({ name, says, arguments: args, result, checks }: Correlation): string =>
  [
    `${name} → ${plainSymbol(result.symbol)}${result.unit === '1' ? '' : ` in ${result.unit}`}`,
    `    ${says}`,
    ...Object.entries(args).map(
      ([symbol, argument]) =>
        `    ${symbol}: ${argument.says}, ${argument.unit === '1' ? 'pure number' : argument.unit}; ${rangeWords(argument)}`,
    ),
    ...(checks ?? []).map(
      (check) => `    limit: ${check.symbol}, ${check.says}; ${rangeWords({ range: check.range, unit: '1' })}`,
    ),
  ].join('\n');

function catalogue(entries: readonly Correlation[], json: boolean): string {
  return json ? toJson(entries.map(described)) : entries.map(listed).join('\n');
}

/** As many digits as published tables print. */
const tenDigits = (value: number): string => String(Number(value.toPrecision(10)));

function answerText({
  name,
  says,
  role,
  symbol,
  value,
  unit,
  inRange,
  limits,
  outside,
  source,
  tex,
}: LookUpAnswer): string {
  const lines = limits.map((limit) => {
    const range =
      limit.range === null ? rangeWords(limit) : `${rangeWords(limit)}, ${limit.inRange ? 'in range' : 'OUT OF RANGE'}`;
    return `  ${limit.symbol} = ${tenDigits(limit.value)}${unitWords(limit.unit)}: ${limit.says}; ${range}`;
  });
  const out = limits.filter((limit) => !limit.inRange).map((limit) => limit.symbol);
  return [
    `${plainSymbol(symbol)} = ${tenDigits(value)}${unitWords(unit)}${unit === 'K' ? ` (${tenDigits(value - 273.15)} °C)` : ''}`,
    `  ${name}: ${says}`,
    ...lines,
    inRange ? '  in range' : `  out of range: ${out.join(', ')} (outside its range: ${outside})`,
    `  source: ${source}`,
    `  ${roles[role]}`,
    `  equation: ${tex}`,
  ].join('\n');
}

function typedValues(words: readonly string[]): Record<string, string> {
  const typed: Record<string, string> = {};
  for (const word of words) {
    const cut = word.indexOf('=');
    if (cut < 1) throw new BadInput(`“${word}” is not allowed; arguments are written symbol=value, as in T=100C.`);
    const symbol = word.slice(0, cut);
    if (Object.hasOwn(typed, symbol)) throw new BadInput(`${symbol} is given twice.`);
    typed[symbol] = word.slice(cut + 1);
  }
  return typed;
}

export function lookUpCommand(args: readonly string[]): string {
  const words = readWords(args, { list: { type: 'boolean' }, search: { type: 'string' } });
  const json = isSet(words, 'json');
  const { search } = words.values;
  if (typeof search === 'string') {
    const found = searchReference(search).items.flatMap((item) => (item.kind === 'relation' ? [item.entry] : []));
    if (found.length === 0)
      throw new BadInput(
        `Nothing in the desk reference speaks of “${search}”; “look-up --list” names all ${correlations.length}.`,
      );
    return catalogue(found, json);
  }
  if (isSet(words, 'list')) return catalogue(correlations, json);
  const [name, ...given] = words.positionals;
  if (name === undefined)
    throw new BadInput(
      'The name of a property or relation is missing; “look-up --list” names them all, “look-up --search word” finds some.',
    );
  const answer = lookUp(name, typedValues(given));
  if (!answer.ok) throw new BadInput(answer.problems.map((problem) => lookUpProblem(problem, READER)));
  return json ? toJson(answer.answer) : answerText(answer.answer);
}
