/** Rooms of pot and boiler, the height of the packed charge, and the base that is heated: exact geometry in metres. */
import { circleArea, cylinderHeight, cylinderVolume } from './cylinder.ts';

export interface VesselShape {
  /** Inside diameter. */
  readonly diameter_m: number;
  /** Inside height from base to lid. */
  readonly height_m: number;
}

export interface PotShape extends VesselShape {
  /** Plant in the water, on a grid over it, or fed from a separate boiler. */
  readonly layout: 'water' | 'water-and-steam' | 'steam';
  /** Height of the grid over the base; it counts in the water-and-steam layout only. */
  readonly gridHeight_m: number;
}

export interface Vessels {
  readonly pot: PotShape;
  readonly boiler: VesselShape;
}

export interface PackedCharge {
  readonly mass_kg: number;
  readonly bulkDensity_kg_m3: number;
}

/** The vessel in which the water boils: the separate boiler of the steam layout, else the pot. */
export const boilingVessel = ({ pot, boiler }: Vessels): VesselShape => (pot.layout === 'steam' ? boiler : pot);

/** Volume of the charge as packed, its pores included, m³. */
export const packedVolume = ({ mass_kg, bulkDensity_kg_m3 }: PackedCharge): number => mass_kg / bulkDensity_kg_m3;

/** Height of the packed charge in a vessel of a diameter, m, whether or not the vessel is that high. */
export const packedHeight = (charge: PackedCharge, diameter_m: number): number =>
  cylinderHeight(packedVolume(charge), diameter_m);

/** Height of the bed that steam passes, m; zero in the water layout, where the charge floats in the water. */
export const bedHeight = ({ pot, charge }: { readonly pot: PotShape; readonly charge: PackedCharge }): number =>
  pot.layout === 'water' ? 0 : packedHeight(charge, pot.diameter_m);

/** Height of the underside of the bed over the base of the pot, m. */
export const bedBottom = (pot: PotShape): number => (pot.layout === 'water-and-steam' ? pot.gridHeight_m : 0);

/** Volume of the pot above the grid, or of the whole pot where there is none, m³. */
export const bedRoom = (pot: PotShape): number => circleArea(pot.diameter_m) * (pot.height_m - bedBottom(pot));

/** Volume for the water, m³: under the grid, or the whole vessel in which it boils. */
export const waterRoom = (vessels: Vessels): number => {
  const { diameter_m, height_m } = boilingVessel(vessels);
  return cylinderVolume(diameter_m, vessels.pot.layout === 'water-and-steam' ? vessels.pot.gridHeight_m : height_m);
};

export interface HeatedVessels extends Vessels {
  readonly heat: {
    /** Diameter that the source heats; `null` for the whole base. */
    readonly heatedDiameter_m: number | null;
  };
}

/** Diameter of the base that is heated, m: that of the source, at most the vessel's. */
export const heatedBaseDiameter = (still: HeatedVessels): number =>
  Math.min(still.heat.heatedDiameter_m ?? Infinity, boilingVessel(still).diameter_m);

/** Area of the base that is heated, m². */
export const heatedBaseArea = (still: HeatedVessels): number => circleArea(heatedBaseDiameter(still));
