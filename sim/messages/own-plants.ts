/** What is wrong with a plant of the reader's own, for a reader. */
import { ownPlants } from './english/own-plants.ts';
import { section } from './section.ts';

export const ownPlantMessages = section<ReturnType<typeof ownPlants>>({ en: ownPlants });
