import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const script = fileURLToPath(new URL('step-loop-heap.ts', import.meta.url));
const WARM_UP = 4000;
const STEPS = 20_000;

it('keeps nothing of 20 000 steps but the rows of its record, which were there before', () => {
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    [
      '--expose-gc',
      '--no-opt',
      '--no-sparkplug',
      '--import',
      'tsx',
      script,
      'gentle-lavender',
      `${WARM_UP}`,
      `${STEPS}`,
    ],
    { encoding: 'utf8' },
  );
  expect(status, stderr).toBe(0);
  // One kept number a step would be 320 kB. The compilers are off: their code comes and goes by as much.
  expect(Number(stdout.trim())).toBeLessThan(50_000);
}, 120_000);
