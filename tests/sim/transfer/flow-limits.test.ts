import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blakeKozenyVelocity, ergunGradient } from '../../../sim/transfer/packed-bed.ts';
import {
  frictionFactor,
  frictionGradient,
  meanTwoPhaseGradient,
  twoPhaseGradient,
} from '../../../sim/transfer/pressure-drop.ts';
import {
  frictionGradientFriedel,
  frictionGradientLockhartMartinelli,
} from '../../../sim/transfer/two-phase-alternatives.ts';
import {
  criticalPressureRatio,
  expansibility,
  isentropicMassFlux,
  orificeSteamFlow,
  ventBore,
} from '../../../sim/transfer/venting.ts';
import { celsius, look, perHour } from './look.ts';

describe('friction of one phase', () => {
  it('is 64/Re while laminar', () => {
    expect(frictionFactor(1000, 0)).toBeCloseTo(0.064, 12);
    expect(frictionGradient(1, 0.01, 1000, 1e-3, 0)).toBeCloseTo((32 * 1e-3) / (1000 * 1e-4), 12);
  });

  it('solves the equation of Colebrook to a few parts in a hundred thousand', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2300, max: 1e8, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        (Re, roughness) => {
          const f = frictionFactor(Re, roughness);
          let root = 1 / Math.sqrt(f);
          for (let step = 0; step < 60; step += 1) root = -2 * Math.log10(roughness / 3.7 + (2.51 * root) / Re);
          expect(Math.abs(f * root * root - 1)).toBeLessThan(5e-5);
        },
      ),
    );
  });

  it('turns with the flow, vanishes with it and grows with it', () => {
    expect(frictionGradient(0, 0.01, 0.6, 12e-6, 0)).toBe(0);
    expect(frictionFactor(0, 0)).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 100, noNaN: true }), (G) => {
        expect(frictionGradient(-G, 0.01, 0.6, 12e-6, 0)).toBe(-frictionGradient(G, 0.01, 0.6, 12e-6, 0));
        expect(frictionGradient(1.01 * G, 0.01, 0.6, 12e-6, 0)).toBeGreaterThan(
          frictionGradient(G, 0.01, 0.6, 12e-6, 0),
        );
      }),
    );
  });
});

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('friction of steam with its condensate', () => {
  it('is that of one phase alone at either end', () => {
    expect(twoPhaseGradient(3, 700, 0)).toBe(3);
    expect(twoPhaseGradient(3, 700, 1)).toBe(700);
    expect(frictionGradientLockhartMartinelli(5, 0, 0.01, 958, 0.6, 282e-6, 12.2e-6)).toBeGreaterThan(0);
    expect(frictionGradientFriedel(0, 0.5, 0.01, 958, 0.6, 282e-6, 12.2e-6, 0.059, 9.81)).toBe(0);
  });

  it('averages over a length as adding up many short ones does, whichever end is first', () => {
    fc.assert(
      fc.property(share, share, (x_in, x_out) => {
        const steps = 4000;
        let sum = 0;
        for (let i = 0; i < steps; i += 1) sum += twoPhaseGradient(3, 700, x_in + ((x_out - x_in) * (i + 0.5)) / steps);
        expect(meanTwoPhaseGradient(3, 700, x_in, x_out)).toBeCloseTo(sum / steps, 1);
        expect(meanTwoPhaseGradient(3, 700, x_out, x_in)).toBeCloseTo(meanTwoPhaseGradient(3, 700, x_in, x_out), 9);
      }),
      { numRuns: 40 },
    );
  });

  it('averages to the local value as the ends draw together, without losing figures', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.9, noNaN: true }), fc.integer({ min: 6, max: 16 }), (x, tenths) => {
        const near = Math.min(1, x + 10 ** -tenths);
        expect(meanTwoPhaseGradient(3, 700, x, near) / twoPhaseGradient(3, 700, 0.5 * (x + near))).toBeCloseTo(1, 9);
      }),
    );
    expect(meanTwoPhaseGradient(3, 700, 0.4, 0.4)).toBeCloseTo(twoPhaseGradient(3, 700, 0.4), 9);
    expect(meanTwoPhaseGradient(3, 700, 1, 1)).toBe(700);
    expect(meanTwoPhaseGradient(3, 700, 0, 0)).toBeCloseTo(3, 9);
  });

  /** Bore in mm, kg/h, kPa/m over a whole condensing length (independent evaluation, printed to two figures). */
  it.each([
    [10, 5, 0.66],
    [8, 5, 1.9],
    [6, 5, 7.4],
    [6, 10, 25],
  ])('loses over a %d mm tube at %d kg/h %d kPa a metre', (bore, rate, kPa) => {
    const found = look('condensing-gradient-steam', { m: perHour(rate), D_i: bore / 1000, T_sat: celsius(100) }) / 1000;
    expect(Math.abs(found / kPa - 1)).toBeLessThan(0.03);
  });
});

describe('flow through a bed', () => {
  it('turns with the flow, and Blake–Kozeny is Ergun without inertia', () => {
    expect(ergunGradient(0, 1e-3, 0.5, 0.6, 12e-6)).toBe(0);
    expect(ergunGradient(-0.02, 1e-3, 0.5, 0.6, 12e-6)).toBe(-ergunGradient(0.02, 1e-3, 0.5, 0.6, 12e-6));
    expect(blakeKozenyVelocity(ergunGradient(0.02, 1e-3, 0.5, 0, 12e-6), 1e-3, 0.5, 12e-6)).toBeCloseTo(0.02, 12);
  });
});

describe('steam through a vent', () => {
  it('does not flow without excess pressure, nor against it', () => {
    expect([
      orificeSteamFlow(0.01, 0, 101325, 0.6, 0.62, 1.32),
      orificeSteamFlow(0.01, -500, 101325, 0.6, 0.62, 1.32),
    ]).toEqual([0, 0]);
    expect([
      isentropicMassFlux(101325, 101325, 373, 0.62, 1.32),
      isentropicMassFlux(1e5, 101325, 373, 0.62, 1.32),
    ]).toEqual([0, 0]);
    expect(expansibility(1, 1.32)).toBe(1);
  });

  it('flows alike by the orifice and by the nozzle at low pressure, and a little more by the orifice above', () => {
    const ratio = (dp: number): number =>
      look('steam-vent-flow', { d: 0.01, dp }) / (0.25 * Math.PI * 1e-4) / look('steam-vent-flux', { dp });
    expect(ratio(500)).toBeCloseTo(1.01, 2);
    expect(ratio(2000)).toBeLessThan(1.015);
    expect(ratio(10000)).toBeGreaterThan(ratio(2000));
    expect(ratio(10000)).toBeLessThan(1.04);
  });

  it('chokes at the critical ratio and then follows the pressure inside', () => {
    const choked = criticalPressureRatio(1.32);
    const at = (p_b: number): number => isentropicMassFlux(3e5, p_b, 406, 0.62, 1.32);
    expect(at(3e5 * choked * 0.5)).toBe(at(3e5 * choked));
    expect(at(3e5 * choked * 1.1)).toBeLessThan(at(3e5 * choked));
    expect(criticalPressureRatio(1 + 1e-9)).toBeCloseTo(criticalPressureRatio(1), 8);
  });

  it('wants a bore that carries the flow, none for no flow, and one beyond all measure without pressure', () => {
    const bore = ventBore(1e-3, 30);
    expect(0.25 * Math.PI * bore * bore * 30).toBeCloseTo(1e-3, 15);
    expect(ventBore(0, 30)).toBe(0);
    expect(ventBore(1e-3, 0)).toBeGreaterThan(1e6);
  });
});
