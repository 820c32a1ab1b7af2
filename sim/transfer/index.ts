import type { Correlation, Topic } from '../correlation.ts';
import { errorFunctionCorrelations } from '../maths/error-function.ts';
import { afterTheStillCorrelations } from './after-the-still.ts';
import { annulusCorrelations } from './annulus.ts';
import { boilingCorrelations } from './boiling.ts';
import { coilFlowAlternatives } from './coil-flow-alternatives.ts';
import { coilFlowCorrelations } from './coil-flow.ts';
import { condensationAlternatives } from './condensation-alternatives.ts';
import { condenserAtConditions } from './condenser-at-conditions.ts';
import { conductionCorrelations } from './conduction.ts';
import { crossFlowCorrelations } from './cross-flow.ts';
import { decanterCorrelations } from './decanter.ts';
import { dropSizeCorrelations } from './drop-sizes.ts';
import { evaporationCorrelations } from './evaporation.ts';
import { exchangerCorrelations } from './exchanger.ts';
import { fallingFilmCorrelations } from './falling-film.ts';
import { surfaceCondensationCorrelations } from './film-condensation-on-surfaces.ts';
import { filmCondensationCorrelations } from './film-condensation.ts';
import { lossAtConditions } from './loss-at-conditions.ts';
import { naturalConvectionAlternatives } from './natural-convection-alternatives.ts';
import { naturalConvectionCorrelations } from './natural-convection.ts';
import { packedBedCorrelations } from './packed-bed.ts';
import { potAtConditions } from './pot-at-conditions.ts';
import { pressureDropCorrelations } from './pressure-drop.ts';
import { radiationCorrelations } from './radiation.ts';
import { rivuletAtConditionsCorrelations } from './rivulet-at-conditions.ts';
import { rivuletCorrelations } from './rivulet.ts';
import { settlingCorrelations } from './settling.ts';
import { steamInTubeAtConditions } from './steam-in-tube-at-conditions.ts';
import { tubInletCorrelations } from './tub-inlets.ts';
import { tubeFlowAlternatives } from './tube-flow-alternatives.ts';
import { tubeFlowCorrelations } from './tube-flow.ts';
import { twoPhaseAlternatives } from './two-phase-alternatives.ts';
import { vapourInAirAlternatives } from './vapour-in-air-alternatives.ts';
import { vapourInAirCorrelations } from './vapour-in-air.ts';
import { ventingCorrelations } from './venting.ts';

/** Every published relation of heat, flow and settling, by topic. */
export const transferTopics: readonly Topic[] = [
  {
    title: 'Steam condensing',
    entries: [
      ...steamInTubeAtConditions,
      ...filmCondensationCorrelations,
      ...surfaceCondensationCorrelations,
      ...condensationAlternatives,
    ],
  },
  {
    title: 'The whole condenser',
    entries: [...condenserAtConditions, ...conductionCorrelations, ...exchangerCorrelations],
  },
  {
    title: 'Condensate cooling in the tube',
    entries: [...rivuletAtConditionsCorrelations, ...rivuletCorrelations, ...fallingFilmCorrelations],
  },
  {
    title: 'Water and air beside a warm wall',
    entries: [
      ...naturalConvectionCorrelations,
      ...crossFlowCorrelations,
      ...naturalConvectionAlternatives,
      ...radiationCorrelations,
      ...tubInletCorrelations,
    ],
  },
  {
    title: 'Flow in tubes, jackets and coils',
    entries: [
      ...tubeFlowCorrelations,
      ...annulusCorrelations,
      ...coilFlowCorrelations,
      ...tubeFlowAlternatives,
      ...coilFlowAlternatives,
    ],
  },
  { title: 'Pressure lost to friction', entries: [...pressureDropCorrelations, ...twoPhaseAlternatives] },
  { title: 'Pot and bed', entries: [...potAtConditions, ...boilingCorrelations, ...packedBedCorrelations] },
  { title: 'Losses to the air', entries: [...lossAtConditions, ...evaporationCorrelations] },
  { title: 'Vents and lids', entries: ventingCorrelations },
  {
    title: 'Oil and water separating',
    entries: [...settlingCorrelations, ...dropSizeCorrelations, ...decanterCorrelations, ...errorFunctionCorrelations],
  },
  { title: 'Oil leaving a film into the air', entries: [...vapourInAirCorrelations, ...vapourInAirAlternatives] },
  { title: 'After the still', entries: afterTheStillCorrelations },
];

export const transferCorrelations: readonly Correlation[] = transferTopics.flatMap(({ entries }) => entries);
