import { describe, expect, test } from 'vitest';
import { readOwnLesson, stillOf, writtenOwnLesson } from '../../../sim/answers/lessons/own-lesson-file.ts';
import {
  answerOwnLesson,
  askedOf,
  CURVE_AXES,
  findMeasure,
  MEASURE_IDS,
  OWN_QUESTION,
  type OwnLesson,
  type OwnQuestion,
} from '../../../sim/answers/lessons/own-lesson.ts';
import { CURVE_COLUMNS } from '../../../sim/answers/lessons/lesson.ts';
import { englishReader } from '../../../sim/messages/language.ts';
import { ownLessonMessages, ownLessonProblem } from '../../../sim/messages/own-lesson.ts';

const CURVE: OwnQuestion = {
  kind: 'curve',
  ask: 'Draw the oil.',
  column: 'oilCollected_kg',
  min: 0,
  max: 6e-5,
  until_s: 7200,
};
const NUMBER: OwnQuestion = { kind: 'number', ask: 'When?', measure: 'first-drop', min: 0, max: 7200 };
const CHOICE: OwnQuestion = { kind: 'choice', ask: 'Which?', options: ['this', 'that'], right: 1 };

const lesson = (question: OwnQuestion): OwnLesson => ({
  title: 'Our shed',
  still: { example: 'gentle-lavender' },
  setUp: 'Lavender runs gently.',
  question,
  explanation: 'Because T < 100 °C.',
  safety: '',
});

const written = (question: OwnQuestion, changed: Record<string, unknown> = {}): Record<string, unknown> => ({
  ...(writtenOwnLesson(lesson(question)) as Record<string, unknown>),
  ...changed,
});

const said = (json: unknown, units: 'metric' | 'us' = 'metric'): readonly string[] => {
  const read = readOwnLesson(json);
  return read.ok ? [] : read.problems.map((problem) => ownLessonProblem(problem, englishReader(units)));
};

describe('a lesson’s file', () => {
  test.each([CURVE, NUMBER, CHOICE])('is read as it was written', (question) => {
    const json: unknown = JSON.parse(JSON.stringify(written(question)));
    expect(readOwnLesson(json)).toEqual({ ok: true, lesson: lesson(question) });
  });

  test('holds a still of its own, which is checked like any other', () => {
    const scenario = stillOf(lesson(CURVE));
    const read = readOwnLesson(written(CURVE, { still: { scenario } }));
    expect(read.ok && 'scenario' in read.lesson.still && read.lesson.still.scenario).toEqual(scenario);
    const wrong = { ...scenario, pot: { ...scenario.pot, water_kg: -1 } };
    expect(said(written(CURVE, { still: { scenario: wrong } }))[0]).toMatch(
      /^The lesson’s still\. .*−1.*; allowed is /u,
    );
  });

  test.each([
    [null, 'This is not a lesson; a lesson’s file is needed, as this page saves it.'],
    [{ kind: 'limbeck-run-book' }, 'This is not a lesson; a lesson’s file is needed, as this page saves it.'],
    [written(CURVE, { version: 2 }), 'version: 2 is not possible; this program reads version 1.'],
    [written(CURVE, { colour: 'red' }), 'colour: “red” is not possible; no field has this name.'],
    [written(CURVE, { title: '' }), 'Title is missing; a text of at most 80 letters is needed.'],
    [written(CURVE, { title: 7 }), 'Title: 7 is not possible; a text of at most 80 letters is needed.'],
    [
      written(CURVE, { explanation: '<img src=x onerror=alert(1)>' }),
      'Why it is so: “<img src=x onerror=alert(1)>” is not possible; only plain text is allowed, no tags in angle brackets.',
    ],
    [
      written(CHOICE, { question: { ...CHOICE, options: ['one'], right: 0 } }),
      'Answers to choose from: this is not possible; 2 to 4 answers are allowed.',
    ],
    [
      written(CHOICE, { question: { ...CHOICE, right: 5 } }),
      'The right answer: 5 is not possible; mark one of the 2 answers as right.',
    ],
    [
      written(CURVE, { question: { ...CURVE, kind: 'sound' } }),
      'The class answers by: “sound” is not possible; allowed is choice, number, curve.',
    ],
    [
      written(CURVE, { still: { example: 'no-such-still' } }),
      /^Example: “no-such-still” is not possible; allowed is gentle-lavender, /u,
    ],
    [
      written(CURVE, { question: { ...CURVE, max: 1 } }),
      'To: 1\u202f000\u202f000\u202fmL is not possible; allowed is 0–1000\u202fmL.',
    ],
    [
      written(NUMBER, { question: { ...NUMBER, min: 7200, max: 3600 } }),
      'To: 60\u202fmin is not possible; it must be more than 120\u202fmin.',
    ],
  ])('says what is wrong with the field, what stands there and what is allowed', (json, sentence) => {
    const [first = ''] = said(json);
    if (typeof sentence === 'string') expect(first.replaceAll('\u2009', '\u202f')).toBe(sentence);
    else expect(first).toMatch(sentence);
  });

  test('says limits in the reader’s units', () => {
    const question = { ...CURVE, column: 'potTemperature_K', min: 100, max: 373.15 };
    expect(said(written(CURVE, { question }), 'us')[0]).toMatch(/°F is not possible; allowed is 32–266.°F/u);
  });
});

describe('its answer', () => {
  test('is worked out from the run', () => {
    const scenario = stillOf(lesson(NUMBER));
    const { truths, runs } = answerOwnLesson(scenario, NUMBER);
    expect(truths[OWN_QUESTION]).toEqual({ kind: 'number', value: runs[0]?.summary.firstDrop_s });
    expect(answerOwnLesson(scenario, CHOICE).truths[OWN_QUESTION]).toEqual({ kind: 'choice', option: 'option-1' });
    const curve = answerOwnLesson(scenario, CURVE).truths[OWN_QUESTION];
    // Drawn to two hours, the run goes on for ten minutes more.
    const all = (runs[0]?.summary.oilCollected_mL ?? 0) * 1e-6;
    const drawn = curve?.kind === 'curve' ? Math.max(...curve.values) : 0;
    expect(drawn / all).toBeGreaterThan(0.98);
    expect(drawn / all).toBeLessThanOrEqual(1);
    // Every number that can be asked for is there, or openly missing.
    for (const id of MEASURE_IDS) {
      const { of, least, most } = findMeasure(id);
      const value = runs[0] ? of(runs[0]) : null;
      if (value === null) expect(id).toBe('pot-dry');
      else expect(value >= least && value <= most, id).toBe(true);
    }
  });

  test('is nothing where the run never comes to it', () => {
    const dry: OwnQuestion = { kind: 'number', ask: 'When?', measure: 'pot-dry', min: 0, max: 7200 };
    expect(answerOwnLesson(stillOf(lesson(dry)), dry).truths).toEqual({});
  });

  test('every number and column has its words and a line that can be set', () => {
    const words = ownLessonMessages(englishReader('metric'));
    for (const id of MEASURE_IDS) expect(words.measures[id]).toMatch(/\S/u);
    for (const column of CURVE_COLUMNS) {
      expect(words.columns[column]).toMatch(/\S/u);
      expect(CURVE_AXES[column].most).toBeGreaterThan(CURVE_AXES[column].least);
    }
    const asked = askedOf(NUMBER);
    expect(asked.kind === 'number' && asked.step).toBe(60);
  });
});
