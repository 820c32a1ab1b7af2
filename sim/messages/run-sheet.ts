/** Messages on what is to be done at a running still. */
import { runSheet } from './english/run-sheet.ts';
import { section } from './section.ts';

export type { SaidStep } from './english/run-sheet.ts';

export const runSheetMessages = section<ReturnType<typeof runSheet>>({ en: runSheet });
