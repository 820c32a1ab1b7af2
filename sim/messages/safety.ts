/** What must be said at any still, whatever the run came to. */
import { safety } from './english/safety.ts';
import { section } from './section.ts';

export type SafetyMessages = ReturnType<typeof safety>;

export const safetyMessages = section<SafetyMessages>({ en: safety });
