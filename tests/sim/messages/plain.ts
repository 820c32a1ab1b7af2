/** Text as it is typed, for tests: with ordinary spaces. */
export const plain = (text: string | null): string => (text ?? '').replace(/[\u202f\u00a0]/gu, ' ');
