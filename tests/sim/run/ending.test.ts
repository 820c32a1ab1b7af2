import { describe, expect, it, vi } from 'vitest';
import { columnAt, exampleScenario, Run, simulate, type RunResult } from '../../../sim/index.ts';
import { scenarioOf, type Parts } from '../still/ideal-still.ts';

const rosemary: Parts = {
  pot: { waterTemperature_K: 368 },
  charge: { botanical: 'rosemary', state: 'dry', mass_kg: 1.5 },
  heat: { ratedPower_W: 2000 },
  run: { duration_s: 20_000 },
};
const withRule = (run: Parts['run']): RunResult =>
  simulate(scenarioOf({ ...rosemary, run: { ...rosemary.run, ...run } }));

describe('a run with a stop rule', () => {
  it('ends in the step in which the share of the oil is over', () => {
    const { summary, scenario, record } = withRule({ stopAtShare: 0.4 });
    expect(summary.endReason).toBe('stop-share');
    expect(summary.recovery).toBeGreaterThanOrEqual(0.4);
    const last = columnAt(record, 'oilRate_kg_s', summary.end_s) * scenario.advanced.step_s;
    expect((summary.oilCollected_kg - last) / summary.oilInCharge_kg).toBeLessThan(0.4);
  });

  it('ends in the step in which so much distillate is over, counting what runs back', () => {
    for (const returnShare of [0, 0.5]) {
      const { summary, scenario, record } = simulate(
        scenarioOf({ ...rosemary, separator: { returnShare }, run: { ...rosemary.run, stopAtDistillate_kg: 0.5 } }),
      );
      expect(summary.endReason).toBe('stop-distillate');
      const over = summary.hydrosol_kg + columnAt(record, 'returned_kg', summary.end_s);
      expect(over).toBeGreaterThanOrEqual(0.5);
      expect(over).toBeLessThan(0.5 + summary.peakSteam_kg_s * scenario.advanced.step_s);
    }
  });

  it('ends when the oil of ten minutes came slower than the limit, and not before oil has come for ten minutes', () => {
    const limit = 5e-7;
    const { summary, record } = withRule({ stopAtOilRate_kg_s: limit });
    expect(summary.endReason).toBe('stop-oil-rate');
    const mean = (summary.oilCollected_kg - columnAt(record, 'oilCollected_kg', summary.end_s - 600)) / 600;
    expect(mean).toBeLessThan(limit);
    expect(
      (columnAt(record, 'oilCollected_kg', summary.end_s - 60) -
        columnAt(record, 'oilCollected_kg', summary.end_s - 660)) /
        600,
    ).toBeGreaterThan(limit);
    expect(summary.end_s).toBeGreaterThan((summary.firstDrop_s as number) + 600);
  });

  it('runs to its length when the rule is never met, in whole steps', () => {
    const { summary } = withRule({ stopAtShare: 0.999, duration_s: 1200.4 });
    expect(summary.endReason).toBe('duration');
    expect(summary.end_s).toBe(1201);
  });
});

describe('a pot that boils dry', () => {
  it('stops the run before it makes steam from nothing', () => {
    const result = simulate(
      scenarioOf({
        pot: { waterTemperature_K: 368, water_kg: 0.8 },
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 3000 },
      }),
    );
    const { summary, record, failure } = result;
    expect(failure).toBe(null);
    expect(summary.endReason).toBe('pot-dry');
    expect(summary.potWaterLeft_kg).toBeGreaterThanOrEqual(0);
    expect(summary.potWaterLeft_kg).toBeLessThan(0.1);
    expect(columnAt(record, 'time_s', Infinity)).toBe(summary.end_s);
    expect(summary.hydrosol_kg + summary.waterUncondensed_kg + summary.potWaterLeft_kg).toBeLessThanOrEqual(0.8);
  });
});

