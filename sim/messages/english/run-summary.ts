/** Headings of a run as text, in English. */
export const englishRunSummary = { events: 'What happens', noEvents: 'Nothing to report.' };
