/** Messages on the parts beside the condenser. */
import { otherParts } from './english/other-parts.ts';
import { section } from './section.ts';

export const otherPartsMessages = section<ReturnType<typeof otherParts>>({ en: otherParts });
