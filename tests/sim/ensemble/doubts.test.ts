import { describe, expect, it } from 'vitest';
import {
  UNCERTAIN_IDS,
  unchangedValue,
  uncertainties,
  valueAtShare,
  withDrawn,
  type Uncertain,
} from '../../../sim/answers/ensemble/factors.ts';
import { exampleScenario, findBotanical, readScenario, type Scenario } from '../../../sim/index.ts';

const lavender = exampleScenario('gentle-lavender');
const doubt = (scenario: Scenario, id: (typeof UNCERTAIN_IDS)[number]): Uncertain =>
  uncertainties(scenario).find((entry) => entry.id === id) as Uncertain;

describe('doubts about a plan', () => {
  it('take their width from the library’s bands where the plant has one', () => {
    const content = findBotanical('lavender-true').states.dry?.oilContent.value;
    const { low, high, origin, source } = doubt(lavender, 'oilContent');
    expect(low).toBeCloseTo((content?.low as number) / (content?.typical as number), 12);
    expect(high).toBeCloseTo((content?.high as number) / (content?.typical as number), 12);
    expect(origin).toBe('library');
    expect(source?.length).toBeGreaterThan(20);
    expect(doubt(lavender, 'takeUp').low).toBeCloseTo(0.4, 12);
  });

  it('fall back on stated judgement for a plant of one’s own', () => {
    const own = { ...lavender, charge: { ...lavender.charge, botanical: 'own' } };
    for (const entry of uncertainties(own)) {
      expect(['judgement', 'assumption', 'published-range'], entry.id).toContain(entry.origin);
      expect(entry.source, entry.id).toBe(null);
    }
  });

  it('state a width about no change, every one', () => {
    for (const entry of uncertainties(lavender)) {
      const middle = unchangedValue(entry);
      expect(entry.low, entry.id).toBeLessThan(middle);
      expect(entry.high, entry.id).toBeGreaterThan(middle);
    }
  });

  it('put 5 % below the low end, half below no change and 95 % below the high end', () => {
    for (const entry of uncertainties(lavender)) {
      expect(valueAtShare(entry, 0.05), entry.id).toBeCloseTo(entry.low, 9);
      if (entry.shape !== 'triangular')
        expect(valueAtShare(entry, 0.5), entry.id).toBeCloseTo(unchangedValue(entry), 12);
      expect(valueAtShare(entry, 0.95), entry.id).toBeCloseTo(entry.high, 9);
    }
  });

  it('take a coil’s bend as a triangle from nothing to a little more than solved, likeliest as planned', () => {
    const bend = doubt(lavender, 'curvature');
    const at = (share: number): number => valueAtShare(bend, share) * lavender.factors.curvature;
    expect(bend.shape).toBe('triangular');
    expect([at(0), at(7 / 11), at(1)].map((value) => value.toFixed(9))).toEqual([
      '0.000000000',
      '0.700000000',
      '1.100000000',
    ]);
    expect(at(0.5)).toBeCloseTo(Math.sqrt(0.5 * 1.1 * 0.7), 12);
  });

  it('spread the condensate’s cooling by a quarter and the hose’s mixing by a factor of two, one standard deviation', () => {
    const oneUp = 0.841344746;
    expect(valueAtShare(doubt(lavender, 'rivulet'), oneUp)).toBeCloseTo(Math.exp(0.25), 6);
    expect(valueAtShare(doubt(lavender, 'jetMixing'), oneUp)).toBeCloseTo(Math.exp(0.7), 6);
  });

  it('leave out what this still has not', () => {
    const ids = (scenario: Scenario) => uncertainties(scenario).map(({ id }) => id);
    expect(ids(exampleScenario('rosemary-jacket'))).not.toContain('curvature');
    expect(ids(exampleScenario('rosemary-jacket'))).toContain('rivulet');
    expect(ids({ ...lavender, cooling: { ...lavender.cooling, inlet: 'top' } })).not.toContain('jetMixing');
    expect(ids(lavender)).toHaveLength(UNCERTAIN_IDS.length);
  });

  it('may be narrowed, such as by a fit', () => {
    const [narrow] = uncertainties(lavender, { oilContent: { low: 0.9, high: 1.1, origin: 'fit' } });
    expect(narrow).toMatchObject({ id: 'oilContent', low: 0.9, high: 1.1, origin: 'fit', source: null });
  });
});

describe('a scenario with drawn values', () => {
  it('multiplies what the scenario says and shifts tap and tub together', () => {
    const fitted = { ...lavender, factors: { ...lavender.factors, oilContent: 1.2 } };
    const drawn = withDrawn(fitted, { oilContent: 0.5, heldRate: 2, tapTemperature: 3 });
    expect(drawn.factors.oilContent).toBeCloseTo(0.6, 12);
    expect(drawn.charge.release.heldRate_1_s.oxygenate).toBeCloseTo(
      2 * lavender.charge.release.heldRate_1_s.oxygenate,
      12,
    );
    expect(drawn.cooling.tapTemperature_K[0]?.value).toBeCloseTo(
      (lavender.cooling.tapTemperature_K[0]?.value as number) + 3,
      9,
    );
    expect(drawn.cooling.startTemperature_K).toBeCloseTo(lavender.cooling.startTemperature_K + 3, 9);
  });

  it('stays the same without any', () => expect(withDrawn(lavender, {})).toEqual(lavender));

  it('stays valid however wild the draws', () => {
    for (const wild of [1e-6, 1e6]) {
      const drawn = withDrawn(lavender, Object.fromEntries(UNCERTAIN_IDS.map((id) => [id, wild])));
      expect(readScenario(JSON.parse(JSON.stringify(drawn)))).toMatchObject({ ok: true });
    }
  });
});
