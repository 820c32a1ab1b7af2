import { describe, expect, it } from 'vitest';
import { describePieces, pieceDiameter, sauterDiameter } from '../../../sim/library/piece-size.ts';

describe('size of plant pieces, d = 6 V/S', () => {
  it('is the diameter of a grain and the side of a cube', () => {
    expect(pieceDiameter({ shape: 'grain', diameter_m: 0.002, share: 1 })).toBe(0.002);
    expect(pieceDiameter({ shape: 'block', sides_m: [0.004, 0.004, 0.004], share: 1 })).toBeCloseTo(0.004, 15);
  });

  it('is three thicknesses of a leaf, the limit of a wide block', () => {
    expect(pieceDiameter({ shape: 'leaf', thickness_m: 0.0003, share: 1 })).toBeCloseTo(0.0009, 15);
    expect(pieceDiameter({ shape: 'block', sides_m: [1e6, 1e6, 0.0003], share: 1 })).toBeCloseTo(0.0009, 9);
  });

  it('is one and a half diameters of a long stick and one of a stick as long as wide', () => {
    expect(pieceDiameter({ shape: 'stick', diameter_m: 0.002, length_m: 1e6, share: 1 })).toBeCloseTo(0.003, 9);
    expect(pieceDiameter({ shape: 'stick', diameter_m: 0.002, length_m: 0.002, share: 1 })).toBeCloseTo(0.002, 15);
  });

  it('lets the finer part of a mixture count most', () => {
    const fine = { shape: 'grain', diameter_m: 0.001, share: 0.5 } as const;
    const coarse = { shape: 'grain', diameter_m: 0.004, share: 0.5 } as const;
    expect(sauterDiameter([fine, coarse])).toBeCloseTo(0.0016, 15);
  });

  it('says in words what it took', () => {
    expect(
      describePieces([
        { shape: 'leaf', thickness_m: 0.0003, share: 0.6 },
        { shape: 'stick', diameter_m: 0.004, length_m: 0.05, share: 0.4 },
      ]),
    ).toBe('leaf 0.3 mm thick (60 % by volume) and stick 4 × 50 mm (40 % by volume)');
  });
});
