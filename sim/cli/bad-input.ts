/** Why the command line gives no answer: lines for standard error, and the code that the program ends with. */

/** More lines than anybody reads. */
const MOST_LINES = 20;
/** What would move a terminal's cursor or change its colours. */
const CONTROL = /[\p{Cc}\p{Bidi_Control}]/gu;

/** A line without them. */
export const printable = (line: string): string => line.replace(CONTROL, '\uFFFD');
/** An answer without them, but for what ends and parts its lines. */
export const printableLines = (text: string): string =>
  text.replace(CONTROL, (sign) => (/[\t\n\r]/u.test(sign) ? sign : '\uFFFD'));

class NoAnswer extends Error {
  readonly lines: readonly string[];
  readonly exitCode: number;

  constructor(exitCode: number, lines: string | readonly string[]) {
    const all = typeof lines === 'string' ? [lines] : lines;
    const shown = all.slice(0, MOST_LINES).map(printable);
    const left = all.length - shown.length;
    if (left > 0) shown.push(`… and ${left} more.`);
    super(shown.join('\n'));
    this.exitCode = exitCode;
    this.lines = shown;
  }
}

/** It was given what it can't use: one line a problem. */
export class BadInput extends NoAnswer {
  constructor(lines: string | readonly string[]) {
    super(2, lines);
    this.name = 'BadInput';
  }
}

/** The run broke off, so that nothing can be said of it. */
export class BrokenRun extends NoAnswer {
  constructor(line: string) {
    super(3, line);
    this.name = 'BrokenRun';
  }
}

export const isNoAnswer = (error: unknown): error is BadInput | BrokenRun => error instanceof NoAnswer;
