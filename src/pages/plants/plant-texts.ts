/** What is known of the plants in words, fetched with the place that shows it. */
import type * as Texts from '../../../sim/library-texts.ts';

export type PlantTexts = typeof Texts;
