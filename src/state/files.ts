/** Scenario files and tables in and out. */
import { COLUMN_NAMES, type RunRecord, type Scenario } from '../../sim/index.ts';

/** Larger files are refused unread: a scenario is a few kilobytes. */
const LARGEST_FILE_BYTES = 2_000_000;

export type ParsedFile =
  { readonly ok: true; readonly json: unknown } | { readonly ok: false; readonly message: string };

export function parseScenarioText(text: string): ParsedFile {
  try {
    return { ok: true, json: JSON.parse(text) as unknown };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { ok: false, message: `This file is not JSON, so it holds no scenario (${reason}).` };
  }
}

export async function readScenarioFile(file: Blob): Promise<ParsedFile> {
  if (file.size > LARGEST_FILE_BYTES)
    return { ok: false, message: 'This file is larger than two megabytes, so it is not a scenario.' };
  try {
    return parseScenarioText(await file.text());
  } catch {
    return { ok: false, message: 'This file could not be read from the disk.' };
  }
}

/** A name that every file system takes. */
export const fileName = (title: string, ending: string): string => {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plain || 'still'}.${ending}`;
};

export const scenarioText = (scenario: Scenario): string => `${JSON.stringify(scenario, null, 2)}\n`;

/** The record as a table: one column each, under its name in the record, which ends in its SI unit. */
export function recordTable(record: RunRecord): string {
  const lines = [COLUMN_NAMES.join(',')];
  for (let row = 0; row < record.rows; row++) {
    lines.push(COLUMN_NAMES.map((name) => numberInTable(record.columns[name][row] as number)).join(','));
  }
  return `${lines.join('\r\n')}\r\n`;
}

const numberInTable = (value: number): string => (Number.isFinite(value) ? String(Number(value.toPrecision(10))) : '');

/** Hands a text to the browser's own download. */
export function download(name: string, text: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
