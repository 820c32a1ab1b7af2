/**
 * Whether an oil floats: its density against water's at the temperature of the receiver (Archimedes). Oils swell more
 * than water when they warm. Densities of the constituents with their sources: sim/fluids/constituents.
 */
import { liquidDensity } from '../../fluids/water.ts';
import { findBotanical } from '../../library/index.ts';
import { LIMITS } from '../../run/limits.ts';
import { oilDensityAt, turnedNumber, type Control, type Lesson } from './lesson.ts';

const COLD_K = 278.15;
const WARM_K = 328.15;
/** Cloves and fennel in one pot: the heavy oil and the light one dissolve in each other. */
const FENNEL_SHARE = 0.6;
const TAPS = ['top', 'bottom', 'neither'] as const;

const receiver: Control = {
  kind: 'number',
  id: 'receiver',
  quantity: 'temperature',
  min: COLD_K,
  max: WARM_K,
  step: 5,
  start: 293.15,
};

const oilOf = (plant: string, share = 1) => {
  const parts = findBotanical(plant).composition.value;
  const sum = parts.reduce((total, { massFraction }) => total + massFraction, 0);
  return parts.map(({ constituent, massFraction }) => ({ constituent, share: (share * massFraction) / sum }));
};

const LAVENDER = oilOf('lavender-true');
const CLOVE = oilOf('clove-bud');
const MIXED = [...oilOf('clove-bud', 1 - FENNEL_SHARE), ...oilOf('fennel-bitter', FENNEL_SHARE)];

const tapFor = (oil_kg_m3: number, water_kg_m3: number): (typeof TAPS)[number] => {
  const lighter = water_kg_m3 - oil_kg_m3;
  if (Math.abs(lighter) < LIMITS.nearNeutral_kg_m3) return 'neither';
  return lighter > 0 ? 'top' : 'bottom';
};

export const floatOrSink: Lesson<'float-or-sink'> = {
  id: 'float-or-sink',
  choose: null,
  tryIt: receiver,
  hazards: ['neat-oil', 'flame'],
  modelOnly: false,
  working: { kind: 'entry', name: 'settling-velocity-stokes' },
  questions: [
    { kind: 'choice', id: 'lavender', options: TAPS },
    { kind: 'choice', id: 'clove', options: TAPS },
    { kind: 'choice', id: 'mixed', options: TAPS },
  ],
  stills: () => [],
  answer: (_, turned) => {
    const T = turnedNumber(turned, receiver);
    const water_kg_m3 = liquidDensity(T);
    const [lavender_kg_m3, clove_kg_m3, mixed_kg_m3] = [LAVENDER, CLOVE, MIXED].map((oil) => oilDensityAt(oil, T)) as [
      number,
      number,
      number,
    ];
    const option = (oil_kg_m3: number) => ({ kind: 'choice', option: tapFor(oil_kg_m3, water_kg_m3) }) as const;
    return {
      facts: {
        receiver_K: T,
        water_kg_m3,
        lavender_kg_m3,
        clove_kg_m3,
        mixed_kg_m3,
        least_kg_m3: LIMITS.nearNeutral_kg_m3,
        coldReceiver_K: COLD_K,
        warmReceiver_K: WARM_K,
        mixedCold_kg_m3: liquidDensity(COLD_K) - oilDensityAt(MIXED, COLD_K),
        mixedWarm_kg_m3: liquidDensity(WARM_K) - oilDensityAt(MIXED, WARM_K),
      },
      truths: { lavender: option(lavender_kg_m3), clove: option(clove_kg_m3), mixed: option(mixed_kg_m3) },
    };
  },
};
