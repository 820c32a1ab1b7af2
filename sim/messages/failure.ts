/** The message of a run that broke off. */
import { failure } from './english/failure.ts';
import { section } from './section.ts';

export type FailureMessages = ReturnType<typeof failure>;

export const failureMessages = section<FailureMessages>({ en: failure });
