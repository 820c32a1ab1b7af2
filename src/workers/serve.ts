/** A worker's side: carries out one task after another and posts what came of it. */
import { recordBuffers } from '../../sim/index.ts';
import { errorMessage } from './errors.ts';
import type { Tasks } from './perform.ts';
import type { WorkerReply, WorkerRequest } from './protocol.ts';
import type { RunAnswer } from './run-tasks.ts';

/** Memory that the page takes over instead of a copy. */
function buffersOf(request: WorkerRequest, answer: unknown): Transferable[] {
  const run = request.name === 'run' ? (answer as RunAnswer) : null;
  return run?.kind === 'ran' ? recordBuffers(run.result.record) : [];
}

export function serve(tasks: Partial<Tasks>): void {
  const post = (reply: WorkerReply, buffers: Transferable[] = []) => postMessage(reply, { transfer: buffers });
  addEventListener('message', ({ data: request }: MessageEvent<WorkerRequest>) => {
    try {
      const task = tasks[request.name] as ((...given: readonly unknown[]) => unknown) | undefined;
      if (!task) throw new RangeError(`this worker knows no task called ${request.name}`);
      const answer = task(...request.given);
      post({ ok: true, answer }, buffersOf(request, answer));
    } catch (error) {
      post({ ok: false, message: errorMessage(error) });
    }
  });
}
