/**
 * Undo and redo of a scenario, by reference: each past state is the object itself, and states share what did not
 * change. Edits of one gesture (a drag, a held arrow key) are one step, as are quick edits of the same field.
 */
import { createSignal, type Accessor } from 'solid-js';

export interface HistoryState<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** What the last edit was part of; `null` when the next edit starts a step of its own. */
  readonly gesture: string | null;
  readonly at_ms: number;
}

/** Steps kept; older ones are forgotten. */
export const MOST_STEPS = 200;
/** Edits of one gesture that follow each other within this time are one step. */
export const ONE_STEP_MS = 1000;

export const startHistory = <T>(present: T): HistoryState<T> => ({
  past: [],
  present,
  future: [],
  gesture: null,
  at_ms: 0,
});

/** The state after an edit at a time; what was undone before can then no longer be redone. */
export function pushed<T>(state: HistoryState<T>, next: T, gesture: string | null, now_ms: number): HistoryState<T> {
  if (next === state.present) return state;
  const joins = gesture !== null && gesture === state.gesture && now_ms - state.at_ms <= ONE_STEP_MS;
  const past = joins ? state.past : [...state.past, state.present].slice(-MOST_STEPS);
  return { past, present: next, future: [], gesture, at_ms: now_ms };
}

export function undone<T>(state: HistoryState<T>): HistoryState<T> {
  const before = state.past.at(-1);
  if (before === undefined) return state;
  return {
    past: state.past.slice(0, -1),
    present: before,
    future: [state.present, ...state.future],
    gesture: null,
    at_ms: state.at_ms,
  };
}

export function redone<T>(state: HistoryState<T>): HistoryState<T> {
  const [after, ...future] = state.future;
  if (after === undefined) return state;
  return { past: [...state.past, state.present], present: after, future, gesture: null, at_ms: state.at_ms };
}

export interface History<T> {
  readonly present: Accessor<T>;
  /** Makes `next` the present; edits with the same gesture in quick succession are undone together. */
  push(next: T, gesture?: string): void;
  undo(): void;
  redo(): void;
  readonly canUndo: Accessor<boolean>;
  readonly canRedo: Accessor<boolean>;
}

/** The same as signals. `now` gives milliseconds that only rise. */
export function createHistory<T extends object>(initial: T, now: () => number = () => performance.now()): History<T> {
  const [state, setState] = createSignal(startHistory(initial));
  const to = (next: HistoryState<T>) => setState(() => next);
  return {
    present: () => state().present,
    push: (next, gesture) => to(pushed(state(), next, gesture ?? null, now())),
    undo: () => to(undone(state())),
    redo: () => to(redone(state())),
    canUndo: () => state().past.length > 0,
    canRedo: () => state().future.length > 0,
  };
}
