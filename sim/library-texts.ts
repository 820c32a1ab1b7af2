/** The second public face: texts of the library that no run needs, for a view to fetch when they are read. */
export { botanicalTexts } from './library/botanical-texts.ts';
export { harvests, type Garden, type Harvest } from './library/harvests.ts';
export {
  lookAlikes,
  neverDistil,
  neverDistilProvenance,
  SEVERITIES,
  type LookAlike,
  type NeverDistil,
  type Severity,
} from './library/look-alikes.ts';
export { whoAvoids, whoAvoidsProvenance, type Use } from './library/use-limits.ts';
