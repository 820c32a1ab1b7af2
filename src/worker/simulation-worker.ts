/** The worker's whole face: read a scenario and run it. Nothing else of the model can be reached from the page. */
import { expose, transfer } from 'comlink';
import { recordBuffers } from '../../sim/index.ts';
import { runScenario, type RunAnswer } from './run-scenario.ts';

const face = {
  run(input: unknown): RunAnswer {
    const answer = runScenario(input);
    return answer.kind === 'ran' ? transfer(answer, recordBuffers(answer.result.record)) : answer;
  },
};

export type SimulationWorker = typeof face;

expose(face);
