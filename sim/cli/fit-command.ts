/** `limbeck fit`: correction factors of the model from the log of a real run. */
import {
  bandsOfFit,
  calibrate,
  fitMessages,
  fittedScenario,
  FIT_NAMES,
  toldFit,
  USUAL_FIT,
  type FitName,
} from '../index.ts';
import { closestWords } from '../reference/closest-words.ts';
import { BadInput } from './bad-input.ts';
import { logFrom, logSource } from './log-file.ts';
import { listOf, onlyWord, readerOf, readWords, textOf, UNITS, WITH, type Words } from './options.ts';
import { toJson } from './print.ts';
import { scenarioFrom } from './read-input.ts';
import { brokeOff } from './whole-run.ts';

function factorsOf(words: Words): readonly FitName[] {
  const text = textOf(words, 'factors');
  if (text === undefined) return USUAL_FIT;
  const given = text.split(',').map((name) => name.trim());
  const problems = given.flatMap((name, index) => {
    if (!FIT_NAMES.some((known) => known === name))
      return [
        `--factors: “${name}” is not a factor; did you mean ${closestWords(name, FIT_NAMES, 1).join()}? There are ${FIT_NAMES.join(', ')}.`,
      ];
    return given.indexOf(name) < index ? [`--factors: ${name} is given twice.`] : [];
  });
  if (problems.length > 0) throw new BadInput(problems);
  return given as FitName[];
}

export function fitCommand(args: readonly string[]): string {
  const words = readWords(args, { ...WITH, ...UNITS, log: { type: 'string' }, factors: { type: 'string' } });
  const source = onlyWord(words, 'scenario');
  const log = logSource(words, source);
  const names = factorsOf(words);
  const reader = readerOf(words);
  const { points, passedOver } = logFrom(log, reader);
  const scenario = scenarioFrom(source, listOf(words, 'with'));
  const fit = calibrate(scenario, points, names);
  if (!fit.ok)
    throw fit.problem.kind === 'broke-off'
      ? brokeOff(scenario, fit.problem, reader)
      : new BadInput(fitMessages(reader).refusal(fit.problem));
  const {
    sentence,
    factors,
    alike,
    notes,
    converged,
    chiSquare,
    degreesOfFreedom,
    reducedChiSquare,
    correlation,
    residuals,
    runs,
  } = toldFit(fit, reader);
  return toJson({
    name: scenario.name,
    sentence,
    factors,
    cannotTellApart: alike,
    notes,
    converged,
    chiSquare,
    degreesOfFreedom,
    reducedChiSquare,
    correlation,
    runs,
    residuals,
    columnsPassedOver: passedOver,
    fitted: { scenario: fittedScenario(scenario, fit), bands: bandsOfFit(fit) },
  });
}
