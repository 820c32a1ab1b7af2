/** Where on the page the schedule of a field stands. */
export const scheduleAnchor = (path: string): string => `schedule-${path.replace(/[^a-zA-Z]+/g, '-')}`;

/** Query for before the schedules stood on the page. */
let awaited: string | null = null;

/** Brings it into view and gives it the focus, as soon as it is there. */
export function showSchedule(path: string): void {
  const place = document.getElementById(scheduleAnchor(path));
  awaited = place ? null : path;
  place?.scrollIntoView({ block: 'center' });
  place?.focus({ preventScroll: true });
}

export function showAwaitedSchedule(): void {
  if (awaited) showSchedule(awaited);
}
