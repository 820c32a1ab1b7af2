/** What a run that is over says for the next, in English. */
import type { FittedFactor } from '../../answers/calibration/calibrate.ts';
import type { NextRunFact } from '../../answers/next-run/next-run.ts';
import type { Quantities } from '../quantities.ts';
import { fit } from './fit.ts';

export function nextRun(q: Quantities) {
  const oil = (value_mL: number): string => q.stored(value_mL, 'mL', 'oilVolume', { significant: 2 });
  const { factor, factorTitle } = fit(q);
  return {
    /** What goes to the bench with the still. */
    carried(logName: string, factors: readonly FittedFactor[]): string {
      const found = factors
        .filter(({ held }) => !held)
        .map(({ name, value }) => `${factorTitle(name).toLowerCase()} × ${factor(value)}`);
      return found.length === 0
        ? `Charge, heat plan and water of “${logName}” are on the bench. No fit is carried over: fit the run first for a better plan.`
        : `Charge, heat plan and water of “${logName}” are on the bench, with ${found.join(' and ')} as fitted.`;
    },
    fact(fact: NextRunFact): string {
      switch (fact.kind) {
        case 'ran-long':
          return `You read oil until ${q.time(fact.logged_s)}; 90 % was in by ${q.time(fact.enough_s)}, by the model. Stopping then saves ${q.energy(fact.saved_J)} and gives up ${oil(fact.forgone_mL)}.`;
        case 'stopped-early':
          return `Your last reading of oil is at ${q.time(fact.logged_s)}; 90 % is in by ${q.time(fact.enough_s)}, by the model. Going on until then brings ${oil(fact.gained_mL)} more.`;
        case 'outlet-warm': {
          const read = `The outlet reached ${q.temperature(fact.read_K)}; its limit is ${q.temperature(fact.limit_K)}.`;
          return fact.more === null
            ? `${read} More cooling water alone does not mend that in the model: use less heat or a longer tube.`
            : `${read} With ${q.number(fact.more.times, { decimals: 2 })} times the cooling water the model stays at ${q.temperature(fact.more.outlet_K)}.`;
        }
      }
    },
  };
}
