/**
 * Leaves out of the worker that runs the model what nobody reads there: where a number comes from and what a field is.
 * A run gives facts and figures; the page has the words, in files of its own. It is a seventh of the first load.
 */
import { relative } from 'node:path';
import type { ESTree, Plugin } from 'vite';

/** Members of the rows of `sim` that hold words for readers, and what a substance is looked up by. */
const MEMBERS: ReadonlySet<string> = new Set([
  'source',
  'note',
  'why',
  'says',
  'description',
  'family',
  'formula',
  'cas',
]);
/** From which place on the arguments of a builder of rows and fields are such words. */
const ARGUMENTS: Readonly<Record<string, number>> = { sourced: 2, origin: 1, surface: 1, factor: 1 };
/** Members whose very value is words, in a `sourced` of its own. */
const SPOKEN: ReadonlySet<string> = new Set(['latinName', 'part', 'usualState']);
/** Rows of data and fields of a scenario; the equations are nobody's to shorten. */
const DATA = /^sim\/(?:fluids\/constituents|library|scenario)\//u;

const isNode = (value: unknown): value is ESTree.Node =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string';

const isWords = (node: ESTree.Node): boolean =>
  (node.type === 'Literal' && typeof node.value === 'string') || node.type === 'TemplateLiteral';

/** Where the words begin and end that are not read. */
function unreadIn(node: ESTree.Node, found: [number, number][] = []): [number, number][] {
  const leave = (words: ESTree.Node | undefined) => {
    if (words && isWords(words)) found.push([words.start, words.end]);
  };
  if (node.type === 'Property' && node.key.type === 'Identifier') {
    if (MEMBERS.has(node.key.name)) leave(node.value);
    if (SPOKEN.has(node.key.name) && node.value.type === 'CallExpression') leave(node.value.arguments[0]);
  }
  if (node.type === 'CallExpression' && node.callee.type === 'Identifier' && node.callee.name in ARGUMENTS)
    node.arguments.slice(ARGUMENTS[node.callee.name]).forEach(leave);
  for (const value of Object.values(node)) {
    if (Array.isArray(value)) value.filter(isNode).forEach((part) => unreadIn(part, found));
    else if (isNode(value)) unreadIn(value, found);
  }
  return found;
}

/** The same script with the words that nobody reads left empty. */
export const withoutUnread = (code: string, program: ESTree.Program): string =>
  unreadIn(program)
    .sort(([a], [b]) => b - a)
    .reduce((shorter, [start, end]) => `${shorter.slice(0, start)}''${shorter.slice(end)}`, code);

export function unreadWords(root: string, worker: string): Plugin {
  let isHere = false;
  return {
    name: 'unread-words',
    apply: 'build',
    enforce: 'post',
    buildStart({ input }) {
      isHere = JSON.stringify(input).includes(worker);
    },
    transform(code, id) {
      if (!isHere || !DATA.test(relative(root, id))) return null;
      return { code: withoutUnread(code, this.parse(code)), map: null };
    },
  };
}
