/** What the desk reference says. */
import type { LookUpProblem } from '../reference/look-up.ts';
import { lookUp } from './english/look-up.ts';
import type { Reader } from './language.ts';
import { section } from './section.ts';

export const lookUpMessages = section<ReturnType<typeof lookUp>>({ en: lookUp });

export function lookUpProblem(problem: LookUpProblem, reader: Reader): string {
  const say = lookUpMessages(reader).problems[problem.kind] as (problem: LookUpProblem) => string;
  return say(problem);
}
