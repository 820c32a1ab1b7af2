/**
 * The still in metres, as the scenario gives it. What the scenario leaves open (how high a plate is, how large the
 * jug is) follows from what it gives by rules of a workshop, stated here, so that nothing depends on the screen.
 */
import {
  isCoil,
  waterSource,
  bedBottom,
  boilingVessel,
  coilRise,
  coilTurns,
  cylinderHeight,
  heatedBaseDiameter,
  packedHeight,
  tubeCount,
  type Scenario,
} from '../../../sim/index.ts';

/** Nominal density that turns kilograms of water into litres of drawing. */
const WATER_DENSITY = 1000;

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** Depth of so much water in an upright cylinder, m. */
export const waterDepth = (water_kg: number, diameter_m: number): number =>
  cylinderHeight(water_kg / WATER_DENSITY, diameter_m);

export interface VesselSize {
  readonly diameter_m: number;
  readonly height_m: number;
  readonly wall_m: number;
  readonly insulation_m: number;
  /** Rise of the lid above the rim. */
  readonly lid_m: number;
  /** Depth of the filling at the start. */
  readonly depth_m: number;
}

export interface BedSize {
  /** Height of the grid or false floor above the inside base; zero when the charge lies in the water. */
  readonly bottom_m: number;
  readonly height_m: number;
  readonly submerged: boolean;
}

export interface HeatSize {
  readonly kind: Scenario['heat']['kind'];
  readonly width_m: number;
  /** From the floor under the source to the underside of the vessel. */
  readonly height_m: number;
}

export interface CoilSize {
  readonly kind: 'coil';
  readonly tube_m: number;
  readonly coil_m: number;
  readonly pitch_m: number;
  readonly turns: number;
  readonly height_m: number;
  readonly topDepth_m: number;
  readonly length_m: number;
}

export interface StraightSize {
  readonly kind: 'straight';
  readonly tube_m: number;
  readonly tubes: number;
  readonly jacket_m: number;
  readonly length_m: number;
  readonly upright: boolean;
  readonly slope_rad: number;
  readonly counterflow: boolean;
}

export interface TubSize {
  readonly diameter_m: number;
  /** Water height up to the overflow. */
  readonly height_m: number;
  readonly freeboard_m: number;
}

export interface SeparatorSize {
  readonly bore_m: number;
  readonly height_m: number;
  readonly inletDepth_m: number;
  readonly funnel_m: number;
}

export interface TrueSizes {
  readonly layout: Scenario['pot']['layout'];
  readonly heat: HeatSize;
  readonly pot: VesselSize;
  readonly boiler: VesselSize | null;
  readonly bed: BedSize;
  readonly neck: {
    readonly bore_m: number;
    readonly rising_m: number;
    readonly falling_m: number;
    readonly insulation_m: number;
  };
  readonly condenser: CoilSize | StraightSize;
  /** Tub of a coil or barrel of a jacket; null for a jacket on the tap. */
  readonly tub: TubSize | null;
  /** Whether cooling water is ever let in or pumped. */
  readonly flowing: boolean;
  readonly stirred: boolean;
  /** Where the water comes into the tub of a coil; null without a tub or water. */
  readonly inlet: Scenario['cooling']['inlet'] | null;
  readonly separator: SeparatorSize;
  readonly jug: { readonly diameter_m: number; readonly height_m: number; readonly capacity_m3: number };
  readonly returns: boolean;
  /** Where the bed of a steam-fed pot drains to. */
  readonly bedDrain: Scenario['boiler']['drain'] | null;
}

/** Height of a source under its vessel as a share of what it heats, with the least and greatest met in sheds. */
const SOURCE_HEIGHT: Readonly<Record<Scenario['heat']['kind'], readonly [share: number, low: number, high: number]>> = {
  'electric-plate': [0.2, 0.03, 0.09],
  'immersion-element': [0.08, 0.012, 0.05],
  induction: [0.16, 0.025, 0.08],
  'gas-ring': [0.34, 0.05, 0.16],
  'gas-burner': [0.62, 0.1, 0.36],
  'wood-fire': [0.66, 0.11, 0.42],
  'steam-generator': [0.12, 0.015, 0.08],
};

function heatSize(scenario: Scenario): HeatSize {
  const kind = scenario.heat.kind;
  const [share, low, high] = SOURCE_HEIGHT[kind];
  const height_m = clamp(share * boilingVessel(scenario).diameter_m, low, high);
  return { kind, width_m: heatedBaseDiameter(scenario), height_m };
}

/** Lids are shallow domes, an eighth of the diameter high. */
const LID_RISE = 0.125;
/** A false floor keeps the bed of a steam-fed pot off its base by this share of the pot's height. */
const FALSE_FLOOR = 0.06;

