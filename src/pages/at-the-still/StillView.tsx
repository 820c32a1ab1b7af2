/** At the still: a run on the clock, from before the heat goes on until it stands in the run book. */
import { createEffect, onMount, Show } from 'solid-js';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { RunningPanel } from './RunningPanel.tsx';
import { stillSession } from './session.ts';
import { showRunBar } from './show-run-bar.tsx';
import { StartPanel } from './StartPanel.tsx';
import './at-the-still.css';

export function StillView(props: { readonly context: AnalysisContext }) {
  const session = stillSession();
  createEffect(() => session.readAs(props.context.reader()));
  onMount(() => {
    const { reader } = props.context;
    showRunBar(reader);
  });
  return (
    <article class="answer at-the-still">
      <Show when={session.ready()} fallback={<p class="answer-quiet">Looking for a run under way…</p>}>
        <Show when={session.run()} fallback={<StartPanel context={props.context} />}>
          <RunningPanel context={props.context} />
        </Show>
      </Show>
    </article>
  );
}
