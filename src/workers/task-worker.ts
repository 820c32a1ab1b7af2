/** A worker of the answers' pool: carries out one task after another. */
import { expose, transfer } from 'comlink';
import { recordBuffers } from '../../sim/index.ts';
import { performTask, type RunReading, type TaskAnswer, type TaskArguments, type TaskName } from './tasks.ts';

const face = {
  perform<K extends TaskName>(name: K, given: TaskArguments<K>): TaskAnswer<K> {
    const answer = performTask(name, given);
    if (name !== 'run') return answer;
    const reading = answer as RunReading;
    return reading.ok ? transfer(answer as TaskAnswer<K> & object, recordBuffers(reading.result.record)) : answer;
  },
};

expose(face);
