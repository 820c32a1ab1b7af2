/** Photos in the file of a run book: beside the logs that name them, as base64. */
import * as z from 'zod/mini';
import { writtenLogbook, type Logbook, type LoggedRun } from './logbook-schema.ts';
import { photoId, photoStore, type PhotoStore } from './photos.ts';

/** A file that is larger is neither written nor read. */
export const LARGEST_BOOK_BYTES = 60e6;
const BASE64_GROWTH = 4 / 3;

const PHOTO_LIST = z.object({ photos: z.array(z.unknown()) });
const PHOTO = z.object({ id: z.string(), jpeg: z.string() });

const CHUNK = 0x8000;

async function base64Of(jpeg: Blob): Promise<string> {
  const bytes = new Uint8Array(await jpeg.arrayBuffer());
  let text = '';
  for (let from = 0; from < bytes.length; from += CHUNK)
    text += String.fromCharCode(...bytes.subarray(from, from + CHUNK));
  return btoa(text);
}

function jpegIn(base64: string): Blob | null {
  try {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const isJpeg = bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff;
    return isJpeg ? new Blob([bytes], { type: 'image/jpeg' }) : null;
  } catch {
    return null;
  }
}

const namedIn = (logs: readonly LoggedRun[]): readonly string[] => [
  ...new Set(logs.flatMap(({ photos }) => photos.map(({ id }) => id))),
];

/** A book as it is saved, with the photos that its logs name; without them where they are too many for a file. */
export async function writtenWithPhotos(
  book: Logbook,
  store: PhotoStore = photoStore(),
): Promise<{ readonly json: unknown; readonly leftOut: number }> {
  const found: { readonly id: string; readonly jpeg: Blob }[] = [];
  for (const id of namedIn(book.logs)) {
    const jpeg = await store.photo(id).catch(() => null);
    if (jpeg !== null) found.push({ id, jpeg });
  }
  const plain = writtenLogbook(book);
  const bytes = found.reduce((sum, { jpeg }) => sum + BASE64_GROWTH * jpeg.size, JSON.stringify(plain).length);
  if (bytes > LARGEST_BOOK_BYTES) return { json: plain, leftOut: found.length };
  const photos = await Promise.all(found.map(async ({ id, jpeg }) => ({ id, jpeg: await base64Of(jpeg) })));
  return { json: { ...plain, photos }, leftOut: 0 };
}

/** @throws Error where the photos are too many for a file */
export async function jsonWithPhotos(book: Logbook): Promise<unknown> {
  const { json, leftOut } = await writtenWithPhotos(book);
  if (leftOut > 0) throw new Error(`with its photos the file would be larger than ${LARGEST_BOOK_BYTES / 1e6} MB.`);
  return json;
}

export interface PhotosOfFile {
  readonly photos: readonly Blob[];
  /** How many are damaged: no JPEG, or not the one that its log names. */
  readonly damaged: number;
}

/** The photos of a book's file that its logs name. */
export async function photosIn(value: unknown, logs: readonly LoggedRun[]): Promise<PhotosOfFile> {
  const list = PHOTO_LIST.safeParse(value);
  if (!list.success) return { photos: [], damaged: 0 };
  const named = new Set(namedIn(logs));
  const photos: Blob[] = [];
  let damaged = 0;
  for (const each of list.data.photos) {
    const read = PHOTO.safeParse(each);
    const jpeg = read.success ? jpegIn(read.data.jpeg) : null;
    if (jpeg === null || !read.success || (await photoId(jpeg)) !== read.data.id) damaged += 1;
    else if (named.has(read.data.id)) photos.push(jpeg);
  }
  return { photos, damaged };
}
