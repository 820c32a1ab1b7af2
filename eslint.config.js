import { fileURLToPath } from 'node:url';
import eslint from '@eslint/js';
import { defineConfig } from 'eslint/config';
import noOnlyTests from 'eslint-plugin-no-only-tests';
import solid from 'eslint-plugin-solid/configs/typescript';
import tseslint from 'typescript-eslint';

const here = fileURLToPath(new URL('.', import.meta.url));

const SIM_IS_PURE = 'The model is a function of its scenario: it has no clock, no chance and no surroundings.';
const clocksAndSurroundings = [
  'Date',
  'performance',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'queueMicrotask',
  'requestAnimationFrame',
  'requestIdleCallback',
  'crypto',
  'Intl',
  'globalThis',
  'window',
  'self',
  'document',
  'navigator',
  'process',
  'console',
  'fetch',
  'localStorage',
  'indexedDB',
  'Worker',
  'postMessage',
];
const noChance = { object: 'Math', property: 'random', message: 'Draw from the seeded generator instead.' };

const D3_COMPUTES = 'd3 computes, Solid renders: take scale, shape, array, format, sankey and contour singly.';
const noDrawingD3 = {
  paths: [{ name: 'd3', message: D3_COMPUTES }],
  patterns: [
    {
      group: ['d3-selection', 'd3-selection-*', 'd3-transition', 'd3-axis', 'd3-brush', 'd3-drag', 'd3-zoom'],
      message: D3_COMPUTES,
    },
  ],
};
const noMathjs = { name: 'mathjs', message: 'Only sim/units reads typed expressions; import what it offers.' };

const weakExpectations = ['toBeTruthy', 'toBeFalsy', 'toBeDefined'].map((property) => ({
  property,
  message: 'Say what the value must be.',
}));
const SKIPPED_TEST =
  'MemberExpression[object.name=/^(it|test|describe|bench)$/][property.name=/^(skip|todo|skipIf|runIf)$/]';

/** Solid calls such a child once and does not listen to what it reads; only markup goes on listening. */
const DEAF_CHILD =
  'JSXElement[openingElement.name.name=/^(Show|Match)$/] > JSXExpressionContainer > ArrowFunctionExpression[params.length>0]:not([body.type=/^(JSX|BlockStatement)/])';

/** Functions that call what they are given later, as an event handler would. */
const CALLS_LATER = ['debounce', 'throttle'];

/** The plugin ships half its rules as warnings; here a broken rule fails. */
const solidRulesAsErrors = Object.fromEntries(
  Object.entries(solid.rules).map(([name, setting]) => {
    const [severity, ...options] = Array.isArray(setting) ? setting : [setting];
    return [name, [severity === 0 || severity === 'off' ? 'off' : 'error', ...options]];
  }),
);

/** A fourth kind of condenser must not have to be found in comparisons all over. */
const condenserKindAsked = {
  selector: 'BinaryExpression[operator=/^[!=]==$/] > Literal[value=/^(coil-in-tub|jacketed-tube|bundle)$/]',
  message: 'Ask sim/geometry/condenser-kind.ts what the condenser is, instead of comparing its kind.',
};

export default defineConfig(
  { ignores: ['dist/', 'node_modules/', 'coverage/', '.cache/'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  eslint.configs.recommended,
  tseslint.configs.recommendedTypeChecked,
  {
    languageOptions: {
      parserOptions: { project: ['tests/tsconfig.json', 'tsconfig.json', 'sim/tsconfig.json'], tsconfigRootDir: here },
    },
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true, allowBoolean: true }],
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      'no-empty': ['error', { allowEmptyCatch: false }],
      'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx'], location: 'anywhere' }],
      'no-restricted-imports': ['error', noDrawingD3],
      'prefer-const': 'error',
      eqeqeq: ['error', 'always'],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', destructuredArrayIgnorePattern: '^_' }],
      // Interfaces here name plain functions in method form; none of them reads `this`.
      '@typescript-eslint/unbound-method': 'off',
    },
  },
  {
    files: ['sim/**/*.ts'],
    rules: {
      // Coefficients stand as their source prints them, even with more digits than a number can hold.
      'no-loss-of-precision': 'off',
      'no-restricted-properties': ['error', noChance, { property: 'toLocaleString', message: SIM_IS_PURE }],
      'no-restricted-syntax': [
        'error',
        {
          selector: "VariableDeclarator[id.type='Identifier'] > Identifier.init[name='Math']",
          message: 'Call Math by its name, so that chance stays visible.',
        },
        condenserKindAsked,
      ],
    },
  },
  {
    files: ['sim/**/*.ts'],
    ignores: ['sim/cli.ts', 'sim/cli/**'],
    rules: {
      'no-restricted-globals': ['error', ...clocksAndSurroundings.map((name) => ({ name, message: SIM_IS_PURE }))],
    },
  },
  {
    files: ['src/**/*.{ts,tsx}'],
    plugins: solid.plugins,
    rules: {
      ...solidRulesAsErrors,
      'solid/reactivity': ['error', { customReactiveFunctions: CALLS_LATER }],
      'no-restricted-imports': ['error', { ...noDrawingD3, paths: [...noDrawingD3.paths, noMathjs] }],
      'no-restricted-syntax': [
        'error',
        { selector: DEAF_CHILD, message: 'Words shown this way stay as they first were; put them into markup.' },
        condenserKindAsked,
      ],
    },
  },
  {
    files: ['tests/**/*.{ts,tsx,js}'],
    plugins: { 'no-only-tests': noOnlyTests },
    rules: {
      'no-only-tests/no-only-tests': 'error',
      'no-restricted-properties': ['error', ...weakExpectations],
      'no-restricted-syntax': [
        'error',
        { selector: SKIPPED_TEST, message: 'A test that does not run proves nothing; mend it or remove it.' },
      ],
    },
  },
  // In plain JavaScript the type checker finds undefined names; type-aware rules cannot see its casts.
  { files: ['**/*.{js,cjs}'], extends: [tseslint.configs.disableTypeChecked], rules: { 'no-undef': 'off' } },
);
