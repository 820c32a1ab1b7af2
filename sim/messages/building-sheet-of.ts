/** The whole sheet to build a still from, in words: what page, print and command line show. */
import { uncertainties } from '../answers/ensemble/factors.ts';
import { sheetMeasures, type SheetMeasures } from '../answers/building-sheet/measures.ts';
import { withLength } from '../answers/condenser-size/shortest-length.ts';
import type { TubeSize } from '../answers/condenser-size/tubes.ts';
import { tubeCost, type PriceList } from '../answers/shopping/prices.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { buildingSheetMessages } from './building-sheet.ts';
import type { NamedValue } from './english/hand-out.ts';
import type { Reader } from './language.ts';
import { quantities } from './quantities.ts';
import { runLengthMessages } from './run-length.ts';
import { hazardMessages, safetyMessages } from './safety.ts';
import { wholeMessage } from './section.ts';
import { sheetDrawings, type DrawnFigure } from './sheet-drawing.ts';
import { sizingMessages } from './sizing.ts';

export interface SheetSection {
  readonly heading: string;
  readonly rows: readonly NamedValue[];
  readonly lines: readonly string[];
}

export interface BuildingSheet {
  readonly lead: string;
  /** The still with the length that is to be built. */
  readonly scenario: Scenario;
  readonly measures: SheetMeasures;
  readonly figures: readonly DrawnFigure[];
  readonly sections: readonly SheetSection[];
}

export interface SheetOptions {
  readonly prices: PriceList;
  /** How far a coil opens when it is let go, share of its diameter. */
  readonly springBack?: number;
  /** What is told of the tub and the heat, to stand with what to buy. */
  readonly others?: readonly string[];
}

/**
 * @param scenario the still at the heat that its tube is sized for
 * @returns `null` where no length is enough, so that there is nothing to build
 */
export function buildingSheetOf(
  scenario: Scenario,
  size: TubeSize,
  { prices, springBack, others = [] }: SheetOptions,
  reader: Reader,
): BuildingSheet | null {
  const { lengthWithMargin_m, peakVapour_kg_s, verdict } = size;
  if (lengthWithMargin_m === null || peakVapour_kg_s === null || verdict !== 'holds') return null;
  const q = quantities(reader);
  const words = buildingSheetMessages(reader);
  const sizing = sizingMessages(reader);
  const safety = safetyMessages(reader);
  const toBuild = withLength(scenario, lengthWithMargin_m);
  const measures = sheetMeasures(toBuild, peakVapour_kg_s, springBack);
  const cost = tubeCost(size, prices, scenario);
  const { headings } = words;
  const section = (heading: string, lines: readonly string[], rows: readonly NamedValue[] = []): SheetSection => ({
    heading,
    rows,
    lines,
  });
  const coil = sizing.coil(size, scenario, cost);
  return {
    lead: wholeMessage(sizing.size(size, scenario)),
    scenario: toBuild,
    measures,
    figures: sheetDrawings(measures, toBuild, reader),
    sections: [
      section(headings.cut, words.wound(measures), words.cutting(measures)),
      section(headings.buy, [
        ...(coil === null ? [] : [coil]),
        ...words.fittings(scenario, sizing.tubeName(size)),
        ...words.separator(measures),
        ...others,
      ]),
      section(headings.tools, words.tools(scenario)),
      section(headings.touch, [...words.touch(scenario), ...hazardMessages(scenario, reader)]),
      section(headings.test, words.tests(scenario)),
      section(headings.watch, words.watch),
      section(headings.safety, [safety.licence, ...safety.always]),
      section(headings.assumed, words.assumed(measures)),
      section(
        headings.doubts,
        [sizing.typically(size), sizing.decides(size)].filter((sentence) => sentence !== null),
        uncertainties(scenario).map(({ id, unit, low, high }) => ({
          name: runLengthMessages(reader).uncertain(id),
          value:
            unit === '1'
              ? `× ${q.number(low, { significant: 2 })} – ${q.number(high, { significant: 2 })}`
              : `± ${unit === 'K' ? q.temperatureDifference(Math.max(-low, high)) : q.speed(Math.max(-low, high))}`,
        })),
      ),
    ],
  };
}
