import type { Shape } from './kept-shape.ts';

/** Whatever any version wrote; it is handed on as it is. */
export const anyShape: Shape<{ readonly value: unknown }> = { version: Infinity, read: (value) => ({ value }) };
