import { describe, expect, test } from 'vitest';
import { englishReader, problemMessage, readScenario, THIN_SPACE, type UnitSystem } from '../../../sim/index.ts';
import { fileProblemMessage } from '../../../sim/messages/problems.ts';

const problemsOf = (input: unknown) => {
  const read = readScenario(input);
  if (read.ok) throw new Error('the input was taken');
  return read.problems;
};
const plain = (text: string): string => text.replaceAll(THIN_SPACE, ' ');
const onPage = (input: unknown, units: UnitSystem): string =>
  plain(
    problemsOf(input)
      .map((problem) => problemMessage(problem, englishReader(units)))
      .join(' '),
  );

describe('a problem beside its field names the field, the value and what is allowed, in the units of the field', () => {
  test.each<[string, unknown, string, string]>([
    [
      'a number past its range',
      { pot: { diameter_m: 9 } },
      'Pot diameter: 9000 mm is not possible; allowed is 50–1500 mm.',
      'Pot diameter: 354.3 in is not possible; allowed is 1.969–59.05 in.',
    ],
    [
      'a text for a number',
      { pot: { diameter_m: 'wide' } },
      'Pot diameter: “wide” is not possible; allowed is 50–1500 mm.',
      'Pot diameter: “wide” is not possible; allowed is 1.969–59.05 in.',
    ],
    [
      'a field that may be left open',
      { site: { barometer_Pa: 10 } },
      'Barometer: 0.1 hPa is not possible; allowed is 550–1080 hPa, or leave it empty.',
      'Barometer: 0.002953 in Hg is not possible; allowed is 16.25–31.89 in Hg, or leave it empty.',
    ],
    [
      'a rule that joins two fields',
      { condenser: { insideDiameter_m: 0.014, outsideDiameter_m: 0.012 } },
      'Tube bore: 14 mm is not possible; it must be less than the outside diameter, 12 mm.',
      'Tube bore: 0.5512 in is not possible; it must be less than the outside diameter, 0.4724 in.',
    ],
    [
      'a rule that joins many',
      { charge: { mass_kg: 50 } },
      'Charge: 50 kg is not possible; the pot holds at most 2.734 kg of plant, packed as it is.',
      'Charge: 110.2 lb is not possible; the pot holds at most 6.028 lb of plant, packed as it is.',
    ],
  ])('%s', (_, input, metric, us) => {
    expect(onPage(input, 'metric')).toBe(metric);
    expect(onPage(input, 'us')).toBe(us);
  });

  test('a limit is rounded to the allowed side', () => {
    const [problem] = problemsOf({ charge: { mass_kg: 50 } });
    if (problem?.kind !== 'charge-too-large') throw new Error('another problem');
    const said = /at most ([\d.]+) kg/u.exec(onPage({ charge: { mass_kg: 50 } }, 'metric'))?.[1];
    expect(Number(said)).toBeLessThanOrEqual(problem.values.most_kg);
    expect(Number(said)).toBeGreaterThan(problem.values.most_kg * 0.999);
  });
});

describe('a problem of a file', () => {
  test('stands in the names and the SI numbers of the file', () => {
    const [problem] = problemsOf({ pot: { diameter_m: 9 } });
    if (!problem) throw new Error('no problem');
    expect(plain(fileProblemMessage(problem, englishReader('metric')))).toBe(
      'Pot diameter (pot.diameter_m): 9 is not possible; allowed is 0.05–1.5 m.',
    );
  });
});
