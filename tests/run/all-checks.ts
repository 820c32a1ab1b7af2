/**
 * Everything that must hold, cheapest first: `npm test` runs all stages, `npm run check` the three static ones,
 * `npx tsx tests/run/all-checks.ts <stage>…` any choice. Ends with one line, `N passed, N failed`.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { exitCodeOf, lineOf, sumOf, tallyOfTests, tallyOfTool, type Tally, type TestReport } from './tally.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const builtApp = join(root, 'dist');

/** What a tool shows goes straight on, or is kept until it has ended so that tools side by side do not mix. */
type Showing = 'at-once' | 'at-the-end';

/** Runs an installed tool with this very Node; answers its exit code. */
function runTool(
  script: string,
  options: readonly string[],
  showing: Showing,
  environment: NodeJS.ProcessEnv = {},
): Promise<number> {
  const tool = spawn(process.execPath, [join(root, 'node_modules', script), ...options], {
    cwd: root,
    stdio: showing === 'at-once' ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, ...environment },
  });
  const said: Buffer[] = [];
  for (const stream of [tool.stdout, tool.stderr]) stream?.on('data', (piece: Buffer) => said.push(piece));
  return new Promise((done, fail) => {
    tool.once('error', fail);
    tool.once('close', (code) => {
      process.stdout.write(Buffer.concat(said));
      done(code ?? 1);
    });
  });
}

/** Several tools side by side, as one check. */
const runTogether = async (tools: readonly (readonly [script: string, options: readonly string[]])[]): Promise<Tally> =>
  tallyOfTool(
    Math.max(...(await Promise.all(tools.map(([script, options]) => runTool(script, options, 'at-the-end'))))),
  );

const checkTypes = (): Promise<Tally> =>
  runTogether(['sim', '.', 'tests'].map((project) => ['typescript/bin/tsc', ['-p', project]]));

const lint = (): Promise<Tally> =>
  runTogether([
    ['prettier/bin/prettier.cjs', ['--check', '--log-level', 'warn', '.']],
    ['eslint/bin/eslint.js', ['--max-warnings', '0', '.']],
  ]);

const checkImports = (): Promise<Tally> =>
  runTogether([
    ['dependency-cruiser/bin/dependency-cruise.mjs', ['--config', '.dependency-cruiser.cjs', 'sim', 'src', 'tests']],
  ]);

async function runTests(project: 'unit' | 'e2e', environment: NodeJS.ProcessEnv = {}): Promise<Tally> {
  const folder = mkdtempSync(join(tmpdir(), 'limbeck-report-'));
  const reportFile = join(folder, 'report.json');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`];
  const options = ['run', '--project', project, ...reporters];
  const exitCode = await runTool('vitest/vitest.mjs', options, 'at-once', environment);
  const report = existsSync(reportFile) ? (JSON.parse(readFileSync(reportFile, 'utf8')) as TestReport) : undefined;
  rmSync(folder, { recursive: true });
  return tallyOfTests(exitCode, report);
}

async function build(): Promise<Tally> {
  rmSync(builtApp, { recursive: true, force: true });
  return tallyOfTool(await runTool('vite/bin/vite.js', ['build'], 'at-once'));
}

async function runBrowserTests(): Promise<Tally> {
  if (existsSync(join(builtApp, 'index.html'))) return runTests('e2e', { LIMBECK_BUILT_APP: builtApp });
  console.log('There is no built app to open in a browser.');
  return { passed: 0, failed: 1 };
}

const stages: Readonly<Record<string, () => Promise<Tally>>> = {
  types: checkTypes,
  lint,
  imports: checkImports,
  unit: () => runTests('unit'),
  build,
  browser: runBrowserTests,
};

/** Stages that read and change nothing run side by side; the others need the machine, or what came before. */
const SIDE_BY_SIDE: ReadonlySet<string> = new Set(['types', 'lint', 'imports']);

interface Outcome {
  readonly name: string;
  readonly tally: Tally;
  readonly seconds: number;
}

async function runStage(name: string, stage: () => Promise<Tally>): Promise<Outcome> {
  const started = process.hrtime.bigint();
  const tally = await stage();
  return { name, tally, seconds: Number(process.hrtime.bigint() - started) / 1e9 };
}

const chosen = (process.argv.length > 2 ? process.argv.slice(2) : Object.keys(stages)).map((name) => {
  const stage = stages[name];
  if (!stage) throw new Error(`There is no stage "${name}"; there are ${Object.keys(stages).join(', ')}.`);
  return [name, stage] as const;
});
const first = chosen.filter(([name]) => SIDE_BY_SIDE.has(name));
if (first.length > 0) console.log(`\n── ${first.map(([name]) => name).join(', ')}`);
const outcomes = await Promise.all(first.map(([name, stage]) => runStage(name, stage)));
for (const [name, stage] of chosen) {
  if (SIDE_BY_SIDE.has(name)) continue;
  console.log(`\n── ${name}`);
  outcomes.push(await runStage(name, stage));
}

console.log('\n── outcome');
for (const { name, tally, seconds } of outcomes) {
  console.log(`${name.padEnd(8)} ${lineOf(tally)} (${seconds.toFixed(0)} s)`);
}
const total = sumOf(outcomes.map(({ tally }) => tally));
console.log(lineOf(total));
process.exitCode = exitCodeOf(total);
