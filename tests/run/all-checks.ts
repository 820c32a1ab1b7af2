/**
 * Everything that must hold: `npm test` runs all stages, `npm run check` the three static ones,
 * `npx tsx tests/run/all-checks.ts <stage>…` any choice. Ends with one line, `N passed, N failed`.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { setPriority, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { exitCodeOf, lineOf, sumOf, tallyOfTests, tallyOfTool, type Tally, type TestReport } from './tally.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const builtApp = join(root, 'dist');

interface Manner {
  /** What a tool shows goes straight on, or is kept until it has ended so that tools side by side do not mix. */
  readonly showing: 'at-once' | 'at-the-end';
  /** How far it stands back behind other tools, as `nice` counts. */
  readonly niceness: number;
}

/** Runs an installed tool with this very Node; answers its exit code. */
function runTool(
  script: string,
  options: readonly string[],
  { showing, niceness }: Manner,
  environment: NodeJS.ProcessEnv = {},
): Promise<number> {
  const tool = spawn(process.execPath, [join(root, 'node_modules', script), ...options], {
    cwd: root,
    stdio: showing === 'at-once' ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, ...environment },
  });
  if (niceness > 0 && tool.pid !== undefined) setPriority(tool.pid, niceness);
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
const together =
  (...tools: readonly (readonly [script: string, options: readonly string[]])[]) =>
  async ({ niceness }: Manner): Promise<Tally> =>
    tallyOfTool(
      Math.max(
        ...(await Promise.all(
          tools.map(([script, options]) => runTool(script, options, { showing: 'at-the-end', niceness })),
        )),
      ),
    );

async function runTests(project: 'unit' | 'e2e', manner: Manner, environment: NodeJS.ProcessEnv = {}): Promise<Tally> {
  const folder = mkdtempSync(join(tmpdir(), 'limbeck-report-'));
  const reportFile = join(folder, 'report.json');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`];
  const options = ['run', '--project', project, ...reporters];
  const exitCode = await runTool('vitest/vitest.mjs', options, manner, environment);
  const report = existsSync(reportFile) ? (JSON.parse(readFileSync(reportFile, 'utf8')) as TestReport) : undefined;
  rmSync(folder, { recursive: true });
  return tallyOfTests(exitCode, report);
}

async function build(manner: Manner): Promise<Tally> {
  rmSync(builtApp, { recursive: true, force: true });
  return tallyOfTool(await runTool('vite/bin/vite.js', ['build'], manner));
}

async function runBrowserTests(manner: Manner): Promise<Tally> {
  if (existsSync(join(builtApp, 'index.html'))) return runTests('e2e', manner, { LIMBECK_BUILT_APP: builtApp });
  console.log('There is no built app to open in a browser.');
  return { passed: 0, failed: 1 };
}

type Stage = (manner: Manner) => Promise<Tally>;

const stages: Readonly<Record<string, Stage>> = {
  types: together(['tsx/dist/cli.mjs', ['tests/run/check-types.ts']]),
  lint: together(
    ['prettier/bin/prettier.cjs', ['--check', '--log-level', 'warn', '.']],
    ['eslint/bin/eslint.js', ['--max-warnings', '0', '.']],
  ),
  imports: together([
    'dependency-cruiser/bin/dependency-cruise.mjs',
    ['--config', '.dependency-cruiser.cjs', 'sim', 'src', 'tests'],
  ]),
  unit: (manner) => runTests('unit', manner),
  build,
  browser: runBrowserTests,
};

/**
 * Two lanes run side by side, for a page often waits and leaves the machine idle; what is timed in a page goes first,
 * and the rest takes what it leaves: pages that share the machine evenly run into their patience.
 * Stages of a lane follow each other, those of a row run together.
 */
const LANES: readonly { readonly niceness: number; readonly rows: readonly (readonly string[])[] }[] = [
  { niceness: 0, rows: [['build'], ['browser']] },
  { niceness: 19, rows: [['types', 'lint', 'imports'], ['unit']] },
];

interface Outcome {
  readonly name: string;
  readonly tally: Tally;
  readonly seconds: number;
}

async function runStage(name: string, stage: Stage, manner: Manner): Promise<Outcome> {
  const started = process.hrtime.bigint();
  if (manner.showing === 'at-once') console.log(`\n── ${name}`);
  const tally = await stage(manner);
  const seconds = Number(process.hrtime.bigint() - started) / 1e9;
  if (manner.showing === 'at-the-end') console.log(`── ${name}: ${lineOf(tally)} (${seconds.toFixed(0)} s)\n`);
  return { name, tally, seconds };
}

const chosen = new Map(
  (process.argv.length > 2 ? process.argv.slice(2) : Object.keys(stages)).map((name) => {
    const stage = stages[name];
    if (!stage) throw new Error(`There is no stage "${name}"; there are ${Object.keys(stages).join(', ')}.`);
    return [name, stage] as const;
  }),
);
const showing = chosen.size === 1 ? 'at-once' : 'at-the-end';
if (chosen.size > 1) console.log(`── ${[...chosen.keys()].join(', ')}, each told when it ends\n`);

const outcomes = (
  await Promise.all(
    LANES.map(async ({ niceness, rows }) => {
      const ended: Outcome[] = [];
      for (const row of rows)
        ended.push(
          ...(await Promise.all(
            row.flatMap((name) => {
              const stage = chosen.get(name);
              return stage ? [runStage(name, stage, { showing, niceness })] : [];
            }),
          )),
        );
      return ended;
    }),
  )
).flat();

console.log('\n── outcome');
for (const { name, tally, seconds } of outcomes) {
  console.log(`${name.padEnd(8)} ${lineOf(tally)} (${seconds.toFixed(0)} s)`);
}
const total = sumOf(outcomes.map(({ tally }) => tally));
console.log(lineOf(total));
process.exitCode = exitCodeOf(total);
