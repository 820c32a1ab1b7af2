import { expose } from 'comlink';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { createRunClient, type OnThePage, type RunClient, type RunReply } from '../../../src/workers/run-client.ts';
import type { RunAnswer } from '../../../src/workers/run-scenario.ts';

/** A worker in the same thread: it answers over a real message channel, when told to, and can die. */
class StagedWorker extends EventTarget {
  static readonly all: StagedWorker[] = [];
  readonly asked: unknown[] = [];
  terminated = false;
  /** Whether the next worker made keeps a question for examples to itself. */
  static nextIsMute = false;
  readonly mute = StagedWorker.nextIsMute;
  readonly #ours: MessagePort;
  readonly #theirs: MessagePort;
  #answer: ((answer: RunAnswer) => void) | null = null;

  constructor() {
    super();
    StagedWorker.all.push(this);
    StagedWorker.nextIsMute = false;
    const { port1, port2 } = new MessageChannel();
    this.#ours = port1;
    this.#theirs = port2;
    expose(
      {
        run: (scenario: unknown) => {
          this.asked.push(scenario);
          return new Promise<RunAnswer>((resolve) => {
            this.#answer = resolve;
          });
        },
        examples: () => {
          this.asked.push('examples');
          return this.mute ? new Promise(() => undefined) : [{ id: 'of the worker' }];
        },
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

  answer(message: string): void {
    this.#answer?.({ kind: 'failed', message });
  }

  die(): void {
    this.dispatchEvent(new Event('error', { cancelable: true }));
  }
}

const asWorker = () => new StagedWorker() as unknown as Worker;
const onThePage = {
  runScenario: (scenario: unknown): RunAnswer => ({ kind: 'failed', message: `on the page: ${String(scenario)}` }),
  examples: [{ id: 'of the page' }],
} as unknown as OnThePage;
const worker = (place: number): StagedWorker => StagedWorker.all.at(place) as StagedWorker;
const asked = (place: number, count: number) => vi.waitFor(() => expect(worker(place).asked).toHaveLength(count));

let client: RunClient | null = null;
const start = (parts: Partial<Parameters<typeof createRunClient>[0]> = {}): RunClient =>
  (client = createRunClient({ startWorker: asWorker, loadFallback: () => Promise.resolve(onThePage), ...parts }));

afterEach(() => {
  vi.useRealTimers();
  client?.dispose();
  StagedWorker.all.length = 0;
});

describe('asking for runs', () => {
  test('an answer comes back to the one who asked', async () => {
    const reply = start().run('a');
    await asked(0, 1);
    worker(0).answer('said a');
    expect(await reply).toEqual({ kind: 'failed', message: 'said a' });
  });

  test('while one runs only the latest of those that wait is run; the others are told', async () => {
    const runs = start();
    const replies = ['a', 'b', 'c', 'd'].map((scenario) => runs.run(scenario));
    await asked(0, 1);
    worker(0).answer('said a');
    await asked(0, 2);
    worker(0).answer('said d');
    const kinds = (await Promise.all(replies)).map((reply) => (reply.kind === 'failed' ? reply.message : reply.kind));
    expect(kinds).toEqual(['said a', 'superseded', 'superseded', 'said d']);
    expect(worker(0).asked).toEqual(['a', 'd']);
  });

  test('a run that holds up a newer one for too long is broken off, and its worker with it', async () => {
    const runs = start();
    const slow = runs.run('slow');
    await asked(0, 1);
    const quick = runs.run('preview');
    expect(await slow).toEqual({ kind: 'superseded' });
    await asked(1, 1);
    worker(1).answer('said quick');
    expect(await quick).toEqual({ kind: 'failed', message: 'said quick' });
    expect(worker(0).terminated).toBe(true);
  });
});

describe('a worker that dies', () => {
  test('is started again, and the run is asked for again', async () => {
    const reply = start().run('a');
    await asked(0, 1);
    worker(0).die();
    await asked(1, 1);
    worker(1).answer('said a');
    expect(await reply).toEqual({ kind: 'failed', message: 'said a' });
    expect(worker(0).terminated).toBe(true);
  });

  test('again and again leaves the work to the page', async () => {
    const reply = start().run('a');
    for (const place of [0, 1, 2]) {
      await asked(place, 1);
      worker(place).die();
    }
    expect(await reply).toEqual({ kind: 'failed', message: 'on the page: a' });
    expect(StagedWorker.all).toHaveLength(3);
  });

  test('is not held against a later one that lives', async () => {
    const runs = start();
    for (const scenario of ['a', 'b', 'c', 'd']) {
      const reply = runs.run(scenario);
      await asked(-1, 1);
      worker(-1).die();
      await asked(-1, 1);
      worker(-1).answer(`said ${scenario}`);
      expect(await reply).toEqual({ kind: 'failed', message: `said ${scenario}` });
      worker(-1).asked.length = 0;
    }
  });
});

describe('examples', () => {
  test('are asked of the worker', async () => {
    expect(await start().examples()).toEqual([{ id: 'of the worker' }]);
  });

  test('are asked for again when the worker dies before it has told them', async () => {
    StagedWorker.nextIsMute = true;
    const list = start().examples();
    await asked(0, 1);
    worker(0).die();
    expect(await list).toEqual([{ id: 'of the worker' }]);
    expect(StagedWorker.all).toHaveLength(2);
  });
});

test('where workers are forbidden the page does the work', async () => {
  const runs = start({
    startWorker: () => {
      throw new Error('no workers here');
    },
  });
  expect(await runs.run('a')).toEqual({ kind: 'failed', message: 'on the page: a' });
  expect(await runs.examples()).toEqual([{ id: 'of the page' }]);
});

test('where nothing can do the work the reason is told', async () => {
  const runs = start({
    startWorker: () => {
      throw new Error('no workers here');
    },
    loadFallback: () => Promise.reject(new Error('no such file')),
  });
  expect(await runs.run('a')).toEqual({ kind: 'failed', message: 'no such file' });
});

test('putting the client away settles what was asked', async () => {
  const runs = start();
  const replies: Promise<RunReply>[] = [runs.run('a'), runs.run('b')];
  await asked(0, 1);
  runs.dispose();
  expect(await Promise.all(replies)).toEqual([{ kind: 'superseded' }, { kind: 'superseded' }]);
});
