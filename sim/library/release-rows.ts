/**
 * How plants give up their oil, as their rows state it. No curve at home scale with charge, steam and oil against time
 * was found: the numbers are judged from laboratory curves of the plant and its relatives (`published-curves.ts`) and
 * from run lengths in print, so that they are estimates with wide bands; each row says what bounds it.
 */
import { band, sourced, type Band, type Sourced } from './provenance.ts';
import type { GroupRelease, ReleaseParameters } from './types.ts';

type Triple = readonly [typical: number, low: number, high: number];

interface GroupEstimate {
  /** Share of the oil that starts open to the steam. */
  readonly readyShare: Triple;
  /** Rate at which held oil comes free at 100 °C, per minute. */
  readonly heldRate_1_min: Triple;
}

export interface ReleaseEstimate {
  readonly hydrocarbon: GroupEstimate;
  readonly oxygenate: GroupEstimate;
  /** Left out where the plant's sesquiterpenes are taken to follow its hydrocarbons as those of juniper needles did. */
  readonly sesquiterpene?: GroupEstimate;
  readonly takeUp: Triple;
  /** What bounds the numbers. */
  readonly why: string;
}

/** Held rate of sesquiterpenes over limonene's in ground Juniperus virginiana needles: 0.0056 and 0.0147 per minute. */
const SESQUITERPENE_RATE = 0.4;

/** Sesquiterpenes of leaf, herb and needle: little of them ready, and slow. */
const slowSesquiterpenes = ({ heldRate_1_min: [typical, low, high] }: GroupEstimate): GroupEstimate => ({
  readyShare: [0.08, 0, 0.3],
  heldRate_1_min: [SESQUITERPENE_RATE * typical, SESQUITERPENE_RATE * low, SESQUITERPENE_RATE * high],
});

/** What is the same for all plants. */
export const commonRelease = {
  activationEnergy_J_mol: sourced(
    60_000,
    'estimated',
    'diffusion through wet tissue and wax, 40 to 80 kJ/mol',
    'matters little: the charge stands within a few kelvin of 100 °C',
  ),
  takeUpExponent: sourced(
    0.4,
    'estimated',
    'film-controlled transfer in packed beds; laboratory steam was in excess and does not show it',
  ),
  halfCoverage: sourced(
    0.05,
    'assumption',
    'the last twentieth of the oil no longer covers the surface; no measurement found',
  ),
} as const;

/** The row's numbers as bands with their provenance */
export function estimatedRelease(
  estimate: ReleaseEstimate,
): Pick<ReleaseParameters, 'hydrocarbon' | 'oxygenate' | 'sesquiterpene'> {
  const { hydrocarbon, oxygenate, sesquiterpene = slowSesquiterpenes(hydrocarbon), takeUp, why } = estimate;
  const of = ([typical, low, high]: Triple, scale = 1): Sourced<Band> =>
    sourced(band(typical * scale, low * scale, high * scale), 'estimated', why);
  const group = ({ readyShare, heldRate_1_min }: GroupEstimate): GroupRelease => ({
    readyShare: of(readyShare),
    heldRate_1_s: of(heldRate_1_min, 1 / 60),
    takeUp: of(takeUp),
  });
  return { hydrocarbon: group(hydrocarbon), oxygenate: group(oxygenate), sesquiterpene: group(sesquiterpene) };
}
