import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { PlantedProject } from './planted-project.ts';

const importing = (...targets: readonly string[]): string =>
  [
    ...targets.map((target, i) => `import * as part${i} from '${target}';`),
    `export const parts = [${targets.map((_, i) => `part${i}`).join(', ')}];`,
  ].join('\n');

interface Planted {
  readonly what: string;
  readonly path: string;
  readonly text: string;
  readonly rule: string;
}

const rightward = (from: string, target: string, layer: string, half: 'sim' | 'src' = 'sim'): Planted => ({
  what: `${from} importing ${target}`,
  path: from,
  text: importing(target),
  rule: `${half}-${layer}-imports-only-to-the-left`,
});

const violations: readonly Planted[] = [
  rightward('sim/correlation.ts', './fluids/water.ts', 'foundations'),
  rightward('sim/fluids/looks-right.ts', '../transfer/film.ts', 'fluids-and-library'),
  rightward('sim/library/looks-right.ts', '../still/pot.ts', 'fluids-and-library'),
  rightward('sim/geometry/looks-right.ts', '../fluids/water.ts', 'foundations'),
  rightward('sim/transfer/looks-right.ts', '../still/pot.ts', 'transfer'),
  rightward('sim/scenario/looks-right.ts', '../still/pot.ts', 'scenario'),
  rightward('sim/still/looks-right.ts', '../run/step.ts', 'still'),
  rightward('sim/run/looks-right.ts', '../answers/size.ts', 'run'),
  rightward('sim/answers/looks-right.ts', '../explain/heat.ts', 'answers-and-products'),
  rightward('sim/explain/looks-right.ts', '../messages/events.ts', 'explain-and-reference'),
  rightward('sim/messages/looks-right.ts', '../cli/options.ts', 'messages'),
  rightward('src/state/looks-right.ts', '../ui/Field.ts', 'state-and-workers', 'src'),
  rightward('src/workers/looks-right.ts', '../pages/size.ts', 'state-and-workers', 'src'),
  rightward('src/ui/looks-right.ts', '../charts/plot.ts', 'ui', 'src'),
  rightward('src/charts/looks-right.ts', '../pages/size.ts', 'charts-and-drawing', 'src'),
  rightward('src/drawing/looks-right.ts', '../app/shell.ts', 'charts-and-drawing', 'src'),
  rightward('src/pages/looks-right.ts', '../app/shell.ts', 'pages', 'src'),
  {
    what: 'a part of the interface beside the layers',
    path: 'src/panels/odd.ts',
    text: importing('../../sim/index.ts'),
    rule: 'no-src-file-outside-layers',
  },
  {
    what: 'physics that converts units',
    path: 'sim/run/litres.ts',
    text: importing('../units/mathjs.ts'),
    rule: 'physics-knows-only-si',
  },
  {
    what: 'units with another package',
    path: 'sim/units/katex.ts',
    text: importing('katex'),
    rule: 'units-read-and-print-with-two-packages',
  },
  {
    what: 'a layer importing a type from a later one',
    path: 'sim/transfer/looks-right-at-a-type.ts',
    text: "import type { Pot } from '../still/pot.ts';\nexport const depth = (pot: Pot): number => pot.depth;",
    rule: 'sim-transfer-imports-only-to-the-left',
  },
  {
    what: 'two files that import each other',
    path: 'sim/still/egg.ts',
    text: importing('./hen.ts'),
    rule: 'no-cycles',
  },
  {
    what: 'two files that import types from each other',
    path: 'src/pages/egg.ts',
    text: "import type { Hen } from './hen.ts';\nexport interface Egg { readonly layer?: Hen }",
    rule: 'no-cycles',
  },
  {
    what: 'the model importing the interface',
    path: 'sim/run/interface.ts',
    text: importing('../../src/ui/Field.ts'),
    rule: 'sim-is-self-contained',
  },
  {
    what: 'the model importing another package',
    path: 'sim/run/solid.ts',
    text: importing('solid-js'),
    rule: 'sim-has-one-package',
  },
  {
    what: 'the model importing Node',
    path: 'sim/run/files.ts',
    text: importing('node:fs'),
    rule: 'sim-has-one-package',
  },
  {
    what: 'messages importing another package',
    path: 'sim/messages/katex.ts',
    text: importing('katex'),
    rule: 'messages-write-with-one-package',
  },
  {
    what: 'a second writer of tables',
    path: 'src/pages/table.ts',
    text: importing('d3-dsv'),
    rule: 'one-writer-of-tables',
  },
  {
    what: 'the command line importing another package',
    path: 'sim/cli/katex.ts',
    text: importing('katex'),
    rule: 'command-line-has-no-other-packages',
  },
  {
    what: 'a file of the model beside the layers',
    path: 'sim/elsewhere/odd.ts',
    text: importing('../constants.ts'),
    rule: 'no-sim-file-outside-layers',
  },
  {
    what: 'the use of a file beside the layers',
    path: 'sim/run/odd.ts',
    text: importing('../odd-constants.ts'),
    rule: 'nothing-uses-a-sim-file-outside-layers',
  },
  {
    what: 'the interface entering the model by the back door',
    path: 'src/pages/back-door.ts',
    text: importing('../../sim/fluids/water.ts'),
    rule: 'src-enters-sim-by-the-front-door',
  },
  {
    what: 'the interface taking the texts along',
    path: 'src/pages/texts-at-once.ts',
    text: importing('../../sim/library-texts.ts'),
    rule: 'texts-are-fetched-late',
  },
  {
    what: 'the model taking the texts along',
    path: 'sim/scenario/texts.ts',
    text: importing('../library/botanical-texts.ts'),
    rule: 'texts-have-a-door-of-their-own',
  },
  {
    what: 'mathjs in a panel, even on demand',
    path: 'src/pages/mathjs.ts',
    text: "export const load = () => import('mathjs');",
    rule: 'mathjs-only-where-expressions-are-read',
  },
  {
    what: 'd3 that draws, even on demand',
    path: 'src/charts/axis.ts',
    text: "export const load = () => import('d3-axis');",
    rule: 'd3-computes-solid-renders',
  },
  {
    what: 'a package that package.json does not list',
    path: 'src/charts/path.ts',
    text: importing('d3-path'),
    rule: 'no-unlisted-packages',
  },
  {
    what: 'a package for development',
    path: 'src/app/development.ts',
    text: importing('fast-check'),
    rule: 'no-unlisted-packages',
  },
  {
    what: 'production importing a test',
    path: 'src/app/tested.ts',
    text: importing('../../tests/sim/sample.ts'),
    rule: 'production-knows-no-tests',
  },
  {
    what: 'an import that leads nowhere',
    path: 'src/app/nowhere.ts',
    text: importing('./not-there.ts'),
    rule: 'every-import-resolves',
  },
  {
    what: 'a file that nothing uses',
    path: 'src/app/left-over.ts',
    text: 'export const leftOver = 1;',
    rule: 'no-orphans',
  },
];

