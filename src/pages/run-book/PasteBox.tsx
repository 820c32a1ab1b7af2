/** A box for pasted columns: what can be read becomes lines of the log, what can't stays here with the reason. */
import { createMemo, createSignal, createUniqueId, For, on, Show, createEffect } from 'solid-js';
import { displayUnit, understood, type LogReading, type UnitSystem } from '../../../sim/index.ts';
import { PastePreview } from './PastePreview.tsx';

export interface PasteBoxProps {
  readonly draft: string;
  readonly units: UnitSystem;
  /** One sentence each. */
  readonly problems: readonly string[];
  /** Headings of columns that are no readings. */
  readonly passedOver: readonly string[];
  readonly onDraft: (text: string) => void;
  /** @param reading how the reader says that the columns are to be read; `undefined` as they look */
  readonly onTake: (reading: LogReading | undefined) => void;
}

export function PasteBox(props: PasteBoxProps) {
  const id = createUniqueId();
  const found = createMemo(() => (props.draft.trim() === '' ? null : understood(props.draft)));
  const [chosen, setChosen] = createSignal<LogReading | undefined>();
  createEffect(
    on(
      () => props.draft,
      () => setChosen(undefined),
    ),
  );
  const headings = () => {
    const degrees = displayUnit('K', props.units).label;
    return `time (min), oil (mL), outlet ${degrees}, tub ${degrees}, distillate ${displayUnit('kg', props.units, 'water').label}`;
  };
  return (
    <details class="paste-box" open={props.draft !== '' || props.passedOver.length > 0}>
      <summary>Paste columns from a note or a spreadsheet</summary>
      <label for={id} class="answer-quiet">
        A line of headings, such as <code>{headings()}</code>, then a line a reading. Without headings two columns are
        minutes and millilitres of oil.
      </label>
      <textarea
        id={id}
        class="text-input"
        rows="6"
        spellcheck={false}
        aria-describedby={`${id}-said`}
        value={props.draft}
        onInput={(event) => props.onDraft(event.currentTarget.value)}
      />
      <Show when={found()}>
        {(looks) => (
          <PastePreview
            table={looks().table}
            reading={chosen() ?? looks().reading}
            units={props.units}
            onReading={setChosen}
          />
        )}
      </Show>
      <div class="paste-take">
        <button
          type="button"
          aria-disabled={props.draft.trim() === ''}
          onClick={() => props.draft.trim() !== '' && props.onTake(chosen())}
        >
          Take these lines
        </button>
      </div>
      <div id={`${id}-said`} role="status">
        <Show when={props.problems.length > 0}>
          <p class="answer-quiet">Not taken, and still in the box:</p>
          <ul class="paste-problems">
            <For each={props.problems}>{(problem) => <li class="field-error">{problem}</li>}</For>
          </ul>
        </Show>
        <Show when={props.passedOver.length > 0}>
          <p class="answer-quiet">
            Columns left out, because their headings name no reading: {props.passedOver.join(', ')}.
          </p>
        </Show>
      </div>
    </details>
  );
}
