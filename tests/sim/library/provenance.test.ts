import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { botanicalTexts } from '../../../sim/library/botanical-texts.ts';
import {
  botanicals,
  circuits,
  heatSources,
  materials,
  publishedCurves,
  publishedRates,
  separators,
  tubes,
  tubs,
  vessels,
} from '../../../sim/library/index.ts';

const kinds = [
  'read',
  'seen',
  'published',
  'secondary',
  'computed',
  'derived',
  'fitted',
  'memory',
  'common-practice',
  'estimated',
  'assumption',
];
const collections = {
  botanicals,
  botanicalTexts: Object.values(botanicalTexts),
  circuits,
  heatSources,
  materials,
  publishedCurves,
  separators,
  tubes,
  tubs,
  vessels,
  publishedRates: Object.values(publishedRates),
};

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isProvenance = (value: unknown): value is { kind: string; source: string; note?: string } =>
  isRecord(value) && typeof value['source'] === 'string';

/** Every provenance inside a value, with where it stands. */
const provenancesIn = (value: unknown, path: string): [string, { kind: string; source: string; note?: string }][] => {
  if (Array.isArray(value)) return value.flatMap((entry, index) => provenancesIn(entry, `${path}[${index}]`));
  if (!isRecord(value)) return [];
  const here: [string, { kind: string; source: string; note?: string }][] = isProvenance(value) ? [[path, value]] : [];
  return [...here, ...Object.entries(value).flatMap(([key, entry]) => provenancesIn(entry, `${path}.${key}`))];
};

/** Names of the row, its shape and its links need no source of their own. */
const NEEDS_NO_SOURCE = new Set([
  'id',
  'name',
  'kind',
  'material',
  'standard',
  'designation',
  'temper',
  'suits',
  'carrier',
  'open',
  'coilable',
  'compositionNotes',
  'curves',
  'note',
  'plant',
  'how',
  'unit',
  'law',
  'state',
  'packing',
  'layout',
  'cut',
  'constituent',
  'ester',
  'alcohol',
]);

/** Paths of numbers that neither carry a provenance nor stand in a row that does. */
const unsourced = (value: unknown, path: string, covered: boolean): string[] => {
  if (typeof value === 'number') return covered ? [] : [path];
  if (Array.isArray(value)) return value.flatMap((entry, index) => unsourced(entry, `${path}[${index}]`, covered));
  if (!isRecord(value)) return [];
  const now = covered || isProvenance(value) || isProvenance(value['provenance']);
  return Object.entries(value).flatMap(([key, entry]) =>
    NEEDS_NO_SOURCE.has(key) ? [] : unsourced(entry, `${path}.${key}`, now),
  );
};

describe.each(Object.entries(collections))('provenance of %s', (name, rows) => {
  const found = provenancesIn(rows, name);

  it('stands on every row', () => {
    rows.forEach((row, index) => expect(provenancesIn(row, String(index)).length).toBeGreaterThan(0));
  });

  it('covers every number', () => {
    expect(unsourced(rows, name, false)).toEqual([]);
  });

  it('has a known kind and says something', () => {
    for (const [path, { kind, source, note }] of found) {
      expect(kinds, path).toContain(kind);
      expect(source.trim().length, path).toBeGreaterThan(2);
      if (note !== undefined) expect(note.trim().length, path).toBeGreaterThan(0);
    }
  });

  it('points to no shop or site', () => {
    for (const [path, { source, note }] of found)
      expect(`${source} ${note ?? ''}`, path).not.toMatch(/https?:|www\.|\.(com|net|ru|cn|it|info|life)\b/);
  });
});

it('would notice a bare number', () => {
  expect(
    unsourced([{ id: 'x', bore_m: 1, wall_m: { value: 2, kind: 'seen', source: 'a table' } }], 'rows', false),
  ).toEqual(['rows[0].bore_m']);
});

it('keeps the rows under 60 kB when packed', () => {
  expect(gzipSync(JSON.stringify(collections)).length).toBeLessThan(60_000);
});
