/**
 * The oil of one charge: its constituents with everything the still needs, tabulated once so that the step loop
 * only interpolates.
 *
 * Assumptions: Raoult's law within the oil, oil and water immiscible, one heat capacity for the whole oil and one
 * latent heat per constituent (at 100 °C), so that stored and flowing oil share one enthalpy function.
 */
import { WATER_MOLAR_MASS } from '../constants.ts';
import {
  CONSTITUENT_GROUPS,
  constituentById,
  heatCapacity,
  latentHeat,
  liquidDensity,
  solubilityFactor,
  vapourPressure,
  waterSolubility,
  type Constituent,
} from '../fluids/constituents.ts';
import { canFreeze, dissolvedFraction, type Freezing } from '../fluids/freezing.ts';
import { oilViscosity } from '../fluids/immiscible.ts';
import { tableLiquidDensity, tableSaturationPressure } from '../fluids/water-table.ts';
import { lerp } from '../maths/interpolate.ts';

const TABLE_START = 273.15;
const TABLE_STEP = 0.5;
const TABLE_POINTS = 261;
const BOILING = 373.15;

export class Oil {
  readonly count: number;
  readonly ids: readonly string[];
  /** kg/mol. */
  readonly molarMass: Float64Array;
  /** Index of each constituent's group in `CONSTITUENT_GROUPS`. */
  readonly group: Uint8Array;
  /** J/kg at 100 °C. */
  readonly latent: Float64Array;
  /** J/kgK of the whole oil, mean of 25 and 90 °C. */
  readonly heatCapacity: number;
  /** Position of linalyl acetate and of linalool, −1 when absent. */
  readonly ester: number;
  readonly alcohol: number;
  private readonly rows: readonly Constituent[];
  /** Those that may crystallise, with their positions. */
  readonly freezing: readonly { readonly at: number; readonly row: Freezing }[];
  solidShare = 0;
  private readonly partialRatio: Float64Array;
  private readonly solubility: Float64Array;
  private readonly density: Float64Array;

  constructor(composition: readonly { readonly constituent: string; readonly share: number }[]) {
    const entries = [...composition];
    if (
      entries.some((entry) => entry.constituent === 'linalyl_acetate') &&
      !entries.some((entry) => entry.constituent === 'linalool')
    )
      entries.push({ constituent: 'linalool', share: 0 });
    this.rows = entries.map((entry) => constituentById(entry.constituent));
    this.freezing = this.rows.flatMap((row, at) => (canFreeze(row) ? [{ at, row }] : []));
    this.count = this.rows.length;
    this.ids = this.rows.map((row) => row.id);
    this.molarMass = Float64Array.from(this.rows, (row) => row.molarMass.value);
    this.group = Uint8Array.from(this.rows, (row) => CONSTITUENT_GROUPS.indexOf(row.group));
    this.latent = Float64Array.from(this.rows, (row) => latentHeat(row, BOILING));
    this.heatCapacity = entries.reduce((sum, entry, i) => {
      const row = this.rows[i] as Constituent;
      return sum + entry.share * 0.5 * (heatCapacity(row, 298.15) + heatCapacity(row, 363.15));
    }, 0);
    this.ester = this.ids.indexOf('linalyl_acetate');
    this.alcohol = this.ids.indexOf('linalool');
    this.partialRatio = this.tabulate((row, T) => vapourPressure(row, T) / tableSaturationPressure(T));
    this.solubility = this.tabulate(
      (row, T) => (waterSolubility(row, 298.15) * solubilityFactor(T)) / tableLiquidDensity(T),
    );
    this.density = this.tabulate(liquidDensity);
  }

  private tabulate(value: (row: Constituent, T: number) => number): Float64Array {
    const table = new Float64Array(this.count * TABLE_POINTS);
    this.rows.forEach((row, i) => {
      for (let k = 0; k < TABLE_POINTS; k++) table[k * this.count + i] = value(row, TABLE_START + k * TABLE_STEP);
    });
    return table;
  }

