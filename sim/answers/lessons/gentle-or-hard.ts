/**
 * One charge boiled gently and hard. What steam carries is limited by transfer from the surface, more by the minute in
 * more steam, and by the release from the leaf, which steam does not hasten (curves in sim/library/published-curves.ts).
 */
import { openingExample } from '../../run/opening-example.ts';
import { columnAt, rowAt } from '../../run/record.ts';
import type { RunResult } from '../../run/result.ts';
import { timeToCollect } from '../../run/summary.ts';
import { gentleAgainstHard } from '../comparison/gentle-against-hard.ts';
import { AMPLE_COIL, gardenStill } from './class-still.ts';
import { completeScenario, turnedNumber, type Control, type Lesson } from './lesson.ts';

/** The model is not surer than this of one boil against another. */
const SAME_WITHIN = 0.05;
const FIRST_PART = 0.1;
const ESTER = 'linalyl_acetate';

const charge: Control = { kind: 'number', id: 'charge', quantity: 'mass', min: 0.5, max: 2, step: 0.25, start: 2 };

const distilled = (run: RunResult, time_s: number): number =>
  columnAt(run.record, 'hydrosol_kg', time_s) + columnAt(run.record, 'returned_kg', time_s);

const oil_mL = (run: RunResult, time_s: number): number =>
  (columnAt(run.record, 'oilCollected_kg', time_s) * 1e6) / (run.summary.oilDensity_kg_m3 ?? NaN);

/** Time at which a run has sent over so much water, s; its end where it never does. */
function timeToDistil(run: RunResult, water_kg: number): number {
  const { time_s } = run.record.columns;
  for (let row = 0; row < run.record.rows; row++)
    if (distilled(run, time_s[row] as number) >= water_kg) return time_s[row] as number;
  return run.summary.end_s;
}

/** Share of linalyl acetate in the first tenth of what a run collects. */
function esterInFirst({ record, summary }: RunResult): number {
  const at_s = timeToCollect(record, FIRST_PART * summary.oilCollected_kg) ?? summary.end_s;
  const { cells, data } = record.grids.oilCollectedBy_kg;
  const row = data.subarray(rowAt(record, at_s) * cells, (rowAt(record, at_s) + 1) * cells);
  const all = row.reduce((sum, mass) => sum + mass, 0);
  const ester = row[record.constituents.indexOf(ESTER)] ?? 0;
  return all > 0 ? ester / all : 0;
}

const better = (gentle: number, hard: number): string =>
  Math.abs(gentle - hard) <= SAME_WITHIN * Math.max(gentle, hard) ? 'same' : gentle > hard ? 'gentle' : 'hard';

export const gentleOrHard: Lesson<'gentle-or-hard'> = {
  id: 'gentle-or-hard',
  choose: null,
  tryIt: charge,
  hazards: ['steam', 'neat-oil'],
  modelOnly: false,
  working: { kind: 'sheet', id: 'recovery' },
  questions: [
    { kind: 'choice', id: 'by-time', options: ['gentle', 'hard', 'same'] },
    { kind: 'choice', id: 'by-water', options: ['gentle', 'hard', 'same'] },
    { kind: 'choice', id: 'ester', options: ['gentle', 'hard', 'same'] },
  ],
  stills: (turned) => {
    const { gentle, hard } = gentleAgainstHard(
      completeScenario(
        gardenStill(openingExample.scenario.name ?? '', {
          ...AMPLE_COIL,
          // Wide enough for the hard boil, so that the plant alone decides.
          separator: { bore_m: 0.2 },
          charge: { mass_kg: turnedNumber(turned, charge) },
        }),
      ),
    );
    return [gentle, hard];
  },
  answer: ([gentle, hard]) => {
    if (!gentle || !hard) throw new RangeError('lesson: two runs are needed');
    const time_s = Math.min(gentle.summary.end_s, hard.summary.end_s);
    const water_kg = Math.min(distilled(gentle, gentle.summary.end_s), distilled(hard, hard.summary.end_s));
    const facts = {
      time_s,
      water_kg,
      gentleByTime_mL: oil_mL(gentle, time_s),
      hardByTime_mL: oil_mL(hard, time_s),
      gentleByWater_mL: oil_mL(gentle, timeToDistil(gentle, water_kg)),
      hardByWater_mL: oil_mL(hard, timeToDistil(hard, water_kg)),
      gentleEster: esterInFirst(gentle),
      hardEster: esterInFirst(hard),
      sameWithin: SAME_WITHIN,
      steamEscapes: hard.events.some(({ kind }) => kind === 'vapour-escapes'),
    };
    return {
      facts,
      truths: {
        'by-time': { kind: 'choice', option: better(facts.gentleByTime_mL, facts.hardByTime_mL) },
        'by-water': { kind: 'choice', option: better(facts.gentleByWater_mL, facts.hardByWater_mL) },
        ester: { kind: 'choice', option: better(facts.gentleEster, facts.hardEster) },
      },
    };
  },
};
