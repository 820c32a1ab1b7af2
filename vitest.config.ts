import { join, sep } from 'node:path';
import { defineConfig } from 'vitest/config';

const unitTests = 'tests/**/*.test.{ts,tsx}';
const browserTests = 'tests/e2e/**/*.test.ts';

const model = join(import.meta.dirname, 'sim').replaceAll(sep, '/');
/** `sim/units`, and what fetches it late, stay with the test runner, whose tests ask for fresh copies of them. */
const modelButUnits = new RegExp(
  `^${model.replaceAll(/[^\w/-]/g, '\\$&')}/(?!units/|messages/(?:read-entry|typed-reading)\\.ts$).*\\.ts$`,
);

const loadedOnce = {
  // Loading the model anew for each file took a third of the time; tests that share a module clear what they keep in it.
  isolate: false,
  // Node loads the model itself: as the test runner rewrites it, every call from file to file goes through a getter, and
  // runs take half as long again.
  execArgv: ['--import', 'tsx'],
  server: { deps: { external: [modelButUnits] } },
};

export default defineConfig({
  test: {
    projects: [
      {
        extends: './vite.config.ts',
        test: {
          name: 'unit',
          environment: 'node',
          include: [unitTests],
          exclude: [browserTests],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          setupFiles: ['tests/run/fixed-seed.ts'],
          // By default one core stays idle, which on two cores is half of them.
          maxWorkers: '100%',
          ...loadedOnce,
          env: { TZ: 'UTC' },
          benchmark: { include: ['tests/bench/**/*.bench.ts'] },
        },
      },
      {
        test: {
          name: 'e2e',
          environment: 'node',
          include: [browserTests],
          globalSetup: ['tests/e2e/served-app.ts'],
          // A page waits much of its time; a second beside it, and the unit tests, leave less of the machine idle.
          maxWorkers: 2,
          ...loadedOnce,
          testTimeout: 120_000,
          hookTimeout: 60_000,
          expect: { poll: { timeout: 30_000, interval: 50 } },
          benchmark: { include: [] },
        },
      },
    ],
  },
});
