/** Which of the compared runs to take, in words. */
import { describe, expect, test } from 'vitest';
import {
  englishReader,
  recommendationMessages,
  toldRecommendation,
  wholeMessage,
  type Duel,
  type Recommendation,
} from '../../../sim/index.ts';
import { plain } from './plain.ts';

const heads = ['Slow', 'Fast', 'Long'].map((name) => ({ name, number: null, worst: null, cautions: [] }));
const two = heads.slice(0, 2);
const oil: Duel = { by: 'oil', run: 1, rival: 0, better: 17, worse: 1, p10: 0.4, p50: 2.1, p90: 4.3 };
const found = (choice: Recommendation['choice'], unsafe: Recommendation['unsafe'] = []): Recommendation => ({
  seed: 1,
  draws: 20,
  failed: 0,
  unsafe,
  choice,
});
const said = (choice: Recommendation['choice'], of = two) =>
  plain(wholeMessage(recommendationMessages(englishReader('metric')).choice(found(choice), of)));

describe('a recommendation', () => {
  test.each<[Recommendation['choice'], string]>([
    [
      { kind: 'take', run: 1, because: oil, alike: null, prices: [] },
      'Take “Fast”. It brings more oil than “Slow” in 17 of 20 draws (typically 2.1 mL more; 8 of 10 draws: 0.40 mL to 4.3 mL more).',
    ],
    [
      {
        kind: 'take',
        run: 1,
        because: { ...oil, better: 14, worse: 5, p10: -0.6 },
        alike: null,
        prices: [
          { ...oil, by: 'time', p50: 1020 },
          { ...oil, by: 'cost', p50: 0.16 },
        ],
      },
      'Take “Fast”. It brings more oil than “Slow” in 14 of 20 draws (typically 2.1 mL more; 8 of 10 draws: 0.60 mL less to 4.3 mL more). It needs 17 min longer for 90 % of its oil. It costs 0.16 more.',
    ],
    [
      {
        kind: 'take',
        run: 1,
        because: { ...oil, by: 'time', better: 20, worse: 0, p10: -2400, p50: -2100, p90: -1800 },
        alike: { ...oil, better: 3, worse: 2 },
        prices: [],
      },
      'The oil is the same, as far as can be told: “Fast” brings more oil in 3 of 20 draws, “Slow” in 2. Take “Fast”. It has 90 % of its oil sooner than “Slow” in 20 of 20 draws (typically 35 min sooner; 8 of 10 draws: 30 min to 40 min sooner).',
    ],
    [
      {
        kind: 'only-safe',
        run: 0,
        oil: { ...oil, run: 0, rival: 1, better: 1, worse: 17, p10: -4.3, p50: -2.1, p90: -0.4 },
      },
      'Take “Slow”: no other is safe. It brings less oil than “Fast” in 17 of 20 draws (typically 2.1 mL less; 8 of 10 draws: 0.40 mL to 4.3 mL less).',
    ],
    [
      { kind: 'alike', runs: [0, 1], oil: { ...oil, run: 0, rival: 1, better: 9, worse: 7 } },
      '“Slow” and “Fast” are the same, as far as can be told: “Slow” brings more oil in 9 of 20 draws, “Fast” in 7. Choose the one that suits you.',
    ],
    [{ kind: 'none-safe' }, 'None of these runs is safe enough to recommend.'],
    [{ kind: 'no-oil' }, 'None of these runs brings oil, so there is nothing to recommend.'],
  ])('is a plain sentence: %o', (choice, sentence) => expect(said(choice)).toBe(sentence));

  test('names all that are alike, and the next best of three', () => {
    expect(said({ kind: 'alike', runs: [0, 1, 2], oil }, heads)).toMatch(/^“Slow”, “Fast” and “Long” are the same/);
    expect(said({ kind: 'take', run: 1, because: oil, alike: null, prices: [] }, heads)).toContain(
      'than “Slow”, the next best, in 17',
    );
  });

  test('says dangers of some draws before it, and what a draw is', () => {
    const told = toldRecommendation(
      found({ kind: 'take', run: 1, because: oil, alike: null, prices: [] }, [
        { run: 0, asSet: true, events: ['pot-dry'], draws: 20 },
        { run: 1, asSet: false, events: ['vapour-escapes', 'pot-dry'], draws: 2 },
      ]),
      two,
      englishReader('metric'),
    );
    expect(told.sentences.map(plain)).toEqual([
      '“Fast” lets steam escape and runs the pot dry in 2 of 20 draws. It has too little reserve.',
      expect.stringMatching(/^Take “Fast”\./) as string,
    ]);
    expect(plain(told.note)).toBe(
      'Each of the 20 draws gives all that is uncertain (plant, cooling, weather) a value at random, the same for every run. Differences under 2 % count as none.',
    );
    const lost = recommendationMessages(englishReader('metric')).note({ draws: 18, failed: 2 });
    expect(plain(lost)).toContain('2 more could not be calculated.');
  });
});
