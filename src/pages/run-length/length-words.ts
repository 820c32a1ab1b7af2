/** How long to run, in sentences. */
import {
  type EndReason,
  type EnsembleSummary,
  type HeadlineName,
  type NumberBand,
  type ShareReached,
  type StopAdvice,
  type Summary,
  formatDuration,
  formatNumber,
  formatQuantity,
  type UnitSystem,
} from '../../../sim/index.ts';
import type { LengthAnswer } from '../../workers/analysis-tasks.ts';

const clock = (time_s: number): string => formatDuration(time_s);
const percent = (share: number, units: UnitSystem): string =>
  formatQuantity(share, '1', units, { hint: 'share', decimals: 0 });
export const oilVolume = (volume_mL: number, units: UnitSystem): string =>
  formatQuantity(volume_mL * 1e-6, 'm³', units, { hint: 'oilVolume', significant: 2 });
export const money = (amount: number): string => formatNumber(amount, Math.abs(amount) < 10 ? 2 : 1);

/** How near to the whole tube counts as all of it. */
const LAST_BITS = 1e-9;

const shareOf = ({ length }: LengthAnswer, share: number): ShareReached | undefined =>
  length.shares.find((reached) => reached.share === share);

/** The one sentence at the top. */
export function lengthLead(answer: LengthAnswer, units: UnitSystem): string {
  const { obtainable_mL } = answer.length;
  const end = clock(answer.end_s);
  const half = shareOf(answer, 0.5)?.at;
  const most = shareOf(answer, 0.9)?.at;
  if (!(obtainable_mL > 0)) return 'No oil comes over in this run, so there is nothing to wait for.';
  const all = oilVolume(obtainable_mL, units);
  if (!half)
    return `Of the ${all} of oil that this still could give, less than half comes by ${end}, where even a longer run ends.`;
  if (!most)
    return `Half of the ${all} of oil is in by ${clock(half.time_s)}; carried on to ${end}, the run still does not bring nine tenths.`;
  return `Half of the ${all} of oil is in by ${clock(half.time_s)}, nine tenths by ${clock(most.time_s)}.`;
}

const WHY_IT_ENDS: Readonly<Partial<Record<EndReason, string>>> = {
  'pot-dry': ', because the pot runs dry',
  'over-pressure': ', because the pressure gets too high',
  'stop-share': ' by its own stop rule',
  'stop-oil-rate': ' by its own stop rule',
  'stop-distillate': ' by its own stop rule',
};

/** Where the run on the bench really ends, and with how much of the oil; empty where there is no oil to have. */
export function planWords(
  { length }: LengthAnswer,
  { end_s, endReason, oilCollected_mL }: Pick<Summary, 'end_s' | 'endReason' | 'oilCollected_mL'>,
  units: UnitSystem,
): string {
  const { obtainable_mL } = length;
  if (!(obtainable_mL > 0)) return '';
  const ends = `The run on the bench ends after ${clock(end_s)}${WHY_IT_ENDS[endReason] ?? ''}`;
  if (oilCollected_mL === 0) return `${ends}, before any of it is in.`;
  // Rounded down: nearly all is not all.
  const share = Math.min(1, Math.floor((100 * oilCollected_mL) / obtainable_mL) / 100);
  return `${ends}, with ${oilVolume(oilCollected_mL, units)} of it in the receiver, ${percent(share, units)} of what can be had.`;
}

const ruleFails: Readonly<Record<StopAdvice['rule']['kind'], string>> = {
  share: 'So much is never reached, even when the run is carried on.',
  'oil-in-ten-minutes': 'Ten minutes never bring so little, even when the run is carried on.',
  'cost-of-next': 'The next millilitre never costs so much, even when the run is carried on.',
};

export interface AdviceWords {
  readonly says: readonly string[];
  /** What forbids running so long. */
  readonly dangers: readonly string[];
}

/** What the rule says, what it costs to go on, and whether water and cooling last. */
export function adviceWords(advice: StopAdvice, units: UnitSystem): AdviceWords {
  const { stop, minute, costOfNext } = advice;
  const { says, dangers } = lastsWords(advice);
  if (!stop || minute === null) {
    return {
      says: [advice.share > 0 ? ruleFails[advice.rule.kind] : 'No oil comes, so no rule says stop.', ...says],
      dangers,
    };
  }
  // Table and bench round to the nearest minute; a rule is met for sure at the full one after.
  const [at, reached] = [clock(minute * 60), clock(stop.time_s)];
  const said = [
    `Stop at ${at}${at === reached ? '' : ', just after the rule is met'}: ${oilVolume(stop.oil_mL, units)} are in, ${percent(advice.share, units)} of what can be had.`,
  ];
  said.push(`The ten minutes before bring ${oilVolume(advice.lastTenMinutes_mL, units)}.`);
  if (costOfNext !== null && costOfNext > 0)
    said.push(`The next millilitre would cost ${money(costOfNext)} in energy and water.`);
  return { says: [...said, ...says], dangers };
}

