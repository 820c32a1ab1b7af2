/** `limbeck forecast`: how a run that is under way will end, from its plan and from what was read of it. */
import {
  forecastRun,
  FORECAST_MEMBERS,
  FORECAST_SEED,
  MOST_SEED,
  READING_KINDS,
  runCourses,
  toldForecast,
  type Course,
  type CoursesAsked,
  type LoggedPoint,
  type Reader,
  type Scenario,
  type Seen,
  type Turn,
} from '../index.ts';
import { readTyped } from '../messages/typed-reading.ts';
import type { AskedQuantity } from '../units/index.ts';
import { BadInput } from './bad-input.ts';
import { logFrom, logSource } from './log-file.ts';
import { listOf, onlyWord, readerOf, readWords, textOf, UNITS, wholeNumberOf, WITH, type Words } from './options.ts';
import { toJson } from './print.ts';
import { counted } from './progress.ts';
import { scenarioFrom } from './read-input.ts';
import { ruleOf } from './stop-rule.ts';

/** Fewer draws say little of a range; more take long and add nothing. */
export const DRAWS = { least: 20, most: 5000 } as const;

function quantityIn(text: string, asked: AskedQuantity, reader: Reader): number {
  const read = readTyped(text, { ...asked, bareNumbers: 'SI' }, reader);
  if (read === null) throw new BadInput(`${asked.title}: units can't be read just now; type the number in SI.`);
  if (!read.ok) throw new BadInput(`${asked.title}: ${read.message}`);
  if (read.value === null) throw new BadInput(`${asked.title}: a number is needed.`);
  return read.value;
}

const timeIn = (text: string, title: string, reader: Reader): number =>
  quantityIn(text, { title, unit: 's', min: 0 }, reader);

const CONTROLS: Readonly<Record<Turn['control'], AskedQuantity>> = {
  heat: { title: '--turned heat', unit: '1', min: 0, max: 1 },
  tap: { title: '--turned tap', unit: 'kg/s', path: 'cooling.flow_kg_s', min: 0 },
};

/** `heat=60%@40min`, `tap=2L/min@1h05` */
function turnIn(text: string, reader: Reader): Turn {
  const [, control, value = '', time = ''] = /^\s*(heat|tap)\s*=\s*(.+?)\s*@\s*(.+?)\s*$/su.exec(text) ?? [];
  if (control !== 'heat' && control !== 'tap')
    throw new BadInput(
      `--turned: “${text}” is not allowed; write what was turned, as in heat=60%@40min or tap=2L/min@1h05.`,
    );
  return { control, value: quantityIn(value, CONTROLS[control], reader), time_s: timeIn(time, '--turned', reader) };
}

const seenIn = (points: readonly LoggedPoint[], at_s: number): readonly Seen[] =>
  points
    .filter(({ time_s }) => time_s <= at_s)
    .flatMap((point) =>
      READING_KINDS.flatMap((kind): readonly Seen[] => {
        const value = point[kind];
        return value === undefined ? [] : [{ kind, time_s: point.time_s, value }];
      }),
    );

function firstDropOf(words: Words, at_s: number, reader: Reader): readonly Seen[] {
  const text = textOf(words, 'first-drop');
  if (text === undefined) return [];
  const value = timeIn(text, '--first-drop', reader);
  return value <= at_s ? [{ kind: 'firstDrop_s', time_s: value, value }] : [];
}

/** A control that is not there can't be turned. */
function turnsOf(words: Words, scenario: Scenario, reader: Reader): readonly Turn[] {
  const turns = listOf(words, 'turned').map((text) => turnIn(text, reader));
  if (scenario.heat.control === 'hold-rate' && turns.some(({ control }) => control === 'heat'))
    throw new BadInput('--turned heat: this still holds a distillate rate, so its heat is not turned by hand.');
  return turns;
}

export function forecastCommand(args: readonly string[]): string {
  const words = readWords(args, {
    ...WITH,
    ...UNITS,
    log: { type: 'string' },
    at: { type: 'string' },
    'first-drop': { type: 'string' },
    turned: { type: 'string', multiple: true },
    rule: { type: 'string' },
    draws: { type: 'string' },
    seed: { type: 'string' },
  });
  const source = onlyWord(words, 'scenario');
  const log = logSource(words, source);
  const members = wholeNumberOf(words, 'draws', DRAWS.least, DRAWS.most) ?? FORECAST_MEMBERS;
  const seed = wholeNumberOf(words, 'seed', 0, MOST_SEED) ?? FORECAST_SEED;
  const rule = ruleOf(words);
  const reader = readerOf(words);
  const at = textOf(words, 'at');
  const { points, passedOver } = logFrom(log, reader);
  const at_s = at === undefined ? Math.max(0, ...points.map(({ time_s }) => time_s)) : timeIn(at, '--at', reader);
  const scenario = scenarioFrom(source, listOf(words, 'with'));
  const runs = (asked: CoursesAsked): readonly (Course | null)[] =>
    counted(asked.draws.length, 'runs', (index) =>
      runCourses({ ...asked, draws: asked.draws.slice(index, index + 1) }),
    ).flat();
  const facts = forecastRun(
    scenario,
    {
      at_s,
      readings: [...firstDropOf(words, at_s, reader), ...seenIn(points, at_s)],
      turns: turnsOf(words, scenario, reader).filter(({ time_s }) => time_s <= at_s),
    },
    { members, seed, rule, runs },
  );
  return toJson({ name: scenario.name, seed, columnsPassedOver: passedOver, ...toldForecast(facts, reader) });
}
