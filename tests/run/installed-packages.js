import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @typedef {{ version?: string, optional?: boolean, devOptional?: boolean }} LockedPackage
 * @typedef {Record<string, LockedPackage>} LockedPackages
 */

/**
 * Says why the installed packages do not match the lock file, or nothing when they do. Packages marked optional
 * belong to other systems and may rightly be absent.
 * @param {string} folder project root
 * @returns {string | undefined}
 */
export function whyInstallationIsStale(folder) {
  const installedRecord = join(folder, 'node_modules', '.package-lock.json');
  if (!existsSync(installedRecord)) return 'nothing is installed yet';
  const installed = packagesIn(installedRecord);
  for (const [path, { version, optional, devOptional }] of Object.entries(
    packagesIn(join(folder, 'package-lock.json')),
  )) {
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
  const lock = /** @type {{ packages: LockedPackages }} */ (JSON.parse(readFileSync(lockFile, 'utf8')));
  return lock.packages;
}
