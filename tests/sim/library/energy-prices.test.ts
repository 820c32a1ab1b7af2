import { describe, expect, it } from 'vitest';
import { exampleScenario, examples, fieldAt, heatFromSource } from '../../../sim/index.ts';
import { defaultEnergyPrice, findHeatSource, heatSources } from '../../../sim/library/index.ts';
import { DEFAULT_ENERGY_PRICES_J } from '../../../sim/scenario/limits.ts';

const PER_KWH = 1 / 3.6e6;

describe('a default price', () => {
  it.each([
    ['electric-plate', 0.3 * PER_KWH],
    ['gas-ring', 0.1 * PER_KWH],
    // 2.50 a kilogram over 46.33 MJ/kg, and 0.40 over 14.5 MJ/kg
    ['outdoor-gas-burner', 5.396e-8],
    ['wood-stove', 2.759e-8],
  ])('of what a %s takes is that of its own fuel', (id, price) => {
    expect(defaultEnergyPrice(findHeatSource(id))).toBeCloseTo(price, 11);
    expect(heatFromSource(id)['energyPrice_J']).toBe(defaultEnergyPrice(findHeatSource(id)));
  });

  it('stands in the opening example, which has its plate without the library', () => {
    const { kind, shareToPot, lag_s } = heatFromSource('electric-plate');
    expect(exampleScenario('gentle-lavender').heat).toMatchObject({ kind, shareToPot, lag_s });
  });

  it('of electricity is that of a still that names none', () => {
    expect(defaultEnergyPrice(findHeatSource('electric-plate'))).toBe(fieldAt('heat.energyPrice_J')?.default);
  });

  it.each(examples.map(({ id }) => id))('in the example %s is that of its own fuel', (id) => {
    const { heat } = exampleScenario(id);
    const source = heatSources.find(({ kind }) => kind === heat.kind);
    if (!source) throw new Error(`no source of kind ${heat.kind}`);
    expect(heat.energyPrice_J).toBe(defaultEnergyPrice(source));
  });

  it('is known as a default by the verdict, whatever the source', () => {
    for (const source of heatSources) expect(DEFAULT_ENERGY_PRICES_J).toContain(defaultEnergyPrice(source));
  });
});
