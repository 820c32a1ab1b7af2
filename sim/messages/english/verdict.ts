/** The verdict on a run, in English. */
import type { CondenserKind, EndReason, Summary } from '../../run/result.ts';
import type { ConclusionKind, ConclusionValues, EnoughLength } from '../../answers/verdict/conclusion.ts';
import type { Suggestion } from '../../answers/verdict/suggestion.ts';
import { THIN_SPACE } from '../../units/index.ts';
import type { Quantities } from '../quantities.ts';
import { AFTER_DRY, AFTER_PRESSURE, VARIABLES } from './events.ts';

interface ConclusionSaid<K extends ConclusionKind> {
  readonly values: ConclusionValues[K];
  readonly time_s: number | null;
}

interface ConclusionWords<K extends ConclusionKind> {
  readonly sentence: (said: ConclusionSaid<K>) => string;
  /** What to do, where there is something to do. */
  readonly advice?: (said: ConclusionSaid<K>) => string;
  /** The same in few words, for those that stand in the head line. */
  readonly brief?: (said: ConclusionSaid<K>) => string;
}

const CONDENSER: Readonly<Record<CondenserKind, string>> = {
  'coil-in-tub': 'coil',
  'jacketed-tube': 'condenser',
  bundle: 'tube bundle',
};

/** Less than this, m, is no reserve. */
const NO_RESERVE = 0.005;

const noLength = (because: EnoughLength['because']): string => {
  if (because === 'coolant-warm' || because === 'coolant-boils')
    return 'No length is enough: it needs more cooling water.';
  if (because === 'pressure') return 'No length is enough: the tube is too narrow for this heat.';
  return 'No length is enough: it needs more cooling water or less heat.';
};

function failsSentence({ values, time_s }: ConclusionSaid<'condenser-fails'>, q: Quantities): string {
  const { condenser, length_m, enough } = values;
  const name = CONDENSER[condenser];
  const escapes = `steam escapes from the outlet from ${q.time(time_s)}.`;
  if (enough === null) return `The ${name} does not condense everything: ${escapes}`;
  if (enough.length_m === null)
    return `The ${name} does not condense everything: ${escapes} ${noLength(enough.because)}`;
  const short = q.tubeLength(Math.max(enough.length_m - length_m, 0));
  return `The ${name} is too short by ${short}: ${escapes} ${q.tubeLength(enough.length_m)} is enough.`;
}

/** A share that is not the whole is not said to be. */
const shareCaught = (share: number, q: Quantities): string => {
  const said = q.share(share, { decimals: 0 });
  return share < 1 && said === q.share(1, { decimals: 0 }) ? `more than 99${THIN_SPACE}%` : said;
};

const END_REASONS: Readonly<Record<EndReason, string>> = {
  duration: '',
  'stop-share': ', when your share of the oil is collected',
  'stop-oil-rate': ', when oil comes more slowly than your limit',
  'stop-distillate': ', when your amount of distillate is collected',
  'pot-dry': ', because the pot is dry',
  'over-pressure': ', because the pressure is too high',
  'non-finite': ', because the calculation failed',
};

function coolingSentence({ values }: ConclusionSaid<'cooling-water'>, q: Quantities): string {
  const warmest = q.temperature(values.peak_K);
  switch (values.supply) {
    case 'tap':
      return `Cooling takes ${q.water(values.used_kg)} of tap water. It leaves at up to ${warmest}.`;
    case 'tub':
      return `No tap water runs. The tub warms to ${warmest}.`;
    case 'barrel':
      return `No tap water runs. The barrel warms to ${warmest}.`;
    case 'none':
      return 'No cooling water runs.';
  }
}

const TWO_DIGITS = { significant: 2 } as const;

/** No finer than a guessed drop size allows, s. */
const toHalfHours = (time_s: number): number => Math.max(1, Math.round(time_s / 1800)) * 1800;

const MOST_OF_IT = 0.9;

interface SoFar {
  /** The worst that has happened, in a sentence. */
  readonly worst: string | null;
  readonly oil_kg: number;
  readonly density_kg_m3: number | null;
  readonly time_s: number;
}

interface SuggestionSeen {
  readonly before: Summary;
  readonly after: Summary;
  /** What is then wrong, in a sentence. */
  readonly ends: string | null;
}

