/** What several plants are taken to have in common, with its provenance. */
import { band, sourced, type Band, type Sourced } from './provenance.ts';

/** Minutes a charge is distilled, shortest and longest. */
export const handbookMinutes = (shortest: number, longest: number) =>
  sourced(
    [shortest, longest],
    'memory',
    'general distilling handbooks (Guenther; FAO/UNIDO manuals)',
    'not checked; small scale means 0.5–5 kg in a home or lab still',
  );

/** Moisture of a fresh plant. */
export const freshMoisture = (typical: number, low: number, high: number): Sourced<Band> =>
  sourced(
    band(typical, low, high),
    'estimated',
    'typical range for this tissue from general drying literature, unchecked',
    'typical is the middle of the range',
  );

/** Moisture of a dried drug. */
export const driedMoisture = (typical: number, low: number, high: number): Sourced<Band> =>
  sourced(
    band(typical, low, high),
    'memory',
    'European Pharmacopoeia monograph',
    'water or loss-on-drying limits of 10–13 % give the upper end; typical is the middle of the range',
  );

/** Packing of fresh plant, kg/m³. @param note what kind of plant, and how loose it lies */
export const freshDensity = (loose: number, packed: number, note: string) =>
  sourced(
    { loose, packed },
    'estimated',
    'scaled from charge densities commonly quoted by small distillers (100–300 kg/m³ for herb) and from seed or wood measurements; no handbook value was readable',
    note,
  );

export const HERB = 'fresh to lightly wilted herb; loose about 60–70 % of the packed value';
export const TWIGS = 'fresh leafy twigs; loose about 60–70 % of the packed value';

/** Packing of dried plant, kg/m³. */
export const driedDensity = (loose: number, packed: number) =>
  sourced(
    { loose, packed },
    'estimated',
    'dried plant in practice packs at 60 to 150 kg/m³, more for stiff pieces',
    'placed in that range by the density of the fresh plant',
  );
