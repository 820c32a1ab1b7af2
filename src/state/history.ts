/**
 * Undo and redo of a scenario, by reference: each past state is the object itself, and states share what did not
 * change. Edits of one gesture (a drag, a held arrow key) are one step, however slowly they come.
 */
import { createSignal, type Accessor } from 'solid-js';

export interface HistoryState<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** What the last edit was part of; `null` when the next edit starts a step of its own. */
  readonly gesture: string | null;
}

/** Steps kept; older ones are forgotten. */
export const MOST_STEPS = 200;

export const startHistory = <T>(present: T): HistoryState<T> => ({ past: [], present, future: [], gesture: null });

/** The state after an edit; what was undone before can then no longer be redone. */
export function pushed<T>(state: HistoryState<T>, next: T, gesture: string | null): HistoryState<T> {
  if (next === state.present) return state;
  const joins = gesture !== null && gesture === state.gesture;
  const past = joins ? state.past : [...state.past, state.present].slice(-MOST_STEPS);
  return { past, present: next, future: [], gesture };
}

export function undone<T>(state: HistoryState<T>): HistoryState<T> {
  const before = state.past.at(-1);
  if (before === undefined) return state;
  return { past: state.past.slice(0, -1), present: before, future: [state.present, ...state.future], gesture: null };
}

export function redone<T>(state: HistoryState<T>): HistoryState<T> {
  const [after, ...future] = state.future;
  if (after === undefined) return state;
  return { past: [...state.past, state.present], present: after, future, gesture: null };
}

export interface History<T> {
  readonly present: Accessor<T>;
  /** Makes `next` the present; edits that follow each other with the same gesture are undone together. */
  push(next: T, gesture?: string): void;
  undo(): void;
  redo(): void;
  readonly canUndo: Accessor<boolean>;
  readonly canRedo: Accessor<boolean>;
}

/** The same as signals. */
export function createHistory<T extends object>(initial: T): History<T> {
  const [state, setState] = createSignal(startHistory(initial));
  const to = (next: HistoryState<T>) => setState(() => next);
  return {
    present: () => state().present,
    push: (next, gesture) => to(pushed(state(), next, gesture ?? null)),
    undo: () => to(undone(state())),
    redo: () => to(redone(state())),
    canUndo: () => state().past.length > 0,
    canRedo: () => state().future.length > 0,
  };
}
