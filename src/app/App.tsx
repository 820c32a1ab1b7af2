/** The app: one bench, and the page that shows it. */
import { createBench, BenchContext } from '../state/bench.ts';
import { lengthThatHolds } from '../state/length-that-holds.ts';
import { Page, type PageProps } from './Page.tsx';
import type { Opening } from '../state/opening.ts';
import { screenClock } from '../state/playback.ts';
import { createPaper } from '../state/print.ts';
import type { RunClient } from '../workers/run-client.ts';

export interface AppProps extends PageProps {
  readonly initialOpening: Opening;
  readonly initialClient: RunClient;
}

export function App(props: AppProps) {
  const bench = createBench({
    client: props.initialClient,
    lengthThatHolds,
    paper: createPaper(),
    clock: screenClock,
    first: props.initialOpening.result,
    still: props.initialOpening.still,
    awaited: props.initialOpening.awaited,
    saved: props.initialOpening.saved,
  });
  return (
    <BenchContext.Provider value={bench}>
      <Page
        initialTrouble={props.initialTrouble}
        initiallyKept={props.initiallyKept}
        initialStore={props.initialStore}
        startingPoints={props.startingPoints}
        setsOff={props.setsOff}
      />
    </BenchContext.Provider>
  );
}
