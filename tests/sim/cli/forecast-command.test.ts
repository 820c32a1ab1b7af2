import { describe, expect, it } from 'vitest';
import { exampleScenario } from '../../../sim/index.ts';
import { answered, complaints, ownFolder } from './asking.ts';

const { written } = ownFolder();
const glass = exampleScenario('class-glass');
const still = written(
  'still.json',
  JSON.stringify({ ...glass, run: { ...glass.run, duration_s: 3600 }, advanced: { ...glass.advanced, segments: 20 } }),
);
const log = written('log.csv', 'time (min), oil (mL), outlet °C\n30, 0.4, 20\n40, 0.9, 21\n55, 1.5, 22');

interface Told {
  readonly sentence: string;
  readonly at_s: number;
  readonly members: number;
  readonly lines: readonly { readonly id: string; readonly value: string }[];
  readonly readings: readonly { readonly kind: string }[];
}

describe('limbeck forecast', () => {
  it('forecasts from the readings up to now, in the reader’s units', () => {
    const told = answered(
      'forecast',
      still,
      ...['--log', log, '--at', '45min', '--first-drop', '22min', '--turned', 'heat=80%@42min'],
      ...['--draws', '20', '--units', 'us'],
    ) as Told;
    expect(told.at_s).toBe(2700);
    expect(told.members).toBe(20);
    expect(told.readings.map(({ kind }) => kind)).toEqual(['firstDrop_s', 'oil_mL', 'outlet_K', 'oil_mL', 'outlet_K']);
    expect(told.sentence).toMatch(/plan/u);
    expect(told.lines.find(({ id }) => id === 'tub')?.value).toContain('°F');
  });

  it.each([
    [['forecast', still], /--log is missing/u],
    [['forecast', still, '--log', log, '--at', 'noon'], /--at/u],
    [['forecast', still, '--log', log, '--turned', 'fire=1@3min'], /heat=60%@40min/u],
    [['forecast', still, '--log', log, '--turned', 'heat=2@3min'], /--turned heat/u],
    [['forecast', still, '--log', log, '--draws', '3'], /20 to 5000/u],
    [
      ['forecast', still, '--log', log, '--with', 'heat.control=hold-rate', '--turned', 'heat=0.5@3min'],
      /holds a distillate rate/u,
    ],
  ])('refuses %j', (args, why) => {
    expect(complaints(...args).join(' ')).toMatch(why);
  });
});
