/** What a dilution comes to, for a reader. */
import { dilution } from './english/dilution.ts';
import { section } from './section.ts';

export type DilutionMessages = ReturnType<typeof dilution>;

export const dilutionMessages = section<DilutionMessages>({ en: dilution });
