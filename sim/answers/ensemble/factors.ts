/**
 * What a plan does not know for sure, how wide each doubt is, and how a drawn value enters a scenario.
 *
 * Every doubt is stated by its 5th and 95th percentile. Multipliers are split log-normal about 1: below and above the
 * median the logarithm has its own spread, so that a lopsided band keeps its ends. The tap temperature is a normal
 * shift in kelvin.
 */
import { botanicals, type Band, type Sourced } from '../../library/index.ts';
import { fieldAt } from '../../scenario/fields.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { normalScore } from './random.ts';

export const UNCERTAIN_IDS = [
  'oilContent',
  'readyShare',
  'heldRate',
  'takeUp',
  'condensingFilm',
  'coolantFilm',
  'heatLoss',
  'fouling',
  'tapTemperature',
  'dropSize',
] as const;
export type UncertainId = (typeof UNCERTAIN_IDS)[number];

export interface Uncertain {
  readonly id: UncertainId;
  readonly title: string;
  /** `1`: a multiplier on the scenario's value; `K`: a shift added to it. */
  readonly unit: '1' | 'K';
  readonly shape: 'split log-normal' | 'normal';
  /** Values below which 5 % and 95 % of the draws lie; the median is no change. */
  readonly low: number;
  readonly high: number;
  /** Where the width comes from. */
  readonly source: string;
}

/** Own widths for some of the doubts, such as the intervals of a fit. */
export type OwnBands = Readonly<
  Partial<Record<UncertainId, { readonly low: number; readonly high: number; readonly source?: string }>>
>;

/** Score of the 95th percentile. */
const Z_95 = normalScore(0.95);
/** Narrowest and widest end of a library band that is used, as a multiple of its typical value. */
const LEAST_RATIO = 0.05;
const GREATEST_RATIO = 20;

const JUDGED = 'judgement';
const TITLES: Readonly<Record<UncertainId, string>> = {
  oilContent: 'Oil content of the charge',
  readyShare: 'Oil open to the steam at the start',
  heldRate: 'Rate at which held oil comes free',
  takeUp: 'How readily steam takes up oil',
  condensingFilm: 'Condensing film',
  coolantFilm: 'Water-side film',
  heatLoss: 'Heat loss to the air',
  fouling: 'Fouling',
  tapTemperature: 'Tap temperature',
  dropSize: 'Size of the oil drops',
};

const WITHOUT_LIBRARY: Readonly<
  Record<UncertainId, { readonly low: number; readonly high: number; readonly source: string }>
> = {
  oilContent: {
    low: 0.6,
    high: 1.6,
    source: `${JUDGED}: crops of one plant differ by this much and more with place, year and hour of cutting`,
  },
  readyShare: { low: 0.6, high: 1.4, source: `${JUDGED}: the span of the library’s plants` },
  heldRate: { low: 0.4, high: 2.5, source: `${JUDGED}: the span of the library’s plants` },
  takeUp: {
    low: 0.4,
    high: 2,
    source: 'the range that spans published lavender runs; nobody has measured it for other plants',
  },
  condensingFilm: {
    low: 0.8,
    high: 1.25,
    source: `${JUDGED}: condensation in tubes is predicted to about 20 %, oil in the film not at all`,
  },
  coolantFilm: { low: 0.75, high: 1.3, source: `${JUDGED}: natural convection round close turns and laminar annuli` },
  heatLoss: { low: 0.7, high: 1.4, source: `${JUDGED}: emissivity, draught and lid are seldom known` },
  fouling: { low: 0.3, high: 3, source: `${JUDGED}: from a bright tube to visible scale` },
  tapTemperature: { low: -3, high: 3, source: `${JUDGED}: mains water from one week to the next` },
  dropSize: { low: 0.5, high: 2, source: 'assumption: no measured sizes of oil drops in distillate were found' },
};

const mean = (values: readonly number[]): number =>
  Math.exp(values.reduce((sum, value) => sum + Math.log(value), 0) / values.length);
const heldWithin = (ratio: number): number => Math.min(GREATEST_RATIO, Math.max(LEAST_RATIO, ratio));

