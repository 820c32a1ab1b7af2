/** A whole run as readable text: the verdict, what happens when, and what holds at any still. */
import { verdictOf } from '../answers/verdict/verdict.ts';
import type { RunResult } from '../run/result.ts';
import { runSummaryWords } from './english/run-summary.ts';
import { eventMessage } from './events.ts';
import type { Reader } from './language.ts';
import { quantities } from './quantities.ts';
import { hazardMessages, safetyMessages } from './safety.ts';
import { section, wholeMessage } from './section.ts';
import { verdictMessages } from './verdict.ts';

const headings = section<ReturnType<typeof runSummaryWords>>({ en: runSummaryWords });

const paragraph = (lines: readonly string[], indent = ''): string => lines.map((line) => indent + line).join('\n');

export function runSummary(result: RunResult, reader: Reader, plantCautions: readonly string[] = []): string {
  const q = quantities(reader);
  const words = headings(reader);
  const { lead, paragraphs } = verdictMessages(verdictOf(result), reader);
  const safety = safetyMessages(reader);
  const events = result.events.map((event) => `${q.time(event.time_s)}: ${wholeMessage(eventMessage(event, reader))}`);
  return [
    result.scenario.name,
    wholeMessage(lead),
    ...paragraphs.map((facts) => facts.map(wholeMessage).join(' ')),
    `${words.events}\n${paragraph(events.length > 0 ? events : [words.noEvents], '  ')}`,
    `${safety.heading}\n${paragraph([...safety.always, ...hazardMessages(result.scenario, reader), ...plantCautions], '  ')}`,
  ].join('\n\n');
}
