/** How slowly the finest drops of an oil leave its hydrosol, to compare oils: those that do not come out make it cloudy. */
import { STANDARD_GRAVITY } from '../constants.ts';
import { tableLiquidDensity, tableLiquidViscosity } from '../fluids/water-table.ts';
import { stokesVelocity } from '../transfer/settling.ts';
import { oilDensity, type OilShare } from './oil.ts';

export const HAZE = { drop_m: 50e-6, way_m: 0.01, hydrosol_K: 303.15 } as const;

/** Time in which such a drop crosses that way, s; infinite for an oil as heavy as water. */
export function hazeTime(composition: readonly OilShare[]): number {
  const T = HAZE.hydrosol_K;
  const difference = Math.abs(tableLiquidDensity(T) - oilDensity(composition, T));
  return HAZE.way_m / stokesVelocity(HAZE.drop_m, difference, tableLiquidViscosity(T), STANDARD_GRAVITY);
}
