import { describe, expect, test } from 'vitest';
import { englishReader, LESSON_IDS } from '../../../sim/index.ts';
import { lessonPicture, pictureTime } from '../../../src/pages/lessons/pictures/lesson-picture.ts';
import { answered } from '../../sim/lessons/answered.ts';

const sheet = (mark: number) => ({ width: 560, height: 370, text: 18, reader: englishReader('us'), mark });

describe.each(LESSON_IDS)('the picture of %s', (id) => {
  const answer = answered(id);
  const drawn = [0, 0.37, 1].map((mark) => lessonPicture(answer, sheet(mark)));

  test('is drawn of numbers at every time, and says the same to those who do not see it', () => {
    for (const { marks, says } of drawn) {
      expect(marks.length).toBeGreaterThan(5);
      expect(JSON.stringify(marks)).not.toMatch(/NaN|null|undefined|Infinity/u);
      expect(says).toBe(drawn.at(-1)?.says);
      expect(says).toMatch(/\.$/u);
    }
  });

  test('moves under its time mark, where it has one', () => {
    const [first, , last] = drawn;
    const moves = JSON.stringify(first?.marks) !== JSON.stringify(last?.marks);
    expect(moves).toBe(pictureTime(answer, 0, englishReader('us')) !== null);
    if (moves)
      expect(pictureTime(answer, 0, englishReader('us'))).not.toBe(pictureTime(answer, 1, englishReader('us')));
  });
});
