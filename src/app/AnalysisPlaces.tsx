/** The places that answer a question about the still, wired to the bench. */
import { AnswersPage } from '../pages/AnalysisPage.tsx';
import type { AnswersDesk } from '../pages/parts/analysis-context.ts';
import type { AnswersPlace } from '../state/places.ts';
import { useBench } from '../state/bench.ts';
import { Title } from '../pages/parts/Title.tsx';

export function AnswersPlaces(props: { readonly place: AnswersPlace }) {
  const bench = useBench();
  const desk: AnswersDesk = {
    scenario: bench.scenario,
    result: bench.result,
    units: bench.units,
    theme: bench.shownTheme,
    change: bench.change,
    changeMany: bench.changeMany,
    load: (scenario) => bench.load(scenario),
  };
  return (
    <div class="answers-place">
      <Title />
      <AnswersPage place={props.place} desk={desk} />
    </div>
  );
}
