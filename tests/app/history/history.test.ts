import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  createHistory,
  MOST_STEPS,
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
    const edited = pushed(startHistory(a), b, null);
    expect(undone(edited).present).toBe(a);
    expect(redone(undone(edited)).present).toBe(b);
  });

  test('at either end change nothing', () => {
    const state = startHistory(at(1));
    expect(undone(state)).toBe(state);
    expect(redone(state)).toBe(state);
  });

  test('an edit after an undo forgets what could be redone', () => {
    const edited = pushed(pushed(startHistory(at(1)), at(2), null), at(3), null);
    const turned = pushed(undone(edited), at(4), null);
    expect(turned.future).toEqual([]);
    expect(undone(turned).present.n).toBe(2);
  });

  test('an edit that changes nothing is no step', () => {
    const state = startHistory(at(1));
    expect(pushed(state, state.present, null)).toBe(state);
  });

  test('no more than the last steps are kept', () => {
    let state: HistoryState<Step> = startHistory(at(0));
    for (let n = 1; n <= MOST_STEPS + 50; n++) state = pushed(state, at(n), null);
    expect(state.past.length).toBe(MOST_STEPS);
    expect(state.past[0]?.n).toBe(50);
  });
});

describe('edits of one gesture', () => {
  test('are undone together', () => {
    const dragged = [2, 3, 4].reduce((state, n) => pushed(state, at(n), 'drag-1'), startHistory(at(1)));
    expect(undone(dragged).present.n).toBe(1);
  });

  test('do not join with those of another', () => {
    const first = pushed(startHistory(at(1)), at(2), 'drag-1');
    expect(undone(pushed(first, at(3), 'drag-2')).present.n).toBe(2);
  });

  test('do not join across an undo', () => {
    const first = pushed(pushed(startHistory(at(1)), at(2), 'x'), at(3), 'y');
    const after = pushed(undone(first), at(4), 'x');
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
        actions.forEach((what) => {
          if (what === 'undo') [state, finger] = [undone(state), Math.max(0, finger - 1)];
          else if (what === 'redo') [state, finger] = [redone(state), Math.min(list.length - 1, finger + 1)];
          else {
            const next = at(what);
            state = pushed(state, next, null);
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
    const history = createHistory(at(1));
    expect([history.canUndo(), history.canRedo()]).toEqual([false, false]);
    history.push(at(2));
    history.push(at(3), 'x');
    history.push(at(4), 'x');
    expect(history.present().n).toBe(4);
    history.undo();
    expect([history.present().n, history.canUndo(), history.canRedo()]).toEqual([2, true, true]);
    history.redo();
    expect([history.present().n, history.canRedo()]).toEqual([4, false]);
  });
});
