/**
 * What the built app is made from: every package that it may hold, with its licence, as text for people and as a list of
 * components (CycloneDX) for programs. Made anew in each build, so that neither can be out of date.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Plugin } from 'vite';

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly author?: string | { readonly name?: string };
  readonly dependencies?: Readonly<Record<string, string>>;
}

interface Package extends Manifest {
  readonly folder: string;
}

const LICENCE_FILE = /^(?:licen[cs]e|copying|notice|ofl)(?:[.-]|$)/iu;

const manifestIn = (folder: string): Manifest =>
  JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Manifest;

/** The folder in which a package finds another, its own before the common one. */
function folderOf(name: string, from: string, root: string): string {
  for (let at = from; ; at = dirname(at)) {
    const folder = join(at, 'node_modules', name);
    if (existsSync(join(folder, 'package.json'))) return folder;
    if (at === root || at === dirname(at)) throw new Error(`${name}, which ${from} needs, is not installed`);
  }
}

/** The packages that the app depends on, and those that they do, in the order of their names. */
export function packagesOf(root: string): readonly Package[] {
  const found = new Map<string, Package>();
  const visit = (needed: Manifest['dependencies'], from: string) => {
    for (const name of Object.keys(needed ?? {})) {
      const folder = folderOf(name, from, root);
      const manifest = manifestIn(folder);
      const key = `${manifest.name}@${manifest.version}`;
      if (found.has(key)) continue;
      found.set(key, { ...manifest, folder });
      visit(manifest.dependencies, folder);
    }
  };
  visit(manifestIn(root).dependencies, root);
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}

/** What a package says of its licence; where it says no more than MIT, the words of that, which are the same for all. */
function licenceTexts({ folder, license, author }: Package, root: string): readonly string[] {
  const texts = readdirSync(folder)
    .filter((file) => LICENCE_FILE.test(file))
    .sort()
    .map((file) => readFileSync(join(folder, file), 'utf8').trim());
  if (texts.length > 0 || license !== 'MIT') return texts;
  const who = typeof author === 'string' ? author : (author?.name ?? 'its authors');
  const own = readFileSync(join(root, 'LICENSE'), 'utf8').trim();
  return [own.replace(/^Copyright.*$/mu, `Copyright (c) ${who}`)];
}

export const noticesOf = (packages: readonly Package[], root: string): string =>
  [
    'Limbeck is under the MIT licence. It is made from the packages and fonts below, each under its own.',
    ...packages.map((each) =>
      [
        '-'.repeat(80),
        `${each.name} ${each.version} (${each.license ?? 'licence below'})`,
        '',
        ...licenceTexts(each, root),
      ].join('\n'),
    ),
  ].join('\n\n') + '\n';

/** CycloneDX 1.6. */
export function componentsOf(packages: readonly Package[], root: string): string {
  const own = manifestIn(root);
  const component = ({ name, version, license }: Manifest) => ({
    name,
    version,
    purl: `pkg:npm/${name.replace('@', '%40')}@${version}`,
    ...(license === undefined
      ? {}
      : { licenses: [/\s/u.test(license) ? { expression: license } : { license: { id: license } }] }),
  });
  return `${JSON.stringify(
    {
      bomFormat: 'CycloneDX',
      specVersion: '1.6',
      version: 1,
      metadata: { component: { type: 'application', ...component(own) } },
      components: packages.map((each) => ({ type: 'library', ...component(each) })),
    },
    null,
    2,
  )}\n`;
}

export const NOTICES = 'notices.txt';
const COMPONENTS = 'components.cdx.json';

/** Puts both beside the app, and answers for them while developing. */
export const notices = (root: string): Plugin => ({
  name: 'notices',
  configureServer: (server) => {
    server.middlewares.use(`/${NOTICES}`, (_, answer) => {
      answer.setHeader('Content-Type', 'text/plain; charset=utf-8');
      answer.end(noticesOf(packagesOf(root), root));
    });
  },
  generateBundle() {
    if (this.environment.name !== 'client') return;
    const packages = packagesOf(root);
    this.emitFile({ type: 'asset', fileName: NOTICES, source: noticesOf(packages, root) });
    this.emitFile({ type: 'asset', fileName: COMPONENTS, source: componentsOf(packages, root) });
  },
});
