/** The four things one turns while a run is watched, and what turning them writes into the scenario. */
import { scheduleValue, type Scenario, type Schedule } from '../../sim/index.ts';
import { stretchAt, withChangeFrom, withStretch } from './schedule-edits.ts';

export type LiveControlId = 'heat' | 'tap' | 'coil' | 'charge';

/** Where a turn of the heat or the tap takes hold: throughout the stretch the time mark is in, or from the time mark on. */
export type Reach = 'stretch' | 'from-here';

export interface LiveControl {
  readonly id: LiveControlId;
  readonly label: string;
  /** Field that it writes. */
  readonly path: string;
  readonly unit: string;
  readonly min: number;
  /** End of the slider; larger numbers may be typed, up to `most`. */
  readonly sliderMax: number;
  readonly most: number;
  readonly step: number;
  readonly schedule: Schedule | null;
  readonly value: number;
}

/** What a value as typed or dragged puts into the scenario's field. */
export const fieldValue = (control: LiveControl, value: number, reach: Reach, time_s: number): unknown => {
  if (!control.schedule) return value;
  return reach === 'from-here'
    ? withChangeFrom(control.schedule, time_s, value)
    : withStretch(control.schedule, time_s, value);
};

/** A round number with room above the one in use, so that the slider's ends do not move while it is dragged. */
export const roomyEnd = (value: number, usual: number): number => {
  let end = usual;
  while (end < value * 1.25) end *= 2;
  return end;
};

/** A change at a moment may need a second to take hold, so the setting is read just after it. */
const JUST_AFTER_S = 1;

const shown = (schedule: Schedule, reach: Reach, time_s: number): number =>
  scheduleValue(schedule, reach === 'from-here' ? time_s + JUST_AFTER_S : stretchAt(schedule, time_s).from_s);

function heatControl(scenario: Scenario, reach: Reach, time_s: number): LiveControl {
  const { heat } = scenario;
  const common = { id: 'heat', label: 'Heat', min: 0 } as const;
  if (heat.control === 'hold-rate')
    return {
      ...common,
      label: 'Distillate to hold',
      path: 'heat.targetRate_kg_s',
      unit: 'kg/s',
      sliderMax: roomyEnd(heat.targetRate_kg_s, 0.001),
      most: 0.02,
      step: 0.000_005,
      schedule: null,
      value: heat.targetRate_kg_s,
    };
  return {
    ...common,
    path: 'heat.setting',
    unit: '1',
    sliderMax: 1,
    most: 1,
    step: 0.01,
    schedule: heat.setting,
    value: shown(heat.setting, reach, time_s),
  };
}

const tapLabel = ({ condenser, cooling }: Scenario): string =>
  condenser.kind !== 'coil-in-tub' && cooling.jacketSupply === 'barrel' ? 'Pump' : 'Tap';

/** The four controls as they stand; `loaded`, as it was put on the bench, gives the slider ends, which stand still. */
export function liveControls(
  scenario: Scenario,
  loaded: Scenario,
  reach: Reach,
  time_s: number,
): readonly LiveControl[] {
  const flows = loaded.cooling.flow_kg_s.map(({ value }) => value);
  return [
    heatControl(scenario, reach, time_s),
    {
      id: 'tap',
      label: tapLabel(scenario),
      path: 'cooling.flow_kg_s',
      unit: 'kg/s',
      min: 0,
      sliderMax: Math.max(roomyEnd(Math.max(...flows), 0.05), shown(scenario.cooling.flow_kg_s, reach, time_s)),
      most: 2,
      step: 0.05 / 60,
      schedule: scenario.cooling.flow_kg_s,
      value: shown(scenario.cooling.flow_kg_s, reach, time_s),
    },
    {
      id: 'coil',
      label: scenario.condenser.kind === 'coil-in-tub' ? 'Coil' : 'Tube',
      path: 'condenser.length_m',
      unit: 'm',
      min: 0.05,
      sliderMax: Math.max(
        roomyEnd(loaded.condenser.length_m, scenario.condenser.kind === 'coil-in-tub' ? 10 : 2),
        scenario.condenser.length_m,
      ),
      most: 100,
      step: 0.05,
      schedule: null,
      value: scenario.condenser.length_m,
    },
    {
      id: 'charge',
      label: 'Charge',
      path: 'charge.mass_kg',
      unit: 'kg',
      min: 0,
      sliderMax: Math.max(roomyEnd(loaded.charge.mass_kg, 4), scenario.charge.mass_kg),
      most: 1000,
      step: 0.05,
      schedule: null,
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
  const { from_s, to_s } = stretchAt(control.schedule, time_s);
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