export function verdict(q: Quantities) {
  const length = (value_m: number): string => q.tubeLength(value_m, TWO_DIGITS);
  const conclusions: { readonly [K in ConclusionKind]: ConclusionWords<K> } = {
    'run-failed': {
      sentence: ({ values, time_s }) =>
        `The calculation failed at ${q.time(time_s)} (${VARIABLES[values.variable]}). There is no result.`,
      advice: () => 'Undo the last change, or choose a shorter time step. Save the file if you want to report it.',
    },
    'ran-dry': {
      sentence: ({ values, time_s }) => `The ${values.vessel} runs dry at ${q.time(time_s)}. The run stops there.`,
      advice: () => AFTER_DRY,
    },
    'too-much-pressure': {
      sentence: ({ values, time_s }) =>
        `At ${q.time(time_s)} the pressure in the pot passes ${q.pressure(values.limit_Pa)} above the air. The run stops there.`,
      advice: () => AFTER_PRESSURE,
    },
    'overflow-scalds': {
      sentence: ({ values }) => `The cooling water runs off at up to ${q.temperature(values.peak_K)}: it scalds.`,
      advice: () => 'Turn up the tap or turn down the heat. Lead the water where nobody can touch it.',
    },
    'overflow-warm': {
      sentence: ({ values: { peak_K, condenses } }) => {
        const scalds = `${q.temperature(peak_K)}: it scalds in minutes, a child sooner.`;
        return condenses === null
          ? `The cooling water runs off at up to ${scalds}`
          : `The ${CONDENSER[condenses.condenser]} condenses everything in ${length(condenses.peak_m)} of its ${length(condenses.length_m)}, but the cooling water runs off at up to ${scalds}`;
      },
      advice: () => 'Turn up the tap a little, or lead the water where nobody can touch it.',
    },
    'little-oil': {
      sentence: ({ values }) =>
        `Only ${q.share(values.recovery, { decimals: 0 })} of the oil in the plant is collected: ${q.oil(values.oil_kg, values.density_kg_m3)}.`,
      advice: () => 'Turn up the heat, fill in less water, or run longer.',
    },
    'coil-too-deep': {
      sentence: ({ values }) =>
        `The coil does not fit the tub: it needs ${q.size(values.needs_m)} of water, and the tub has ${q.size(values.has_m)}.`,
      advice: () => 'Use a shorter tube, a wider coil or a deeper tub.',
    },
    'coil-too-wide': {
      sentence: ({ values }) =>
        `The coil does not fit the tub: it is ${q.size(values.needs_m)} wide, and the tub is ${q.size(values.has_m)}.`,
      advice: () => 'Use a narrower coil or a wider tub.',
    },
    'never-boils': {
      sentence: ({ values }) => `The pot does not boil in ${q.time(values.duration_s)}: nothing comes over.`,
      advice: () => 'Turn up the heat, fill in less water, or run longer.',
    },
    'never-drips': {
      sentence: ({ values }) =>
        `The pot boils from ${q.time(values.firstBoil_s)}, but nothing drips from the outlet before the end.`,
      advice: () => 'Turn up the heat, or run longer.',
    },
    'condenser-fails': {
      sentence: (said) => failsSentence(said, q),
      advice: () => 'It scalds, and oil is lost. Use less heat, more cooling water or a longer tube.',
    },
    'condenser-scant': {
      sentence: ({ values: { condenser, reserve_m } }) =>
        `The ${CONDENSER[condenser]} condenses everything, with ${
          reserve_m < NO_RESERVE ? 'no reserve' : `only ${q.tubeLength(reserve_m)} in reserve`
        }.`,
      advice: () => 'Warmer tap water or scale in the tube would let steam through. Add length or turn down the heat.',
    },
    'condenser-enough': {
      sentence: ({ values: { condenser, peak_m, length_m } }) =>
        `The ${CONDENSER[condenser]} condenses everything in the first ${length(peak_m)} of its ${length(length_m)}, even in its busiest half minute. The rest cools the distillate.`,
    },
    'distillate-warm': {
      sentence: ({ values }) => {
        const [peak, limit] = q.apart('temperature', values.peak_K, values.limit_K);
        return `The distillate comes out at up to ${peak}. Your limit is ${limit}.`;
      },
      advice: () => 'Use more cooling water, a longer tube or less heat.',
    },
    'distillate-cool': {
      sentence: ({ values }) => `The distillate comes out at ${q.temperature(values.peak_K)} at most.`,
    },
    'first-drop': {
      sentence: ({ time_s }) => `The first drop falls at ${q.time(time_s)}.`,
      brief: ({ time_s }) => `first drop at ${q.time(time_s)}`,
    },
    'no-oil': { sentence: () => 'No oil comes over in this run.' },
    'most-oil': {
      sentence: ({ values, time_s }) => `${q.share(values.share)} of this run’s oil is collected by ${q.time(time_s)}.`,
      brief: ({ values, time_s }) =>
        `${q.share(values.share)} of ${q.oil(values.oil_kg, values.density_kg_m3)} of oil by ${q.time(time_s)}`,
    },
    products: {
      sentence: ({ values }) => {
        const oil = q.oil(values.oil_kg, values.density_kg_m3);
        const share = values.recovery === null ? '' : `, ${q.share(values.recovery)} of what the plant holds`;
        return `In the end you have ${oil} of oil${share}, and ${q.water(values.hydrosol_kg)} of hydrosol.`;
      },
    },
    'cooling-water': {
      sentence: (said) => coolingSentence(said, q),
      brief: ({ values }) => `${q.water(values.used_kg)} of cooling water`,
    },
    'separator-catches': {
      sentence: ({ values }) =>
        `Over the whole run the separator catches ${shareCaught(values.share, q)} of the oil drops. ${q.oil(values.dissolved_kg, values.density_kg_m3)} of oil stays dissolved in the hydrosol.`,
    },
    'cloudy-hydrosol': {
      sentence: ({ values }) => {
        const { haze_kg, density_kg_m3, depth_m, clears_s, sinks } = values;
        const cloudy = `Another ${q.oil(haze_kg, density_kg_m3)} hangs in it as fine drops and makes it cloudy (haze).`;
        if (clears_s === null) return `${cloudy} Standing hardly clears it.`;
        return `${cloudy} Left to stand ${q.size(depth_m, { significant: 1 })} deep, nine tenths of that ${sinks ? 'sinks' : 'rises'} out in about ${q.time(toHalfHours(clears_s))}.`;
      },
    },
    'run-length': {
      sentence: ({ values }) => `The run ends at ${q.time(values.duration_s)}${END_REASONS[values.reason]}.`,
    },
    energy: {
      sentence: ({ values }) => {
        const prices = values.pricesAreDefault ? 'at default prices' : 'at the prices in the settings';
        const cost = values.cost > 0 ? ` With the water that costs ${q.cost(values.cost)} ${prices}.` : '';
        return `The run takes ${q.energy(values.fuel_J)} of heat from the source.${cost}`;
      },
    },
    'pot-water': { sentence: ({ values }) => `${q.water(values.water_kg)} of water is left in the ${values.vessel}.` },
  };
  /** While a run plays: nothing of what is still to come. */
  const soFar = ({ worst, oil_kg, density_kg_m3, time_s }: SoFar): string => {
    if (worst !== null) return `So far: ${worst}`;
    return oil_kg > 0
      ? `So far all is well: ${q.oil(oil_kg, density_kg_m3)} of oil in ${q.time(time_s)}.`
      : 'So far all is well. No oil has come over yet.';
  };
  const suggestion = {
    /** On the button: what to set against a fault. */
    remedy: (wish: Suggestion): string => {
      switch (wish.kind) {
        case 'heat':
          return `Set the heat to ${q.share(wish.setting)}`;
        case 'tap':
          return `Set the water to ${q.waterFlow(wish.flow_kg_s)}`;
        case 'length':
          return `Make it ${q.tubeLength(wish.length_m)} long`;
        case 'charge':
          return `Load ${q.mass(wish.mass_kg)}`;
      }
    },
    /** On the button: what one may wonder about where all is well. */
    question: (wish: Suggestion): string => {
      switch (wish.kind) {
        case 'heat':
          return `What if the heat is at ${q.share(wish.setting)}?`;
        case 'tap':
          return `What if only ${q.waterFlow(wish.flow_kg_s)} of water runs?`;
        case 'length':
          return `What if the tube is ${q.tubeLength(wish.length_m)} long?`;
        case 'charge':
          return `What if you load ${q.mass(wish.mass_kg)}?`;
      }
    },
    /** What the model saw: the oil and when most of it is in, and the worst that then is wrong. */
    sees: ({ before, after, ends }: SuggestionSeen): string => {
      const oil = q.oil(after.oilCollected_kg, after.oilDensity_kg_m3);
      const was = q.oil(before.oilCollected_kg, before.oilDensity_kg_m3);
      const most = after.t90_s === null ? '' : `, ${q.share(MOST_OF_IT)} of it by ${q.time(after.t90_s)}`;
      const got = `The model gets ${oil} of oil (now ${was})${most}.`;
      return ends === null ? got : `${got} But: ${ends}`;
    },
  };
  return { conclusions, soFar, suggestion };
}
