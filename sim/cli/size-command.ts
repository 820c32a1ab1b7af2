/** `limbeck size`: how much of which tube a still needs, the hardest boil its condenser holds, the least water it needs. */
import { tubes, type Tube } from '../index.ts';
import { hardestBoil, leastWater } from '../answers/condenser-size/heat-and-water.ts';
import { closestWords } from '../reference/closest-words.ts';
import { DEFAULT_MARGIN, sizeOwnTube, sizeTubes, type TubeSize } from '../answers/condenser-size/tubes.ts';
import { BadInput } from './bad-input.ts';
import { isSet, listOf, numberOf, onlyWord, readWords, type Words } from './options.ts';
import { cell, toJson, toTable } from './print.ts';
import { scenarioFrom } from './read-input.ts';

const HEADINGS = [
  'tube',
  'length m',
  'with margin m',
  'turns',
  'coil height m',
  'fits tub',
  'bend',
  'mass kg',
  'drop Pa',
  'price',
  'buy',
  'remark',
];

const packWords = ({ packs }: TubeSize): string =>
  packs === null ? '–' : `${packs.count} × ${cell(packs.length_m)} m${packs.joined ? ', joined' : ''}`;

const remark = ({ verdict, says }: TubeSize): string => (verdict === 'holds' && !says.includes('Reckoned') ? '' : says);

const rowOf = (size: TubeSize): string[] => [
  size.name,
  cell(size.length_m),
  cell(size.lengthWithMargin_m),
  cell(size.turns),
  cell(size.coilHeight_m),
  cell(size.fitsTub),
  cell(size.bend),
  cell(size.mass_kg),
  cell(size.peakDrop_Pa),
  cell(size.price),
  packWords(size),
  remark(size),
];

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

export function sizeCommand(args: readonly string[]): string {
  const words = readWords(args, {
    set: { type: 'string', multiple: true },
    'outlet-limit': { type: 'string' },
    margin: { type: 'string' },
    tube: { type: 'string', multiple: true },
    own: { type: 'boolean' },
    confirm: { type: 'boolean' },
    'hardest-boil': { type: 'boolean' },
    'least-water': { type: 'boolean' },
    table: { type: 'boolean' },
  });
  if (isSet(words, 'json') && isSet(words, 'table')) throw new BadInput('Only one of --json and --table can be given.');
  const margin = numberOf(words, 'margin', 0, 5, '1') ?? DEFAULT_MARGIN;
  const limit = numberOf(words, 'outlet-limit', 5, 90, '°C');
  const list = wantedTubes(words);
  const assignments = listOf(words, 'set');
  const scenario = scenarioFrom(
    onlyWord(words, 'scenario'),
    limit === undefined ? assignments : [...assignments, `condenser.outletLimit_K=${limit + 273.15}`],
  );
  const outletLimit_C = Number((scenario.condenser.outletLimit_K - 273.15).toPrecision(12));
  if (isSet(words, 'hardest-boil') || isSet(words, 'least-water')) {
    const answers = {
      ...(isSet(words, 'hardest-boil') ? { hardestBoil: hardestBoil(scenario) } : {}),
      ...(isSet(words, 'least-water') ? { leastWater: leastWater(scenario) } : {}),
    };
    return isSet(words, 'json')
      ? toJson({ name: scenario.name, outletLimit_C, ...answers })
      : Object.values(answers)
          .map(({ says }) => says)
          .join('\n');
  }
  const own = sizeOwnTube(scenario, { margin });
  const rows = sizeTubes(scenario, list, { margin, confirm: isSet(words, 'confirm') }, own);
  if (isSet(words, 'json'))
    return toJson({
      name: scenario.name,
      outletLimit_C,
      margin,
      lengthGiven_m: scenario.condenser.length_m,
      own,
      tubes: rows,
    });
  const yours = `Your tube, ${own.name}: ${own.says} You have ${cell(scenario.condenser.length_m)} m.`;
  return [
    `${scenario.name}: distillate at most ${cell(outletLimit_C)} °C over the whole run, margin ${cell(100 * margin)} %. All but the length are for the length with margin.`,
    yours,
    '',
    toTable(HEADINGS, [rowOf({ ...own, name: `your ${own.name}` }), ...rows.map(rowOf)]),
  ].join('\n');
}
