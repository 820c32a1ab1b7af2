/** The list of keys that `?` shows; apart from what the keys do, which the first view needs. */
import type { Command } from './keyboard.ts';

export interface KeyWords {
  readonly command: Command;
  readonly keys: string;
  readonly does: string;
}

export const KEYS: readonly KeyWords[] = [
  { command: 'play-or-pause', keys: 'P', does: 'play or pause' },
  { command: 'back-10-s', keys: '←', does: 'ten seconds back' },
  { command: 'on-10-s', keys: '→', does: 'ten seconds on' },
  { command: 'back-60-s', keys: 'Shift ←', does: 'a minute back' },
  { command: 'on-60-s', keys: 'Shift →', does: 'a minute on' },
  { command: 'to-start', keys: 'Home', does: 'to the start' },
  { command: 'to-end', keys: 'End', does: 'to the end' },
  { command: 'next-event', keys: 'N', does: 'to what happens next' },
  { command: 'previous-event', keys: 'Shift N', does: 'to what happened last' },
  { command: 'faster', keys: 'Q', does: 'play quicker' },
  { command: 'slower', keys: 'S', does: 'play slower' },
  { command: 'undo', keys: 'Ctrl Z', does: 'undo the last change' },
  { command: 'redo', keys: 'Ctrl Shift Z', does: 'redo it' },
  { command: 'project', keys: 'J', does: 'projector view, for a room' },
  { command: 'show-shelf', keys: 'M', does: 'my stills' },
  { command: 'show-keys', keys: '?', does: 'show this list' },
];
