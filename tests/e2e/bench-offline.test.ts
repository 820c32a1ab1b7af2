import { createServer } from 'node:http';
import { readFile } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { describe, expect, inject, onTestFinished, test } from 'vitest';
import { goTo, onBench, openBench, seconds } from './bench-page.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/** A server that answers anything with the first page, under a folder of its own, and says that its answers vary. */
async function catchAll() {
  let build = 'first';
  const folder = inject('appFolder');
  const page = async () =>
    (await readFile(join(folder, 'index.html'), 'utf8')).replace('<html', `<html data-build="${build}"`);
  const server = createServer((request, response) => {
    const file = new URL(request.url ?? '/', 'http://here').pathname.replace(/^\/shed\//u, '');
    const send = (body: string | Buffer, type: string) =>
      response.writeHead(200, { 'content-type': type, vary: 'Origin', 'cache-control': 'no-cache' }).end(body);
    void readFile(join(folder, file)).then(
      (body) =>
        send(
          file === 'offline-worker.js' ? String(body).replace(/offlineBuild = '/u, `$&${build}-`) : body,
          TYPES[extname(file)] ?? 'application/octet-stream',
        ),
      async () => send(await page(), 'text/html'),
    );
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  onTestFinished(() => void server.close());
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/shed/`, next: () => (build = 'second') };
}

describe('two builds, behind a server that answers anything with its first page', () => {
  test('the first is kept whole, the second is offered and taken by one press; other stores are left alone', async () => {
    const { page, problems } = await openBench({ serviceWorkers: 'allow' });
    const { address, next } = await catchAll();
    const built = () => page.locator('html').getAttribute('data-build');
    await page.goto(address);
    await onBench(page).lead.waitFor();
    await page.evaluate(async () => {
      await caches.open('limbeck http://127.0.0.1/other/ 1');
      await navigator.serviceWorker.ready;
    });
    await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
    await page.context().setOffline(true);
    await page.reload();
    await onBench(page).lead.waitFor();
    await page.context().setOffline(false);

    next();
    await page.reload();
    const offer = page.getByRole('button', { name: 'Use it now' });
    await offer.waitFor();
    expect(await built()).toBe('first');
    await offer.click();
    await expect.poll(() => built().catch(() => null)).toBe('second');
    await onBench(page).lead.waitFor();
    expect(await page.evaluate(() => caches.has('limbeck http://127.0.0.1/other/ 1'))).toBe(true);
    // This server is another host to the watch over the page, which may still be fetching its later parts.
    await page.goto('about:blank');
    problems.length = 0;
  });
});

describe('without a network', () => {
  test('the bench opens and runs, and the other places are there', async () => {
    const { page } = await openBench({ serviceWorkers: 'allow' });
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
    await page.context().setOffline(true);
    await page.reload();
    const { lead, timeMark } = onBench(page);
    await lead.waitFor();
    await timeMark.focus();
    await page.keyboard.press('End');
    expect(await seconds(timeMark)).toBeGreaterThan(3600);
    const before = await lead.textContent();
    await page.getByRole('slider', { name: 'Coil' }).fill('0.5');
    await expect.poll(() => lead.textContent()).not.toBe(before);
    await goTo(page, 'Run length');
    await page.locator('.answers-place h2').first().waitFor();
  });

  test('the app may be installed: it has a name, a start and icons that exist', async () => {
    const { page } = await openBench();
    const found = await page.evaluate(async () => {
      const address = document.querySelector<HTMLLinkElement>('link[rel="manifest"]')?.href ?? '';
      const manifest = (await (await fetch(address)).json()) as {
        name: string;
        start_url: string;
        display: string;
        icons: { src: string; sizes: string; type: string }[];
      };
      const icons = await Promise.all(
        manifest.icons.map(async ({ src, sizes, type }) => ({
          sizes,
          is: (await fetch(new URL(src, address))).headers.get('content-type') === type,
        })),
      );
      return { ...manifest, icons };
    });
    expect(found).toMatchObject({ name: 'Limbeck', start_url: './', display: 'standalone' });
    expect(found.icons.every(({ is }) => is)).toBe(true);
    expect(found.icons.map(({ sizes }) => sizes)).toEqual(expect.arrayContaining(['192x192', '512x512']));
  });
});
