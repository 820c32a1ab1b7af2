/** From a few answers to a still: what is assumed, that it can run, and what it says to buy. */
import { describe, expect, test } from 'vitest';
import {
  atFullHeat,
  botanicals,
  englishReader,
  firstPlanMessages,
  heatSources,
  NO_PRICES,
  PLAN_QUESTIONS,
  planStill,
  simulate,
  sizeOwnTube,
  toldPlan,
  type PlanAnswers,
} from '../../../sim/index.ts';
import { coilFit } from '../../../sim/geometry/coil.ts';
import { packedHeight } from '../../../sim/geometry/pot.ts';
import { tubVolume } from '../../../sim/geometry/tub.ts';
import { partLoads } from '../../../sim/answers/first-plan/weakest-part.ts';
import { plain } from '../messages/plain.ts';

const metric = englishReader('metric');
const us = englishReader('us');

function planned(answers: PlanAnswers) {
  const found = planStill(answers);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.plan;
}

describe('a still from a few answers', () => {
  const ring = planned({ pot_m3: 0.03, heatSource: 'outdoor-gas-burner', heat_W: 7000, tub_m3: 0.06 });

  test('takes every answer as it is given, and lists the rest as assumed', () => {
    const { scenario, assumed, used } = ring;
    expect((Math.PI / 4) * scenario.pot.diameter_m ** 2 * scenario.pot.height_m).toBeCloseTo(0.03, 9);
    expect(tubVolume(scenario.cooling)).toBeCloseTo(0.06, 9);
    expect(scenario.heat).toMatchObject({ kind: 'gas-burner', ratedPower_W: 7000, shareToPot: 0.35 });
    expect(assumed).toEqual(['plant', 'plant_kg', 'tap_K', 'waterRuns', 'hose', 'altitude_m', 'tube']);
    expect(scenario.charge.mass_kg).toBe(used.plant_kg);
    expect(planned({}).assumed).toEqual(PLAN_QUESTIONS);
  });

  test('has water below the grid, the plant above it and under the lid, and a coil that goes into the tub', () => {
    for (const { id } of botanicals)
      for (const pot_m3 of [0.005, 0.03, 0.2]) {
        const { scenario } = planned({ plant: id, pot_m3, plant_kg: 1000 });
        const { pot, charge, condenser, cooling } = scenario;
        const depth = pot.water_kg / 1000 / ((Math.PI / 4) * pot.diameter_m ** 2);
        expect(depth).toBeLessThan(pot.gridHeight_m);
        expect(pot.gridHeight_m + packedHeight(charge, pot.diameter_m)).toBeLessThan(pot.height_m);
        expect(coilFit({ ...condenser, length_m: 0.1 }, cooling).isTooWide).toBe(false);
      }
    expect(planned({ plant_kg: 1000 }).plantCut).toBe(true);
    expect(planned({ plant_kg: 1 }).plantCut).toBe(false);
  });

  test('lets no water run where none may, and turns down a fire that would empty the pot', () => {
    expect(planned({ waterRuns: false }).scenario.cooling.flow_kg_s).toEqual([{ at_s: 0, value: 0, shape: 'step' }]);
    const strong = planned({ pot_m3: 0.01, heatSource: 'immersion-element', heat_W: 5000 });
    expect(strong.turnedDown).toBe(true);
    expect(strong.scenario.heat.setting).toHaveLength(2);
    expect(simulate(strong.scenario).events.map(({ kind }) => kind)).not.toContain('pot-dry');
  });

  test('is readable for every source of heat', () => {
    for (const { id } of heatSources) expect(planStill({ heatSource: id }).ok).toBe(true);
  });

  test('says in order whether it works, what is weakest and what to buy, in both systems of units', () => {
    const { scenario } = planned({ plant_kg: 1, pot_m3: 0.015 });
    const brief = { ...scenario, run: { ...scenario.run, duration_s: 4500 } };
    const full = atFullHeat(brief) ?? brief;
    const size = sizeOwnTube(full, { confirm: false });
    const still = { ...brief, condenser: { ...brief.condenser, length_m: size.lengthWithMargin_m as number } };
    const result = simulate(still);
    const told = toldPlan(result, size, full, NO_PRICES, metric);
    expect(told.works.length).toBeGreaterThan(20);
    expect(plain(told.next[0] ?? '')).toMatch(
      /^Tube for the coil, because no steam may escape\. For 2\.0 kW full out .* nine runs of ten; .* A typical run needs [\d.]+ m\. Of what is not known for sure, this counts most: .* at the default price/,
    );
    expect(
      plain(toldPlan(result, size, full, NO_PRICES, us).next.join(' ')).replaceAll('12 × 1 mm copper', ''),
    ).not.toMatch(/°C|\bmm\b|\bkg\b/);
    const loads = partLoads(result);
    expect(loads.map(({ load }) => load)).toEqual(loads.map(({ load }) => load).toSorted((a, b) => b - a));
    const words = firstPlanMessages(metric);
    for (const each of loads) {
      expect(words.weakest(each)).toMatch(/\.$/);
      expect(words.remedy(each)).toMatch(/\.$/);
      expect(words.weakest({ ...each, load: 2 })).not.toBe(words.weakest({ ...each, load: 0.5 }));
    }
    expect(loads.find(({ part }) => part === 'tub')?.value).toBeCloseTo(result.summary.coolantPeakOut_C + 273.15, 9);
  });
});
