/** What two stills side by side are said in, in English. */
import type { PairId } from '../../answers/lessons/side-by-side.ts';

interface PairWords {
  readonly title: string;
  readonly says: string;
  readonly a: string;
  readonly b: string;
}

const PAIRS: Readonly<Record<PairId | 'bench', PairWords>> = {
  'gentle-hard': {
    title: 'Gentle against hard',
    says: 'Two stills with the same lavender. After the first drop A is turned down, B stays at full heat.',
    a: 'gentle',
    b: 'hard',
  },
  hose: {
    title: 'Where the hose ends',
    says: 'Two stills with the same heat and the same water. In A the hose lies on the bottom of the tub, in B it hangs in at the top.',
    a: 'hose at the bottom',
    b: 'hose at the top',
  },
  bench: {
    title: 'The bench’s still, twice',
    says: 'The still on the bench stands here twice. Turn one of the two and see what it changes. The bench stays as it is.',
    a: 'this one',
    b: 'the other',
  },
};

export const sideBySide = () => ({ pairs: PAIRS });
