import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  nusseltAnnulus,
  nusseltAnnulusDeveloped,
  nusseltAnnulusExact,
  nusseltAnnulusLaminar,
} from '../../../sim/transfer/annulus.ts';
import { boilingFluxRohsenow, boilingSuperheatRohsenow } from '../../../sim/transfer/boiling.ts';
import { COIL_TURBULENT_RE, criticalReynoldsCoil, nusseltCoil } from '../../../sim/transfer/coil-flow.ts';
import { cylinderResistance, overallOutsideCoefficient, planeResistance } from '../../../sim/transfer/conduction.ts';
import { nusseltCrossFlowCylinder } from '../../../sim/transfer/cross-flow.ts';
import { evaporationFluxCarrier, moistAirDensity, moistAirGrashof } from '../../../sim/transfer/evaporation.ts';
import {
  coefficientFromOutlet,
  effectivenessCondenser,
  effectivenessCounterflow,
  effectivenessCrossMaxMixed,
  effectivenessParallel,
  logMeanCounterflow,
  logMeanDifference,
} from '../../../sim/transfer/exchanger.ts';
import {
  combineForcedAndNatural,
  nusseltHorizontalCylinder,
  nusseltHotSideDown,
  nusseltHotSideUp,
  nusseltVerticalPlate,
  rayleighNumber,
} from '../../../sim/transfer/natural-convection.ts';
import { radiantFlux } from '../../../sim/transfer/radiation.ts';
import { nusseltGnielinski, nusseltLaminarTube, nusseltTube } from '../../../sim/transfer/tube-flow.ts';
import { celsius, look } from './look.ts';

const positive = (max: number): fc.Arbitrary<number> => fc.double({ min: 1e-3, max, noNaN: true });

describe('natural convection', () => {
  it('takes its powers by roots without losing figures', () => {
    fc.assert(
      fc.property(positive(1e12), positive(15), (Ra, Pr) => {
        const cylinder = (0.6 + (0.387 * Ra ** (1 / 6)) / (1 + (0.559 / Pr) ** (9 / 16)) ** (8 / 27)) ** 2;
        const plate = (0.825 + (0.387 * Ra ** (1 / 6)) / (1 + (0.492 / Pr) ** (9 / 16)) ** (8 / 27)) ** 2;
        expect(nusseltHorizontalCylinder(Ra, Pr) / cylinder).toBeCloseTo(1, 12);
        expect(nusseltVerticalPlate(Ra, Pr) / plate).toBeCloseTo(1, 12);
      }),
    );
  });

  it('keeps its limit of still fluid at no temperature difference, and never falls below', () => {
    expect(nusseltHorizontalCylinder(0, 4)).toBeCloseTo(0.36, 12);
    expect(nusseltHorizontalCylinder(-5, 4)).toBeCloseTo(0.36, 12);
    expect(nusseltVerticalPlate(0, 4)).toBeCloseTo(0.825 ** 2, 12);
    expect([nusseltHotSideUp(0), nusseltHotSideDown(0)]).toEqual([0, 0]);
  });

  it('grows with the Rayleigh number', () => {
    fc.assert(
      fc.property(positive(1e11), (Ra) => {
        expect(nusseltHorizontalCylinder(Ra * 1.1, 4)).toBeGreaterThan(nusseltHorizontalCylinder(Ra, 4));
        expect(nusseltHotSideUp(Ra * 1.1)).toBeGreaterThan(nusseltHotSideUp(Ra));
        expect(nusseltHotSideDown(Ra)).toBeLessThan(nusseltHotSideUp(Ra));
      }),
    );
  });

  it('asks only how far apart wall and water are, and lets the plume turn round below 4 °C', () => {
    const up = rayleighNumber(3e-4, 20, 0.012, 6e-7, 1.5e-7, 9.81);
    expect(rayleighNumber(3e-4, -20, 0.012, 6e-7, 1.5e-7, 9.81)).toBe(up);
    expect(rayleighNumber(-3e-4, 20, 0.012, 6e-7, 1.5e-7, 9.81)).toBe(up);
    expect(rayleighNumber(3e-4, 0, 0.012, 6e-7, 1.5e-7, 9.81)).toBe(0);
  });

  it('leaves either kind of convection alone when the other is absent', () => {
    expect(combineForcedAndNatural(20, 0)).toBeCloseTo(20, 12);
    expect(combineForcedAndNatural(0, 15)).toBeCloseTo(15, 12);
    expect(combineForcedAndNatural(20, 15)).toBeGreaterThan(20);
  });

  it('cools a cold lid as a hot base, half as well', () => {
    const hot = look('pot-lid-convection', { T_s: 320, T_air: 300, D: 0.3 });
    const cold = look('pot-lid-convection', { T_s: 300, T_air: 320, D: 0.3 });
    expect(cold / hot).toBeCloseTo(0.5, 6);
  });
});

