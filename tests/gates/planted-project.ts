/** A small project of its own, under the real project's rules, in which a test plants violations. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const rules = [
  'package.json',
  'eslint.config.js',
  '.dependency-cruiser.cjs',
  'tsconfig.json',
  'sim/tsconfig.json',
  'tests/tsconfig.json',
  'tests/run',
  '.prettierrc.json',
  '.prettierignore',
];

export interface Outcome {
  readonly exitCode: number;
  readonly output: string;
}

export class PlantedProject {
  readonly folder: string;

  constructor(files: Readonly<Record<string, string>>) {
    this.folder = realpathSync(mkdtempSync(join(tmpdir(), 'limbeck-gate-')));
    for (const path of rules) cpSync(join(root, path), join(this.folder, path), { recursive: true });
    symlinkSync(join(root, 'node_modules'), join(this.folder, 'node_modules'), 'junction');
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(this.folder, path)), { recursive: true });
      writeFileSync(join(this.folder, path), text);
    }
  }

  /** Runs an installed tool in the planted project. */
  run(script: string, options: readonly string[]): Outcome {
    const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, 'node_modules', script), ...options], {
      cwd: this.folder,
      encoding: 'utf8',
      maxBuffer: 64e6,
    });
    return { exitCode: status ?? 1, output: stdout === '' ? stderr : stdout };
  }

  remove(): void {
    rmSync(this.folder, { recursive: true });
  }
}
