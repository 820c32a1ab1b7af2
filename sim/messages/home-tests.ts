/** Messages on tests of a still at home: what to do, and what was found. */
import { homeTests } from './english/home-tests.ts';
import { section } from './section.ts';

export type { TestWords } from './english/home-tests.ts';

export const homeTestMessages = section<ReturnType<typeof homeTests>>({ en: homeTests });
