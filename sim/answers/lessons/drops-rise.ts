/**
 * Three separators: a drop is kept if it rises faster than the water sinks past it, flow over surface (A. Hazen, On
 * Sedimentation, Trans. ASCE 53, 1904, 45–71; rise by Stokes). Drop sizes are assumed: nobody has measured them.
 */
import { STANDARD_GRAVITY } from '../../constants.ts';
import { liquidDensity, liquidViscosity } from '../../fluids/water.ts';
import { circleArea } from '../../geometry/cylinder.ts';
import { findBotanical } from '../../library/index.ts';
import { LIMITS } from '../../run/limits.ts';
import { STILL_CLOUDY } from '../../run/standing.ts';
import { capturedShare } from '../../transfer/drop-sizes.ts';
import { timeToClear } from '../../transfer/haze.ts';
import { cutDiameter, overflowRate } from '../../transfer/settling.ts';
import { completeScenario, oilDensityAt, turnedNumber, type Control, type Lesson } from './lesson.ts';

const RECEIVER_K = 303.15;
const JARS = {
  tall: { bore_m: 0.05, height_m: 0.4 },
  wide: { bore_m: 0.1, height_m: 0.1 },
  tiny: { bore_m: 0.035, height_m: 0.1 },
} as const;

const flow: Control = {
  kind: 'number',
  id: 'flow',
  quantity: 'distillateFlow',
  min: 0.3 / 3600,
  max: 6 / 3600,
  step: 0.3 / 3600,
  start: 1.2 / 3600,
};

const [composition, { dropMedian_m, dropSpread, turbulenceFactor }] = [
  findBotanical('lavender-true').composition.value.map(({ constituent, massFraction }) => ({
    constituent,
    share: massFraction,
  })),
  completeScenario({}).separator,
];

export const dropsRise: Lesson<'drops-rise'> = {
  id: 'drops-rise',
  choose: null,
  tryIt: flow,
  hazards: ['neat-oil', 'flame'],
  modelOnly: false,
  working: { kind: 'entry', name: 'overflow-rate' },
  questions: [
    { kind: 'choice', id: 'jar', options: ['tall', 'wide', 'tiny', 'same'] },
    { kind: 'number', id: 'stand', quantity: 'duration', min: 0, max: 172_800, step: 3600 },
  ],
  stills: () => [],
  answer: (_, turned) => {
    const flow_kg_s = turnedNumber(turned, flow);
    const density = liquidDensity(RECEIVER_K);
    const viscosity = liquidViscosity(RECEIVER_K);
    const difference = density - oilDensityAt(composition, RECEIVER_K);
    const cut = ({ bore_m }: { readonly bore_m: number }) =>
      cutDiameter(
        overflowRate((flow_kg_s / density) * turbulenceFactor, circleArea(bore_m)),
        difference,
        viscosity,
        STANDARD_GRAVITY,
      );
    const lost = (cut_m: number) => 1 - capturedShare(cut_m, dropMedian_m, dropSpread);
    const [tallCut_m, wideCut_m, tinyCut_m] = [cut(JARS.tall), cut(JARS.wide), cut(JARS.tiny)];
    const losses = { tall: lost(tallCut_m), wide: lost(wideCut_m), tiny: lost(tinyCut_m) };
    const least = Object.entries(losses).sort(([, a], [, b]) => a - b)[0]?.[0] ?? 'same';
    const clears_s = timeToClear(
      { median_m: dropMedian_m, spread: dropSpread, cut_m: wideCut_m },
      { height_m: LIMITS.jarDepth_m, densityDifference_kg_m3: difference, viscosity_Pa_s: viscosity },
      STILL_CLOUDY,
    );
    if (clears_s === null) throw new RangeError('lesson: the water never clears');
    return {
      facts: {
        flow_kg_s,
        volume_m3: circleArea(JARS.wide.bore_m) * JARS.wide.height_m,
        tallCut_m,
        wideCut_m,
        tinyCut_m,
        tallLost: losses.tall,
        wideLost: losses.wide,
        tinyLost: losses.tiny,
        clears_s,
        jar_m: LIMITS.jarDepth_m,
      },
      truths: { jar: { kind: 'choice', option: least }, stand: { kind: 'number', value: clears_s } },
    };
  },
};
