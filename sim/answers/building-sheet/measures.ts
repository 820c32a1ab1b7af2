/**
 * Measures of a still to build from: what the scenario gives, and what follows from it by geometry and hydrostatics. What
 * a workshop adds (legs, clearances, spring-back) is stated here: common practice, no source.
 */
import { coilHeight, coilRise, coilTurns } from '../../geometry/coil.ts';
import { isCoil } from '../../geometry/condenser-kind.ts';
import { tubeCount } from '../../geometry/jacket.ts';
import { tubeEnds, tubeToBuy, type TubeEnds } from '../../geometry/tube-ends.ts';
import { tableLiquidDensity, tableLiquidViscosity } from '../../fluids/water-table.ts';
import { STANDARD_GRAVITY } from '../../constants.ts';
import { bisectedRoot } from '../../maths/bisect.ts';
import { LIMITS } from '../../run/limits.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { Oil } from '../../still/oil.ts';
import { capturedShare } from '../../transfer/drop-sizes.ts';
import { stokesVelocity } from '../../transfer/settling.ts';
import { uncertainties, valueAtShare } from '../ensemble/factors.ts';

/** A wound coil opens by about so much of its diameter when it is let go: soft copper; harder tube more. */
export const USUAL_SPRING_BACK = 0.04;
/** Temperature of a receiver, K. */
export const RECEIVER_K = 303.15;
/** Where oil and water meet in a separator, as a share of its height: much room for the oil, little for the other. */
const INTERFACE = { floating: 0.55, sinking: 0.27 } as const;
/** The water's leg begins so far above the base, m. */
const LEG_OVER_BASE = 0.015;
/** Oil and water that differ by less cannot be held apart by two heights, kg/m³. */
export const NEARLY_ALIKE = 15;
/** Widest that is looked at, m, and the share of the doubts with smaller drops that it need not keep. */
const WIDEST_SEPARATOR = 2;
const SMALLER_DROPS = 0.1;

export interface CoilMeasures {
  readonly tubDiameter_m: number;
  /** Of the water, up to the overflow. */
  readonly waterHeight_m: number;
  readonly tube_m: number;
  /** Centre to centre. */
  readonly coilDiameter_m: number;
  readonly pitch_m: number;
  readonly turns: number;
  /** Over the tube, top to bottom. */
  readonly coilHeight_m: number;
  readonly topDepth_m: number;
  /** Centre of the outlet above the tub's base. */
  readonly outletHeight_m: number;
  /** Round which the tube is wound, spring-back allowed for. */
  readonly former_m: number;
}

export interface JacketMeasures {
  readonly tube_m: number;
  readonly tubes: number;
  readonly jacketBore_m: number;
  readonly cooled_m: number;
}

export interface NeckMeasures {
  readonly bore_m: number;
  /** Also the hole in the lid. */
  readonly outside_m: number;
  readonly rising_m: number;
  readonly falling_m: number;
}

export interface SeparatorMeasures {
  readonly bore_m: number;
  /** Upper of the two outlets above the base. */
  readonly upper_m: number;
  /** Crest of the leg above the base: of the water's where oil floats, of the oil's where it sinks. */
  readonly crest_m: number;
  readonly interface_m: number;
  readonly legStart_m: number;
  readonly inletDepth_m: number;
  readonly sinks: boolean;
  /** kg/m³ in the receiver. */
  readonly oilDensity_kg_m3: number;
  readonly waterDensity_kg_m3: number;
  /** Narrowest that keeps nearly all drops in nine runs of ten, m; `null` where none of any size does. */
  readonly leastBore_m: number | null;
}

export interface CutPiece {
  readonly kind: 'cooled' | 'inlet' | 'outlet' | 'cutting';
  readonly length_m: number;
}

export interface SheetMeasures {
  /** Cooled length of one tube. */
  readonly cooled_m: number;
  readonly tubes: number;
  readonly ends: TubeEnds;
  /** Of each tube. */
  readonly cutting: readonly CutPiece[];
  readonly toBuy_m: number;
  readonly coil: CoilMeasures | null;
  readonly jacket: JacketMeasures | null;
  readonly neck: NeckMeasures;
  readonly separator: SeparatorMeasures;
}

function oilDensityAt(charge: Scenario['charge'], T: number): number {
  const oil = new Oil(charge.composition);
  const shares = oil.ids.map((id) => charge.composition.find(({ constituent }) => constituent === id)?.share ?? 0);
  return oil.mixtureDensity(Float64Array.from(shares), T);
}

