/**
 * The places that answer a question about the still on the bench: how much tube, how long to run, which boil, and what
 * real runs gave. One place at a time; what it has worked out is kept while the reader looks elsewhere.
 *
 * Mount it lazily, inside the page's head and foot, with the place and what the bench lends:
 *   <AnalysisPage place="size" context={context} />
 */
import { ErrorBoundary, lazy, Match, Suspense, Switch } from 'solid-js';
import type { AnalysisContext } from './parts/analysis-context.ts';
import { BuildView } from './build/BuildView.tsx';
import { CompareView } from './compare/CompareView.tsx';
import { RunLengthView } from './run-length/RunLengthView.tsx';
import type { AnalysisPlace } from '../state/places.ts';
import { RunBookView } from './run-book/RunBookView.tsx';
import { SizeView } from './size/SizeView.tsx';
import { errorMessage } from '../workers/errors.ts';
import './analysis.css';

const BeginView = lazy(async () => ({ default: (await import('./begin/BeginView.tsx')).BeginView }));
const BlendView = lazy(async () => ({ default: (await import('./blend/BlendView.tsx')).BlendView }));
const BottlingView = lazy(async () => ({ default: (await import('./bottling/BottlingView.tsx')).BottlingView }));
const LessonsView = lazy(async () => ({ default: (await import('./lessons/LessonsView.tsx')).LessonsView }));
const StillView = lazy(async () => ({ default: (await import('./at-the-still/StillView.tsx')).StillView }));
const StillTestsView = lazy(async () => ({
  default: (await import('./still-tests/StillTestsView.tsx')).StillTestsView,
}));
const PlantsView = lazy(async () => {
  const [{ PlantsView: View }, texts] = await Promise.all([
    import('./plants/PlantsView.tsx'),
    import('../../sim/library-texts.ts'),
  ]);
  return { default: (props: { readonly context: AnalysisContext }) => <View context={props.context} texts={texts} /> };
});

export interface AnalysisPageProps {
  readonly place: AnalysisPlace;
  readonly context: AnalysisContext;
}

export function AnalysisPage(props: AnalysisPageProps) {
  return (
    <ErrorBoundary
      fallback={(error: unknown, again) => (
        <div class="notice" role="alert">
          <p>This answer can’t be shown: {errorMessage(error)}.</p>
          <button type="button" onClick={again}>
            Try again
          </button>
        </div>
      )}
    >
      <Switch>
        <Match when={props.place === 'begin'}>
          <BeginView context={props.context} />
        </Match>
        <Match when={props.place === 'size'}>
          <SizeView context={props.context} />
        </Match>
        <Match when={props.place === 'build'}>
          <BuildView context={props.context} />
        </Match>
        <Match when={props.place === 'run-length'}>
          <RunLengthView context={props.context} />
        </Match>
        <Match when={props.place === 'compare'}>
          <CompareView context={props.context} />
        </Match>
        <Match when={props.place === 'plants'}>
          <Suspense fallback={<p class="opening">Fetching this place…</p>}>
            <PlantsView context={props.context} />
          </Suspense>
        </Match>
        <Match when={props.place === 'bottling'}>
          <Suspense fallback={<p class="opening">Fetching this place…</p>}>
            <BottlingView context={props.context} />
          </Suspense>
        </Match>
        <Match when={props.place === 'blend'}>
          <Suspense fallback={<p class="opening">Fetching this place…</p>}>
            <BlendView context={props.context} />
          </Suspense>
        </Match>
        <Match when={props.place === 'at-the-still'}>
          <Suspense fallback={<p class="opening">Fetching this place…</p>}>
            <StillView context={props.context} />
          </Suspense>
        </Match>
        <Match when={props.place === 'still-tests'}>
          <Suspense fallback={<p class="opening">Fetching this place…</p>}>
            <StillTestsView context={props.context} />
          </Suspense>
        </Match>
        <Match when={props.place === 'lessons'}>
          <Suspense fallback={<p class="opening">Fetching this place…</p>}>
            <LessonsView />
          </Suspense>
        </Match>
        <Match when={props.place === 'run-book'}>
          <RunBookView context={props.context} />
        </Match>
      </Switch>
    </ErrorBoundary>
  );
}
