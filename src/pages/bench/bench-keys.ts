/** Lets the keys move the bench. */
import { onCleanup } from 'solid-js';
import type { Bench } from '../../state/bench.ts';
import { commandFor, focusOf, type Command } from '../../state/keyboard.ts';

export interface KeyScope {
  /** Whether the bench is what the reader sees. */
  readonly onBench: () => boolean;
  readonly showShelf: () => void;
  readonly showKeys: () => void;
  readonly project: () => void;
}

export function obeyKeys(bench: Bench, scope: KeyScope): void {
  const move = (by_s: number) => bench.setTime(bench.time_s() + by_s);
  const jump = (event: { readonly time_s: number } | null) => {
    if (event) bench.setTime(event.time_s);
  };
  const carryOut: Readonly<Record<Command, () => void>> = {
    'play-or-pause': () => (bench.playing() ? bench.pause() : bench.play()),
    'back-10-s': () => move(-10),
    'on-10-s': () => move(10),
    'back-60-s': () => move(-60),
    'on-60-s': () => move(60),
    'to-start': () => bench.setTime(0),
    'to-end': () => bench.setTime(bench.end_s()),
    'previous-event': () => jump(bench.previousEvent()),
    'next-event': () => jump(bench.nextEvent()),
    faster: () => bench.stepSpeed(1),
    slower: () => bench.stepSpeed(-1),
    undo: () => bench.undo(),
    redo: () => bench.redo(),
    project: () => scope.project(),
    'show-shelf': () => scope.showShelf(),
    'show-keys': () => scope.showKeys(),
  };
  /** Undo and redo are not single keys; the list of keys has its own button. */
  const always: ReadonlySet<Command> = new Set(['undo', 'redo']);
  const anywhere: ReadonlySet<Command> = new Set(['undo', 'redo', 'project', 'show-shelf', 'show-keys']);

  const onKey = (event: KeyboardEvent) => {
    if (event.defaultPrevented) return;
    const command = commandFor(event, focusOf(event.target));
    if (!command || (!bench.keysOn() && !always.has(command))) return;
    if (!scope.onBench() && !anywhere.has(command)) return;
    event.preventDefault();
    carryOut[command]();
  };
  addEventListener('keydown', onKey);
  onCleanup(() => removeEventListener('keydown', onKey));
}
