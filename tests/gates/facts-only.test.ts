/** Results are facts: no sentence is made where they come from; what reads like one is metadata or data. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Scenarios to start from, and where limits and own plants' figures come from: read as data, never said of a run. */
const DATA = [
  'sim/run/examples.ts',
  'sim/run/opening-example.ts',
  'sim/run/limit-sources.ts',
  'sim/scenario/own-botanical.ts',
];

/** Three words one after another, each set off by a blank: `condensing-length` and `kg_s` are none. */
const SENTENCE = /(?:[A-Za-z’'-]{2,} ){2,}[A-Za-z]/u;

const isText = (node: ts.Node): node is ts.StringLiteralLike | ts.TemplateExpression =>
  ts.isStringLiteralLike(node) || ts.isTemplateExpression(node);

/** Calls and shared constants in which a relation states itself for the reference, and a field for forms and schema. */
const STATES_ITSELF = new Set([
  ...['correlation', 'forReaders', 'alternative', 'withProperties'],
  ...['quantity', 'count', 'optionalQuantity', 'choice', 'text', 'schedule', 'meta', 'part'],
  ...['factor', 'byGroup', 'materialOf', 'amount', 'words', 'range'],
]);
const SHARED_SOURCES = new Set(['source', 'outside', 'botanical']);

/** A programmer's error, and what a relation or a field states of itself, are said of no run. */
const isPassedOver = (node: ts.Node): boolean =>
  ts.isThrowStatement(node) ||
  ts.isImportDeclaration(node) ||
  (ts.isCallExpression(node) && STATES_ITSELF.has(node.expression.getText().replace(/^z\./u, ''))) ||
  (ts.isVariableDeclaration(node) && (node.type?.getText() === 'Argument' || SHARED_SOURCES.has(node.name.getText())));

function sentencesIn(source: string): readonly string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (isPassedOver(node)) return;
    if (isText(node) && SENTENCE.test(node.getText())) found.push(node.getText());
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('any.ts', source, ts.ScriptTarget.Latest, true));
  return found;
}

const files = ['sim/units', 'sim/scenario', 'sim/still', 'sim/run', 'sim/answers', 'sim/products'].flatMap((folder) =>
  readdirSync(`${root}/${folder}`, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${folder}/${name}`),
);

describe('the units, the scenario, the engine and the answers', () => {
  it('are found', () => {
    expect(files.length).toBeGreaterThan(80);
    for (const file of DATA) expect(files).toContain(file);
  });

  it.each(files.filter((file) => !DATA.includes(file)))('%s makes no sentence', (file) => {
    expect(sentencesIn(readFileSync(`${root}/${file}`, 'utf8'))).toEqual([]);
  });

  it.each([
    ['a string', `const advice = 'Turn the heat down now.';`],
    ['a template', 'const told = `The pot is dry at ${time_s} s.`;'],
    ['a refusal', 'return { ok: false, because: `“${text}” has no unit that fits` };'],
    ['a word beside a field', `const told = count(words) ?? 'only whole numbers count';`],
    ['a text within a fact', `events.push({ kind: 'pot-dry', words: 'The pot ran dry' });`],
  ])('would be caught at %s', (_, planted) => {
    expect(sentencesIn(planted)).toHaveLength(1);
  });

  it.each([
    ['a kind', `const kind = 'vapour-escapes';`],
    ['a field that states itself', `const step = quantity({ title: 'Time step', says: 'Step of the model.' });`],
    ['a name of a value', `const key = 'condensingLength_m';`],
    ["a programmer's error", `if (!found) throw new RangeError('this id is not known');`],
  ])('would not be blamed for %s', (_, allowed) => {
    expect(sentencesIn(allowed)).toEqual([]);
  });
});
