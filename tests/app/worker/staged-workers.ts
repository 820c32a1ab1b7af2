/** Workers that answer when told to, and can crash. */
import type { WorkerReply, WorkerRequest } from '../../../src/workers/protocol.ts';

export interface AskedOfWorker {
  readonly name: string;
  readonly given: readonly unknown[];
  answer(value: unknown): void;
  fail(message: string): void;
}

export class StagedWorkers {
  readonly all: StagedWorker[] = [];

  start(): Worker {
    const worker = new StagedWorker();
    this.all.push(worker);
    return worker as unknown as Worker;
  }

  /** What the workers are at, worker by worker. */
  open(): readonly AskedOfWorker[] {
    return this.all.filter(({ terminated }) => !terminated).flatMap(({ open }) => open);
  }

  living(): number {
    return this.all.filter(({ terminated }) => !terminated).length;
  }
}

export class StagedWorker extends EventTarget {
  open: AskedOfWorker[] = [];
  /** The first thing each task was given, in the order of the tasks. */
  readonly asked: unknown[] = [];
  terminated = false;

  postMessage(request: WorkerRequest): void {
    const reply = (data: WorkerReply) => {
      this.open = this.open.filter((other) => other !== asked);
      // A worker that was terminated says nothing any more.
      if (!this.terminated) this.dispatchEvent(new MessageEvent('message', { data }));
    };
    const asked: AskedOfWorker = {
      ...request,
      answer: (answer) => reply({ ok: true, answer }),
      fail: (message) => reply({ ok: false, message }),
    };
    this.open.push(asked);
    this.asked.push(request.given[0]);
  }

  terminate(): void {
    this.terminated = true;
  }

  crash(): void {
    this.dispatchEvent(new Event('error', { cancelable: true }));
  }
}
