/** A film on skin, a drop in a room, and the temperature at which an oil's vapour burns: orders of magnitude. */
import { antoinePressure } from '../fluids/vapour-curve.ts';
import type { Constituent } from '../fluids/constituents.ts';
import { constituentById } from '../fluids/constituents.ts';
import { bisectedRoot } from '../maths/bisect.ts';
import { skinPermeability } from '../transfer/after-the-still.ts';
import { filmEvaporation } from '../transfer/vapour-in-air.ts';
import { roomPressure, type OilShare } from './oil.ts';

/** Share of a neat film that goes into the skin while the rest leaves into the air. */
export function absorbedShare(row: Constituent, coefficient_m_s: number, T: number, solubility_kg_m3: number): number {
  const taken = skinPermeability(row.logP.value, row.molarMass.value) * solubility_kg_m3;
  const leaving = filmEvaporation(coefficient_m_s, roomPressure(row, T), row.molarMass.value, T);
  return taken / (taken + leaving);
}

const FLASH_RANGE_K = [263.15, 423.15] as const;

/**
 * Temperature at which the vapour over an oil can be lit, K, by Le Chatelier: Σ x_i p_i(T)/p_i(T_flash,i) = 1, from the
 * flash points of its constituents. Within about 5 K; no safety data.
 */
export function flashPoint(composition: readonly OilShare[]): number {
  const rows = composition.map(({ constituent }) => constituentById(constituent));
  const moles = composition.map(({ share }, i) => share / (rows[i] as Constituent).molarMass.value);
  const whole = moles.reduce((sum, each) => sum + each, 0);
  const pressure = ({ vapourPressure: { A, B, C } }: Constituent, T: number): number => antoinePressure(A, B, C, T);
  const reached = (T: number): number =>
    rows.reduce((sum, row, i) => {
      const own = row.flashPoint?.value;
      return own === undefined ? sum : sum + ((moles[i] as number) / whole) * (pressure(row, T) / pressure(row, own));
    }, 0);
  return bisectedRoot((T) => reached(T) < 1, ...FLASH_RANGE_K);
}