describe('a controller that holds a distillate rate', () => {
  it.each([
    [2e-4, 120],
    [4e-4, 30],
    [4e-4, 300],
  ] as const)(
    'reaches %d kg/s with a lag of %d s without overshooting by more than a quarter, and stays',
    (targetRate_kg_s, lag_s) => {
      const { record, summary } = simulate(
        scenarioOf({
          ...rosemary,
          heat: { control: 'hold-rate', targetRate_kg_s, lag_s, ratedPower_W: 2200 },
          pot: { waterTemperature_K: 350, water_kg: 8 },
          run: { duration_s: 9000 },
        }),
      );
      expect(summary.endReason).toBe('duration');
      const { time_s, condensateRate_kg_s } = record.columns;
      const begins = summary.firstDrop_s as number;
      let most = 0;
      for (let row = 0; row < record.rows; row++) {
        most = Math.max(most, condensateRate_kg_s[row] as number);
        if ((time_s[row] as number) > begins + 1500)
          expect(Math.abs((condensateRate_kg_s[row] as number) / targetRate_kg_s - 1), `${time_s[row]} s`).toBeLessThan(
            0.03,
          );
      }
      expect(most).toBeLessThan(1.25 * targetRate_kg_s);
    },
  );

  it('runs flat out when the rate is beyond its power, and comes back at once when it is not', () => {
    const beyond = simulate(
      scenarioOf({
        ...rosemary,
        heat: { control: 'hold-rate', targetRate_kg_s: 0.01, ratedPower_W: 1500 },
        run: { duration_s: 3000 },
      }),
    );
    expect(columnAt(beyond.record, 'heatSetting', 3000)).toBe(1);
  });
});

describe('a state that turns non-finite', () => {
  const broken = (spoil: (run: Run) => void): RunResult => {
    const run = new Run(exampleScenario('gentle-lavender'));
    run.advance(1800);
    spoil(run);
    run.advance(Infinity);
    return run.result();
  };

  it.each<readonly [RegExp, string, (run: Run) => void]>([
    [
      /^separator-temperature$/,
      'the separator',
      (run) =>
        vi.spyOn(run.still.separator, 'step').mockImplementation(() => {
          run.still.separator.temperature = NaN;
          run.still.separator.enthalpy = NaN;
        }),
    ],
    [
      /^(distillate|separator)-temperature$/,
      'the condenser',
      (run) => {
        const step = run.still.condenser.step.bind(run.still.condenser);
        vi.spyOn(run.still.condenser, 'step').mockImplementation((...given) => {
          step(...given);
          run.still.condenser.condensate.enthalpy = Infinity;
          run.still.condenser.condensateTemperature = Infinity;
        });
      },
    ],
    [
      /^heat-source$/,
      'the fire',
      (run) =>
        vi.spyOn(run.still.source, 'step').mockImplementation(() => {
          run.still.source.stored = NaN;
        }),
    ],
    [
      /^pot-temperature$/,
      'the pot',
      (run) => {
        const step = run.still.pot.step.bind(run.still.pot);
        vi.spyOn(run.still.pot, 'step').mockImplementation((...given) => {
          step(...given);
          run.still.pot.enthalpy = NaN;
        });
      },
    ],
    [
      /^coolant-temperature$/,
      'the tub',
      (run) =>
        vi.spyOn(run.still.coolant, 'step').mockImplementation(() => {
          run.still.coolant.outletTemperature = NaN;
          run.still.coolant.segmentTemperature.fill(NaN);
        }),
    ],
    [
      /^lid-temperature$/,
      'the lid',
      (run) =>
        vi.spyOn(run.still.head, 'step').mockImplementation(() => {
          run.still.head.temperature = NaN;
        }),
    ],
    [
      /^charge-oil$/,
      'the charge',
      (run) => {
        run.still.release.held.fill(NaN);
      },
    ],
  ])('stops the run and is named: %s when it broke in %s', (variable, _, spoil) => {
    const { summary, failure, record } = broken(spoil);
    expect(summary.endReason).toBe('non-finite');
    expect(failure?.variable).toMatch(variable);
    expect(failure?.time_s).toBeGreaterThan(1800);
    expect(failure?.time_s).toBeLessThanOrEqual(1800 + 20);
    for (const column of Object.values(record.columns))
      expect(column.every((value) => Number.isFinite(value))).toBe(true);
  });
});
