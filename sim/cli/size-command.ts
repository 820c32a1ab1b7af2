/** `limbeck size`: how much of which tube a still needs, the hardest boil its condenser holds, the least water it needs. */
import { writeFileSync } from 'node:fs';
import {
  atFullHeat,
  buildingSheetMessages,
  buildingSheetOf,
  DEFAULT_MARGIN,
  displayUnit,
  hardestBoil,
  leastWater,
  NINE_IN_TEN,
  NO_PRICES,
  priceListMessages,
  quantities,
  readPriceList,
  sheetSvg,
  sizeOtherParts,
  sizeOwnTube,
  sizeTubes,
  sizingMessages,
  toldOtherParts,
  toldSizing,
  toldTubeSize,
  tubeCost,
  tubes,
  wholeMessage,
  type PriceList,
  type Reader,
  type Scenario,
  type Tube,
  type TubeCost,
  type TubeSize,
} from '../index.ts';
import { closestWords } from '../reference/closest-words.ts';
import { BadInput } from './bad-input.ts';
import { isSet, listOf, numberOf, onlyWord, readerOf, readWords, textOf, UNITS, WITH, type Words } from './options.ts';
import { cell, toJson, toTable } from './print.ts';
import { readText, scenarioFrom } from './read-input.ts';
import { wholeRun } from './whole-run.ts';

/** Pressure drops of tubes are of this size, Pa: it chooses the unit of their column. */
const USUAL_DROP = 100;

type Column = readonly [heading: string, cell: (size: TubeSize) => string];

/** What a tube costs; one's own tube may bear a price in the scenario. */
type CostOf = (size: TubeSize) => TubeCost | null;

/** The table's columns, in the reader's units. */
function columnsFor(scenario: Scenario, reader: Reader, costOf: CostOf): readonly Column[] {
  const messages = sizingMessages(reader);
  const inUnit = (
    title: string,
    unit: string,
    hint: string,
    read: (size: TubeSize) => number | null,
    near?: number,
  ) => {
    const shown = displayUnit(unit, reader.units, hint, near);
    const write = (value: number | null) => cell(value === null ? null : shown.fromSI(value));
    return [`${title} ${shown.label}`, (size: TubeSize) => write(read(size))] as const;
  };
  return [
    ['tube', (size) => messages.tubeName(size)],
    inUnit('length', 'm', 'run', ({ length_m }) => length_m),
    inUnit('as planned', 'm', 'run', ({ typical_m }) => typical_m),
    inUnit('with margin', 'm', 'run', ({ lengthWithMargin_m }) => lengthWithMargin_m),
    ['turns', ({ turns }) => cell(turns)],
    inUnit('coil height', 'm', 'size', ({ coilHeight_m }) => coilHeight_m),
    ['fits tub', ({ fitsTub }) => cell(fitsTub)],
    ['bend', ({ bend }) => cell(bend === null ? null : messages.bend(bend))],
    inUnit('mass', 'kg', 'mass', ({ mass_kg }) => mass_kg),
    inUnit('drop', 'Pa', 'pressure', ({ peakDrop_Pa }) => peakDrop_Pa, USUAL_DROP),
    inUnit('steam speed', 'm/s', 'speed', ({ steamSpeed_m_s }) => steamSpeed_m_s),
    inUnit('with ends', 'm', 'run', ({ toBuy_m }) => toBuy_m),
    ['cost', (size) => cell(costOf(size)?.amount ?? null)],
    ['price', (size) => cell(costOf(size)?.basis ?? null)],
    [
      'buy',
      (size) => {
        const cost = costOf(size);
        return cost === null ? '–' : messages.toBuy(cost);
      },
    ],
    ['remark', (size) => messages.remark(size, scenario)],
  ];
}

function wantedTubes(words: Words): readonly Tube[] {
  if (isSet(words, 'own')) return [];
  const ids = listOf(words, 'tube');
  if (ids.length === 0) return tubes;
  return ids.map((id) => {
    const found = tubes.find((tube) => tube.id === id);
    if (!found)
      throw new BadInput(
        `--tube: “${id}” is not a tube of the library; the closest are ${closestWords(
          id,
          tubes.map((tube) => tube.id),
          3,
        ).join(', ')}. “list tubes” shows all.`,
      );
    return found;
  });
}

/** How sure a length can be told from the draws that there are. */
const LEAST_CONFIDENCE = 0.5;
const MOST_CONFIDENCE = 0.95;

/** The reader's own prices; every line must be read. */
function pricesFrom(file: string | undefined, reader: Reader): PriceList {
  if (file === undefined) return NO_PRICES;
  const { list, problems } = readPriceList(readText(file, () => `--prices: there is no file ${file}.`));
  if (problems.length > 0)
    throw new BadInput(problems.map((each) => `--prices ${file}: ${priceListMessages(reader).problem(each)}`));
  return list;
}

