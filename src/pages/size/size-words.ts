/** How much tube, in sentences. */
import {
  type HardestBoil,
  type LeastWater,
  type Scenario,
  type Summary,
  type TubeSize,
  formatNumber,
  formatQuantity,
  type UnitSystem,
} from '../../../sim/index.ts';
import { money } from '../run-length/length-words.ts';
import type { TubeRow } from './tube-rows.ts';

const run = (length_m: number, units: UnitSystem): string => formatQuantity(length_m, 'm', units, { hint: 'run' });
const degrees = (temperature_K: number, units: UnitSystem): string =>
  formatQuantity(temperature_K, 'K', units, { decimals: 0 });
const percent = (share: number, units: UnitSystem): string =>
  formatQuantity(share, '1', units, { hint: 'share', decimals: 0 });

export const condenserNoun = ({ condenser }: Pick<Scenario, 'condenser'>): string =>
  condenser.kind === 'coil-in-tub' ? 'coil' : condenser.kind === 'bundle' ? 'bundle' : 'tube';

/** Lengths nearer than this count as the same. */
const SAME_LENGTH = 0.005;

/** The one sentence at the top. */
export function sizeLead(size: TubeSize, { condenser }: Scenario, units: UnitSystem): string {
  const { length_m, lengthWithMargin_m, verdict } = size;
  if (length_m === null || lengthWithMargin_m === null) return noLength(size, condenser.outletLimit_K, units);
  if (verdict === 'no-vapour') return 'Nothing comes over in this run, so any length holds.';
  const each =
    size.tubes > 1 ? `${size.tubes} tubes of ${run(length_m, units)} each` : `${run(length_m, units)} of this tube`;
  const margin = lengthWithMargin_m / length_m - 1;
  const hold = `${each} hold${size.tubes > 1 || length_m !== 1 ? '' : 's'} the whole run`;
  return margin > SAME_LENGTH
    ? `${hold}; take ${run(lengthWithMargin_m, units)}, ${percent(margin, units)} more.`
    : `${hold}.`;
}

function noLength({ verdict }: TubeSize, limit_K: number, units: UnitSystem): string {
  switch (verdict) {
    case 'pressure':
      return 'This tube is too narrow for this boil: it holds back so much vapour that a lid can lift or spray.';
    case 'coolant-warm':
      return `No length helps: the cooling water itself becomes too warm to keep the distillate at ${degrees(limit_K, units)}. It wants more or colder water, or less heat.`;
    case 'never':
      return 'Even a hundred metres are not enough.';
    case 'cannot-be-coiled':
      return 'This tube is sold only as hard, straight lengths and cannot be wound.';
    case 'does-not-fit':
      return 'This tube is too thick for its jacket or its turns.';
    case 'holds':
    case 'no-vapour':
      return 'Any length holds.';
  }
}

/** How the reader's own length compares. */
export function ownLengthWords(
  { length_m, lengthWithMargin_m, verdict }: TubeSize,
  scenario: Scenario,
  units: UnitSystem,
): string | null {
  if (length_m === null || lengthWithMargin_m === null || verdict !== 'holds') return null;
  const own = scenario.condenser.length_m;
  const has = `Your ${condenserNoun(scenario)} has ${run(own, units)}`;
  if (own < length_m - SAME_LENGTH) return `${has}: ${run(length_m - own, units)} too short.`;
  if (own < length_m + SAME_LENGTH) return `${has}: just enough, with nothing to spare.`;
  const spare = `${run(own - length_m, units)} more than the least`;
  return own < lengthWithMargin_m - SAME_LENGTH
    ? `${has}: ${spare}, but less than you want to spare.`
    : `${has}: ${spare}.`;
}

/** What the length with its margin comes to: turns, height, metal and price; `null` where no length holds. */
export function coilWords(
  { lengthWithMargin_m, verdict, turns, coilHeight_m, fitsTub, bend, mass_kg, tubes }: TubeSize,
  { condenser }: Pick<Scenario, 'condenser'>,
  units: UnitSystem,
): string | null {
  if (lengthWithMargin_m === null || verdict !== 'holds' || mass_kg === null) return null;
  const price = lengthWithMargin_m * tubes * condenser.tubePrice_m;
  const metal = `${formatQuantity(mass_kg, 'kg', units, { hint: 'mass', significant: 2 })} of ${condenser.material.replace('-', ' ')}${price > 0 ? `, ${money(price)} at your price` : ''}`;
  if (turns === null || coilHeight_m === null) return `That is ${metal}.`;
  const height = formatQuantity(coilHeight_m, 'm', units, { hint: 'size' });
  const fit =
    fitsTub === false
      ? 'too tall for the tub: wind it wider or closer, take a wider tube or a deeper tub'
      : 'which goes into the tub';
  const tight = bend === 'too tight' ? ' These turns are tighter than this tube bends.' : '';
  return `As a coil that is ${formatNumber(turns, 1)} turns, ${height} tall, ${fit}; ${metal}.${tight}`;
}

