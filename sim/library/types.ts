/**
 * Shapes of the library's rows. Numbers are SI; a name ends in its unit unless the quantity is a pure number.
 */
import type { ConstituentGroup } from '../fluids/constituents.ts';
import type { Band, Provenance, Sourced } from './provenance.ts';

export type { ConstituentGroup };

export type ChargeState = 'fresh' | 'dry';
export type Packing = 'loose' | 'packed';
export type Layout = 'water' | 'water-and-steam' | 'steam';

export interface CompositionEntry {
  /** Id in `sim/fluids/constituents.ts`, snake_case. */
  readonly constituent: string;
  /** kg per kg of oil; the entries of an oil add to exactly 1. */
  readonly massFraction: number;
  readonly group: ConstituentGroup;
}

/** The plant as it goes into the still, fresh-cut or dried. */
export interface BotanicalState {
  /** kg water per kg of plant as charged. */
  readonly moisture: Sourced<Band>;
  /** kg oil per kg of dry plant matter. */
  readonly oilContent: Sourced<Band>;
  /** kg of plant as charged per m³ of still, shaken in or pressed down. */
  readonly bulkDensity_kg_m3: Sourced<Readonly<Record<Packing, number>>>;
  /** kg per m³ of one piece of plant with its own water. */
  readonly particleDensity_kg_m3: Sourced<number>;
  /** Share of the bed that is free for steam. */
  readonly voidFraction: Sourced<Readonly<Record<Packing, number>>>;
  /** Diameter of the sphere with the pieces' volume to surface ratio, d = 6 V / S, for the Ergun equation. */
  readonly particleSize_m: Sourced<number>;
  /** J/kgK of the dry matter alone. */
  readonly dryHeatCapacity_J_kgK: Sourced<number>;
  /** kg of water that a kg of dry matter holds, soaked and drained, tissue water included. */
  readonly waterHolding: Sourced<number>;
}

/** How one group of constituents leaves the plant. */
export interface GroupRelease {
  /** Share f of the oil that starts open to the steam. */
  readonly readyShare: Sourced<Band>;
  /** Rate k_B at which held oil becomes ready, 1/s, plant hot and wet at 100 °C. */
  readonly heldRate_1_s: Sourced<Band>;
  /** K of NTU = K z G^(m − 1), z in m and G in kg/m²s. */
  readonly takeUp: Sourced<Band>;
}

export interface ReleaseParameters {
  readonly hydrocarbon: GroupRelease;
  readonly oxygenate: GroupRelease;
  readonly sesquiterpene: GroupRelease;
  /** J/mol, of the held rate, Arrhenius about 100 °C. */
  readonly activationEnergy_J_mol: Sourced<number>;
  /** m of NTU = K z G^(m − 1). */
  readonly takeUpExponent: Sourced<number>;
  /** Ready oil at which coverage is one half, as a share of the moles of oil that the plant usually holds. */
  readonly halfCoverage: Sourced<number>;
  /** Ids of the published curves in `published-curves.ts` that speak for this plant; empty when none does. */
  readonly curves: readonly string[];
  readonly note: string;
}

/** First-order loss of an ester to its alcohol, mole for mole. */
export interface EsterHydrolysis {
  readonly ester: string;
  readonly alcohol: string;
  /** 1/s at 100 °C, plant submerged in the boiling water. */
  readonly rateInWater_1_s: Sourced<Band>;
  /** 1/s at 100 °C, plant on a grid or in direct steam. */
  readonly rateInBed_1_s: Sourced<Band>;
}

export interface PublishedRange {
  /** Constituent as the source names it. */
  readonly constituent: string;
  /** kg per kg of oil. */
  readonly low: number;
  readonly high: number;
  readonly provenance: Provenance;
}

/** What a home distiller usually charges. */
export interface DefaultCharge {
  readonly state: ChargeState;
  readonly packing: Packing;
  readonly layout: Layout;
  /** Plant as charged, kg. */
  readonly mass_kg: number;
  /** How the plant is cut, in words. */
  readonly cut: string;
  readonly provenance: Provenance;
}

export type BotanicalKind = 'flower' | 'leaf' | 'herb' | 'seed' | 'berry' | 'bud' | 'peel' | 'needle' | 'wood';

export interface Botanical {
  readonly id: string;
  readonly name: Sourced<string>;
  readonly latinName: Sourced<string>;
  readonly kind: BotanicalKind;
  readonly part: Sourced<string>;
  readonly usualState: Sourced<string>;
  readonly states: Readonly<Partial<Record<ChargeState, BotanicalState>>>;
  readonly defaultCharge: DefaultCharge;
  readonly composition: Sourced<readonly CompositionEntry[]>;
  /** Of the oil at 20 °C, from its composition. */
  readonly oilDensity_kg_m3: Sourced<number>;
  readonly floats: Sourced<'floats' | 'sinks'>;
  /** Minutes of running in a home still and in a field still, low and high. */
  readonly distillationMinutes: Readonly<Record<'home' | 'field', Sourced<readonly [number, number]>>>;
  readonly release: ReleaseParameters;
  /** Empty when no ester matters. */
  readonly hydrolysis: readonly EsterHydrolysis[];
}

