/** Where on the page the schedule of a field stands. */
export const scheduleAnchor = (path: string): string => `schedule-${path.replace(/[^a-zA-Z]+/g, '-')}`;

/** Brings it into view and gives it the focus. */
export function showSchedule(path: string): void {
  const place = document.getElementById(scheduleAnchor(path));
  place?.scrollIntoView({ block: 'center' });
  place?.focus({ preventScroll: true });
}
