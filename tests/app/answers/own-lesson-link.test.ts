import { expect, test } from 'vitest';
import { openingExample, readOwnLesson, readScenario } from '../../../sim/index.ts';
import { draftOf, EMPTY_DRAFT, fileOf, FROM_BENCH } from '../../../src/pages/lessons/own/draft.ts';
import oldLink from './old-lesson-link.json';
import { OWN_ADDRESS, ownAddress, readOwnAddress } from '../../../src/pages/lessons/own/own-link.ts';

const scenario = (() => {
  const read = readScenario({ ...openingExample.scenario, name: 'Tern Hollow' });
  if (!read.ok) throw new RangeError('the example cannot be read');
  return read.scenario;
})();

const DRAFT = {
  ...EMPTY_DRAFT,
  title: 'When does it drip?',
  still: FROM_BENCH,
  setUp: 'Our still.',
  kind: 'number',
  ask: 'When does the first drop come?',
  explanation: 'It has to boil first.',
} as const;

const lesson = (() => {
  const read = readOwnLesson(fileOf(DRAFT, scenario));
  if (!read.ok) throw new RangeError(JSON.stringify(read.problems));
  return read.lesson;
})();

const lettersOf = (address: string): string => address.slice(`#lessons/${OWN_ADDRESS}`.length);

test('a lesson with the bench’s still goes through a link short enough for a code, and comes back whole', async () => {
  const address = await ownAddress(lesson);
  expect(address.length).toBeLessThan(600);
  expect(await readOwnAddress(lettersOf(address))).toEqual({ ok: true, lesson });
});

test('a link that was passed on before opens as it did', async () => {
  const read = await readOwnAddress(lettersOf(oldLink.address));
  expect(read).toMatchObject({
    ok: true,
    lesson: {
      title: oldLink.title,
      still: { scenario: { name: oldLink.still, condenser: { length_m: oldLink.length_m } } },
    },
  });
});

test('a link with a letter missing opens nothing, and says so', async () => {
  const letters = lettersOf(await ownAddress(lesson));
  expect(await readOwnAddress(letters.slice(0, -9))).toBeNull();
  expect(await readOwnAddress('')).toBeNull();
});

test('every letter of a link that has changed is noticed', async () => {
  const letters = lettersOf(await ownAddress(lesson));
  const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
  for (let at = 0; at < letters.length; at++) {
    const other = ALPHABET[(ALPHABET.indexOf(letters[at] as string) + 7) % ALPHABET.length] as string;
    expect(await readOwnAddress(letters.slice(0, at) + other + letters.slice(at + 1)), `letter ${at}`).toBeNull();
  }
});

test('a link of before the check value still opens', async () => {
  const packed = new Blob([JSON.stringify(fileOf(DRAFT, scenario))])
    .stream()
    .pipeThrough(new CompressionStream('deflate-raw'));
  const letters = Buffer.from(await new Response(packed).arrayBuffer()).toString('base64url');
  expect(await readOwnAddress(letters)).toEqual({ ok: true, lesson });
});

test('a lesson is taken back into the form as it was', () => {
  const draft = draftOf(lesson);
  const read = readOwnLesson(fileOf(draft, null));
  expect(read).toEqual({ ok: true, lesson });
});

test('what is not written yet is told field by field', () => {
  const read = readOwnLesson(fileOf(EMPTY_DRAFT, scenario));
  expect(read.ok ? [] : read.problems.map(({ path }) => path)).toEqual(
    expect.arrayContaining(['title', 'setUp', 'question.ask', 'question.options', 'explanation']),
  );
});
