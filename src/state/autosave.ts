/** Keeps the bench a moment after it changes, and at once when the page is left. */
import { createEffect, createSignal, onCleanup, type Accessor } from 'solid-js';
import { dropNote, leaveNote } from './unload-draft.ts';
import { NOTE, type BenchStorage, type SavedBench } from './storage.ts';

/** Changes are gathered for so long before they are written: a dragged slider or a playing run changes at every frame. */
const QUIET_MS = 600;

/** Returns whether the last attempt to keep the bench went wrong. */
export function createAutosave(bench: Accessor<SavedBench>, storage: BenchStorage): Accessor<boolean> {
  const [refused, setRefused] = createSignal(false);
  let timer: ReturnType<typeof setTimeout> | null = null;
  let latest: SavedBench | null = null;

  const write = () => {
    if (timer) clearTimeout(timer);
    timer = null;
    if (!latest) return;
    const work = latest;
    latest = null;
    void storage.save(work).then((kept) => {
      if (kept && !latest) dropNote(NOTE);
      setRefused(!kept);
    });
  };
  const onLeave = () => {
    if (latest) leaveNote(NOTE, latest);
    write();
  };

  createEffect<boolean>((isFirst) => {
    const now = bench();
    if (isFirst) return false;
    latest = now;
    timer ??= setTimeout(write, QUIET_MS);
    return false;
  }, true);

  const onHide = () => {
    if (document.visibilityState === 'hidden') onLeave();
  };
  document.addEventListener('visibilitychange', onHide);
  addEventListener('pagehide', onLeave);
  onCleanup(() => {
    document.removeEventListener('visibilitychange', onHide);
    removeEventListener('pagehide', onLeave);
    if (timer) clearTimeout(timer);
  });
  return refused;
}
