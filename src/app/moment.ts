/** When something was, as a date with or without the time of day. */
const DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' });
const MINUTE = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeStyle: 'short' });

export const moment = (at_ms: number, to: 'day' | 'minute' = 'minute'): string =>
  (to === 'day' ? DAY : MINUTE).format(at_ms);
