import { describe, expect, it } from 'vitest';
import { constituentById } from '../../../sim/fluids/constituents.ts';
import { botanicalTexts } from '../../../sim/library/botanical-texts.ts';
import { botanicals, findBotanical, publishedCurves } from '../../../sim/library/index.ts';
import type { Band } from '../../../sim/library/provenance.ts';
import type { Botanical, BotanicalState, BotanicalText } from '../../../sim/library/types.ts';

const WATER_AT_20C = 998.2;
const each = botanicals.map((row) => [row.id, row] as const);
const statesOf = (row: Botanical): BotanicalState[] => Object.values(row.states);
const textOf = (id: string): BotanicalText => {
  const text = botanicalTexts[id];
  if (text === undefined) throw new Error(`no texts for ${id}`);
  return text;
};
const ordered = (band: Band): boolean => band.low <= band.typical && band.typical <= band.high;

describe('the collection', () => {
  it('holds eighteen plants under ids of their own', () => {
    expect(new Set(botanicals.map(({ id }) => id)).size).toBe(18);
  });

  it('has texts for every plant and for no other', () => {
    expect(Object.keys(botanicalTexts).sort()).toEqual(botanicals.map(({ id }) => id).sort());
  });

  it('covers flowers, leaves, herbs, seeds, berry, bud, peel, needles and wood', () => {
    expect(new Set(botanicals.map(({ kind }) => kind))).toEqual(
      new Set(['flower', 'leaf', 'herb', 'seed', 'berry', 'bud', 'peel', 'needle', 'wood']),
    );
  });

  it('has clove as the one oil that sinks', () => {
    expect(botanicals.filter((row) => row.floats.value === 'sinks').map(({ id }) => id)).toEqual(['clove-bud']);
  });

  it('has in lemon balm a plant whose citral a litre of water per kilogram can all dissolve', () => {
    const balm = findBotanical('lemon-balm');
    const fresh = balm.states.fresh as BotanicalState;
    const citralShare = balm.composition.value.find(({ constituent }) => constituent === 'citral')
      ?.massFraction as number;
    const citralPerKilogram = fresh.oilContent.value.typical * (1 - fresh.moisture.value.typical) * citralShare;
    const litre = 0.001;
    expect(citralPerKilogram).toBeLessThan(constituentById('citral').waterSolubility.value * litre);
  });
});

