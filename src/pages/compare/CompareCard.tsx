/** One of the runs: its name, the settings in which it may differ, and the still itself at the moment of the time mark. */
import { createMemo, createUniqueId, For, Index, Show, type Accessor } from 'solid-js';
import { columnAt, englishReader, eventMessage, quantities, rangeAt, type UnitSystem } from '../../../sim/index.ts';
import type { LayoutOptions, PlacedLayout } from '../../drawing/geometry/still-layout.ts';
import { StillDrawing } from '../../drawing/StillDrawing.tsx';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { compareFields } from './compare-fields.ts';
import type { ComparedRun } from '../../state/comparison-store.ts';
import { WorkingButton } from '../working/WorkingButton.tsx';
import { alarmsOf } from '../parts/RunAlarms.tsx';
import { whyNoRun } from '../../workers/no-run.ts';

export interface CompareCardProps {
  readonly run: ComparedRun;
  /** Where its drawing stands among the others. */
  readonly placed: (options: LayoutOptions) => PlacedLayout | undefined;
  readonly letter: string;
  readonly time_s: Accessor<number>;
  readonly units: UnitSystem;
  readonly reducedMotion: boolean;
  readonly canCopy: boolean;
  readonly canRemove: boolean;
  readonly onChange: (path: string, value: unknown) => void;
  readonly onCopy: () => void;
  readonly onRemove: () => void;
  readonly onLoad: () => void;
}

export function CompareCard(props: CompareCardProps) {
  const id = createUniqueId();
  const fields = createMemo(() => compareFields(props.run.scenario, englishReader(props.units)));
  const now = createMemo(() => {
    const { result } = props.run;
    if (!result) return '';
    const time = Math.min(props.time_s(), result.summary.end_s);
    const oil = columnAt(result.record, 'oilCollected_kg', time);
    const q = quantities(englishReader(props.units));
    const rate = columnAt(result.record, 'condensateRate_kg_s', time);
    const outlet =
      rate > 0 ? `, distillate at ${q.temperature(columnAt(result.record, 'condensateTemperature_K', time))}` : '';
    const when = props.time_s() > result.summary.end_s ? 'Ended at' : 'At';
    return `${when} ${q.time(time)}: ${q.oil(oil, result.summary.oilDensity_kg_m3, { significant: 2 })} of oil${outlet}.`;
  });
  return (
    <section class="compared" aria-labelledby={`${id}-name`}>
      <div class="compare-head">
        <span class="compare-letter" aria-hidden="true">
          {props.letter}
        </span>
        <label class="visually-hidden" for={`${id}-name`}>
          Name of run {props.letter}
        </label>
        <input
          id={`${id}-name`}
          class="compare-name"
          type="text"
          maxlength="120"
          value={props.run.scenario.name}
          onChange={(event) => props.onChange('name', event.currentTarget.value.trim() || `Run ${props.letter}`)}
        />
      </div>
      <div class="compare-fields">
        <Index each={fields()}>
          {(field) => (
            <QuantityField
              class="compare-field"
              label={field().label}
              value={field().value}
              unit={field().unit}
              hint={field().hint}
              {...rangeAt(field().path)}
              system={props.units}
              onCommit={(value) => props.onChange(field().path, value)}
            />
          )}
        </Index>
        <Show when={props.run.problem}>
          {(told) => (
            <p class="answer-problem" role="alert">
              {whyNoRun(told(), props.units)} The run shown is the one before this change.
            </p>
          )}
        </Show>
      </div>
      <div class="compare-drawing">
        <Show when={props.run.result} fallback={<p class="answer-quiet">Running…</p>}>
          {(result) => (
            /* The small picture is for the eye; what it says stands below it in words. */
            <div inert aria-hidden="true">
              <StillDrawing
                scenario={result().scenario}
                result={result()}
                time_s={props.time_s}
                selected={null}
                onSelect={() => undefined}
                units={props.units}
                reducedMotion={props.reducedMotion}
                stale={props.run.running || props.run.problem !== null}
                placed={props.placed}
              />
            </div>
          )}
        </Show>
      </div>
      <div class="compare-said">
        <p class="compare-now">{now()}</p>
        <For each={alarmsOf(props.run.result?.events ?? [])}>
          {(event) => <p class="answer-problem">{eventMessage(event, englishReader(props.units)).sentence}</p>}
        </For>
      </div>
      <div class="compare-actions">
        <Show when={props.canCopy}>
          <button type="button" class="word" onClick={() => props.onCopy()}>
            Copy<span class="visually-hidden"> run {props.letter}</span>
          </button>
        </Show>
        <button type="button" class="word" onClick={() => props.onLoad()}>
          Put on the bench<span class="visually-hidden"> run {props.letter}</span>
        </button>
        <Show when={props.run.result}>
          {(result) => (
            <WorkingButton
              topic="recovery"
              scenario={result().scenario}
              units={props.units}
              of={`run ${props.letter}`}
            />
          )}
        </Show>
        <Show when={props.canRemove}>
          <button type="button" class="word" onClick={() => props.onRemove()}>
            Delete<span class="visually-hidden"> run {props.letter}</span>
          </button>
        </Show>
      </div>
    </section>
  );
}
