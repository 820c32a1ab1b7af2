/** What passes between the pool and a worker, one task at a time. */
import type { TaskArguments, TaskName } from './perform.ts';

export interface WorkerRequest {
  readonly name: TaskName;
  readonly given: TaskArguments<TaskName>;
}

export type WorkerReply =
  { readonly ok: true; readonly answer: unknown } | { readonly ok: false; readonly message: string };
