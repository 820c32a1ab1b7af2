import { describe, expect, it } from 'vitest';
import {
  bandsOfFit,
  calibrate,
  englishReader,
  ensembleDesign,
  exampleScenario,
  fittedScenario,
  readScenario,
  runLength,
  runMember,
  runOn,
  simulate,
  stopAdvice,
  summariseEnsemble,
  toldRunLength,
  toldUncertain,
  type RunLength,
  type RunResult,
  type Scenario,
  type StopAdvice,
  type StopRule,
} from '../../../sim/index.ts';
import { answered, complaints, ownFolder, printed } from './asking.ts';

const { written } = ownFolder();
const metric = englishReader('metric');

/** Short and in long steps, so that many runs take little time. */
const glass = exampleScenario('class-glass');
const brisk: Scenario = {
  ...glass,
  run: { ...glass.run, duration_s: 2400 },
  advanced: { ...glass.advanced, step_s: 4, segments: 20 },
};
const file = written('brisk.json', JSON.stringify(brisk));

const toldOf = (result: RunResult, rule: StopRule): ReturnType<typeof toldRunLength> => {
  const facts = { length: runLength(result), end_s: result.summary.end_s, advice: stopAdvice(result, rule) };
  return printed(toldRunLength(facts, metric)) as ReturnType<typeof toldRunLength>;
};

interface Predicted {
  readonly length: RunLength;
  readonly advice: StopAdvice;
  readonly likely: Record<string, unknown> | null;
}

const NEAR_ENOUGH: readonly (readonly [string, StopRule])[] = [
  ['share=0.7', { kind: 'share', share: 0.7 }],
  ['oil-in-ten-minutes', { kind: 'oil-in-ten-minutes', below_mL: 0.5 }],
  ['oil-in-ten-minutes=0.2', { kind: 'oil-in-ten-minutes', below_mL: 0.2 }],
  ['cost-of-next=3', { kind: 'cost-of-next', above: 3 }],
];

