/**
 * Keeps the whole app on the device, so that it opens at once and without a network. One build, one store: a page comes
 * from the build that is in charge, and its files, which carry their content in their names, from whichever store of
 * this deployment has them. A newer build waits until no page of the older is left, or until the reader takes it.
 */

/** What the build puts in front of this file: its files, the script its page begins with, and a name that changes with any. */
declare const offlineFiles: readonly string[];
declare const offlineEntry: string;
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
  addEventListener(kind: 'message', then: (event: MessageEvent<unknown>) => void): void;
  skipWaiting(): Promise<void>;
  readonly clients: { claim(): Promise<void>; matchAll(): Promise<readonly unknown[]> };
  readonly registration: { readonly scope: string };
}
const worker = globalThis as unknown as Surroundings;

/** The page, as a server gives it for the folder it stands in. */
const PAGE = worker.registration.scope;
const INDEX = new URL('index.html', PAGE).href;
/** Other deployments on the same host have stores of their own. */
const OURS = `limbeck ${PAGE} `;
const STORE = OURS + offlineBuild;
/** How builds before called their stores, whosever they were. */
const FORMER = /^limbeck-[0-9a-f]{16}$/u;

/** What a server must call a file for it to be one; a server that answers anything with its first page does not. */
const TYPES: Readonly<Record<string, RegExp>> = {
  html: /^text\/html/u,
  js: /javascript/u,
  css: /^text\/css/u,
  json: /json/u,
  webmanifest: /json|manifest/u,
  svg: /svg/u,
  png: /^image\/png/u,
};

async function fetchFile(file: string): Promise<void> {
  const address = file === 'index.html' ? PAGE : new URL(file, PAGE).href;
  const answer = await fetch(new Request(address, { cache: 'no-cache' }));
  const type = answer.headers.get('content-type') ?? '';
  const wanted = TYPES[/\w+$/u.exec(file)?.[0] ?? ''];
  if (!answer.ok || (wanted ? !wanted.test(type) : /^text\/html/u.test(type)))
    throw new TypeError(`${file} is answered with ${answer.status} ${type}`);
  const body = await answer.blob();
  if (address === PAGE && !(await body.text()).includes(offlineEntry))
    throw new TypeError('the server holds another build by now');
  // What a server says an answer varies with does not hold for files that are the same to all.
  const kept = new Response(body, { headers: { 'content-type': type } });
  await (await caches.open(STORE)).put(address, kept);
}

async function fill(): Promise<void> {
  try {
    await Promise.all(offlineFiles.map(fetchFile));
  } catch (reason) {
    await caches.delete(STORE);
    throw reason;
  }
}

const isOfThis = async (name: string): Promise<boolean> =>
  name.startsWith(OURS) || (FORMER.test(name) && (await (await caches.open(name)).match(INDEX)) !== undefined);

/** Clears away older builds, unless a page of one may still ask for its files. */
async function takeOver(): Promise<void> {
  if ((await worker.clients.matchAll()).length === 0)
    for (const name of await caches.keys()) if (name !== STORE && (await isOfThis(name))) await caches.delete(name);
  await worker.clients.claim();
}

async function kept(address: string): Promise<Response | undefined> {
  const own = await (await caches.open(STORE)).match(address);
  if (own) return own;
  for (const name of await caches.keys()) {
    if (name === STORE || !(await isOfThis(name))) continue;
    const older = await (await caches.open(name)).match(address, { ignoreVary: true });
    if (older) return older;
  }
  return undefined;
}

async function answer(request: Request): Promise<Response> {
  const { origin, pathname } = new URL(request.url);
  const address = origin + pathname;
  return (await kept(address === INDEX ? PAGE : address)) ?? fetch(request);
}

worker.addEventListener('install', (event) => event.waitUntil(fill()));
worker.addEventListener('activate', (event) => event.waitUntil(takeOver()));
worker.addEventListener('message', ({ data }) => {
  if (data === 'take over') void worker.skipWaiting();
});
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method === 'GET' && request.url.startsWith(PAGE)) event.respondWith(answer(request));
});
