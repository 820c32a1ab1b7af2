/** The run sheet: what is to be done and looked at, and when; on paper with room to tick. */
import { For, Show } from 'solid-js';
import { runSheetMessages, type Reader, type SheetStep } from '../../../sim/index.ts';

export interface SheetTableProps {
  readonly steps: readonly SheetStep[];
  readonly reader: Reader;
  /** When each step was done, in words; `null` before the run. */
  readonly doneAt: ((step: SheetStep) => string | null) | null;
  readonly onDone?: (step: SheetStep) => void;
}

export function SheetTable(props: SheetTableProps) {
  const words = () => runSheetMessages(props.reader);
  const said = (step: SheetStep) => words().step(step);
  return (
    <ol class="sheet-steps">
      <For each={props.steps}>
        {(step) => (
          <li class="sheet-step" classList={{ 'is-done': (props.doneAt?.(step) ?? null) !== null }}>
            <p class="sheet-time">{words().when(step)}</p>
            <div class="sheet-what">
              <p class="sheet-title">{said(step).title}</p>
              <p>{said(step).look}</p>
              <Show when={said(step).danger}>
                {(danger) => (
                  <p class="sheet-danger">
                    <strong>Danger:</strong> {danger()}
                  </p>
                )}
              </Show>
            </div>
            <div class="sheet-tick">
              <Show
                when={props.doneAt?.(step) ?? null}
                fallback={
                  <Show when={props.onDone} fallback={<span class="sheet-blank">Done at</span>}>
                    {(onDone) => (
                      <button type="button" class="sheet-done" onClick={() => onDone()(step)}>
                        Done<span class="visually-hidden"> {said(step).title}</span>
                      </button>
                    )}
                  </Show>
                }
              >
                {(at) => <span>Done, {at()}</span>}
              </Show>
            </div>
          </li>
        )}
      </For>
    </ol>
  );
}
