/** How long to run, in English. */
import type { HeadlineName } from '../../answers/ensemble/ensemble.ts';
import type { BandOrigin, Uncertain, UncertainId } from '../../answers/ensemble/factors.ts';
import type { EnsembleSummary, NumberBand } from '../../answers/ensemble/summary.ts';
import type { RunLength, Spent } from '../../answers/run-length/run-length.ts';
import type { StopAdvice } from '../../answers/run-length/stop-advice.ts';
import type { EndReason, Summary } from '../../run/result.ts';
import type { StopRule } from '../../run/stop-rules.ts';
import type { Quantities } from '../quantities.ts';
import type { Message } from '../section.ts';
import { REASONS, UNCERTAIN } from './doubts.ts';

/** A run that was carried on, and when that ended. */
export interface CarriedOnRun {
  readonly length: RunLength;
  readonly end_s: number;
}

export interface StopAdviceMessage {
  /** The stop first, then what goes with it. */
  readonly sentences: readonly string[];
  /** What forbids running for so long. */
  readonly dangers: readonly Message[];
}

const NO_OIL = 'No oil comes over in this run.';

const WHY_IT_ENDS: Readonly<Record<EndReason, string>> = {
  duration: '',
  'stop-share': ' by its own stop rule',
  'stop-oil-rate': ' by its own stop rule',
  'stop-distillate': ' by its own stop rule',
  'pot-dry': ' because the pot runs dry',
  'over-pressure': ' because the pressure gets too high',
  'non-finite': ' because the calculation failed',
};

const RULE_NEVER_MET: Readonly<Record<StopRule['kind'], string>> = {
  share: 'This run never reaches that share, even when it is run on.',
  'oil-in-ten-minutes': 'Every ten minutes of this run bring more than that, even when it is run on.',
  'cost-of-next': 'The next millilitre always costs less than that, even when this run is run on.',
};

const HEADLINES: Readonly<Record<HeadlineName, string>> = {
  oil_mL: 'Oil',
  recovery: 'Share of the oil in the charge',
  oilDissolved_kg: 'Oil dissolved in the hydrosol',
  oilHaze_kg: 'Oil that makes the hydrosol cloudy (haze)',
  oilEscaped_kg: 'Oil lost as vapour',
  firstDrop_s: 'First drop',
  t50_s: 'Half of it by',
  t90_s: '90 % of it by',
  end_s: 'End of the run',
  hydrosol_kg: 'Hydrosol',
  condensingLength_m: 'Tube needed to condense',
  distillateWarmest_K: 'Warmest distillate',
  coolantWarmest_K: 'Warmest cooling water',
  escaped_kg: 'Lost as vapour',
  coolantUsed_kg: 'Cooling water',
  energyFuel_J: 'Energy',
  cost: 'Energy and water cost',
};

const ORIGINS: Readonly<Record<BandOrigin, (doubt: Pick<Uncertain, 'id' | 'source'>) => string>> = {
  library: ({ source }) => `library, low and high taken as 5th and 95th percentile: ${source}`,
  judgement: ({ id }) => `judgement: ${REASONS[id]}`,
  assumption: ({ id }) => `assumption: ${REASONS[id]}`,
  'published-range': ({ id }) => REASONS[id],
  fit: () => 'fit to logged readings, 90 % interval',
  stated: () => 'as you stated it',
};

/** Amounts of which zero is none. */
const NONE_AT_ZERO: ReadonlySet<HeadlineName> = new Set([
  'oil_mL',
  'hydrosol_kg',
  'condensingLength_m',
  'coolantUsed_kg',
]);

/** Fewer runs say too little of a spread. */
const LEAST_RUNS = 10;
/** How near to the whole tube counts as all of it. */
const LAST_BITS = 1e-9;

const spentAtShare = ({ length }: CarriedOnRun, share: number): Spent | null =>
  length.shares.find((reached) => reached.share === share)?.at ?? null;

