/** How a coil that is too tall or too wide for its tub can be wound so that it fits, by geometry alone. */
import { coilFit, coilHeight, longestCoil } from '../../geometry/coil.ts';
import type { Scenario } from '../../scenario/scenario.ts';

/** Room between coil and wall for hands and water, m, and the closest turns that water still passes, outside diameters. */
const BESIDE = 0.02;
const CLOSEST = 1.6;
const STEP = 0.005;

export interface OtherCoil {
  /** What has to be changed, and to what; `null` for what stays. */
  readonly coilDiameter_m: number | null;
  readonly coilPitch_m: number | null;
  readonly tubHeight_m: number | null;
}

const down = (value: number): number => Math.floor(value / STEP + 1e-9) * STEP;
const up = (value: number): number => Math.ceil(value / STEP - 1e-9) * STEP;

/** The least change that makes room; `null` where the coil fits as it is, or where no winding of this tube can. */
export function coilThatFits(
  { condenser, cooling }: Pick<Scenario, 'condenser' | 'cooling'>,
  length_m: number,
): OtherCoil | null {
  const coil = { ...condenser, length_m };
  const { isTooDeep, isTooWide } = coilFit(coil, cooling);
  if (!isTooDeep && !isTooWide) return null;
  const widest = down(cooling.tubDiameter_m - condenser.outsideDiameter_m - 2 * BESIDE);
  const closest = up(CLOSEST * condenser.outsideDiameter_m);
  const canWiden = isTooWide || widest > condenser.coilDiameter_m + STEP / 2;
  if (widest < 4 * condenser.outsideDiameter_m) return null;
  const canClose = closest < condenser.coilPitch_m - STEP / 2;
  const other = (wider: boolean, closer: boolean): OtherCoil => ({
    coilDiameter_m: wider ? widest : null,
    coilPitch_m: closer ? closest : null,
    tubHeight_m: null,
  });
  const wound = ({ coilDiameter_m, coilPitch_m }: OtherCoil) => ({
    ...coil,
    coilDiameter_m: coilDiameter_m ?? condenser.coilDiameter_m,
    coilPitch_m: coilPitch_m ?? condenser.coilPitch_m,
  });
  const ways = [
    ...(canWiden ? [other(true, false)] : []),
    ...(canClose && !isTooWide ? [other(false, true)] : []),
    ...(canWiden && canClose ? [other(true, true)] : []),
  ];
  const found = ways.find((way) => longestCoil(wound(way), cooling) >= length_m);
  if (found) return found;
  const last = ways.at(-1) ?? other(false, false);
  const { coilDiameter_m, coilPitch_m } = wound(last);
  const depth =
    condenser.coilTopDepth_m + coilHeight(length_m, coilDiameter_m, coilPitch_m, condenser.outsideDiameter_m);
  return { ...last, tubHeight_m: up(depth) };
}
