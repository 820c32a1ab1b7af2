/**
 * The vapour that fills the free space of still and condenser before anything reaches the coil. It enters once, ahead
 * of it the air is pushed out, and it stays until the end.
 */
import { tableVapourDensity } from '../fluids/water-table.ts';
import type { VapourStream } from './stream.ts';

export class VapourHold {
  water = 0;
  enthalpy = 0;
  readonly oil: Float64Array;

  private readonly volume: number;

  constructor(volume: number, constituents: number) {
    this.volume = volume;
    this.oil = new Float64Array(constituents);
  }

  /** Takes from the passing vapour what the space still lacks. */
  fill(stream: VapourStream): void {
    if (!(stream.water > 0)) return;
    const lacking = this.volume * tableVapourDensity(stream.temperature) - this.water;
    if (lacking <= 0) return;
    const share = Math.min(1, lacking / stream.water);
    this.water += share * stream.water;
    this.enthalpy += share * stream.enthalpy;
    stream.water -= share * stream.water;
    stream.enthalpy -= share * stream.enthalpy;
    for (let i = 0; i < this.oil.length; i++) {
      const taken = share * (stream.oil[i] as number);
      this.oil[i] = (this.oil[i] as number) + taken;
      stream.oil[i] = (stream.oil[i] as number) - taken;
    }
  }
}
