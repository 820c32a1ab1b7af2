/** What the botanicals' release parameters are built from: fitted curves, stated rates, and what is common to all. */
import { fittedRelease } from './fitted-release.ts';
import { publishedCurves, publishedRates } from './published-curves.ts';
import { band, sourced, type Band, type Provenance, type Sourced } from './provenance.ts';
import type { GroupRelease, ReleaseParameters } from './types.ts';

type FittedCurve = keyof typeof fittedRelease;

const percent = (share: number): string => `${(100 * share).toPrecision(2)} %`;

/** How a fitted number came about: which curve, how well, how many points. */
const fitProvenance = (curve: FittedCurve, note: string): Provenance => {
  const fit = fittedRelease[curve];
  const row = publishedCurves.find(({ id }) => id === curve);
  if (row === undefined) throw new RangeError(`no published curve ${curve}`);
  const points =
    row.points.length === 1
      ? 'exact through one point'
      : fit.residual === 0
        ? `exact through ${row.points.length} points`
        : `${row.points.length} points, residual ${percent(fit.residual)} of the final yield`;
  return { kind: 'fitted', source: `${row.plant}, ${row.how} (${row.provenance.source}): ${points}`, note };
};

/** Held rate in 1/s from a fitted curve; the band, given per minute, is judgement or other curves. */
export const heldRateFrom = (curve: FittedCurve, low: number, high: number, note: string): Sourced<Band> => ({
  value: band(fittedRelease[curve].heldRate_1_s, low / 60, high / 60),
  ...fitProvenance(curve, note),
});

/** Ready share from a fitted curve. */
export const readyShareFrom = (curve: FittedCurve, low: number, high: number, note: string): Sourced<Band> => ({
  value: band(fittedRelease[curve].readyShare, low, high),
  ...fitProvenance(curve, note),
});

/** Held rate in 1/s as authors state it, without a curve. */
export const heldRateStated = (rate: keyof typeof publishedRates, low: number, high: number): Sourced<Band> => {
  const { value, kind, source, note } = publishedRates[rate];
  return { value: band(value / 60, low / 60, high / 60), kind, source, note };
};

/** Held rate in 1/s from numbers per minute that no curve of this plant supports. */
export const heldRateEstimated = (
  typical: number,
  low: number,
  high: number,
  source: string,
  note?: string,
): Sourced<Band> => sourced(band(typical / 60, low / 60, high / 60), 'estimated', source, note);

export const readyShareEstimated = (
  typical: number,
  low: number,
  high: number,
  source: string,
  note?: string,
): Sourced<Band> => sourced(band(typical, low, high), 'estimated', source, note);

const takeUp = sourced(
  band(0.05, 0.02, 0.1),
  'estimated',
  'the range that spans published lavender runs',
  'nobody has measured it for other plants; the laboratory curves had steam in excess and do not show it',
);

/** What no measurement tells apart between plants or groups of constituents. */
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
    'mass transfer through the film around the pieces of a packed bed goes as flow to the power 0.3 to 0.5',
    'a tea-tree still with three fuels points the same way: gas to diesel, 44 to 68 kg/h m², took 145.5 to 121.4 min with heating up, power −0.42; the flux of the third is not printed and its run was the longest (Ahmad, Mansor and Tunku Kassim, J. Trop. Agric. Food Sci. 26(2) (1998), abstract)',
  ),
  halfCoverage: sourced(
    0.05,
    'assumption',
    'the last twentieth of the oil no longer covers the surface; no measurement found',
  ),
} as const satisfies Partial<ReleaseParameters>;

/**
 * Take-up of a bed with far more oil than lavender's, whose 1.4 to 2.7 kg in a cubic metre the common band stands for: oil
 * covers more of the plant there, so the surface that gives it to the steam grows with the oil in the bed.
 * @param perVolume oil at the surface in a cubic metre of bed, as a multiple of lavender's
 */
export const takeUpOfRichBed = (perVolume: number, note: string): Sourced<Band> => {
  const { typical, low, high } = takeUp.value;
  return sourced(
    band(typical * perVolume, low * perVolume, high * perVolume),
    'estimated',
    `lavender’s times ${perVolume}, for the oil at the surface in a cubic metre of bed`,
    note,
  );
};

/** One group's parameters: share and rate of its own, the take-up common to all plants unless one is given. */
export const groupRelease = (
  readyShare: Sourced<Band>,
  heldRate_1_s: Sourced<Band>,
  ownTakeUp: Sourced<Band> = takeUp,
): GroupRelease => ({ readyShare, heldRate_1_s, takeUp: ownTakeUp });

/** Both groups alike, where nothing tells them apart. */
export const sameRelease = (
  readyShare: Sourced<Band>,
  heldRate_1_s: Sourced<Band>,
  ownTakeUp?: Sourced<Band>,
): { readonly hydrocarbon: GroupRelease; readonly oxygenate: GroupRelease } => {
  const group = groupRelease(readyShare, heldRate_1_s, ownTakeUp);
  return { hydrocarbon: group, oxygenate: group };
};
