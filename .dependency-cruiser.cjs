// Who may know whom. `npm run check` fails on any arrow that points the wrong way; each rule says why.

/** sim/ from left to right: a layer imports only from its own and from earlier ones. */
const layers = [
  { name: 'foundations', path: '^sim/((constants|correlation)[.]ts$|maths/|geometry/|units/)' },
  { name: 'fluids-and-library', path: '^sim/(fluids|library)/' },
  { name: 'transfer', path: '^sim/transfer/' },
  { name: 'scenario', path: '^sim/scenario/' },
  { name: 'still', path: '^sim/still/' },
  { name: 'run', path: '^sim/run/' },
  { name: 'answers-and-products', path: '^sim/(answers|products)/' },
  { name: 'explain-and-reference', path: '^sim/(explain|reference)/' },
  { name: 'messages', path: '^sim/messages/' },
  { name: 'index', path: '^sim/(index|library-texts)[.]ts$' },
  { name: 'command-line', path: '^sim/cli([.]ts$|/)' },
];
const layerPaths = layers.map(({ path }) => path);
const commandLine = layerPaths.at(-1);
const logTable = '^sim/answers/calibration/log-table[.]ts$';
/** Puts the command line together with the builder of the app, and is no part of it. */
const starter = '^sim/cli/start[.]js$';

/** src/ from left to right, by the same law. */
const interfaceLayers = [
  { name: 'state-and-workers', path: '^src/(state|workers)/' },
  { name: 'ui', path: '^src/ui/' },
  { name: 'charts-and-drawing', path: '^src/(charts|drawing)/' },
  { name: 'pages', path: '^src/pages/' },
  { name: 'app', path: '^src/(app/|main[.]tsx$)' },
];
const interfacePaths = [...interfaceLayers.map(({ path }) => path), '^src/styles/'];

const importsOnlyToTheLeft = (half, inOrder) =>
  inOrder
    .slice(0, -1)
    .map(({ name, path }, index) => ({
      name: `${half}-${name}-imports-only-to-the-left`,
      severity: 'error',
      comment:
        'A layer knows only what stands left of it; one that knows more can no longer be tested or replaced alone.',
      from: { path },
      to: { path: inOrder.slice(index + 1).map((layer) => layer.path) },
    }));

/** What is written for a reader, where numbers leave SI. */
const writtenForReaders = '^sim/(units/|messages/|explain/|reference/|index[.]ts$|cli([.]ts$|/))';

/** What no run needs and a view fetches when it is read. */
const texts = '^sim/library-texts[.]ts$';

const packagesOf = (...names) => `(^|/)node_modules/(${names.join('|')})/`;

