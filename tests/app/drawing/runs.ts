/** Short runs shared by the tests of what moves. */
import { simulate, type RunResult } from '../../../sim/index.ts';
import { scenarioOf } from './scenario-of.ts';

/** A small, quick still that boils, runs and drips within the quarter of an hour. */
export const quickStill = () =>
  scenarioOf({
    heat: {
      kind: 'gas-ring',
      ratedPower_W: 3000,
      lag_s: 5,
      shareToPot: 0.6,
      setting: [{ at_s: 0, value: 0.8, shape: 'step' }],
    },
    pot: { diameter_m: 0.2, height_m: 0.25, gridHeight_m: 0.08, water_kg: 2, waterTemperature_K: 350 },
    charge: { mass_kg: 0.4 },
    run: { duration_s: 2400 },
  });

let quick: RunResult | undefined;
export const quickRun = (): RunResult => (quick ??= simulate(quickStill()));

let hard: RunResult | undefined;
/** Far too much heat for far too little coil. */
export const escapingRun = (): RunResult =>
  (hard ??= simulate(
    scenarioOf({
      ...quickStill(),
      heat: { ...quickStill().heat, ratedPower_W: 9000 },
      condenser: { ...quickStill().condenser, length_m: 0.6 },
      run: { ...quickStill().run, duration_s: 1200 },
    }),
  ));

let dry: RunResult | undefined;
export const dryRun = (): RunResult =>
  (dry ??= simulate(
    scenarioOf({
      ...quickStill(),
      pot: { ...quickStill().pot, water_kg: 0.6 },
      run: { ...quickStill().run, duration_s: 3600 },
    }),
  ));
