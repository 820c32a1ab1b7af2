import { describe, expect, it } from 'vitest';
import { circleArea, cylinderDiameter, cylinderHeight, cylinderVolume } from '../../../sim/geometry/cylinder.ts';
import {
  bundleWidth,
  jacketFlowArea,
  jacketHydraulicDiameter,
  narrowestJacket,
  tubeCount,
} from '../../../sim/geometry/jacket.ts';
import {
  bedBottom,
  bedHeight,
  bedRoom,
  boilingVessel,
  heatedBaseArea,
  heatedBaseDiameter,
  packedHeight,
  waterRoom,
  type PotShape,
} from '../../../sim/geometry/pot.ts';
import { tubCapacity, tubDiameterFor, tubVolume } from '../../../sim/geometry/tub.ts';

const pot = (layout: PotShape['layout']): PotShape => ({ layout, diameter_m: 0.4, height_m: 0.5, gridHeight_m: 0.1 });
const boiler = { diameter_m: 0.2, height_m: 0.3 };
const charge = { mass_kg: 3, bulkDensity_kg_m3: 100 };

describe('a cylinder', () => {
  it('of one metre each way holds π/4 m³', () => {
    expect(circleArea(1)).toBe(Math.PI / 4);
    expect(cylinderVolume(1, 1)).toBe(Math.PI / 4);
  });

  it('gives back its height and its diameter from its volume', () => {
    const volume = cylinderVolume(0.32, 0.17);
    expect(cylinderHeight(volume, 0.32)).toBeCloseTo(0.17, 14);
    expect(cylinderDiameter(volume, 0.17)).toBeCloseTo(0.32, 14);
  });
});

describe('pot and boiler', () => {
  it('hold a charge of 30 L as a bed of 239 mm in a pot of 400 mm, and as none in the water', () => {
    expect(packedHeight(charge, 0.4)).toBeCloseTo(0.03 / (Math.PI * 0.04), 14);
    expect(bedHeight({ pot: pot('steam'), charge })).toBe(packedHeight(charge, 0.4));
    expect(bedHeight({ pot: pot('water'), charge })).toBe(0);
  });

  it('give the bed what is above the grid where there is one', () => {
    expect(bedBottom(pot('water-and-steam'))).toBe(0.1);
    expect(bedRoom(pot('water-and-steam'))).toBeCloseTo(Math.PI * 0.04 * 0.4, 14);
    expect([bedBottom(pot('steam')), bedRoom(pot('steam'))]).toEqual([0, expect.closeTo(Math.PI * 0.04 * 0.5, 14)]);
  });

  it('give the water what is under the grid, the whole pot, or the boiler', () => {
    expect(waterRoom({ pot: pot('water-and-steam'), boiler })).toBeCloseTo(Math.PI * 0.04 * 0.1, 14);
    expect(waterRoom({ pot: pot('water'), boiler })).toBeCloseTo(Math.PI * 0.04 * 0.5, 14);
    expect(waterRoom({ pot: pot('steam'), boiler })).toBeCloseTo(Math.PI * 0.01 * 0.3, 14);
  });

  it('are heated over the source or over their own base, whichever is smaller', () => {
    const still = (layout: PotShape['layout'], heatedDiameter_m: number | null) => ({
      pot: pot(layout),
      boiler,
      heat: { heatedDiameter_m },
    });
    expect(boilingVessel(still('steam', null))).toBe(boiler);
    expect(heatedBaseDiameter(still('water', null))).toBe(0.4);
    expect(heatedBaseDiameter(still('water', 0.18))).toBe(0.18);
    expect(heatedBaseDiameter(still('steam', 0.25))).toBe(0.2);
    expect(heatedBaseArea(still('water', 0.2))).toBeCloseTo(Math.PI * 0.01, 14);
  });
});

describe('a tub', () => {
  const tub = { tubDiameter_m: 0.6, tubHeight_m: 0.5, tubFill: 0.9 };

  it('holds its fill at the start and its height to the overflow', () => {
    expect(tubCapacity(tub)).toBeCloseTo(Math.PI * 0.09 * 0.5, 14);
    expect(tubVolume(tub)).toBeCloseTo(0.9 * tubCapacity(tub), 14);
  });

  it('has the diameter that gives its volume', () => {
    expect(tubDiameterFor(tub, tubVolume(tub))).toBeCloseTo(0.6, 14);
    expect(tubDiameterFor(tub, 4 * tubVolume(tub))).toBeCloseTo(1.2, 14);
  });
});

describe('a jacket', () => {
  const bundle = { kind: 'bundle', tubes: 7, outsideDiameter_m: 0.01 } as const;

  it('counts the tubes of a bundle only', () => {
    expect(tubeCount(bundle)).toBe(7);
    expect(tubeCount({ ...bundle, kind: 'jacketed-tube' })).toBe(1);
  });

  it('is a fiftieth wider than what stands in it, and takes seven tubes in hexagonal packing', () => {
    expect(bundleWidth({ ...bundle, kind: 'jacketed-tube' })).toBe(0.01);
    expect(narrowestJacket({ ...bundle, kind: 'jacketed-tube' })).toBeCloseTo(0.0102, 14);
    expect(bundleWidth(bundle)).toBeCloseTo(0.01 * Math.sqrt(8.4), 14);
  });

  it('leaves round one tube an annulus, whose hydraulic diameter is twice its gap', () => {
    expect(jacketFlowArea(0.03, 0.02, 1)).toBeCloseTo((Math.PI / 4) * (0.0009 - 0.0004), 16);
    expect(jacketHydraulicDiameter(0.03, 0.02, 1)).toBeCloseTo(0.01, 14);
  });

  it('leaves to seven tubes the section less theirs over the rim of all', () => {
    expect(jacketFlowArea(0.05, 0.01, 7)).toBeCloseTo(circleArea(0.05) - 7 * circleArea(0.01), 15);
    expect(jacketHydraulicDiameter(0.05, 0.01, 7)).toBeCloseTo((0.0025 - 0.0007) / (0.05 + 0.07), 14);
  });
});
