import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  createHistory,
  MOST_STEPS,
  ONE_STEP_MS,
  pushed,
  redone,
  startHistory,
  undone,
  type HistoryState,
} from '../../../src/state/history.ts';

interface Step {
  readonly n: number;
}
const at = (n: number): Step => ({ n });

describe('undo and redo', () => {
  test('give back the very object that was there', () => {
    const [a, b] = [at(1), at(2)];
    const edited = pushed(startHistory(a), b, null, 0);
    expect(undone(edited).present).toBe(a);
    expect(redone(undone(edited)).present).toBe(b);
  });

  test('at either end change nothing', () => {
    const state = startHistory(at(1));
    expect(undone(state)).toBe(state);
    expect(redone(state)).toBe(state);
  });

  test('an edit after an undo forgets what could be redone', () => {
    const edited = pushed(pushed(startHistory(at(1)), at(2), null, 0), at(3), null, 1);
    const turned = pushed(undone(edited), at(4), null, 2);
    expect(turned.future).toEqual([]);
    expect(undone(turned).present.n).toBe(2);
  });

  test('an edit that changes nothing is no step', () => {
    const state = startHistory(at(1));
    expect(pushed(state, state.present, null, 5)).toBe(state);
  });

  test('no more than the last steps are kept', () => {
    let state: HistoryState<Step> = startHistory(at(0));
    for (let n = 1; n <= MOST_STEPS + 50; n++) state = pushed(state, at(n), null, n);
    expect(state.past.length).toBe(MOST_STEPS);
    expect(state.past[0]?.n).toBe(50);
  });
});

describe('edits of one gesture', () => {
  test('in quick succession are undone together', () => {
    const dragged = [2, 3, 4].reduce((state, n) => pushed(state, at(n), 'pot.height_m', n * 100), startHistory(at(1)));
    expect(undone(dragged).present.n).toBe(1);
  });

  test('are steps of their own after a pause', () => {
    const first = pushed(startHistory(at(1)), at(2), 'pot.height_m', 0);
    expect(undone(pushed(first, at(3), 'pot.height_m', ONE_STEP_MS + 1)).present.n).toBe(2);
  });

  test('do not join with those of another field', () => {
    const first = pushed(startHistory(at(1)), at(2), 'pot.height_m', 0);
    expect(undone(pushed(first, at(3), 'pot.diameter_m', 10)).present.n).toBe(2);
  });

  test('do not join across an undo', () => {
    const first = pushed(pushed(startHistory(at(1)), at(2), 'x', 0), at(3), 'y', 1);
    const after = pushed(undone(first), at(4), 'x', 2);
    expect(undone(after).present.n).toBe(2);
  });
});

describe('any sequence of edits, undos and redos', () => {
  test('behaves like a list with a finger on it', () => {
    const action = fc.oneof(fc.constant('undo' as const), fc.constant('redo' as const), fc.nat(50));
    fc.assert(
      fc.property(fc.array(action, { maxLength: 60 }), (actions) => {
        const list = [at(-1)];
        let finger = 0;
        let state = startHistory(list[0] as Step);
        actions.forEach((what, index) => {
          if (what === 'undo') [state, finger] = [undone(state), Math.max(0, finger - 1)];
          else if (what === 'redo') [state, finger] = [redone(state), Math.min(list.length - 1, finger + 1)];
          else {
            const next = at(what);
            state = pushed(state, next, null, index);
            list.splice(finger + 1, list.length, next);
            finger += 1;
          }
          expect(state.present).toBe(list[finger]);
          expect(state.past.length).toBe(finger);
          expect(state.future.length).toBe(list.length - 1 - finger);
        });
      }),
    );
  });
});

describe('a history of signals', () => {
  test('tells what can be undone and redone', () => {
    let clock = 0;
    const history = createHistory(at(1), () => clock);
    expect([history.canUndo(), history.canRedo()]).toEqual([false, false]);
    history.push(at(2));
    clock = 50;
    history.push(at(3), 'x');
    clock = 100;
    history.push(at(4), 'x');
    expect(history.present().n).toBe(4);
    history.undo();
    expect([history.present().n, history.canUndo(), history.canRedo()]).toEqual([2, true, true]);
    history.redo();
    expect([history.present().n, history.canRedo()]).toEqual([4, false]);
  });
});
