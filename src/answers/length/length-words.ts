/** How long to run, in sentences. */
import type { EnsembleSummary, HeadlineName, Scenario, ShareReached, StopAdvice } from '../../../sim/index.ts';
import { formatDuration, formatNumber, formatQuantity, type UnitSystem } from '../../units/index.ts';
import type { LengthAnswer } from '../../worker/answers-tasks.ts';

const clock = (time_s: number): string => formatDuration(time_s, { short: true });
const percent = (share: number, units: UnitSystem): string => formatQuantity(share, '1', units, { hint: 'share', decimals: 0 });
export const oilVolume = (volume_mL: number, units: UnitSystem): string => formatQuantity(volume_mL * 1e-6, 'm³', units, { hint: 'oilVolume', significant: 2 });
export const money = (amount: number): string => formatNumber(amount, Math.abs(amount) < 10 ? 2 : 1);

const shareOf = ({ length }: LengthAnswer, share: number): ShareReached | undefined => length.shares.find((reached) => reached.share === share);

/** The one sentence at the top. */
export function lengthLead(answer: LengthAnswer, units: UnitSystem): string {
  const { obtainable_mL } = answer.length;
  const half = shareOf(answer, 0.5)?.at;
  const most = shareOf(answer, 0.9)?.at;
  if (!(obtainable_mL > 0)) return 'No oil comes over in this run, so there is nothing to wait for.';
  const all = oilVolume(obtainable_mL, units);
  if (!half) return `Of the ${all} of oil that this still could give, less than half comes before it stops.`;
  if (!most) return `Half of the ${all} of oil is in by ${clock(half.time_s)}; nine tenths are never reached.`;
  return `Half of the ${all} of oil is in by ${clock(half.time_s)}, nine tenths by ${clock(most.time_s)}.`;
}

/** Whether the plan stops before or long after the oil. */
export function planWords(answer: LengthAnswer, { run }: Scenario, units: UnitSystem): string {
  const { length } = answer;
  const within = length.shares.filter(({ at }) => at !== null && at.time_s <= run.duration_s).at(-1);
  const planned = formatDuration(run.duration_s);
  if (!within) return `The run as planned ends after ${planned}, before half of it is in.`;
  return `The run as planned ends after ${planned}, with ${percent(within.share, units)} or more of it in the receiver.`;
}

const ruleFails: Readonly<Record<StopAdvice['rule']['kind'], string>> = {
  share: 'So much is never reached, even when the run is carried on until the oil has all but stopped.',
  'oil-in-ten-minutes': 'Ten minutes never bring so little, even when the run is carried on.',
  'cost-of-next': 'The next millilitre never costs so much, even when the run is carried on.',
};

/** What the rule says, and what it costs to go on. */
export function adviceWords(advice: StopAdvice, units: UnitSystem): readonly string[] {
  const { stop, minute } = advice;
  if (!stop || minute === null) return [ruleFails[advice.rule.kind], ...lastsWords(advice)];
  const said = [`Stop at ${clock(minute * 60)}: ${oilVolume(stop.oil_mL, units)} are in, ${percent(advice.share, units)} of what can be had.`];
  said.push(`The ten minutes before bring ${oilVolume(advice.lastTenMinutes_mL, units)}.`);
  if (advice.costOfNext !== null) said.push(`The next millilitre would cost ${money(advice.costOfNext)} in energy and water.`);
  return [...said, ...lastsWords(advice)];
}

function lastsWords({ potLasts, potLow_s, coolingLasts, escapes_s, stop }: StopAdvice): readonly string[] {
  const until = stop ? 'until then' : 'to the end';
  const pot = potLasts || potLow_s === null ? `The pot’s water lasts ${until}.` : `The pot’s water does not last: it is low at ${clock(potLow_s)}.`;
  const cooling =
    coolingLasts || escapes_s === null ? `The cooling holds ${until}.` : `The cooling does not hold: vapour escapes from ${clock(escapes_s)} on.`;
  return [pot, cooling];
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
      return formatDuration(value, { short: true });
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

/** The spread in one sentence; `null` while there is too little to say. */
export function spreadLead({ headline, finished }: EnsembleSummary, units: UnitSystem): string | null {
  const { p10, p90 } = headline.oil_mL;
  const time = headline.t90_s;
  if (finished < 10 || p10 === null || p90 === null) return null;
  const oil = `In eight runs of ten this still gives ${oilVolume(p10, units)} to ${oilVolume(p90, units)} of oil`;
  return time.p10 === null || time.p90 === null ? `${oil}.` : `${oil}, nine tenths of it by ${clock(time.p10)} to ${clock(time.p90)}.`;
}
