/** The app: one bench, and the page that shows it. */
import { createBench, BenchContext } from './bench.ts';
import { lengthThatHolds } from './length-that-holds.ts';
import { Page, type PageProps } from './Page.tsx';
import type { Opening } from './opening.ts';
import { screenClock } from './playback.ts';
import { createPaper } from './print.ts';
import type { RunClient } from '../worker/client.ts';

export interface AppProps extends PageProps {
  readonly initialOpening: Opening;
  readonly initialClient: RunClient;
}

export function App(props: AppProps) {
  const bench = createBench({
    client: props.initialClient,
    lengthThatHolds,
    paper: createPaper(),
    firstIsQuick: props.initialOpening.isQuick,
    clock: screenClock,
    first: props.initialOpening.result,
    saved: props.initialOpening.saved,
  });
  return (
    <BenchContext.Provider value={bench}>
      <Page
        initialNotice={props.initialNotice}
        initialStorage={props.initialStorage}
        startingPoints={props.startingPoints}
        setsOff={props.setsOff}
      />
    </BenchContext.Provider>
  );
}
