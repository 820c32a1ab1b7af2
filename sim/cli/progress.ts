/** What takes long, told to whoever watches a terminal; a file or a pipe on standard error gets none of it. */
import { formatDuration, LONG_RUN_S, Run, runSeconds, type RunResult, type Scenario } from '../index.ts';

interface Watched {
  readonly isTTY?: boolean;
  write(text: string): unknown;
}

const TO_LINE_START = '\r\u001B[K';

const teller = (watched: Watched): ((text: string) => void) =>
  watched.isTTY === true ? (text) => void watched.write(TO_LINE_START + text) : () => undefined;

/** Slices in which a long run tells how far it has come. */
const SLICES = 50;

/** A run; one that takes long says beforehand how long, and then how far it has come. */
export function runTold(scenario: Scenario, watched: Watched = process.stderr): RunResult {
  const run = new Run(scenario);
  const about_s = runSeconds(scenario);
  const slices = about_s > LONG_RUN_S ? SLICES : 1;
  const tell = teller(watched);
  try {
    for (let slice = 0; slice < slices && !run.ended; slice++) {
      if (slices > 1) tell(`a run of about ${formatDuration(Math.ceil(about_s))}: ${(100 * slice) / slices} % done`);
      run.advance(slice + 1 < slices ? ((slice + 1) / slices) * scenario.run.duration_s : Infinity);
    }
    return run.result();
  } finally {
    if (slices > 1) tell('');
  }
}

/** Calls `each` for 0 to below `count`, telling before each how many are done; the line is wiped at the end. */
export function counted<T>(
  count: number,
  what: string,
  each: (index: number) => T,
  watched: Watched = process.stderr,
): T[] {
  const tell = teller(watched);
  try {
    return Array.from({ length: count }, (_, index) => {
      tell(`${index} of ${count} ${what}`);
      return each(index);
    });
  } finally {
    tell('');
  }
}
