/** Shape of the data on one oil constituent. SI throughout; every value carries how it is known and its source. */

/** How a value of the constituent data is known. */
export type ConstituentValueKind =
  /** Read in a data set or abstract, which is not to say that the original paper was opened. */
  | 'published'
  /** Arithmetic on published values. */
  | 'derived'
  /** Worked out from definitions, such as a molar mass. */
  | 'computed'
  /** A fit, a scaling or an analogy; the source text says which. */
  | 'estimated'
  /** Recalled from general reference works and not read again. */
  | 'memory';

export interface ConstituentProvenance {
  readonly kind: ConstituentValueKind;
  /** Short keys are spelt out in `constituents-sources.ts`. */
  readonly source: string;
  readonly note?: string;
}

export interface ConstituentValue extends ConstituentProvenance {
  readonly value: number;
  /** Lowest and highest published value, where sources disagree. */
  readonly range?: readonly [number, number];
}

/** A value that holds at one temperature, K. */
export interface ConstituentValueAt extends ConstituentValue {
  readonly at: number;
}

/** ln(p/Pa) = A − B/(T/K + C), fitted from `validFrom` to `validTo` (K). */
export interface AntoineFit extends ConstituentProvenance {
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly validFrom: number;
  readonly validTo: number;
  readonly phase: string;
}

/** Vapour pressure at room temperature, 298.15 K, of the liquid, subcooled where it would be solid. */
export interface RoomVapour extends ConstituentProvenance {
  /** Pa at 298.15 K. */
  readonly pressure: number;
  /** Lowest and highest value that sources allow, Pa. */
  readonly range: readonly [number, number];
  /** Heat of vaporisation about 298.15 K, J/mol. */
  readonly heat: number;
}

/** Classes that leave the plant in different ways: monoterpene hydrocarbons, oxygenates, and all with fifteen carbons. */
export const CONSTITUENT_GROUPS = ['hydrocarbon', 'oxygenate', 'sesquiterpene'] as const;
export type ConstituentGroup = (typeof CONSTITUENT_GROUPS)[number];

export interface Constituent {
  readonly id: string;
  readonly name: string;
  /** What a chart calls it, where that is shorter. */
  readonly shortName?: string;
  readonly cas: string;
  /** Registry numbers of isomers and racemates whose data are used too. */
  readonly otherCas: readonly string[];
  readonly formula: string;
  readonly family: string;
  readonly group: ConstituentGroup;
  /** kg/mol. */
  readonly molarMass: ConstituentValue;
  /** K. */
  readonly meltingPoint: ConstituentValue | null;
  /** K, at 101 325 Pa. */
  readonly normalBoilingPoint: ConstituentValue;
  /** K. */
  readonly criticalTemperature: ConstituentValue;
  /** The curve in use, with a judged relative uncertainty of the pressure at 100 °C. */
  readonly vapourPressure: AntoineFit & { readonly uncertaintyAt100C: number };
  /**
   * Where the curve comes from at room temperature. Equations were mostly fitted from 60 °C up and read up to three times
   * too high for alcohols and phenols when they are carried down to a room.
   */
  readonly roomVapour: RoomVapour;
  /** kg/m³ at a temperature in K. */
  readonly liquidDensity: ConstituentValueAt;
  /** dρ/dT, kg/(m³ K). */
  readonly densitySlope: ConstituentValue;
  /** J/mol. */
  readonly latentHeatAt25C: ConstituentValue;
  /** J/mol; the slope of the vapour-pressure curve. */
  readonly latentHeatAt100C: ConstituentValue;
  /** J/(kg K) of the liquid. */
  readonly heatCapacity: ConstituentProvenance & { readonly valueAt25C: number; readonly valueAt90C: number };
  /** kg/m³ at 25 °C, of the liquid or, where it has a `fusionHeat` and melts above that, of the crystal. */
  readonly waterSolubility: ConstituentValue;
  /** Heat of fusion, J/mol, of a constituent that freezes out of an oil or whose solubility was measured on its crystals. */
  readonly fusionHeat?: ConstituentValue;
  /** Decimal logarithm of the octanol–water partition coefficient. */
  readonly logP: ConstituentValue;
  /** Pa s at a temperature in K. */
  readonly viscosity: ConstituentValueAt;
  /** K. Remembered supplier values among them: not safety data. */
  readonly flashPoint: ConstituentValue | null;
}
