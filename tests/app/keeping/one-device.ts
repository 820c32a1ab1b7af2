/** One device with several windows, whose writing and telling take as long as chance has it. */
import type { Entry } from '../../../src/state/database.ts';
import { createKeptStore } from '../../../src/state/kept-store.ts';
import { writesOver, type Channel } from '../../../src/state/kept-writes.ts';
import { memoryDatabase, memoryDrafts } from './memory-database.ts';

/** Mulberry32: numbers from 0 to 1. */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const later = (delay_ms: number) => new Promise<void>((done) => setTimeout(done, delay_ms));

/** A device: one database, one place for notes, and the air between its windows. */
export function device(draw: () => number, joins: Parameters<typeof writesOver>[1] = {}) {
  const entries = new Map<string, Entry>();
  const drafts = memoryDrafts();
  const channels = new Set<Channel>();
  let opened = 0;

  function open() {
    let isOpen = true;
    const database = memoryDatabase(entries, async () => {
      await later(draw() * 300);
      if (!isOpen) await new Promise<never>(() => undefined);
    });
    const channel: Channel = {
      onmessage: null,
      postMessage: (keys) => {
        for (const other of channels)
          if (other !== channel)
            void later(draw() * 200).then(() => other.onmessage?.({ data: keys } as MessageEvent<readonly string[]>));
      },
    };
    channels.add(channel);
    const store = createKeptStore({
      database,
      drafts,
      window: `w${(opened += 1)}`,
      writes: () => Promise.resolve(writesOver(channel, joins)),
      oldEntries: () => Promise.resolve([]),
      now: () => Date.now(),
    });
    const close = () => {
      store.leave();
      isOpen = false;
      channels.delete(channel);
    };
    return { store, close };
  }
  return { entries, open };
}
