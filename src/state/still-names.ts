/** What a kept still is called, whoever wrote it. */
import { isObject } from '../../sim/index.ts';

/** The scenario of whatever was kept: a still, the bench of an older build, or the scenario alone. */
export const scenarioIn = (kept: unknown): unknown => (isObject(kept) && 'scenario' in kept ? kept['scenario'] : kept);

export const nameOfStill = (scenario: unknown): string =>
  isObject(scenario) && typeof scenario['name'] === 'string' && scenario['name'].trim() !== ''
    ? scenario['name']
    : 'A still without a name';

export const LONGEST_NAME = 120;

/** A name with something in brackets after it, no longer than a name may be. */
export const namedAfter = (name: string, mark: string): string =>
  `${name.slice(0, LONGEST_NAME - mark.length - 3)} (${mark})`;

/** What was kept, by how its key begins; of what is none of these only that it was. */
const KEPT_WORDS: readonly (readonly [start: string, words: string])[] = [
  ['compared', 'A comparison'],
  ['run-book/', 'An entry of the run book'],
  ['still-run', 'A run at the still'],
  ['own-plants', 'Plants of your own'],
  ['tube-prices', 'Prices of tubes'],
  ['home-tests', 'Still tests'],
  ['bottling', 'What was bottled'],
  ['blend', 'A blend'],
  ['lesson', 'A lesson'],
];

/** What does not open and is kept as it is: what it is called, and what a file of it holds. */
export function unreadKept(key: string, value: unknown): { readonly words: string; readonly holds: unknown } {
  const of = key.replace(/^aside\//u, '');
  if (of.startsWith('shelf/') || of.startsWith('bench'))
    return { words: nameOfStill(scenarioIn(value)), holds: scenarioIn(value) };
  return { words: KEPT_WORDS.find(([start]) => of.startsWith(start))?.[1] ?? 'Something kept here', holds: value };
}
