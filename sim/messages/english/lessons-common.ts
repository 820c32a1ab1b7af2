/** What all lessons say alike, in English. */
import type { CurveQuantity, LessonHazard, LessonQuantity } from '../../answers/lessons/lesson.ts';
import type { Quantities } from '../quantities.ts';

const HAZARDS: Readonly<Record<LessonHazard, string>> = {
  steam:
    'Steam scalds at once, and you cannot see it where it leaves the pipe. Keep faces and hands away from every joint.',
  flame: 'Oil and its vapour burn. Keep every flame away from the receiver.',
  'hot-water': 'Water above 60 °C scalds in seconds. Keep hands out of the pot and out of a hot tub.',
  'neat-oil': 'Neat oil irritates skin and eyes. Wear gloves and goggles, and let nobody taste it.',
  'closed-outlet':
    'Never close the outlet of a real still, not for a second. The lid can fly off, and the steam behind it burns.',
  'dry-pot': 'Never let a real pot run dry. Stay with it, and turn the heat off before the water is gone.',
};

const CURVES: Readonly<Record<CurveQuantity, string>> = {
  temperature: 'Temperature',
  oilVolume: 'Oil collected',
  steamFlow: 'Steam',
  water: 'Water in the pot',
};

/** A difference is said in its own unit: 5 °C warmer, not 278 K. */
const away = (q: Quantities, quantity: LessonQuantity | CurveQuantity, difference: number): string => {
  if (quantity === 'temperature') return q.temperatureDifference(difference, { decimals: difference < 10 ? 1 : 0 });
  if (quantity === 'duration')
    return q.time(Math.max(60 * Math.round(difference / 60), difference < 60 ? difference : 60));
  return q.of(quantity, difference);
};

export const lessonCommon = (q: Quantities) => ({
  hazards: {
    ...HAZARDS,
    'hot-water': `Water above ${q.temperature(333.15)} scalds in seconds. Keep hands out of the pot and out of a hot tub.`,
  } as Readonly<Record<LessonHazard, string>>,
  modelOnly: 'This is shown in the model only. Never try it with a real still.',
  curve: CURVES,
  /** How far off the only one was. */
  only: (name: string, quantity: LessonQuantity | CurveQuantity, difference: number, isMean: boolean): string =>
    `${name} was ${away(q, quantity, difference)} off${isMean ? ' on average' : ''}.`,
  /** The nearest of those who set a number or drew a curve. */
  nearest: (name: string, quantity: LessonQuantity | CurveQuantity, difference: number, isMean: boolean): string =>
    `${name} came nearest: ${away(q, quantity, difference)} off${isMean ? ' on average' : ''}.`,
  off: (name: string, quantity: LessonQuantity | CurveQuantity, difference: number): string =>
    `${name}: ${away(q, quantity, difference)} off`,
  chose: (right: number, all: number): string =>
    all === 1
      ? right === 1
        ? 'This is what you chose.'
        : 'You chose something else. That makes it worth a closer look.'
      : right === 0
        ? 'Nobody chose this. That makes it worth a closer look.'
        : `${right} of ${all} chose this${right < all / 2 ? ', so most of us learn something here' : ''}.`,
  drewNothing: 'Nobody drew a curve this time.',
  drewElsewhere: 'What was drawn ends before the run has anything to show.',
  setNothing: 'Nobody set a number this time.',
  never: 'In this run that never happens.',
  quantity: (quantity: LessonQuantity | CurveQuantity, value: number): string =>
    quantity === 'temperature'
      ? q.temperature(value, { decimals: 1 })
      : quantity === 'duration'
        ? q.time(Math.round(value / 60) * 60 || Math.round(value))
        : q.of(quantity, value),
  setting: (quantity: LessonQuantity, value: number): string =>
    quantity === 'duration'
      ? q.time(value)
      : quantity === 'temperature'
        ? q.temperature(value, { decimals: 1 })
        : q.of(quantity, value),
});
