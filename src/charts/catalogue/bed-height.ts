import type { Scenario } from '../../../sim/index.ts';

/** Height of the packed charge in its pot, m: what the record's layers divide. */
export const bedHeight = ({ charge, pot }: Scenario): number =>
  charge.mass_kg / charge.bulkDensity_kg_m3 / ((Math.PI / 4) * pot.diameter_m ** 2);
