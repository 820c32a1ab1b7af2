/** Fields of the separator. */
import * as z from 'zod/mini';
import { quantity } from './field.ts';
import { practice } from './material-fields.ts';

export const separatorSchema = z.strictObject({
  bore_m: quantity({
    unit: 'm',
    title: 'Separator bore',
    says: 'Inside diameter of the separator.',
    default: 0.08,
    min: 0.01,
    max: 1,
    source: practice,
  }),
  height_m: quantity({
    unit: 'm',
    title: 'Separator height',
    says: 'Height of the separator up to the oil spout.',
    default: 0.22,
    min: 0.03,
    max: 2,
    source: practice,
  }),
  inletDepth_m: quantity({
    unit: 'm',
    title: 'Inlet depth',
    says: 'Depth below the surface at which condensate enters.',
    default: 0.05,
    min: 0,
    max: 1,
    source: practice,
  }),
  dropMedian_m: quantity({
    unit: 'm',
    title: 'Drop size',
    says: 'Median oil drop by volume in the condensate; nobody has measured it, so vary it.',
    default: 0.00012,
    min: 0.000_005,
    max: 0.003,
    source: 'assumption: no measured distribution found',
  }),
  dropSpread: quantity({
    unit: '1',
    title: 'Drop spread',
    says: 'Geometric standard deviation of the drop sizes.',
    default: 2.2,
    min: 1.05,
    max: 4,
    source: 'assumption: no measured distribution found',
  }),
  turbulenceFactor: quantity({
    unit: '1',
    title: 'Turbulence factor',
    says: 'How much larger the separator must be than in calm flow (API 421 gives 1.28–1.74).',
    default: 1.3,
    min: 1,
    max: 3,
    source: 'API 421 range',
  }),
  interfaceMobility: quantity({
    unit: '1',
    title: 'Drop surface mobility',
    says: 'Zero: drops rise as rigid spheres (Stokes); one: as clean fluid drops (Hadamard).',
    default: 0,
    min: 0,
    max: 1,
    source: 'dirty interfaces are rigid: handbook rule',
  }),
  returnShare: quantity({
    unit: '1',
    title: 'Cohobation',
    says: 'Share of the separated water that runs back to the pot.',
    default: 0,
    min: 0,
    max: 1,
    source: practice,
  }),
});
