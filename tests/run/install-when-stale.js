/**
 * Runs before `start`, `dev` and `test`, when nothing may be installed yet, so it uses Node alone.
 * Installs from the lock file unless everything the lock file asks for is already there.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { whyInstallationIsStale } from './installed-packages.js';

const OLDEST_NODE = /** @type {const} */ ([20, 19]);

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor < OLDEST_NODE[1])) {
  console.error(`Limbeck needs Node ${OLDEST_NODE.join('.')} or newer; this is ${process.versions.node}.`);
  process.exit(1);
}

const root = fileURLToPath(new URL('../..', import.meta.url));
const reason = whyInstallationIsStale(root);
if (reason) {
  console.log(`Installing packages: ${reason}.`);
  process.exit(install());
}

function install() {
  const order = ['ci', '--include=dev', '--no-audit', '--no-fund'];
  const npm = process.env['npm_execpath'];
  const { status } = npm
    ? spawnSync(process.execPath, [npm, ...order], { cwd: root, stdio: 'inherit' })
    : spawnSync('npm', order, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  return status ?? 1;
}
