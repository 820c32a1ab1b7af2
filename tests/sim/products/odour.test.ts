/** When notes can be smelled: bands between the lowest and the highest threshold, and never a strength. */
import { describe, expect, it } from 'vitest';
import { constituents } from '../../../sim/index.ts';
import { odourThresholds } from '../../../sim/library/odour-thresholds.ts';
import {
  blendFilm,
  fade,
  fadeOfRealMixture,
  fadeSummary,
  logTimes,
  timeLeftAt,
  USUAL_SURFACES,
  type OilShare,
} from '../../../sim/products/index.ts';
import { odourSpans } from '../../../sim/products/odour.ts';

const filmOf = (...composition: readonly OilShare[]) => blendFilm([{ composition, share: 1 }], 0, USUAL_SURFACES.paper);
const times = logTimes(10, 1e6, 300);

describe('bands of smell', () => {
  it('have a threshold for every constituent, at least a decade wide', () => {
    for (const { id } of constituents) {
      const [low, high] = odourThresholds[id]?.range ?? [0, 0];
      expect(low, id).toBeGreaterThan(0);
      expect(high / low, id).toBeGreaterThan(9.9);
    }
  });

  it('of pure linalool are sure while air holds 6.3 mg/m³ and end with the film', () => {
    const film = filmOf({ constituent: 'linalool', share: 1 });
    const { top, middle, base } = odourSpans(film, fade(film, times));
    expect(top).toEqual([]);
    expect(base).toEqual([]);
    expect(middle[0]?.band).toBe('surely');
    expect(middle[0]?.from_s).toBe(10);
    // Saturated air of it holds 1.4 g/m³, far over the highest threshold, for as long as there is a film.
    expect(middle.at(-1)?.to_s).toBeGreaterThan(3600);
  });

  it('follow each other in time, and tops end before bases', () => {
    const film = filmOf(
      { constituent: 'limonene', share: 0.45 },
      { constituent: 'linalool', share: 0.45 },
      { constituent: 'cedrol', share: 0.1 },
    );
    const spans = odourSpans(film, fade(film, times));
    for (const all of Object.values(spans))
      all.forEach((span, k) => {
        expect(span.to_s).toBeGreaterThanOrEqual(span.from_s);
        const next = all[k + 1];
        if (next) expect(next.from_s).toBeGreaterThanOrEqual(span.to_s);
      });
    expect(spans.top.at(-1)?.to_s).toBeLessThan(spans.middle.at(-1)?.to_s ?? 0);
    expect(spans.middle.at(-1)?.to_s).toBeLessThan(spans.base.at(-1)?.to_s ?? 0);
    expect(spans.top.map(({ band }) => band)).toContain('perhaps');
  });
});

describe('the time by which a share has left', () => {
  it('is read between moments as the exact solution has it', () => {
    const film = filmOf({ constituent: 'limonene', share: 0.5 }, { constituent: 'linalool', share: 0.5 });
    const faded = fade(film, logTimes(10, 36_000, 110));
    const { half_s, nineTenths_s } = fadeSummary(film);
    expect(timeLeftAt(faded, 0.5) / half_s).toBeCloseTo(1, 2);
    expect(timeLeftAt(faded, 0.9) / nineTenths_s).toBeCloseTo(1, 2);
  });

  it('comes sooner in a real mixture', () => {
    const film = filmOf({ constituent: 'limonene', share: 0.5 }, { constituent: 'linalool', share: 0.5 });
    const real = fadeOfRealMixture(film, logTimes(10, 36_000, 400));
    expect(timeLeftAt(real, 0.5) / 60).toBeCloseTo(7.6, 0);
    expect(timeLeftAt(real, 0.5)).toBeLessThan(fadeSummary(film).half_s);
  });
});