/** Narrowest bore by Hazen's overflow rate, with small drops as one run in ten has them. */
function leastBore(scenario: Scenario, water_kg_s: number, difference: number): number | null {
  const { separator, factors } = scenario;
  const doubt = uncertainties(scenario).find(({ id }) => id === 'dropSize');
  const median = separator.dropMedian_m * factors.dropSize * (doubt ? valueAtShare(doubt, SMALLER_DROPS) : 1);
  const smallest = median / separator.dropSpread ** 5;
  const keepsEnough = (cut: number): boolean => capturedShare(cut, median, separator.dropSpread) > LIMITS.captureShare;
  const cut = bisectedRoot(keepsEnough, smallest, median);
  const velocity = Math.abs(stokesVelocity(cut, difference, tableLiquidViscosity(RECEIVER_K), STANDARD_GRAVITY));
  if (!(velocity > 0)) return null;
  const flow = (water_kg_s / tableLiquidDensity(RECEIVER_K)) * separator.turbulenceFactor;
  const bore = Math.sqrt((4 * flow) / (Math.PI * velocity));
  return bore <= WIDEST_SEPARATOR ? bore : null;
}

function separatorMeasures(scenario: Scenario, water_kg_s: number): SeparatorMeasures {
  const { separator, charge } = scenario;
  const water = tableLiquidDensity(RECEIVER_K);
  const oil = oilDensityAt(charge, RECEIVER_K);
  const sinks = oil > water;
  const upper_m = separator.height_m;
  const interface_m = (sinks ? INTERFACE.sinking : INTERFACE.floating) * upper_m;
  // Both columns above the interface weigh the same.
  const ratio = sinks ? water / oil : oil / water;
  return {
    bore_m: separator.bore_m,
    upper_m,
    crest_m: interface_m + ratio * (upper_m - interface_m),
    interface_m,
    legStart_m: Math.min(LEG_OVER_BASE, 0.1 * upper_m),
    inletDepth_m: Math.min(separator.inletDepth_m, upper_m),
    sinks,
    oilDensity_kg_m3: oil,
    waterDensity_kg_m3: water,
    leastBore_m: leastBore(scenario, water_kg_s, water - oil),
  };
}

/**
 * @param scenario the still to build, with the length that it shall have
 * @param water_kg_s largest rate of distillate that the separator must take
 */
export function sheetMeasures(scenario: Scenario, water_kg_s: number, springBack = USUAL_SPRING_BACK): SheetMeasures {
  const { condenser, cooling, neck } = scenario;
  const { length_m, coilDiameter_m: D, coilPitch_m: p, coilTopDepth_m, outsideDiameter_m: D_o } = condenser;
  const ends = tubeEnds(scenario, length_m);
  const coiled = isCoil(condenser);
  const rising_m = Math.min(neck.risingLength_m, neck.length_m);
  const tubes = tubeCount(condenser);
  return {
    cooled_m: length_m,
    tubes,
    ends,
    cutting: [
      { kind: 'inlet', length_m: ends.inlet_m },
      { kind: 'cooled', length_m },
      { kind: 'outlet', length_m: ends.outlet_m },
      { kind: 'cutting', length_m: ends.cutting_m },
    ],
    toBuy_m: tubeToBuy(length_m, ends),
    coil: coiled
      ? {
          tubDiameter_m: cooling.tubDiameter_m,
          waterHeight_m: cooling.tubHeight_m,
          tube_m: D_o,
          coilDiameter_m: D,
          pitch_m: p,
          turns: coilTurns(length_m, D, p),
          coilHeight_m: coilHeight(length_m, D, p, D_o),
          topDepth_m: coilTopDepth_m,
          outletHeight_m: cooling.tubHeight_m - coilTopDepth_m - D_o / 2 - coilRise(length_m, D, p),
          former_m: (D - D_o) * (1 - springBack),
        }
      : null,
    jacket: coiled ? null : { tube_m: D_o, tubes, jacketBore_m: condenser.jacketDiameter_m, cooled_m: length_m },
    neck: {
      bore_m: neck.bore_m,
      outside_m: neck.bore_m + 2 * neck.wallThickness_m,
      rising_m,
      falling_m: neck.length_m - rising_m,
    },
    separator: separatorMeasures(scenario, water_kg_s),
  };
}
