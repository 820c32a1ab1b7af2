/** `limbeck fit`: correction factors of the model from the log of a real run. */
import {
  bandsOfFit,
  calibrateTogether,
  fitMessages,
  fittedScenario,
  FIT_NAMES,
  toldFit,
  USUAL_FIT,
  type FitName,
  type Scenario,
} from '../index.ts';
import { closestWords } from '../reference/closest-words.ts';
import { BadInput } from './bad-input.ts';
import { logFrom, logSources, refuseTwiceFromInput } from './log-file.ts';
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

/** One still for all logs, or as many as there are logs, in their order. */
function scenariosFor(words: Words, logs: number): readonly Scenario[] {
  const { positionals } = words;
  if (positionals.length > 1 && positionals.length !== logs)
    throw new BadInput(
      `${positionals.length} scenarios and ${logs} logs: name one scenario for all logs, or one for each.`,
    );
  const named = positionals.length > 1 ? positionals : [onlyWord(words, 'scenario')];
  refuseTwiceFromInput([...named, ...logSources(words)]);
  return named.map((source) => scenarioFrom(source, listOf(words, 'with')));
}

export function fitCommand(args: readonly string[]): string {
  const words = readWords(args, {
    ...WITH,
    ...UNITS,
    log: { type: 'string', multiple: true },
    factors: { type: 'string' },
  });
  const reader = readerOf(words);
  const names = factorsOf(words);
  const sources = logSources(words);
  const stills = scenariosFor(words, sources.length);
  const read = sources.map((log) => logFrom(log, reader));
  const logged = read.map(({ points }, place) => ({ points, scenario: (stills[place] ?? stills[0]) as Scenario }));
  const [scenario] = stills as [Scenario];
  const passedOver = [...new Set(read.flatMap((log) => log.passedOver))];
  const fit = calibrateTogether(logged, names);
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
