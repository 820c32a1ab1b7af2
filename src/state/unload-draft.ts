/**
 * The last change before the page goes. The store on this device answers too late for a page that is left at once, so
 * the change is also noted where writing does not wait; whoever opens the store next takes the note first.
 */
const placeOf = (key: string): string => `limbeck-parting-${key}`;

export function leaveNote(key: string, value: unknown): void {
  try {
    localStorage.setItem(placeOf(key), JSON.stringify(value));
  } catch {
    // Full or refused: the slower store was asked too.
  }
}

/** The note that was left, or `undefined`; it stays until it is dropped. */
export function readNote(key: string): unknown {
  try {
    const text = localStorage.getItem(placeOf(key));
    return text === null ? undefined : (JSON.parse(text) as unknown);
  } catch {
    return undefined;
  }
}

/** Once the slower store has it. */
export function dropNote(key: string): void {
  try {
    localStorage.removeItem(placeOf(key));
  } catch {
    // Where nothing can be kept there is nothing to drop.
  }
}
