/** The four things one turns while a run is watched, and what turning them writes into the scenario. */
import {
  clockSchedule,
  isCoil,
  isTapFed,
  LIVE_RANGES,
  scheduleValue,
  type EventTimes,
  type Range,
  type Scenario,
  type Schedule,
} from '../../sim/index.ts';
import { stretchAt, withChangeFrom, withStretch } from './schedule-edits.ts';

export type LiveControlId = 'heat' | 'tap' | 'coil' | 'charge';

/** Where a turn of the heat or the tap takes hold: throughout the stretch the time mark is in, or from the time mark on. */
export type Reach = 'stretch' | 'from-here';

export interface LiveControl {
  readonly id: LiveControlId;
  readonly label: string;
  /** Field that it writes. */
  readonly path: keyof typeof LIVE_RANGES;
  readonly unit: string;
  /** What the field takes. */
  readonly range: Range;
  /** End of the slider; larger numbers may be typed. */
  readonly sliderMax: number;
  readonly step: number;
  readonly schedule: Schedule | null;
  /** When the events came that a schedule may wait for. */
  readonly times: EventTimes;
  readonly value: number;
}

/** What a value as typed or dragged puts into the scenario's field. */
export const fieldValue = (control: LiveControl, value: number, reach: Reach, time_s: number): unknown => {
  if (!control.schedule) return value;
  return reach === 'from-here'
    ? withChangeFrom(control.schedule, time_s, value, control.times)
    : withStretch(control.schedule, time_s, value, control.times);
};

/** A round number with room above the one in use, so that the slider's ends do not move while it is dragged. */
export const roomyEnd = (value: number, usual: number): number => {
  let end = usual;
  while (end < value * 1.25) end *= 2;
  return end;
};

/** A change at a moment may need a second to take hold, so the setting is read just after it. */
const JUST_AFTER_S = 1;

function shown(schedule: Schedule, reach: Reach, time_s: number, times: EventTimes): number {
  const at_s = reach === 'from-here' ? time_s + JUST_AFTER_S : stretchAt(schedule, time_s, times).from_s;
  return scheduleValue(clockSchedule(schedule, times), at_s);
}

const fieldOf = (path: LiveControl['path']) => ({ path, range: LIVE_RANGES[path] });

/** End of a slider: room above the value as loaded and the value as it stands, within what the field takes. */
const sliderEnd = (path: LiveControl['path'], loaded: number, usual: number, value: number): number =>
  Math.min(LIVE_RANGES[path].max, Math.max(roomyEnd(loaded, usual), value));

function heatControl(scenario: Scenario, reach: Reach, time_s: number, times: EventTimes): LiveControl {
  const { heat } = scenario;
  if (heat.control === 'hold-rate')
    return {
      id: 'heat',
      label: 'Distillate to hold',
      ...fieldOf('heat.targetRate_kg_s'),
      unit: 'kg/s',
      sliderMax: sliderEnd('heat.targetRate_kg_s', heat.targetRate_kg_s, 0.001, heat.targetRate_kg_s),
      step: 0.000_005,
      schedule: null,
      times,
      value: heat.targetRate_kg_s,
    };
  return {
    id: 'heat',
    label: 'Heat',
    ...fieldOf('heat.setting'),
    unit: '1',
    sliderMax: 1,
    step: 0.01,
    schedule: heat.setting,
    times,
    value: shown(heat.setting, reach, time_s, times),
  };
}

const tapLabel = (scenario: Scenario): string => (isTapFed(scenario) ? 'Tap' : 'Pump');

/**
 * The four controls as they stand; `loaded`, as it was put on the bench, gives the slider ends, which stand still, and
 * `times` tells when the present run's events came.
 */
export function liveControls(
  scenario: Scenario,
  loaded: Scenario,
  reach: Reach,
  time_s: number,
  times: EventTimes,
): readonly LiveControl[] {
  const mostFlow = Math.max(...loaded.cooling.flow_kg_s.map(({ value }) => value));
  const flow = shown(scenario.cooling.flow_kg_s, reach, time_s, times);
  const coiled = isCoil(scenario.condenser);
  return [
    heatControl(scenario, reach, time_s, times),
    {
      id: 'tap',
      label: tapLabel(scenario),
      ...fieldOf('cooling.flow_kg_s'),
      unit: 'kg/s',
      sliderMax: sliderEnd('cooling.flow_kg_s', mostFlow, 0.05, flow),
      step: 0.05 / 60,
      schedule: scenario.cooling.flow_kg_s,
      times,
      value: flow,
    },
    {
      id: 'coil',
      label: coiled ? 'Coil' : 'Tube',
      ...fieldOf('condenser.length_m'),
      unit: 'm',
      sliderMax: sliderEnd(
        'condenser.length_m',
        loaded.condenser.length_m,
        coiled ? 10 : 2,
        scenario.condenser.length_m,
      ),
      step: 0.05,
      schedule: null,
      times,
      value: scenario.condenser.length_m,
    },
    {
      id: 'charge',
      label: 'Charge',
      ...fieldOf('charge.mass_kg'),
      unit: 'kg',
      sliderMax: sliderEnd('charge.mass_kg', loaded.charge.mass_kg, 4, scenario.charge.mass_kg),
      step: 0.05,
      schedule: null,
      times,
      value: scenario.charge.mass_kg,
    },
  ];
}

/** The rule in words: what a turn of this control changes. Empty where there is nothing to say. */
export function reachInWords(
  control: LiveControl,
  reach: Reach,
  time_s: number,
  clock: (time_s: number) => string,
): string {
  if (!control.schedule) return '';
  const { from_s, to_s } = stretchAt(control.schedule, time_s, control.times);
  const until = to_s === null ? '' : ` to ${clock(to_s)}`;
  if (reach === 'from-here') return `Changes the run from ${clock(time_s)} ${until === '' ? 'on' : until.trim()}.`;
  if (from_s === 0) return until === '' ? 'Changes the whole run.' : `Changes the run from the start${until}.`;
  return `Changes the run from ${clock(from_s)} ${until === '' ? 'on' : until.trim()}.`;
}

export interface LiveReach {
  readonly reach: () => Reach;
  /** The moment that `from-here` means: where the time mark is, or was when a drag began. */
  readonly moment_s: () => number;
  /** The same a few times a second, for words and numbers. */
  readonly toldMoment_s: () => number;
  setReach(reach: Reach): void;
  hold(): void;
  release(): void;
}