/** Writes the drawings to build from. */
function writeSheet(file: string, scenario: Scenario, own: TubeSize, prices: PriceList, reader: Reader): void {
  const sheet = buildingSheetOf(scenario, own, { prices }, reader);
  if (sheet === null) throw new BadInput(`--sheet: ${buildingSheetMessages(reader).noSheet}`);
  try {
    writeFileSync(file, sheetSvg(scenario.name, sheet.figures, reader));
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    throw new BadInput(`--sheet: the file ${file} can't be written (${reason}).`);
  }
}

export function sizeCommand(args: readonly string[]): string {
  const words = readWords(args, {
    ...WITH,
    ...UNITS,
    'outlet-limit': { type: 'string' },
    margin: { type: 'string' },
    tube: { type: 'string', multiple: true },
    own: { type: 'boolean' },
    confirm: { type: 'boolean' },
    'full-heat': { type: 'boolean' },
    confidence: { type: 'string' },
    prices: { type: 'string' },
    sheet: { type: 'string' },
    'hardest-boil': { type: 'boolean' },
    'least-water': { type: 'boolean' },
    table: { type: 'boolean' },
  });
  if (isSet(words, 'json') && isSet(words, 'table')) throw new BadInput('Only one of --json and --table can be given.');
  const margin = numberOf(words, 'margin', 0, 5, '1') ?? DEFAULT_MARGIN;
  const limit = numberOf(words, 'outlet-limit', 5, 90, '°C');
  const confidence = numberOf(words, 'confidence', LEAST_CONFIDENCE, MOST_CONFIDENCE, '1') ?? NINE_IN_TEN;
  const list = wantedTubes(words);
  const reader = readerOf(words);
  const q = quantities(reader);
  const messages = sizingMessages(reader);
  const assignments = listOf(words, 'with');
  const planned = scenarioFrom(
    onlyWord(words, 'scenario'),
    limit === undefined ? assignments : [...assignments, `condenser.outletLimit_K=${limit + 273.15}`],
  );
  const scenario = isSet(words, 'full-heat') ? (atFullHeat(planned) ?? planned) : planned;
  const prices = pricesFrom(textOf(words, 'prices'), reader);
  const result = wholeRun(scenario, reader);
  const outletLimit_C = Number((scenario.condenser.outletLimit_K - 273.15).toPrecision(12));
  if (isSet(words, 'hardest-boil') || isSet(words, 'least-water')) {
    const hardest = isSet(words, 'hardest-boil') ? hardestBoil(scenario) : null;
    const least = isSet(words, 'least-water') ? leastWater(scenario) : null;
    const told = toldSizing({ own: null, atFullHeat: null, hardestBoil: hardest, leastWater: least }, scenario, reader);
    const answers = {
      ...(told.hardestBoil && { hardestBoil: told.hardestBoil }),
      ...(told.leastWater && { leastWater: told.leastWater }),
    };
    return isSet(words, 'json')
      ? toJson({ name: scenario.name, outletLimit_C, ...answers })
      : Object.values(answers).map(wholeMessage).join('\n');
  }
  const own = sizeOwnTube(scenario, { margin, confidence });
  const full = atFullHeat(scenario);
  const fullSize = full && sizeOwnTube(full, { margin, confidence });
  const rows = sizeTubes(scenario, list, { margin, confidence, confirm: isSet(words, 'confirm') }, own);
  const ownCost = tubeCost(own, prices, scenario);
  const others = toldOtherParts(sizeOtherParts(result, own), scenario, reader);
  const sheetFile = textOf(words, 'sheet');
  if (sheetFile !== undefined) writeSheet(sheetFile, scenario, own, prices, reader);
  const costOf: CostOf = (size) => (size === own ? ownCost : tubeCost(size, prices));
  if (isSet(words, 'json')) {
    const told = (size: TubeSize) => ({ ...toldTubeSize(size, scenario, reader), cost: costOf(size) });
    return toJson({
      name: scenario.name,
      outletLimit_C,
      margin,
      confidence,
      lengthGiven_m: scenario.condenser.length_m,
      own: told(own),
      atFullHeat: full && fullSize && toldTubeSize(fullSize, full, reader),
      otherParts: others,
      tubes: rows.map(told),
    });
  }
  const yours = [
    messages.coil(own, scenario, ownCost),
    messages.ownLength(own, scenario),
    messages.fullHeat(fullSize, scenario),
    messages.decides(own),
  ];
  const named = { ...own, name: `your ${messages.tubeName(own)}` };
  const columns = columnsFor(scenario, reader, (size) => (size === named ? ownCost : costOf(size)));
  return [
    `${scenario.name}: distillate at most ${q.temperature(scenario.condenser.outletLimit_K)} over the whole run in ${messages.inRuns(own).toLowerCase()}, margin ${q.share(margin)}.`,
    wholeMessage(messages.size(own, scenario)),
    yours.filter((sentence) => sentence !== null).join(' '),
    ...[others.separator, others.tub, others.heat].flatMap((told) => (told === null ? [] : [told.sentence])),
    ...(rows.length > 0 ? [`Other tubes: ${messages.otherTubes}`] : []),
    priceListMessages(reader).defaults,
    '',
    toTable(
      columns.map(([heading]) => heading),
      [named, ...rows].map((size) => columns.map(([, read]) => read(size))),
    ),
  ].join('\n');
}
