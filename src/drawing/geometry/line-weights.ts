/**
 * Least sizes in pixels. Everything is drawn to one scale; what would be thinner than a pen can show (a wall of
 * 0.8 mm, a tube of 6 mm in a large still) is drawn this thick, walls outward, so that inside measures stay true.
 */

export const LEAST_WALL = 4;
export const LEAST_INSULATION = 6;
export const LEAST_TUBE = 4.5;
export const LEAST_NECK = 6;
export const TUB_WALL = 5;
export const GLASS_WALL = 2.5;

export const wallWidth = (metres: number, pxPerMetre: number): number => Math.max(LEAST_WALL, metres * pxPerMetre);
export const insulationWidth = (metres: number, pxPerMetre: number): number =>
  metres > 0 ? Math.max(LEAST_INSULATION, metres * pxPerMetre) : 0;
export const tubeWidth = (metres: number, pxPerMetre: number): number => Math.max(LEAST_TUBE, metres * pxPerMetre);
export const neckWidth = (metres: number, pxPerMetre: number): number => Math.max(LEAST_NECK, metres * pxPerMetre);
