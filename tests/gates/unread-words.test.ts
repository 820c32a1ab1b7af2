/** The worker that runs the model is built without the words that nobody reads there, and with every number. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { ModuleKind, ScriptTarget, transpileModule } from 'typescript';
import { parseSync } from 'vite';
import { describe, expect, it } from 'vitest';
import { withoutUnread } from '../../vite.unread-words.ts';

const folder = fileURLToPath(new URL('../../sim/fluids/constituents/', import.meta.url));
const scriptOf = (typed: string): string =>
  transpileModule(typed, { compilerOptions: { module: ModuleKind.ESNext, target: ScriptTarget.ESNext } }).outputText;
const shortened = (script: string): string => withoutUnread(script, parseSync('row.js', script).program);

const read = async (script: string): Promise<unknown> =>
  import(/* @vite-ignore */ `data:text/javascript;base64,${Buffer.from(script).toString('base64')}`);

const UNREAD = new Set(['source', 'note', 'family', 'formula', 'cas']);
const numbersOf = (value: unknown): string =>
  JSON.stringify(value, (name, part: unknown) => (UNREAD.has(name) ? undefined : part));

describe('the words that the run worker leaves out', () => {
  it.each(readdirSync(folder))('take no number out of %s', async (file) => {
    const script = scriptOf(readFileSync(folder + file, 'utf8'));
    const shorter = shortened(script);
    expect(shorter.length).toBeLessThan(0.9 * script.length);
    expect(numbersOf(await read(shorter))).toBe(numbersOf(await read(script)));
  });

  it('are the last arguments of a sourced value, not its value', () => {
    expect(
      shortened(`x(sourced('basil', 'memory', 'general botany', \`no \${1} note\`), origin('read', 'a book'))`),
    ).toBe(`x(sourced('basil', 'memory', '', ''), origin('read', ''))`);
  });

  it('are the value too where that is a name that no run knows', () => {
    expect(
      shortened(`row({ part: sourced('leaf', 'memory', 'botany'), state: sourced('dry', 'read', 'a book') })`),
    ).toBe(`row({ part: sourced('', 'memory', ''), state: sourced('dry', 'read', '') })`);
  });

  it('are none that the script works out', () => {
    const worked = `row({ source: other.source, says: words.says, title: 'Heat' })`;
    expect(shortened(worked)).toBe(worked);
  });
});
