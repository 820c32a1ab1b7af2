/** Words of the trade, for those who meet them first in a lesson. */
import { glossary } from './english/glossary.ts';
import { section } from './section.ts';

export type { GlossaryEntry } from './english/glossary.ts';

export const glossaryMessages = section<ReturnType<typeof glossary>>({ en: glossary });
