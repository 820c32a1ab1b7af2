/** A worker's side: carries out one task after another and posts what came of it. */
import { recordBuffers } from '../../sim/index.ts';
import { errorMessage } from './errors.ts';
import type { Tasks } from './perform.ts';
import type { WorkerReply, WorkerRequest } from './protocol.ts';
import type { RunAnswer, Tell } from './run-tasks.ts';

/** Memory that the page takes over instead of a copy. */
const buffersOf = (answer: unknown): Transferable[] => {
  const run = answer as RunAnswer | null | undefined;
  return run?.kind === 'ran' ? recordBuffers(run.result.record) : [];
};

export function serve(tasks: Partial<Tasks>): void {
  const post = (reply: WorkerReply, buffers: Transferable[] = []) => postMessage(reply, { transfer: buffers });
  addEventListener('message', ({ data: request }: MessageEvent<WorkerRequest>) => {
    try {
      const task = tasks[request.name] as ((...given: readonly unknown[]) => unknown) | undefined;
      if (!task) throw new RangeError(request.name);
      const tell: Tell = (progress) => post({ progress });
      const answer = task(...request.given, tell);
      post({ ok: true, answer }, buffersOf(answer));
    } catch (error) {
      post({ ok: false, message: errorMessage(error) });
    }
  });
}
