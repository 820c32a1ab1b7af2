/**
 * A stretch of wall that vapour passes: the lid and upper side of the pot, or the swan neck. It warms by condensing
 * steam until it reaches the dew point, then condenses just what its heat loss asks for.
 *
 * State: wall temperature [K]. Assumptions: the wall has one temperature; only water condenses until the vapour left is
 * saturated with oil, from then on both in the proportion in which they are there.
 */
import {
  tableLatentHeat,
  tableLiquidEnthalpy,
  tableSaturationTemperature,
  tableVapourEnthalpy,
} from '../fluids/water-table.ts';
import type { Oil } from './oil.ts';
import { ENTHALPY_ZERO, type LiquidStream, type VapourStream } from './stream.ts';
import type { LossTable } from './surface-loss.ts';

export class WallCell {
  temperature: number;
  /** Heat lost to the air in the last step, J. */
  loss = 0;

  private readonly capacity: number;
  private readonly lossTable: LossTable;
  private readonly mixture: Oil;

  constructor(capacity: number, lossTable: LossTable, mixture: Oil, startTemperature: number) {
    this.capacity = capacity;
    this.lossTable = lossTable;
    this.mixture = mixture;
    this.temperature = startTemperature;
  }

  /** Heat stored above the enthalpy zero, J. */
  heat(): number {
    return this.capacity * (this.temperature - ENTHALPY_ZERO);
  }

  /** Vapour passes: `vapour` is changed in place, `condensate` written. */
  step(vapour: VapourStream, pressure: number, condensate: LiquidStream, dt: number): void {
    condensate.clear();
    if (!(vapour.water > 0)) {
      this.loss = this.lossTable.inStep(this.temperature, dt, this.capacity);
      this.temperature -= this.loss / this.capacity;
      return;
    }
    this.loss = this.lossTable.at(this.temperature) * dt;
    const { mixture } = this;
    const dew = tableSaturationTemperature(pressure / (1 + mixture.molarRatio(vapour.oil, vapour.water)));
    const oilMass = vapour.oilTotal();
    const oilHeat = oilMass * mixture.heatCapacity * (dew - ENTHALPY_ZERO);
    const asLiquid = vapour.water * tableLiquidEnthalpy(dew) + oilHeat;
    const wanted = this.capacity * (dew - this.temperature) + this.loss;
    if (wanted >= vapour.enthalpy - asLiquid) {
      condensate.water = vapour.water;
      condensate.oil.set(vapour.oil);
      condensate.enthalpy = asLiquid;
      this.temperature += (vapour.enthalpy - asLiquid - this.loss) / this.capacity;
      vapour.clear();
      vapour.temperature = dew;
      return;
    }
    const superheat =
      vapour.enthalpy - vapour.water * tableVapourEnthalpy(dew) - oilHeat - mixture.latentOf(vapour.oil);
    this.condense(vapour, dew, Math.max(0, wanted - superheat), condensate);
    vapour.enthalpy -= wanted + condensate.enthalpy;
    vapour.temperature = dew;
    this.temperature = dew;
  }

  /** Takes a latent heat out of the vapour, J: water alone down to saturation with oil, then both. */
  private condense(vapour: VapourStream, dew: number, heat: number, condensate: LiquidStream): void {
    const { mixture } = this;
    const h_fg = tableLatentHeat(dew);
    const saturation = Math.min(1, mixture.saturation(vapour.oil, vapour.water, dew));
    const alone = Math.min(heat / h_fg, vapour.water * (1 - saturation));
    const left = vapour.water - alone;
    const together = heat - alone * h_fg;
    const share = together > 0 ? Math.min(1, together / (left * h_fg + mixture.latentOf(vapour.oil))) : 0;
    condensate.water = alone + share * left;
    let oilMass = 0;
    for (let i = 0; i < mixture.count; i++) {
      const taken = share * (vapour.oil[i] as number);
      condensate.oil[i] = taken;
      vapour.oil[i] = (vapour.oil[i] as number) - taken;
      oilMass += taken;
    }
    condensate.enthalpy =
      condensate.water * tableLiquidEnthalpy(dew) + oilMass * mixture.heatCapacity * (dew - ENTHALPY_ZERO);
    vapour.water -= condensate.water;
  }
}
