/** Every property and relation of the model, by name and by topic. */
import type { Correlation, Topic } from '../correlation.ts';
import { fluidTopics } from '../fluids/index.ts';
import { coilGeometryCorrelations } from '../geometry/coil-entries.ts';
import { blockedOutletCorrelations } from '../still/blocked-outlet.ts';
import { transferTopics } from '../transfer/index.ts';

export const topics: readonly Topic[] = [
  ...fluidTopics,
  ...transferTopics,
  { title: 'The coil', entries: coilGeometryCorrelations },
  { title: 'A blocked outlet', entries: blockedOutletCorrelations },
];

export const correlations: readonly Correlation[] = topics.flatMap(({ entries }) => entries);

const byName = new Map(correlations.map((entry) => [entry.name, entry]));

export const findCorrelation = (name: string): Correlation | undefined => byName.get(name);
