/** Asks the command line within the process, with files of its own to be given. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { answerTo } from '../../../sim/cli/answer.ts';
import { BadInput } from '../../../sim/cli/bad-input.ts';

export const answered = (...args: string[]): unknown => JSON.parse(answerTo(args));

/** The lines for standard error; none when the input was good. */
export const complaints = (...args: string[]): readonly string[] => {
  try {
    answerTo(args);
  } catch (error) {
    if (error instanceof BadInput) return error.lines;
    throw error;
  }
  return [];
};

/** What is printed of a value: typed arrays as lists, no `undefined`. */
export const printed = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (_, entry: unknown) => (entry instanceof Float64Array ? Array.from(entry) : entry)));

/** A folder for the tests of one file, gone when they are over. */
export function ownFolder(): { readonly folder: string; readonly written: (name: string, text: string) => string } {
  const folder = mkdtempSync(join(tmpdir(), 'limbeck-cli-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  return {
    folder,
    written: (name, text) => {
      const file = join(folder, name);
      writeFileSync(file, text);
      return file;
    },
  };
}
