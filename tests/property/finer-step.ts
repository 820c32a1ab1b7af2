/** How far the summary of a run moves when its step is made finer. */
import { simulate, type RunResult, type Scenario } from '../../sim/index.ts';

/** Largest change that a finer step may make to a reported number. */
const LIMIT = 0.005;

const numbersOf = ({ summary }: RunResult): Map<string, number | null> => {
  const { oilByConstituent_kg, ...plain } = summary;
  const named = Object.entries(oilByConstituent_kg).map(([id, mass]) => [`oil collected, ${id}`, mass] as const);
  return new Map([
    ...Object.entries(plain).filter(
      (entry): entry is [string, number | null] => entry[1] === null || typeof entry[1] === 'number',
    ),
    ...named,
  ]);
};

const withStep = (scenario: Scenario, step_s: number): RunResult =>
  simulate({ ...scenario, advanced: { ...scenario.advanced, step_s } });

/** A reported number that a finer step moves, and by what share; infinite where one of the two has none. */
export interface Movement {
  readonly share: number;
  readonly says: string;
}

/**
 * Reported numbers that move by more than half a percent between a step and a finer one; a time may move by one step,
 * because what happens is seen at the end of a step, and so may what flows in that step.
 */
export function movements(scenario: Scenario, step_s: number, finer_s: number): Movement[] {
  const whole = withStep(scenario, step_s);
  const fine = withStep(scenario, finer_s);
  const numbers = numbersOf(fine);
  const moved = [...numbersOf(whole)].flatMap(([name, a]) => {
    const b = numbers.get(name) ?? null;
    const says = `${name}: ${a} with ${step_s} s, ${b} with ${finer_s} s`;
    if (a === null || b === null) return a === b ? [] : [{ share: Infinity, says }];
    const larger = Math.max(Math.abs(a), Math.abs(b));
    const share = Math.abs(a - b) / larger;
    return Math.abs(a - b) <= Math.max(LIMIT * larger, oneStepOf(name, whole, step_s))
      ? []
      : [{ share, says: `${says}, ${(100 * share).toFixed(2)} %` }];
  });
  const [reason, other] = [whole.summary.endReason, fine.summary.endReason];
  return reason === other
    ? moved
    : [{ share: Infinity, says: `ended by ${reason} with ${step_s} s, by ${other} with ${finer_s} s` }, ...moved];
}

/** What one step can change at the moment at which something ends or begins. */
function oneStepOf(name: string, { summary, scenario }: RunResult, step_s: number): number {
  if (name.endsWith('_s') && !name.endsWith('_kg_s') && !name.endsWith('_m_s')) return step_s;
  // A trace below a millionth of the charge's oil is no result.
  if (name.startsWith('oil') && name.endsWith('_kg')) return 1e-6 * summary.oilInCharge_kg;
  // Where no drop has come the pressure has only begun to rise in the last steps: it moves as far as their ends do.
  if (name === 'peakPotGauge_Pa' && summary.firstDrop_s === null) return 0.1;
  if (name.startsWith('oil collected')) return 1e-6 * summary.oilInCharge_kg;
  if (summary.endReason === 'duration') return 0;
  if (name === 'potWaterLeft_kg' || name === 'hydrosol_kg') return summary.peakSteam_kg_s * step_s;
  if (name === 'energyFuel_J') return scenario.heat.ratedPower_W * step_s;
  return 0;
}
