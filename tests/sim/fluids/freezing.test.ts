import { describe, expect, it } from 'vitest';
import { constituentById, constituents, waterSolubility } from '../../../sim/fluids/constituents.ts';
import { canFreeze, crystalSolubility, freezingTemperature, type Freezing } from '../../../sim/fluids/freezing.ts';

const freezing = constituents.filter(canFreeze);
const of = (id: string): Freezing => {
  const found = constituentById(id);
  if (!canFreeze(found)) throw new Error(`${id} has no crystals`);
  return found;
};

describe('an oil that freezes', () => {
  it.each(freezing.map((row) => [row.name, row] as const))('of %s: both forms of the law agree', (_name, row) => {
    for (const x of [0.2, 0.5, 0.9, 1]) {
      const T = freezingTemperature(row, x);
      if (T >= 263.15) expect(crystalSolubility(row, T)).toBeCloseTo(x, 10);
    }
    expect(freezingTemperature(row, 1)).toBeCloseTo(row.meltingPoint.value, 9);
  });

  it('freezes sooner the more of it there is', () => {
    expect(freezingTemperature(of('trans_anethole'), 0.9)).toBeGreaterThan(
      freezingTemperature(of('trans_anethole'), 0.7),
    );
  });

  it('stays within the span that the law is asked for', () => {
    expect(() => freezingTemperature(of('thymol'), 0.01)).toThrow(RangeError);
    expect(() => crystalSolubility(of('menthol'), 320)).toThrow(RangeError);
  });

  it('leaves the solubility in water of what is liquid at 25 °C as it was measured', () => {
    const anethole = of('trans_anethole');
    expect(waterSolubility(anethole, 298.15)).toBeCloseTo(anethole.waterSolubility.value, 12);
  });
});