const innocent: Readonly<Record<string, string>> = {
  'sim/constants.ts': 'export const gravity = 9.80665;',
  'sim/odd-constants.ts': 'export const odd = 3;',
  'sim/fluids/water.ts': importing('../constants.ts', '../library/rows.ts'),
  'sim/library/rows.ts': importing('../constants.ts'),
  'sim/library/botanical-texts.ts': importing('./rows.ts'),
  'sim/library-texts.ts': importing('./library/botanical-texts.ts'),
  'sim/library/mixtures.ts': importing('../fluids/water.ts'),
  'sim/transfer/film.ts': importing('../fluids/water.ts', '../library/mixtures.ts'),
  'sim/scenario/fields.ts': importing('../library/rows.ts', 'zod'),
  'sim/still/pot.ts': `${importing('../transfer/film.ts', '../scenario/fields.ts')}\nexport interface Pot { readonly depth: number }`,
  'sim/run/step.ts': importing('../still/pot.ts', 'zod'),
  'sim/answers/size.ts': importing('../run/step.ts', 'zod'),
  'sim/explain/heat.ts': importing('../answers/size.ts'),
  'sim/messages/events.ts': importing('../run/step.ts', '../explain/heat.ts', '../units/mathjs.ts'),
  'sim/index.ts': importing('./answers/size.ts', './messages/events.ts'),
  'sim/cli/options.ts': importing('../index.ts', 'node:util'),
  'sim/cli.ts': importing('./cli/options.ts', './index.ts', 'node:fs'),
  'sim/units/mathjs.ts': "export const load = () => import('mathjs');",
  'src/pages/front-door.ts': importing('../../sim/index.ts', 'solid-js', 'd3-scale'),
  'src/pages/texts-when-read.ts': "export const load = () => import('../../sim/library-texts.ts');",
  'src/state/bench.ts': importing('../../sim/index.ts'),
  'src/ui/Field.ts': importing('../state/bench.ts'),
  'src/charts/plot.ts': importing('../ui/Field.ts'),
  'src/pages/size.ts': importing('../charts/plot.ts'),
  'src/app/shell.ts': importing('../pages/size.ts', '../pages/front-door.ts'),
  'tests/sim/sample.ts': importing(
    '../../sim/fluids/water.ts',
    '../../src/pages/front-door.ts',
    'mathjs',
    'fast-check',
    'node:fs',
  ),
};

/** The other halves of cycles, which are reported once, at the first file in alphabetical order. */
const otherHalves: Readonly<Record<string, string>> = {
  'sim/still/hen.ts': importing('./egg.ts'),
  'src/pages/hen.ts': "import type { Egg } from './egg.ts';\nexport interface Hen { readonly eggs: readonly Egg[] }",
};

interface Report {
  readonly summary: {
    readonly violations: readonly { readonly from: string; readonly rule: { readonly name: string } }[];
  };
}

describe('the import rules', () => {
  let project: PlantedProject;
  let found: readonly { readonly path: string; readonly rule: string }[];

  beforeAll(() => {
    project = new PlantedProject({
      ...innocent,
      ...otherHalves,
      ...Object.fromEntries(violations.map(({ path, text }) => [path, text])),
    });
    const outcome = project.run('dependency-cruiser/bin/dependency-cruise.mjs', [
      '--config',
      '.dependency-cruiser.cjs',
      '--output-type',
      'json',
      'sim',
      'src',
      'tests',
    ]);
    const { summary } = JSON.parse(outcome.output) as Report;
    found = summary.violations.map(({ from, rule }) => ({ path: from, rule: rule.name }));
  }, 120_000);
  afterAll(() => project.remove());

  test('are broken in as many places as violations were planted', () => {
    expect(new Set(found.map(({ path }) => path))).toEqual(new Set(violations.map(({ path }) => path)));
  });

  test.each(violations)('refuse $what', ({ path, rule }) => expect(found).toContainEqual({ path, rule }));

  test.each(Object.keys(innocent))('have nothing against %s', (path) => {
    expect(found.filter((violation) => violation.path === path)).toEqual([]);
  });

  test('make the checker fail when they are broken', () => {
    const outcome = project.run('dependency-cruiser/bin/dependency-cruise.mjs', [
      '--config',
      '.dependency-cruiser.cjs',
      'sim',
      'src',
      'tests',
    ]);
    expect(outcome.exitCode).toBeGreaterThan(0);
  });
});
