/** Entries of the desk reference for all fluid properties, by topic. */
import type { Correlation, Topic } from '../correlation.ts';
import { airCorrelations } from './air.ts';
import { atmosphereCorrelations } from './atmosphere.ts';
import { region1Correlations } from './if97-region1.ts';
import { region2Correlations } from './if97-region2.ts';
import { region4Correlations } from './if97-region4.ts';
import { constituentCorrelations, immiscibleCorrelations } from './oil-entries.ts';
import { transportCorrelations } from './transport.ts';
import { waterCorrelations } from './water.ts';

export const fluidTopics: readonly Topic[] = [
  {
    title: 'Water and steam',
    entries: [
      ...region4Correlations,
      ...waterCorrelations,
      ...region1Correlations,
      ...region2Correlations,
      ...transportCorrelations,
    ],
  },
  { title: 'Air and altitude', entries: [...airCorrelations, ...atmosphereCorrelations] },
  { title: 'Oil constituents', entries: constituentCorrelations },
  { title: 'Oil boiling with water', entries: immiscibleCorrelations },
];

export const fluidCorrelations: readonly Correlation[] = fluidTopics.flatMap(({ entries }) => entries);