/** A library band as multiples of its typical value; `null` where the typical value is nought. */
function ratios(bands: readonly Sourced<Band>[], source: string): { low: number; high: number; source: string } | null {
  const usable = bands.filter(({ value }) => value.typical > 0);
  if (usable.length === 0) return null;
  return {
    low: Math.min(1, mean(usable.map(({ value }) => heldWithin(value.low / value.typical)))),
    high: Math.max(1, mean(usable.map(({ value }) => heldWithin(value.high / value.typical)))),
    source: `library, low and high taken as 5th and 95th percentile: ${source}`,
  };
}

function fromLibrary(id: UncertainId, { charge }: Scenario): { low: number; high: number; source: string } | null {
  const row = botanicals.find((entry) => entry.id === charge.botanical);
  if (!row) return null;
  const { hydrocarbon, oxygenate, sesquiterpene } = row.release;
  const all = (read: (group: typeof oxygenate) => Sourced<Band>) =>
    ratios([hydrocarbon, oxygenate, sesquiterpene].map(read), read(oxygenate).source);
  switch (id) {
    case 'oilContent': {
      const content = row.states[charge.state]?.oilContent;
      return content ? ratios([content], content.source) : null;
    }
    case 'readyShare':
      return all((group) => group.readyShare);
    case 'heldRate':
      return all((group) => group.heldRate_1_s);
    case 'takeUp':
      return all((group) => group.takeUp);
    default:
      return null;
  }
}

/** Every doubt about a scenario, with the library's band where the plant has one. */
export function uncertainties(scenario: Scenario, own: OwnBands = {}): readonly Uncertain[] {
  return UNCERTAIN_IDS.map((id) => {
    const given = own[id];
    const band = given ? { source: 'given', ...given } : (fromLibrary(id, scenario) ?? WITHOUT_LIBRARY[id]);
    const shift = id === 'tapTemperature';
    return {
      id,
      title: TITLES[id],
      unit: shift ? 'K' : '1',
      shape: shift ? 'normal' : 'split log-normal',
      low: band.low,
      high: band.high,
      source: band.source,
    };
  });
}

/** Value of a doubt at a share of its distribution, 0–1. */
export function valueAtShare({ unit, low, high }: Uncertain, share: number): number {
  const z = normalScore(share) / Z_95;
  const end = z < 0 ? low : high;
  return unit === 'K' ? Math.abs(z) * end : Math.exp(Math.abs(z) * Math.log(end));
}

/** Keeps a value within the range its field allows. */
function within(path: string, value: number): number {
  const field = fieldAt(path);
  return Math.min(field?.max ?? Infinity, Math.max(field?.min ?? -Infinity, value));
}

type Factors = Scenario['factors'];
type ByGroup = Scenario['charge']['release']['readyShare'];

/** The scenario with drawn values; a doubt that is not given stays as it is. */
export function withDrawn(scenario: Scenario, drawn: Readonly<Partial<Record<UncertainId, number>>>): Scenario {
  const { factors, charge, cooling } = scenario;
  const factor = (name: keyof Factors & UncertainId): number =>
    within(`factors.${name}`, factors[name] * (drawn[name] ?? 1));
  const group = (name: 'readyShare' | 'heldRate_1_s' | 'takeUp', by = 1): ByGroup => {
    const drawnFor = (of: keyof ByGroup): number =>
      within(`charge.release.${name}.${of}`, charge.release[name][of] * by);
    return {
      hydrocarbon: drawnFor('hydrocarbon'),
      oxygenate: drawnFor('oxygenate'),
      sesquiterpene: drawnFor('sesquiterpene'),
    };
  };
  const shift = drawn.tapTemperature ?? 0;
  return {
    ...scenario,
    factors: {
      ...factors,
      oilContent: factor('oilContent'),
      condensingFilm: factor('condensingFilm'),
      coolantFilm: factor('coolantFilm'),
      heatLoss: factor('heatLoss'),
      fouling: factor('fouling'),
      dropSize: factor('dropSize'),
    },
    charge: {
      ...charge,
      release: {
        ...charge.release,
        readyShare: group('readyShare', drawn.readyShare),
        heldRate_1_s: group('heldRate_1_s', drawn.heldRate),
        takeUp: group('takeUp', drawn.takeUp),
      },
    },
    // A tub is filled from the same tap.
    cooling: {
      ...cooling,
      tapTemperature_K: cooling.tapTemperature_K.map((knot) => ({
        ...knot,
        value: within('cooling.tapTemperature_K', knot.value + shift),
      })),
      startTemperature_K: within('cooling.startTemperature_K', cooling.startTemperature_K + shift),
    },
  };
}
