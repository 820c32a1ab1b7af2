import { describe, expect, it } from 'vitest';
import {
  exampleScenario,
  pairedCount,
  pairedDesign,
  recommend,
  runPaired,
  uncertainties,
  type PairedRun,
  type Scenario,
} from '../../../sim/index.ts';
import { eventOf } from '../messages/sample-events.ts';

const lavender = exampleScenario('gentle-lavender');
const withCoil = (length_m: number): Scenario => ({ ...lavender, condenser: { ...lavender.condenser, length_m } });
const rosemary = exampleScenario('rosemary-jacket');

describe('paired draws', () => {
  it('give every still of a draw the same uncertain values, and every draw others', () => {
    const { drawn } = pairedDesign([lavender, withCoil(3)], 12, 5);
    expect(drawn).toHaveLength(12);
    for (const [first, second] of drawn) expect(first).toEqual(second);
    expect(new Set(drawn.map(([first]) => first?.oilContent)).size).toBe(12);
  });

  it('share between plants what is about the cooling and the weather, and not what is about the plant', () => {
    const { drawn } = pairedDesign([lavender, rosemary], 12, 5);
    for (const [first, second] of drawn) {
      expect(first?.tapTemperature).toBe(second?.tapTemperature);
      expect(first?.heatLoss).toBe(second?.heatLoss);
      expect(first?.oilContent).not.toBe(second?.oilContent);
      // A jacket has no bend to doubt.
      expect(first).toHaveProperty('curvature');
      expect(second).not.toHaveProperty('curvature');
    }
  });

  it('are the same for the same seed, spread over every equal slice, and by a still’s own widths', () => {
    const seeded = (seed: number) => pairedDesign([lavender], 20, seed).drawn;
    expect(seeded(1)).toEqual(seeded(1));
    expect(seeded(1)).not.toEqual(seeded(2));
    const above = seeded(1).filter(([only]) => (only?.rivulet ?? 0) > 1);
    expect(above).toHaveLength(10);
    const narrow = pairedDesign([lavender], 20, 1, [{ heatLoss: { low: 0.99, high: 1.01 } }]).drawn;
    for (const [only] of narrow) expect(Math.abs((only?.heatLoss ?? 0) - 1)).toBeLessThan(0.02);
    expect(Object.keys(narrow[0]?.[0] ?? {})).toHaveLength(uncertainties(lavender).length);
  });

  it('run the two stills of a draw alike where the stills are alike, so that nothing differs', () => {
    const brisk: Scenario = {
      ...exampleScenario('class-glass'),
      run: { ...exampleScenario('class-glass').run, duration_s: 1800 },
      advanced: { ...exampleScenario('class-glass').advanced, step_s: 5, segments: 12 },
    };
    const design = pairedDesign([brisk, { ...brisk, name: 'the same' }], 3, 1);
    const runs = Array.from({ length: pairedCount(design) }, (_, index) => runPaired(design, index));
    expect(runs.map(({ draw, still }) => [draw, still])).toEqual([
      [0, 0],
      [0, 1],
      [1, 0],
      [1, 1],
      [2, 0],
      [2, 1],
    ]);
    for (const draw of [0, 1, 2]) {
      const [first, second] = runs.filter((run) => run.draw === draw);
      expect({ ...first, still: 1 }).toEqual(second);
    }
    expect(new Set(runs.map(({ oil_mL }) => oil_mL)).size).toBe(3);
    expect(runs[0]?.oil_mL).toBeGreaterThan(0);
    const alike = recommend([{ cautions: [] }, { cautions: [] }], runs, 1);
    expect(alike).toMatchObject({ draws: 3, choice: { kind: 'alike', oil: { better: 0, worse: 0, p50: 0 } } });
  });

  it('refuse a number of draws that is none', () => {
    expect(() => pairedDesign([lavender], 0, 1)).toThrow('0 draws; 1 to 1000');
    expect(() => runPaired(pairedDesign([lavender], 1, 1), 1)).toThrow('there is no run 1');
  });
});

