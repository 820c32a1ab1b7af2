/** Messages on a still that is planned from a few answers. */
import { tubeCost, type PriceList } from '../answers/shopping/prices.ts';
import type { TubeSize } from '../answers/condenser-size/tubes.ts';
import { partLoads } from '../answers/first-plan/weakest-part.ts';
import { verdictOf } from '../answers/verdict/verdict.ts';
import type { RunResult } from '../run/result.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { firstPlan } from './english/first-plan.ts';
import type { Reader } from './language.ts';
import { section, wholeMessage } from './section.ts';
import { sizingMessages } from './sizing.ts';
import { verdictMessages } from './verdict.ts';

export const firstPlanMessages = section<ReturnType<typeof firstPlan>>({ en: firstPlan });

export interface ToldPlan {
  readonly works: string;
  readonly weakest: string;
  /** The first is to be bought first. */
  readonly next: readonly string[];
}

/**
 * @param size of the tube, for the still at the heat in `sizedFor`
 * @param result run of the still with that tube
 */
export function toldPlan(
  result: RunResult,
  size: TubeSize,
  sizedFor: Scenario,
  prices: PriceList,
  reader: Reader,
): ToldPlan {
  const words = firstPlanMessages(reader);
  const sizing = sizingMessages(reader);
  const loads = partLoads(result);
  const [weakest] = loads;
  const tube = [
    wholeMessage(sizing.size(size, sizedFor)),
    sizing.typically(size),
    sizing.decides(size),
    sizing.coil(size, sizedFor, tubeCost(size, prices, sizedFor)),
  ].filter((sentence) => sentence !== null);
  const weak = loads.filter(({ load }) => load >= 1).map((each) => words.remedy(each));
  return {
    works: wholeMessage(verdictMessages(verdictOf(result), reader).lead),
    weakest: weakest === undefined ? words.nothingElse : words.weakest(weakest),
    next: [words.buyTube(tube.join(' ')), ...(weak.length > 0 ? weak : [words.nothingElse])],
  };
}
