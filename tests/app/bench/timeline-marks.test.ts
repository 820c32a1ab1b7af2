import { describe, expect, test } from 'vitest';
import { englishReader } from '../../../sim/index.ts';
import { timelineMarks } from '../../../src/charts/playback/timeline-marks.ts';
import { eventOf } from './made-up-run.ts';

const LETTER = 6;
const events = [
  eventOf('run-ends', 9000),
  eventOf('first-boil', 1320),
  eventOf('front-through', 1380),
  eventOf('first-drop', 1860),
  eventOf('neck-fast', 1870, { severity: 'care' }),
  eventOf('neck-fast', 2500, { severity: 'care' }),
  eventOf('vapour-escapes', 1900, { severity: 'alarm' }),
];
const marks = (width_px: number, withEnd = false) =>
  timelineMarks(
    { events, mostOil_s: 6720 },
    englishReader('metric'),
    9000,
    width_px,
    (words) => words.length * LETTER,
    withEnd,
  );

describe('marks of the time line', () => {
  test('stand in order of time, one for each kind, with the nine tenths and without the end', () => {
    expect(marks(1200).map(({ words, time_s }) => [words, time_s])).toEqual([
      ['boils', 1320],
      ['steam through', 1380],
      ['first drop', 1860],
      ['neck too narrow', 1870],
      ['steam escapes', 1900],
      ['90\u202f% of the oil', 6720],
    ]);
  });

  test('tell the end of a run that stands beside others', () => {
    expect(marks(1200, true).at(-1)).toMatchObject({ words: 'end', time_s: 9000 });
  });

  test.each([320, 700, 1300, 2500])('have words that neither touch nor leave a line of %i px', (width_px) => {
    const spans = marks(width_px)
      .flatMap(({ time_s, words, wordsAt_px }) => {
        if (wordsAt_px === null) return [];
        const from = (time_s / 9000) * width_px + wordsAt_px;
        return [[from, from + words.length * LETTER] as const];
      })
      .sort((a, b) => a[0] - b[0]);
    expect(spans.length).toBeGreaterThan(0);
    for (const [place, [from, to]] of spans.entries()) {
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeLessThanOrEqual(width_px);
      expect(from).toBeGreaterThan(spans[place - 1]?.[1] ?? -1);
    }
  });

  test('give words to what is dangerous before anything else', () => {
    const [said] = marks(140).filter(({ wordsAt_px }) => wordsAt_px !== null);
    expect(said?.words).toBe('steam escapes');
  });

  test('keep a place for each even before the line has a width', () => {
    expect(marks(0).every(({ wordsAt_px }) => wordsAt_px === null)).toBe(true);
  });
});
