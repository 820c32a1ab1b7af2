/** What more of one thing must do, whatever the still: each law on pairs of runs that differ in it alone. */
import fc from 'fast-check';
import { simulate, type RunResult, type Scenario } from '../../sim/index.ts';
import { anyScenario } from '../property/random-scenario.ts';
import type { Part } from './part.ts';

interface Law {
  readonly says: string;
  /** The still with more of it; `null` where it has as much as it may. */
  more(scenario: Scenario): Scenario | null;
  /** What is wrong between the run and the run with more; `null` when nothing is. */
  wrong(run: RunResult, withMore: RunResult): string | null;
}

/** Steps of a run do not end at the very moment. */
const MOMENT_S = 10;

const laterBoil = (run: RunResult, withMore: RunResult): string | null => {
  const [before, after] = [run.summary.firstBoil_s, withMore.summary.firstBoil_s];
  if (before === null || after === null) return null;
  return after < before - MOMENT_S ? `boils at ${after} s, before ${before} s` : null;
};

const LAWS: readonly Law[] = [
  {
    says: 'more water boils no sooner',
    more: ({ pot, ...rest }) => ({ ...rest, pot: { ...pot, water_kg: 1.1 * pot.water_kg } }),
    wrong: laterBoil,
  },
  {
    says: 'a stronger flame boils no later',
    more: ({ heat, ...rest }) =>
      heat.control === 'hold-rate' ? null : { ...rest, heat: { ...heat, ratedPower_W: 1.2 * heat.ratedPower_W } },
    wrong: (run, withMore) => laterBoil(withMore, run),
  },
  {
    says: 'more heat loss boils no sooner, where the air is colder than the still',
    more: ({ factors, ...rest }) =>
      rest.site.airTemperature_K > rest.pot.waterTemperature_K
        ? null
        : { ...rest, factors: { ...factors, heatLoss: 1.3 * factors.heatLoss } },
    wrong: laterBoil,
  },
  {
    says: 'a record kept at other times is of the same run',
    more: ({ advanced, ...rest }) => ({
      ...rest,
      advanced: { ...advanced, recordEvery_s: 2 * advanced.recordEvery_s },
    }),
    wrong: ({ summary: one }, { summary: other }) =>
      Math.abs(one.oilCollected_kg - other.oilCollected_kg) <= 0.01 * Math.max(1e-6, one.oilCollected_kg)
        ? null
        : `${one.oilCollected_kg} kg of oil, or ${other.oilCollected_kg} kg`,
  },
];

const holds = fc.property(
  anyScenario({ reach: 'ordinary', steps: 1500, plans: 'by-clock' }),
  fc.constantFrom(...LAWS),
  (scenario, law) => {
    const more = law.more(scenario);
    if (more === null) return;
    const found = law.wrong(simulate(scenario), simulate(more));
    if (found !== null) throw new Error(`${law.says}: ${found}`);
  },
);

export const laws: Part = {
  name: 'laws',
  says: 'stills with more of one thing',
  few: 6,
  many: 3000,
  check: (asked) => fc.check(holds, asked),
};