export function runLength(q: Quantities) {
  const oil = (volume_mL: number | null): string => q.stored(volume_mL, 'mL', 'oilVolume', { significant: 2 });
  const share = (value: number): string => q.share(value, { decimals: 0 });

  /** Whether the pot's water and the cooling are enough until the stop, or to the end. */
  function lasts({ potLasts, potLow_s, coolingLasts, escapes_s, stop }: StopAdvice): StopAdviceMessage {
    const until = stop === null ? 'to the end' : 'until then';
    const sentences: string[] = [];
    const dangers: Message[] = [];
    if (potLasts || potLow_s === null) sentences.push(`The pot has enough water ${until}.`);
    else
      dangers.push({
        sentence: `The pot’s water runs low at ${q.time(potLow_s)}. A pot that runs dry burns the plant and can be ruined.`,
        advice: 'Fill in more water, or stop before that.',
      });
    if (coolingLasts || escapes_s === null) sentences.push(`All the steam condenses ${until}.`);
    else
      dangers.push({
        sentence: `Steam escapes from ${q.time(escapes_s)}. It scalds, and oil is lost.`,
        advice: 'Use less heat, more cooling water or a longer tube.',
      });
    return { sentences, dangers };
  }

  function headlineValue(name: HeadlineName, value: number | null): string {
    switch (name) {
      case 'oil_mL':
        return oil(value);
      case 'recovery':
        return q.share(value);
      case 'oilDissolved_kg':
      case 'oilHaze_kg':
      case 'oilEscaped_kg':
        return q.oilMass(value);
      case 'firstDrop_s':
      case 't50_s':
      case 't90_s':
      case 'end_s':
        return q.time(value);
      case 'hydrosol_kg':
      case 'coolantUsed_kg':
      case 'escaped_kg':
        return q.water(value);
      case 'condensingLength_m':
        return q.tubeLength(value);
      case 'distillateWarmest_K':
      case 'coolantWarmest_K':
        return q.temperature(value);
      case 'energyFuel_J':
        return q.energy(value);
      case 'cost':
        return q.cost(value);
    }
  }

  return {
    oil,

    /** When half and 90 % of the oil that can come are collected. */
    lead(run: CarriedOnRun): string {
      const { obtainable_mL } = run.length;
      if (!(obtainable_mL > 0)) return NO_OIL;
      const all = oil(obtainable_mL);
      const half = spentAtShare(run, 0.5);
      const most = spentAtShare(run, 0.9);
      if (half === null)
        return `Even a run to ${q.time(run.end_s)} collects less than half of the ${all} of oil that can come.`;
      const halfBy = `Half of the ${all} of oil that can come is collected by ${q.time(half.time_s)}`;
      return most === null
        ? `${halfBy}. Even a run to ${q.time(run.end_s)} does not reach 90 %.`
        : `${halfBy}, 90 % by ${q.time(most.time_s)}.`;
    },

    /** Where the planned run really ends, and with how much of the oil; `null` where there is no oil to have. */
    plan(
      { length }: CarriedOnRun,
      { end_s, endReason, oilCollected_mL }: Pick<Summary, 'end_s' | 'endReason' | 'oilCollected_mL'>,
    ): string | null {
      const { obtainable_mL } = length;
      if (!(obtainable_mL > 0)) return null;
      const ends = `The planned run ends at ${q.time(end_s)}${WHY_IT_ENDS[endReason]}`;
      if (oilCollected_mL === 0) return `${ends}, before any oil is collected.`;
      // Rounded down: nearly all is not all.
      const part = Math.min(1, Math.floor((100 * oilCollected_mL) / obtainable_mL) / 100);
      return `${ends}, with ${oil(oilCollected_mL)} collected: ${share(part)} of the oil that can come.`;
    },

    /** What the rule says, what it costs to go on, and whether water and cooling are enough. */
    stop(advice: StopAdvice): StopAdviceMessage {
      const { stop, minute, costOfNext } = advice;
      const { sentences, dangers } = lasts(advice);
      if (stop === null || minute === null)
        return { sentences: [advice.share > 0 ? RULE_NEVER_MET[advice.rule.kind] : NO_OIL, ...sentences], dangers };
      // Times are rounded to the nearest minute; a rule is met for sure at the full one after.
      const [at, reached] = [q.time(minute * 60), q.time(stop.time_s)];
      const after = at === reached ? '' : ', the first full minute after your rule is met';
      const next =
        costOfNext !== null && costOfNext > 0
          ? [`The next millilitre costs ${q.cost(costOfNext)} in energy and water.`]
          : [];
      return {
        sentences: [
          `Stop at ${at}${after}: ${oil(stop.oil_mL)} is collected, ${share(advice.share)} of the oil that can come.`,
          `The ten minutes before bring ${oil(advice.lastTenMinutes_mL)}.`,
          ...next,
          ...sentences,
        ],
        dangers,
      };
    },

    headline: (name: HeadlineName): string => HEADLINES[name],
    headlineValue,

    /** A headline number of the likely runs. A tube that lets vapour out is only known to need more than it has. */
    band(
      name: HeadlineName,
      { p10, p50, p90 }: Pick<NumberBand, 'p10' | 'p50' | 'p90'>,
      length_m: number,
    ): { readonly middle: string; readonly range: string | null } {
      const end = (value: number | null): string => {
        if (value === 0 && NONE_AT_ZERO.has(name)) return 'none';
        const written = headlineValue(name, value);
        const isWhole = name === 'condensingLength_m' && value !== null && value >= length_m * (1 - LAST_BITS);
        return isWhole ? `over ${written}` : written;
      };
      const [low, middle, high] = [end(p10), end(p50), end(p90)];
      if (low !== high) return { middle, range: `${low} to ${high}` };
      return { middle, range: middle === 'none' ? null : middle === low ? 'in nearly all runs' : low };
    },

    /**
     * The spread in one sentence; `null` while there is too little to tell.
     * @param seesMost whether the run goes on until most of its oil is collected, so that a time to 90 % means something
     */
    spread({ headline, finished }: EnsembleSummary, seesMost: boolean): string | null {
      const { p10, p90 } = headline.oil_mL;
      const time = headline.t90_s;
      if (finished < LEAST_RUNS || p10 === null || p90 === null || p90 === 0) return null;
      const gives = `8 of 10 runs give ${oil(p10)} to ${oil(p90)} of oil`;
      if (!seesMost) return `${gives} by their end.`;
      if (time.p10 === null || time.p90 === null) return `${gives}.`;
      const [soonest, latest] = [q.time(time.p10), q.time(time.p90)];
      return `${gives}, 90 % of it by ${soonest === latest ? soonest : `${soonest} to ${latest}`}.`;
    },

    uncertain: (id: UncertainId): string => UNCERTAIN[id],
    origin: (doubt: Pick<Uncertain, 'id' | 'origin' | 'source'>): string => ORIGINS[doubt.origin](doubt),
  };
}
