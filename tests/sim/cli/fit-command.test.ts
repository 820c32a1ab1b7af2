import { describe, expect, it } from 'vitest';
import {
  bandsOfFit,
  calibrate,
  calibrateTogether,
  englishReader,
  exampleScenario,
  fittedScenario,
  readPoints,
  simulate,
  toldFit,
  type Fit,
  type FitName,
  type Scenario,
} from '../../../sim/index.ts';
import { predictedReading } from '../../../sim/answers/calibration/readings.ts';
import { answered, complaints, ownFolder, printed } from './asking.ts';

const { folder, written } = ownFolder();

const glass = exampleScenario('class-glass');
const brisk: Scenario = {
  ...glass,
  run: { ...glass.run, duration_s: 4200 },
  advanced: { ...glass.advanced, step_s: 4, segments: 20 },
};
const still = written('still.json', JSON.stringify(brisk));

const truth = simulate({ ...brisk, factors: { ...brisk.factors, oilContent: 1.3 } });
const reading = (kind: 'oil_mL' | 'outlet_K' | 'distillate_kg', minute: number): number =>
  predictedReading(truth, { kind, time_s: 60 * minute });
const MINUTES = [25, 30, 35, 40, 50, 60, 70];
const logText = [
  'time (min), oil (mL), outlet °C, distillate L',
  ...MINUTES.map((minute) =>
    [
      minute,
      reading('oil_mL', minute).toFixed(2),
      (reading('outlet_K', minute) - 273.15).toFixed(1),
      reading('distillate_kg', minute).toFixed(3),
    ].join(', '),
  ),
].join('\n');
const log = written('log.csv', logText);

const fitOf = (text: string, names: readonly FitName[]): Fit => {
  const fit = calibrate(brisk, readPoints(text).points, names);
  if (!fit.ok) throw new Error(fit.problem.kind);
  return fit;
};

/** What the command prints of a fit. */
const told = (fit: Fit, columnsPassedOver: readonly string[] = []): unknown => {
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
  } = toldFit(fit, englishReader('metric'));
  return printed({
    name: brisk.name,
    sentence,
    factors,
    cannotTellApart: alike,
    notes,
    converged,
    chiSquare,
    degreesOfFreedom,
    reducedChiSquare,
    correlation,
    residuals,
    runs,
    columnsPassedOver,
    fitted: { scenario: fittedScenario(brisk, fit), bands: bandsOfFit(fit) },
  });
};

