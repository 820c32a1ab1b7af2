import { describe, expect, it } from 'vitest';
import {
  compareRuns,
  englishReader,
  exampleScenario,
  gentleAgainstHard,
  pairedCount,
  pairedDesign,
  readScenario,
  recommend,
  runPaired,
  simulate,
  toldComparison,
  toldRecommendation,
  type Comparison,
  type Recommendation,
  type Scenario,
} from '../../../sim/index.ts';
import { answered, complaints, ownFolder, printed } from './asking.ts';

const { written } = ownFolder();

const brisk = (id: string, name: string): Scenario => {
  const scenario = exampleScenario(id);
  return {
    ...scenario,
    name,
    run: { ...scenario.run, duration_s: 3000 },
    advanced: { ...scenario.advanced, step_s: 5, segments: 20 },
  };
};
const lavender = brisk('gentle-lavender', 'Lavender');
const glass = brisk('class-glass', 'Glass');
const lavenderFile = written('lavender.json', JSON.stringify(lavender));
const glassFile = written('glass.json', JSON.stringify(glass));

/** So few draws that they take no time. */
const DRAWS = 2;
const FEW = ['--draws', String(DRAWS)];

const said = (scenarios: readonly Scenario[], reader = englishReader('metric'), draws = DRAWS, seed = 1): object => {
  const found = compareRuns(scenarios.map(simulate));
  const design = draws > 0 ? pairedDesign(scenarios, draws, seed) : null;
  const runs = design ? Array.from({ length: pairedCount(design) }, (_, index) => runPaired(design, index)) : [];
  const advice = recommend(found.runs, runs, seed);
  return printed({
    ...toldComparison(found, reader),
    recommendation: advice && toldRecommendation(advice, found.runs, reader),
  }) as object;
};

describe('compare', () => {
  it('prints what the model says of two to four runs', () => {
    const found = answered('compare', lavenderFile, glassFile, ...FEW) as Comparison;
    expect(found).toEqual(said([lavender, glass]));
    expect(found.conclusion.length).toBeGreaterThanOrEqual(2);
    expect(found.rows.map(({ id }) => id)).toEqual(
      expect.arrayContaining([
        'oil',
        'timeTo90',
        'coolantUsed',
        'energy',
        'cost',
        'coilNeeded',
        'haze',
        'share-limonene',
      ]),
    );
    expect(answered('compare', lavenderFile, glassFile, lavenderFile, glassFile, ...FEW)).toEqual(
      said([lavender, glass, lavender, glass]),
    );
  });

  it('puts its sentences into the units asked for, and leaves the numbers as they are', () => {
    const us = answered('compare', lavenderFile, glassFile, '--units', 'us', ...FEW) as ReturnType<
      typeof toldComparison
    >;
    expect(us).toEqual(said([lavender, glass], englishReader('us')));
    expect(us.rows.map(({ values }) => values)).toEqual(
      (answered('compare', lavenderFile, glassFile, '--draws', '0') as typeof us).rows.map(({ values }) => values),
    );
    expect(us.conclusion[0]?.sentence).toMatch(/mL/);
    expect(complaints('compare', lavenderFile, glassFile, '--units', 'imperial')).toEqual([
      '--units: “imperial” is not allowed; there are metric, us.',
    ]);
  });

  it('recommends one by paired draws, 20 of them unless told otherwise', () => {
    const recommended = (...flags: readonly string[]) =>
      (answered('compare', lavenderFile, glassFile, ...flags) as { recommendation: Recommendation | null })
        .recommendation;
    expect(recommended()).toMatchObject({ seed: 1, draws: 20, failed: 0, sentences: expect.any(Array) as unknown });
    expect(recommended('--draws', '3', '--seed', '9')).toEqual(
      (said([lavender, glass], undefined, 3, 9) as { recommendation: unknown }).recommendation,
    );
    expect(recommended('--draws', '0')).toBe(null);
    expect(complaints('compare', lavenderFile, glassFile, '--draws', '1.5')).toEqual([
      '--draws: 1.5 is not allowed; it must be a whole number, 0 to 1000.',
    ]);
  });

  it('sets a field of every scenario, or of one alone', () => {
    const hotter = (scenario: Scenario, length_m: number): Scenario => ({
      ...scenario,
      condenser: { ...scenario.condenser, length_m },
      site: { ...scenario.site, barometer_Pa: 95_000 },
    });
    expect(
      answered(
        'compare',
        lavenderFile,
        lavenderFile,
        '--with',
        'site.barometer_Pa=95000',
        '--with',
        'condenser.length_m=3',
        '--with',
        '2:condenser.length_m=2',
        ...FEW,
      ),
    ).toEqual(said([hotter(lavender, 3), hotter(lavender, 2)]));
  });

  it('boils one gently and hard, and hands over both scenarios', () => {
    const { gentle, hard } = gentleAgainstHard(lavender);
    expect(answered('compare', lavenderFile, '--gentle-against-hard', ...FEW)).toEqual({
      of: 'Lavender',
      ...said([gentle, hard]),
      scenarios: { gentle, hard },
    });
    expect(readScenario(gentle)).toEqual({ ok: true, scenario: gentle });
  });

  it('refuses too few, too many, and standard input for two', () => {
    expect(complaints('compare')).toEqual([
      'The scenarios are missing; 2 to 4 are compared, or one with --gentle-against-hard.',
    ]);
    expect(complaints('compare', lavenderFile)).toEqual([
      'A second scenario is missing; 2 to 4 are compared, or one with --gentle-against-hard.',
    ]);
    expect(complaints('compare', ...Array<string>(5).fill(lavenderFile))).toEqual([
      '2 to 4 scenarios can be compared, not 5.',
    ]);
    expect(complaints('compare', '-', '-')).toEqual([expect.stringContaining('“-” can only be given once')]);
    expect(complaints('compare', '--gentle-against-hard')).toEqual([expect.stringMatching(/^scenario is missing/)]);
    expect(complaints('compare', lavenderFile, glassFile, '--gentle-against-hard')).toEqual([
      expect.stringContaining('Only one scenario can be given'),
    ]);
    expect(complaints('compare', lavenderFile, glassFile, '--hard')).toEqual([
      "Unknown option '--hard'; there are --draws, --gentle-against-hard, --help, --json, --seed, --units, --with.",
    ]);
  });

  it('names every mistake with the scenario it is in', () => {
    expect(
      complaints(
        'compare',
        'gentle-lavendel',
        glassFile,
        written('broken.json', '{'),
        '--with',
        '2:pot.diameter_m=9',
        '--with',
        '4:pot.diameter_m=9',
        '--with',
        '0:name=x',
      ),
    ).toEqual([
      '--with: “4:pot.diameter_m=9” is for scenario 4; there are 3, counted from 1.',
      '--with: “0:name=x” is for scenario 0; there are 3, counted from 1.',
      expect.stringMatching(/^Scenario 1, gentle-lavendel: “gentle-lavendel” is neither an example nor a file/),
      expect.stringMatching(/^Scenario 2, .*glass\.json: .*pot\.diameter_m\): 9 is not possible/),
      expect.stringMatching(/^Scenario 3, .*broken\.json: The file .*broken\.json is not JSON: /),
    ]);
  });
});
