/**
 * Water and an oil that do not mix boil together where their vapour pressures add up to the air's, below either's own
 * boiling point (the rule of steam distillation: Atkins and de Paula, Physical Chemistry, vapour pressures of immiscible
 * liquids). Raoult's law within the oil.
 */
import { constituentById, curveOf } from '../../fluids/constituents.ts';
import { coBoilingOilShare, coBoilingTemperature, moleFractions, oilVapourPressure } from '../../fluids/immiscible.ts';
import { standardPressure } from '../../fluids/atmosphere.ts';
import { saturationPressure, saturationTemperature } from '../../fluids/water.ts';
import { findBotanical } from '../../library/index.ts';
import { bisect } from '../../maths/bisect.ts';
import { turnedOption, type Control, type Lesson } from './lesson.ts';

const ALTITUDE_M = 120;
/** An oil boils alone somewhere here, K; the vapour curves are carried on past the range in which they were fitted. */
const HOTTEST_K = 620;
const COLDEST_SHOWN_K = 323.15;
const HOTTEST_SHOWN_K = 378.15;
const SHOWN_POINTS = 56;

const oil: Control = {
  kind: 'choice',
  id: 'oil',
  options: ['lavender', 'pine', 'clove', 'water-alone'],
  start: 'lavender',
};
const PLANTS: Readonly<Record<string, string>> = { lavender: 'lavender-true', pine: 'scots-pine', clove: 'clove-bud' };

function oilOf(option: string) {
  const plant = PLANTS[option];
  if (plant === undefined) return { rows: [], fractions: [] };
  const parts = findBotanical(plant).composition.value;
  const sum = parts.reduce((total, { massFraction }) => total + massFraction, 0);
  const rows = parts.map(({ constituent }) => constituentById(constituent));
  const fractions = moleFractions(
    parts.map(({ massFraction }) => massFraction / sum),
    rows,
  );
  return { rows, fractions };
}

export const twoLiquids: Lesson<'two-liquids'> = {
  id: 'two-liquids',
  choose: null,
  tryIt: oil,
  hazards: ['steam', 'neat-oil'],
  modelOnly: false,
  working: { kind: 'entry', name: 'co-boiling-temperature-linalool' },
  questions: [
    { kind: 'choice', id: 'where', options: ['own-boiling-point', 'between', 'at-water', 'below-water'] },
    { kind: 'number', id: 'together', quantity: 'temperature', min: 343.15, max: 483.15, step: 0.5 },
  ],
  stills: () => [],
  answer: (_, turned) => {
    const { rows, fractions } = oilOf(turnedOption(turned, oil));
    const air_Pa = standardPressure(ALTITUDE_M);
    const water_K = saturationTemperature(air_Pa);
    const curves = rows.map(curveOf);
    const oilAt = (T: number) => oilVapourPressure(fractions, curves, T);
    const together_K = rows.length === 0 ? water_K : coBoilingTemperature(air_Pa, fractions, rows);
    const oilAlone_K = rows.length === 0 ? water_K : bisect((T) => oilAt(T) < air_Pa, water_K, HOTTEST_K, 50).low;
    const at_K = Array.from(
      { length: SHOWN_POINTS },
      (_unused, k) => COLDEST_SHOWN_K + (k * (HOTTEST_SHOWN_K - COLDEST_SHOWN_K)) / (SHOWN_POINTS - 1),
    );
    return {
      facts: {
        air_Pa,
        water_K,
        together_K,
        oilAlone_K,
        waterPressure_Pa: saturationPressure(together_K),
        oilPressure_Pa: oilAt(together_K),
        oilShare: rows.length === 0 ? 0 : coBoilingOilShare(air_Pa, fractions, rows),
        at_K,
        waterAt_Pa: at_K.map(saturationPressure),
        oilAt_Pa: at_K.map(oilAt),
      },
      truths: {
        where: { kind: 'choice', option: together_K < water_K ? 'below-water' : 'at-water' },
        together: { kind: 'number', value: together_K },
      },
    };
  },
};