/**
 * What the literature and the trade say of a plant beside the numbers that a run takes; fetched when it is read. A
 * quantity stands in braces, `{20–30 °C}`, so that it can be written in the reader's units.
 */
export interface BotanicalText {
  readonly oilSite: Sourced<string>;
  readonly preparation: Sourced<string>;
  readonly tradeMethod: Sourced<string>;
  /** What the composition stands for: real constituents folded into listed ones, and how it was shortened. */
  readonly compositionNotes: readonly string[];
  readonly publishedRanges: readonly PublishedRange[];
  /** Oil at 20 °C against water at 20 °C. */
  readonly relativeDensity: Sourced<{ readonly low: number; readonly high: number }>;
  readonly qualityNotes: readonly Sourced<string>[];
  readonly cautions: readonly Sourced<string>[];
}

export interface Material {
  readonly id: string;
  readonly name: string;
  readonly kind: 'metal' | 'glass' | 'plastic' | 'insulation' | 'wood';
  readonly conductivity_W_mK: Sourced<number>;
  readonly density_kg_m3: Sourced<number>;
  readonly heatCapacity_J_kgK: Sourced<number>;
  /** Of the surface as it usually looks in a still. */
  readonly emissivity: Sourced<number>;
}

export interface Tube {
  readonly id: string;
  /** e.g. `ASTM B88 type L`. */
  readonly standard: string;
  /** The standard's own size, e.g. `3/8` or `12 x 1`. */
  readonly designation: string;
  /** Name to show, with the outside diameter, since nominal sizes mislead. */
  readonly name: string;
  /** Id of a material. */
  readonly material: string;
  readonly outsideDiameter_m: number;
  readonly wall_m: number;
  readonly insideDiameter_m: number;
  readonly massPerLength_kg_m: number;
  readonly temper: 'annealed' | 'drawn' | 'rigid';
  /** Whether it is sold or can be bent as a coil. */
  readonly coilable: boolean;
  /** Usual packs or sticks. */
  readonly coilLengths_m: readonly number[];
  /** Centre-line radius, with a bender and by hand round a former; null when it can't be bent so. */
  readonly minimumBendRadius_m: { readonly withTool: number | null; readonly byHand: number | null };
  /** Outside surface per length against a plain tube of the same outside diameter; 1 unless corrugated. */
  readonly areaFactor: number;
  readonly provenance: Provenance;
  /** Of packs and bend radii. */
  readonly bendProvenance: Provenance;
}

export type VesselKind = 'catering-pot' | 'drum' | 'keg' | 'copper-pot' | 'flask' | 'can';

export interface Vessel {
  readonly id: string;
  readonly name: string;
  readonly kind: VesselKind;
  readonly material: string;
  /** The model's cylinder: inside diameter and height that give the brim volume. */
  readonly insideDiameter_m: number;
  readonly height_m: number;
  readonly wall_m: number;
  readonly volume_m3: number;
  readonly emptyMass_kg: number;
  readonly provenance: Provenance;
}

export type HeatSourceKind =
  'electric-plate' | 'immersion-element' | 'induction' | 'gas-ring' | 'gas-burner' | 'wood-fire' | 'steam-generator';

export type EnergyCarrier = 'electricity' | 'propane' | 'butane' | 'natural-gas' | 'wood';

export interface HeatSource {
  readonly id: string;
  readonly name: string;
  readonly kind: HeatSourceKind;
  readonly carrier: EnergyCarrier;
  readonly ratedPower_W: Sourced<Band>;
  /** Share of the rated power that reaches the pot's content and wall. */
  readonly efficiency: Sourced<Band>;
  /** First-order lag between a change of setting and the heat. */
  readonly lag_s: Sourced<Band>;
  /** J/kg burnt, water leaving as vapour; null for electricity. */
  readonly lowerHeatingValue_J_kg: Sourced<number> | null;
}

export interface Circuit {
  readonly id: string;
  readonly name: string;
  readonly voltage_V: number;
  readonly current_A: number;
  readonly maximumPower_W: number;
  /** What the circuit carries for hours. */
  readonly continuousPower_W: number;
  readonly provenance: Provenance;
}

export interface SeparatorVessel {
  readonly id: string;
  readonly name: string;
  readonly material: string;
  /** Oils it is built for. */
  readonly suits: 'floating' | 'sinking' | 'both';
  readonly bore_m: number;
  readonly height_m: number;
  /** Heights above the inside bottom. */
  readonly inletHeight_m: number;
  readonly oilOutletHeight_m: number;
  readonly waterOutletHeight_m: number;
  /** Content when running, up to the upper outlet. */
  readonly holdUp_m3: number;
  readonly provenance: Provenance;
}

export interface Tub {
  readonly id: string;
  readonly name: string;
  readonly material: string;
  readonly volume_m3: number;
  /** The model's cylinder. */
  readonly insideDiameter_m: number;
  readonly height_m: number;
  readonly wall_m: number;
  readonly open: boolean;
  readonly provenance: Provenance;
}
