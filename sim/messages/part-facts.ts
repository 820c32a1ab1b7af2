/** What there is to say of the still’s parts at a moment of the run: a line of numbers, and what else; values in SI. */

export type PartNameKind =
  | 'electric-plate'
  | 'immersion-element'
  | 'induction'
  | 'gas-ring'
  | 'gas-burner'
  | 'wood-fire'
  | 'steam-generator'
  | 'boiler'
  | 'pot'
  | 'charge'
  | 'neck'
  | 'coil'
  | 'bundle'
  | 'condenser'
  | 'tub'
  | 'barrel'
  | 'cooling-water'
  | 'separator'
  | 'hydrosol';

/** What the line beside each part tells. */
export interface PartLineValues {
  readonly 'rated-power': { readonly rated_W: number };
  readonly power: { readonly power_W: number; readonly rated_W: number };
  readonly water: { readonly water_kg: number };
  readonly 'hot-water': { readonly water_kg: number; readonly temperature_K: number };
  readonly 'fed-with-steam': Nothing;
  readonly 'lid-temperature': { readonly temperature_K: number };
  readonly 'charge-empty': Nothing;
  readonly 'charge-in-water': { readonly mass_kg: number };
  readonly 'charge-on-grid': { readonly mass_kg: number };
  readonly 'charge-steaming': { readonly mass_kg: number; readonly front_m: number };
  readonly 'charge-steamed': { readonly mass_kg: number };
  readonly 'neck-length': { readonly length_m: number };
  readonly 'neck-vapour': { readonly temperature_K: number; readonly speed_m_s: number };
  readonly tube: { readonly length_m: number };
  readonly tubes: { readonly tubes: number; readonly length_m: number };
  readonly 'tube-too-short': { readonly length_m: number };
  readonly condensing: { readonly condensing_m: number; readonly length_m: number };
  readonly 'coolant-start': { readonly temperature_K: number };
  readonly 'coolant-flow': { readonly flow_kg_s: number; readonly in_K: number; readonly out_K: number };
  readonly 'still-tub': { readonly top_K: number };
  readonly 'still-coolant': { readonly temperature_K: number };
  readonly 'no-oil': Nothing;
  readonly oil: { readonly oil_kg: number; readonly density_kg_m3: number | null };
  readonly 'receiver-empty': Nothing;
  readonly hydrosol: { readonly water_kg: number };
}

/** What those who listen hear besides. */
export interface PartDetailValues {
  readonly plant: { readonly name: string };
  readonly 'own-plant': Nothing;
  readonly 'water-low': Nothing;
  readonly dry: Nothing;
  readonly pressure: { readonly gauge_Pa: number };
  readonly escaping: Nothing;
  readonly scalding: Nothing;
  readonly catches: { readonly drop_m: number };
}

type Nothing = Readonly<Record<never, never>>;

type Fact<Values, Kind extends keyof Values = keyof Values> = {
  readonly [K in Kind]: { readonly kind: K; readonly values: Values[K] };
}[Kind];

export type PartLine = Fact<PartLineValues>;
export type PartDetail = Fact<PartDetailValues>;

/** What a caution at a hazard tells. */
export interface CautionValues {
  readonly 'pot-dry': Nothing;
  readonly 'pot-low': Nothing;
  readonly flame: Nothing;
  /** Vapour leaves the outlet while a flame burns under the pot. */
  readonly 'flame-out': Nothing;
  readonly mains: Nothing;
  readonly pressure: { readonly gauge_Pa: number };
  readonly 'hot-steam': Nothing;
  readonly 'hot-pot': Nothing;
  readonly 'spent-plant': Nothing;
  /** `flame` tells whether one burns under the pot. */
  readonly escaping: { readonly vapour_kg_s: number; readonly flame: boolean };
  readonly outlet: Nothing;
  readonly glass: Nothing;
  readonly 'neat-oil': Nothing;
  readonly 'tub-hot': { readonly water_K: number };
  readonly 'tub-warm': { readonly water_K: number };
  readonly 'tub-warms': Nothing;
  readonly 'coil-too-deep': { readonly turns: number; readonly depth_m: number; readonly tub_m: number };
  readonly 'coil-too-wide': { readonly width_m: number; readonly tub_m: number };
}

export type CautionFact = Fact<CautionValues>;

/** What is to be said of a part. */
export interface PartFacts {
  readonly name: PartNameKind;
  readonly line: PartLine;
  readonly details: readonly PartDetail[];
}
