import { describe, expect, it } from 'vitest';
import { exampleScenario, examples, readScenario, THIN_SPACE, type Problem } from '../../../sim/index.ts';
import { englishReader } from '../../../sim/messages/language.ts';
import { fileProblemMessage } from '../../../sim/messages/problems.ts';

const problemsOf = (input: unknown): readonly Problem[] => {
  const read = readScenario(input);
  if (read.ok) throw new Error('the input was taken');
  return read.problems;
};

const inFile = (problem: Problem): string =>
  fileProblemMessage(problem, englishReader('metric')).replaceAll(THIN_SPACE, ' ');

type Row = readonly [what: string, input: unknown, path: string, value: unknown, allowed: string];

const step = (value: number, at_s: number) => ({ at_s, value, shape: 'step' });

const single: readonly Row[] = [
  ['a text where a number belongs', { pot: { diameter_m: 'wide' } }, 'pot.diameter_m', 'wide', 'allowed is 0.05–1.5 m'],
  ['a number past its range', { pot: { diameter_m: 3 } }, 'pot.diameter_m', 3, 'allowed is 0.05–1.5 m'],
  ['a number short of its range', { heat: { ratedPower_W: 1 } }, 'heat.ratedPower_W', 1, 'allowed is 50–60000 W'],
  ['a share beyond one', { heat: { shareToPot: 1.2 } }, 'heat.shareToPot', 1.2, 'allowed is 0.05–1'],
  ['null in a field that needs a number', { pot: { water_kg: null } }, 'pot.water_kg', null, 'allowed is 0.05–1500 kg'],
  ['a number that is none', { pot: { water_kg: Number.NaN } }, 'pot.water_kg', Number.NaN, 'allowed is 0.05–1500 kg'],
  ['an endless number', { heat: { ratedPower_W: Infinity } }, 'heat.ratedPower_W', Infinity, 'allowed is 50–60000 W'],
  [
    'an open field out of range',
    { site: { barometer_Pa: 10 } },
    'site.barometer_Pa',
    10,
    'allowed is 55000–108000 Pa, or null',
  ],
  ['a broken count', { condenser: { tubes: 2.5 } }, 'condenser.tubes', 2.5, 'allowed is 1–200'],
  [
    'a choice that is none',
    { condenser: { kind: 'worm' } },
    'condenser.kind',
    'worm',
    '"coil-in-tub", "jacketed-tube", "bundle"',
  ],
  ['a field nobody knows', { pot: { colour: 'red' } }, 'pot.colour', 'red', 'no field has this name'],
  ['a part nobody knows', { boiling: {} }, 'boiling', {}, 'no field has this name'],
  ['a part that is no object', { pot: 7 }, 'pot', 7, 'fields in braces are needed'],
  ['another version', { version: 99 }, 'version', 99, 'version 3'],
  ['a name that goes on', { name: 'x'.repeat(121) }, 'name', 'x'.repeat(121), '120'],
  [
    'an unknown plant',
    { charge: { botanical: 'mandrake' } },
    'charge.botanical',
    'mandrake',
    'the name of a plant of the library is needed',
  ],
  ['a state that is none', { charge: { state: 'frozen' } }, 'charge.state', 'frozen', '"fresh", "dry"'],
  ['no oil constituent at all', { charge: { composition: [] } }, 'charge.composition', [], 'at least 1'],
  [
    'an unknown constituent',
    { charge: { composition: [{ constituent: 'gold', share: 1 }] } },
    'charge.composition.0.constituent',
    'gold',
    'known oil constituent',
  ],
  [
    'a constituent named twice',
    {
      charge: {
        composition: [
          { constituent: 'linalool', share: 0.5 },
          { constituent: 'linalool', share: 0.5 },
        ],
      },
    },
    'charge.composition.1.constituent',
    'linalool',
    'may stand once',
  ],
  [
    'shares that do not add up',
    {
      charge: {
        composition: [
          { constituent: 'linalool', share: 0.5 },
          { constituent: 'limonene', share: 0.4 },
        ],
      },
    },
    'charge.composition',
    0.9,
    'add up to 1',
  ],
  ['an empty schedule', { heat: { setting: [] } }, 'heat.setting', [], 'at least 1'],
  [
    'a schedule that begins late',
    { heat: { setting: [step(1, 60)] } },
    'heat.setting.0.at_s',
    60,
    'the first entry must be at the start',
  ],
  [
    'a schedule out of order',
    { heat: { setting: [step(1, 0), step(0.5, 600), step(0.7, 300)] } },
    'heat.setting.2.at_s',
    300,
    'later than the entry before it (600 s)',
  ],
  [
    'a schedule that begins with an event',
    { heat: { setting: [{ ...step(1, 0), after: 'first-drop' }] } },
    'heat.setting.0.after',
    'first-drop',
    'the first entry must be at the start',
  ],
  [
    'a schedule out of order within a phase',
    {
      heat: {
        setting: [step(1, 0), { ...step(0.5, 60), after: 'first-drop' }, { ...step(0.4, 60), after: 'first-drop' }],
      },
    },
    'heat.setting.2.at_s',
    60,
    'later than the entry before it (60 s)',
  ],
  [
    'phases out of order',
    {
      heat: {
        setting: [step(1, 0), { ...step(0.5, 0), after: 'first-drop' }, { ...step(0.4, 60), after: 'first-boil' }],
      },
    },
    'heat.setting.2.after',
    'first-boil',
    'in the order of what they count from: the start, first-boil, first-drop',
  ],
  [
    'an event that no plan knows',
    { cooling: { flow_kg_s: [step(0.01, 0), { ...step(0.02, 0), after: 'first-cup' }] } },
    'cooling.flow_kg_s.1.after',
    'first-cup',
    'allowed is "first-boil", "first-drop"',
  ],
  [
    'a schedule value out of range',
    { heat: { setting: [step(1, 0), step(1.5, 600)] } },
    'heat.setting.1.value',
    1.5,
    'allowed is 0–1',
  ],
  [
    'a tap in the wrong unit',
    { cooling: { tapTemperature_K: [step(15, 0)] } },
    'cooling.tapTemperature_K.0.value',
    15,
    'allowed is 273.25–313.15 K',
  ],
  ['ice of no weight', { cooling: { ice: [{ at_s: 0, mass_kg: 0 }] } }, 'cooling.ice.0.mass_kg', 0, '0.01'],
  [
    'a bore wider than its tube',
    { condenser: { insideDiameter_m: 0.02, outsideDiameter_m: 0.018 } },
    'condenser.insideDiameter_m',
    0.02,
    'less than the outside diameter, 0.018 m',
  ],
  [
    'a jacket narrower than its tube',
    { condenser: { kind: 'jacketed-tube', jacketDiameter_m: 0.012 } },
    'condenser.jacketDiameter_m',
    0.012,
    'at least 0.01224 m',
  ],
  [
    'turns closer than the tube is thick',
    { condenser: { coilPitch_m: 0.01 } },
    'condenser.coilPitch_m',
    0.01,
    "at least the tube's outside diameter, 0.012 m",
  ],
  [
    'a turn tighter than the tube',
    { condenser: { coilDiameter_m: 0.03, outsideDiameter_m: 0.02 } },
    'condenser.coilDiameter_m',
    0.03,
    "at least twice the tube's outside diameter, that is 0.04 m",
  ],
  [
    'a neck that rises further than it is long',
    { neck: { length_m: 0.5, risingLength_m: 0.6 } },
    'neck.risingLength_m',
    0.6,
    'at most the neck length, 0.5 m',
  ],
  [
    'an inlet below the separator',
    { separator: { height_m: 0.1, inletDepth_m: 0.2 } },
    'separator.inletDepth_m',
    0.2,
    'less than the separator height, 0.1 m',
  ],
  [
    'a grid above the pot',
    { pot: { gridHeight_m: 0.5 }, charge: { mass_kg: 0 } },
    'pot.gridHeight_m',
    0.5,
    'less than the pot height, 0.32 m',
  ],
  ['more plant than the pot holds', { charge: { mass_kg: 50 } }, 'charge.mass_kg', 50, 'the pot holds at most'],
  ['more water than fits under the grid', { pot: { water_kg: 12 } }, 'pot.water_kg', 12, 'kg fits under the grid'],
  ['a pot filled over the rim', { pot: { layout: 'water', water_kg: 30 } }, 'pot.water_kg', 30, 'must stay below'],
  [
    'a boiler filled over the rim',
    { pot: { layout: 'steam', water_kg: 100 } },
    'pot.water_kg',
    100,
    'the boiler holds at most',
  ],
];

