/**
 * Everything that must hold, cheapest first: `npm test` runs all stages, `npm run check` the three static ones,
 * `npx tsx tests/run/all-checks.ts <stage>…` any choice. Ends with one line, `N passed, N failed`.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { exitCodeOf, lineOf, sumOf, tallyOfTests, tallyOfTool, type Tally, type TestReport } from './tally.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const builtApp = join(root, 'dist');

/** Runs an installed tool with this very Node, showing its output; answers its exit code. */
function runTool(script: string, options: readonly string[], environment: NodeJS.ProcessEnv = {}): number {
  const { status } = spawnSync(process.execPath, [join(root, 'node_modules', script), ...options], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...environment },
  });
  return status ?? 1;
}

function checkTypes(): Tally {
  const exitCodes = ['sim', '.', 'tests'].map((project) => runTool('typescript/bin/tsc', ['-p', project]));
  return tallyOfTool(Math.max(...exitCodes));
}

/** The formatter's word first, then the linter's. */
function lint(): Tally {
  const format = runTool('prettier/bin/prettier.cjs', ['--check', '--log-level', 'warn', '.']);
  const rules = runTool('eslint/bin/eslint.js', ['--max-warnings', '0', '.']);
  return tallyOfTool(Math.max(format, rules));
}

const checkImports = (): Tally =>
  tallyOfTool(
    runTool('dependency-cruiser/bin/dependency-cruise.mjs', [
      '--config',
      '.dependency-cruiser.cjs',
      'sim',
      'src',
      'tests',
    ]),
  );

function runTests(project: 'unit' | 'e2e', environment: NodeJS.ProcessEnv = {}): Tally {
  const folder = mkdtempSync(join(tmpdir(), 'limbeck-report-'));
  const reportFile = join(folder, 'report.json');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`];
  const exitCode = runTool('vitest/vitest.mjs', ['run', '--project', project, ...reporters], environment);
  const report = existsSync(reportFile) ? (JSON.parse(readFileSync(reportFile, 'utf8')) as TestReport) : undefined;
  rmSync(folder, { recursive: true });
  return tallyOfTests(exitCode, report);
}

function build(): Tally {
  rmSync(builtApp, { recursive: true, force: true });
  return tallyOfTool(runTool('vite/bin/vite.js', ['build']));
}

function runBrowserTests(): Tally {
  if (existsSync(join(builtApp, 'index.html'))) return runTests('e2e', { LIMBECK_BUILT_APP: builtApp });
  console.log('There is no built app to open in a browser.');
  return { passed: 0, failed: 1 };
}

const stages: Readonly<Record<string, () => Tally>> = {
  types: checkTypes,
  lint,
  imports: checkImports,
  unit: () => runTests('unit'),
  build,
  browser: runBrowserTests,
};

const chosen = process.argv.length > 2 ? process.argv.slice(2) : Object.keys(stages);
const tallies = chosen.map((name) => {
  const stage = stages[name];
  if (!stage) throw new Error(`There is no stage "${name}"; there are ${Object.keys(stages).join(', ')}.`);
  console.log(`\n── ${name}`);
  const started = process.hrtime.bigint();
  const tally = stage();
  const seconds = Number(process.hrtime.bigint() - started) / 1e9;
  return { name, tally, seconds };
});

console.log('\n── outcome');
for (const { name, tally, seconds } of tallies) {
  console.log(`${name.padEnd(8)} ${lineOf(tally)} (${seconds.toFixed(0)} s)`);
}
const total = sumOf(tallies.map(({ tally }) => tally));
console.log(lineOf(total));
process.exitCode = exitCodeOf(total);
