/** What the worker does, for a page that has none. */
export { examples } from '../../sim/index.ts';
export { runScenario } from './run-scenario.ts';
