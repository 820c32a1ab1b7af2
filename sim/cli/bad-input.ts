/** What the command line was given and can't use: one line a problem, for standard error; the program then ends with 2. */
export class BadInput extends Error {
  readonly lines: readonly string[];

  constructor(...lines: string[]) {
    super(lines.join('\n'));
    this.name = 'BadInput';
    this.lines = lines;
  }
}