describe('predict', () => {
  it('prints length and advice as the model gives them of the run carried on, without an ensemble when none is wanted', () => {
    const result = runOn(brisk);
    const found = answered('predict', file, '--runs', '0');
    expect(found).toEqual({
      name: brisk.name,
      planned_s: 2400,
      carriedOnTo_s: result.summary.end_s,
      ...toldOf(result, { kind: 'share', share: 0.9 }),
      likely: null,
    });
    expect(result.summary.end_s).toBeGreaterThan(2400);
    expect((found as Predicted).length.shares.map(({ share }) => share)).toEqual([0.5, 0.8, 0.9, 0.95, 0.99]);
  });

  it.each(NEAR_ENOUGH)('stops by the rule %s', (typed, rule) => {
    expect((answered('predict', file, '--runs', '0', '--rule', typed) as Predicted).advice).toEqual(
      toldOf(runOn(brisk), rule).advice,
    );
  });

  it('prints the bands and influences that the model sums up, for the seed given', () => {
    const design = ensembleDesign(brisk, 4, 7);
    const { headline, asPlanned, influences, times_s, oil_mL, recovery } = summariseEnsemble(
      design,
      design.rows.map((_, row) => runMember(design, row)),
    );
    const { likely } = answered('predict', file, '--runs', '4', '--seed', '7') as Predicted;
    expect(likely).toMatchObject(
      printed({
        seed: 7,
        members: 4,
        headline,
        asPlanned,
        influences,
        times_s,
        oil_mL,
        recovery,
        doubts: toldUncertain(design.doubts, metric),
      }) as object,
    );
    expect(likely?.['mattersMost']).toMatchObject({
      oil_mL: influences.oil_mL[0]?.id,
      condensingLength_m: influences.condensingLength_m[0]?.id,
      energyFuel_J: influences.energyFuel_J[0]?.id,
      end_s: null,
    });
  });

  it('draws what a fit settled within what it leaves in doubt', () => {
    const points = [20, 30, 40, 50, 60, 70].map((minute) => ({ time_s: 60 * minute, oil_mL: minute / 12 }));
    const fit = calibrate(brisk, points, ['oilContent']);
    if (!fit.ok) throw new Error(fit.problem.kind);
    const bands = bandsOfFit(fit);
    const scenario = fittedScenario(brisk, fit);
    const { length, likely } = answered(
      'predict',
      file,
      '--runs',
      '1',
      '--fit',
      written('fit.json', JSON.stringify({ fitted: { scenario, bands } })),
    ) as Predicted;
    expect(length).toMatchObject(printed(runLength(runOn(scenario))) as object);
    expect(likely?.['doubts']).toEqual(printed(toldUncertain(ensembleDesign(scenario, 1, 1, bands).doubts, metric)));
    expect(bands.oilContent?.low).toBeGreaterThan(0.4);
  });

  it('refuses rules, numbers and fits that are none, naming what is allowed', () => {
    const refused: readonly (readonly [string, string, RegExp])[] = [
      [
        '--rule',
        'shares=0.9',
        /^--rule: “shares” is not a rule; did you mean share\? There are share, oil-in-ten-minutes, cost-of-next\.$/,
      ],
      ['--rule', 'share=1', /^--rule share: 1 is not allowed; allowed is 0\.05 to 0\.999\.$/],
      [
        '--rule',
        'oil-in-ten-minutes=',
        /^--rule oil-in-ten-minutes: “” is not allowed; allowed is 0\.001 to 10000 mL\.$/,
      ],
      ['--rule', 'cost-of-next=dear', /^--rule cost-of-next: dear is not allowed/],
      ['--runs', '2.5', /^--runs: 2\.5 is not allowed; it must be a whole number, 0 to 100000\.$/],
      ['--runs', '200000', /^--runs: 200000 is not allowed; allowed is 0 to 100000\.$/],
      ['--seed', 'x', /^--seed: x is not allowed; allowed is 0 to 4294967295\.$/],
      ['--fit', 'nowhere.json', /^--fit: there is no file “nowhere\.json”\.$/],
      [
        '--fit',
        file,
        /^--fit: .*brisk\.json is not what “fit” prints; fitted\.scenario\.factors and fitted\.bands are needed\.$/,
      ],
      [
        '--faster',
        'x',
        /^Unknown option '--faster'; there are --fit, --help, --json, --rule, --runs, --seed, --units, --with\.$/,
      ],
    ];
    for (const [flag, value, says] of refused)
      expect(complaints('predict', file, flag, value), `${flag} ${value}`).toEqual([expect.stringMatching(says)]);
    expect(complaints('predict')).toEqual([expect.stringMatching(/^scenario is missing/)]);
    expect(complaints('predict', file, '--with', 'pot.diameter_m=9', '--with', 'run.duration_s=no')).toHaveLength(2);
    expect(complaints('predict', '-', '--fit', '-')).toEqual([
      'Standard input can be the scenario or the fit, not both.',
    ]);
  });

  it('names every band and factor of a fit that cannot be', () => {
    const wrong = {
      fitted: {
        scenario: { factors: { oilContent: -1 } },
        bands: { oilContent: { low: 1.2, high: 2 }, weather: { low: 0.5, high: 2 }, dropSize: 3 },
      },
    };
    expect(complaints('predict', file, '--fit', written('wrong.json', JSON.stringify(wrong)))).toEqual([
      expect.stringMatching(/fitted\.bands\.oilContent is .*low must be above 0 and at most 1, high at least 1/),
      expect.stringMatching(/fitted\.bands\.weather is not an input that is drawn; there are oilContent, /),
      expect.stringMatching(/fitted\.bands\.dropSize is 3;/),
    ]);
    const factor = written('factor.json', JSON.stringify({ fitted: { ...wrong.fitted, bands: {} } }));
    expect(complaints('predict', file, '--fit', factor)).toEqual([
      expect.stringMatching(/factors\.oilContent\): -1 is not possible/),
    ]);
  });

  it('reads the scenario as run does', () => {
    const read = readScenario({
      ...brisk,
      name: 'Renamed',
      heat: { ...brisk.heat, setting: [{ at_s: 0, value: 0.5 }] },
    });
    if (!read.ok) throw new Error('the scenario should be valid');
    expect(
      answered('predict', file, '--runs', '0', '--with', 'heat.setting=0.5', '--with', 'name=Renamed'),
    ).toMatchObject({ name: 'Renamed', length: printed(runLength(runOn(read.scenario))) as object });
    expect(simulate(read.scenario).summary.oilCollected_kg).not.toBe(simulate(brisk).summary.oilCollected_kg);
  });
});
