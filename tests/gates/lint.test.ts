import { relative } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { PlantedProject } from './planted-project.ts';

interface Planted {
  readonly what: string;
  readonly path: string;
  readonly text: string;
  readonly rule: string;
}

/** Written in two halves where the whole word would look like the real thing to a search of this repository. */
const violations: readonly Planted[] = [
  {
    what: 'chance',
    path: 'sim/run/chance.ts',
    text: 'export const draw = (): number => Math.random();',
    rule: 'no-restricted-properties',
  },
  {
    what: 'chance by destructuring',
    path: 'sim/run/chance-destructured.ts',
    text: 'const { random } = Math;\nexport const draw = (): number => random();',
    rule: 'no-restricted-properties',
  },
  {
    what: 'chance by another name for Math',
    path: 'sim/run/chance-renamed.ts',
    text: 'const maths = Math;\nexport const draw = (): number => maths.random();',
    rule: 'no-restricted-syntax',
  },
  {
    what: 'a kind of condenser compared',
    path: 'sim/run/condenser-kind.ts',
    text: "export const coil = (kind: string): boolean => kind === 'coil-in-tub';",
    rule: 'no-restricted-syntax',
  },
  {
    what: 'a kind of condenser compared on the page',
    path: 'src/state/condenser-kind.ts',
    text: "export const many = (kind: string): boolean => kind !== 'bundle';",
    rule: 'no-restricted-syntax',
  },
  {
    what: 'the date',
    path: 'sim/run/date.ts',
    text: 'export const now = (): number => new Date().valueOf();',
    rule: 'no-restricted-globals',
  },
  {
    what: 'the clock',
    path: 'sim/run/clock.ts',
    text: 'export const now = (): number => performance.now();',
    rule: 'no-restricted-globals',
  },
  {
    what: 'a timer',
    path: 'sim/still/timer.ts',
    text: 'export const later = (act: () => void): void => void setTimeout(act, 1);',
    rule: 'no-restricted-globals',
  },
  {
    what: 'the clock by way of globalThis',
    path: 'sim/still/global.ts',
    text: 'export const now = (): number => globalThis.Date.now();',
    rule: 'no-restricted-globals',
  },
  {
    what: "the reader's locale",
    path: 'sim/run/locale.ts',
    text: 'export const shown = (value: number): string => value.toLocaleString();',
    rule: 'no-restricted-properties',
  },
  {
    what: 'chance at the command line',
    path: 'sim/cli/chance.ts',
    text: 'export const draw = (): number => Math.random();',
    rule: 'no-restricted-properties',
  },
  ...['d3', 'd3-selection', 'd3-transition', 'd3-axis'].map((name) => ({
    what: `${name} in the interface`,
    path: `src/charts/${name}.ts`,
    text: `import * as drawing from '${name}';\nexport const all = drawing;`,
    rule: 'no-restricted-imports',
  })),
  {
    what: 'd3-selection where mathjs is allowed',
    path: 'sim/units/selection.ts',
    text: "import * as drawing from 'd3-selection';\nexport const all = drawing;",
    rule: 'no-restricted-imports',
  },
  {
    what: 'mathjs in a panel',
    path: 'src/pages/mathjs.ts',
    text: "import { unit } from 'mathjs';\nexport const metre = unit('1 m');",
    rule: 'no-restricted-imports',
  },
  {
    what: 'destructured props',
    path: 'src/pages/Destructured.tsx',
    text: 'export const Label = ({ text }: { text: string }) => <p>{text}</p>;',
    rule: 'solid/no-destructure',
  },
  {
    what: 'an early return from a component',
    path: 'src/pages/EarlyReturn.tsx',
    text: 'export function Label(props: { text?: string }) {\n  if (!props.text) return null;\n  return <p>{props.text}</p>;\n}',
    rule: 'solid/components-return-once',
  },
  {
    what: 'words that Solid would not listen to',
    path: 'src/pages/Deaf.tsx',
    text: "import { Show } from 'solid-js';\nexport const Told = (props: { count: number | null }) => <Show when={props.count}>{(count) => String(count())}</Show>;",
    rule: 'no-restricted-syntax',
  },
  {
    what: 'a prop read outside tracking',
    path: 'src/pages/Untracked.tsx',
    text: 'export function Label(props: { text: string }) {\n  const text = props.text;\n  return <p>{text}</p>;\n}',
    rule: 'solid/reactivity',
  },
  {
    what: 'markup from a string',
    path: 'src/pages/Markup.tsx',
    text: 'export const Label = (props: { text: string }) => <p innerHTML={props.text} />;',
    rule: 'solid/no-innerhtml',
  },
  {
    what: 'a promise left alone',
    path: 'src/app/promise.ts',
    text: 'export function save(work: () => Promise<void>): void {\n  work();\n}',
    rule: '@typescript-eslint/no-floating-promises',
  },
  {
    what: 'a swallowed error',
    path: 'src/app/swallowed.ts',
    text: `export function attempt(act: () => void): void {\n  try {\n    act();\n  } catch${' '}{}\n}`,
    rule: 'no-empty',
  },
  {
    what: 'unfinished work',
    path: 'src/app/unfinished.ts',
    text: `// TO${'DO'}: the rest\nexport const part = 1;`,
    rule: 'no-warning-comments',
  },
  {
    what: 'one test run alone',
    path: 'tests/sim/alone.test.ts',
    text: `import { ${'test'} } from 'vitest';\n${'test'}.only('a', () => undefined);`,
    rule: 'no-only-tests/no-only-tests',
  },
  {
    what: 'a skipped test',
    path: 'tests/sim/skipped.test.ts',
    text: `import { ${'test'} } from 'vitest';\n${'test'}.skip('a', () => undefined);`,
    rule: 'no-restricted-syntax',
  },
  {
    what: 'an expectation that says too little',
    path: 'tests/sim/weak.test.ts',
    text: `import { expect, test } from 'vitest';\ntest('a', () => expect(1).toBe${'Truthy'}());`,
    rule: 'no-restricted-properties',
  },
];