function potSize({ pot }: Scenario, depth_m: number): VesselSize {
  return {
    diameter_m: pot.diameter_m,
    height_m: pot.height_m,
    wall_m: pot.wallThickness_m,
    insulation_m: pot.insulationThickness_m,
    lid_m: LID_RISE * pot.diameter_m,
    depth_m: Math.min(depth_m, pot.height_m),
  };
}

function boilerSize({ boiler, pot }: Scenario): VesselSize {
  return {
    diameter_m: boiler.diameter_m,
    height_m: boiler.height_m,
    wall_m: pot.wallThickness_m,
    insulation_m: boiler.insulationThickness_m,
    lid_m: LID_RISE * boiler.diameter_m,
    depth_m: Math.min(waterDepth(pot.water_kg, boiler.diameter_m), boiler.height_m),
  };
}

function bedSize({ pot, charge }: Scenario): BedSize {
  const height = packedHeight(charge, pot.diameter_m);
  if (pot.layout === 'water') return { bottom_m: 0, height_m: Math.min(height, pot.height_m), submerged: true };
  const bottom = pot.layout === 'steam' ? FALSE_FLOOR * pot.height_m : Math.min(bedBottom(pot), pot.height_m);
  return { bottom_m: bottom, height_m: Math.min(height, pot.height_m - bottom), submerged: false };
}

function condenserSize({ condenser }: Scenario): CoilSize | StraightSize {
  if (isCoil(condenser)) {
    const { length_m, coilDiameter_m, coilPitch_m } = condenser;
    return {
      kind: 'coil',
      tube_m: condenser.outsideDiameter_m,
      coil_m: coilDiameter_m,
      pitch_m: coilPitch_m,
      turns: coilTurns(length_m, coilDiameter_m, coilPitch_m),
      height_m: coilRise(length_m, coilDiameter_m, coilPitch_m),
      topDepth_m: condenser.coilTopDepth_m,
      length_m,
    };
  }
  return {
    kind: 'straight',
    tube_m: condenser.outsideDiameter_m,
    tubes: tubeCount(condenser),
    jacket_m: condenser.jacketDiameter_m,
    length_m: condenser.length_m,
    upright: condenser.orientation === 'upright',
    slope_rad: condenser.slope_rad,
    counterflow: condenser.flow === 'counterflow',
  };
}

/** A jug as wide as high that would hold all the water of the pot, so that no run overflows it. */
function jugSize(water_kg: number): TrueSizes['jug'] {
  const capacity = Math.max(0.0002, water_kg / WATER_DENSITY);
  const side = Math.cbrt(capacity / (Math.PI / 4));
  return { diameter_m: side, height_m: side, capacity_m3: capacity };
}

/** A neck wider than the lid it stands on is drawn as wide as the lid. */
function neckSize({ neck, pot }: Scenario): TrueSizes['neck'] {
  const rising = Math.min(neck.risingLength_m, neck.length_m);
  return {
    bore_m: Math.min(neck.bore_m, 0.9 * pot.diameter_m),
    rising_m: rising,
    falling_m: neck.length_m - rising,
    insulation_m: Math.min(neck.insulationThickness_m, 0.5 * pot.diameter_m),
  };
}

export function trueSizes(scenario: Scenario): TrueSizes {
  const { pot, boiler, cooling, condenser, separator } = scenario;
  const steamed = pot.layout === 'steam';
  const inPot = steamed ? 0 : waterDepth(pot.water_kg, pot.diameter_m);
  const flowing = cooling.flow_kg_s.some((knot) => knot.value > 0);
  const hasTub = waterSource(scenario) !== 'tap';
  return {
    layout: pot.layout,
    heat: heatSize(scenario),
    pot: potSize(scenario, inPot),
    boiler: steamed ? boilerSize(scenario) : null,
    bed: bedSize(scenario),
    neck: neckSize(scenario),
    condenser: condenserSize(scenario),
    tub: hasTub
      ? { diameter_m: cooling.tubDiameter_m, height_m: cooling.tubHeight_m, freeboard_m: 0.06 * cooling.tubHeight_m }
      : null,
    flowing,
    stirred: hasTub && cooling.stir_m_s > 0,
    inlet: isCoil(condenser) && flowing ? cooling.inlet : null,
    separator: {
      bore_m: separator.bore_m,
      height_m: separator.height_m,
      inletDepth_m: Math.min(separator.inletDepth_m, separator.height_m),
      funnel_m: clamp(0.9 * separator.bore_m, 0.02, 0.12),
    },
    jug: jugSize(pot.water_kg),
    returns: separator.returnShare > 0,
    bedDrain: steamed ? boiler.drain : null,
  };
}
