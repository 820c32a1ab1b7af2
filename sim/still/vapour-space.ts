/**
 * The vapour in the free space of still and condenser. The first vapour fills it and pushes the air out ahead; from then
 * on what passes mixes with what is there.
 *
 * State: water [kg], oil [kg by constituent], enthalpy [J]. Equation: one stirred space of constant volume; as much
 * leaves as enters, at the mixed composition, so that rich first vapour is flushed out in a minute or so.
 */
import { tableVapourDensity } from '../fluids/water-table.ts';
import type { VapourStream } from './stream.ts';

export class VapourSpace {
  water = 0;
  enthalpy = 0;
  readonly oil: Float64Array;
  private readonly volume: number;

  constructor(volume: number, constituents: number) {
    this.volume = volume;
    this.oil = new Float64Array(constituents);
  }

  /** Vapour passes: `stream` is changed in place to what leaves. */
  pass(stream: VapourStream): void {
    if (!(stream.water > 0)) return;
    const capacity = this.volume * tableVapourDensity(stream.temperature);
    const total = this.water + stream.water;
    const leaving = Math.max(0, total - capacity) / total;
    const heat = this.enthalpy + stream.enthalpy;
    stream.water = leaving * total;
    stream.enthalpy = leaving * heat;
    this.water = total - stream.water;
    this.enthalpy = heat - stream.enthalpy;
    for (let i = 0; i < this.oil.length; i++) {
      const all = (this.oil[i] as number) + (stream.oil[i] as number);
      const out = leaving * all;
      stream.oil[i] = out;
      this.oil[i] = all - out;
    }
  }
}
