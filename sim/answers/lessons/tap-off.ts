/**
 * The tap closed under a running still: the tub is a store of cold. Seen from the first law: rise of the water = duty ÷
 * (mass × heat capacity), by layers from the top (Duffie and Beckman, Solar Engineering of Thermal Processes, on
 * stratified tanks).
 */
import { tubVolume } from '../../geometry/tub.ts';
import { columnAt } from '../../run/record.ts';
import { gardenStill } from './class-still.ts';
import {
  completeScenario,
  curveOfRun,
  firstRun,
  turnedNumber,
  turnedOption,
  type Control,
  type Lesson,
} from './lesson.ts';

const UNTIL_S = 9000;
const WATER_KG_M3 = 998;

const minute: Control = {
  kind: 'number',
  id: 'minute',
  quantity: 'duration',
  min: 2700,
  max: 4500,
  step: 300,
  start: 3600,
};
const hose: Control = { kind: 'choice', id: 'hose', options: ['laid', 'top'], start: 'laid' };

export const tapOff: Lesson<'tap-off'> = {
  id: 'tap-off',
  choose: minute,
  tryIt: hose,
  hazards: ['steam', 'hot-water'],
  modelOnly: false,
  working: { kind: 'sheet', id: 'tub-warming' },
  questions: [
    {
      kind: 'curve',
      id: 'distillate',
      column: 'condensateTemperature_K',
      quantity: 'temperature',
      until_s: UNTIL_S,
      min: 283.15,
      max: 373.15,
    },
  ],
  stills: (turned) => [
    completeScenario(
      gardenStill('Tap closed', {
        heat: {
          setting: [
            { at_s: 0, value: 0.9 },
            { at_s: 0, after: 'first-drop', value: 0.65 },
          ],
        },
        condenser: { length_m: 3 },
        cooling: {
          tubDiameter_m: 0.3,
          tubHeight_m: 0.32,
          inlet: turnedOption(turned, hose) === 'top' ? 'top' : 'laid',
          flow_kg_s: [
            { at_s: 0, value: 0.012 },
            { at_s: turnedNumber(turned, minute), value: 0 },
          ],
        },
        run: { duration_s: UNTIL_S },
      }),
    ),
  ],
  answer: (runs, turned) => {
    const run = firstRun(runs);
    const closed_s = turnedNumber(turned, minute);
    const limit_K = run.scenario.condenser.outletLimit_K;
    const { time_s, condensateTemperature_K } = run.record.columns;
    let tooWarm_s: number | null = null;
    for (let row = 0; row < run.record.rows && tooWarm_s === null; row++)
      if ((time_s[row] as number) >= closed_s && (condensateTemperature_K[row] as number) >= limit_K)
        tooWarm_s = time_s[row] as number;
    const at = (time: number) => columnAt(run.record, 'condensateTemperature_K', time);
    const half_s = tooWarm_s === null ? null : (closed_s + tooWarm_s) / 2;
    const escape = run.events.find((event) => event.kind === 'vapour-escapes' && event.time_s >= closed_s);
    return {
      facts: {
        closed_s,
        before_K: at(closed_s),
        limit_K,
        tooWarm_s,
        escapes_s: escape?.time_s ?? null,
        firstHalf_K: half_s === null ? null : at(half_s) - at(closed_s),
        secondHalf_K: half_s === null || tooWarm_s === null ? null : at(tooWarm_s) - at(half_s),
        tub_kg: tubVolume(run.scenario.cooling) * WATER_KG_M3,
      },
      truths: { distillate: curveOfRun(run, 'condensateTemperature_K', UNTIL_S) },
    };
  },
};
