/** What hydrosol holds. */
import { constituentById, waterSolubility } from '../fluids/constituents.ts';
import { moleFractions } from '../fluids/immiscible.ts';
import type { OilShare } from './oil.ts';

/** Oil that water dissolves when it has stood with much of it, kg/m³. */
export function dissolvedOil(composition: readonly OilShare[], T: number): number {
  const rows = composition.map(({ constituent }) => constituentById(constituent));
  const x = moleFractions(
    composition.map(({ share }) => share),
    rows,
  );
  return rows.reduce((sum, row, i) => sum + (x[i] as number) * waterSolubility(row, T), 0);
}
