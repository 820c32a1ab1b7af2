/** Separator, tub and source of heat for a still whose tube has been sized: what is asked beside the length. */
import type { RunResult } from '../../run/result.ts';
import { sheetMeasures, type SheetMeasures } from './measures.ts';
import type { Draw } from '../condenser-size/in-doubt.ts';
import { leastWater, type LeastWater } from '../condenser-size/heat-and-water.ts';
import type { OwnTubeSize } from '../condenser-size/tubes.ts';
import { burnerFor, ownRate, type BurnerSize } from '../other-parts/burner.ts';
import { leastTub, type LeastTub } from '../other-parts/least-tub.ts';

export interface OtherParts {
  /** `null` where nothing comes over. */
  readonly separator: SheetMeasures['separator'] | null;
  /** `null` where the condenser stands in no tub or no length of its tube is enough. */
  readonly tub: LeastTub | null;
  readonly water: LeastWater | null;
  /** For the rate of the run itself; `null` where it distils too little to tell. */
  readonly burner: BurnerSize | null;
}

/** Of the draws that need about the length, the one that decides it. */
export const decidingDraw = ({ deciding }: Pick<OwnTubeSize, 'deciding'>): Draw | null =>
  deciding[Math.floor((deciding.length - 1) / 2)] ?? null;

/** @param result a run of the scenario for which the tube was sized */
export function sizeOtherParts(result: RunResult, size: OwnTubeSize): OtherParts {
  const { scenario } = result;
  const draw = decidingDraw(size);
  const { lengthWithMargin_m: length_m, peakVapour_kg_s } = size;
  const tub =
    length_m === null || draw === null
      ? null
      : leastTub({ ...scenario, condenser: { ...scenario.condenser, length_m } }, draw);
  return {
    separator: peakVapour_kg_s === null ? null : sheetMeasures(scenario, peakVapour_kg_s).separator,
    tub,
    water: tub && leastWater(scenario),
    burner: burnerFor(result, ownRate(result)),
  };
}
