/** Files of the bench: opening one, saving the scenario or the table of the run. */
import type { Bench } from '../state/bench.ts';
import { fileName, saveCsv, saveJson } from '../state/downloads.ts';
import { readScenarioFile } from '../state/files.ts';

export interface BenchFiles {
  /** Lets the reader pick a file to open. */
  pick(): void;
  saveScenario(): void;
  /** For people, in the units shown, or for programs in SI. */
  saveTable(of: 'people' | 'programs'): void;
  onDragOver(event: DragEvent): void;
  onDrop(event: DragEvent): void;
}

export function createBenchFiles(bench: Bench, tell: (message: string | null) => void): BenchFiles {
  const open = async (file: Blob) => {
    const parsed = await readScenarioFile(file);
    const problem = parsed.ok ? await bench.load(parsed.json) : parsed.message;
    tell(problem === null ? null : `The file was not opened, and your work is as it was. ${problem}`);
  };
  const saveTable = async (of: 'people' | 'programs') => {
    const { record, scenario } = bench.result();
    const reader = bench.reader();
    const { recordCsv, shownRecordCsv } = await import('../state/record-file.ts');
    if (of === 'programs') saveCsv(recordCsv(record), fileName('csv', scenario.name, 'SI'));
    else saveCsv(shownRecordCsv(record, reader), fileName('csv', scenario.name));
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
    saveTable: (of) => void saveTable(of),
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
