/** A run that is over as an entry of the run book: its readings in rows, and what has no column as notes. */
import {
  findBotanical,
  isOwnPlant,
  ownPlantName,
  followed,
  formatDuration,
  USUAL_FIT,
  type Scenario,
  type UnitSystem,
} from '../../../sim/index.ts';
import { EMPTY_ROW, type LogColumn, type LogRow, type LogUnits } from '../../state/logbook.ts';
import { NO_FACTS, type RunFacts } from '../../state/run-facts.ts';
import type { LoggedPhoto, LoggedRun } from '../../state/logbook-schema.ts';
import { sheetStateOf, sinceStart, standing, turnsOf, type EntryKind, type StillRun } from '../../state/still-run.ts';
import { gatheredOf } from '../plants/gathered.ts';
import { isNumberKind, kindUnitOf, NUMBER_KINDS, OTHER_WORDS, shownValue } from './log-kinds.ts';

const COLUMN_OF: Readonly<Partial<Record<EntryKind, LogColumn>>> = {
  oil: 'oil',
  outlet: 'outlet',
  tub: 'tub',
  distillate: 'distillate',
};

const unitsFor = (units: UnitSystem): LogUnits =>
  units === 'us'
    ? { oil: 'mL', temperature: '°F', distillate: 'qt' }
    : { oil: 'mL', temperature: '°C', distillate: 'L' };

const FAHRENHEIT = (kelvin: number): number => kelvin * 1.8 - 459.67;
const KILOGRAMS_A_QUART = 0.946_352_946;
const plain = (value: number): string => String(Number(value.toFixed(3)));

function cell(column: LogColumn, value: number, { temperature, distillate }: LogUnits): string {
  if (column === 'oil') return plain(value);
  if (column === 'distillate') return plain(distillate === 'qt' ? value / KILOGRAMS_A_QUART : value);
  return plain(Number((temperature === '°F' ? FAHRENHEIT(value) : value - 273.15).toFixed(1)));
}

/** The day as the device has it, `2026-06-20`. */
export function dayOf(at_ms: number): string {
  const day = new Date(at_ms);
  const two = (number: number) => String(number).padStart(2, '0');
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}

const plantName = ({ charge: { botanical } }: Scenario): string =>
  isOwnPlant(botanical) ? ownPlantName(botanical) : findBotanical(botanical).name.value;

/** What the plan says of the charge. */
export const factsOf = (plan: Scenario): RunFacts => ({
  ...NO_FACTS,
  plant: plantName(plan),
  field: gatheredOf(plan),
  plant_kg: plan.charge.mass_kg,
  moisture: plan.charge.moisture,
});

/** Readings within half a minute of the first of a row stand in it. */
const ONE_ROW_S = 30;

export function toLoggedRun(run: StillRun, plan: Scenario, id: string, units: UnitSystem): LoggedRun {
  const own = unitsFor(units);
  const rows: { at_s: number; row: LogRow }[] = [];
  const notes: string[] = [];
  const photos: LoggedPhoto[] = [];
  for (const { kind, at_ms, value, text } of standing(run)) {
    const at_s = sinceStart(run, at_ms);
    const column = COLUMN_OF[kind];
    if (column !== undefined && value !== null) {
      const last = rows.at(-1);
      const written = cell(column, value, own);
      if (last && at_s - last.at_s < ONE_ROW_S && last.row[column] === '')
        last.row = { ...last.row, [column]: written };
      else rows.push({ at_s, row: { ...EMPTY_ROW, time: plain(Number((at_s / 60).toFixed(1))), [column]: written } });
    } else if (kind === 'photo') {
      photos.push({ id: text, at_s: Math.max(0, at_s), words: '' });
    } else if (kind !== 'done' && kind !== 'silenced') {
      const words = isNumberKind(kind) ? NUMBER_KINDS[kind].words : OTHER_WORDS[kind];
      const said =
        isNumberKind(kind) && value !== null
          ? ` ${shownValue(kind, value, units)} ${kindUnitOf(kind, units).label}`.trimEnd()
          : text === ''
            ? ''
            : `: ${text}`;
      notes.push(`${formatDuration(Math.max(0, at_s))} ${words}${said}`);
    }
  }
  const drop = sheetStateOf(run).firstDrop_s;
  const date = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' }).format(run.started_ms);
  return {
    id,
    name: `${run.name}, ${date}`,
    notes: notes.join('\n'),
    scenario: followed(plan, turnsOf(run), { firstBoil: null, firstDrop: drop }),
    units: own,
    rows: rows.map(({ row }) => row),
    draft: '',
    factors: USUAL_FIT,
    zero: 'heat-on',
    zeroAt: '',
    facts: { ...factsOf(plan), date: dayOf(run.started_ms) },
    photos,
  };
}
