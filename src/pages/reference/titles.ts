/** What entries of the reference are called, in headings and lists. */
import type { Correlation } from '../../../sim/index.ts';

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** An entry says what it is in a sentence; a title has no full stop. */
export const titleOf = ({ says }: Correlation): string => (says.endsWith('.') ? says.slice(0, -1) : says);
