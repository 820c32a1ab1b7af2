import { describe, expect, it } from 'vitest';
import { LossTable, surfaceLoss, type LossSurface } from '../../../sim/still/surface-loss.ts';

const side: LossSurface = {
  facing: 'side',
  length: 0.4,
  area: 0.5,
  emissivity: 0.6,
  insulation: 0.02,
  insulationConductivity: 0.04,
  radius: 0.2,
};
const others: readonly Partial<LossSurface>[] = [
  {},
  { facing: 'tube' },
  { length: 0.6 },
  { area: 0.7 },
  { emissivity: 0.2 },
  { insulation: 0 },
  { insulationConductivity: 0.06 },
  { radius: 0.1 },
  { radius: null },
];

describe('loss table', () => {
  it('holds the losses of its own surfaces, whatever was tabulated before', () => {
    for (const [airTemperature, airPressure, factor] of [
      [293.15, 101_325, 1],
      [283.15, 101_325, 1],
      [293.15, 85_000, 1],
      [293.15, 101_325, 1.2],
    ] as const) {
      for (const change of others) {
        const surface = { ...side, ...change };
        const { T_k, low } = new LossTable([surface], airTemperature, airPressure, factor).around(360);
        expect(low).toBe(factor * surfaceLoss(surface, T_k, airTemperature, airPressure).loss);
      }
    }
  });

  it('adds the losses of several surfaces', () => {
    const lid: LossSurface = { ...side, facing: 'up', radius: null };
    const at = (...surfaces: readonly LossSurface[]): number => new LossTable(surfaces, 293.15, 101_325, 1).at(350);
    expect(at(side, lid)).toBeCloseTo(at(side) + at(lid), 9);
  });
});
