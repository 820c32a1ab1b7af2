/** Temperatures at which oils rich in anethole freeze, as pharmacopoeias and handbooks print them. */
import { describe } from 'vitest';
import { constituentById } from '../../sim/fluids/constituents.ts';
import { canFreeze, freezingTemperature } from '../../sim/fluids/freezing.ts';
import { checkPrinted, work } from './printed.ts';

const usp = work('United States Pharmacopeia 32, anise oil');
const parry = work('Parry, The Chemistry of Essential Oils');
const kings = work("King's American Dispensatory, oil of fennel");

/** °C at which an oil with that share of anethole begins to freeze; its other constituents are about as heavy. */
const freezes = (share: number) => (): number => {
  const anethole = constituentById('trans_anethole');
  if (!canFreeze(anethole)) throw new Error('anethole has crystals');
  return freezingTemperature(anethole, share) - 273.15;
};

describe('freezing points of oils, °C', () => {
  checkPrinted([
    [
      'anise oil of at least 80 % anethole',
      freezes(0.8),
      '15',
      usp('congealing temperature'),
      { within: 0.5, because: 'half its last digit; the share is that of its usual range, 80 to 90 %' },
    ],
    [
      'anise oil in the middle of its usual range',
      freezes(0.85),
      '16.5',
      parry('p. 506, 15 to 18 °C according to its anethole'),
      { within: 1.5, because: 'printed as a range of pure samples' },
    ],
    [
      'fennel oil of 60 % anethole',
      freezes(0.6),
      '7.5',
      kings('5 to 10 °C, with 50 to 60 % anethole'),
      { within: 2.5, because: 'printed as a range' },
    ],
  ]);
});
