import { describe, expect, test } from 'vitest';
import { findLesson, LESSON_IDS } from '../../../sim/answers/lessons/lessons.ts';
import { LESSON_HAZARDS } from '../../../sim/answers/lessons/lesson.ts';
import { englishReader } from '../../../sim/messages/language.ts';
import { lessonCommonMessages, lessonMessages, toldLesson } from '../../../sim/messages/lessons.ts';
import { answered } from '../lessons/answered.ts';
import { strayNumbers } from './whole-sentences.ts';

const SYSTEMS = ['metric', 'us'] as const;

const wordsIn = (sentences: readonly string[]): number => sentences.join(' ').split(/\s+/u).length;
const MOST_WORDS = 60;

describe.each(LESSON_IDS)('the lesson %s', (id) => {
  const lesson = findLesson(id);
  const answer = answered(id);

  test.each(SYSTEMS)('says everything in %s units, in at most 60 words at a time', (system) => {
    const words = lessonMessages(id, englishReader(system));
    const { big, happened, why } = toldLesson(answer, englishReader(system));
    for (const said of [words.setUp, happened, why]) {
      expect(wordsIn(said), said.join(' ')).toBeLessThanOrEqual(MOST_WORDS);
      for (const sentence of said) {
        expect(sentence).toMatch(/^[A-Z\d].*[.]$/u);
        expect(sentence).not.toMatch(/NaN|undefined|Infinity|!/u);
      }
    }
    expect(big.length).toBeGreaterThan(0);
    const measured = [...happened, ...why].flatMap((sentence) => strayNumbers(sentence, system));
    // Bare numbers count times and people.
    expect(measured.filter((stray) => !/ (?:times|people)/u.test(stray))).toEqual([]);
  });

  test('has words for each question, option and control, and a caution for what can hurt', () => {
    const words = lessonMessages(id, englishReader('metric'));
    for (const question of lesson.questions) {
      expect(words.questions[question.id]?.ask).toMatch(/[.?]$/u);
      if (question.kind === 'choice')
        for (const option of question.options) expect(words.questions[question.id]?.options?.[option]).toMatch(/\S/u);
    }
    for (const control of [lesson.choose, lesson.tryIt])
      if (control?.kind === 'choice')
        for (const option of control.options)
          expect((control === lesson.tryIt ? words.tryIt : words.choose)?.options?.[option]).toMatch(/\S/u);
    expect(lesson.choose === null).toBe(words.choose === undefined);
    expect(lesson.hazards.length).toBeGreaterThan(0);
  });

  test('gives nothing of its answer away beforehand', () => {
    const words = lessonMessages(id, englishReader('metric'));
    const before = [
      words.title,
      ...words.setUp,
      ...Object.values(words.questions).flatMap(({ ask, options }) => [ask, ...Object.values(options ?? {})]),
      ...lesson.hazards.map((hazard) => lessonCommonMessages(englishReader('metric')).hazards[hazard]),
    ].join(' ');
    for (const { value } of toldLesson(answer, englishReader('metric')).big) expect(before).not.toContain(value);
  });
});

test('each hazard has its words', () => {
  const { hazards } = lessonCommonMessages(englishReader('us'));
  for (const hazard of LESSON_HAZARDS) expect(hazards[hazard]).toMatch(/\.$/u);
  expect(hazards['hot-water']).toContain('140\u202f°F');
});
