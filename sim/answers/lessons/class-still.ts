/** The stills of the lessons: those of the garden's examples, changed where a lesson needs it. */
import { openingExample } from '../../run/opening-example.ts';
import type { ScenarioInput } from '../../scenario/scenario.ts';

/** The first example with another name and some parts of its own. */
export const gardenStill = (name: string, parts: Partial<ScenarioInput>): ScenarioInput => {
  const { scenario } = openingExample;
  return {
    ...scenario,
    note: '',
    ...parts,
    name,
    heat: { ...scenario.heat, ...parts.heat },
    pot: { ...scenario.pot, ...parts.pot },
    charge: { ...scenario.charge, ...parts.charge },
    condenser: { ...scenario.condenser, ...parts.condenser },
    cooling: { ...scenario.cooling, ...parts.cooling },
    separator: { ...scenario.separator, ...parts.separator },
    site: { ...scenario.site, ...parts.site },
    run: { ...scenario.run, ...parts.run },
  };
};

/** A condenser that takes all the steam these lessons make. */
export const AMPLE_COIL = {
  condenser: { length_m: 6, coilDiameter_m: 0.28, coilPitch_m: 0.05 },
  cooling: { flow_kg_s: [{ at_s: 0, value: 0.03 }], tubDiameter_m: 0.42, tubHeight_m: 0.5 },
} as const satisfies Partial<ScenarioInput>;

/** The pot wrapped, so that little heat is lost and what goes in comes out as steam. */
export const WRAPPED = { insulationThickness_m: 0.03 } as const;
