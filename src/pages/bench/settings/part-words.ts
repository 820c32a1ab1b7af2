/** Parts of the scenario in the order steam takes, and the choices within them, in plain words. */
import type { ScenarioPart } from '../../../../sim/index.ts';

export interface PartWords {
  readonly part: ScenarioPart;
  /** A word for the row of parts. */
  readonly short: string;
  /** What the part is, above its fields. */
  readonly says: string;
}

export const PARTS: readonly PartWords[] = [
  { part: 'site', short: 'Place', says: 'Where the still stands, and the air about it.' },
  { part: 'heat', short: 'Heat', says: 'What heats the pot, how strongly, and how it is turned up and down.' },
  { part: 'pot', short: 'Pot', says: 'The vessel, its wall, and the water in it.' },
  { part: 'boiler', short: 'Boiler', says: 'The separate boiler that sends steam to the bed.' },
  { part: 'charge', short: 'Charge', says: 'The plant, how it is packed, and how it gives up its oil.' },
  { part: 'neck', short: 'Neck', says: 'The swan neck from the lid to the condenser.' },
  { part: 'condenser', short: 'Condenser', says: 'The tube that turns vapour back into liquid.' },
  { part: 'cooling', short: 'Cooling', says: 'The water that cools it.' },
  { part: 'separator', short: 'Separator', says: 'The vessel in which oil and water part.' },
  { part: 'run', short: 'Run', says: 'What it is called, how long it runs, and when it stops.' },
  {
    part: 'factors',
    short: 'Factors',
    says: 'Multipliers on the model, for fitting it to what your own still does. One leaves it as it is.',
  },
  {
    part: 'advanced',
    short: 'Model',
    says: 'How finely the model divides time, bed, tub and tube. The defaults serve every still here.',
  },
];

const CHOICE_WORDS: Readonly<Record<string, string>> = {
  'heat.control:schedule': 'follow the schedule',
  'heat.control:hold-rate': 'hold a distillate rate',
  'heat.kind:immersion-element': 'immersion element',
  'pot.layout:water': 'in the water',
  'pot.layout:water-and-steam': 'on a grid above it',
  'pot.layout:steam': 'steam from a boiler',
  'boiler.drain:waste': 'to waste',
  'boiler.drain:boiler': 'back to the boiler',
  'condenser.kind:coil-in-tub': 'coil in a tub',
  'condenser.kind:jacketed-tube': 'tube in a jacket',
  'condenser.kind:bundle': 'bundle in a jacket',
  'condenser.flow:counterflow': 'head-on (counterflow)',
  'condenser.flow:parallel': 'with it (parallel)',
  'cooling.jacketSupply:tap': 'once through, from the tap',
  'cooling.jacketSupply:barrel': 'round and round, from a barrel',
};

export const choiceWords = (path: string, option: string): string =>
  CHOICE_WORDS[`${path}:${option}`] ?? option.replace(/-/gu, ' ');
