/** Messages on what a run says for the next. */
import { nextRun } from './english/next-run.ts';
import { section } from './section.ts';

export const nextRunMessages = section<ReturnType<typeof nextRun>>({ en: nextRun });
