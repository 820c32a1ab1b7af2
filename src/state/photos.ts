/** Photos of runs, kept on this device: shrunk before they are kept, known by what is in them, and never written over. */
import { keptStore } from './browser-store.ts';
import { crc32 } from './crc32.ts';
import { openDatabase, type Database } from './database.ts';
import { anyShape } from './any-shape.ts';
import type { Logbook } from './logbook-schema.ts';
import { RUN_KEY } from './run-under-way.ts';

/** Why a photo was not taken. */
export type PhotoProblem = 'not-a-picture' | 'too-large' | 'full';

export const PHOTO_PROBLEMS: Readonly<Record<PhotoProblem, string>> = {
  'not-a-picture': 'This browser cannot read that file as a picture. Take a photo, or choose a JPEG or PNG.',
  'too-large': 'That file is larger than 50 MB. Choose a smaller picture.',
  full: 'The storage of this browser is full: the photo is not kept. Save the run book as a file, then delete photos.',
};

export class PhotoError extends Error {
  readonly problem: PhotoProblem;

  constructor(problem: PhotoProblem) {
    super(PHOTO_PROBLEMS[problem]);
    this.problem = problem;
  }
}

const LARGEST_FILE_BYTES = 50e6;
const LONGEST_SIDE = 1280;
/** Tried in turn until a photo is small enough; the last is taken as it is. */
const QUALITIES = [0.8, 0.65, 0.5];
const LARGEST_PHOTO_BYTES = 400e3;

/** A picture as a small JPEG. Drawn anew, it holds nothing of where and by what it was taken. */
export async function shrunk(file: Blob): Promise<Blob> {
  if (file.size > LARGEST_FILE_BYTES) throw new PhotoError('too-large');
  const picture = await createImageBitmap(file).catch(() => {
    throw new PhotoError('not-a-picture');
  });
  const scale = Math.min(1, LONGEST_SIDE / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const context = canvas.getContext('2d');
  if (!context) throw new PhotoError('not-a-picture');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  let jpeg: Blob | null = null;
  for (const quality of QUALITIES) {
    jpeg = await new Promise<Blob | null>((then) => canvas.toBlob(then, 'image/jpeg', quality));
    if (jpeg !== null && jpeg.size <= LARGEST_PHOTO_BYTES) break;
  }
  if (jpeg === null) throw new PhotoError('not-a-picture');
  return jpeg;
}

/** The same picture has the same id on every device. */
export async function photoId(jpeg: Blob): Promise<string> {
  const bytes = new Uint8Array(await jpeg.arrayBuffer());
  return `${crc32(bytes).toString(16).padStart(8, '0')}-${bytes.length}`;
}

const PHOTOS = 'photo/';
const UNUSED = 'photos-unused';
/** A photo that nothing names is kept for a day, for whoever undoes. */
const KEPT_UNUSED_MS = 86_400_000;
const VERSION = 1;

export interface PhotoStore {
  /** @throws PhotoError where nothing more can be kept */
  keep(photos: readonly Blob[]): Promise<readonly string[]>;
  /** `null` where it is not on this device. */
  photo(id: string): Promise<Blob | null>;
  /** Deletes photos that nothing has named for a day. */
  tidy(isNamed: (id: string) => boolean): Promise<void>;
}

export function createPhotoStore(database: Database, now: () => number): PhotoStore {
  const jpegIn = (value: unknown): Blob | null => (value instanceof Blob ? value : null);
  return {
    keep: async (photos) => {
      const ids = await Promise.all(photos.map(photoId));
      const puts = photos.map((value, index) => ({
        key: `${PHOTOS}${ids[index] ?? ''}`,
        entry: { version: VERSION, changed_ms: now(), value },
      }));
      await database.put(puts).catch(() => {
        throw new PhotoError('full');
      });
      return ids;
    },
    photo: async (id) => jpegIn((await database.get(PHOTOS + id))?.value),
    tidy: async (isNamed) => {
      const ids = [...(await database.under(PHOTOS)).keys()].map((key) => key.slice(PHOTOS.length));
      const before = (await database.get(UNUSED))?.value as Readonly<Record<string, number>> | undefined;
      const since = Object.fromEntries(
        ids.filter((id) => !isNamed(id)).map((id) => [id, before?.[id] ?? now()] as const),
      );
      const gone = Object.keys(since).filter((id) => now() - (since[id] as number) > KEPT_UNUSED_MS);
      for (const id of gone) delete since[id];
      await database.put([
        ...gone.map((id) => ({ key: PHOTOS + id, entry: null })),
        { key: UNUSED, entry: { version: VERSION, changed_ms: now(), value: since } },
      ]);
    },
  };
}

let store: PhotoStore | null = null;

export const photoStore = (): PhotoStore =>
  (store ??= createPhotoStore(openDatabase('limbeck-kept'), () => Date.now()));

/** Shrinks and keeps a picture. */
export async function keepPhoto(file: Blob): Promise<string> {
  const [id = ''] = await photoStore().keep([await shrunk(file)]);
  return id;
}

let isTidied = false;

/** Once a visit: what neither the run book nor a run under way names is deleted after a day. */
export async function tidyPhotos(book: Logbook): Promise<void> {
  if (isTidied) return;
  isTidied = true;
  const run = await keptStore().read(RUN_KEY, anyShape);
  const named = JSON.stringify([book, run]);
  await photoStore().tidy((id) => named.includes(id));
}
