/** Separator, tub and source of heat as they should be, in English. */
import { tubVolume } from '../../geometry/tub.ts';
import type { BurnerSize } from '../../answers/other-parts/burner.ts';
import { LARGEST_TUB, type LeastTub } from '../../answers/other-parts/least-tub.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import type { Quantities } from '../quantities.ts';

export const otherParts = (q: Quantities) => ({
  title: 'Separator, tub and heat',
  wanted: 'Distillate wanted',
  tub({ typical_m3, deciding_m3 }: LeastTub, { cooling }: Pick<Scenario, 'cooling'>): string {
    const own = `Yours has ${q.volume(tubVolume(cooling))}.`;
    if (typical_m3 === null)
      return `Tub: without running water not even ${q.volume(LARGEST_TUB)} lasts this run with this coil. ${own}`;
    const sure =
      deciding_m3 === null
        ? `in the run that decides the length of the coil not even ${q.volume(LARGEST_TUB)} is enough`
        : `${q.volume(deciding_m3)} in the run that decides the length of the coil`;
    return `Tub: without running water this run needs ${q.volume(typical_m3)}; ${sure}. ${own}`;
  },
  burner({ wanted_kg_s, power_W, leastPower_W, mostPower_W, potPower_W, ratedPower_W }: BurnerSize): string {
    const enough =
      ratedPower_W >= mostPower_W ? 'is enough' : ratedPower_W >= power_W ? 'is just enough' : 'is not enough';
    const range =
      leastPower_W < mostPower_W
        ? ` (${q.power(leastPower_W)} to ${q.power(mostPower_W)}, by how well it heats the pot)`
        : '';
    return `Heat: ${q.distillateFlow(wanted_kg_s)} of distillate needs ${q.power(potPower_W)} in the pot, so a source of ${q.power(power_W)}${range}. Yours of ${q.power(ratedPower_W)} ${enough}.`;
  },
  noBurner: 'Heat: this run distils too little to tell what a wanted rate needs.',
});
