/** The knots of a schedule as rows to type into. */
import { createSignal, createUniqueId, For, Index, Show } from 'solid-js';
import {
  englishReader,
  formatDuration,
  SCHEDULE_EVENTS,
  scheduleMessages,
  type PlacedKnot,
  type Schedule,
  type UnitSystem,
} from '../../../sim/index.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import {
  moveKnot,
  removeKnot,
  setKnotAfter,
  setKnotTime,
  toggleShape,
  type Edited,
  type ScheduleLimits,
} from './schedule-edit.ts';

/** What a change may count from: the start, or an event. */
const ORIGINS = [undefined, ...SCHEDULE_EVENTS] as const;

export interface KnotTableProps {
  readonly title: string;
  readonly schedule: Schedule;
  /** The same by the clock of the run, as far as it came. */
  readonly clock: readonly PlacedKnot[];
  readonly limits: ScheduleLimits;
  readonly unit: string;
  readonly hint?: string | undefined;
  readonly system: UnitSystem;
  /** `quick` marks one of several small steps that are undone together. */
  readonly onEdit: (schedule: Schedule, quick: boolean) => void;
}

export function KnotTable(props: KnotTableProps) {
  const cameId = createUniqueId();
  const [problem, setProblem] = createSignal<string | null>(null);
  /** Hands on a valid edit; else answers why not. */
  const take = (edited: Edited, quick: boolean): string | null => {
    if (!edited.ok) return edited.because;
    props.onEdit(edited.schedule, quick);
    return null;
  };
  const origins: HTMLSelectElement[] = [];
  const messages = () => scheduleMessages(englishReader(props.system));
  /** Lets a change count from another moment; the choice goes along when the row finds another place. */
  const countFrom = (index: number, value: string): void => {
    const after = SCHEDULE_EVENTS.find((event) => event === value);
    const edited = setKnotAfter(props.schedule, index, after, props.limits.times);
    setProblem(take(edited, false));
    if (edited.ok) queueMicrotask(() => origins[edited.index]?.focus());
  };
  /** Where the clock does not say it: when a change came in this run, or that it did not. */
  const cameWords = (index: number): string => {
    const knot = props.clock.find(({ place }) => place === index);
    if (!knot) return 'not reached in this run';
    return props.schedule[index]?.after === undefined ? '' : `at ${formatDuration(knot.at_s)} in this run`;
  };
  const hint = () => (props.hint === undefined ? {} : { hint: props.hint });

  return (
    <>
      <table class="schedule-table">
        <caption class="visually-hidden">{props.title}: settings by time</caption>
        <thead>
          <tr>
            <th scope="col">From</th>
            <th scope="col">Setting</th>
            <th scope="col">Reached</th>
            <td />
          </tr>
        </thead>
        <tbody>
          <Index each={props.schedule}>
            {(knot, index) => (
              <tr>
                <td>
                  <Show when={index > 0} fallback={<span class="schedule-start">the start</span>}>
                    <QuantityField
                      label={`Time of change ${index}`}
                      labelHidden
                      value={knot().at_s}
                      unit="s"
                      hint="duration"
                      system={props.system}
                      onCommit={(at_s, nudge) => take(setKnotTime(props.schedule, index, at_s, formatDuration), nudge)}
                    />
                    <select
                      ref={(element) => (origins[index] = element)}
                      class="schedule-origin"
                      aria-label={`Change ${index} counts from`}
                      aria-describedby={`${cameId}-${index}`}
                      onChange={(event) => countFrom(index, event.currentTarget.value)}
                    >
                      <For each={ORIGINS}>
                        {(event) => (
                          <option value={event ?? ''} selected={event === knot().after}>
                            after {messages().origin(event)}
                          </option>
                        )}
                      </For>
                    </select>
                    <span class="schedule-came" id={`${cameId}-${index}`}>
                      {cameWords(index)}
                    </span>
                  </Show>
                </td>
                <td>
                  <QuantityField
                    label={index === 0 ? 'Setting at the start' : `Setting of change ${index}`}
                    labelHidden
                    value={knot().value}
                    unit={props.unit}
                    {...hint()}
                    system={props.system}
                    min={props.limits.min}
                    max={props.limits.max}
                    onCommit={(value, nudge) =>
                      props.onEdit(moveKnot(props.schedule, index, knot().at_s, value, props.limits), nudge)
                    }
                  />
                </td>
                <td>
                  <Show when={index > 0}>
                    <button
                      type="button"
                      class="schedule-word"
                      aria-label={`Change ${index} is reached ${knot().shape === 'step' ? 'at once' : 'evenly'}; switch`}
                      onClick={() => setProblem(take(toggleShape(props.schedule, index), false))}
                    >
                      {knot().shape === 'step' ? 'at once' : 'evenly'}
                    </button>
                  </Show>
                </td>
                <td>
                  <Show when={index > 0}>
                    <button
                      type="button"
                      class="schedule-word"
                      aria-label={`Remove change ${index}`}
                      onClick={() => setProblem(take(removeKnot(props.schedule, index), false))}
                    >
                      Remove
                    </button>
                  </Show>
                </td>
              </tr>
            )}
          </Index>
        </tbody>
      </table>
      <Show when={problem()}>
        <p class="schedule-problem" role="alert">
          {problem()}
        </p>
      </Show>
    </>
  );
}
