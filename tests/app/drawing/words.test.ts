import { describe, expect, test } from 'vitest';
import { examples, exampleScenario, simulate, type Scenario } from '../../../sim/index.ts';
import { cautionAt } from '../../../src/drawing/cautions.ts';
import {
  labelSize,
  LINE_LETTER,
  LINE_SIZE,
  NAME_LETTER,
  NAME_SIZE,
} from '../../../src/drawing/geometry/label-wishes.ts';
import type { LabelId } from '../../../src/drawing/geometry/labels.ts';
import { breakEvenly } from '../../../src/drawing/line-breaks.ts';
import { BRIEF, CAUTION_FORMS } from '../../../src/drawing/geometry/caution-places.ts';
import { partLine, partName, partSentence } from '../../../src/drawing/part-facts.ts';
import { stillStateAt } from '../../../src/drawing/still-state.ts';
import { dryRun, escapingRun, quickRun } from './runs.ts';
import { scenarioOf } from './scenario-of.ts';

const thin = (words: string) => words.replaceAll('\u202f', ' ');
const late = () => stillStateAt(quickRun(), 2300);
const IDS: readonly LabelId[] = [
  'heat',
  'boiler',
  'pot',
  'charge',
  'neck',
  'condenser',
  'cooling',
  'separator',
  'receiver',
];

describe('words beside the parts', () => {
  test('without a run they say what the scenario holds', () => {
    const scenario = scenarioOf();
    expect(thin(partLine('pot', scenario, null, 'metric'))).toBe('8.0 L water');
    expect(thin(partLine('condenser', scenario, null, 'metric'))).toBe('5.0 m of tube');
    expect(thin(partLine('heat', scenario, null, 'metric'))).toBe('2.2 kW');
  });

  test('with a run they say the moment', () => {
    expect(thin(partLine('pot', quickRun().scenario, late(), 'metric'))).toMatch(/^\d+(\.\d+)? (L|mL) water, 100 °C$/u);
    expect(thin(partLine('condenser', quickRun().scenario, late(), 'metric'))).toMatch(
      /^condenses in \d\.\d\d m of 5\.0 m$/u,
    );
    expect(thin(partLine('cooling', quickRun().scenario, late(), 'metric'))).toMatch(
      /^1\.50 L\/min, 15 °C to \d+ °C$/u,
    );
    expect(thin(partLine('charge', quickRun().scenario, late(), 'metric'))).toBe('400 g, steam through');
  });

  test('they switch to US units', () => {
    expect(thin(partLine('pot', quickRun().scenario, late(), 'us'))).toMatch(/(gal|qt) water, 21[12] °F$/u);
  });

  test('they say in words that vapour escapes', () => {
    const state = stillStateAt(escapingRun(), escapingRun().summary.end_s - 60);
    expect(thin(partLine('condenser', escapingRun().scenario, state, 'metric'))).toBe('all 0.6 m are not enough');
    expect(partSentence('condenser', escapingRun().scenario, state, 'metric')).toContain(
      'vapour is escaping from the outlet',
    );
  });

  test('a screen reader hears units as words', () => {
    const { scenario } = quickRun();
    expect(thin(partSentence('cooling', scenario, late(), 'metric'))).toMatch(
      /^Cooling tub, 1\.50 litres a minute, 15 degrees Celsius to \d+ degrees Celsius$/u,
    );
    expect(thin(partSentence('cooling', scenario, late(), 'us'))).toMatch(
      /^Cooling tub, 0\.40 gallons a minute, 59 degrees Fahrenheit to \d+ degrees Fahrenheit$/u,
    );
    expect(thin(partSentence('neck', scenario, late(), 'us'))).toMatch(/feet a second$/u);
    expect(partSentence('charge', scenarioOf(), null, 'metric')).toContain('lavender');
  });

  test('they fit the room that the layout keeps for them, in every example, at every tenth of the run, in both systems', () => {
    const tooLong: string[] = [];
    for (const { id } of examples) {
      const scenario = exampleScenario(id);
      const result = simulate(scenario);
      for (const units of ['metric', 'us'] as const) {
        for (let tenth = 0; tenth <= 10; tenth++) {
          const state = stillStateAt(result, (result.summary.end_s * tenth) / 10);
          for (const part of IDS) {
            const { width } = labelSize(part, 1);
            const name = partName(part, scenario);
            const line = partLine(part, scenario, state, units);
            if (name.length * NAME_SIZE * NAME_LETTER > width || line.length * LINE_SIZE * LINE_LETTER > width)
              tooLong.push(`${id} ${part}: ${name} / ${line}`);
          }
        }
      }
    }
    expect([...new Set(tooLong)]).toEqual([]);
  });
});

