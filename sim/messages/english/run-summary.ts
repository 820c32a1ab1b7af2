/** Headings of a run as text, in English. */
export const runSummaryWords = () => ({ events: 'What happens', noEvents: 'Nothing to report.' });
