/**
 * Keeps the whole app on the device, so that it opens without a network. With one, the page itself is always asked for
 * anew; its files carry their content in their names, so what is kept of them is never old. One build, one store: pages
 * go on with the store they were opened with, and a newer one takes over once no page of the older is left.
 */

/** What the build puts in front of this file: the files of the app, and a name that changes with any of them. */
declare const offlineFiles: readonly string[];
declare const offlineBuild: string;

/** As much as is used here of the surroundings of a service worker, whose types can't stand beside those of a page. */
interface Happening extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Happening {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Surroundings {
  addEventListener(kind: 'install' | 'activate', then: (event: Happening) => void): void;
  addEventListener(kind: 'fetch', then: (event: Fetching) => void): void;
  readonly clients: { claim(): Promise<void> };
  readonly registration: { readonly scope: string };
}
const worker = globalThis as unknown as Surroundings;

const OURS = 'limbeck-';
const STORE = `${OURS}${offlineBuild}`;
const FIRST_PAGE = 'index.html';
/** A network slower than this counts as none. */
const PATIENCE_MS = 4000;

const fill = async (): Promise<void> => {
  const store = await caches.open(STORE);
  await store.addAll(offlineFiles.map((file) => new Request(file, { cache: 'no-cache' })));
};

const takeOver = async (): Promise<void> => {
  const others = (await caches.keys()).filter((name) => name.startsWith(OURS) && name !== STORE);
  await Promise.all(others.map((name) => caches.delete(name)));
  await worker.clients.claim();
};

/** What a server says an answer varies with, such as who asks for a script, does not hold for files that are the same to all. */
const kept = async (what: Request | string): Promise<Response | undefined> =>
  (await caches.open(STORE)).match(what, { ignoreSearch: true, ignoreVary: true });

const answer = async (request: Request): Promise<Response> => {
  if (request.mode !== 'navigate') return (await kept(request)) ?? fetch(request);
  try {
    return await fetch(request, { signal: AbortSignal.timeout(PATIENCE_MS) });
  } catch (reason) {
    const page = await kept(FIRST_PAGE);
    if (page) return page;
    throw reason;
  }
};

worker.addEventListener('install', (event) => event.waitUntil(fill()));
worker.addEventListener('activate', (event) => event.waitUntil(takeOver()));
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method === 'GET' && request.url.startsWith(worker.registration.scope)) event.respondWith(answer(request));
});
