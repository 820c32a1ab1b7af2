/** The worker's whole face: run a scenario, and list where one may start. Nothing else of the model can be reached. */
import { expose, transfer } from 'comlink';
import { examples, recordBuffers, type Example } from '../../sim/index.ts';
import { runScenario, type Fidelity, type RunAnswer } from './run-scenario.ts';

const face = {
  run(input: unknown, fidelity: Fidelity): RunAnswer {
    const answer = runScenario(input, fidelity);
    return answer.kind === 'ran' ? transfer(answer, recordBuffers(answer.result.record)) : answer;
  },
  examples: (): readonly Example[] => examples,
};

export type SimulationWorker = typeof face;

expose(face);
