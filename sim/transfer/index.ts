import type { Correlation } from '../correlation.ts';
import { annulusCorrelations } from './annulus.ts';
import { boilingCorrelations } from './boiling.ts';
import { coilFlowCrossChecks } from './coil-flow-alternatives.ts';
import { coilFlowCorrelations } from './coil-flow.ts';
import { condensationCrossChecks } from './condensation-alternatives.ts';
import { conductionCorrelations } from './conduction.ts';
import { crossFlowCorrelations } from './cross-flow.ts';
import { decanterCorrelations } from './decanter.ts';
import { dropSizeCorrelations } from './drop-sizes.ts';
import { errorFunctionCorrelations } from '../maths/error-function.ts';
import { evaporationCorrelations } from './evaporation.ts';
import { exchangerCorrelations } from './exchanger.ts';
import { surfaceCondensationCorrelations } from './film-condensation-on-surfaces.ts';
import { filmCondensationCorrelations } from './film-condensation.ts';
import { naturalConvectionCrossChecks } from './natural-convection-alternatives.ts';
import { naturalConvectionCorrelations } from './natural-convection.ts';
import { packedBedCorrelations } from './packed-bed.ts';
import { pressureDropCorrelations } from './pressure-drop.ts';
import { radiationCorrelations } from './radiation.ts';
import { rivuletAtConditionsCorrelations } from './rivulet-at-conditions.ts';
import { rivuletCorrelations } from './rivulet.ts';
import { settlingCorrelations } from './settling.ts';
import { subcoolingCorrelations } from './subcooling.ts';
import { tubeFlowCrossChecks } from './tube-flow-alternatives.ts';
import { tubeFlowCorrelations } from './tube-flow.ts';
import { tubInletCorrelations } from './tub-inlets.ts';
import { twoPhaseCrossChecks } from './two-phase-alternatives.ts';
import { ventingCorrelations } from './venting.ts';
import { withWaterCorrelations } from './with-water.ts';

/** Every published relation of heat, flow and settling, for the desk reference and the shown working. */
export const transferCorrelations: readonly Correlation[] = [
  ...filmCondensationCorrelations,
  ...surfaceCondensationCorrelations,
  ...condensationCrossChecks,
  ...naturalConvectionCorrelations,
  ...naturalConvectionCrossChecks,
  ...crossFlowCorrelations,
  ...tubeFlowCorrelations,
  ...tubeFlowCrossChecks,
  ...annulusCorrelations,
  ...coilFlowCorrelations,
  ...coilFlowCrossChecks,
  ...pressureDropCorrelations,
  ...twoPhaseCrossChecks,
  ...packedBedCorrelations,
  ...exchangerCorrelations,
  ...conductionCorrelations,
  ...subcoolingCorrelations,
  ...rivuletCorrelations,
  ...rivuletAtConditionsCorrelations,
  ...tubInletCorrelations,
  ...radiationCorrelations,
  ...evaporationCorrelations,
  ...boilingCorrelations,
  ...ventingCorrelations,
  ...settlingCorrelations,
  ...dropSizeCorrelations,
  ...errorFunctionCorrelations,
  ...decanterCorrelations,
  ...withWaterCorrelations,
];