  private lookUp(table: Float64Array, i: number, T: number): number {
    const position = (T - TABLE_START) / TABLE_STEP;
    const k = Math.min(TABLE_POINTS - 2, Math.max(0, Math.floor(position)));
    const at = k * this.count + i;
    return lerp(table[at] as number, table[at + this.count] as number, position - k);
  }

  /** Vapour pressure of constituent i over that of water at T, pure number. */
  pressureRatio(i: number, T: number): number {
    return this.lookUp(this.partialRatio, i, T);
  }

  /** Writes `pressureRatio` of every constituent at T. */
  pressureRatios(T: number, out: Float64Array): void {
    const table = this.partialRatio;
    const position = (T - TABLE_START) / TABLE_STEP;
    const k = Math.min(TABLE_POINTS - 2, Math.max(0, Math.floor(position)));
    const share = position - k;
    const at = k * this.count;
    for (let i = 0; i < this.count; i++)
      out[i] = lerp(table[at + i] as number, table[at + this.count + i] as number, share);
  }

  /** Kilograms of constituent i that a kilogram of water takes from the pure constituent at T. */
  solubilityRatio(i: number, T: number): number {
    return this.lookUp(this.solubility, i, T);
  }

  /** Density of a mixture (kg by constituent) at T by ideal mixing, kg/m³; NaN when there is no oil. */
  mixtureDensity(mass: Float64Array, T: number): number {
    let total = 0;
    let volume = 0;
    for (let i = 0; i < this.count; i++) {
      const m = mass[i] as number;
      total += m;
      volume += m / this.lookUp(this.density, i, T);
    }
    return total / volume;
  }

  /** Viscosity of a mixture (mass fractions) at T, Pa s; allocates, so not for the step loop. */
  viscosity(massFractions: readonly number[], T: number): number {
    return oilViscosity(T, massFractions, this.rows);
  }

  /** Moles of oil per mole of water in a vapour, pure number. */
  molarRatio(oil: Float64Array, water: number): number {
    if (!(water > 0)) return 0;
    let moles = 0;
    for (let i = 0; i < this.count; i++) moles += (oil[i] as number) / (this.molarMass[i] as number);
    return (moles * WATER_MOLAR_MASS) / water;
  }

  /** How near a vapour is to being saturated with oil at T (Raoult, immiscible): 1 at saturation, 0 without oil. */
  saturation(oil: Float64Array, water: number, T: number): number {
    let sum = 0;
    for (let i = 0; i < this.count; i++) {
      const mass = oil[i] as number;
      if (mass > 0) sum += mass / ((this.molarMass[i] as number) * this.pressureRatio(i, T));
    }
    return (sum * WATER_MOLAR_MASS) / water;
  }

  /** Latent heat carried by oil vapour (kg by constituent), J. */
  latentOf(oil: Float64Array): number {
    let sum = 0;
    for (let i = 0; i < this.count; i++) sum += (oil[i] as number) * (this.latent[i] as number);
    return sum;
  }

  /** Mole fraction of constituent i in an oil (kg by constituent). */
  moleFraction(i: number, oil: Float64Array): number {
    let moles = 0;
    for (let k = 0; k < this.count; k++) moles += (oil[k] as number) / (this.molarMass[k] as number);
    return (oil[i] as number) / (this.molarMass[i] as number) / moles;
  }

  /**
   * Position among `freezing` of the constituent of which most is crystals at T, in an oil (kg by constituent) that comes
   * with water; −1 where the water would dissolve what there is. `solidShare` then tells the share of the moles.
   */
  mostFrozen(oil: Float64Array, water: number, T: number): number {
    let found = -1;
    this.solidShare = 0;
    for (let k = 0; k < this.freezing.length; k++) {
      const { at, row } = this.freezing[k] as (typeof this.freezing)[number];
      if ((oil[at] as number) <= water * this.solubilityRatio(at, T)) continue;
      const dissolved = dissolvedFraction(row, T);
      const solid = (this.moleFraction(at, oil) - dissolved) / (1 - dissolved);
      if (!(solid > this.solidShare)) continue;
      this.solidShare = solid;
      found = k;
    }
    return found;
  }
}
