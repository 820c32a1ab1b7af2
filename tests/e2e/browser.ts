/** Finds a Chromium to test with, so that nobody has to install one by hand where one is already at hand. */
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';

const commandNames = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome', 'msedge'];

const usualPlaces = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

export const HOW_TO_GET_A_BROWSER =
  'No Chromium was found for the browser tests. Run `npx playwright-core install chromium`, or set CHROME_PATH to the one you have.';

/** The path of a browser to run: the reader's own choice, then an installed one, then the one npm brought along. */
export async function findBrowser(environment: NodeJS.ProcessEnv = process.env): Promise<string> {
  const chosen = environment['CHROME_PATH'];
  if (chosen) {
    if (isExecutable(chosen)) return chosen;
    throw new Error(`CHROME_PATH is ${chosen}, which cannot be run.`);
  }
  const searched = (environment['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = commandNames.flatMap((name) => searched.map((folder) => join(folder, name)));
  const installed = [...onPath, ...usualPlaces, chromium.executablePath()].find(isExecutable);
  if (installed) return installed;
  if (process.platform === 'linux' && process.arch === 'x64') return unpackBundledBrowser(environment);
  throw new Error(HOW_TO_GET_A_BROWSER);
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

async function unpackBundledBrowser(environment: NodeJS.ProcessEnv): Promise<string> {
  // The package unpacks the system libraries that it needs only where it expects none to be installed.
  environment['AWS_EXECUTION_ENV'] ??= 'AWS_Lambda_nodejs20.x';
  const { default: bundled } = await import('@sparticuz/chromium');
  return bundled.executablePath();
}

/** No sandbox (it cannot be had as root in a container), no graphics card, no talk with the outside world. */
export const launchArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
];
