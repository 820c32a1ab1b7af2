/** The hardest boil that one's own condenser holds and the least water that it needs, each one press from the bench. */
import { Show } from 'solid-js';
import { sizingMessages, wholeMessage, type HardestBoil, type LeastWater } from '../../../sim/index.ts';
import type { Query } from '../../state/query.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';

export interface WhatItHandlesProps {
  readonly context: AnalysisContext;
  readonly hardest: Query<HardestBoil>;
  readonly least: Query<LeastWater>;
  /** Whether almost nothing comes over in this run. */
  readonly nothingComes: boolean;
}

/** To three digits, never less: what just holds must not be rounded away. */
const roundedUp = (value: number): number => {
  if (value === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(value)) - 2);
  return Number((Math.ceil(value / step) * step).toPrecision(3));
};

export function WhatItHandles(props: WhatItHandlesProps) {
  const messages = () => sizingMessages(props.context.reader());
  const scenario = () => props.context.result().scenario;
  return (
    <section class="size-inverse" aria-labelledby="inverse-title">
      <h3 id="inverse-title">What your {messages().condenserNoun(scenario())} can handle</h3>
      <div class="inverse">
        <p classList={{ 'is-asking': props.hardest.asking() }}>
          <Show
            when={props.hardest.answer()}
            fallback={props.hardest.problem() ?? 'Looking for the hardest boil it can handle…'}
          >
            {(found) => <>{wholeMessage(messages().hardestBoil(found(), scenario()))}</>}
          </Show>
        </p>
        <Show when={props.hardest.answer()?.setting}>
          {(setting) => (
            <button
              type="button"
              onClick={() =>
                props.context.changeMany({
                  'heat.control': 'schedule',
                  'heat.setting': [{ at_s: 0, value: Math.floor(setting() * 1000) / 1000, shape: 'step' }],
                })
              }
            >
              Set the heat to that{scenario().heat.control === 'hold-rate' ? ', instead of holding a rate' : ''}
            </button>
          )}
        </Show>
        <p classList={{ 'is-asking': props.least.asking() }}>
          <Show
            when={!props.nothingComes}
            fallback="Almost nothing comes over in this run, so it cannot show how much water a boil needs."
          >
            <Show
              when={props.least.answer()}
              fallback={props.least.problem() ?? 'Looking for the least water it needs…'}
            >
              {(found) => <>{wholeMessage(messages().leastWater(found(), scenario()))}</>}
            </Show>
          </Show>
        </p>
        <Show when={!props.nothingComes && (props.least.answer()?.flow_kg_s ?? null) !== null}>
          <button
            type="button"
            onClick={() =>
              props.context.change('cooling.flow_kg_s', [
                { at_s: 0, value: roundedUp(props.least.answer()?.flow_kg_s ?? 0), shape: 'step' },
              ])
            }
          >
            Set the tap to that
          </button>
        </Show>
      </div>
    </section>
  );
}
