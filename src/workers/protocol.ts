/** What passes between the pool and a worker, one task at a time. */
import type { TaskArguments, TaskName } from './perform.ts';

export interface WorkerRequest {
  readonly name: TaskName;
  readonly given: TaskArguments<TaskName>;
}

/** How far a run that takes long has come, as a share, and how long all of it is likely to take, s. */
export interface Progress {
  readonly share: number;
  readonly whole_s: number;
}

export type WorkerReply =
  | { readonly ok: true; readonly answer: unknown; readonly progress?: never }
  | { readonly ok: false; readonly message: string; readonly progress?: never }
  | { readonly progress: Progress };
