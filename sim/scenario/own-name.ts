/** How the charge names a plant that is not in the library: `own`, or `own: ` and its name. */

const OWN = 'own';
const NAMED = 'own: ';

/** The longest name, so that it fits the field of the charge. */
export const LONGEST_PLANT_NAME = 50;

export const isOwnPlant = (botanical: string): boolean => botanical === OWN || botanical.startsWith(NAMED);

/** Name of a plant of the reader's own; empty where it has none or is the library's. */
export const ownPlantName = (botanical: string): string =>
  botanical.startsWith(NAMED) ? botanical.slice(NAMED.length).trim() : '';

/** What the charge says of a plant of this name. */
export const ownPlantId = (name: string): string => `${NAMED}${name.trim()}`;
