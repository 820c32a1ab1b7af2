/** `limbeck compare`: two to four runs side by side, or one still boiled gently and hard. */
import {
  compareRuns,
  gentleAgainstHard,
  MOST_COMPARED,
  MOST_DRAWS,
  MOST_SEED,
  pairedCount,
  pairedDesign,
  recommend,
  runPaired,
  toldComparison,
  toldRecommendation,
  USUAL_DRAWS,
  USUAL_SEED,
  type Comparison,
  type Reader,
  type Scenario,
} from '../index.ts';
import { BadInput } from './bad-input.ts';
import { isSet, listOf, onlyWord, readerOf, readWords, UNITS, wholeNumberOf, WITH, type Words } from './options.ts';
import { toJson } from './print.ts';
import { counted } from './progress.ts';
import { scenarioFrom } from './read-input.ts';
import { wholeRun } from './whole-run.ts';

const GENTLE_AGAINST_HARD = 'gentle-against-hard';

interface Asked {
  readonly draws: number;
  readonly seed: number;
  readonly reader: Reader;
}

function recommendation(scenarios: readonly Scenario[], { runs }: Comparison, { draws, seed, reader }: Asked) {
  if (draws === 0) return null;
  const design = pairedDesign(scenarios, draws, seed);
  const paired = counted(pairedCount(design), 'runs', (index) => runPaired(design, index));
  const found = recommend(runs, paired, seed);
  return found && toldRecommendation(found, runs, reader);
}

function comparison(scenarios: readonly Scenario[], asked: Asked) {
  const { reader } = asked;
  const found = compareRuns(scenarios.map((scenario) => wholeRun(scenario, reader)));
  return { ...toldComparison(found, reader), recommendation: recommendation(scenarios, found, asked) };
}

/** What `--with` says to one of the scenarios: `2:path=value` is meant for the second alone. */
function assignmentsFor(nth: number, assignments: readonly string[]): readonly string[] {
  return assignments.flatMap((assignment) => {
    const [, number, rest = ''] = /^(\d+):(.*)$/s.exec(assignment) ?? [];
    return number === undefined ? [assignment] : Number(number) === nth ? [rest] : [];
  });
}

/** Every scenario, or what is wrong with all of them. */
function scenariosFrom(sources: readonly string[], assignments: readonly string[]): readonly Scenario[] {
  const problems: string[] = [];
  for (const assignment of assignments) {
    const number = Number(/^(\d+):/.exec(assignment)?.[1] ?? 1);
    if (number < 1 || number > sources.length)
      problems.push(`--with: “${assignment}” is for scenario ${number}; there are ${sources.length}, counted from 1.`);
  }
  const scenarios = sources.flatMap((source, index) => {
    try {
      return [scenarioFrom(source, assignmentsFor(index + 1, assignments))];
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      problems.push(...error.lines.map((line) => `Scenario ${index + 1}, ${source}: ${line}`));
      return [];
    }
  });
  if (problems.length > 0) throw new BadInput(problems);
  return scenarios;
}

function sourcesOf({ positionals }: Words): readonly string[] {
  if (positionals.length < 2)
    throw new BadInput(
      `${positionals.length === 0 ? 'The scenarios are' : 'A second scenario is'} missing; 2 to ${MOST_COMPARED} are compared, or one with --${GENTLE_AGAINST_HARD}.`,
    );
  if (positionals.length > MOST_COMPARED)
    throw new BadInput(`2 to ${MOST_COMPARED} scenarios can be compared, not ${positionals.length}.`);
  if (positionals.filter((source) => source === '-').length > 1)
    throw new BadInput('Standard input holds one scenario; “-” can only be given once.');
  return positionals;
}

export function compareCommand(args: readonly string[]): string {
  const words = readWords(args, {
    ...WITH,
    ...UNITS,
    [GENTLE_AGAINST_HARD]: { type: 'boolean' },
    draws: { type: 'string' },
    seed: { type: 'string' },
  });
  const assignments = listOf(words, 'with');
  const asked: Asked = {
    draws: wholeNumberOf(words, 'draws', 0, MOST_DRAWS) ?? USUAL_DRAWS,
    seed: wholeNumberOf(words, 'seed', 0, MOST_SEED) ?? USUAL_SEED,
    reader: readerOf(words),
  };
  if (!isSet(words, GENTLE_AGAINST_HARD))
    return toJson(comparison(scenariosFrom(sourcesOf(words), assignments), asked));
  const of = scenarioFrom(onlyWord(words, 'scenario'), assignments);
  const { gentle, hard } = gentleAgainstHard(of);
  return toJson({ of: of.name, ...comparison([gentle, hard], asked), scenarios: { gentle, hard } });
}