const innocent: Readonly<Record<string, string>> = {
  'sim/run/innocent.ts': 'export const growth = (x: number): number => Math.exp(x);',
  'sim/cli.ts':
    "import { readFileSync } from 'node:fs';\nprocess.stdout.write(readFileSync(0, 'utf8') + String(Date.now()));",
  'sim/units/innocent.ts': "import { unit } from 'mathjs';\nexport const metre = unit('1 m');",
  'src/charts/innocent.ts': "import { scaleLinear } from 'd3-scale';\nexport const scale = scaleLinear();",
  'src/pages/Innocent.tsx': 'export const Label = (props: { text: string }) => <p>{props.text}</p>;',
  'tests/sim/innocent.test.ts': "import { expect, test } from 'vitest';\ntest('a', () => expect(1).toBe(1));",
};

describe('the linter', () => {
  let project: PlantedProject;
  let exitCode: number;
  const rulesBroken = new Map<string, readonly (string | null)[]>();

  beforeAll(() => {
    project = new PlantedProject({
      ...innocent,
      ...Object.fromEntries(violations.map(({ path, text }) => [path, text])),
    });
    const outcome = project.run('eslint/bin/eslint.js', [
      '--max-warnings',
      '0',
      '--format',
      'json',
      'sim',
      'src',
      'tests',
    ]);
    exitCode = outcome.exitCode;
    const results = JSON.parse(outcome.output) as {
      filePath: string;
      messages: { ruleId: string | null; severity: number }[];
    }[];
    for (const { filePath, messages } of results) {
      const errors = messages.filter(({ severity }) => severity === 2);
      rulesBroken.set(
        relative(project.folder, filePath).replaceAll('\\', '/'),
        errors.map(({ ruleId }) => ruleId),
      );
    }
  }, 120_000);
  afterAll(() => project.remove());

  test('fails when rules are broken', () => expect(exitCode).toBe(1));

  test.each(violations)('refuses $what', ({ path, rule }) => expect(rulesBroken.get(path)).toContain(rule));

  test.each(Object.keys(innocent))('has nothing against %s', (path) => expect(rulesBroken.get(path)).toEqual([]));
});
