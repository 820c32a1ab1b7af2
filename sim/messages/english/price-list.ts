/** Prices of tubes in English. */
import { DEFAULT_METAL_PRICES } from '../../answers/shopping/prices.ts';
import type { PriceProblem } from '../price-list-file.ts';
import { findMaterial } from '../../library/index.ts';
import type { Quantities } from '../quantities.ts';

export const priceList = (q: Quantities) => ({
  problem(problem: PriceProblem): string {
    const where = `Line ${problem.line}`;
    switch (problem.kind) {
      case 'no-headings':
        return `${where}: the headings lack ${problem.missing.join(', ')}. They are tube, price, sold by, length (m).`;
      case 'unknown-tube':
        return `${where}: “${problem.id}” is neither a tube nor a material of the library.`;
      case 'bad-price':
        return `${where}: “${problem.cell}” is not a price above 0.`;
      case 'bad-length':
        return `${where}: a tube sold by the piece needs its length in metres, not “${problem.cell}”.`;
      case 'bad-unit':
        return `${where}: “${problem.cell}” is not how this is sold. Tubes are sold by metre or piece, metals by kg.`;
    }
  },
  /** What holds where the reader gave no price. */
  defaults: `Where you gave no price, a default price by weight of metal counts: ${Object.entries(DEFAULT_METAL_PRICES)
    .map(([id, price]) => `${findMaterial(id).name} ${q.stored(price, '1/kg')}`)
    .join(', ')}. These are invented round figures. Ask your shop.`,
});