describe('a scenario with one mistake', () => {
  it.each(single)('%s: one problem with path, value and what is allowed', (_, input, path, value, allowed) => {
    const problems = problemsOf(input);
    expect(problems.map((problem) => problem.path)).toEqual([path]);
    const [problem] = problems as [Problem];
    expect(problem.value).toEqual(value);
    const message = inFile(problem);
    expect(message).toContain(allowed);
    expect(message.startsWith(path) || message.includes(`(${path})`), message).toBe(true);
    expect(message).toMatch(/ is not possible; .*\.$/);
  });
});

describe('what is not a scenario', () => {
  it.each([
    ['nothing', undefined],
    ['null', null],
    ['a number', 3],
    ['a text', '{}'],
    ['a list', []],
    ['a truth', true],
  ])('%s is refused in one sentence', (_, input) => {
    const problems = problemsOf(input);
    expect(problems.length).toBe(1);
    expect(problems[0]?.path).toBe('');
    expect(problems.map(inFile).join()).toContain('a JSON object with the fields of a scenario is needed');
  });
});

describe('a scenario with several mistakes', () => {
  it('gives one problem for each, and nothing else', () => {
    const input = {
      pot: { diameter_m: 9, height_m: 'tall', colour: 'red' },
      heat: { kind: 'sun' },
      condenser: { tubes: 0 },
      extra: 1,
    };
    expect(
      problemsOf(input)
        .map((problem) => problem.path)
        .sort(),
    ).toEqual(['condenser.tubes', 'extra', 'heat.kind', 'pot.colour', 'pot.diameter_m', 'pot.height_m']);
  });

  it('names every field that does not fit another', () => {
    const input = {
      condenser: { insideDiameter_m: 0.02, outsideDiameter_m: 0.018, coilPitch_m: 0.01 },
      neck: { risingLength_m: 2 },
    };
    expect(problemsOf(input).map((problem) => problem.path)).toEqual([
      'condenser.insideDiameter_m',
      'condenser.coilPitch_m',
      'neck.risingLength_m',
    ]);
  });

  it('changes nothing in what it was given', () => {
    const input = Object.freeze({
      pot: Object.freeze({ diameter_m: 9 }),
      charge: Object.freeze({ botanical: 'rosemary' }),
    });
    expect(problemsOf(input).length).toBe(1);
    expect(input).toEqual({ pot: { diameter_m: 9 }, charge: { botanical: 'rosemary' } });
  });

  it('shortens a long value in the sentence and keeps it whole in the problem', () => {
    const [problem] = problemsOf({ note: 'y'.repeat(3000) }) as [Problem];
    expect(inFile(problem).length).toBeLessThan(200);
    expect(problem.value).toBe('y'.repeat(3000));
  });
});

describe('what may be left out', () => {
  it('is filled with defaults: an empty file is a scenario', () => {
    const read = readScenario({});
    expect(read.ok).toBe(true);
    if (read.ok) expect(read.scenario.charge.botanical).toBe('lavender-true');
  });

  it('is filled from the plant that is named, and what is written stands', () => {
    const read = readScenario({ charge: { botanical: 'clove-bud', oilContent: 0.1, mass_kg: 0.5 } });
    expect(read.ok).toBe(true);
    if (!read.ok) return;
    expect(read.scenario.charge.composition.some(({ constituent }) => constituent === 'eugenol')).toBe(true);
    expect(read.scenario.charge.oilContent).toBe(0.1);
  });

  it('is nothing in an example once it is read', () => {
    for (const { id } of examples)
      expect(readScenario(exampleScenario(id))).toEqual({ ok: true, scenario: exampleScenario(id) });
  });
});
