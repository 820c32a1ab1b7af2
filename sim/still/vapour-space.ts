/**
 * The vapour in the free space of still and condenser. The first vapour fills it and pushes the air out ahead; from then
 * on what passes mixes with what is there.
 *
 * State: water [kg], oil [kg by constituent], enthalpy [J]. Equation: one stirred space that holds as many moles as it
 * would of saturated steam at the pressure of the air; as many leave as enter, at the mixed composition, so that rich first
 * vapour is flushed out in a minute or so. Counted in moles, because vapour rich in oil is cooler and holds less water,
 * yet takes no less room.
 * Assumption: temperature and pressure move the contents by a percent or two, which is left out.
 */
import { WATER_MOLAR_MASS } from '../constants.ts';
import { tableSaturationTemperature, tableVapourDensity } from '../fluids/water-table.ts';
import type { VapourStream } from './stream.ts';

export class VapourSpace {
  water = 0;
  enthalpy = 0;
  readonly oil: Float64Array;
  /** What it holds, mol. */
  private readonly capacity: number;
  /** kg/mol by constituent. */
  private readonly molarMass: Float64Array;

  constructor(volume: number, airPressure: number, molarMass: Float64Array) {
    this.capacity = (volume * tableVapourDensity(tableSaturationTemperature(airPressure))) / WATER_MOLAR_MASS;
    this.molarMass = molarMass;
    this.oil = new Float64Array(molarMass.length);
  }

  /** Vapour passes: `stream` is changed in place to what leaves. */
  pass(stream: VapourStream): void {
    if (!(stream.water > 0)) return;
    const total = this.water + stream.water;
    let moles = total / WATER_MOLAR_MASS;
    for (let i = 0; i < this.oil.length; i++)
      moles += ((this.oil[i] as number) + (stream.oil[i] as number)) / (this.molarMass[i] as number);
    const leaving = Math.max(0, moles - this.capacity) / moles;
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
