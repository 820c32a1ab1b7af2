/** The public face of the simulation: everything the interface may use. */
export type { Schedule } from './scenario/field.ts';
export { scenarioFields, fieldAt, type FieldInfo } from './scenario/fields.ts';
export { scenarioJsonSchema, SCENARIO_VERSION, type Scenario, type ScenarioInput, type ScenarioPart } from './scenario/scenario.ts';
export { readScenario, type Problem, type ReadScenario } from './scenario/read-scenario.ts';
export {
  chargeFromBotanical,
  condenserFromTube,
  heatFromSource,
  potFromVessel,
  separatorFromVessel,
  tubFrom,
} from './scenario/presets.ts';
export {
  COLUMNS,
  COLUMN_NAMES,
  GRIDS,
  GRID_NAMES,
  columnAt,
  gridAt,
  recordBuffers,
  rowAt,
  type ColumnName,
  type Grid,
  type GridName,
  type RunRecord,
} from './run/record.ts';
export type { Balance, Closure, EndReason, EventKind, NonFinite, RunEvent, RunResult, Severity, Summary } from './run/result.ts';
export * from './library/index.ts';
export { captureByDropSize, type DropCapture } from './run/drop-capture.ts';
export { exampleScenario, examples, type Example } from './run/examples.ts';
export { Run, simulate } from './run/simulate.ts';
export { scheduleValue } from './run/schedule-value.ts';
export { constituents, type Constituent } from './fluids/constituents.ts';
