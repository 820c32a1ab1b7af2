/** `limbeck predict`: how long to run, when to stop, how sure that is and what makes it unsure. */
import {
  ensembleDesign,
  HEADLINE_NAMES,
  MOST_MEMBERS,
  MOST_SEED,
  runLength,
  runMember,
  runOn,
  stopAdvice,
  summariseEnsemble,
  toldRunLength,
  toldUncertain,
  USUAL_MEMBERS,
  USUAL_SEED,
  type OwnBands,
  type Reader,
  type Scenario,
} from '../index.ts';
import { BadInput } from './bad-input.ts';
import { fitFrom } from './fit-file.ts';
import { listOf, onlyWord, readerOf, readWords, textOf, UNITS, wholeNumberOf, WITH } from './options.ts';
import { toJson } from './print.ts';
import { counted } from './progress.ts';
import { scenarioFrom } from './read-input.ts';
import { ruleOf } from './stop-rule.ts';
import { whole } from './whole-run.ts';

/** The likely runs: bands, and for every headline number the inputs from most to least moving. */
function likelyRuns(scenario: Scenario, members: number, seed: number, own: OwnBands, reader: Reader) {
  const design = ensembleDesign(scenario, members, seed, own);
  const { headline, asPlanned, influences, times_s, oil_mL, recovery, failed } = summariseEnsemble(
    design,
    counted(design.rows.length, 'runs', (row) => runMember(design, row)),
  );
  const mattersMost = Object.fromEntries(
    HEADLINE_NAMES.map((name) => {
      const [first] = influences[name];
      return [name, first && first.swing !== null && first.swing !== 0 ? first.id : null];
    }),
  );
  return {
    seed,
    members,
    failed,
    headline,
    asPlanned,
    mattersMost,
    influences,
    doubts: toldUncertain(design.doubts, reader),
    times_s,
    oil_mL,
    recovery,
  };
}

export function predictCommand(args: readonly string[]): string {
  const words = readWords(args, {
    ...WITH,
    ...UNITS,
    rule: { type: 'string' },
    runs: { type: 'string' },
    seed: { type: 'string' },
    fit: { type: 'string' },
  });
  const members = wholeNumberOf(words, 'runs', 0, MOST_MEMBERS) ?? USUAL_MEMBERS;
  const seed = wholeNumberOf(words, 'seed', 0, MOST_SEED) ?? USUAL_SEED;
  const rule = ruleOf(words);
  const reader = readerOf(words);
  const source = onlyWord(words, 'scenario');
  const fitFile = textOf(words, 'fit');
  if (source === '-' && fitFile === '-') throw new BadInput('Standard input can be the scenario or the fit, not both.');
  const fit = fitFile === undefined ? null : fitFrom(fitFile);
  const scenario = scenarioFrom(source, [...(fit?.assignments ?? []), ...listOf(words, 'with')]);
  const result = whole(runOn(scenario), reader);
  const carriedOnTo_s = result.summary.end_s;
  return toJson({
    name: scenario.name,
    planned_s: scenario.run.duration_s,
    carriedOnTo_s,
    ...toldRunLength({ length: runLength(result), end_s: carriedOnTo_s, advice: stopAdvice(result, rule) }, reader),
    likely: members === 0 ? null : likelyRuns(scenario, members, seed, fit?.bands ?? {}, reader),
  });
}
