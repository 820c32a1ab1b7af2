import { beforeEach, describe, expect, it } from 'vitest';
import { readLogbook, writtenLogbook, type LoggedRun, type Logbook } from '../../../src/state/logbook-schema.ts';
import { LARGEST_BOOK_BYTES, photosIn, writtenWithPhotos } from '../../../src/state/photo-file.ts';
import { createPhotoStore, photoId, PHOTO_PROBLEMS, type PhotoStore } from '../../../src/state/photos.ts';
import { memoryDatabase, type MemoryDatabase } from './memory-database.ts';

const DAY_MS = 86_400_000;
const jpeg = (...rest: readonly number[]) =>
  new Blob([Uint8Array.of(0xff, 0xd8, 0xff, ...rest)], { type: 'image/jpeg' });
const bytesOf = async (blob: Blob | null) => (blob ? [...new Uint8Array(await blob.arrayBuffer())] : null);

let database: MemoryDatabase;
let store: PhotoStore;
let now_ms = 0;

/** As the second version wrote it. */
const LOG_2 = {
  id: 'a',
  name: 'First of June',
  notes: '',
  scenario: null,
  units: { oil: 'mL', temperature: '°C', distillate: 'L' },
  rows: [],
  draft: '',
  factors: [],
  zero: 'heat-on',
  zeroAt: '',
  facts: {},
};
const bookOf = (log: object): Logbook => {
  const book = readLogbook({ kind: 'limbeck-run-book', version: 2, logs: [log], stills: [], unread: [] });
  if (!book || book.logs.length === 0) throw new Error('no book');
  return book;
};
const naming = (...ids: readonly string[]): readonly LoggedRun[] =>
  bookOf({ ...LOG_2, photos: ids.map((id) => ({ id, at_s: 60, words: '' })) }).logs;
const asFile = (json: unknown): unknown => JSON.parse(JSON.stringify(json));

beforeEach(() => {
  database = memoryDatabase();
  now_ms = 0;
  store = createPhotoStore(database, () => now_ms);
});

describe('photos on this device', () => {
  it('are kept once, however often they are taken, and found by what is in them', async () => {
    const [one, again, other] = await store.keep([jpeg(1), jpeg(1), jpeg(2)]);
    expect(again).toBe(one);
    expect(other).not.toBe(one);
    expect([...database.entries.keys()].sort()).toEqual([`photo/${one}`, `photo/${other}`].sort());
    expect(await bytesOf(await store.photo(one ?? ''))).toEqual([0xff, 0xd8, 0xff, 1]);
    expect(await store.photo('none')).toBeNull();
  });

  it('say so where the storage is full', async () => {
    database.refuses = true;
    await expect(store.keep([jpeg(1)])).rejects.toThrow(PHOTO_PROBLEMS.full);
  });

  it('are deleted a day after nothing names them any more, not before', async () => {
    const [named = '', left = ''] = await store.keep([jpeg(1), jpeg(2)]);
    const tidy = () => store.tidy((id) => id === named);
    await tidy();
    now_ms = DAY_MS - 1;
    await tidy();
    expect(await store.photo(left)).not.toBeNull();
    now_ms = DAY_MS + 1;
    await tidy();
    expect(await store.photo(left)).toBeNull();
    expect(await store.photo(named)).not.toBeNull();
  });

  it('that are named again in time are kept', async () => {
    const [id = ''] = await store.keep([jpeg(1)]);
    await store.tidy(() => false);
    await store.tidy(() => true);
    now_ms = 2 * DAY_MS;
    await store.tidy(() => false);
    expect(await store.photo(id)).not.toBeNull();
  });
});

describe('the photos of a run book', () => {
  it('are none in a book of the second version', () => {
    expect(bookOf(LOG_2).logs[0]?.photos).toEqual([]);
    expect(writtenLogbook(bookOf(LOG_2))).toMatchObject({ version: 3 });
  });

  it('go into its file and come out of it again on another device', async () => {
    const [id = ''] = await store.keep([jpeg(1, 2, 3), jpeg(9)]);
    const book = { ...bookOf(LOG_2), logs: naming(id) };
    const { json, leftOut } = await writtenWithPhotos(book, store);
    expect(leftOut).toBe(0);
    const file = asFile(json);
    const read = readLogbook(file);
    expect(read?.logs[0]?.photos).toEqual([{ id, at_s: 60, words: '' }]);
    const { photos, damaged } = await photosIn(file, read?.logs ?? []);
    expect([photos.length, damaged]).toEqual([1, 0]);
    expect(await bytesOf(photos[0] ?? null)).toEqual([0xff, 0xd8, 0xff, 1, 2, 3]);
    const other = createPhotoStore(memoryDatabase(), () => 0);
    expect(await other.keep(photos)).toEqual([id]);
  });

  it('that are damaged, or not what their log names, are counted and left out', async () => {
    const id = await photoId(jpeg(1));
    const good = Buffer.from(await jpeg(1).arrayBuffer()).toString('base64');
    const bad = [
      { id, jpeg: Buffer.from('<svg onload="x"/>').toString('base64') },
      { id, jpeg: Buffer.from(await jpeg(2).arrayBuffer()).toString('base64') },
      { id, jpeg: '%%%' },
      { id: 5 },
      null,
    ];
    const { photos, damaged } = await photosIn({ photos: [...bad, { id, jpeg: good }] }, naming(id));
    expect([photos.length, damaged]).toEqual([1, bad.length]);
    expect(await photosIn({ photos: [{ id, jpeg: good }] }, naming('another'))).toEqual({ photos: [], damaged: 0 });
    expect(await photosIn({ photos: 'many' }, [])).toEqual({ photos: [], damaged: 0 });
  });

  it('stay out of a file that would be too large to be opened', async () => {
    const large: PhotoStore = {
      ...store,
      photo: () => Promise.resolve(new Blob([new Uint8Array(LARGEST_BOOK_BYTES)])),
    };
    const { json, leftOut } = await writtenWithPhotos({ ...bookOf(LOG_2), logs: naming('one', 'two') }, large);
    expect(leftOut).toBe(2);
    expect(json).not.toHaveProperty('photos');
    expect(readLogbook(asFile(json))?.logs[0]?.photos).toHaveLength(2);
  });
});
