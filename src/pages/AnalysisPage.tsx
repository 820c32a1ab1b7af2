/**
 * The places that answer a question about the still on the bench: how much tube, how long to run, which boil, and what
 * real runs gave. One place at a time; what it has worked out is kept while the reader looks elsewhere.
 *
 * Mount it lazily, inside the page's head and foot, with the place and what the bench lends:
 *   <AnswersPage place="size" desk={desk} />
 */
import { ErrorBoundary, Match, Switch } from 'solid-js';
import type { AnswersDesk } from './parts/analysis-context.ts';
import { words } from '../state/query.ts';
import { BoilsView } from './compare/CompareView.tsx';
import { LengthView } from './run-length/RunLengthView.tsx';
import type { AnswersPlace } from '../state/places.ts';
import { RunsView } from './run-book/RunBookView.tsx';
import { SizeView } from './size/SizeView.tsx';
import './analysis.css';

export interface AnswersPageProps {
  readonly place: AnswersPlace;
  readonly desk: AnswersDesk;
}

export function AnswersPage(props: AnswersPageProps) {
  return (
    <ErrorBoundary
      fallback={(error: unknown, again) => (
        <div class="notice" role="alert">
          <p>This answer can’t be shown: {words(error)}.</p>
          <button type="button" onClick={again}>
            Try again
          </button>
        </div>
      )}
    >
      <Switch>
        <Match when={props.place === 'size'}>
          <SizeView desk={props.desk} />
        </Match>
        <Match when={props.place === 'run-length'}>
          <LengthView desk={props.desk} />
        </Match>
        <Match when={props.place === 'boils'}>
          <BoilsView desk={props.desk} />
        </Match>
        <Match when={props.place === 'my-runs'}>
          <RunsView desk={props.desk} />
        </Match>
      </Switch>
    </ErrorBoundary>
  );
}
