import { describe, expect, it } from 'vitest';
import { findBotanical, fittedRelease, publishedCurves, publishedRates } from '../../sim/library/index.ts';
import { juniperTables, type PublishedCurve } from '../../sim/library/published-curves.ts';
import { fitCurve, fittedYield } from '../../sim/library/two-pool-release.ts';

const MINUTE = 60;
const curve = (id: string): PublishedCurve => publishedCurves.find((row) => row.id === id) as PublishedCurve;
const shareAfter = (id: keyof typeof fittedRelease, minutes: number): number =>
  fittedYield(fittedRelease[id], minutes * MINUTE) / fittedRelease[id].finalYield;
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

// Semerdjieva and others, Molecules 24 (2019) 986, tables (read).
describe('needle oils of three junipers, ground and distilled in water', () => {
  it('adds the printed fractions to 0.85, 0.54 and 1.42 % of the dry herb', () => {
    expect(sum(juniperTables.virginiana.yields)).toBeCloseTo(0.85, 9);
    expect(sum(juniperTables.excelsa.yields)).toBeCloseTo(0.54, 9);
    expect(sum(juniperTables.sabina.yields)).toBeCloseTo(1.42, 9);
  });

  it.each(['juniperus-virginiana', 'juniperus-sabina'] as const)(
    'needs two pools: %s fits at least three times closer than with one rate',
    (id) => {
      const { residual, finalYield } = fittedRelease[id];
      const oneRate = fitCurve({ ...curve(id), law: 'first-order' });
      expect(oneRate.residual * oneRate.finalYield).toBeGreaterThan(3 * residual * finalYield);
    },
  );

  it.each([
    ['juniperus-virginiana', 0.01],
    ['juniperus-excelsa', 0.01],
    ['juniperus-sabina', 0.01],
  ] as const)('passes every point of %s within two units of the last printed digit', (id, printed) => {
    for (const [minutes, yielded] of curve(id).points)
      expect(Math.abs(fittedYield(fittedRelease[id], minutes * MINUTE) - yielded), `${minutes} min`).toBeLessThan(
        2 * printed,
      );
  });

  it('lets hydrocarbons go first and sesquiterpenes last', () => {
    const half = 20;
    expect(shareAfter('juniperus-virginiana-hydrocarbons', half)).toBeGreaterThan(
      shareAfter('juniperus-virginiana-oxygenates', half),
    );
    expect(shareAfter('juniperus-virginiana-oxygenates', half)).toBeGreaterThan(
      shareAfter('juniperus-virginiana-sesquiterpenes', half),
    );
    expect(shareAfter('juniperus-excelsa-hydrocarbons', half)).toBeGreaterThan(
      shareAfter('juniperus-excelsa-oxygenates', half),
    );
    const { hydrocarbon, oxygenate } = findBotanical('juniper-berry').release;
    expect(hydrocarbon.readyShare.value.typical).toBeGreaterThan(oxygenate.readyShare.value.typical);
  });
});

describe('lavender and lavandin', () => {
  it('reaches its maximum by 60 min, as the source of the one-point fit says (Zheljazkov and others 2013, abstract)', () => {
    expect(shareAfter('lavender-dry-flowers', 60)).toBeGreaterThan(0.95);
    expect(shareAfter('lavender-dry-flowers', 45)).toBeLessThan(0.95);
  });

  it('has a release band that holds every published lavender rate', () => {
    const { low, high } = findBotanical('lavender-true').release.oxygenate.heldRate_1_s.value;
    for (const rate of [
      fittedRelease['lavender-dry-flowers'].heldRate_1_s,
      fittedRelease['lavender-herb'].heldRate_1_s,
      fittedRelease['lavender-solar'].heldRate_1_s,
      publishedRates.lavandinRelease.value / MINUTE,
    ]) {
      expect(rate).toBeGreaterThanOrEqual(low);
      expect(rate).toBeLessThanOrEqual(high);
    }
  });
});

describe('other plants', () => {
  it('prints the lemongrass points of the authors’ own Peleg curves (Baou and others 2022, abstract)', () => {
    for (const [id, K1, K2] of [
      ['lemongrass-flexuosus', 217.94, 0.6022],
      ['lemongrass-citratus', 108.94, 0.4971],
    ] as const)
      for (const [minutes, yielded] of curve(id).points)
        expect(minutes / (K1 + K2 * minutes), `${id}, ${minutes} min`).toBeCloseTo(yielded, 2);
  });

  it('takes cornmint to its maximum by 10 min (Zheljazkov and Astatkie 2012, abstract)', () => {
    expect(shareAfter('cornmint', 10)).toBeGreaterThan(0.95);
  });

  it('agrees with aniseed on the fast share of an umbellifer fruit: 1 − 0.011/x0 for 2 to 3 % of oil (Romdhane and Tizaoui 2005, abstract)', () => {
    const { readyShare } = fittedRelease['cumin-hours'];
    expect(readyShare).toBeGreaterThan(1 - 0.011 / 0.02);
    expect(readyShare).toBeLessThan(1 - 0.011 / 0.03);
    for (const id of ['fennel-bitter', 'caraway']) {
      const { low, high } = findBotanical(id).release.hydrocarbon.readyShare.value;
      expect(readyShare, id).toBeGreaterThan(low);
      expect(readyShare, id).toBeLessThan(high);
    }
  });

  it('passes the Scots pine twigs of Gildemeister and Hoffmann (0.189 % at 3 h, 0.289 % at 7 h) within 6 % of the final yield', () => {
    for (const [minutes, yielded] of curve('scots-pine-twigs').points)
      expect(
        Math.abs(fittedYield(fittedRelease['scots-pine-twigs'], minutes * MINUTE) - yielded) / 0.2965,
        `${minutes} min`,
      ).toBeLessThan(0.06);
  });
});