function lastsWords({ potLasts, potLow_s, coolingLasts, escapes_s, stop }: StopAdvice): AdviceWords {
  const until = stop ? 'until then' : 'to the end';
  const says: string[] = [];
  const dangers: string[] = [];
  if (potLasts || potLow_s === null) says.push(`The pot’s water lasts ${until}.`);
  else dangers.push(`The pot’s water does not last: it is low at ${clock(potLow_s)}. Fill more, or stop before that.`);
  if (coolingLasts || escapes_s === null) says.push(`The cooling holds ${until}.`);
  else
    dangers.push(
      `The cooling does not hold: vapour escapes from ${clock(escapes_s)} on. Do not run it so: less heat, more water or a longer tube.`,
    );
  return { says, dangers };
}

/** Headline numbers whose spread is told, and what each is called. */
export const TOLD: readonly { readonly name: HeadlineName; readonly title: string }[] = [
  { name: 'oil_mL', title: 'Oil' },
  { name: 't90_s', title: 'Nine tenths of it by' },
  { name: 'firstDrop_s', title: 'First drops' },
  { name: 'hydrosol_kg', title: 'Hydrosol' },
  { name: 'condensingLength_m', title: 'Tube needed to condense' },
  { name: 'distillateWarmest_K', title: 'Warmest distillate' },
  { name: 'coolantUsed_kg', title: 'Cooling water' },
  { name: 'energyFuel_J', title: 'Energy' },
  { name: 'cost', title: 'Energy and water cost' },
];

/** A headline number as people say it. */
export function headlineWords(name: HeadlineName, value: number | null, units: UnitSystem): string {
  switch (name) {
    case 'oil_mL':
      return value === null ? '–' : oilVolume(value, units);
    case 'recovery':
      return formatQuantity(value, '1', units, { hint: 'share' });
    case 'oilLost_kg':
      return formatQuantity(value, 'kg', units, { hint: 'oil' });
    case 'firstDrop_s':
    case 't50_s':
    case 't90_s':
    case 'end_s':
      return formatDuration(value);
    case 'hydrosol_kg':
    case 'coolantUsed_kg':
    case 'escaped_kg':
      return formatQuantity(value, 'kg', units, { hint: 'water' });
    case 'condensingLength_m':
      return formatQuantity(value, 'm', units, { hint: 'run' });
    case 'distillateWarmest_K':
    case 'coolantWarmest_K':
      return formatQuantity(value, 'K', units, { decimals: 0 });
    case 'energyFuel_J':
      return formatQuantity(value, 'J', units);
    case 'cost':
      return value === null ? '–' : money(value);
  }
}

const NONE_AT_ZERO: ReadonlySet<HeadlineName> = new Set([
  'oil_mL',
  'hydrosol_kg',
  'condensingLength_m',
  'coolantUsed_kg',
]);

/** A headline number of the likely runs. A tube that lets vapour out is only known to want more than it has. */
export function bandWords(
  name: HeadlineName,
  { p10, p50, p90 }: Pick<NumberBand, 'p10' | 'p50' | 'p90'>,
  length_m: number,
  units: UnitSystem,
): { readonly middle: string; readonly range: string | null } {
  const said = (value: number | null): string => {
    if (value === 0 && NONE_AT_ZERO.has(name)) return 'none';
    const words = headlineWords(name, value, units);
    return name === 'condensingLength_m' && value !== null && value >= length_m * (1 - LAST_BITS)
      ? `over ${words}`
      : words;
  };
  const [low, middle, high] = [said(p10), said(p50), said(p90)];
  if (low !== high) return { middle, range: `${low} to ${high}` };
  return { middle, range: middle === 'none' ? null : middle === low ? 'in nearly all' : low };
}

/** The spread in one sentence; `null` while there is too little to say. */
export function spreadLead(
  { headline, finished }: EnsembleSummary,
  units: UnitSystem,
  seesMost: boolean,
): string | null {
  const { p10, p90 } = headline.oil_mL;
  const time = headline.t90_s;
  if (finished < 10 || p10 === null || p90 === null || p90 === 0) return null;
  const oil = `In eight runs of ten this still gives ${oilVolume(p10, units)} to ${oilVolume(p90, units)} of oil`;
  if (!seesMost) return `${oil} by its end.`;
  if (time.p10 === null || time.p90 === null) return `${oil}.`;
  const [soonest, latest] = [clock(time.p10), clock(time.p90)];
  return `${oil}, nine tenths of it by ${soonest === latest ? soonest : `${soonest} to ${latest}`}.`;
}
