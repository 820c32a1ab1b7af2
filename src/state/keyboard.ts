/** The keys of the bench: what each does. */

export type Command =
  | 'play-or-pause'
  | 'back-10-s'
  | 'on-10-s'
  | 'back-60-s'
  | 'on-60-s'
  | 'to-start'
  | 'to-end'
  | 'previous-event'
  | 'next-event'
  | 'faster'
  | 'slower'
  | 'undo'
  | 'redo'
  | 'project'
  | 'show-shelf'
  | 'show-keys';

/** What of a key press decides; a KeyboardEvent has it all. */
export interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

/** Where the focus is, as far as keys care. */
export type Focus = 'typing' | 'own-arrows' | 'free';

const PLAIN: Readonly<Record<string, Command>> = {
  p: 'play-or-pause',
  ArrowLeft: 'back-10-s',
  ArrowRight: 'on-10-s',
  Home: 'to-start',
  End: 'to-end',
  n: 'next-event',
  q: 'faster',
  s: 'slower',
  j: 'project',
  m: 'show-shelf',
  '?': 'show-keys',
};

const ARROWS: ReadonlySet<string> = new Set(['ArrowLeft', 'ArrowRight', 'Home', 'End']);

/** The command of a key press, or null where the key belongs to the field, slider or button that has the focus. */
export function commandFor(press: KeyPress, focus: Focus): Command | null {
  if (press.altKey || focus === 'typing') return null;
  if (press.ctrlKey || press.metaKey) {
    const key = press.key.toLowerCase();
    if (key === 'z') return press.shiftKey ? 'redo' : 'undo';
    return key === 'y' && !press.shiftKey ? 'redo' : null;
  }
  if (ARROWS.has(press.key) && focus === 'own-arrows') return null;
  if (press.shiftKey && press.key === 'ArrowLeft') return 'back-60-s';
  if (press.shiftKey && press.key === 'ArrowRight') return 'on-60-s';
  if (press.shiftKey && press.key.toLowerCase() === 'n') return 'previous-event';
  return PLAIN[press.key.length === 1 ? press.key.toLowerCase() : press.key] ?? null;
}

const TYPING =
  'input:not([type="range"], [type="checkbox"], [type="radio"], [type="button"], [type="file"]), textarea, select, [contenteditable="true"]';
const OWN_ARROWS =
  'input, [role="slider"], [role="menu"], [role="listbox"], [role="radiogroup"], [role="tablist"], [role="grid"], dialog';

export function focusOf(target: EventTarget | null): Focus {
  if (!(target instanceof Element)) return 'free';
  if (target.matches(TYPING)) return 'typing';
  if (target.matches('[data-time-mark]')) return 'free';
  return target.closest(OWN_ARROWS) ? 'own-arrows' : 'free';
}
