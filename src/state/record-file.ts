/** The record of a run as a file; a door of its own, so that the writer is fetched when a table is asked for. */
export { recordCsv, shownRecordCsv } from '../../sim/index.ts';
