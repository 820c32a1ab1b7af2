/** Results are facts: no sentence is made in the engine and the answers; what reads like one is metadata or data. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Scenarios to start from, and where limits come from: read as data, never said of a run. */
const DATA = ['sim/run/examples.ts', 'sim/run/limit-sources.ts'];

/** Three words one after another, each set off by a blank: `condensing-length` and `kg_s` are none. */
const SENTENCE = /(?:[A-Za-z’'-]{2,} ){2,}[A-Za-z]/u;

const isText = (node: ts.Node): node is ts.StringLiteralLike | ts.TemplateExpression =>
  ts.isStringLiteralLike(node) || ts.isTemplateExpression(node);

/** Calls and shared constants in which a relation states itself for the reference. */
const STATES_A_RELATION = new Set(['correlation', 'forReaders', 'alternative', 'withProperties']);
const SHARED_BY_RELATIONS = new Set(['source', 'outside']);

/** A programmer's error, and what a relation states of itself, are said of no run. */
const isPassedOver = (node: ts.Node): boolean =>
  ts.isThrowStatement(node) ||
  ts.isImportDeclaration(node) ||
  (ts.isCallExpression(node) && STATES_A_RELATION.has(node.expression.getText())) ||
  (ts.isVariableDeclaration(node) &&
    (node.type?.getText() === 'Argument' || SHARED_BY_RELATIONS.has(node.name.getText())));

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

const files = ['sim/run', 'sim/still', 'sim/answers'].flatMap((folder) =>
  readdirSync(`${root}/${folder}`, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${folder}/${name}`),
);

describe('the engine and the answers', () => {
  it('are found', () => {
    expect(files.length).toBeGreaterThan(40);
    for (const file of DATA) expect(files).toContain(file);
  });

  it.each(files.filter((file) => !DATA.includes(file)))('%s makes no sentence', (file) => {
    expect(sentencesIn(readFileSync(`${root}/${file}`, 'utf8'))).toEqual([]);
  });

  it.each([
    ['a string', `const advice = 'Turn the heat down now.';`],
    ['a template', 'const told = `The pot is dry at ${time_s} s.`;'],
    ['a text within a fact', `events.push({ kind: 'pot-dry', words: 'The pot ran dry' });`],
  ])('would be caught at %s', (_, planted) => {
    expect(sentencesIn(planted)).toHaveLength(1);
  });

  it.each([
    ['a kind', `const kind = 'vapour-escapes';`],
    ['a name of a value', `const key = 'condensingLength_m';`],
    ["a programmer's error", `if (!found) throw new RangeError('this id is not known');`],
  ])('would not be blamed for %s', (_, allowed) => {
    expect(sentencesIn(allowed)).toEqual([]);
  });
});
