/** What every part of the drawing is given, and how its words are made. */
import { createMemo, type Accessor } from 'solid-js';
import type { Scenario, ScenarioPart, UnitSystem } from '../../../sim/index.ts';
import type { LabelId, Place } from '../geometry/labels.ts';
import type { StillLayout } from '../geometry/still-layout.ts';
import { partAlarm, partLabel, partLine, partName, SCENARIO_PART } from '../part-facts.ts';
import type { StillState } from '../still-state.ts';

export interface PartContext {
  readonly layout: Accessor<StillLayout>;
  readonly state: Accessor<StillState | null>;
  /** The same a few times a second: words need no more, and cost more than lines. */
  readonly said: Accessor<StillState | null>;
  readonly scenario: Accessor<Scenario>;
  readonly selected: Accessor<ScenarioPart | null>;
  readonly units: Accessor<UnitSystem>;
  readonly onSelect: (part: ScenarioPart) => void;
}

/** Everything of a part's button but its shapes; each text is its own memo, so that only changed words are written. */
export function createPartButton(context: PartContext, id: LabelId) {
  const name = createMemo(() => partName(id, context.scenario()));
  const line = createMemo(() => partLine(id, context.scenario(), context.said(), context.units()));
  const label = createMemo(() => partLabel(id, context.scenario(), context.said(), context.units()));
  const alarm = createMemo(() => partAlarm(id, context.scenario(), context.said()));
  const place = createMemo<Place<LabelId> | undefined>(() => context.layout().labels.find((label) => label.id === id));
  return {
    id,
    words: {
      get name() {
        return name();
      },
      get line() {
        return line();
      },
      get label() {
        return label();
      },
      get alarm() {
        return alarm();
      },
    },
    place,
    selected: () => context.selected() === SCENARIO_PART[id],
    choose: () => context.onSelect(SCENARIO_PART[id]),
  };
}

/**
 * A number of the moment, in steps too fine to see: what depends on it is redrawn only when it has moved by a step.
 */
export function createQuantised(read: () => number, step: number): Accessor<number> {
  const inSteps = createMemo(() => Math.round(read() / step) * step);
  return inSteps;
}

/** Some numbers of the moment, passed on only when one of them has changed. */
export function createQuantisedList(read: () => readonly number[], step: number): Accessor<readonly number[]> {
  const inSteps = createMemo(() => read().map((value) => Math.round(value / step) * step), [], {
    equals: (a, b) => a.length === b.length && a.every((value, index) => value === b[index]),
  });
  return inSteps;
}

/** Depths and heights, a fifth of a millimetre. */
export const LEVEL_STEP = 0.0002;

/** Water at and below the one is drawn cold, at and above the other hot: what scalds at once must not look lukewarm. */
export const COLD_K = 283.15;
export const HOT_K = 348.15;

/** How warm water is drawn: 0 at tap temperature, 1 from 75 °C up. */
export const warmthOf = (temperature_K: number): number =>
  Math.min(1, Math.max(0, (temperature_K - COLD_K) / (HOT_K - COLD_K)));
/** Warmth of water in hundredths. */
export const WARMTH_STEP = 0.01;
