/** Files of the bench: opening one, saving the scenario or the table of the run. */
import type { Bench } from '../state/bench.ts';
import type { Told } from './told.ts';

export interface BenchFiles {
  /** Lets the reader pick a file to open. */
  pick(): void;
  saveScenario(): void;
  /** For people, in the units shown, or for programs in SI. */
  saveTable(of: 'people' | 'programs'): void;
  onDragOver(event: DragEvent): void;
  onDrop(event: DragEvent): void;
}

export function createBenchFiles(bench: Bench, tell: (told: Told | null) => void): BenchFiles {
  const work = async () => (await import('./file-work.ts')).createFileWork(bench, tell);
  const holdsFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
  return {
    pick: () => void work().then((files) => files.pick()),
    saveScenario: () => void work().then((files) => files.saveScenario()),
    saveTable: (of) => void work().then((files) => files.saveTable(of)),
    onDragOver: (event) => {
      if (holdsFile(event)) event.preventDefault();
    },
    onDrop: (event) => {
      if (!holdsFile(event) || event.defaultPrevented) return;
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file) void work().then((files) => files.open(file));
    },
  };
}
