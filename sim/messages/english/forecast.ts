/** What is forecast of a run that is under way, in English. */
import type { Forecast, JudgedReading, Likely, LikelyTime } from '../../answers/forecast/forecast.ts';
import type { SeenKind } from '../../answers/forecast/forecast-readings.ts';
import type { StopRule } from '../../run/stop-rules.ts';
import type { Quantities } from '../quantities.ts';
import type { Message } from '../section.ts';

export interface ForecastLine {
  readonly id: 'firstDrop' | 'oil' | 't90' | 'stop' | 'water' | 'tub';
  readonly name: string;
  readonly value: string;
  /** Where 8 of 10 likely runs lie; `null` where it cannot be told. */
  readonly range: string | null;
}

const READ: Readonly<Record<SeenKind, { readonly name: string; readonly check: string }>> = {
  oil_mL: { name: 'oil', check: 'Is it all the oil since the start, without water? Is the unit right?' },
  oil_kg: { name: 'oil', check: 'Is it all the oil since the start, without the jar? Is the unit right?' },
  outlet_K: { name: 'outlet', check: 'Is the outlet thermometer in the stream?' },
  tub_K: { name: 'tub', check: 'Stir the tub and read again. Is the tap set as planned?' },
  distillate_kg: { name: 'distillate', check: 'Is it all the distillate since the start, oil and water?' },
  firstDrop_s: { name: 'first drop', check: 'Was the heat on from the start, and the lid closed?' },
  potWater_kg: { name: 'water left in the pot', check: 'Read the gauge again, or is steam leaking?' },
};

const RULES: Readonly<Record<StopRule['kind'], string>> = {
  share: 'Stop, by your share',
  'oil-in-ten-minutes': 'Stop, by your oil in ten minutes',
  'cost-of-next': 'Stop, by the cost of the next mL',
};

/** A difference smaller than this share of the plan, or than this, mL, is none. */
const AS_PLANNED = { share: 0.05, least_mL: 0.2 } as const;
/** Share of likely runs from which it is worth a word that the pot runs low. */
const WORTH_A_WORD = 0.1;

export function forecast(q: Quantities) {
  const oil = (value_mL: number): string => q.stored(value_mL, 'mL', 'oilVolume', { significant: 2 });
  const between = (likely: Likely, say: (value: number) => string): string => {
    const [low, high] = [say(likely.low), say(likely.high)];
    return low === high ? low : `${low} to ${high}`;
  };
  const reading = (kind: SeenKind, value: number): string => {
    switch (kind) {
      case 'oil_mL':
        return q.stored(value, 'mL', 'oilVolume');
      case 'oil_kg':
        return q.oilMass(value);
      case 'outlet_K':
      case 'tub_K':
        return q.temperature(value);
      case 'firstDrop_s':
        return q.time(value);
      case 'distillate_kg':
      case 'potWater_kg':
        return q.water(value);
    }
  };

  /** How far the oil is from the plan, where anything was read of it. */
  function beside({ oilNow_mL, plannedNow_mL, oilAtEnd_mL, plannedAtEnd_mL, readings }: Forecast): string {
    if (readings.length === 0) return 'Nothing is read yet: this is the plan.';
    const started = oilNow_mL.middle > 0 || plannedNow_mL > 0;
    const [middle, planned] = started ? [oilNow_mL.middle, plannedNow_mL] : [oilAtEnd_mL.middle, plannedAtEnd_mL];
    const off = middle - planned;
    if (Math.abs(off) < Math.max(AS_PLANNED.least_mL, AS_PLANNED.share * planned)) return 'As planned so far.';
    return `${oil(Math.abs(off))} ${off < 0 ? 'behind' : 'ahead of'} the plan.`;
  }

  const time = ({ at_s, share }: LikelyTime): Pick<ForecastLine, 'value' | 'range'> =>
    at_s === null
      ? {
          value: share < WORTH_A_WORD ? 'not in this run' : `in ${q.share(share, { decimals: 0 })} of the likely runs`,
          range: null,
        }
      : { value: q.time(at_s.middle), range: between(at_s, q.time) };
  const amount = (likely: Likely, say: (value: number) => string): Pick<ForecastLine, 'value' | 'range'> => ({
    value: say(likely.middle),
    range: between(likely, say),
  });

  return {
    /** How the run stands beside its plan, and when most of the oil is in. */
    lead(facts: Forecast): string {
      const { at_s } = facts.t90_s;
      const most =
        at_s === null
          ? '90 % of the oil is not reached in this run.'
          : `90 % of the oil by ${q.time(at_s.middle)} (${between(at_s, q.time)}).`;
      return `${beside(facts)} ${most}`;
    },

    lines: (facts: Forecast): readonly ForecastLine[] => [
      ...(facts.readings.some(({ kind }) => kind === 'firstDrop_s')
        ? []
        : [{ id: 'firstDrop' as const, name: 'First drop', ...time(facts.firstDrop_s) }]),
      { id: 'oil', name: `Oil at ${q.time(facts.end_s)}`, ...amount(facts.oilAtEnd_mL, oil) },
      { id: 't90', name: '90 % of the oil', ...time(facts.t90_s) },
      { id: 'stop', name: RULES[facts.rule.kind], ...time(facts.stop_s) },
      {
        id: 'water',
        name: `Water in the pot at ${q.time(facts.end_s)}`,
        ...amount(facts.potWaterAtEnd_kg, (value) => q.water(value)),
      },
      {
        id: 'tub',
        name: `Tub at ${q.time(facts.end_s)}`,
        ...amount(facts.tubAtEnd_K, (value) => q.temperature(value)),
      },
    ],

    /** What can go wrong before the end. */
    dangers({ potLow_s }: Forecast): readonly Message[] {
      const { share, at_s } = potLow_s;
      if (share < WORTH_A_WORD) return [];
      const runs = `${q.number(10 * share, { decimals: 0 })} of 10 likely runs`;
      return [
        {
          sentence: `The pot’s water runs low before the end in ${runs}${at_s === null ? '' : `, at about ${q.time(at_s.middle)}`}.`,
          advice: 'Look at the water often. A pot that runs dry burns the plant and can be ruined.',
        },
      ];
    },

    /** A reading that speaks against the model or against the others; `null` where it fits. */
    doubted({ kind, value, time_s, predicted, fits }: JudgedReading): Message | null {
      if (fits === 'yes') return null;
      const { name, check } = READ[kind];
      const said =
        kind === 'firstDrop_s'
          ? `a ${name} at ${q.time(value)}`
          : `${reading(kind, value)} (${name}) at ${q.time(time_s)}`;
      const expects = predicted === null ? 'nothing yet' : between(predicted, (each) => reading(kind, each));
      return fits === 'impossible'
        ? {
            sentence: `Nothing the model allows gives ${said}: it expects ${expects}. The forecast leaves it out.`,
            advice: check,
          }
        : { sentence: `The other readings speak against ${said}: they point to ${expects}.`, advice: check };
    },

    /** How the numbers are to be taken. */
    ranges: ({ members }: Forecast): string =>
      `Of ${members} likely runs, weighed by what you read: the typical one, and the range in which 8 of 10 lie.`,
    watch: 'This is a calculation. Watch the still, not the screen.',
  };
}
