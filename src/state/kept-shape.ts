/** How things are kept on this device, and what is known of a key between reading and writing it. */
import type { Entry } from './database.ts';

/** A shape in which things are kept. */
export interface Shape<T> extends Keeping {
  /** Reads a value of this version or an earlier one; `null` where it cannot be read. */
  read(value: unknown, version: number): T | null;
}

/** How a value is kept. */
export interface Keeping {
  readonly version: number;
  /**
   * What is kept where two windows have changed the same thing at once, by key. Without this the later change counts.
   * `base` is what both began from, where it is known.
   */
  both?(key: string, mine: unknown, theirs: unknown, base: unknown): Readonly<Record<string, unknown>>;
}

export type Kept<T> =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'read'; readonly value: T }
  /** Kept by a newer build, or damaged: it stays where it is until something is kept in its place, then aside. */
  | { readonly kind: 'unread'; readonly value: unknown };

export interface Pending {
  readonly entry: Entry | null;
  /** `null` for what an earlier visit noted, until somebody who knows how it is kept has asked for it. */
  readonly keeping: Keeping | null;
  /** What other windows noted of the same key; each is written after the one before. */
  readonly others: readonly Draft[];
}

/** What this window last saw under a key. */
export interface Seen {
  readonly revision: string | null;
  readonly value?: unknown;
}

/** A key, what was kept there and the revision it was made from; builds before windows followed each other noted none. */
export type Draft = readonly [key: string, entry: Entry | null, base?: string | null];

export function readShape<T>(entry: Entry | null | undefined, shape: Shape<T>): Kept<T> {
  if (!entry) return { kind: 'nothing' };
  const value = entry.version <= shape.version ? shape.read(entry.value, entry.version) : null;
  return value === null ? { kind: 'unread', value: entry.value } : { kind: 'read', value };
}

export const within = <T>(longest_ms: number, work: Promise<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('the storage does not answer')), longest_ms);
    work.then(resolve, reject).finally(() => clearTimeout(timer));
  });
