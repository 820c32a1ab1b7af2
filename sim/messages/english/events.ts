/** The events of a run, in English. */
import { isCoil } from '../../geometry/condenser-kind.ts';
import type { EventKind, EventValues, StateVariable } from '../../run/result.ts';
import type { Quantities } from '../quantities.ts';

interface EventSaid<K extends EventKind> {
  readonly values: EventValues[K];
  readonly time_s: number;
}

interface EventWords<K extends EventKind> {
  /** One to three words, to stand on a time line beside the time. */
  readonly flag: string;
  /** What is the matter, when, with its number, and whom it hurts. */
  readonly sentence: (said: EventSaid<K>) => string;
  /** What to do. */
  readonly advice: (said: EventSaid<K>) => string;
}

const SHUT_DOWN = 'Turn the heat off first, then the water. Leave the outlet open while the still cools.';

export const AFTER_DRY = 'Turn the heat off, and let it cool before you open it. Fill in more water next time.';
export const AFTER_PRESSURE =
  'Turn the heat off and stand back. Never run a still as narrow as this: use a wider tube and neck.';

/** A share of the vapour from here on is worth its number. */
const TOLD_SHARE = 0.01;

const weightBesideWater = (difference_kg_m3: number, water_kg_m3: number, q: Quantities): string =>
  `${q.share(Math.abs(difference_kg_m3) / water_kg_m3, { significant: 1 })} ${difference_kg_m3 > 0 ? 'lighter' : 'heavier'}`;

function stopSentence({ values, time_s }: EventSaid<'stop-rule'>, q: Quantities): string {
  const at = q.time(time_s);
  switch (values.rule) {
    case 'stop-share':
      return `At ${at}, ${q.share(values.limit)} of the oil in the charge is collected, as you asked. The run stops.`;
    case 'stop-distillate':
      return `At ${at}, ${q.water(values.limit_kg)} of distillate is collected, as you asked. The run stops.`;
    case 'stop-oil-rate':
      return `The run stops at ${at}: oil comes more slowly than the ${q.oilFlow(values.limit_kg_s)} you set.`;
  }
}

/** What of the still could not be calculated any more, within a sentence. */
export const VARIABLES: Readonly<Record<StateVariable, string>> = {
  'heat-source': 'heat source',
  'charge-oil': 'oil in the charge',
  'coolant-temperature': 'temperature of the cooling water',
  'separator-temperature': 'temperature in the separator',
  'distillate-temperature': 'temperature of the distillate',
  'lid-temperature': 'temperature of the lid',
  'neck-temperature': 'temperature of the neck',
  'bed-temperature': 'temperature of the charge',
  'pot-water': 'water in the pot',
  'pot-temperature': 'temperature of the pot',
  vapour: 'vapour in the still',
};

type HotWater = EventSaid<'tub-warm' | 'tub-hot'>;

function hotWater({ values, time_s }: HotWater, q: Quantities): string {
  const [at, water] = [q.time(time_s), q.temperature(values.water_K)];
  return isCoil({ kind: values.condenser })
    ? `At ${at} the water at the top of the tub reaches ${water}.`
    : `At ${at} the cooling water leaves at ${water}.`;
}

const coolIt = ({ values }: HotWater): string =>
  isCoil({ kind: values.condenser })
    ? 'Keep hands and children away. Let in more cold water, or add ice.'
    : 'Keep hands and children away. Use more cold water.';

