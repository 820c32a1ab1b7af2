/**
 * Where along the coil the last steam is gone, in a cold and in a warm tub. Heat flows by the difference between steam
 * and water (Nusselt's film on the steam side, Chato's form in a sloping tube; natural convection outside).
 */
import { columnAt } from '../../run/record.ts';
import type { RunResult } from '../../run/result.ts';
import { gardenStill, WRAPPED } from './class-still.ts';
import { completeScenario, turnedOption, type Control, type Lesson } from './lesson.ts';
import { rowAt } from '../../run/record.ts';

const LENGTH_M = 4;
const POWER_W = 3000;
const COLD_K = 285.15;
const WARM_K = 333.15;
/** After the first drop the coil is full of steam, and the tub still much as it was. */
const LOOKED_AT_S = 240;

const tube: Control = { kind: 'choice', id: 'tube', options: ['as-is', 'narrow', 'steel'], start: 'as-is' };
const TUBES = {
  'as-is': { insideDiameter_m: 0.013, outsideDiameter_m: 0.015, material: 'copper' },
  narrow: { insideDiameter_m: 0.008, outsideDiameter_m: 0.01, material: 'copper' },
  steel: { insideDiameter_m: 0.013, outsideDiameter_m: 0.015, material: 'stainless-steel' },
} as const;

const tubed = (name: string, tub_K: number, option: string) =>
  completeScenario(
    gardenStill(name, {
      // All that the source gives enters the pot, so that the power in the question is what the coil must take.
      heat: { ratedPower_W: POWER_W, shareToPot: 1, lag_s: 0, setting: [{ at_s: 0, value: 1 }] },
      pot: { ...WRAPPED, water_kg: 6 },
      charge: { mass_kg: 0 },
      condenser: {
        ...TUBES[option as keyof typeof TUBES],
        length_m: LENGTH_M,
        coilDiameter_m: 0.28,
        coilPitch_m: 0.06,
      },
      cooling: { flow_kg_s: [{ at_s: 0, value: 0 }], startTemperature_K: tub_K, tubDiameter_m: 0.6, tubHeight_m: 0.6 },
      run: { duration_s: 2700 },
    }),
  );

function lookAt({ record, summary }: RunResult) {
  const at_s = Math.min(summary.end_s, (summary.firstDrop_s ?? summary.end_s) + LOOKED_AT_S);
  const { cells, data } = record.grids.condenserVapourShare;
  const row = rowAt(record, at_s);
  return {
    at_s,
    gone_m: columnAt(record, 'condensingLength_m', at_s),
    left: Array.from(data.subarray(row * cells, (row + 1) * cells)),
  };
}

export const steamInTheCoil: Lesson<'steam-in-the-coil'> = {
  id: 'steam-in-the-coil',
  choose: null,
  tryIt: tube,
  hazards: ['steam', 'hot-water'],
  modelOnly: false,
  working: { kind: 'sheet', id: 'condensing-length' },
  questions: [
    { kind: 'number', id: 'cold', quantity: 'run', min: 0, max: LENGTH_M, step: 0.05 },
    { kind: 'number', id: 'warm', quantity: 'run', min: 0, max: LENGTH_M, step: 0.05 },
  ],
  stills: (turned) => {
    const option = turnedOption(turned, tube);
    return [tubed('Cold tub', COLD_K, option), tubed('Warm tub', WARM_K, option)];
  },
  answer: ([coldRun, warmRun]) => {
    if (!coldRun || !warmRun) throw new RangeError('lesson: two runs are needed');
    const cold = lookAt(coldRun);
    const warm = lookAt(warmRun);
    return {
      facts: {
        length_m: LENGTH_M,
        heat_W: POWER_W,
        coldTub_K: COLD_K,
        warmTub_K: WARM_K,
        cold_m: cold.gone_m,
        warm_m: warm.gone_m,
        coldAt_s: cold.at_s,
        warmAt_s: warm.at_s,
        coldLeft: cold.left,
        warmLeft: warm.left,
      },
      truths: { cold: { kind: 'number', value: cold.gone_m }, warm: { kind: 'number', value: warm.gone_m } },
    };
  },
};
