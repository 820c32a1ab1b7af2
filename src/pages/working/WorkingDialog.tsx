/** The working of a run's headline numbers, one sheet at a time. */
import { createEffect, createMemo, createSignal, For, on, Show, untrack } from 'solid-js';
import {
  type Scenario,
  type WorkingId,
  type WorkingSheet,
  formatDuration,
  formatQuantity,
  type UnitSystem,
} from '../../../sim/index.ts';
import { fileName, saveJson } from '../../state/downloads.ts';
import { Dialog } from '../../ui/Dialog.tsx';
import { workerPool } from '../../workers/start-pool.ts';
import { createQuery } from '../../state/query.ts';
import { WorkingStepView } from './WorkingStepView.tsx';
import { PlainNumber } from './PlainNumber.tsx';
import '../analysis.css';
import './working.css';

export interface WorkingDialogProps {
  readonly open: boolean;
  readonly topic: WorkingId;
  /** Of a number that the page has at hand: shown before any other. */
  readonly sheet?: (() => WorkingSheet | null) | undefined;
  readonly scenario: Scenario;
  readonly units: UnitSystem;
  readonly onClose: () => void;
}

/** Lengths of tube are said in metres, whatever their size. */
const HINTS: Readonly<Record<string, string>> = { 'condensing-length': 'run', 'sized-length': 'run' };

function Result(props: { readonly sheet: WorkingSheet; readonly units: UnitSystem }) {
  const words = (): string | null => {
    const { value, unit } = props.sheet.result;
    if (unit === '1') return null;
    if (unit === 's') return formatDuration(value);
    const hint = HINTS[props.sheet.id];
    return formatQuantity(value, unit, props.units, hint === undefined ? { significant: 3 } : { hint });
  };
  return <>{words() ?? <PlainNumber value={props.sheet.result.value} />}</>;
}

export function WorkingDialog(props: WorkingDialogProps) {
  const asked = createQuery(workerPool(), 'working', () => (props.open ? [props.scenario, null] : null), {
    priority: 'high',
    quiet_ms: 0,
  });
  const atHand = createMemo(() => (props.open ? (props.sheet?.() ?? null) : null));
  const sheets = createMemo((): readonly WorkingSheet[] | null => {
    const first = atHand();
    const found = asked.answer();
    if (first === null) return found;
    return [first, ...(found ?? [])];
  });
  const [chosen, setChosen] = createSignal<string>('');
  createEffect(
    on(
      () => [props.open, untrack(atHand)?.id ?? props.topic] as const,
      ([open, topic]) => {
        if (open) setChosen(topic);
      },
    ),
  );
  const sheet = createMemo(() => sheets()?.find(({ id }) => id === chosen()) ?? null);
  const missing = () => asked.answer() !== null && sheet() === null;
  const save = () => {
    const found = sheet();
    if (found) saveJson(found, fileName('json', props.scenario.name, `working ${found.title}`));
  };

  return (
    <Dialog open={props.open} title="The working" onClose={() => props.onClose()}>
      <div class="working-head">
        <Show when={sheets()}>
          {(known) => (
            <label class="answer-choice">
              <span>Number</span>
              <select onChange={(event) => setChosen(event.currentTarget.value)}>
                <Show when={missing()}>
                  <option value="" selected>
                    choose one
                  </option>
                </Show>
                <For each={known()}>
                  {({ id, title }) => (
                    <option value={id} selected={id === chosen()}>
                      {title}
                    </option>
                  )}
                </For>
              </select>
            </label>
          )}
        </Show>
        <Show when={sheet()}>
          <button type="button" class="word" onClick={save}>
            Save JSON<span class="visually-hidden"> of this working</span>
          </button>
        </Show>
      </div>
      <div class="working-scroll" tabindex="0" role="region" aria-label="Working">
        <Show
          when={sheet()}
          fallback={
            <p class="answer-quiet">
              {asked.problem() ??
                (missing()
                  ? 'This run never got so far, so there is nothing to show for this number.'
                  : 'Working it out…')}
            </p>
          }
        >
          {(found) => (
            <>
              <p class="working-result">
                {found().title}:{' '}
                <strong>
                  <Result sheet={found()} units={props.units} />
                </strong>
              </p>
              <p class="answer-quiet">
                {found().says}
                <Show when={found().time_s}>{(time_s) => <> Shown at {formatDuration(time_s())}.</>}</Show> The
                equations work in SI units.
              </p>
              <For each={found().steps}>
                {(step, index) => <WorkingStepView step={step} number={index() + 1} units={props.units} />}
              </For>
              <p class="working-origin">The number comes from {found().result.from}.</p>
            </>
          )}
        </Show>
      </div>
    </Dialog>
  );
}
