/** Stills as documents, each kept by an id of its own: what stands on a bench, stood there, or waits on the shelf. */
import { isObject, type Scenario } from '../../sim/index.ts';
import type { Shape } from './kept-shape.ts';
import { newId } from './new-id.ts';

/** How a still of somebody else came, and the one beside which it stands. */
export interface Visit {
  readonly from: 'link' | 'file';
  readonly home: string;
  /** Whether that one is the reader's own, and not an example that was only looked at. */
  readonly isOwn: boolean;
}

export interface Still {
  readonly id: string;
  /** Whether the reader has changed it or said that it is theirs; an example that was only looked at is on no shelf. */
  readonly touched: boolean;
  readonly visit: Visit | null;
}

/** What stands on a bench. */
export interface Desk {
  readonly scenario: Scenario;
  readonly still: Still;
}

export interface KeptStill extends Omit<Still, 'id'> {
  /** As JSON; it is read like any other file before it is used. */
  readonly scenario: unknown;
  readonly changed_ms: number;
  /** When it was deleted, if it was. */
  readonly deleted_ms: number | null;
  /** The still from which it was parted when two windows changed that at once. */
  readonly split: string | null;
}

export const SHELF = 'shelf/';

export const newStill = (touched = false, visit: Visit | null = null): Still => ({ id: newId(), touched, visit });

const time = (value: unknown): number | null => (typeof value === 'number' ? value : null);

const readVisit = (value: unknown): Visit | null =>
  isObject(value) && typeof value['home'] === 'string'
    ? { from: value['from'] === 'file' ? 'file' : 'link', home: value['home'], isOwn: value['isOwn'] !== false }
    : null;

/** What is kept of a still that two windows change at once is fetched with what writes: `shelf-both.ts`. */
export const stillShape: Shape<KeptStill> = {
  version: 1,
  read: (value) =>
    isObject(value) && isObject(value['scenario'])
      ? {
          scenario: value['scenario'],
          touched: value['touched'] === true,
          visit: readVisit(value['visit']),
          changed_ms: time(value['changed_ms']) ?? 0,
          deleted_ms: time(value['deleted_ms']),
          split: typeof value['split'] === 'string' ? value['split'] : null,
        }
      : null,
};

export const keptOf = ({ scenario, still: { touched, visit } }: Desk): KeptStill => ({
  scenario,
  touched,
  visit,
  changed_ms: Date.now(),
  deleted_ms: null,
  split: null,
});

const OWN_STILL = 'limbeck-still';

/** The still that this window showed before it was opened anew, in whatever order windows were left. */
export function stillOfWindow(): string | null {
  try {
    return sessionStorage.getItem(OWN_STILL);
  } catch {
    return null;
  }
}

export function noteStillOfWindow(id: string): void {
  try {
    sessionStorage.setItem(OWN_STILL, id);
  } catch {
    // The one that was changed last is opened then.
  }
}
