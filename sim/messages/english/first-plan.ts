/** From a few questions to a still, in English. */
import type { PlanQuestion } from '../../answers/first-plan/plan-still.ts';
import type { PartLoad } from '../../answers/first-plan/weakest-part.ts';
import { LIMITS } from '../../run/limits.ts';
import type { Quantities } from '../quantities.ts';

const QUESTIONS: Readonly<Record<PlanQuestion, string>> = {
  plant: 'Plant',
  plant_kg: 'Plant to distil at once',
  pot_m3: 'Volume of the pot',
  heatSource: 'Heat',
  heat_W: 'Full power of the heat',
  tub_m3: 'Water in the tub',
  tap_K: 'Tap water',
  waterRuns: 'Water may run',
  hose: 'The hose ends',
  altitude_m: 'Height above the sea',
  tube: 'Tube for the coil',
};

export const firstPlan = (q: Quantities) => ({
  title: 'From what you have to a still',
  lead: 'Answer what you know, in any unit. Skip the rest: what is assumed stands there, and you can change it.',
  question: (question: PlanQuestion): string => QUESTIONS[question],
  assumed: 'assumed',
  yours: 'your answer',
  skip: 'Skip',
  make: 'Work out this still',
  working: 'Finding the length of tube and running the still…',
  hoses: {
    laid: 'on the bottom, lying',
    'pointing-up': 'on the bottom, pointing up',
    perforated: 'in a perforated pipe on the bottom',
    top: 'at the top',
  } as const,
  running: { yes: 'yes', no: 'no' } as const,
  headings: { works: 'Does it work?', weakest: 'The weakest part', next: 'What to buy next', rest: 'Everything else' },
  plantCut: (plant_kg: number): string =>
    `The pot holds no more than ${q.mass(plant_kg)} of this plant, so that is used.`,
  turnedDown: 'The heat is turned down after the first drop, so that the water in the pot lasts.',
  weakest({ part, value, limit, load }: PartLoad): string {
    const room = load < 1 ? 'That is within its limit.' : 'That is too much.';
    switch (part) {
      case 'pot-water':
        return `The water in the pot: the run takes ${q.water(value)} of ${q.water(limit)}. ${room}`;
      case 'tub':
        return `The cooling water: it leaves at up to ${q.temperature(value)}; from ${q.temperature(limit)} it scalds. ${room}`;
      case 'neck':
        return `The swan neck: steam passes at up to ${q.speed(value)}; above ${q.speed(limit)} it carries water along. ${room}`;
      case 'separator':
        return `The separator: it is ${q.size(value)} wide. At the highest rate nine runs of ten need ${q.size(limit)} to keep ${q.share(LIMITS.captureShare)} of the oil drops. ${load < 1 ? 'It is wide enough.' : 'Some oil stays in the water as fine drops.'}`;
      case 'pressure':
        return `The pressure in the pot: up to ${q.pressure(value)}; at ${q.pressure(limit)} a lid can lift. ${room}`;
      case 'base':
        return `The base of the pot: it takes up to ${q.heatFlux(value)}; above ${q.heatFlux(limit)} plants that lie on it scorch. ${room}`;
    }
  },
  /** What to do about a part that is too weak. */
  remedy({ part, limit }: PartLoad): string {
    switch (part) {
      case 'pot-water':
        return 'A larger pot, or less heat or time.';
      case 'tub':
        return 'A larger tub or more tap water, because hot overflow scalds.';
      case 'neck':
        return 'A wider swan neck, because fast steam carries water into the oil.';
      case 'separator':
        return `A separator ${q.size(limit)} wide or a second one after it, because narrow ones let fine drops of oil pass.`;
      case 'pressure':
        return 'A wider neck and tube, because pressure lifts the lid.';
      case 'base':
        return 'A grid or a spreader under the plant, because it scorches on the base.';
    }
  },
  buyTube: (sentence: string): string => `Tube for the coil, because no steam may escape. ${sentence}`,
  nothingElse: 'No other part of this still is too weak in this run.',
});
