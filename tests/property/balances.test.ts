/** A hundred seeded stills with every way in of the cooling water: what goes in comes out or stays, to rounding. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { simulate } from '../../sim/index.ts';
import { anyScenario } from './random-scenario.ts';
import { openBalances } from './sound-run.ts';

const SEED = 20_261_128;
const STILLS = 100;

it('closes every balance to 1e-9 of what passed through, on a hundred stills of every kind', () => {
  const kinds = new Set<string>();
  for (const reach of ['ordinary', 'corner'] as const)
    for (const scenario of fc.sample(anyScenario({ reach, steps: 240 }), { numRuns: STILLS / 2, seed: SEED })) {
      const { condenser, cooling, charge, separator } = scenario;
      const result = simulate(scenario);
      expect(result.failure).toBe(null);
      expect(openBalances(result), JSON.stringify({ condenser, cooling })).toEqual([]);
      kinds.add(condenser.kind);
      if (condenser.kind === 'coil-in-tub')
        kinds.add(cooling.inlet).add(cooling.stir_m_s > 0 ? 'stirred' : 'not stirred');
      kinds.add(separator.returnShare > 0 ? 'cohobated' : 'kept').add(charge.mass_kg > 0 ? 'charged' : 'empty');
    }
  expect([...kinds].sort()).toEqual(
    expect.arrayContaining(
      [
        'bundle',
        'coil-in-tub',
        'jacketed-tube',
        'laid',
        'perforated',
        'pointing-up',
        'stirred',
        'top',
        'cohobated',
      ].sort(),
    ),
  );
});
