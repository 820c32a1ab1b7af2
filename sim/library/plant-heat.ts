/** Heat capacity of dry plant matter near 60 °C. */
import { sourced } from './provenance.ts';

const tables = 'tables of thermal properties of farm products; dry matter 1300 to 1700 J/kgK';
export const leafHeatCapacity = sourced(1500, 'memory', tables, 'dry leaf and stem');
export const seedHeatCapacity = sourced(1600, 'memory', tables, 'oil-bearing seed and bud');
export const woodHeatCapacity = sourced(
  1390,
  'memory',
  'wood handbook relation 103.1 + 3.867 T, J/kgK with T in K, at 333 K',
);
