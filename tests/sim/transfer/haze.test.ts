import { describe, expect, it } from 'vitest';
import { hazeLeft, timeToClear, type DropSizes } from '../../../sim/transfer/haze.ts';
import { shareBelowSize } from '../../../sim/transfer/drop-sizes.ts';
import { stokesVelocity } from '../../../sim/transfer/settling.ts';

const drops: DropSizes = { median_m: 120e-6, spread: 2, cut_m: 150e-6 };
const receiver = { height_m: 0.25, densityDifference_kg_m3: 110, viscosity_Pa_s: 1e-3 };

/** The same by adding up thin size classes, each drop on its own. */
function leftByClasses({ median_m, spread, cut_m }: DropSizes, time_s: number): number {
  let all = 0;
  let left = 0;
  for (let k = -4000; k < 4000; k++) {
    const low = median_m * Math.exp(k / 500);
    const high = median_m * Math.exp((k + 1) / 500);
    const d = Math.sqrt(low * high);
    const haze =
      (shareBelowSize(high, median_m, spread) - shareBelowSize(low, median_m, spread)) *
      (1 - Math.min(1, (d / cut_m) ** 2));
    const rise = stokesVelocity(d, receiver.densityDifference_kg_m3, receiver.viscosity_Pa_s, 9.80665) * time_s;
    all += haze;
    left += haze * (1 - Math.min(1, rise / receiver.height_m));
  }
  return left / all;
}

describe('hydrosol that stands', () => {
  it.each([60, 600, 3600, 12 * 3600, 5 * 86_400])('clears in %d s as drops of each size do on their own', (time_s) => {
    expect(hazeLeft(drops, { ...receiver, time_s })).toBeCloseTo(leftByClasses(drops, time_s), 4);
  });

  it('is as cloudy as it came at first, and clears all the while', () => {
    expect(hazeLeft(drops, { ...receiver, time_s: 0 })).toBe(1);
    let last = 1;
    for (let time_s = 60; time_s < 1e6; time_s *= 3) {
      const now = hazeLeft(drops, { ...receiver, time_s });
      expect(now).toBeLessThan(last);
      last = now;
    }
  });

  it('clears twice as fast from half the height, and as fast whether the oil floats or sinks', () => {
    const half = { ...receiver, height_m: receiver.height_m / 2, time_s: 1800 };
    expect(hazeLeft(drops, half)).toBeCloseTo(hazeLeft(drops, { ...receiver, time_s: 3600 }), 12);
    expect(hazeLeft(drops, { ...half, densityDifference_kg_m3: -110 })).toBe(hazeLeft(drops, half));
  });

  it('says when nine tenths have cleared, or that a month does not do', () => {
    const time_s = timeToClear(drops, receiver, 0.1);
    if (time_s === null) throw new Error('a month did not do');
    expect(hazeLeft(drops, { ...receiver, time_s })).toBeCloseTo(0.1, 6);
    expect(timeToClear(drops, { ...receiver, densityDifference_kg_m3: 0.001 }, 0.1)).toBeNull();
  });
});
