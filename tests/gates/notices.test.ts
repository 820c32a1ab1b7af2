/** What the build says of the packages that it is made from. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { componentsOf, noticesOf, packagesOf } from '../../vite.notices.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const packages = packagesOf(root.replace(/\/$/u, ''));

describe('the notices of the build', () => {
  it('name every package that the app depends on, and those that they need', () => {
    const { dependencies } = JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as {
      dependencies: Record<string, string>;
    };
    const names = packages.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining([...Object.keys(dependencies), 'internmap', 'decimal.js']));
    expect(new Set(packages.map(({ name, version }) => `${name}@${version}`)).size).toBe(names.length);
  });

  it('hold the words of every licence, those of the fonts too', () => {
    for (const each of packages) {
      const said = noticesOf([each], root);
      expect(said, each.name).toMatch(/permission|licen[cs]e/iu);
      expect(said.length, `${each.name} comes without the words of its licence`).toBeGreaterThan(600);
    }
    expect(noticesOf(packages, root)).toContain('SIL OPEN FONT LICENSE');
  });

  it('are a list of components as well', () => {
    const list = JSON.parse(componentsOf(packages, root)) as { bomFormat: string; components: { purl: string }[] };
    expect(list.bomFormat).toBe('CycloneDX');
    expect(list.components).toHaveLength(packages.length);
    expect(list.components.every(({ purl }) => /^pkg:npm\/(?:%40[\w.-]+\/)?[\w.-]+@\d/u.test(purl))).toBe(true);
  });
});