/** Why the length that holds is more than the length that condenses, which the bench tells; `null` where it is not. */
export function condensingWords(
  { condenser }: Pick<Scenario, 'condenser'>,
  { condensingLengthPeak_m, waterUncondensed_kg }: Pick<Summary, 'condensingLengthPeak_m' | 'waterUncondensed_kg'>,
  units: UnitSystem,
): string | null {
  if (
    !(condensingLengthPeak_m > 0) ||
    waterUncondensed_kg > 0 ||
    condensingLengthPeak_m > condenser.length_m - SAME_LENGTH
  )
    return null;
  return `${run(condensingLengthPeak_m, units)} of it ${condenser.kind === 'bundle' ? 'condense' : 'condenses'} everything; the rest cools the distillate, which you want no warmer than ${degrees(condenser.outletLimit_K, units)}.`;
}

const FAILS: Readonly<Record<NonNullable<HardestBoil['limitedBy']>, string>> = {
  'vapour-escapes': 'vapour leaves the outlet',
  'outlet-warm': 'the distillate leaves too warm',
  pressure: 'the tube holds back too much vapour',
};

export function hardestWords(
  { setting, power_W, limitedBy, boils }: HardestBoil,
  { heat, ...scenario }: Scenario,
  units: UnitSystem,
): string {
  const power = (value: number) => formatQuantity(value, 'W', units);
  const noun = condenserNoun(scenario);
  if (setting === null || power_W === null)
    return `This ${noun} does not hold even the gentlest boil: ${limitedBy ? FAILS[limitedBy] : 'it fails'}.`;
  if (limitedBy === null) return `This ${noun} takes even full heat, ${power(heat.ratedPower_W)}.`;
  if (!boils)
    return `At one heat throughout, nothing comes over up to ${power(power_W)}, and harder boils are not held: ${FAILS[limitedBy]}.`;
  return `This ${noun} takes up to ${power(power_W)} throughout, ${percent(setting, units)} of full heat; above that ${FAILS[limitedBy]}.`;
}

export function leastWaterWords(
  { flow_kg_s, used_kg, limitedBy }: LeastWater,
  scenario: Scenario,
  units: UnitSystem,
): string {
  const flow = (value: number) => formatQuantity(value, 'kg/s', units, { hint: 'coolantFlow' });
  if (flow_kg_s === null)
    return `No flow is enough for this ${condenserNoun(scenario)}: however much runs, ${limitedBy ? FAILS[limitedBy] : 'it fails'}.`;
  if (flow_kg_s === 0) return 'No water need run: what is there lasts.';
  const used =
    used_kg !== null && used_kg > 0 ? `, ${formatQuantity(used_kg, 'kg', units, { hint: 'water' })} in all` : '';
  return `It wants at least ${flow(flow_kg_s)} of water${used}; with less, ${limitedBy ? FAILS[limitedBy] : 'it fails'}.`;
}

/** What a tube's row says instead of numbers. */
export const VERDICT_WORDS: Readonly<Record<TubeSize['verdict'], string>> = {
  holds: 'holds',
  'no-vapour': 'any length',
  pressure: 'too narrow: pressure',
  'coolant-warm': 'water too warm',
  never: 'over 100 m',
  'cannot-be-coiled': 'hard, can’t be wound',
  'does-not-fit': 'too thick',
};

/** The radius that a tube must keep by the way it is bent, m; the tighter one where even that does not do. */
export function bendRadius({ tube, size }: TubeRow): number | null {
  const { byHand, withTool } = tube.minimumBendRadius_m;
  const isByHand = size === null || size.bend === null || size.bend === 'by hand';
  return isByHand ? (byHand ?? withTool) : (withTool ?? byHand);
}

export function packsWords({ packs }: TubeSize, units: UnitSystem): string {
  if (!packs) return '–';
  const { count, length_m, joined } = packs;
  return `${count} × ${formatQuantity(length_m, 'm', units, { hint: 'run', decimals: Number.isInteger(length_m) ? 0 : 1 })}${joined ? ', joined' : ''}`;
}
