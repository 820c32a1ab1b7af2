/**
 * Balances of a whole run: what was there, what came in, what went out, what is left. They are measured and shown,
 * never used to correct anything.
 */
import type { Still } from '../still/still.ts';
import { ICE_MELTING } from '../still/tub.ts';
import { sum } from './recorder.ts';
import type { Balance, Closure } from './result.ts';

interface Stock {
  readonly water: number;
  readonly energy: number;
  readonly oil: readonly number[];
}

/** What the still and its cooling water hold now. */
const stockOf = (still: Still): Stock => ({
  water: still.storedWater() + still.coolant.mass() + still.separator.holdUp,
  energy: still.storedEnergy() + still.coolant.enthalpy() + still.separator.enthalpy,
  oil: still.oil.ids.map((_, i) => still.storedOil(i)),
});

const close = (start: number, inflow: number, out: number, end: number): Closure => {
  const residual = start + inflow - out - end;
  const throughput = Math.max(Math.abs(start) + Math.abs(inflow), Number.MIN_VALUE);
  return { start, in: inflow, out, end, residual, throughput, relative: Math.abs(residual) / throughput };
};

export class BalanceSheet {
  private readonly start: Stock;

  private readonly still: Still;

  constructor(still: Still) {
    this.still = still;
    this.start = stockOf(still);
  }

  close(): Balance {
    const { still, start } = this;
    const { coolant, separator, pot, bed, release, oil } = still;
    const end = stockOf(still);
    const consumed = pot.waterConsumed + (bed?.waterConsumed ?? 0);
    const consumedHeat = pot.consumedEnthalpy + (bed?.consumedEnthalpy ?? 0);
    const ice = coolant.iceAdded;
    const water = close(
      start.water,
      coolant.used + ice,
      coolant.overflow + coolant.evaporated + still.keptWater + still.escapedWater + still.wasteWater + consumed,
      end.water,
    );
    const energy = close(
      start.energy,
      still.fuelEnergy + coolant.enthalpyIn - ice * ICE_MELTING,
      still.missedEnergy +
        still.lossEnergy +
        coolant.lossEnergy +
        coolant.overflowEnthalpy +
        coolant.evaporatedEnthalpy +
        separator.lossEnergy +
        separator.productEnthalpy +
        still.escapeEnergy +
        still.wasteEnthalpy +
        consumedHeat,
      end.energy,
    );
    const constituents = Object.fromEntries(
      oil.ids.map((id, i) => {
        const formed = i === oil.alcohol ? release.alcoholFormed : 0;
        const hydrolysed = i === oil.ester ? release.hydrolysed : 0;
        const out =
          (separator.collected[i] as number) +
          (separator.dissolved[i] as number) +
          (separator.haze[i] as number) +
          (still.escapedOil[i] as number) +
          hydrolysed;
        return [id, close(start.oil[i] as number, formed, out, end.oil[i] as number)];
      }),
    );
    return { water_kg: water, energy_J: energy, constituents_kg: constituents };
  }

  /** Oil in the charge at the start, kg. */
  oilAtStart(): number {
    return sum(Float64Array.from(this.start.oil));
  }
}
