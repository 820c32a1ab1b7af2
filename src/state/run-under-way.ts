/** Whether a run is under way at the real still, known before anything else is fetched. */
export const RUN_KEY = 'at-the-still';
export const RUN_CHANNEL = 'limbeck-at-the-still';
const MARK = 'limbeck-run-under-way';

export function isUnderWay(): boolean {
  try {
    return MARK in localStorage;
  } catch {
    return false;
  }
}

export function markUnderWay(on: boolean): void {
  try {
    if (on) localStorage.setItem(MARK, '1');
    else localStorage.removeItem(MARK);
  } catch {
    // Where nothing can be noted, the run is found when its place is opened.
  }
}
