/** Which of the compared runs to take, in English. */
import { WORTH_TELLING } from '../../answers/comparison/conclusion.ts';
import type { Duel, Recommendation, Unsafe } from '../../answers/comparison/recommendation.ts';
import type { CompareRun } from '../../answers/comparison/table.ts';
import type { Quantities } from '../quantities.ts';
import type { Message } from '../section.ts';
import { whatAlarmsDo, runName } from './comparison.ts';

type Heads = readonly Pick<CompareRun, 'name' | 'number'>[];

/** What the better and the worse of two runs does, and what the difference is called. */
const WORDS: Readonly<Record<Duel['by'], Readonly<Record<'better' | 'worse', readonly [does: string, by: string]>>>> = {
  oil: { better: ['brings more oil', 'more'], worse: ['brings less oil', 'less'] },
  time: { better: ['has 90\u202f% of its oil sooner', 'sooner'], worse: ['has 90\u202f% of its oil later', 'later'] },
  cost: { better: ['costs less', 'less'], worse: ['costs more', 'more'] },
};
/** What a number above nought, and one below, says of the run. */
const SIGNS: Readonly<Record<Duel['by'], readonly [above: string, below: string]>> = {
  oil: ['more', 'less'],
  time: ['later', 'sooner'],
  cost: ['more', 'less'],
};

export function recommendation(q: Quantities) {
  const size = (by: Duel['by'], value: number): string => {
    const amount = Math.abs(value);
    if (by === 'oil') return q.stored(amount, 'mL', 'oilVolume', { significant: 2 });
    return by === 'time' ? q.time(amount) : q.cost(amount);
  };
  const signed = (by: Duel['by'], value: number): string => `${size(by, value)} ${SIGNS[by][value < 0 ? 1 : 0]}`;
  const named = (heads: Heads, run: number): string => `“${runName(heads[run] as Heads[number])}”`;
  const inDraws = (count: number, { draws }: Recommendation): string => `in ${count} of ${draws} draws`;

  /** The typical difference, and the range in which 8 of 10 draws lie. */
  function difference({ by, p10, p50, p90 }: Duel): string {
    const [near, far] = Math.abs(p10) <= Math.abs(p90) ? [p10, p90] : [p90, p10];
    const range =
      p10 < 0 === p90 < 0 ? `${size(by, near)} to ${signed(by, far)}` : `${signed(by, p10)} to ${signed(by, p90)}`;
    return `typically ${signed(by, p50)}; 8 of 10 draws: ${range}`;
  }

  /** The run against its rival, beginning with what it does. */
  function against(duel: Duel, found: Recommendation, heads: Heads): string {
    const [side, count] =
      duel.better >= duel.worse ? (['better', duel.better] as const) : (['worse', duel.worse] as const);
    const rival = `${named(heads, duel.rival)}${heads.length > 2 ? ', the next best,' : ''}`;
    return `It ${WORDS[duel.by][side][0]} than ${rival} ${inDraws(count, found)} (${difference(duel)}).`;
  }

  const sameOil = ({ run, rival, better, worse }: Duel, found: Recommendation, heads: Heads): string =>
    `${named(heads, run)} brings more oil ${inDraws(better, found)}, ${named(heads, rival)} in ${worse}`;

  const price = ({ by, p50 }: Duel): string =>
    by === 'time' ? `It needs ${size(by, p50)} longer for 90\u202f% of its oil.` : `It costs ${size(by, p50)} more.`;

  const list = (heads: Heads, runs: readonly number[]): string => {
    const names = runs.map((run) => named(heads, run));
    return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
  };

  return {
    /** Runs that are dangerous in some draws though not as they are set. */
    dangers: (found: Recommendation, heads: Heads): readonly Message[] =>
      found.unsafe
        .filter(({ asSet }: Unsafe) => !asSet)
        .map(({ run, events, draws }) => ({
          sentence: `${named(heads, run)} ${whatAlarmsDo(events)} ${inDraws(draws, found)}.`,
          advice: 'It has too little reserve.',
        })),

    /** What to take, and why. */
    choice(found: Recommendation, heads: Heads): Message {
      const { choice } = found;
      switch (choice.kind) {
        case 'none-safe':
          return { sentence: 'None of these runs is safe enough to recommend.', advice: null };
        case 'no-oil':
          return { sentence: 'None of these runs brings oil, so there is nothing to recommend.', advice: null };
        case 'only-safe':
          return {
            sentence: `Take ${named(heads, choice.run)}: no other is safe.`,
            advice: against(choice.oil, found, heads),
          };
        case 'take': {
          const take = `Take ${named(heads, choice.run)}.`;
          const why = [against(choice.because, found, heads), ...choice.prices.map(price)].join(' ');
          return choice.alike === null
            ? { sentence: take, advice: why }
            : {
                sentence: `The oil is the same, as far as can be told: ${sameOil(choice.alike, found, heads)}.`,
                advice: `${take} ${why}`,
              };
        }
        case 'alike':
          return {
            sentence: `${list(heads, choice.runs)} are the same, as far as can be told: ${sameOil(choice.oil, found, heads)}.`,
            advice: 'Choose the one that suits you.',
          };
      }
    },

    /** What a draw is. */
    note({ draws, failed }: Pick<Recommendation, 'draws' | 'failed'>): string {
      const lost = failed > 0 ? ` ${failed} more could not be calculated.` : '';
      return `Each of the ${draws} draws gives all that is uncertain (plant, cooling, weather) a value at random, the same for every run.${lost} Differences under ${q.share(WORTH_TELLING, { decimals: 0 })} count as none.`;
    },
  };
}
