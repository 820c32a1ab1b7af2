/** Once per run of the browser tests: builds the app unless a build is given, serves it, and starts one browser. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, type BrowserServer } from 'playwright-core';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { findBrowser, launchArguments } from './browser.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app is served, with a closing slash. */
    appAddress: string;
    /** Where the app was built. */
    appFolder: string;
    /** Where tests reach the running browser. */
    browserEndpoint: string;
  }
}

const root = fileURLToPath(new URL('../..', import.meta.url));

export interface RunningApp {
  readonly address: string;
  readonly folder: string;
  readonly browser: BrowserServer;
  stop(): Promise<void>;
}

/** Builds, serves and starts a browser. */
export async function startApp(): Promise<RunningApp> {
  const given = process.env['LIMBECK_BUILT_APP'];
  const folder = given ?? buildIntoTemporaryFolder();
  const server = await preview({
    root,
    logLevel: 'warn',
    build: { outDir: folder },
    preview: { host: '127.0.0.1', port: 0, open: false },
  });
  const address = server.resolvedUrls?.local[0];
  if (!address) throw new Error('The preview server did not say where it listens.');
  const browser = await chromium.launchServer({ executablePath: await findBrowser(), args: launchArguments });
  const stop = async () => {
    await browser.close();
    await server.close();
    if (!given) rmSync(folder, { recursive: true });
  };
  return { address, folder, browser, stop };
}

export default async function serveApp(project: TestProject): Promise<() => Promise<void>> {
  const { address, folder, browser, stop } = await startApp();
  project.provide('appAddress', address);
  project.provide('appFolder', folder);
  project.provide('browserEndpoint', browser.wsEndpoint());
  return stop;
}

/** Builds as users get it: the test runner's own mode must not leak into the bundle. */
function buildIntoTemporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'limbeck-app-'));
  const options = ['build', '--outDir', folder, '--emptyOutDir', '--logLevel', 'warn'];
  const { status } = spawnSync(process.execPath, [join(root, 'node_modules/vite/bin/vite.js'), ...options], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, NODE_ENV: 'production' },
  });
  if (status === 0) return folder;
  rmSync(folder, { recursive: true });
  throw new Error('The app does not build, so there is nothing to open in a browser.');
}
