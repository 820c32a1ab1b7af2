/**
 * Speed of an ensemble: a member against the run at full resolution, the summing up, and 300 draws with their swings
 * in two workers, which aims at 5 s on two free cores.
 *
 * Run with `npm run bench`. Recorded as ratios, because times on a shared machine mean little: a member takes 0.37 of
 * the full run of the same still (0.31 of the steps, two thirds of the segments; building the still is a fifth of it);
 * summing up 321 members takes less than a fifth of a member.
 */
import { Worker } from 'node:worker_threads';
import { bench, describe } from 'vitest';
import {
  ensembleDesign,
  exampleScenario,
  runMember,
  simulate,
  summariseEnsemble,
  type MemberResult,
} from '../../sim/index.ts';

const scenario = exampleScenario('gentle-lavender');
const design = ensembleDesign(scenario, 300, 1);
const one = runMember(design, 0);
/** Members to sum up; what they hold does not matter for the time. */
const members = design.rows.map((_, index): MemberResult => ({ ...one, index }));
let next = 0;

describe('an ensemble', () => {
  bench('a member', () => void runMember(design, next++ % design.rows.length));
  bench('the same still at full resolution', () => void simulate(scenario));
  bench('summing up 321 members', () => void summariseEnsemble(design, members));
});

/** A worker does not read TypeScript by itself. */
const START =
  "const { workerData } = require('node:worker_threads'); import('tsx/esm/api').then(({ register }) => { register(); return import(workerData.file); });";

/** Computes half of the rows in a thread of its own. */
const half = (part: 0 | 1): Promise<readonly MemberResult[]> =>
  new Promise((resolve, reject) => {
    const rows = design.rows.map((_, index) => index).filter((index) => index % 2 === part);
    const worker = new Worker(START, {
      eval: true,
      workerData: { design, rows, file: new URL('./ensemble-worker.ts', import.meta.url).href },
    });
    worker.once('message', (found: readonly MemberResult[]) => resolve(found));
    worker.once('error', reject);
  });

describe('300 draws and 21 other rows', () => {
  bench(
    'in two workers, their start included',
    async () => {
      summariseEnsemble(design, (await Promise.all([half(0), half(1)])).flat());
    },
    { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 },
  );
});
