/** Working of the length that so many runs need: which draw decides, what its distillate does, and how it is rounded. */
import { SIZING_DRAWS } from '../answers/condenser-size/in-doubt.ts';
import type { OwnTubeSize } from '../answers/condenser-size/tubes.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { sheetOf, STEP, writtenStep, type WorkingSheet } from './sheet.ts';

const DECIDING = 'trial of the run in that place';

/**
 * @param scenario the still at the heat that its tube is sized for
 * @returns `null` where no length is enough
 */
export function sizedLengthSheet(size: OwnTubeSize, scenario: Scenario): WorkingSheet | null {
  const { found_m, length_m, typical_m, confidence, warmestOutlet_K, verdict } = size;
  if (found_m === null || length_m === null || warmestOutlet_K === null || verdict !== 'holds') return null;
  const place = Math.ceil(confidence * (SIZING_DRAWS + 1));
  const limit_K = scenario.condenser.outletLimit_K;
  return sheetOf(
    ['sized-length', 'Length that is enough', null],
    `The run is tried ${SIZING_DRAWS} times with what is not known for sure drawn anew, and each run’s shortest length is found by trials of the whole run. Put in order, one of them decides.`,
    'the sentence on this page',
    writtenStep(
      'Place of the run that decides, from the shortest length up',
      'k = c\\,(n+1)+r',
      [place, '1', 'of n runs the k-th shortest is enough for k of n + 1 further ones, on the average'],
      ['c', confidence, '1', 'share of runs for which it must be enough', 'chosen'],
      ['n', SIZING_DRAWS, '1', 'runs that are tried', 'chosen'],
      ['r', place - confidence * (SIZING_DRAWS + 1), '1', 'up to a whole run', 'rounding'],
    ),
    writtenStep(
      'Room that is left below the limit in that run, at its warmest moment',
      '\\Delta T = T_{\\max}-T_o',
      [limit_K - warmestOutlet_K, 'K', DECIDING],
      ['T_{\\max}', limit_K, 'K', 'warmest distillate that is allowed', 'scenario: outlet limit'],
      ['T_o', warmestOutlet_K, 'K', 'warmest distillate, flow-weighted over half a minute', DECIDING],
    ),
    typical_m !== null &&
      writtenStep(
        'What is not known for sure makes of the length',
        'f = \\frac{L_k}{L_p}',
        [found_m / typical_m, '1', 'comparison'],
        ['L_k', found_m, 'm', 'shortest length in that run', DECIDING],
        ['L_p', typical_m, 'm', 'shortest length in the run as planned', 'trial of the run as planned'],
      ),
    writtenStep(
      'Rounded up to the centimetre',
      'L = L_k+r',
      [length_m, 'm', STEP],
      ['L_k', found_m, 'm', 'shortest length in that run', DECIDING],
      ['r', length_m - found_m, 'm', 'up to the centimetre', 'rounding'],
    ),
  );
}