describe.each(each)('%s', (_id, row) => {
  it('has an oil of at most ten known constituents that add to exactly one', () => {
    const entries = row.composition.value;
    expect(entries.length).toBeLessThanOrEqual(10);
    expect(new Set(entries.map(({ constituent }) => constituent)).size).toBe(entries.length);
    expect(entries.reduce((sum, { massFraction }) => sum + massFraction, 0)).toBe(1);
    for (const { constituent, massFraction, group } of entries) {
      expect(massFraction).toBeGreaterThan(0);
      expect(group).toBe(constituentById(constituent).group);
    }
  });

  // Ranges of ISO, the European Pharmacopoeia and handbooks, each named in the row; ±0.005 for ideal mixing and stand-ins.
  it('mixes to a density within its published relative density', () => {
    const { low, high } = textOf(row.id).relativeDensity.value;
    const relative = row.oilDensity_kg_m3.value / WATER_AT_20C;
    expect(relative).toBeGreaterThanOrEqual(low - 0.005);
    expect(relative).toBeLessThanOrEqual(high + 0.005);
    expect(row.floats.value).toBe(relative < 1 ? 'floats' : 'sinks');
  });

  it('states bands in order and inside their bounds', () => {
    for (const state of statesOf(row)) {
      expect(ordered(state.moisture.value)).toBe(true);
      expect(ordered(state.oilContent.value)).toBe(true);
      expect(state.moisture.value.low).toBeGreaterThan(0);
      expect(state.moisture.value.high).toBeLessThan(0.95);
      expect(state.oilContent.value.low).toBeGreaterThan(0);
      expect(state.oilContent.value.high).toBeLessThan(0.3);
    }
    for (const group of [row.release.hydrocarbon, row.release.oxygenate, row.release.sesquiterpene]) {
      for (const band of [group.readyShare.value, group.heldRate_1_s.value, group.takeUp.value])
        expect(ordered(band)).toBe(true);
      expect(group.readyShare.value.low).toBeGreaterThanOrEqual(0);
      expect(group.readyShare.value.high).toBeLessThanOrEqual(1);
      expect(group.heldRate_1_s.value.low).toBeGreaterThan(0);
      expect(group.takeUp.value.low).toBeGreaterThan(0);
    }
  });

  it('says of itself what a distiller must know, with every published share in order', () => {
    const { cautions, preparation, tradeMethod, publishedRanges } = textOf(row.id);
    expect(cautions.length).toBeGreaterThan(0);
    for (const { value } of [...cautions, preparation, tradeMethod]) expect(value.trim().length).toBeGreaterThan(2);
    for (const { low, high } of publishedRanges) {
      expect(low).toBeGreaterThanOrEqual(0);
      expect(low).toBeLessThanOrEqual(high);
      expect(high).toBeLessThanOrEqual(1);
    }
  });

  it('packs closer when pressed and leaves room for steam', () => {
    for (const state of statesOf(row)) {
      const bulk = state.bulkDensity_kg_m3.value;
      expect(bulk.loose).toBeLessThan(bulk.packed);
      expect(bulk.packed).toBeLessThan(state.particleDensity_kg_m3.value);
      for (const packing of ['loose', 'packed'] as const)
        expect(state.voidFraction.value[packing]).toBeCloseTo(1 - bulk[packing] / state.particleDensity_kg_m3.value, 3);
      expect(state.particleSize_m.value).toBeGreaterThan(0.0005);
      expect(state.particleSize_m.value).toBeLessThan(0.01);
    }
  });

  it('holds at least the water it comes with', () => {
    for (const state of statesOf(row)) {
      const { typical } = state.moisture.value;
      expect(state.waterHolding.value).toBeGreaterThanOrEqual(typical / (1 - typical));
      expect(state.dryHeatCapacity_J_kgK.value).toBeGreaterThanOrEqual(1300);
      expect(state.dryHeatCapacity_J_kgK.value).toBeLessThanOrEqual(1700);
    }
  });

  it('has data for the state it is usually charged in', () => {
    expect(Object.keys(row.states)).toContain(row.defaultCharge.state);
  });

  it('loses only esters it has, to alcohols it has', () => {
    const names = row.composition.value.map(({ constituent }) => constituent);
    for (const loss of row.hydrolysis) {
      expect(names).toContain(loss.ester);
      expect(names).toContain(loss.alcohol);
      expect(loss.rateInBed_1_s.value.typical).toBeLessThan(loss.rateInWater_1_s.value.typical);
    }
  });

  it('names only curves that exist', () => {
    const known = publishedCurves.map(({ id }) => id);
    for (const id of row.release.curves) expect(known).toContain(id);
  });
});

describe('arithmetic from the sources', () => {
  it('turns 9 mL of lavender oil per kilogram of fresh herb into kilograms per kilogram of dry matter', () => {
    const lavender = findBotanical('lavender-true');
    const fresh = lavender.states.fresh as BotanicalState;
    expect(fresh.oilContent.value.typical).toBeCloseTo((9e-6 * lavender.oilDensity_kg_m3.value) / (1 - 0.675), 12);
    expect(fresh.oilContent.kind).toBe('derived');
  });

  it('follows the linalyl acetate loss of two lavender runs: a third and more in water over 1 to 3 h (Kiran Babu and Singh, abstract)', () => {
    const loss = findBotanical('lavender-true').hydrolysis[0];
    expect(loss?.ester).toBe('linalyl_acetate');
    const { low, high } = loss?.rateInWater_1_s.value as Band;
    const rateFor = (hours: number): number => -Math.log(1 - 0.36) / (hours * 3600);
    expect(low).toBeCloseTo(rateFor(3), 5);
    expect(high).toBeCloseTo(rateFor(1), 5);
  });

  it('names the known plants when asked for an unknown one', () => {
    expect(() => findBotanical('lavendar')).toThrow(RangeError);
    expect(() => findBotanical('lavendar')).toThrow(/“lavendar”.*lavender-true/);
  });
});
