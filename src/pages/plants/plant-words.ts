/** What is known of a plant in words: the library's texts, or the reader's own. */
import { wordsOfOwn, type PlantWords } from '../../../sim/index.ts';
import { ownPlantOf } from '../../state/own-plants-store.ts';
import type { PlantTexts } from './plant-texts.ts';

export function plantWords(id: string, texts: PlantTexts): PlantWords {
  const own = ownPlantOf(id);
  if (own) return wordsOfOwn(own);
  return {
    harvest: texts.harvests[id],
    text: texts.botanicalTexts[id],
    lookAlikes: texts.lookAlikes[id] ?? [],
    whoAvoids: { ...texts.whoAvoidsProvenance, value: texts.whoAvoids[id] ?? '' },
  };
}
