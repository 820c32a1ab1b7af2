/** The places that answer a question about the still, wired to the bench. */
import { Show } from 'solid-js';
import { AnalysisPage } from '../pages/AnalysisPage.tsx';
import type { AnalysisContext } from '../pages/parts/analysis-context.ts';
import type { AnalysisPlace } from '../state/places.ts';
import { useBench } from '../state/bench.ts';
import { newStill } from '../state/kept-still.ts';
import { Title } from '../pages/parts/Title.tsx';

export function AnalysisPlaces(props: { readonly place: AnalysisPlace }) {
  const bench = useBench();
  const context: AnalysisContext = {
    scenario: bench.scenario,
    result: bench.result,
    units: bench.units,
    reader: bench.reader,
    theme: bench.shownTheme,
    change: bench.change,
    changeMany: bench.changeMany,
    // What an answer makes is the reader's own.
    load: (scenario) => bench.load(scenario, newStill(true)),
  };
  return (
    <div class="answers-place">
      <Show when={props.place !== 'lessons'} fallback={<h1 class="visually-hidden">Lessons</h1>}>
        <Title />
      </Show>
      <AnalysisPage place={props.place} context={context} />
    </div>
  );
}

/** Shows the run under way at the real still above every place. */
export const followRun = async (reader: AnalysisContext['reader']): Promise<void> =>
  (await import('../pages/at-the-still/show-run-bar.tsx')).showRunBar(reader);
