/** Files of the bench: opening one, saving the scenario or the table of the run. */
import type { Bench } from '../state/bench.ts';
import { fileName, saveCsv, saveJson } from '../state/downloads.ts';
import { readScenarioFile } from '../state/files.ts';

export interface BenchFiles {
  /** Lets the reader pick a file to open. */
  pick(): void;
  saveScenario(): void;
  saveTable(): void;
  onDragOver(event: DragEvent): void;
  onDrop(event: DragEvent): void;
}

export function createBenchFiles(bench: Bench, tell: (message: string | null) => void): BenchFiles {
  const open = async (file: Blob) => {
    const parsed = await readScenarioFile(file);
    const problem = parsed.ok ? await bench.load(parsed.json) : parsed.message;
    tell(problem === null ? null : `The file was not opened, and your work is as it was. ${problem}`);
  };
  const saveTable = async () => {
    const { record, scenario } = bench.result();
    const { recordCsv } = await import('../state/record-file.ts');
    saveCsv(recordCsv(record), fileName('csv', scenario.name));
  };
  const holdsFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;

  return {
    pick: () => {
      const field = document.createElement('input');
      field.type = 'file';
      field.accept = '.json,application/json';
      field.addEventListener('change', () => {
        const file = field.files?.[0];
        if (file) void open(file);
      });
      field.click();
    },
    saveScenario: () => saveJson(bench.scenario(), fileName('json', bench.scenario().name)),
    saveTable: () => void saveTable(),
    onDragOver: (event) => {
      if (holdsFile(event)) event.preventDefault();
    },
    onDrop: (event) => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file) void open(file);
    },
  };
}