describe('cautions at the hazard', () => {
  const words = (
    hazard: 'lid' | 'flame' | 'tub' | 'outlet',
    part: 'heat' | 'pot' | 'condenser' | 'separator' | 'cooling' | null,
    state = late(),
  ) => cautionAt(hazard, quickRun().scenario, state, part, 'metric');

  test('are silent while nothing is picked and nothing is wrong', () => {
    const state = stillStateAt(quickRun(), 0);
    expect((['lid', 'flame', 'tub', 'outlet'] as const).map((hazard) => words(hazard, null, state))).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });

  test('say never to close the outlet when the condenser is picked', () => {
    expect(words('outlet', 'condenser')).toEqual({
      brief: 'Keep outlet open',
      words: 'Never close the outlet: the still breathes here.',
      level: 'general',
    });
  });

  test('keep flames from the receiver only where there is a flame', () => {
    expect(words('flame', 'heat')?.words).toContain('flame');
    expect(
      cautionAt('flame', scenarioOf({ heat: { kind: 'induction' } }), null, 'heat', 'metric')?.words,
    ).not.toContain('flame');
  });

  test('warn of scalding steam at the lid when the pot is picked', () => {
    expect(words('lid', 'pot')?.words).toContain('scalds');
  });

  test('say how spent plant, hot glass and a pot that is lifted hurt', () => {
    const { scenario } = quickRun();
    const said = (hazard: 'lid' | 'outlet', part: 'pot' | 'charge' | 'condenser', of = scenario) =>
      cautionAt(hazard, of, null, part, 'metric')?.words ?? '';
    expect(said('lid', 'pot')).toContain('lift it, only when it has cooled');
    expect(said('lid', 'charge')).toContain('a heap heats itself');
    const glass: Scenario = { ...scenario, condenser: { ...scenario.condenser, material: 'borosilicate-glass' } };
    for (const words of [said('outlet', 'condenser'), said('outlet', 'condenser', glass)])
      expect(words).toContain('Never close the outlet');
    expect(said('outlet', 'condenser', glass)).toContain('Hot glass cracks in cold water');
  });

  test('warn of water in the tub from 50 °C on, and more sharply from 60 °C', () => {
    const { scenario } = quickRun();
    const cold = stillStateAt(quickRun(), 0);
    const tub = (celsius: number, tubHot = false) =>
      cautionAt(
        'tub',
        scenario,
        { ...cold, tubTemperature_K: [celsius + 273.15], alarms: { ...cold.alarms, tubHot } },
        null,
        'metric',
      )?.words ?? null;
    expect(tub(49.9)).toBeNull();
    expect(tub(50.1)).toMatch(/50\s°C: it scalds in minutes, a child sooner\.$/u);
    expect(tub(61, true)).toMatch(/61\s°C: it scalds\.$/u);
  });

  test('become an alarm while vapour escapes, whatever is picked', () => {
    const state = stillStateAt(escapingRun(), escapingRun().summary.end_s - 60);
    const caution = cautionAt('outlet', escapingRun().scenario, state, null, 'metric');
    expect(caution?.level).toBe('alarm');
    expect(caution?.words).toMatch(/^Vapour is escaping, /u);
  });

  test('ask for the flame to be put out while vapour escapes, and only where there is a flame', () => {
    const run = escapingRun();
    const end = stillStateAt(run, run.summary.end_s - 60);
    const state = { ...end, alarms: { ...end.alarms, potLow: false } };
    const heated = (kind: Scenario['heat']['kind']) => ({ ...run.scenario, heat: { ...run.scenario.heat, kind } });
    for (const kind of ['gas-ring', 'gas-burner', 'wood-fire'] as const) {
      const caution = cautionAt('flame', heated(kind), state, null, 'metric');
      expect(caution?.words).toMatch(/^Put the flame out/u);
      expect(caution?.level).toBe('alarm');
    }
    expect(cautionAt('flame', heated('induction'), state, null, 'metric')).toBeNull();
    expect(cautionAt('outlet', heated('gas-ring'), state, null, 'metric')?.words).toMatch(/flame out, water up\.$/u);
    expect(cautionAt('outlet', heated('induction'), state, null, 'metric')?.words).toMatch(/heat down, water up\.$/u);
    expect(
      cautionAt(
        'flame',
        heated('gas-ring'),
        { ...state, alarms: { ...state.alarms, escaping: false } },
        null,
        'metric',
      ),
    ).toBeNull();
  });

  test('tell to turn the heat off and stand back when the lid is under pressure', () => {
    const state = { ...late(), potGauge_Pa: 6_000, alarms: { ...late().alarms, pressure: true } };
    expect(words('lid', null, state)?.words).toContain('Heat off, and stand back.');
  });

  test('fit the room that the layout keeps for them', () => {
    const { scenario } = quickRun();
    const state = { ...late(), potGauge_Pa: 49_900 };
    const alarms = { escaping: false, potLow: false, potDry: false, pressure: false, tubHot: false };
    const seen = (['gas-ring', 'induction'] as const).flatMap((kind) =>
      (['escaping', 'potLow', 'potDry', 'pressure', 'tubHot', null] as const).flatMap((raised) =>
        (['heat', 'pot', 'charge', 'neck', 'condenser', 'separator', 'cooling', null] as const).flatMap((part) =>
          (['lid', 'flame', 'tub', 'outlet'] as const).map((hazard) =>
            cautionAt(
              hazard,
              { ...scenario, heat: { ...scenario.heat, kind } },
              { ...state, alarms: { ...state.alarms, ...alarms, ...(raised === null ? {} : { [raised]: true }) } },
              part,
              'us',
            ),
          ),
        ),
      ),
    );
    const tooLong = seen.flatMap((caution) => {
      if (!caution) return [];
      const letters = caution.level === 'alarm' ? 14 : BRIEF.letters;
      return [
        ...CAUTION_FORMS.filter((form) => breakEvenly(caution.words, form.letters).length > form.lines).map(
          (form) => `${caution.words} in ${form.lines} lines`,
        ),
        ...(caution.brief.length > letters ? [caution.brief] : []),
      ];
    });
    expect([...new Set(tooLong)]).toEqual([]);
    expect(new Set(seen.map((caution) => caution?.words)).size).toBeGreaterThan(10);
  });

  test('become an alarm at the base when the pot runs dry', () => {
    const caution = cautionAt(
      'flame',
      dryRun().scenario,
      stillStateAt(dryRun(), dryRun().summary.end_s),
      null,
      'metric',
    );
    expect(caution).toEqual({
      brief: 'Pot is dry',
      words: 'The pot is dry. Heat off, and let it cool before you add water.',
      level: 'alarm',
    });
  });

  test('say what a coil too tall or too wide for its tub would need', () => {
    const tall = cautionAt(
      'tub',
      scenarioOf({ condenser: { length_m: 15 }, cooling: { tubHeight_m: 0.5 } }),
      null,
      null,
      'metric',
    );
    expect(thin(tall?.words ?? '')).toBe('19.1 turns need 920 mm of water; the tub has 500 mm.');
    const wide = cautionAt(
      'tub',
      scenarioOf({ condenser: { coilDiameter_m: 0.5 }, cooling: { tubDiameter_m: 0.42 } }),
      null,
      null,
      'metric',
    );
    expect(thin(wide?.words ?? '')).toBe('The coil is 512 mm across; the tub is 420 mm.');
  });

  test('a sentence is broken into lines of about one length', () => {
    expect(breakEvenly('one two three four five six', 24)).toEqual(['one two three', 'four five six']);
    expect(breakEvenly('extraordinarily', 5)).toEqual(['extraordinarily']);
  });
});
