/** Where the energy has gone up to a moment, as a flow that balances at every fork. */
import { positionAt, valueAt, type ColumnName, type RunRecord } from '../../../sim/index.ts';

export type EnergyPlace =
  'fuel' | 'missed' | 'still' | 'losses' | 'condenser' | 'products' | 'escape' | 'stored' | 'drawn' | 'open';

export interface EnergyFlow {
  readonly from: EnergyPlace;
  readonly to: EnergyPlace;
  readonly energy_J: number;
}

export interface EnergyLedger {
  readonly flows: readonly EnergyFlow[];
  /** Energy the source took. */
  readonly fuel_J: number;
  /** What the columns leave unexplained: zero but for rounding. */
  readonly residual_J: number;
}

/** Columns into which the heat that reached the still is divided. */
const SHARES: readonly (readonly [EnergyPlace, ColumnName])[] = [
  ['condenser', 'dutyEnergy_J'],
  ['losses', 'lossEnergy_J'],
  ['products', 'productEnergy_J'],
  ['escape', 'escapeEnergy_J'],
  ['stored', 'storedEnergy_J'],
];

/** A residual below this part of the fuel is rounding and is not drawn. */
const ROUNDING = 1e-6;

/**
 * The ledger at a time. A share below zero runs the other way (a pot filled hot gives up stored heat): it enters the
 * still, so that every width is positive and each fork still balances.
 */
export function energyLedger(record: RunRecord, time_s: number): EnergyLedger {
  const position = positionAt(record, time_s);
  const at = (name: ColumnName): number => valueAt(record.columns[name], position);

  const fuel_J = at('fuelEnergy_J');
  const missed = at('sourceLossEnergy_J');
  const intoStill = fuel_J - missed;
  const flows: EnergyFlow[] = [];
  const add = (from: EnergyPlace, to: EnergyPlace, energy_J: number): void => {
    if (energy_J > 0) flows.push({ from, to, energy_J });
  };

  add('fuel', 'still', intoStill);
  add('fuel', 'missed', missed);
  let explained = 0;
  for (const [place, column] of SHARES) {
    const energy_J = at(column);
    explained += energy_J;
    if (energy_J >= 0) add('still', place, energy_J);
    else add(place === 'stored' ? 'drawn' : place, 'still', -energy_J);
  }
  const residual_J = intoStill - explained;
  if (Math.abs(residual_J) > ROUNDING * Math.max(Math.abs(fuel_J), 1)) {
    if (residual_J > 0) add('still', 'open', residual_J);
    else add('open', 'still', -residual_J);
  }
  return { flows, fuel_J, residual_J };
}
