/** Opens a file on the bench, saves the scenario or the table of the run: fetched when somebody asks for it. */
import type { Bench } from '../state/bench.ts';
import { fileName, saveCsv, saveJson } from '../state/downloads.ts';
import { readScenarioFile } from '../state/files.ts';
import { openFileVisitor } from './open-visitor.ts';
import type { Told } from './told.ts';

export interface FileWork {
  open(file: Blob): Promise<void>;
  /** Lets the reader pick a file to open. */
  pick(): void;
  saveScenario(): void;
  saveTable(of: 'people' | 'programs'): Promise<void>;
}

export function createFileWork(bench: Bench, tell: (told: Told | null) => void): FileWork {
  const open = async (file: Blob) => tell(await openFileVisitor(bench, await readScenarioFile(file)));
  return {
    open,
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
    saveTable: async (of) => {
      const { record, scenario } = bench.result();
      const reader = bench.reader();
      const { recordCsv, shownRecordCsv } = await import('../state/record-file.ts');
      if (of === 'programs') saveCsv(recordCsv(record), fileName('csv', scenario.name, 'SI'));
      else saveCsv(shownRecordCsv(record, reader), fileName('csv', scenario.name));
    },
  };
}
