/** How much tube, in sentences. */
import type { HardestBoil, LeastWater, Scenario, TubeSize } from '../../../sim/index.ts';
import { formatQuantity, type UnitSystem } from '../../units/index.ts';

const run = (length_m: number, units: UnitSystem): string => formatQuantity(length_m, 'm', units, { hint: 'run' });
const degrees = (temperature_K: number, units: UnitSystem): string => formatQuantity(temperature_K, 'K', units, { decimals: 0 });
const percent = (share: number, units: UnitSystem): string => formatQuantity(share, '1', units, { hint: 'share', decimals: 0 });

export const condenserNoun = ({ condenser }: Pick<Scenario, 'condenser'>): string =>
  condenser.kind === 'coil-in-tub' ? 'coil' : condenser.kind === 'bundle' ? 'bundle' : 'tube';

/** Lengths nearer than this count as the same. */
const SAME_LENGTH = 0.005;

/** The one sentence at the top. */
export function sizeLead(size: TubeSize, { condenser }: Scenario, units: UnitSystem): string {
  const { length_m, lengthWithMargin_m, verdict } = size;
  if (length_m === null || lengthWithMargin_m === null) return noLength(size, condenser.outletLimit_K, units);
  if (verdict === 'no-vapour') return 'Nothing comes over in this run, so any length holds.';
  const each = size.tubes > 1 ? `${size.tubes} tubes of ${run(length_m, units)} each` : `${run(length_m, units)} of this tube`;
  const margin = lengthWithMargin_m / length_m - 1;
  const hold = `${each} hold${size.tubes > 1 || length_m !== 1 ? '' : 's'} the whole run`;
  return margin > SAME_LENGTH ? `${hold}; take ${run(lengthWithMargin_m, units)}, ${percent(margin, units)} more.` : `${hold}.`;
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
export function ownLengthWords({ length_m, lengthWithMargin_m, verdict }: TubeSize, scenario: Scenario, units: UnitSystem): string | null {
  if (length_m === null || lengthWithMargin_m === null || verdict !== 'holds') return null;
  const own = scenario.condenser.length_m;
  const noun = condenserNoun(scenario);
  if (own < length_m - SAME_LENGTH) return `Your ${noun} has ${run(own, units)}: ${run(length_m - own, units)} too short.`;
  if (own < lengthWithMargin_m - SAME_LENGTH) return `Your ${noun} has ${run(own, units)}: it holds, but with less to spare than you want.`;
  return `Your ${noun} has ${run(own, units)}: ${run(own - length_m, units)} more than the least.`;
}

const FAILS: Readonly<Record<NonNullable<HardestBoil['limitedBy']>, string>> = {
  'vapour-escapes': 'vapour leaves the outlet',
  'outlet-warm': 'the distillate leaves too warm',
  pressure: 'the tube holds back too much vapour',
};

export function hardestWords({ setting, power_W, limitedBy, boils }: HardestBoil, { heat, ...scenario }: Scenario, units: UnitSystem): string {
  const power = (value: number) => formatQuantity(value, 'W', units);
  const noun = condenserNoun(scenario);
  if (setting === null || power_W === null) return `This ${noun} does not hold even the gentlest boil: ${limitedBy ? FAILS[limitedBy] : 'it fails'}.`;
  if (limitedBy === null) return `This ${noun} takes even full heat, ${power(heat.ratedPower_W)}.`;
  if (!boils) return `Up to ${power(power_W)} nothing comes over; any boil harder than that is not held.`;
  return `This ${noun} takes up to ${power(power_W)} throughout, ${percent(setting, units)} of full heat; above that ${FAILS[limitedBy]}.`;
}

export function leastWaterWords({ flow_kg_s, used_kg, limitedBy }: LeastWater, scenario: Scenario, units: UnitSystem): string {
  const flow = (value: number) => formatQuantity(value, 'kg/s', units, { hint: 'coolantFlow' });
  if (flow_kg_s === null) return `No flow is enough for this ${condenserNoun(scenario)}: however much runs, ${limitedBy ? FAILS[limitedBy] : 'it fails'}.`;
  if (flow_kg_s === 0) return 'No water need run: what is there lasts.';
  const used = used_kg !== null && used_kg > 0 ? `, ${formatQuantity(used_kg, 'kg', units, { hint: 'water' })} in all` : '';
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

export function packsWords({ packs }: TubeSize, units: UnitSystem): string {
  if (!packs) return '–';
  const { count, length_m, joined } = packs;
  return `${count} × ${formatQuantity(length_m, 'm', units, { hint: 'run', decimals: Number.isInteger(length_m) ? 0 : 1 })}${joined ? ', joined' : ''}`;
}
