/** Messages on the size of a condenser: length, tubes, hardest boil, least water. */
import { withHeat, type HardestBoil, type LeastWater } from '../answers/condenser-size/heat-and-water.ts';
import type { TubeSize } from '../answers/condenser-size/tubes.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { sizing } from './english/sizing.ts';
import type { Reader } from './language.ts';
import { section } from './section.ts';

export type SizingMessages = ReturnType<typeof sizing>;

export const sizingMessages = section<SizingMessages>({ en: sizing });

export interface Sizing {
  readonly own: TubeSize | null;
  /** `null` where the plan is full heat. */
  readonly atFullHeat: TubeSize | null;
  readonly hardestBoil: HardestBoil | null;
  readonly leastWater: LeastWater | null;
}

/** A size of a tube with its words, as it is saved and printed. */
export function toldTubeSize(size: TubeSize, still: Scenario, reader: Reader) {
  const messages = sizingMessages(reader);
  return { ...size, name: messages.tubeName(size), ...messages.size(size, still) };
}

/** What was found of a condenser with its words; what was not asked for stays `null`. */
export function toldSizing({ own, atFullHeat, hardestBoil, leastWater }: Sizing, still: Scenario, reader: Reader) {
  const messages = sizingMessages(reader);
  return {
    own: own && toldTubeSize(own, still, reader),
    atFullHeat: atFullHeat && toldTubeSize(atFullHeat, withHeat(still, 1), reader),
    hardestBoil: hardestBoil && { ...hardestBoil, ...messages.hardestBoil(hardestBoil, still) },
    leastWater: leastWater && { ...leastWater, ...messages.leastWater(leastWater, still) },
  };
}