describe('forced convection', () => {
  it('has the values of still or developed flow at no flow', () => {
    expect(nusseltCrossFlowCylinder(0, 5)).toBe(0.3);
    expect(nusseltTube(0, 5, 0.01, 1)).toBeCloseTo(3.66, 12);
    expect(nusseltAnnulus(0, 5, 0.012, 0.02, 1)).toBeCloseTo(nusseltAnnulusDeveloped(0.6), 12);
    expect(nusseltCoil(0, 5, 0.01, 0.2)).toBeCloseTo(3.66, 12);
  });

  it('meets itself where laminar flow ends and where turbulence is full', () => {
    const meets = (nusselt: (Re: number) => number, Re: number): void => {
      expect(nusselt(Re * (1 - 1e-10)) / nusselt(Re * (1 + 1e-10))).toBeCloseTo(1, 7);
    };
    for (const Re of [2300, 1e4]) {
      meets((x) => nusseltTube(x, 5, 0.01, 2), Re);
      meets((x) => nusseltAnnulus(x, 5, 0.012, 0.02, 2), Re);
    }
    for (const Re of [criticalReynoldsCoil(0.01, 0.2), COIL_TURBULENT_RE])
      meets((x) => nusseltCoil(x, 5, 0.01, 0.2), Re);
  });

  it('never falls as the flow grows', () => {
    fc.assert(
      fc.property(positive(5e4), fc.double({ min: 0.5, max: 13, noNaN: true }), (Re, Pr) => {
        const more = Re * 1.05;
        expect(nusseltTube(more, Pr, 0.01, 2)).toBeGreaterThanOrEqual(nusseltTube(Re, Pr, 0.01, 2));
        expect(nusseltAnnulus(more, Pr, 0.012, 0.02, 2)).toBeGreaterThanOrEqual(nusseltAnnulus(Re, Pr, 0.012, 0.02, 2));
        expect(nusseltCrossFlowCylinder(more, Pr)).toBeGreaterThan(nusseltCrossFlowCylinder(Re, Pr));
      }),
    );
    expect(nusseltGnielinski(500, 5)).toBe(0);
  });

  it('settles to its developed value in a long tube and a long gap', () => {
    expect(nusseltLaminarTube(500, 5, 0.01, 1e7)).toBeCloseTo(3.66, 1);
    expect(nusseltAnnulusLaminar(500, 5, 0.012, 0.02, 1e9)).toBeCloseTo(nusseltAnnulusDeveloped(0.6), 6);
  });

  it('follows the exact annulus at every tabulated ratio, and falls steadily between them', () => {
    const table: readonly (readonly [number, number])[] = [
      [0.05, 17.46],
      [0.1, 11.56],
      [0.25, 7.37],
      [0.5, 5.74],
      [0.6, 5.44895],
      [0.75, 5.15574],
      [1, 4.86],
    ];
    for (const [ratio, exact] of table) expect(nusseltAnnulusExact(ratio)).toBeCloseTo(exact, 10);
    for (let ratio = 0.02; ratio < 0.995; ratio += 0.005)
      expect(nusseltAnnulusExact(ratio + 0.005)).toBeLessThan(nusseltAnnulusExact(ratio));
  });
});

describe('exchangers', () => {
  it('exchange nothing without area and everything with endless area in counterflow', () => {
    expect([
      effectivenessCondenser(0),
      effectivenessCounterflow(0, 0.5),
      effectivenessParallel(0, 0.5),
      effectivenessCrossMaxMixed(0, 0.5),
    ]).toEqual([0, 0, 0, 0]);
    expect(effectivenessCounterflow(1e6, 0.5)).toBe(1);
    expect(effectivenessParallel(1e6, 0.5)).toBeCloseTo(1 / 1.5, 12);
  });

  it('rank counterflow before cross flow before parallel flow, and are alike beside a condensing side', () => {
    fc.assert(
      fc.property(positive(8), fc.double({ min: 0.01, max: 1, noNaN: true }), (NTU, C_r) => {
        expect(effectivenessCounterflow(NTU, C_r)).toBeGreaterThanOrEqual(effectivenessCrossMaxMixed(NTU, C_r) - 1e-12);
        expect(effectivenessCrossMaxMixed(NTU, C_r)).toBeGreaterThanOrEqual(effectivenessParallel(NTU, C_r) - 1e-12);
        expect(effectivenessCounterflow(NTU, 0)).toBeCloseTo(effectivenessCondenser(NTU), 12);
        expect(effectivenessCrossMaxMixed(NTU, 0)).toBeCloseTo(effectivenessCondenser(NTU), 12);
        expect(effectivenessParallel(NTU, 0)).toBeCloseTo(effectivenessCondenser(NTU), 12);
      }),
    );
  });

  it('run smoothly into balanced flow and into equal end differences', () => {
    expect(effectivenessCounterflow(3, 1 - 1e-9)).toBeCloseTo(0.75, 8);
    expect(logMeanDifference(40, 40 * (1 + 1e-12))).toBeCloseTo(40, 9);
    expect(logMeanDifference(40, 40)).toBe(40);
  });

  it('have a log mean between the two ends, and none when an end is closed or crossed', () => {
    fc.assert(
      fc.property(positive(100), positive(100), (a, b) => {
        const mean = logMeanDifference(a, b);
        expect(mean).toBeGreaterThanOrEqual(Math.min(a, b) * (1 - 1e-12));
        expect(mean).toBeLessThanOrEqual(0.5 * (a + b) * (1 + 1e-12));
        expect(logMeanDifference(b, a)).toBeCloseTo(mean, 9);
      }),
    );
    expect([logMeanDifference(0, 10), logMeanDifference(-5, 10), logMeanCounterflow(50, 40, 30, 60)]).toEqual([
      0, 0, 0,
    ]);
    expect([
      coefficientFromOutlet(1000, 15, 100, 100, 0.02, 1),
      coefficientFromOutlet(1000, 15, 15, 100, 0.02, 1),
    ]).toEqual([0, 0]);
  });
});