module.exports = {
  forbidden: [
    ...importsOnlyToTheLeft('sim', layers),
    ...importsOnlyToTheLeft('src', interfaceLayers),
    {
      name: 'no-src-file-outside-layers',
      severity: 'error',
      comment: 'A file beside the layers escapes their rule; put it into one.',
      from: { path: '^src/', pathNot: interfacePaths },
      to: {},
    },
    {
      name: 'physics-knows-only-si',
      severity: 'error',
      comment: 'Numbers convert once, where they are written for a reader.',
      from: { path: '^sim/', pathNot: writtenForReaders },
      to: { path: '^sim/units/' },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      comment: 'Two files that need each other are one idea cut in the wrong place.',
      from: {},
      to: { circular: true },
    },
    {
      name: 'every-import-resolves',
      severity: 'error',
      comment: 'An import that cannot be followed cannot be checked.',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'no-unlisted-packages',
      severity: 'error',
      comment: 'A package that package.json does not name is there by luck.',
      from: { path: '^(src|sim)/', pathNot: starter },
      to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown', 'npm-dev'], dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'sim-is-self-contained',
      severity: 'error',
      comment: 'The model runs in a worker, in Node and in a test alike, so it imports nothing of the interface.',
      from: { path: '^sim/' },
      to: { path: '^(src|tests|public)/' },
    },
    {
      name: 'sim-has-one-package',
      severity: 'error',
      comment:
        'The library of the schema is all the model needs; tables are parted by one more, Node only at the command line.',
      from: { path: '^sim/', pathNot: [commandLine, '^sim/(units|messages)/', logTable] },
      to: { dependencyTypes: ['npm', 'npm-dev', 'npm-no-pkg', 'npm-unknown', 'core'], pathNot: packagesOf('zod') },
    },
    {
      name: 'units-read-and-print-with-two-packages',
      severity: 'error',
      comment: 'One package knows the units that people type, one prints numbers.',
      from: { path: '^sim/units/' },
      to: {
        dependencyTypes: ['npm', 'npm-dev', 'npm-no-pkg', 'npm-unknown', 'core'],
        pathNot: packagesOf('mathjs', 'd3-format'),
      },
    },
    {
      name: 'messages-write-with-one-package',
      severity: 'error',
      comment: 'Sentences need none; one package quotes the cells of a table.',
      from: { path: '^sim/messages/' },
      to: { dependencyTypes: ['npm', 'npm-dev', 'npm-no-pkg', 'npm-unknown', 'core'], pathNot: packagesOf('d3-dsv') },
    },
    {
      name: 'one-writer-of-tables',
      severity: 'error',
      comment: 'Files that people open in a spreadsheet are quoted and ended in one way, and read in one.',
      from: { path: '^(src|sim)/', pathNot: ['^sim/messages/csv[.]ts$', logTable] },
      to: { path: packagesOf('d3-dsv') },
    },
    {
      name: 'command-line-has-no-other-packages',
      severity: 'error',
      comment: 'The command line is the model with Node around it, nothing more.',
      from: { path: commandLine, pathNot: starter },
      to: { dependencyTypes: ['npm', 'npm-dev', 'npm-no-pkg', 'npm-unknown'], pathNot: packagesOf('zod') },
    },
    {
      name: 'nothing-uses-a-sim-file-outside-layers',
      severity: 'error',
      comment: 'A file beside the layers escapes their rule; put it into one.',
      from: {},
      to: { path: '^sim/', pathNot: layerPaths },
    },
    {
      name: 'no-sim-file-outside-layers',
      severity: 'error',
      comment: 'A file beside the layers escapes their rule; put it into one.',
      from: { path: '^sim/', pathNot: layerPaths },
      to: {},
    },
    {
      name: 'src-enters-sim-by-the-front-door',
      severity: 'error',
      comment:
        'sim/index.ts is the public face, with sim/library-texts.ts beside it; what they do not offer may change without notice.',
      from: { path: '^src/' },
      to: { path: '^sim/', pathNot: ['^sim/index[.]ts$', texts] },
    },
    {
      name: 'texts-are-fetched-late',
      severity: 'error',
      comment: 'Texts that no run needs must stay out of the first load, so the interface asks for them by import().',
      from: { path: '^src/' },
      to: { path: texts, dynamic: false, dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'texts-have-a-door-of-their-own',
      severity: 'error',
      comment: 'What the model imports goes into its worker, which is part of the first load.',
      from: { path: '^sim/', pathNot: [texts, '^sim/library/botanical-texts[.]ts$'] },
      to: { path: '^sim/library/botanical-texts([.]ts$|/)' },
    },
    {
      name: 'd3-computes-solid-renders',
      severity: 'error',
      comment: 'Two owners of one element fight; take only the d3 modules that compute.',
      from: {},
      to: { path: '(^|/)d3(-selection|-selection-multi|-transition|-axis|-brush|-drag|-zoom)?(/|$)' },
    },
    {
      name: 'mathjs-only-where-expressions-are-read',
      severity: 'error',
      comment: 'It is large and must stay out of the first load.',
      from: { path: '^(src|sim)/', pathNot: '^sim/units/' },
      to: { path: packagesOf('mathjs') },
    },
    {
      name: 'production-knows-no-tests',
      severity: 'error',
      comment: 'What ships must build without the tests.',
      from: { path: '^(src|sim)/' },
      to: { path: '^tests/' },
    },
    {
      name: 'no-orphans',
      severity: 'error',
      comment:
        'A file that nothing uses and that uses nothing is left over; the offline worker is asked for by vite.config.ts.',
      from: { orphan: true, path: '^(src|sim)/', pathNot: '[.]d[.]ts$|^src/workers/offline/offline-worker[.]ts$' },
      to: {},
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'browser', 'types', 'default'] },
  },
};
