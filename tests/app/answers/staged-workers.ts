/** Workers in the same thread: they answer over a real message channel, when told to, and can die. */
import { expose } from 'comlink';

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

  /** What the workers are at, in the order in which it was asked. */
  open(): readonly AskedOfWorker[] {
    return this.all.filter(({ terminated }) => !terminated).flatMap(({ open }) => open);
  }

  living(): number {
    return this.all.filter(({ terminated }) => !terminated).length;
  }
}

export class StagedWorker extends EventTarget {
  open: AskedOfWorker[] = [];
  terminated = false;
  readonly #ours: MessagePort;
  readonly #theirs: MessagePort;

  constructor() {
    super();
    const { port1, port2 } = new MessageChannel();
    this.#ours = port1;
    this.#theirs = port2;
    expose(
      {
        perform: (name: string, given: readonly unknown[]) =>
          new Promise((resolve, reject) => {
            const asked: AskedOfWorker = {
              name,
              given,
              answer: (value) => {
                this.open = this.open.filter((other) => other !== asked);
                resolve(value);
              },
              fail: (message) => {
                this.open = this.open.filter((other) => other !== asked);
                reject(new Error(message));
              },
            };
            this.open.push(asked);
          }),
      },
      this.#theirs,
    );
    this.#ours.addEventListener('message', (event) =>
      this.dispatchEvent(new MessageEvent('message', { data: event.data as unknown })),
    );
    this.#ours.start();
  }

  postMessage(message: unknown, transfer: Transferable[] = []): void {
    this.#ours.postMessage(message, transfer);
  }

  terminate(): void {
    this.terminated = true;
    this.#ours.close();
    this.#theirs.close();
  }

  die(): void {
    this.dispatchEvent(new Event('error', { cancelable: true }));
  }
}
