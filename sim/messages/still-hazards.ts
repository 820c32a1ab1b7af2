/** What of a still's own metal and oil must be warned of. Common practice, no source; codes have the last word. */
import type { Scenario, ScenarioPart } from '../scenario/scenario.ts';

export type StillHazard = 'copper-joints' | 'brass' | 'zinc' | 'phenols-on-copper';

const PHENOLS: ReadonlySet<string> = new Set(['thymol', 'carvacrol', 'eugenol']);
/** Share of an oil from which on it counts as rich in phenols; judged. */
const PHENOL_RICH = 0.3;

export function hazardsOf({ pot, condenser, charge }: Scenario, part?: ScenarioPart): readonly StillHazard[] {
  const phenols = charge.composition
    .filter(({ constituent }) => PHENOLS.has(constituent))
    .reduce((sum, { share }) => sum + share, 0);
  const isRich = charge.mass_kg > 0 && phenols >= PHENOL_RICH;
  const made = { pot: pot.material, condenser: condenser.material } as const;
  const has = (material: string): readonly ScenarioPart[] =>
    (['pot', 'condenser'] as const).filter((each) => made[each] === material);
  const where: Readonly<Record<StillHazard, readonly ScenarioPart[]>> = {
    'copper-joints': has('copper'),
    brass: has('brass'),
    zinc: has('carbon-steel'),
    'phenols-on-copper': isRich && has('copper').length > 0 ? [...has('copper'), 'charge'] : [],
  };
  return (Object.keys(where) as StillHazard[]).filter((hazard) =>
    part === undefined ? where[hazard].length > 0 : where[hazard].includes(part),
  );
}