describe('fit', () => {
  it('prints the factors, intervals, residuals and fitted scenario that the model finds, by default of oil content and release', () => {
    const fit = fitOf(logText, ['oilContent', 'release']);
    expect(answered('fit', still, '--log', log)).toEqual(told(fit));
    const [oilContent] = fit.factors;
    expect(oilContent?.low).toBeLessThan(1.3);
    expect(oilContent?.high).toBeGreaterThan(1.3);
    expect(fit.residuals).toHaveLength(3 * MINUTES.length);
  });

  it('fits the factors named, and says which the log does not show', () => {
    const found = answered('fit', still, '--log', log, '--factors', 'oilContent, fouling') as Fit;
    expect(found).toEqual(told(fitOf(logText, ['oilContent', 'fouling'])));
    expect(found.factors.map(({ name, held }) => [name, held])).toEqual([
      ['oilContent', false],
      ['fouling', true],
    ]);
  });

  it('names the columns that are no readings, such as a heading misspelt', () => {
    const misspelt = logText.replace('outlet °C', 'outlt °C');
    const fit = fitOf(misspelt, ['oilContent', 'release']);
    expect(answered('fit', still, '--log', written('misspelt.csv', misspelt))).toEqual(told(fit, ['outlt °C']));
  });

  it('says which factors a log cannot tell apart', () => {
    const lavender = exampleScenario('gentle-lavender');
    const run = simulate({ ...lavender, factors: { ...lavender.factors, oilContent: 1.3, release: 0.7 } });
    const early = [
      'time (min);oil (mL)',
      ...[30, 34, 38, 42].map(
        (minute) => `${minute};${predictedReading(run, { kind: 'oil_mL', time_s: 60 * minute }).toFixed(1)}`,
      ),
    ].join('\n');
    const found = answered('fit', 'gentle-lavender', '--log', written('early.csv', early)) as {
      cannotTellApart: Fit['alike'];
      notes: readonly { readonly sentence: string }[];
    };
    expect(found.cannotTellApart).toEqual([
      { names: ['oilContent', 'release'], correlation: expect.closeTo(-0.98, 1) as number },
    ]);
    expect(found.notes[0]?.sentence).toMatch(/cannot tell the oil content from the speed of release/);
  });

  it('gives a file that predict takes', () => {
    const fitted = answered('fit', still, '--log', log, '--factors', 'oilContent') as {
      fitted: { scenario: Scenario };
    };
    const file = written('fit.json', JSON.stringify(fitted));
    const plain = answered('predict', written('fitted.json', JSON.stringify(fitted.fitted.scenario)), '--runs', '0');
    expect(answered('predict', still, '--runs', '0', '--fit', file)).toEqual(plain);
  });

  it('refuses a log with lines that cannot be read, naming each', () => {
    const spoilt = written('spoilt.csv', `${logText}\n75, much, 20, 1\n80, , , \n`);
    expect(complaints('fit', still, '--log', spoilt)).toEqual([
      expect.stringMatching(/^--log .*spoilt\.csv: Line 9: “much” is not a number\.$/),
      expect.stringMatching(/^--log .*spoilt\.csv: Line 10: There is a time but no reading\.$/),
    ]);
    expect(complaints('fit', still, '--log', written('unit.csv', 'time (min), oil (bushel)\n20, 3\n'))[0]).toMatch(
      /unit\.csv: Headings: the unit “bushel” of “oil” is not known\. Known are ml/,
    );
    expect(complaints('fit', still, '--log', written('empty.csv', '\n'))).toEqual([
      expect.stringMatching(/empty\.csv: There is nothing to read\. Give a line of headings/),
    ]);
    expect(complaints('fit', still, '--log', still)).toEqual([
      expect.stringMatching(/still\.json: this is JSON; a log is a line of headings/),
    ]);
    expect(complaints('fit', still, '--log', 'nowhere.csv')).toEqual(['--log: there is no file “nowhere.csv”.']);
    expect(complaints('fit', still, '--log', folder)).toEqual([expect.stringMatching(/can't be read \(EISDIR\)/)]);
  });

  it('refuses factors that are none, twice or too many, and readings too few to tell', () => {
    expect(complaints('fit', still, '--log', log, '--factors', 'oil,release,release')).toEqual([
      expect.stringMatching(
        /^--factors: “oil” is not a factor; did you mean oilContent\? There are oilContent, release, .*dropSize\.$/,
      ),
      '--factors: release is given twice.',
    ]);
    expect(complaints('fit', still, '--log', log, '--factors', '')).toEqual([
      expect.stringMatching(/^--factors: “” is not a factor/),
    ]);
    expect(complaints('fit', still, '--log', log, '--factors', 'oilContent,release,fouling,dropSize')).toEqual([
      'Choose 1 to 3 factors to fit, not 4.',
    ]);
    expect(complaints('fit', still, '--log', written('two.csv', '30,4\n40,5\n'))).toEqual([
      '2 readings are too few to find 2 factors. Log at least 4.',
    ]);
  });

  it('refuses to do without a scenario or a log, and to read both from one place', () => {
    expect(complaints('fit', '--log', log)).toEqual([expect.stringMatching(/^scenario is missing/)]);
    expect(complaints('fit', still)).toEqual([
      '--log is missing; it names the file with what was logged, or - for standard input.',
    ]);
    expect(complaints('fit', '-', '--log', '-')).toEqual(['Standard input can be the scenario or the log, not both.']);
    expect(complaints('fit', still, '--log', log, '--runs', '3')).toEqual([
      "Unknown option '--runs'; there are --factors, --help, --json, --log, --units, --with.",
    ]);
    expect(complaints('fit', still, '--log', log, '--with', 'factors.oilContent=99')).toEqual([
      expect.stringMatching(/factors\.oilContent\): 99 is not possible/),
    ]);
  });
});

describe('limbeck fit with several logs', () => {
  it('fits one set of factors to all, at one scenario or each at its own', () => {
    const short = written('short.csv', logText.split('\n').slice(0, 4).join('\n'));
    const points = [readPoints(logText).points, readPoints(logText.split('\n').slice(0, 4).join('\n')).points];
    const both = calibrateTogether(
      points.map((each) => ({ scenario: brisk, points: each })),
      ['oilContent'],
    );
    if (!both.ok) throw new Error(both.problem.kind);
    for (const stills of [[still], [still, still]]) {
      const said = answered('fit', ...stills, '--log', log, '--log', short, '--factors', 'oilContent') as {
        readonly factors: readonly { readonly value: number }[];
        readonly residuals: readonly { readonly log: number }[];
      };
      expect(said.factors[0]?.value).toBeCloseTo(both.factors[0]?.value ?? 0, 9);
      expect(said.residuals.at(-1)?.log).toBe(1);
    }
  });

  it('wants a scenario for all logs, or one for each', () => {
    expect(complaints('fit', still, still, still, '--log', log, '--log', log).join(' ')).toContain(
      '3 scenarios and 2 logs',
    );
  });
});
