import { describe, expect, it } from 'vitest';
import { MOST_FOUND, searchReference } from '../../../sim/reference/search.ts';

const found = (typed: string): string[] => searchReference(typed).items.map(({ id }) => id);

describe('a search in plain words', () => {
  it.each([
    ['surface tension of water', 'surface-tension'],
    ['film inside the coil', 'film-coefficient-chato-steam'],
    ['vapour pressure of linalool', 'oil-vapour-pressure-linalool'],
    ['latent heat', 'latent-heat'],
    ['density of steam', 'vapour-density'],
    ['boiling point at altitude', 'boiling-point-at-altitude'],
    ['how fast do oil drops rise', 'stokes-velocity'],
    ['heat loss of the lid', 'pot-lid-loss-flux'],
    ['pressure drop in the bed', 'ergun-steam-bed'],
    ['steam speed', 'steam-velocity'],
    ['lid force', 'lid-force'],
    ['Evaporation from the TUB?', 'open-water-evaporation'],
    ['lavender', 'lavender-true'],
    ['Lavandula angustifolia', 'lavender-true'],
    ['78-70-6', 'linalool'],
    ['eucalyptol', 'cineole_1_8'],
  ])('finds for “%s” first of all %s', (typed, first) => {
    expect(found(typed)[0]).toBe(first);
  });

  it('reads a word that nothing speaks of as the nearest one, and says so', () => {
    expect(searchReference('vapor pressure of linalol')).toMatchObject({ readAs: 'vapor pressure linalool' });
    expect(found('linalol')).toContain('linalool');
    expect(searchReference('linalool').readAs).toBeNull();
  });

  it('finds nothing for nothing, for idle words, and for what is not there', () => {
    for (const typed of ['', '  ', 'the of a', 'parsnip wine', '???']) expect(found(typed), typed).toEqual([]);
  });

  it('never answers with more than a reader can look through, nor with one thing twice', () => {
    for (const typed of ['oil', 'water temperature', 'density', 'e']) {
      const ids = found(typed);
      expect(ids.length).toBeLessThanOrEqual(MOST_FOUND);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });
});
