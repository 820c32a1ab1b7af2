import { describe, expect, it } from 'vitest';
import { fittedRelease, publishedCurves } from '../../../sim/library/index.ts';
import type { PublishedCurve } from '../../../sim/library/published-curves.ts';
import { fitCurve, twoPoolYield, type FittedRelease } from '../../../sim/library/two-pool-release.ts';

const stored: Readonly<Record<string, FittedRelease>> = fittedRelease;

describe('fits of the published curves', () => {
  it('are stored for every curve and for nothing else', () => {
    expect(Object.keys(stored).sort()).toEqual(publishedCurves.map(({ id }) => id).sort());
  });

  it.each(publishedCurves.map((curve) => [curve.id, curve] as const))(
    'finds the stored numbers again for %s',
    (id, curve) => {
      const found = fitCurve(curve);
      const kept = stored[id] as FittedRelease;
      expect(found.finalYield / kept.finalYield).toBeCloseTo(1, 3);
      expect(found.readyShare).toBeCloseTo(kept.readyShare, 3);
      expect(found.heldRate_1_s / kept.heldRate_1_s).toBeCloseTo(1, 3);
      expect(found.fastRate_1_s === null).toBe(kept.fastRate_1_s === null);
      if (found.fastRate_1_s !== null && kept.fastRate_1_s !== null)
        expect(found.fastRate_1_s / kept.fastRate_1_s).toBeCloseTo(1, 3);
      expect(Math.abs(found.residual - kept.residual)).toBeLessThan(1e-4);
    },
  );

  it('recovers the parameters behind a curve made from them', () => {
    const truth = { finalYield: 1.5, readyShare: 0.4, fastRate_1_s: 0.004, heldRate_1_s: 0.0002 };
    const curve: PublishedCurve = {
      id: 'made',
      plant: 'made',
      how: 'made',
      unit: '%',
      law: 'two-pool',
      provenance: { kind: 'computed', source: 'the law itself' },
      points: [2, 5, 10, 20, 40, 80, 160, 240].map((minutes) => [
        minutes,
        twoPoolYield(truth.finalYield, truth.readyShare, truth.fastRate_1_s, truth.heldRate_1_s, minutes * 60),
      ]),
    };
    const found = fitCurve(curve);
    expect(found.finalYield).toBeCloseTo(1.5, 4);
    expect(found.readyShare).toBeCloseTo(0.4, 4);
    expect((found.fastRate_1_s as number) / 0.004).toBeCloseTo(1, 3);
    expect(found.heldRate_1_s / 0.0002).toBeCloseTo(1, 3);
    expect(found.residual).toBeLessThan(1e-5);
  });

  it('calls the faster of two rates the fast one', () => {
    for (const fit of Object.values(stored))
      if (fit.fastRate_1_s !== null) expect(fit.fastRate_1_s, fit.curve).toBeGreaterThan(fit.heldRate_1_s);
  });
});

describe('the two-pool law', () => {
  it('starts at nothing, ends at the final yield and never falls', () => {
    expect(twoPoolYield(2, 0.3, 0.01, 0.0001, 0)).toBe(0);
    expect(twoPoolYield(2, 0.3, 0.01, 0.0001, 1e7)).toBeCloseTo(2, 9);
    let before = 0;
    for (let time = 60; time <= 36_000; time += 60) {
      const now = twoPoolYield(2, 0.3, 0.01, 0.0001, time);
      expect(now).toBeGreaterThan(before);
      before = now;
    }
  });

  it('gives up the ready oil at once when the fast rate has no limit', () => {
    expect(twoPoolYield(2, 0.3, Infinity, 0, 1)).toBeCloseTo(0.6, 12);
  });
});