describe('conduction, radiation, evaporation and boiling', () => {
  it('have no resistance without a wall, and no heat through an absent film', () => {
    expect([cylinderResistance(0.01, 0.01, 390), planeResistance(0, 0.04)]).toEqual([0, 0]);
    expect([
      overallOutsideCoefficient(0, 1500, 0.01, 0.012, 390, 0),
      overallOutsideCoefficient(9000, 0, 0.01, 0.012, 390, 0),
    ]).toEqual([0, 0]);
  });

  it('lose a quarter of a clean coil’s coefficient to 2·10⁻⁴ m²K/W of scale', () => {
    const clean = overallOutsideCoefficient(11000, 1662, 0.01, 0.012, 390, 0);
    expect(1 / overallOutsideCoefficient(11000, 1662, 0.01, 0.012, 390, 2e-4) - 1 / clean).toBeCloseTo(2e-4, 12);
  });

  it.each([
    [15, 1360],
    [30, 1390],
    [50, 1390],
    [70, 1330],
  ])(
    'give a clean 10/12 mm coil in still water at %d °C an overall %d W/m²K (independent evaluation, printed to 10)',
    (t, U) => {
      const found = look('tube-in-tub-overall', {
        T_sat: celsius(100),
        T_water: celsius(t),
        D_i: 0.01,
        D_o: 0.012,
        k: 390,
      });
      expect(Math.abs(found - U)).toBeLessThan(7);
    },
  );

  it('condense nothing in a tub or a jacket as hot as the steam', () => {
    const hot = { T_sat: celsius(100), T_water: celsius(100), D_i: 0.01, D_o: 0.012, k: 390 };
    expect(look('tube-in-tub-overall', hot)).toBe(0);
    expect(look('coil-length-to-condense', { m: 1e-3, ...hot })).toBe(Number.MAX_VALUE);
    expect(look('coil-length-to-condense', { m: 0, ...hot })).toBe(0);
    const starved = {
      m: 1e-3,
      m_c: 5e-3,
      T_in: celsius(15),
      D_i: 0.01,
      D_o: 0.012,
      D_s: 0.02,
      T_sat: celsius(100),
      k: 390,
    };
    expect(look('jacket-condensing-length', starved)).toBe(Number.MAX_VALUE);
    expect(look('jacket-overall', starved)).toBe(0);
  });

  it('radiate nothing between equals and the same either way', () => {
    expect(radiantFlux(0.9, 300, 300)).toBe(0);
    expect(radiantFlux(0.9, 350, 300)).toBeCloseTo(-radiantFlux(0.9, 300, 350), 12);
    expect(radiantFlux(1, 300, 0)).toBeCloseTo(5.670374419e-8 * 300 ** 4, 9);
  });

  it('evaporate nothing into air as moist as the water, and gather dew from moister air', () => {
    expect(evaporationFluxCarrier(2000, 2000, 0.2)).toBe(0);
    expect(evaporationFluxCarrier(1500, 2000, 0)).toBeLessThan(0);
    expect(moistAirGrashof(1.2, 1.1, 0.3, 1.6e-5, 9.81)).toBe(0);
    expect(moistAirDensity(101325, 2000, 300)).toBeLessThan(moistAirDensity(101325, 0, 300));
  });

  it('boil nothing on a wall that is not hotter than the water, and turn round exactly', () => {
    const tail = [0.013, 1, 2257e3, 958, 0.6, 282e-6, 4217, 1.75, 0.0589, 9.81] as const;
    expect([
      boilingFluxRohsenow(0, ...tail),
      boilingFluxRohsenow(-3, ...tail),
      boilingSuperheatRohsenow(0, ...tail),
    ]).toEqual([0, 0, 0]);
    fc.assert(
      fc.property(positive(30), (dT) => {
        expect(boilingSuperheatRohsenow(boilingFluxRohsenow(dT, ...tail), ...tail) / dT).toBeCloseTo(1, 12);
      }),
    );
  });
});
