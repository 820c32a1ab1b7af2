/** Messages on the parts beside the condenser. */
import type { OtherParts } from '../answers/building-sheet/other-parts.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { buildingSheetMessages } from './building-sheet.ts';
import { otherParts } from './english/other-parts.ts';
import type { Reader } from './language.ts';
import { section, wholeMessage } from './section.ts';
import { sizingMessages } from './sizing.ts';

export const otherPartsMessages = section<ReturnType<typeof otherParts>>({ en: otherParts });

/** Each with its words; `null` for what cannot be told. */
export function toldOtherParts({ separator, tub, water, burner }: OtherParts, still: Scenario, reader: Reader) {
  const words = otherPartsMessages(reader);
  return {
    separator: separator && { ...separator, sentence: buildingSheetMessages(reader).separatorBore({ separator }) },
    tub: tub && {
      ...tub,
      sentence: [words.tub(tub, still), water && wholeMessage(sizingMessages(reader).leastWater(water, still))]
        .filter((sentence) => sentence !== null)
        .join(' '),
    },
    heat: burner === null ? { sentence: words.noBurner } : { ...burner, sentence: words.burner(burner) },
  };
}
