/** What a run says of how long its hydrosol must stand. */
import { describe, expect, it } from 'vitest';
import { exampleScenario, simulate, verdictOf, type Scenario } from '../../../sim/index.ts';
import { timeToStand } from '../../../sim/products/standing.ts';

const lavender = exampleScenario('gentle-lavender');
const clears = (change: Partial<Scenario['factors']>): number => {
  const time = timeToStand(simulate({ ...lavender, factors: { ...lavender.factors, ...change } }));
  if (time === null) throw new Error('it did not clear');
  return time;
};

describe('hydrosol of a run, left to stand', () => {
  it('clears in hours, more slowly the finer the drops', () => {
    expect(clears({})).toBeGreaterThan(1800);
    expect(clears({})).toBeLessThan(12 * 3600);
    expect(clears({ dropSize: 0.3 })).toBeGreaterThan(2 * clears({}));
  });

  it('is concluded for a run with haze, apart from what is dissolved, and not for one without oil', () => {
    const run = simulate(lavender);
    const found = verdictOf(run)
      .paragraphs.flat()
      .find(({ kind }) => kind === 'cloudy-hydrosol');
    expect(found?.values).toMatchObject({ haze_kg: run.summary.oilHaze_kg, sinks: false, clears_s: timeToStand(run) });
    const without = simulate({ ...lavender, charge: { ...lavender.charge, mass_kg: 0 } });
    expect(timeToStand(without)).toBe(null);
    expect(
      verdictOf(without)
        .paragraphs.flat()
        .map(({ kind }) => kind),
    ).not.toContain('cloudy-hydrosol');
  });
});
