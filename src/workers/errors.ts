/** What an error says, and whether it only says that nobody waits any longer. */

export const errorMessage = (error: unknown): string => (error instanceof Error ? error.message : String(error));

export const givenUp = (): DOMException => new DOMException('', 'AbortError');

export const wasGivenUp = (error: unknown): boolean => error instanceof DOMException && error.name === 'AbortError';
