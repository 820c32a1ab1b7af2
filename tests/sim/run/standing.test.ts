/** What a run says of how long its hydrosol must stand. */
import { describe, expect, it } from 'vitest';
import { exampleScenario, simulate, verdictOf, type Scenario } from '../../../sim/index.ts';

const lavender = exampleScenario('gentle-lavender');
const clears = (change: Partial<Scenario['factors']>): number => {
  const time = simulate({ ...lavender, factors: { ...lavender.factors, ...change } }).summary.hazeClears_s;
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
    expect(found?.values).toMatchObject({
      haze_kg: run.summary.oilHaze_kg,
      sinks: false,
      clears_s: run.summary.hazeClears_s,
    });
    const without = simulate({ ...lavender, charge: { ...lavender.charge, mass_kg: 0 } });
    expect(without.summary.hazeClears_s).toBe(null);
    expect(
      verdictOf(without)
        .paragraphs.flat()
        .map(({ kind }) => kind),
    ).not.toContain('cloudy-hydrosol');
  });
});
