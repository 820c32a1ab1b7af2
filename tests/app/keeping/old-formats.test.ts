/**
 * Every version of every format that is kept on a device or saved as a file opens, from a file of that version. A format
 * whose version is raised needs the file of its new version beside those of the old ones.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { OWN_LESSON_VERSION, OWN_PLANTS_VERSION, readOwnLesson, readOwnPlants } from '../../../sim/index.ts';
import { draftShape } from '../../../src/pages/lessons/own/draft.ts';
import { blendShape } from '../../../src/state/blend-store.ts';
import { bottlingShape } from '../../../src/state/bottling-store.ts';
import { comparedShape } from '../../../src/state/comparison-store.ts';
import { gatheredShape } from '../../../src/state/gathered-store.ts';
import { homeTestsShape } from '../../../src/state/home-test-store.ts';
import { benchShape } from '../../../src/state/kept-bench.ts';
import type { Shape } from '../../../src/state/kept-shape.ts';
import { stillShape } from '../../../src/state/kept-still.ts';
import {
  logShape,
  NO_LOGS,
  readLogbook,
  stillShape as fittedStillShape,
  writtenLogbook,
} from '../../../src/state/logbook-schema.ts';
import { ownPlantsShape } from '../../../src/state/own-plants-store.ts';
import { priceListShape } from '../../../src/state/price-list.ts';
import { quantityShape } from '../../../src/state/quantity-store.ts';
import { versionShape } from '../../../src/state/shelf.ts';
import { stillRunShape } from '../../../src/state/still-run.ts';

const FILES = join(import.meta.dirname, 'old-formats');

/** What is kept on a device, by how its files are called. */
const SHAPES: Readonly<Record<string, Shape<unknown>>> = {
  bench: benchShape,
  still: stillShape,
  version: versionShape,
  compared: comparedShape,
  log: logShape,
  'fitted-still': fittedStillShape,
  'tube-prices': priceListShape,
  quantity: quantityShape,
  bottling: bottlingShape,
  blend: blendShape,
  'home-tests': homeTestsShape,
  gathered: gatheredShape,
  'own-plants': ownPlantsShape,
  'lesson-draft': draftShape,
  'still-run': stillRunShape,
};

/** Formats of files, each with the version that it is written in now. */
const READERS: Readonly<Record<string, readonly [version: number, read: (value: unknown) => unknown]>> = {
  'run-book-file': [Number(writtenLogbook(NO_LOGS)['version']), readLogbook],
  'own-plants-file': [OWN_PLANTS_VERSION, readOwnPlants],
  'lesson-file': [OWN_LESSON_VERSION, readOwnLesson],
};

const ALL = [
  ...Object.entries(SHAPES).map(
    ([name, { version, read }]) => [name, version, (value: unknown, of: number) => read(value, of)] as const,
  ),
  ...Object.entries(READERS).map(([name, [version, read]]) => [name, version, read] as const),
].flatMap(([name, version, read]) =>
  Array.from({ length: version }, (_, before) => ({
    name,
    version: before + 1,
    read: (value: unknown) => read(value, before + 1),
  })),
);

interface Kept {
  readonly value: unknown;
  /** What must be read of it. */
  readonly reads: object;
}

describe('what was kept or saved', () => {
  test.each(ALL)('as $name of version $version opens', ({ name, version, read }) => {
    const kept = JSON.parse(readFileSync(join(FILES, `${name}-${String(version)}.json`), 'utf8')) as Kept;
    expect(read(kept.value)).toMatchObject(kept.reads);
  });

  test('has no file that nothing reads', () => {
    const known = ALL.map(({ name, version }) => `${name}-${String(version)}.json`);
    expect(readdirSync(FILES).sort()).toEqual(known.sort());
  });
});
