import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { whyInstallationIsStale } from '../run/installed-packages.js';
import { exitCodeOf, lineOf, sumOf, tallyOfTests, tallyOfTool } from '../run/tally.ts';
import { PlantedProject } from './planted-project.ts';

describe('the tally', () => {
  test('counts a tool that succeeds or fails as one check', () => {
    expect(tallyOfTool(0)).toEqual({ passed: 1, failed: 0 });
    expect(tallyOfTool(2)).toEqual({ passed: 0, failed: 1 });
  });

  test('counts the tests of a test run', () => {
    expect(tallyOfTests(0, { numPassedTests: 7, numFailedTests: 0 })).toEqual({ passed: 7, failed: 0 });
    expect(tallyOfTests(1, { numPassedTests: 5, numFailedTests: 2 })).toEqual({ passed: 5, failed: 2 });
  });

  test('counts one failure when a run fails though none of its tests did, as when a file does not load', () => {
    expect(tallyOfTests(1, { numPassedTests: 7, numFailedTests: 0 })).toEqual({ passed: 7, failed: 1 });
  });

  test('counts one failure when a run has no tests or leaves no report', () => {
    expect(tallyOfTests(0, { numPassedTests: 0, numFailedTests: 0 })).toEqual({ passed: 0, failed: 1 });
    expect(tallyOfTests(0, undefined)).toEqual({ passed: 0, failed: 1 });
  });

  test('sums to one line and an exit code', () => {
    const total = sumOf([
      { passed: 3, failed: 0 },
      { passed: 4, failed: 1 },
    ]);
    expect(lineOf(total)).toBe('7 passed, 1 failed');
    expect(exitCodeOf(total)).toBe(1);
    expect(exitCodeOf({ passed: 7, failed: 0 })).toBe(0);
    expect(exitCodeOf({ passed: 0, failed: 0 })).toBe(1);
  });
});

describe('the run of all checks', () => {
  const lastLine = (output: string): string | undefined => output.trimEnd().split('\n').at(-1);
  const clean = {
    'sim/fluids/water.ts': "import { gravity } from '../constants.ts';\nexport const weight = gravity;",
    'sim/constants.ts': 'export const gravity = 9.80665;',
    'src/main.tsx': "import { render } from 'solid-js/web';\nexport const show = render;",
  };

  test.each([
    { what: 'passes a clean project', files: {}, line: '1 passed, 0 failed', exitCode: 0 },
    {
      what: 'fails a broken one',
      files: { 'src/main.tsx': "import '../sim/constants.ts';" },
      line: '0 passed, 1 failed',
      exitCode: 1,
    },
  ])('$what, and ends with the count', ({ files, line, exitCode }) => {
    const project = new PlantedProject({ ...clean, ...files });
    const outcome = project.run('tsx/dist/cli.mjs', ['tests/run/all-checks.ts', 'imports']);
    project.remove();
    expect(lastLine(outcome.output)).toBe(line);
    expect(outcome.exitCode).toBe(exitCode);
  });

  test('fails a project whose files are not formatted', () => {
    const project = new PlantedProject({ 'sim/constants.ts': 'export const gravity = 9.80665;\n' });
    const format = () => project.run('prettier/bin/prettier.cjs', ['--check', 'sim']).exitCode;
    expect(format()).toBe(0);
    writeFileSync(join(project.folder, 'sim/constants.ts'), 'export const gravity=9.80665\n');
    expect(format()).toBe(1);
    project.remove();
  });

  test('refuses a stage that does not exist rather than checking nothing', () => {
    const project = new PlantedProject(clean);
    const outcome = project.run('tsx/dist/cli.mjs', ['tests/run/all-checks.ts', 'typos']);
    project.remove();
    expect(outcome.exitCode).toBe(1);
    expect(outcome.output).toContain('There is no stage "typos"');
  });
});

describe('the check of installed packages', () => {
  let folder: string;
  const lock = (packages: object): string => JSON.stringify({ packages });
  const wanted = {
    '': {},
    'node_modules/a': { version: '1.0.0' },
    'node_modules/b': { version: '2.0.0', optional: true },
  };

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'limbeck-installed-'));
    writeFileSync(join(folder, 'package-lock.json'), lock(wanted));
    mkdirSync(join(folder, 'node_modules/a'), { recursive: true });
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  const record = (packages: object): void =>
    writeFileSync(join(folder, 'node_modules/.package-lock.json'), lock(packages));

  test('asks for an installation in a fresh clone', () => {
    expect(whyInstallationIsStale(folder)).toBe('nothing is installed yet');
  });

  test('asks for one when a version differs', () => {
    record({ 'node_modules/a': { version: '0.9.0' } });
    expect(whyInstallationIsStale(folder)).toBe('node_modules/a 1.0.0 is not installed');
  });

  test('asks for one when a folder was removed', () => {
    record({ 'node_modules/a': { version: '1.0.0' } });
    rmSync(join(folder, 'node_modules/a'), { recursive: true });
    expect(whyInstallationIsStale(folder)).toBe('node_modules/a is missing');
  });

  test('is content without packages that are optional', () => {
    record({ 'node_modules/a': { version: '1.0.0' } });
    expect(whyInstallationIsStale(folder)).toBeUndefined();
  });
});
