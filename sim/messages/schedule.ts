/** When a control changes: by the clock, or by an event of the run. */
import { schedule } from './english/schedule.ts';
import { section } from './section.ts';

export const scheduleMessages = section<ReturnType<typeof schedule>>({ en: schedule });
