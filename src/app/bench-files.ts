/** Files of the bench: opening one, saving the scenario or the table of the run. */
import type { Bench } from '../state/bench.ts';

export interface BenchFiles {
  /** Lets the reader pick a file to open. */
  pick(): void;
  saveScenario(): void;
  /** For people, in the units shown, or for programs in SI. */
  saveTable(of: 'people' | 'programs'): void;
  onDragOver(event: DragEvent): void;
  onDrop(event: DragEvent): void;
}

const fetchDownloads = () => import('../state/downloads.ts');

export function createBenchFiles(bench: Bench, tell: (message: string | null) => void): BenchFiles {
  const open = async (file: Blob) => {
    const { readScenarioFile } = await import('../state/files.ts');
    const parsed = await readScenarioFile(file);
    const problem = parsed.ok ? await bench.load(parsed.json) : parsed.message;
    tell(problem === null ? null : `The file was not opened, and your work is as it was. ${problem}`);
  };
  const saveTable = async (of: 'people' | 'programs') => {
    const { record, scenario } = bench.result();
    const reader = bench.reader();
    const [{ recordCsv, shownRecordCsv }, { fileName, saveCsv }] = await Promise.all([
      import('../state/record-file.ts'),
      fetchDownloads(),
    ]);
    if (of === 'programs') saveCsv(recordCsv(record), fileName('csv', scenario.name, 'SI'));
    else saveCsv(shownRecordCsv(record, reader), fileName('csv', scenario.name));
  };
  const saveScenario = async () => {
    const { fileName, saveJson } = await fetchDownloads();
    saveJson(bench.scenario(), fileName('json', bench.scenario().name));
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
    saveScenario: () => void saveScenario(),
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
