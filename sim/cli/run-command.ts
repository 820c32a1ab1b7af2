/** `limbeck run`: what came of a run, as data or as text, and on request its whole record. */
import {
  COLUMN_NAMES,
  COLUMN_UNITS,
  eventMessage,
  GRID_NAMES,
  GRID_UNITS,
  hazardMessages,
  libraryText,
  recordCsv,
  safetyMessages,
  shownRecordCsv,
  verdictMessages,
  verdictOf,
  type Reader,
  type RunResult,
} from '../index.ts';
import { botanicalTexts } from '../library-texts.ts';
import { runSummary } from '../messages/run-summary.ts';
import { isSet, listOf, onlyWord, readerOf, readWords, UNITS, WITH } from './options.ts';
import { toJson } from './print.ts';
import { scenarioFrom } from './read-input.ts';
import { wholeRun } from './whole-run.ts';

function seriesOf({ record }: RunResult) {
  return {
    units: Object.fromEntries([
      ...COLUMN_NAMES.map((name) => [name, COLUMN_UNITS[name]]),
      ...GRID_NAMES.map((name) => [name, GRID_UNITS[name]]),
    ]) as Record<string, string>,
    series: Object.fromEntries(
      COLUMN_NAMES.map((name) => [name, Array.from(record.columns[name].subarray(0, record.rows))]),
    ),
    grids: Object.fromEntries(
      GRID_NAMES.map((name) => {
        const { cells, data } = record.grids[name];
        return [
          name,
          {
            cells,
            rows: Array.from({ length: record.rows }, (_, row) =>
              Array.from(data.subarray(row * cells, (row + 1) * cells)),
            ),
          },
        ];
      }),
    ),
    constituents: record.constituents,
  };
}

const plantCautions = (botanical: string, reader: Reader): readonly string[] =>
  (botanicalTexts[botanical]?.cautions ?? []).map(({ value }) => libraryText(value, reader));

export function runCommand(args: readonly string[]): string {
  const words = readWords(args, {
    ...WITH,
    ...UNITS,
    series: { type: 'boolean' },
    csv: { type: 'boolean' },
    table: { type: 'boolean' },
    summary: { type: 'boolean' },
  });
  const reader = readerOf(words);
  const result = wholeRun(scenarioFrom(onlyWord(words, 'scenario'), listOf(words, 'with')), reader);
  if (isSet(words, 'csv')) return recordCsv(result.record).trimEnd();
  if (isSet(words, 'table')) return shownRecordCsv(result.record, reader).trimEnd();
  if (isSet(words, 'summary'))
    return runSummary(result, reader, plantCautions(result.scenario.charge.botanical, reader));
  const { scenario, summary, events, balance } = result;
  return toJson({
    name: scenario.name,
    summary,
    verdict: verdictMessages(verdictOf(result), reader),
    events: events.map((event) => ({ ...event, ...eventMessage(event, reader) })),
    balance,
    safety: [
      ...safetyMessages(reader).always,
      ...hazardMessages(scenario, reader),
      ...plantCautions(scenario.charge.botanical, reader),
    ],
    ...(isSet(words, 'series') ? seriesOf(result) : {}),
  });
}
