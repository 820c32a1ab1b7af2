/**
 * One scenario, boiled gently and boiled hard, so that the two can be compared at one click.
 *
 * Rule: both heat up at full power. The hard one stays there; the gentle one turns down, when its pot boils, to the
 * setting that sends 40 % of full power's steam to the condenser, all losses counted. Both run until as much
 * distillate has come over as the scenario's own run gives, so that the same steam meets the same charge at two
 * speeds; the stop rules of the scenario are left out. A controller that holds a rate is set to twice and to half its
 * rate instead. Should the scenario never boil or drip, or its calculation fail, both keep its duration.
 */
import type { RunResult } from '../../run/result.ts';
import { simulate } from '../../run/simulate.ts';
import { columnAt } from '../../run/record.ts';
import { fieldAt } from '../../scenario/fields.ts';
import { LONGEST_RUN_S } from '../../scenario/limits.ts';
import type { Scenario } from '../../scenario/scenario.ts';

export interface GentleAndHard {
  readonly gentle: Scenario;
  readonly hard: Scenario;
}

const GENTLE_SHARE = 0.4;
/** Time a run may take, as a multiple of the scenario's own. */
const GENTLE_PATIENCE = 6;
const HARD_PATIENCE = 2;

const within = (path: string, value: number): number => {
  const field = fieldAt(path);
  return Math.min(field?.max ?? Infinity, Math.max(field?.min ?? -Infinity, value));
};

/** Distillate of a run, kg, kept or returned; none where its calculation failed. */
const distillateOf = ({ record, failure }: RunResult): number =>
  failure === null
    ? (record.columns.hydrosol_kg[record.rows - 1] as number) + (record.columns.returned_kg[record.rows - 1] as number)
    : 0;

/** Names keep to the length that a scenario allows. */
const named = ({ name }: Scenario, boil: string): string => `${name.slice(0, 110)}, ${boil}`;

function variant(
  scenario: Scenario,
  name: string,
  heat: Partial<Scenario['heat']>,
  distillate: number,
  patience: number,
): Scenario {
  const stops = distillate > 0;
  return {
    ...scenario,
    name: named(scenario, name),
    heat: { ...scenario.heat, ...heat },
    run: {
      duration_s: stops ? Math.min(LONGEST_RUN_S, patience * scenario.run.duration_s) : scenario.run.duration_s,
      stopAtShare: null,
      stopAtOilRate_kg_s: null,
      stopAtDistillate_kg: stops ? within('run.stopAtDistillate_kg', distillate) : null,
    },
  };
}

export function gentleAgainstHard(scenario: Scenario): GentleAndHard {
  const own = simulate(scenario);
  const distillate = distillateOf(own);
  if (scenario.heat.control === 'hold-rate') {
    const rate = scenario.heat.targetRate_kg_s;
    return {
      gentle: variant(
        scenario,
        'gentle',
        { targetRate_kg_s: within('heat.targetRate_kg_s', rate / 2) },
        distillate,
        GENTLE_PATIENCE,
      ),
      hard: variant(
        scenario,
        'hard',
        { targetRate_kg_s: within('heat.targetRate_kg_s', rate * 2) },
        distillate,
        HARD_PATIENCE,
      ),
    };
  }
  const full: Scenario['heat']['setting'] = [{ at_s: 0, value: 1, shape: 'step' }];
  const hard = variant(scenario, 'hard', { setting: full }, distillate, HARD_PATIENCE);
  const atFull = simulate(hard);
  const boil = atFull.failure === null ? atFull.summary.firstBoil_s : null;
  if (boil === null)
    return {
      gentle: {
        ...hard,
        name: named(scenario, 'gentle'),
        heat: { ...hard.heat, setting: [{ at_s: 0, value: GENTLE_SHARE, shape: 'step' }] },
      },
      hard,
    };
  const { ratedPower_W, shareToPot } = scenario.heat;
  const most = ratedPower_W * shareToPot;
  const end = atFull.summary.end_s;
  const losses = Math.min(most, columnAt(atFull.record, 'lossPower_W', boil + 0.5 * (end - boil)));
  const setting = (losses + GENTLE_SHARE * (most - losses)) / most;
  const gentle = variant(
    scenario,
    'gentle',
    { setting: [...full, { at_s: 0, after: 'first-boil', value: setting, shape: 'step' }] },
    distillate,
    GENTLE_PATIENCE,
  );
  return { gentle, hard };
}
