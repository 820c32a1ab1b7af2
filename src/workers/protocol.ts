/** What passes between the pool and a worker, one task at a time. */
import type { TaskArguments, TaskName } from './perform.ts';
import type { Progress } from './progress.ts';

export interface WorkerRequest {
  readonly name: TaskName;
  readonly given: TaskArguments<TaskName>;
}

export type WorkerReply =
  | { readonly ok: true; readonly answer: unknown; readonly progress?: never }
  | { readonly ok: false; readonly message: string; readonly progress?: never }
  | { readonly progress: Progress };
