import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { PlantedProject } from './planted-project.ts';

interface Planted {
  readonly what: string;
  readonly path: string;
  readonly text: string;
}

const inSim: readonly Planted[] = [
  { what: 'the document', path: 'sim/still/screen.ts', text: 'export const title = (): string => document.title;' },
  { what: 'the window', path: 'sim/still/window.ts', text: 'export const width = (): number => window.innerWidth;' },
  {
    what: 'the worker it may run in',
    path: 'sim/run/worker.ts',
    text: 'export const tell = (): void => self.postMessage(1);',
  },
  { what: 'the clock', path: 'sim/run/clock.ts', text: 'export const now = (): number => performance.now();' },
  {
    what: 'a timer',
    path: 'sim/run/timer.ts',
    text: 'export const later = (act: () => void): void => void setTimeout(act, 1);',
  },
  { what: 'the console', path: 'sim/run/console.ts', text: "export const say = (): void => console.log('a');" },
  { what: 'the process', path: 'sim/run/process.ts', text: 'export const folder = (): string => process.cwd();' },
  {
    what: 'the file system',
    path: 'sim/run/files.ts',
    text: "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;",
  },
];

const anywhere: readonly Planted[] = [
  { what: 'a wrong type in the model', path: 'sim/fluids/wrong.ts', text: "export const density: number = 'heavy';" },
  {
    what: 'an element that may be missing',
    path: 'sim/fluids/missing.ts',
    text: 'export const first = (row: readonly number[]): number => row[0];',
  },
  { what: 'a wrong type in the interface', path: 'src/app/wrong.ts', text: "export const width: number = 'wide';" },
  {
    what: 'an unknown property in markup',
    path: 'src/pages/Wrong.tsx',
    text: 'export const Label = () => <p colour="red" />;',
  },
  {
    what: 'Node in the interface',
    path: 'src/app/files.ts',
    text: "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;",
  },
  { what: 'an unused variable', path: 'src/app/unused.ts', text: 'const left = 1;\nexport const right = 2;' },
  { what: 'a wrong type in a test', path: 'tests/sim/wrong.test.ts', text: "export const expected: number = 'one';" },
  {
    what: 'a language that lacks a message',
    path: 'sim/messages/half.ts',
    text: "import { section } from './section.ts';\nconst en = () => ({ one: 'One.', two: 'Two.' });\nexport const half = section<ReturnType<typeof en>>({ en, other: () => ({ one: 'Un.' }) });",
  },
  {
    what: 'a section that a language lacks',
    path: 'sim/messages/none.ts',
    text: "import { section } from './section.ts';\nconst en = () => ({ one: 'One.' });\nexport const none = section<ReturnType<typeof en>>({ en });",
  },
  { what: 'a wrong type at the command line', path: 'sim/cli.ts', text: "export const exitCode: number = 'one';" },
];

const innocent: Readonly<Record<string, string>> = {
  'sim/messages/section.ts': readFileSync(new URL('../../sim/messages/section.ts', import.meta.url), 'utf8'),
  'sim/messages/language.ts':
    "export type Language = 'en' | 'other';\nexport interface Reader { readonly language: Language }",
  'sim/messages/quantities.ts':
    "import type { Reader } from './language.ts';\nexport type Quantities = Reader;\nexport const quantities = (reader: Reader): Quantities => reader;",
  'sim/messages/whole.ts':
    "import { section } from './section.ts';\nconst en = () => ({ one: 'One.', two: 'Two.' });\nexport const whole = section<ReturnType<typeof en>>({ en, other: () => ({ one: 'Un.', two: 'Deux.' }) });",
  'sim/fluids/innocent.ts':
    "import { z } from 'zod';\nexport const row = z.object({ density: z.number() });\nexport const root = Math.sqrt(2);",
  'sim/cli/innocent.ts':
    "import { readFileSync } from 'node:fs';\nexport const read = (): string => readFileSync(process.argv[2] ?? '-', 'utf8');",
  'src/pages/Innocent.tsx':
    'export const Label = (props: { text: string }) => <p class="label">{props.text || document.title}</p>;',
  'tests/sim/innocent.test.ts':
    "import { expect, test } from 'vitest';\ntest('a', () => expect(process.argv[0]).not.toBe(document.title));",
};

describe('the type checker', () => {
  let project: PlantedProject;
  let exitCode: number;
  let said: string;
  let complainedAbout: ReadonlySet<string>;

  beforeAll(() => {
    const planted = [...inSim, ...anywhere].map(({ path, text }) => [path, text] as const);
    project = new PlantedProject({ ...innocent, ...Object.fromEntries(planted) });
    ({ exitCode, output: said } = project.run('tsx/dist/cli.mjs', ['tests/run/check-types.ts']));
    complainedAbout = new Set([...said.matchAll(/^(\S+)\(\d+,\d+\): error/gm)].map(([, path = '']) => path));
  }, 120_000);
  afterAll(() => project.remove());

  test('fails in each of the three projects', () => {
    expect(exitCode).toBe(2);
    expect([...said.matchAll(/faults by (\S+)$/gm)].map(([, project]) => project)).toEqual([
      'sim/tsconfig.json',
      'tsconfig.json',
      'tests/tsconfig.json',
    ]);
  });

  test.each(inSim)('keeps $what out of the model', ({ path }) => expect(complainedAbout).toContain(path));

  test.each(anywhere)('refuses $what', ({ path }) => expect(complainedAbout).toContain(path));

  test.each(Object.keys(innocent))('has nothing against %s', (path) => expect(complainedAbout).not.toContain(path));
});
