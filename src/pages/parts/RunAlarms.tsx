/** What would hurt someone in the run behind an answer, so that no number of it is read without. */
import { createMemo, For, Show } from 'solid-js';
import { eventMessage, type Reader, type RunEvent } from '../../../sim/index.ts';

export interface RunAlarmsProps {
  readonly events: readonly RunEvent[];
  readonly reader: Reader;
}

/** The first alarm of each kind, in the order of their times. */
export const alarmsOf = (events: readonly RunEvent[]): readonly RunEvent[] => {
  const alarms = events.filter(({ severity }) => severity === 'alarm').sort((a, b) => a.time_s - b.time_s);
  return alarms.filter(({ kind }, index) => alarms.findIndex((other) => other.kind === kind) === index);
};

export function RunAlarms(props: RunAlarmsProps) {
  const alarms = createMemo(() => alarmsOf(props.events));
  return (
    <Show when={alarms().length > 0}>
      <ul class="run-alarms" aria-label="Dangers of this run">
        <For each={alarms()}>
          {(event) => {
            const message = createMemo(() => eventMessage(event, props.reader));
            return (
              <li class="answer-problem">
                <strong>Danger:</strong> {message().sentence} {message().advice}
              </li>
            );
          }}
        </For>
      </ul>
    </Show>
  );
}
