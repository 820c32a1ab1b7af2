/** Ice put on the tub: lots by time, kept in the order they go in. */
import { LATEST_CHANGE_S, MOST_ICE_LOTS, type Scenario } from '../../../../sim/index.ts';

export type IceLots = Scenario['cooling']['ice'];

const FIRST_AT_S = 3600;
const USUAL_LOT_KG = 5;
const USUAL_GAP_S = 1800;

const inOrder = (lots: IceLots): IceLots => [...lots].sort((a, b) => a.at_s - b.at_s);

export const withLot = (lots: IceLots, index: number, change: Partial<IceLots[number]>): IceLots =>
  inOrder(lots.map((lot, at) => (at === index ? { ...lot, ...change } : lot)));

export const withoutLot = (lots: IceLots, index: number): IceLots => lots.filter((_, at) => at !== index);

/** One more lot like the last, half an hour after it. */
export function withAnotherLot(lots: IceLots): IceLots {
  const last = lots.at(-1);
  if (lots.length >= MOST_ICE_LOTS) return lots;
  const next = last
    ? { at_s: Math.min(LATEST_CHANGE_S, last.at_s + USUAL_GAP_S), mass_kg: last.mass_kg }
    : { at_s: FIRST_AT_S, mass_kg: USUAL_LOT_KG };
  return inOrder([...lots, next]);
}
