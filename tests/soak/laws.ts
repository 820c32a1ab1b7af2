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

const soonerBoil = (run: RunResult, withMore: RunResult): string | null => laterBoil(withMore, run);

/** Vapour of which the outlet loses this much more is not what the step of the run makes of it. */
const MORE_VAPOUR = 0.005;

const noMoreEscapes = (run: RunResult, withMore: RunResult): string | null => {
  const escaped = ({ record }: RunResult) => record.columns.waterUncondensed_kg[record.rows - 1] as number;
  const kept = ({ summary }: RunResult) => summary.hydrosol_kg;
  const [before, after] = [escaped(run), escaped(withMore)];
  return after > before + MORE_VAPOUR * (before + kept(run))
    ? `${after} kg of steam escapes, before ${before} kg`
    : null;
};

const boilsAt = ({ events }: RunResult): number | null => {
  const boil = events.find((event) => event.kind === 'first-boil');
  return boil ? boil.values.boilingPoint_K : null;
};

const everyKnot = (knots: Scenario['cooling']['flow_kg_s'], change: (value: number) => number) =>
  knots.map((knot) => ({ ...knot, value: change(knot.value) }));

const LAWS: readonly Law[] = [
  {
    says: 'on a higher site it boils colder',
    more: ({ site, ...rest }) =>
      site.barometer_Pa !== null || site.altitude_m > 3000
        ? null
        : { ...rest, site: { ...site, altitude_m: site.altitude_m + 500 } },
    wrong: (run, withMore) => {
      const [before, after] = [boilsAt(run), boilsAt(withMore)];
      return before === null || after === null || after < before ? null : `at ${after} K, lower down at ${before} K`;
    },
  },
  {
    says: 'an insulated pot boils no later, where the air is colder than the still',
    more: ({ pot, boiler, ...rest }) =>
      rest.site.airTemperature_K > pot.waterTemperature_K
        ? null
        : {
            ...rest,
            pot: { ...pot, insulationThickness_m: pot.insulationThickness_m + 0.03 },
            boiler: { ...boiler, insulationThickness_m: boiler.insulationThickness_m + 0.03 },
          },
    wrong: soonerBoil,
  },
  {
    says: 'warmer water boils no later',
    more: ({ pot, ...rest }) => ({ ...rest, pot: { ...pot, waterTemperature_K: pot.waterTemperature_K + 5 } }),
    wrong: soonerBoil,
  },
  {
    says: 'warmer air lets it boil no later',
    more: ({ site, ...rest }) => ({ ...rest, site: { ...site, airTemperature_K: site.airTemperature_K + 5 } }),
    wrong: soonerBoil,
  },
  {
    says: 'more water from the tap lets no more steam escape',
    more: ({ cooling, ...rest }) => ({
      ...rest,
      cooling: { ...cooling, flow_kg_s: everyKnot(cooling.flow_kg_s, (flow) => 1.5 * flow) },
    }),
    wrong: noMoreEscapes,
  },
  {
    says: 'colder cooling water lets no more steam escape',
    more: ({ cooling, ...rest }) => ({
      ...rest,
      cooling: {
        ...cooling,
        startTemperature_K: Math.max(274, cooling.startTemperature_K - 5),
        tapTemperature_K: everyKnot(cooling.tapTemperature_K, (tap) => Math.max(274, tap - 5)),
      },
    }),
    wrong: noMoreEscapes,
  },
  {
    says: 'a cleaner tube lets no more steam escape',
    more: ({ condenser, ...rest }) => ({ ...rest, condenser: { ...condenser, fouling_m2K_W: 0 } }),
    wrong: noMoreEscapes,
  },
  {
    says: 'a longer run brings no less oil',
    more: ({ run, ...rest }) => ({ ...rest, run: { ...run, duration_s: 1.25 * run.duration_s } }),
    wrong: ({ summary: one }, { summary: other }) =>
      other.oilCollected_kg >= one.oilCollected_kg * (1 - 1e-9)
        ? null
        : `${one.oilCollected_kg} kg of oil, longer ${other.oilCollected_kg} kg`,
  },
  {
    says: 'a run that stops at less oil ends no later',
    more: ({ run, ...rest }) => ({ ...rest, run: { ...run, stopAtShare: 0.1 } }),
    wrong: ({ summary: one }, { summary: other }) =>
      other.end_s <= one.end_s + MOMENT_S ? null : `ends at ${other.end_s} s, before ${one.end_s} s`,
  },
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
