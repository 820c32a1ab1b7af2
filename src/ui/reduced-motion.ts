/** Media query: whether the reader asked the system for less motion. */
export const REDUCED_MOTION = '(prefers-reduced-motion: reduce)';
