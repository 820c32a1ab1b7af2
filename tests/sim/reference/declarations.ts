/** What the model's files declare at their top level, and which declarations use which others, read from the source. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import ts from 'typescript';

/** Of the repository. */
export const root = resolve(import.meta.dirname, '../../..');

export interface Declaration {
  /** `sim/transfer/settling.ts#stokesVelocity`. */
  readonly key: string;
  readonly file: string;
  readonly name: string;
  readonly exported: boolean;
  /** The comment that stands directly before it, without its stars. */
  readonly comment: string;
  readonly uses: ReadonlySet<string>;
}

const filesBelow = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)));

const textOf = (comment: string): string =>
  comment
    .replace(/^\/\*\*|\*\/$/gu, '')
    .split('\n')
    .map((line) => line.replace(/^\s*\*\s?/u, '').trim())
    .join('\n')
    .trim();

/** Names that a file takes from others, each with the key of what it stands for; `*` for a whole module. */
const importsOf = (source: ts.SourceFile, file: string): Map<string, string> => {
  const imports = new Map<string, string>();
  for (const statement of source.statements) {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) continue;
    const path = statement.moduleSpecifier.text;
    const named = statement.importClause?.namedBindings;
    if (!path.startsWith('.') || named === undefined) continue;
    const target = relative(root, resolve(root, dirname(file), path));
    if (ts.isNamespaceImport(named)) imports.set(named.name.text, `${target}#*`);
    else
      for (const { name, propertyName } of named.elements)
        imports.set(name.text, `${target}#${(propertyName ?? name).text}`);
  }
  return imports;
};

const isExported = (statement: ts.Statement): boolean =>
  ts.canHaveModifiers(statement) &&
  ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) === true;

const declarationsOf = (file: string): Declaration[] => {
  const text = readFileSync(join(root, file), 'utf8');
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const imports = importsOf(source, file);
  const own = new Set<string>();
  const found: { readonly name: string; readonly statement: ts.Statement; readonly node: ts.Node }[] = [];
  for (const statement of source.statements) {
    if (ts.isVariableStatement(statement)) {
      for (const node of statement.declarationList.declarations)
        if (ts.isIdentifier(node.name)) found.push({ name: node.name.text, statement, node });
    } else if ((ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)) && statement.name)
      found.push({ name: statement.name.text, statement, node: statement });
  }
  for (const { name } of found) own.add(name);
  return found.map(({ name, statement, node }) => {
    const uses = new Set<string>();
    const visit = (child: ts.Node): void => {
      if (ts.isIdentifier(child)) {
        if (own.has(child.text) && child.text !== name) uses.add(`${file}#${child.text}`);
        const imported = imports.get(child.text);
        if (imported !== undefined) uses.add(imported);
      }
      child.forEachChild(visit);
    };
    visit(node);
    const comments = ts.getLeadingCommentRanges(text, statement.getFullStart()) ?? [];
    const last = comments.at(-1);
    return {
      key: `${file}#${name}`,
      file,
      name,
      exported: isExported(statement),
      comment: last === undefined ? '' : textOf(text.slice(last.pos, last.end)),
      uses,
    };
  });
};

export const declarationsIn = (...folders: readonly string[]): readonly Declaration[] =>
  folders.flatMap(filesBelow).flatMap(declarationsOf);

/** Keys of everything that the declarations in `from` use, directly or through others. */
export function reachedFrom(from: readonly Declaration[], all: readonly Declaration[]): ReadonlySet<string> {
  const byKey = new Map(all.map((declaration) => [declaration.key, declaration]));
  const reached = new Set<string>();
  const open = [...from];
  for (let next = open.pop(); next !== undefined; next = open.pop())
    for (const key of next.uses) {
      if (reached.has(key)) continue;
      reached.add(key);
      const used = byKey.get(key);
      if (used !== undefined) open.push(used);
    }
  return reached;
}
