/** The head of the page, wired to the bench. */
import type { Place } from '../state/places.ts';
import { useBench } from '../state/bench.ts';
import { setProjecting } from '../state/projector.ts';
import { workerPool } from '../workers/start-pool.ts';
import type { BenchFiles } from './bench-files.ts';
import { Header } from './Header.tsx';

export interface BenchHeaderProps {
  readonly place: Place;
  readonly files: BenchFiles;
  readonly onStart: () => void;
  readonly onShelf: () => void;
  readonly onShare: () => void;
  readonly onKeys: () => void;
}

/** What an answer needs is fetched and started while the hand is still on its way. */
function warmWorkers(): void {
  void import('./AnalysisPlaces.tsx');
  workerPool().warm();
}

export function BenchHeader(props: BenchHeaderProps) {
  const bench = useBench();
  return (
    <Header
      place={props.place}
      onNearPlaces={warmWorkers}
      units={bench.units()}
      currency={bench.currency()}
      theme={bench.theme()}
      canUndo={bench.canUndo()}
      canRedo={bench.canRedo()}
      onStart={() => props.onStart()}
      onShelf={() => props.onShelf()}
      onOpenFile={() => props.files.pick()}
      onSaveScenario={() => props.files.saveScenario()}
      onSaveTable={(of) => props.files.saveTable(of)}
      onShare={() => props.onShare()}
      onPrint={() => {
        bench.pause();
        void bench.paper.print();
      }}
      onUndo={() => bench.undo()}
      onRedo={() => bench.redo()}
      onUnits={(units) => bench.setUnits(units)}
      onCurrency={(currency) => bench.setCurrency(currency)}
      onTheme={(theme) => bench.setTheme(theme)}
      onProject={() => setProjecting(true)}
      onKeys={() => props.onKeys()}
    />
  );
}
