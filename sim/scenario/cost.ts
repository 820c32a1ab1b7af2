/** What a run costs the machine before it is started: its steps times the cells of the still that each goes through. */
import type { Scenario } from './scenario.ts';

/** What a step costs beside the cells of condenser, bed and tub, counted in them. */
const OTHER_CELLS = 20;
/** Cells that a machine of two cores steps through in a second where no step may be lengthened, measured. */
const CELL_STEPS_PER_SECOND = 5e6;
/** A run that takes longer than this says so, s. */
export const LONG_RUN_S = 3;

/** Cells that a step goes through. */
export const cellsOf = ({ segments, bedLayers, tubLayers }: Scenario['advanced']): number =>
  segments + bedLayers + tubLayers + OTHER_CELLS;

/** Time that a run is likely to take, s; less where steps can be lengthened, more on a small machine. */
export const runSeconds = ({ run, advanced }: Scenario): number =>
  ((run.duration_s / advanced.step_s) * cellsOf(advanced)) / CELL_STEPS_PER_SECOND;

/** The same still in the longest steps there are: its run is there at once and much like the one that takes long. */
export const roughly = (scenario: Scenario): Scenario => ({
  ...scenario,
  advanced: { ...scenario.advanced, step_s: 10, recordEvery_s: 60 },
});
