/** The rule by which a run is to stop, as it is written on the command line. */
import { stopRule, STOP_RULES, STOP_RULE_KINDS, type StopRule } from '../index.ts';
import { closestWords } from '../reference/closest-words.ts';
import { BadInput } from './bad-input.ts';
import { numberIn, textOf, type Words } from './options.ts';

/** `--rule kind` or `--rule kind=number`. */
export function ruleOf(words: Words): StopRule {
  const text = textOf(words, 'rule');
  if (text === undefined) return stopRule('share');
  const [wanted = '', number] = text.split(/=(.*)/s);
  const kind = STOP_RULE_KINDS.find((known) => known === wanted);
  if (kind === undefined)
    throw new BadInput(
      `--rule: “${wanted}” is not a rule; did you mean ${closestWords(wanted, STOP_RULE_KINDS, 1).join()}? There are ${STOP_RULE_KINDS.join(', ')}.`,
    );
  const { min, max, unit } = STOP_RULES[kind];
  return number === undefined ? stopRule(kind) : stopRule(kind, numberIn(number, `--rule ${kind}`, min, max, unit));
}