describe('a recommendation', () => {
  interface Given {
    readonly oil?: number;
    readonly t90?: number | null;
    readonly cost?: number;
    readonly alarms?: PairedRun['alarms'];
    readonly failed?: boolean;
  }
  const DRAWS = 10;
  /** Ten draws, each still's numbers by the number of the draw. */
  const advise = (
    stills: readonly ((draw: number) => Given)[],
    unsafe: readonly number[] = [],
  ): NonNullable<ReturnType<typeof recommend>> => {
    const runs = stills.flatMap((give, still) =>
      Array.from({ length: DRAWS }, (_, draw): PairedRun => {
        const { oil = 10, t90 = 3600, cost = 1, alarms = [], failed = false } = give(draw);
        return { draw, still, oil_mL: oil, t90_s: t90, cost, alarms, failed };
      }),
    );
    const heads = stills.map((_, run) => ({
      cautions: unsafe.includes(run) ? [eventOf('vapour-escapes', 60, { severity: 'alarm' })] : [],
    }));
    const found = recommend(heads, runs, 4);
    if (!found) throw new Error('nothing is recommended');
    return found;
  };
  /** More oil in so many of the draws, else as much less. */
  const moreIn = (draws: number) => (draw: number) => ({ oil: draw < draws ? 12 : 8 });
  const plain = () => ({});

  it('takes the run that certainly brings more, and says by how much in 8 of 10 draws', () => {
    const { choice, draws, seed, unsafe } = advise([plain, (draw) => ({ oil: 12 + 0.1 * draw })]);
    expect([draws, seed, unsafe]).toEqual([10, 4, []]);
    expect(choice).toMatchObject({
      kind: 'take',
      run: 1,
      alike: null,
      prices: [],
      because: { by: 'oil', run: 1, rival: 0, better: 10, worse: 0 },
    });
    if (choice.kind !== 'take') throw new Error('none is taken');
    expect(choice.because.p10).toBeCloseTo(2.09, 9);
    expect(choice.because.p50).toBeCloseTo(2.45, 9);
    expect(choice.because.p90).toBeCloseTo(2.81, 9);
  });

  it('takes it in seven draws of ten, and calls the two the same in six', () => {
    expect(advise([plain, moreIn(7)]).choice).toMatchObject({ kind: 'take', run: 1, because: { better: 7, worse: 3 } });
    expect(advise([plain, moreIn(6)]).choice).toMatchObject({ kind: 'alike', runs: [0, 1], oil: { run: 0 } });
  });

  it('calls a difference that is not worth telling none, however certain it is', () => {
    expect(advise([plain, () => ({ oil: 10.1 })]).choice).toMatchObject({
      kind: 'alike',
      oil: { better: 0, worse: 0 },
    });
  });

  it('turns to the time, then to the price, where the oil is the same', () => {
    expect(advise([() => ({ t90: 5400, cost: 0.5 }), plain]).choice).toMatchObject({
      kind: 'take',
      run: 1,
      because: { by: 'time', p50: -1800 },
      alike: { by: 'oil', better: 0 },
    });
    expect(advise([() => ({ cost: 0.5 }), plain]).choice).toMatchObject({
      kind: 'take',
      run: 0,
      because: { by: 'cost' },
    });
  });

  it('tells what the better oil costs in time and money', () => {
    expect(advise([plain, () => ({ oil: 12, t90: 4500, cost: 2 })]).choice).toMatchObject({
      run: 1,
      prices: [
        { by: 'time', p50: 900 },
        { by: 'cost', p50: 1 },
      ],
    });
  });

  it('never takes a run that raises alarms, as it is set or in more than one draw of ten', () => {
    const escapes = (draws: number) => (draw: number) => ({
      oil: 20,
      alarms: draw < draws ? (['vapour-escapes'] as const) : [],
    });
    expect(advise([plain, escapes(0)], [1]).choice).toMatchObject({ kind: 'only-safe', run: 0, oil: { worse: 10 } });
    const doubtful = advise([plain, escapes(2)]);
    expect(doubtful.choice).toMatchObject({ kind: 'only-safe', run: 0 });
    expect(doubtful.unsafe).toEqual([{ run: 1, asSet: false, events: ['vapour-escapes'], draws: 2 }]);
    const rare = advise([plain, escapes(1)]);
    expect(rare.choice).toMatchObject({ kind: 'take', run: 1 });
    expect(rare.unsafe).toMatchObject([{ run: 1, draws: 1 }]);
    expect(advise([escapes(9), escapes(2)], [0]).choice).toEqual({ kind: 'none-safe' });
  });

  it('holds the best of three against the next best', () => {
    expect(advise([plain, () => ({ oil: 14 }), () => ({ oil: 12 })]).choice).toMatchObject({
      kind: 'take',
      run: 1,
      because: { better: 10 },
    });
    expect(advise([() => ({ oil: 5 }), plain, plain]).choice).toMatchObject({ kind: 'alike', runs: [1, 2] });
  });

  it('counts only draws in which every run could be calculated', () => {
    const found = advise([plain, (draw) => ({ oil: 12, failed: draw < 3 })]);
    expect([found.draws, found.failed]).toEqual([7, 3]);
    expect(recommend([{ cautions: [] }, { cautions: [] }], [], 1)).toBe(null);
    expect(advise([() => ({ oil: 0, t90: null }), () => ({ oil: 0, t90: null })]).choice).toEqual({ kind: 'no-oil' });
  });
});
