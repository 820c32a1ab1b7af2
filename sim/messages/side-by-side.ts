/** What two stills are said in that a class drives at once. */
import { sideBySide } from './english/side-by-side.ts';
import { section } from './section.ts';

export const sideBySideMessages = section<ReturnType<typeof sideBySide>>({ en: sideBySide });