export function events(q: Quantities) {
  const told: { readonly [K in EventKind]: EventWords<K> } = {
    'first-boil': {
      flag: 'boils',
      sentence: ({ values, time_s }) =>
        `The pot boils at ${q.time(time_s)}, at ${q.temperature(values.boilingPoint_K)}.`,
      advice: () => 'Turn the heat to the setting for the run. Stay with the still.',
    },
    'front-through': {
      flag: 'steam through',
      sentence: ({ time_s }) => `Steam has come through the whole charge at ${q.time(time_s)}.`,
      advice: () => 'Oil starts now. Put the receiver in place.',
    },
    'first-drop': {
      flag: 'first drop',
      sentence: ({ time_s }) => `The first drop falls at ${q.time(time_s)}.`,
      advice: () => 'Keep the outlet open to the air.',
    },
    'tub-warm': {
      flag: 'cooling water warm',
      sentence: (said) => `${hotWater(said, q)} It scalds in minutes, a child sooner.`,
      advice: coolIt,
    },
    'tub-hot': { flag: 'cooling water hot', sentence: (said) => `${hotWater(said, q)} It scalds.`, advice: coolIt },
    'vapour-escapes': {
      flag: 'steam escapes',
      sentence: ({ values, time_s }) => {
        const share = values.share > TOLD_SHARE ? ` (${q.share(values.share)} of it at first)` : '';
        return `Steam escapes from the outlet from ${q.time(time_s)}${share}. It scalds, and oil is lost.`;
      },
      advice: () => 'Turn the heat down or the cooling water up at once. Keep flames and faces away from the outlet.',
    },
    'vapour-held-again': {
      flag: 'all condensed',
      sentence: ({ time_s }) => `From ${q.time(time_s)} the condenser condenses everything again.`,
      advice: () => 'Keep watching the outlet.',
    },
    'outlet-warm': {
      flag: 'distillate warm',
      sentence: ({ values, time_s }) => {
        const [now, limit] = q.apart('temperature', values.distillate_K, values.limit_K);
        return `At ${q.time(time_s)} the distillate comes out at ${now}. Your limit is ${limit}.`;
      },
      advice: () => 'Use more cooling water, a longer tube or less heat.',
    },
    'cooling-boils': {
      flag: 'cooling water boils',
      sentence: ({ values, time_s }) =>
        `At ${q.time(time_s)} the cooling water reaches ${q.temperature(values.water_K)}: it is about to boil. It spits and scalds.`,
      advice: () => 'Turn the heat off. Then let cold water in slowly, and stand clear of the steam.',
    },
    'oil-freezes': {
      flag: 'oil freezes',
      sentence: ({ values, time_s }) => {
        const [wall, freezes] = q.apart('temperature', values.wall_K, values.freezes_K);
        return `From ${q.time(time_s)} oil can freeze and clog the end of the tube: the wall there is at ${wall}, and this oil crystallises below ${freezes}.`;
      },
      advice: () =>
        'Let the cooling water run warmer, or lay a warm, wet cloth on the end of the tube. If it stops dripping, turn the heat off: a clogged still builds up pressure.',
    },
    'coil-uncovered': {
      flag: 'coil uncovered',
      sentence: ({ values, time_s }) =>
        `At ${q.time(time_s)} the tub holds ${q.size(values.depth_m)} of water, and the top turns of the coil stand above it. They do not cool.`,
      advice: () => 'Fill the tub up.',
    },
    'separator-overrun': {
      flag: 'separator overrun',
      sentence: ({ values, time_s }) =>
        `At ${q.time(time_s)} the separator catches ${q.share(values.captureShare)} of the oil drops. The finer ones leave with the water, which turns cloudy (haze).`,
      advice: () => 'Use a wider separator or less heat. Or let the water stand, and return it to the pot.',
    },
    'oil-at-inlet': {
      flag: 'oil at inlet',
      sentence: ({ values, time_s }) =>
        `At ${q.time(time_s)} the oil in the separator is ${q.size(values.layer_m)} thick and reaches the inlet. New distillate stirs it up.`,
      advice: () => 'Draw oil off, or let it run out at its spout, before the layer gets this thick.',
    },
    'near-neutral-oil': {
      flag: 'poor separation',
      sentence: ({ values }) =>
        `At ${q.temperature(values.temperature_K)} this oil is almost as heavy as water (${weightBesideWater(values.difference_kg_m3, values.water_kg_m3, q)}): it will not separate well.`,
      advice: ({ values }) =>
        `Run the receiver at about ${q.temperature(values.advised_K)}, where it is ${weightBesideWater(values.differenceThere_kg_m3, values.waterThere_kg_m3, q)}. Then let it stand.`,
    },
    'oil-rate-low': {
      flag: 'oil fading',
      sentence: ({ values, time_s }) => {
        const [rate, limit] = q.apart('oilFlow', values.oilRate_kg_s, values.limit_kg_s);
        return `In the ${q.time(values.over_s)} before ${q.time(time_s)} oil came at ${rate}. Your limit is ${limit}.`;
      },
      advice: () => 'Stop here.',
    },
    'pot-low': {
      flag: 'water low',
      sentence: ({ values, time_s }) =>
        `At ${q.time(time_s)} only ${q.water(values.water_kg)} of water is left in the ${values.vessel}. Its base or element is about to run dry.`,
      advice: ({ values }) =>
        `Turn the heat off now. Add hot water only when the ${values.vessel} has cooled below the boil.`,
    },
    'pot-dry': {
      flag: 'dry',
      sentence: ({ values, time_s }) => `The ${values.vessel} runs dry at ${q.time(time_s)}. The run stops.`,
      advice: () => AFTER_DRY,
    },
    'pressure-high': {
      flag: 'pressure',
      sentence: ({ values, time_s }) =>
        `At ${q.time(time_s)} the pressure in the pot is ${q.pressure(values.gauge_Pa)} above the air. The lid can lift or spray.`,
      advice: () =>
        'Turn the heat down and clear the outlet. Use a wider tube, a wider neck or a looser charge. Never close or narrow the outlet.',
    },
    'over-pressure': {
      flag: 'pressure too high',
      sentence: ({ values, time_s }) =>
        `At ${q.time(time_s)} the pressure in the pot passes ${q.pressure(values.limit_Pa)} above the air. No lid here is made for that. The run stops.`,
      advice: () => AFTER_PRESSURE,
    },
    'neck-fast': {
      flag: 'neck too narrow',
      sentence: ({ values, time_s }) =>
        `At ${q.time(time_s)} steam rushes through the neck at ${q.speed(values.speed_m_s)}. It drags water along.`,
      advice: () => 'Use a wider neck or less heat.',
    },
    'bed-lifts': {
      flag: 'charge lifts',
      sentence: ({ time_s }) =>
        `At ${q.time(time_s)} the steam lifts the charge. It will blow channels and miss much of the plant.`,
      advice: () => 'Use less heat, pack more loosely, or spread the charge over a wider grid.',
    },
    'foam-carry-over': {
      flag: 'spray',
      sentence: ({ values, time_s }) =>
        `At ${q.time(time_s)} steam rises at ${q.speed(values.speed_m_s)} in the ${values.vessel}. It carries spray and foam along.`,
      advice: ({ values }) => `Use less heat or a wider ${values.vessel}.`,
    },
    scorch: {
      flag: 'scorches',
      sentence: ({ values }) =>
        `The base heats with ${q.heatFlux(values.flux_W_m2, { decimals: 0 })}, and plant lies on it. Above about ${q.heatFlux(values.limit_W_m2, { decimals: 0 })} it scorches.`,
      advice: () => 'Use less heat or a wider base, or put the plant on a grid.',
    },
    'circuit-overloaded': {
      flag: 'circuit overloaded',
      sentence: ({ values }) => {
        const [takes, carries] = q.apart('power', values.peak_W, values.limit_W);
        return `The heat source takes ${takes}. The circuit carries ${carries}.`;
      },
      advice: () =>
        'Use a lower setting, or a stronger circuit with a residual-current device. Ask a licensed electrician.',
    },
    'rate-not-held': {
      flag: 'rate not reached',
      sentence: ({ values, time_s }) => {
        const [rate, target] = q.apart('distillateFlow', values.rate_kg_s, values.target_kg_s);
        return `At ${q.time(time_s)}, at full heat, distillate comes at ${rate}. You asked for ${target}.`;
      },
      advice: () => 'Use a stronger heat source, insulate the pot, or ask for less.',
    },
    'tube-hazard': {
      flag: 'tube too narrow',
      sentence: ({ values, time_s }) =>
        values.because === 'pressure'
          ? `At ${q.time(time_s)} the condenser tube alone holds back ${q.pressure(values.pressureDrop_Pa)}: it is too narrow for this heat.`
          : `At ${q.time(time_s)} steam rushes into the condenser tube at ${q.speed(values.speed_m_s)}: it is too narrow for this heat.`,
      advice: () => 'Use a wider tube, several tubes side by side, or less heat.',
    },
    'stop-rule': { flag: 'stop', sentence: (said) => stopSentence(said, q), advice: () => SHUT_DOWN },
    'run-ends': {
      flag: 'end',
      sentence: ({ time_s }) => `The run ends at ${q.time(time_s)}.`,
      advice: () => SHUT_DOWN,
    },
  };
  return {
    events: told,
    /** The time mark at which nine tenths of the oil are collected. */
    mostOil: { flag: `90\u202f% of the oil`, sentence: `90\u202f% of this run’s oil is collected.` },
    variables: VARIABLES,
  };
}
