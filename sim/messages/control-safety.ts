/** What must be said at a control that is turned. */
import { controlSafety } from './english/control-safety.ts';
import { section } from './section.ts';

export const controlSafetyMessages = section<ReturnType<typeof controlSafety>>({ en: controlSafety });
