/**
 * Measures how much the heap grows over many steps of a run; started by a test in its own process with the garbage
 * collector at hand. Prints bytes.
 */
import { exampleScenario, Run } from '../../../sim/index.ts';

const [id, warmUp, steps] = [process.argv[2] as string, Number(process.argv[3]), Number(process.argv[4])];
const collect = (globalThis as { gc?: () => void }).gc;
if (collect === undefined) throw new Error('start with --expose-gc');
const base = exampleScenario(id);
const run = new Run({
  ...base,
  run: { ...base.run, duration_s: warmUp + steps, stopAtShare: null },
  pot: { ...base.pot, layout: 'water-and-steam', gridHeight_m: 0.2, height_m: 0.6, water_kg: 15 },
  heat: {
    ...base.heat,
    setting: [
      { at_s: 0, value: 1, shape: 'step' },
      { at_s: 3000, value: 0.4, shape: 'step' },
    ],
  },
  advanced: { ...base.advanced, recordEvery_s: 600 },
});
run.advance(warmUp);
for (let time = 0; time < 4; time++) collect();
const before = process.memoryUsage().heapUsed;
run.advance(warmUp + steps);
collect();
const grown = process.memoryUsage().heapUsed - before;
if (run.ended && run.time() < warmUp + steps) throw new Error(`the run ended at ${run.time()} s`);
console.log(grown);
