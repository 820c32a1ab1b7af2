/** `limbeck plan`: from a few answers to a still, whether it works, its weakest part, and what to buy next. */
import {
  atFullHeat,
  botanicals,
  heatSources,
  NO_PRICES,
  planStill,
  problemMessage,
  sizeOwnTube,
  toldPlan,
  tubes,
  type PlanAnswers,
} from '../index.ts';
import { INLET_KINDS } from '../scenario/condenser-fields.ts';
import { closestWords } from '../reference/closest-words.ts';
import { BadInput } from './bad-input.ts';
import { isSet, numberOf, readerOf, readWords, textOf, UNITS, type Words } from './options.ts';
import { toJson } from './print.ts';
import { wholeRun } from './whole-run.ts';

function oneOf<T extends string>(words: Words, flag: string, ids: readonly T[]): T | undefined {
  const text = textOf(words, flag);
  if (text === undefined) return undefined;
  const found = ids.find((id) => id === text);
  if (found === undefined)
    throw new BadInput(`--${flag}: “${text}” is not known; the closest are ${closestWords(text, ids, 3).join(', ')}.`);
  return found;
}

/** In the units of a question: litres, kilowatts, °C. */
const scaled = (value: number | undefined, by: number, plus = 0): number | undefined =>
  value === undefined ? undefined : value * by + plus;

function answersFrom(words: Words): PlanAnswers {
  if (isSet(words, 'running-water') && isSet(words, 'no-running-water'))
    throw new BadInput('Only one of --running-water and --no-running-water can be given.');
  return {
    plant: oneOf(
      words,
      'plant',
      botanicals.map(({ id }) => id),
    ),
    plant_kg: numberOf(words, 'plant-kg', 0.05, 500, 'kg'),
    pot_m3: scaled(numberOf(words, 'pot-L', 1, 1000, 'L'), 1e-3),
    heatSource: oneOf(
      words,
      'heat',
      heatSources.map(({ id }) => id),
    ),
    heat_W: scaled(numberOf(words, 'heat-kW', 0.1, 60, 'kW'), 1e3),
    tub_m3: scaled(numberOf(words, 'tub-L', 5, 5000, 'L'), 1e-3),
    tap_K: scaled(numberOf(words, 'tap-C', 0.1, 40, '°C'), 1, 273.15),
    waterRuns: isSet(words, 'running-water') ? true : isSet(words, 'no-running-water') ? false : undefined,
    hose: oneOf(words, 'hose', INLET_KINDS),
    altitude_m: numberOf(words, 'altitude-m', -400, 4500, 'm'),
    tube: oneOf(
      words,
      'tube',
      tubes.filter(({ coilable }) => coilable).map(({ id }) => id),
    ),
  };
}

export function planCommand(args: readonly string[]): string {
  const words = readWords(args, {
    ...UNITS,
    plant: { type: 'string' },
    'plant-kg': { type: 'string' },
    'pot-L': { type: 'string' },
    heat: { type: 'string' },
    'heat-kW': { type: 'string' },
    'tub-L': { type: 'string' },
    'tap-C': { type: 'string' },
    'running-water': { type: 'boolean' },
    'no-running-water': { type: 'boolean' },
    hose: { type: 'string' },
    'altitude-m': { type: 'string' },
    tube: { type: 'string' },
  });
  if (words.positionals.length > 0)
    throw new BadInput(`plan takes flags only; “${words.positionals.join(' ')}” is none.`);
  const reader = readerOf(words);
  const planned = planStill(answersFrom(words));
  if (!planned.ok) throw new BadInput(planned.problems.map((each) => problemMessage(each, reader)));
  const { plan } = planned;
  const full = atFullHeat(plan.scenario) ?? plan.scenario;
  const size = sizeOwnTube(full);
  const length_m = size.lengthWithMargin_m ?? plan.scenario.condenser.length_m;
  const scenario = { ...plan.scenario, condenser: { ...plan.scenario.condenser, length_m } };
  const told = toldPlan(wholeRun(scenario, reader), size, full, NO_PRICES, reader);
  if (isSet(words, 'json')) return toJson({ ...told, used: plan.used, assumed: plan.assumed, size, scenario });
  return [told.works, told.weakest, ...told.next, `Assumed: ${plan.assumed.join(', ')}.`].join('\n');
}
