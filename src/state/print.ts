/** Printing: the page is laid out for paper first, so that drawing and charts measure themselves anew. */
import { createSignal, onCleanup, type Accessor } from 'solid-js';

export interface Paper {
  /** Whether the page is laid out for paper. */
  readonly onPaper: Accessor<boolean>;
  /** What has to be ready before the page's own Print prints; taken back when what is shown goes away. */
  readyBefore(prepare: () => Promise<void>): void;
  print(): Promise<void>;
}

const nextFrame = (): Promise<void> =>
  new Promise((resolve) => {
    requestAnimationFrame(() => resolve());
  });

/** One frame to measure, one to lay out, one to paint. */
const FRAMES_TO_SETTLE = 3;
/** What was off the screen follows the time mark once it rests. */
const REST_MS = 200;

export function createPaper(): Paper {
  const [onPaper, setOnPaper] = createSignal(false);
  const preparations = new Set<() => Promise<void>>();
  const lay = () => setOnPaper(true);
  const lift = () => setOnPaper(false);
  addEventListener('beforeprint', lay);
  addEventListener('afterprint', lift);
  onCleanup(() => {
    removeEventListener('beforeprint', lay);
    removeEventListener('afterprint', lift);
  });
  return {
    onPaper,
    readyBefore: (prepare) => {
      preparations.add(prepare);
      onCleanup(() => preparations.delete(prepare));
    },
    print: async () => {
      await Promise.all([...preparations].map((prepare) => prepare()));
      lay();
      await new Promise((resolve) => setTimeout(resolve, REST_MS));
      for (let frame = 0; frame < FRAMES_TO_SETTLE; frame++) await nextFrame();
      print();
      lift();
    },
  };
}
