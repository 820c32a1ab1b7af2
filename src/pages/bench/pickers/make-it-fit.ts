/**
 * What must change along with a picked vessel, tube or plant so that the whole still fits together: a smaller pot
 * takes less water and plant, a thicker tube a wider pitch. Each change is told.
 */
import {
  isCoil,
  bedRoom,
  bundleWidth,
  formatQuantity,
  narrowestJacket,
  waterRoom,
  type Scenario,
  type UnitSystem,
} from '../../../../sim/index.ts';
import { withValueAtPath } from '../../../state/field-path.ts';
import { changeMany } from '../../../state/edit.ts';

export type Values = Readonly<Record<string, unknown>>;

export interface Fitted {
  readonly values: Values;
  /** What was changed besides, in words; empty when nothing had to be. */
  readonly notes: readonly string[];
}

/** Filled to the brim is not a filling; this much of what fits is taken. */
const ROOM_USED = 0.9;
const WATER_KG_M3 = 1000;
/** Clear height of a coil turn and width of a jacket, in outside diameters of the tube. */
const PITCH_OF_TUBE = 1.5;
const COIL_OF_TUBE = 12;
const JACKET_OF_TUBE = 1.5;

const rounded = (value: number): number => Number(value.toPrecision(2));
const roundedDown = (value: number): number => {
  const step = 10 ** (Math.floor(Math.log10(value)) - 1);
  return Number((Math.floor(value / step) * step).toPrecision(6));
};

interface Adjustment {
  readonly path: string;
  readonly value: number;
  readonly says: string;
}

/** Filling, grid and charge that fit a pot, where the present ones don't. */
function fillingFor(scenario: Scenario, units: UnitSystem): readonly Adjustment[] {
  const { pot, boiler, charge } = scenario;
  const water = (kg: number): Adjustment => ({
    path: 'pot.water_kg',
    value: kg,
    says: `the water to ${formatQuantity(kg, 'kg', units, { hint: 'water' })}`,
  });
  const plant = (kg: number): Adjustment => ({
    path: 'charge.mass_kg',
    value: kg,
    says: `the charge to ${formatQuantity(kg, 'kg', units)}`,
  });
  if (pot.layout === 'water') {
    const room = waterRoom(scenario) * WATER_KG_M3 * ROOM_USED;
    const present = pot.water_kg + charge.mass_kg;
    if (present <= room) return [];
    return [water(roundedDown((pot.water_kg * room) / present)), plant(roundedDown((charge.mass_kg * room) / present))];
  }
  const found: Adjustment[] = [];
  const onGrid = pot.layout === 'water-and-steam';
  const grid = onGrid ? Math.min(pot.gridHeight_m, rounded(pot.height_m / 3)) : 0;
  if (onGrid && grid < pot.gridHeight_m)
    found.push({
      path: 'pot.gridHeight_m',
      value: grid,
      says: `the grid to ${formatQuantity(grid, 'm', units, { hint: 'size' })}`,
    });
  const lowered = { ...pot, gridHeight_m: grid };
  const mostWater = waterRoom({ pot: lowered, boiler }) * WATER_KG_M3 * ROOM_USED;
  if (pot.water_kg > mostWater) found.push(water(roundedDown(mostWater)));
  const mostPlant = bedRoom(lowered) * charge.bulkDensity_kg_m3 * ROOM_USED;
  if (charge.mass_kg > mostPlant) found.push(plant(roundedDown(mostPlant)));
  return found;
}

/** Coil and jacket that take a tube, where the present ones don't. */
function spacingFor({ condenser }: Scenario, units: UnitSystem): readonly Adjustment[] {
  const outside = condenser.outsideDiameter_m;
  const words = (value: number) => formatQuantity(value, 'm', units, { hint: 'size' });
  const found: Adjustment[] = [];
  if (isCoil(condenser)) {
    const pitch = rounded(outside * PITCH_OF_TUBE);
    const coil = rounded(outside * COIL_OF_TUBE);
    if (condenser.coilPitch_m < outside)
      found.push({ path: 'condenser.coilPitch_m', value: pitch, says: `the coil pitch to ${words(pitch)}` });
    if (condenser.coilDiameter_m < 2 * outside)
      found.push({ path: 'condenser.coilDiameter_m', value: coil, says: `the coil diameter to ${words(coil)}` });
    return found;
  }
  const jacket = rounded(bundleWidth(condenser) * JACKET_OF_TUBE);
  if (condenser.jacketDiameter_m < narrowestJacket(condenser))
    found.push({ path: 'condenser.jacketDiameter_m', value: jacket, says: `the jacket bore to ${words(jacket)}` });
  return found;
}

/** The picked values with whatever else must change; as picked when they fit, or when nothing here would help. */
export function madeToFit(scenario: Scenario, values: Values, units: UnitSystem): Fitted {
  const asPicked: Fitted = { values, notes: [] };
  if (changeMany(scenario, values).ok) return asPicked;
  const picked = Object.entries(values).reduce((whole, [path, value]) => withValueAtPath(whole, path, value), scenario);
  const adjustments = [...fillingFor(picked, units), ...spacingFor(picked, units)];
  const fitted = { ...values, ...Object.fromEntries(adjustments.map(({ path, value }) => [path, value])) };
  return changeMany(scenario, fitted).ok ? { values: fitted, notes: adjustments.map(({ says }) => says) } : asPicked;
}
