/** A teacher's lesson as a file that is saved and opened. */
import {
  ownLessonProblem,
  readOwnLesson,
  writtenOwnLesson,
  type OwnLesson,
  type Reader,
} from '../../../../sim/index.ts';
import { fileName, saveJson } from '../../../state/downloads.ts';
import { ownAddress } from './own-link.ts';

const LARGEST_FILE_BYTES = 200_000;
/** A file of another kind may be wrong in every field. */
const MOST_PROBLEMS = 8;

export type OpenedFile =
  { readonly ok: true; readonly address: string } | { readonly ok: false; readonly problems: readonly string[] };

export const saveLesson = (lesson: OwnLesson): void =>
  saveJson(writtenOwnLesson(lesson), fileName('lesson.json', lesson.title));

export async function openLessonFile(file: Blob, reader: Reader): Promise<OpenedFile> {
  if (file.size > LARGEST_FILE_BYTES)
    return { ok: false, problems: ['This file is larger than 200 kilobytes, so it is not a lesson.'] };
  let json: unknown;
  try {
    json = JSON.parse(await file.text()) as unknown;
  } catch {
    return { ok: false, problems: ['This file is not JSON, so it holds no lesson.'] };
  }
  const read = readOwnLesson(json);
  return read.ok
    ? { ok: true, address: await ownAddress(read.lesson) }
    : {
        ok: false,
        problems: read.problems.slice(0, MOST_PROBLEMS).map((problem) => ownLessonProblem(problem, reader)),
      };
}
