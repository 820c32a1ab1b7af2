/** The app: one bench, and the page that shows it. */
import { createBench, BenchContext } from './bench.ts';
import { BenchPage, type BenchPageProps } from './BenchPage.tsx';
import type { Opening } from './opening.ts';
import { screenClock } from './playback.ts';
import { createPaper } from './print.ts';
import { quickLook } from './quick-look.ts';
import type { RunClient } from '../worker/client.ts';

export interface AppProps extends BenchPageProps {
  readonly initialOpening: Opening;
  readonly initialClient: RunClient;
}

export function App(props: AppProps) {
  const bench = createBench({
    client: props.initialClient,
    paper: createPaper(),
    quickLook,
    clock: screenClock,
    first: props.initialOpening.result,
    saved: props.initialOpening.saved,
  });
  return (
    <BenchContext.Provider value={bench}>
      <BenchPage initialNotice={props.initialNotice} initialStorage={props.initialStorage} startingPoints={props.startingPoints} setsOff={props.setsOff} />
    </BenchContext.Provider>
  );
}
