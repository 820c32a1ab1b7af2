/** What the desk reference says. */
import type { Role } from '../correlation.ts';
import type { LookUpProblem } from '../reference/look-up.ts';
import type { LookUpMessages } from './catalogue/look-up.ts';
import { englishLookUp } from './english/look-up.ts';
import type { Language } from './language.ts';

const MESSAGES: Readonly<Record<Language, LookUpMessages>> = { en: englishLookUp };

export function lookUpProblem(problem: LookUpProblem, language: Language): string {
  const say = MESSAGES[language].problems[problem.kind] as (problem: LookUpProblem) => string;
  return say(problem);
}

/** How runs use a relation. */
export const roleMessage = (role: Role, language: Language): string => MESSAGES[language].roles[role];

/** A range in SI. */
export const rangeInSI = (range: readonly [number, number] | null, unit: string, language: Language): string =>
  MESSAGES[language].range(range, unit);
