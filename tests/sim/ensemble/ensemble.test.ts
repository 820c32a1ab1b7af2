import { describe, expect, it } from 'vitest';
import {
  coarseScenario,
  ensembleDesign,
  ensembleTimes,
  GRID_POINTS,
  headlineOf,
  HEADLINE_NAMES,
  memberScenario,
  runMember,
} from '../../../sim/answers/ensemble/ensemble.ts';
import { summariseEnsemble } from '../../../sim/answers/ensemble/summary.ts';
import { examples, exampleScenario, simulate } from '../../../sim/index.ts';

const lavender = exampleScenario('gentle-lavender');
const design = ensembleDesign(lavender, 24, 42);
/** Rows before the draws: the plan, and every doubt alone both ways. */
const before = (of: typeof design): number => 1 + 2 * of.doubts.length;

describe('a design', () => {
  it('begins with the plan as it stands, then every doubt alone both ways, then the draws', () => {
    expect(design.rows.map(({ kind }) => kind)).toEqual([
      'as-planned',
      ...Array<string>(before(design) - 1).fill('swing'),
      ...Array<string>(24).fill('draw'),
    ]);
    expect(memberScenario(design, 0)).toEqual(lavender);
  });

  it('is the same for the same seed and another for another', () => {
    expect(ensembleDesign(lavender, 24, 42)).toEqual(design);
    expect(ensembleDesign(lavender, 24, 43).rows.at(-1)).not.toEqual(design.rows.at(-1));
  });

  it('survives being sent as JSON', () => expect(JSON.parse(JSON.stringify(design))).toEqual(design));

  it('refuses a count that is none and an index beyond its rows', () => {
    expect(() => ensembleDesign(lavender, 0, 1)).toThrow(RangeError);
    expect(() => ensembleDesign(lavender, 2.5, 1)).toThrow(RangeError);
    expect(() => runMember(design, design.rows.length)).toThrow(
      `member ${before(design) + 24} is not among the ${before(design) + 24} rows`,
    );
  });
});

describe('a member', () => {
  it('is the same whoever computes it, alone and in any order', () => {
    const sent = JSON.parse(JSON.stringify(design)) as typeof design;
    const [late, early] = [runMember(sent, 30), runMember(sent, 22)];
    expect(runMember(design, 22)).toEqual(early);
    expect(runMember(design, 30)).toEqual(late);
  });

  it('gives oil and recovery on a grid of about 120 points that rise', () => {
    const { oil_mL, recovery } = runMember(design, 0);
    expect(oil_mL).toHaveLength(GRID_POINTS);
    for (let k = 1; k < GRID_POINTS; k++) expect(oil_mL[k]).toBeGreaterThanOrEqual(oil_mL[k - 1] as number);
    expect(recovery[GRID_POINTS - 1]).toBeCloseTo(runMember(design, 0).headline.recovery as number, 9);
  });

  it.each(examples.map(({ id }) => id))('is within half a percent of the run at one-second steps: %s', (id) => {
    const scenario = exampleScenario(id);
    const interval = scenario.run.duration_s / (GRID_POINTS - 1);
    const fine = simulate({
      ...scenario,
      advanced: { ...scenario.advanced, step_s: interval / Math.ceil(interval), recordEvery_s: interval },
    });
    const exact = headlineOf(fine, ensembleTimes(scenario));
    const member = runMember(ensembleDesign(scenario, 1, 1), 0);
    const oil = fine.summary.oilInCharge_kg;
    const distillate = fine.summary.hydrosol_kg + fine.summary.waterUncondensed_kg;
    for (const name of HEADLINE_NAMES) {
      const [a, b] = [exact[name], member.headline[name]];
      expect(b === null, name).toBe(a === null);
      if (a === null || b === null) continue;
      const scale =
        name.startsWith('oil') && name.endsWith('_kg') ? oil : name === 'escaped_kg' ? distillate : Math.abs(a);
      expect(Math.abs(b - a), name).toBeLessThanOrEqual(0.005 * scale);
    }
  });

  it('takes fewer steps, not the user’s finest', () => {
    const fine = coarseScenario({ ...lavender, advanced: { ...lavender.advanced, step_s: 0.1 } });
    expect(fine.advanced.step_s).toBeGreaterThan(0.9);
    expect(
      coarseScenario({ ...lavender, advanced: { ...lavender.advanced, step_s: 8 } }).advanced.step_s,
    ).toBeGreaterThan(4);
  });
});

describe('what an ensemble says', () => {
  const small = ensembleDesign(exampleScenario('class-glass'), 20, 5);
  const members = small.rows.map((_, index) => runMember(small, index));
  const whole = summariseEnsemble(small, members);

  it('has bands in their order, at every time and for every headline number', () => {
    for (const { p10, p50, p90 } of [whole.oil_mL, whole.recovery])
      for (let k = 0; k < GRID_POINTS; k++) {
        expect(p10[k]).toBeLessThanOrEqual(p50[k] as number);
        expect(p50[k]).toBeLessThanOrEqual(p90[k] as number);
      }
    for (const { p10, p50, p90, counted } of Object.values(whole.headline)) {
      expect(counted).toBe(20);
      expect(p10).toBeLessThanOrEqual(p50 as number);
      expect(p50).toBeLessThanOrEqual(p90 as number);
    }
  });

  it('counts draws only, each once, in any order', () => {
    const shuffled = [...members].reverse();
    expect(summariseEnsemble(small, [...shuffled, ...members.slice(25)])).toEqual(whole);
    expect(whole.finished).toBe(20);
    expect(whole.asPlanned?.oil_mL).toBe(members[0]?.headline.oil_mL);
  });

  it('makes do with part of the members, and with none', () => {
    const part = summariseEnsemble(small, members.slice(0, before(small) + 5));
    expect(part.finished).toBe(5);
    expect(part.headline.oil_mL.counted).toBe(5);
    const none = summariseEnsemble(small, []);
    expect(none.headline.oil_mL).toMatchObject({ p50: null, counted: 0 });
    expect(none.oil_mL.p50.every(Number.isNaN)).toBe(true);
    expect(none.influences.oil_mL.every(({ swing, spearman }) => swing === null && spearman === null)).toBe(true);
  });

  it('names the oil content as what moves the oil most, upward', () => {
    const [first] = whole.influences.oil_mL;
    expect(first?.id).toBe('oilContent');
    expect(first?.swing).toBeGreaterThan(0);
    expect(first?.spearman).toBeGreaterThan(0.7);
    const swings = whole.influences.oil_mL.map(({ swing }) => Math.abs(swing as number));
    expect(swings).toEqual([...swings].sort((a, b) => b - a));
  });

  it('finds that the tap leaves the energy bill alone, and that heat loss keeps the plan waiting for its drop', () => {
    const swingOf = (id: string) => whole.influences.energyFuel_J.find((influence) => influence.id === id)?.swing;
    expect(swingOf('tapTemperature')).toBe(0);
    expect(swingOf('heatLoss')).toBeGreaterThan(0);
  });

  it('takes no rounding for an influence', () => {
    const rounded = members.map((member) => ({
      ...member,
      headline: { ...member.headline, coolantUsed_kg: 42.9 + (member.index % 3) * 1e-14 },
    }));
    expect(new Set(rounded.map(({ headline }) => headline.coolantUsed_kg)).size).toBe(3);
    expect(
      summariseEnsemble(small, rounded).influences.coolantUsed_kg.every(
        ({ swing, spearman }) => swing === 0 && spearman === null,
      ),
    ).toBe(true);
  });
});
