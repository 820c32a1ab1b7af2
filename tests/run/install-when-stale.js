/**
 * Runs before `start`, `dev` and `test`, when nothing may be installed yet, so it uses Node alone.
 * Installs from the lock file unless everything the lock file asks for is already there.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const OLDEST_NODE = [20, 19];

/**
 * @typedef {{ version?: string, optional?: boolean, devOptional?: boolean, link?: boolean }} LockedPackage
 * @typedef {Record<string, LockedPackage>} LockedPackages
 */

/**
 * Says why the installed packages do not match the lock file, or nothing when they do. Packages marked optional
 * belong to other systems and may rightly be absent.
 * @param {string} folder project root
 * @returns {string | undefined}
 */
export function whyStale(folder) {
  const installedRecord = join(folder, 'node_modules', '.package-lock.json');
  if (!existsSync(installedRecord)) return 'nothing is installed yet';
  const wanted = packagesIn(join(folder, 'package-lock.json'));
  const installed = packagesIn(installedRecord);
  for (const [path, { version, optional, devOptional }] of Object.entries(wanted)) {
    if (path === '' || optional || devOptional) continue;
    if (installed[path]?.version !== version) return `${path} ${version} is not installed`;
    if (!existsSync(join(folder, path))) return `${path} is missing`;
  }
  return undefined;
}

/**
 * @param {string} lockFile
 * @returns {LockedPackages}
 */
function packagesIn(lockFile) {
  return JSON.parse(readFileSync(lockFile, 'utf8')).packages;
}

/** @param {string} folder */
function install(folder) {
  const options = ['ci', '--include=dev', '--no-audit', '--no-fund'];
  const npm = process.env['npm_execpath'];
  const { status } = npm
    ? spawnSync(process.execPath, [npm, ...options], { cwd: folder, stdio: 'inherit' })
    : spawnSync('npm', options, { cwd: folder, stdio: 'inherit', shell: process.platform === 'win32' });
  return status ?? 1;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [oldestMajor = 0, oldestMinor = 0] = OLDEST_NODE;
  if (major < oldestMajor || (major === oldestMajor && minor < oldestMinor)) {
    console.error(`Limbeck needs Node ${OLDEST_NODE.join('.')} or newer; this is ${process.versions.node}.`);
    process.exit(1);
  }
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const reason = whyStale(root);
  if (reason) {
    console.log(`Installing packages: ${reason}.`);
    process.exit(install(root));
  }
}
