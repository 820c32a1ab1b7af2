/**
 * What a plan does not know for sure, how wide each doubt is, and how a drawn value enters a scenario.
 *
 * Every doubt is stated by its 5th and 95th percentile. Multipliers are split log-normal about 1: below and above the
 * median the logarithm has its own spread, so that a lopsided band keeps its ends. The tap temperature and the draught
 * are normal shifts; there is no draught below none. The bend of a coil counts from not at all to a little more than solved, most likely for seven tenths:
 * a triangle.
 */
import { isCoil, waterSource } from '../../geometry/condenser-kind.ts';
import { botanicals, type Band, type Sourced } from '../../library/index.ts';
import { fieldAt } from '../../scenario/fields.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { normalScore } from './random.ts';

export const UNCERTAIN_IDS = [
  'oilContent',
  'readyShare',
  'heldRate',
  'takeUp',
  'halfCoverage',
  'condensingFilm',
  'coolantFilm',
  'rivulet',
  'curvature',
  'jetMixing',
  'heatLoss',
  'evaporation',
  'draught',
  'fouling',
  'tapTemperature',
  'dropSize',
] as const;
export type UncertainId = (typeof UNCERTAIN_IDS)[number];

export interface Uncertain {
  readonly id: UncertainId;
  /** `1`: a multiplier on the scenario's value; others: a shift added to it. */
  readonly unit: '1' | 'K' | 'm/s';
  readonly shape: 'split log-normal' | 'normal' | 'triangular';
  /** Values below which 5 % and 95 % of the draws lie; the median is no change, of a triangle its peak. */
  readonly low: number;
  readonly high: number;
  readonly origin: BandOrigin;
  /** What the library cites for its band; `null` for bands of another origin. */
  readonly source: string | null;
}

/** Where a width comes from: the library's low and high are taken as 5th and 95th percentile. */
export type BandOrigin = 'library' | 'judgement' | 'assumption' | 'published-range' | 'fit' | 'stated';

/** Own widths for some of the doubts, such as the intervals of a fit. */
export type OwnBands = Readonly<
  Partial<Record<UncertainId, { readonly low: number; readonly high: number; readonly origin?: 'fit' | 'stated' }>>
>;

/** Score of the 95th percentile. */
const Z_95 = normalScore(0.95);
/** Narrowest and widest end of a library band that is used, as a multiple of its typical value. */
const LEAST_RATIO = 0.05;
const GREATEST_RATIO = 20;

type Width = Pick<Uncertain, 'low' | 'high' | 'origin' | 'source'>;

const judged = (low: number, high: number, origin: BandOrigin = 'judgement'): Width => ({
  low,
  high,
  origin,
  source: null,
});

/** Least, likeliest and greatest share of a coil's solved curvature that counts. */
const BEND = [0, 0.7, 1.1] as const;

/** The share of the bend below which a part of the draws lies, as a multiple of the likeliest. */
function bendAt(share: number): number {
  const [least, likeliest, greatest] = BEND;
  const [rise, fall] = [likeliest - least, greatest - likeliest];
  const width = greatest - least;
  const value =
    share * width < rise ? least + Math.sqrt(share * width * rise) : greatest - Math.sqrt((1 - share) * width * fall);
  return value / likeliest;
}

const WITHOUT_LIBRARY: Readonly<Record<UncertainId, Width>> = {
  // Crops of one plant differ by this much and more with place, year and hour of cutting.
  oilContent: judged(0.6, 1.6),
  // The span of the library's plants.
  readyShare: judged(0.6, 1.4),
  heldRate: judged(0.4, 2.5),
  // Spans published lavender runs; nobody has measured it for other plants.
  takeUp: judged(0.4, 2, 'published-range'),
  // An assumption throughout; no measurement found.
  halfCoverage: judged(0.3, 3, 'assumption'),
  // Condensation in tubes is predicted to about 20 %, oil in the film not at all.
  condensingFilm: judged(0.8, 1.25),
  // Natural convection round close turns, and laminar annuli.
  coolantFilm: judged(0.75, 1.3),
  // Log-normal, σ 0.25: contact angles from 10° to 60° change the solved rivulet by × 1.4 to × 0.67.
  rivulet: judged(Math.exp(-0.25 * Z_95), Math.exp(0.25 * Z_95)),
  // Nothing stops the cross-flow that a bend drives, and nobody has measured it in a rivulet.
  curvature: judged(bendAt(0.05), bendAt(0.95)),
  // Log-normal, σ 0.7: 0.1 of a jet's power mixes cold stores, 0.5 makes a fountain.
  jetMixing: judged(Math.exp(-0.7 * Z_95), Math.exp(0.7 * Z_95)),
  // Emissivity and lid are seldom known.
  heatLoss: judged(0.7, 1.4),
  // Fitted to swimming pools; ± 30 % above 50 °C.
  evaporation: judged(0.7, 1.3),
  // A closed shed against an open door.
  draught: judged(-0.3, 0.3),
  // From a bright tube to visible scale.
  fouling: judged(0.3, 3),
  // Mains water from one week to the next.
  tapTemperature: judged(-3, 3),
  // No measured sizes of oil drops in distillate were found.
  dropSize: judged(0.5, 2, 'assumption'),
};

