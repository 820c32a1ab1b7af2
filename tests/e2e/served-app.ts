/** Once per run of the browser tests: builds the app unless a build is given, serves it, and starts one browser. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
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

export default async function serveApp(project: TestProject): Promise<() => Promise<void>> {
  const given = process.env['LIMBECK_BUILT_APP'];
  const appFolder = given ?? buildIntoTemporaryFolder();
  const server = await preview({
    root,
    logLevel: 'warn',
    build: { outDir: appFolder },
    preview: { host: '127.0.0.1', port: 0, open: false },
  });
  const appAddress = server.resolvedUrls?.local[0];
  if (!appAddress) throw new Error('The preview server did not say where it listens.');
  const browser = await chromium.launchServer({ executablePath: await findBrowser(), args: launchArguments });

  project.provide('appAddress', appAddress);
  project.provide('appFolder', appFolder);
  project.provide('browserEndpoint', browser.wsEndpoint());

  return async () => {
    await browser.close();
    await server.close();
    if (!given) rmSync(appFolder, { recursive: true });
  };
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
