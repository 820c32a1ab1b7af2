/** The program as a script meets it, started as a process of its own. */
import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const program = [join(root, 'sim/cli/start.js')];
/** The same from its sources, with runs that break off after a minute. */
const programOfBrokenRuns = [
  ...['--import', join(root, 'node_modules/tsx/dist/loader.mjs')],
  ...['--import', join(import.meta.dirname, 'spoilt-runs.ts')],
  join(root, 'sim/cli.ts'),
];

const limbeck = (args: readonly string[], input = '', started = program) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [...started, ...args], {
    encoding: 'utf8',
    cwd: root,
    maxBuffer: 1e8,
    input,
  });
  return { status, stdout, stderr };
};

describe('the command line', () => {
  it('is what the package runs by its name', () => {
    const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
      scripts: Record<string, string>;
    };
    expect(scripts['limbeck']).toBe('node sim/cli/start.js');
  });

  it('reads standard input, answers on standard output and ends with 0', () => {
    const { status, stdout, stderr } = limbeck(
      ['run', '-', '--with', 'name=Piped'],
      JSON.stringify({ run: { duration_s: 60 } }),
    );
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toMatchObject({ name: 'Piped', summary: { end_s: 60, endReason: 'duration' } });
  });

  it('fetches the units for a field that is typed in one which the page does not show', () => {
    const { status, stdout, stderr } = limbeck(
      ['run', '-', '--with', 'run.duration_s=1 minute + 1 s', '--with', 'condenser.length_m=2 * 120 cm'],
      '{}',
    );
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toMatchObject({ summary: { end_s: 61 } });
  });

  it('prints nothing but the answer while it works through many runs, and reads a log from standard input', () => {
    const short = ['--with', 'run.duration_s=2400', '--with', 'advanced.step_s=5'];
    const predicted = limbeck(['predict', 'class-glass', '--runs', '1', ...short]);
    expect({ status: predicted.status, stderr: predicted.stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(predicted.stdout)).toMatchObject({ name: 'Orange peel in glass', likely: { members: 1 } });
    const fitted = limbeck(
      ['fit', 'class-glass', '--log', '-', '--factors', 'oilContent', ...short],
      '25;1,2\n30;2,1\n40;3,5\n',
    );
    expect({ status: fitted.status, stderr: fitted.stderr }).toEqual({
      status: 0,
      stderr:
        '--log -: 3 lines without headings, semicolons between the columns, a comma is the decimal sign. Columns: time (min), oil (mL).\n',
    });
    expect(JSON.parse(fitted.stdout)).toMatchObject({ factors: [{ name: 'oilContent' }], degreesOfFreedom: 2 });
    expect(limbeck(['fit', 'class-glass', '--log', '-'], '25;much\n')).toMatchObject({
      status: 2,
      stdout: '',
      stderr: expect.stringMatching(/^--log -: 1 line .*\n--log -: Line 1: “much” is not a number\.\n$/) as string,
    });
  });

  it('ends with 2, one line a problem and nothing on standard output when the input is bad', () => {
    const { status, stdout, stderr } = limbeck(
      ['run', '-'],
      JSON.stringify({ pot: { diameter_m: 9 }, condenser: { length_m: 'long' } }),
    );
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr.trimEnd().split('\n')).toHaveLength(2);
    expect(limbeck(['run', '-'], '{')).toMatchObject({ status: 2, stdout: '' });
  });

  it('ends with 3, one line and no answer when the calculation breaks off', () => {
    const told = /^Gentle lavender: The calculation failed at [^\n]*\. No result is shown\.\n$/;
    for (const words of [
      ['run', 'gentle-lavender'],
      ['run', 'gentle-lavender', '--csv'],
      ['size', 'gentle-lavender', '--own', '--json'],
      ['predict', 'gentle-lavender', '--runs', '0'],
      ['compare', 'gentle-lavender', 'gentle-lavender'],
    ])
      expect(limbeck(words, '', programOfBrokenRuns), words.join(' ')).toEqual({
        status: 3,
        stdout: '',
        stderr: expect.stringMatching(told) as string,
      });
    const log = '25;1\n30;2\n40;3\n50;4\n';
    expect(limbeck(['fit', 'gentle-lavender', '--log', '-'], log, programOfBrokenRuns)).toMatchObject({
      status: 3,
      stdout: '',
    });
  });

  it('ends quietly when its reader has seen enough', async () => {
    const child = spawn(process.execPath, [...program, 'list', 'botanicals', '--json'], { cwd: root });
    let complaint = '';
    child.stderr.on('data', (text: Buffer) => (complaint += text.toString()));
    child.stdout.once('data', () => child.stdout.destroy());
    const code = await new Promise((resolve) => child.on('close', resolve));
    expect({ code, complaint }).toEqual({ code: 0, complaint: '' });
  });
});