const mean = (values: readonly number[]): number =>
  Math.exp(values.reduce((sum, value) => sum + Math.log(value), 0) / values.length);
const heldWithin = (ratio: number): number => Math.min(GREATEST_RATIO, Math.max(LEAST_RATIO, ratio));

/** A library band as multiples of its typical value; `null` where the typical value is nought. */
function ratios(bands: readonly Sourced<Band>[], source: string): Width | null {
  const usable = bands.filter(({ value }) => value.typical > 0);
  if (usable.length === 0) return null;
  return {
    low: Math.min(1, mean(usable.map(({ value }) => heldWithin(value.low / value.typical)))),
    high: Math.max(1, mean(usable.map(({ value }) => heldWithin(value.high / value.typical)))),
    origin: 'library',
    source,
  };
}

function fromLibrary(id: UncertainId, { charge }: Scenario): Width | null {
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

/** Whether a doubt can change a run of this scenario at all. */
function matters(id: UncertainId, { condenser, cooling }: Scenario): boolean {
  const coil = isCoil(condenser);
  switch (id) {
    case 'curvature':
      return coil;
    case 'jetMixing':
      return coil && cooling.inlet !== 'top' && cooling.flow_kg_s.some(({ value }) => value > 0);
    case 'evaporation':
    case 'draught':
      return waterSource({ condenser, cooling }) !== 'tap';
    default:
      return true;
  }
}

const SHIFTS: Readonly<Partial<Record<UncertainId, Uncertain['unit']>>> = { tapTemperature: 'K', draught: 'm/s' };

/** Every doubt about a scenario, with the library's band where the plant has one. */
export function uncertainties(scenario: Scenario, own: OwnBands = {}): readonly Uncertain[] {
  return UNCERTAIN_IDS.filter((id) => matters(id, scenario)).map((id) => {
    const given = own[id];
    const band: Width = given
      ? { low: given.low, high: given.high, origin: given.origin ?? 'stated', source: null }
      : (fromLibrary(id, scenario) ?? WITHOUT_LIBRARY[id]);
    const unit = SHIFTS[id] ?? '1';
    const shape = unit !== '1' ? 'normal' : id === 'curvature' && !given ? 'triangular' : 'split log-normal';
    return { id, unit, shape, ...band };
  });
}

/** Value of a doubt that leaves the scenario as it is. */
export const unchangedValue = ({ unit }: Pick<Uncertain, 'unit'>): number => (unit === '1' ? 1 : 0);

/** Value of a doubt at a share of its distribution, 0–1. */
export function valueAtShare({ unit, shape, low, high }: Uncertain, share: number): number {
  if (shape === 'triangular') return bendAt(share);
  const z = normalScore(share) / Z_95;
  const end = z < 0 ? low : high;
  return unit === '1' ? Math.exp(Math.abs(z) * Math.log(end)) : Math.abs(z) * end;
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
  const { factors, charge, cooling, site } = scenario;
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
    site: { ...site, airSpeed_m_s: within('site.airSpeed_m_s', site.airSpeed_m_s + (drawn.draught ?? 0)) },
    factors: {
      ...factors,
      oilContent: factor('oilContent'),
      condensingFilm: factor('condensingFilm'),
      coolantFilm: factor('coolantFilm'),
      rivulet: factor('rivulet'),
      curvature: factor('curvature'),
      jetMixing: factor('jetMixing'),
      heatLoss: factor('heatLoss'),
      evaporation: factor('evaporation'),
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
        halfCoverage_mol_kg: within(
          'charge.release.halfCoverage_mol_kg',
          charge.release.halfCoverage_mol_kg * (drawn.halfCoverage ?? 1),
        ),
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
