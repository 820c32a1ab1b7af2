/**
 * The command line as people call it. Node takes two seconds to read three hundred files of TypeScript, so they are put
 * together into one, kept in `.cache/`, and anew whenever one of them or a package has changed.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const cache = join(root, '.cache', 'command-line');

const madeFrom = readdirSync(join(root, 'sim'), { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => join(root, 'sim', file))
  .concat(join(root, 'package-lock.json'))
  .sort();
const state = createHash('sha256');
for (const file of madeFrom) {
  const { mtimeMs, size } = statSync(file);
  state.update(`${file} ${mtimeMs} ${size}\n`);
}
const kept = join(cache, state.digest('hex').slice(0, 16));
const program = join(kept, 'cli.js');

if (!existsSync(program)) await putTogether();
await import(pathToFileURL(program).href);

async function putTogether() {
  const { build } = await import('vite');
  mkdirSync(cache, { recursive: true });
  const fresh = mkdtempSync(join(cache, 'fresh-'));
  await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: {
      ssr: 'sim/cli.ts',
      outDir: fresh,
      emptyOutDir: true,
      target: 'node20',
      chunkSizeWarningLimit: Infinity,
      rolldownOptions: { output: { entryFileNames: 'cli.js' } },
    },
  });
  const older = readdirSync(cache).filter((name) => !name.startsWith('fresh-'));
  try {
    renameSync(fresh, kept);
  } catch (reason) {
    // Another start was quicker.
    rmSync(fresh, { recursive: true });
    if (!existsSync(program)) throw reason;
    return;
  }
  for (const name of older) rmSync(join(cache, name), { recursive: true, force: true });
}
