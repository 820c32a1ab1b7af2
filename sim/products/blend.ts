/**
 * A blend of oils, with or without a fixed oil, spread as a film on paper, skin or a dish: what leaves into the air and
 * what is left, constituent by constituent and oil by oil.
 */
import { GAS_CONSTANT } from '../constants.ts';
import { constituentById, liquidDensity, type Constituent } from '../fluids/constituents.ts';
import { activityInFixedOil, filmCoefficientFromDiffusivity } from '../transfer/vapour-in-air.ts';
import { amountLeft, clockAt, dryingTime, massLeft, timeToLose, type Film } from './film.ts';
import { diffusivityOf, noteClassOf, NOTE_CLASSES, roomPressure, type NoteClass, type OilShare } from './oil.ts';
import { polarityFactors } from './real-mixture.ts';

export interface BlendOil {
  readonly composition: readonly OilShare[];
  /** Share of the blend by weight. */
  readonly share: number;
}

export const SURFACES = ['paper', 'skin', 'dish'] as const;
export type SurfaceKind = (typeof SURFACES)[number];

export interface Surface {
  /** Oil and carrier spread on it, kg/m². */
  readonly load_kg_m2: number;
  readonly temperature_K: number;
  /** Transfer coefficient of limonene, m/s. */
  readonly coefficient_m_s: number;
  /** Moles that never leave for a mole of oil: what paper and resin hold. */
  readonly residue: number;
}

export const USUAL_COEFFICIENT_m_s = 1.5e-3;
export const COEFFICIENT_RANGE_m_s = [0.7e-3, 3e-3] as const;

/** What is usual: a strip of paper of which one drop wets a few square centimetres, a palm of skin, a dish. */
export const USUAL_SURFACES: Readonly<Record<SurfaceKind, Surface>> = {
  paper: { load_kg_m2: 0.01, temperature_K: 298.15, coefficient_m_s: USUAL_COEFFICIENT_m_s, residue: 0.02 },
  skin: { load_kg_m2: 0.02, temperature_K: 305.15, coefficient_m_s: USUAL_COEFFICIENT_m_s, residue: 0 },
  dish: { load_kg_m2: 0.5, temperature_K: 298.15, coefficient_m_s: USUAL_COEFFICIENT_m_s, residue: 0 },
};

/** A fixed oil as a liquid of one kind: density, molar volume and interaction parameter. */
export const CARRIER = { density_kg_m3: 915, molarVolume_m3_mol: 960e-6, interaction: 0.3 } as const;

export interface BlendFilm extends Film {
  /** Where the shares of a constituent come from: for each oil, the share of each constituent that it brought. */
  readonly origins: readonly Float64Array[];
  readonly classes: readonly NoteClass[];
  readonly rows: readonly Constituent[];
  /** Transfer coefficient of each, m/s. */
  readonly coefficients: Float64Array;
  /** Whether the oils mix by themselves, without a fixed oil. */
  readonly isNeat: boolean;
}

/** Transfer coefficient of a constituent, m/s. */
const coefficientOf = (row: Constituent, { coefficient_m_s }: Surface): number =>
  filmCoefficientFromDiffusivity(
    coefficient_m_s,
    diffusivityOf(row, 298.15),
    diffusivityOf(constituentById('limonene'), 298.15),
  );

/** Rate at which a pure film would leave, mol/(m² s). */
export const pureRate = (row: Constituent, surface: Surface): number =>
  (coefficientOf(row, surface) * roomPressure(row, surface.temperature_K)) / (GAS_CONSTANT * surface.temperature_K);

/** @param carrier share of the blend by weight that is fixed oil */
export function blendFilm(oils: readonly BlendOil[], carrier: number, surface: Surface): BlendFilm {
  const ids = [...new Set(oils.flatMap(({ composition }) => composition.map(({ constituent }) => constituent)))];
  const rows = ids.map(constituentById);
  const shareFrom = ({ composition, share }: BlendOil): Float64Array => {
    const whole = composition.reduce((sum, entry) => sum + entry.share, 0);
    return Float64Array.from(ids, (id) => {
      const own = composition.reduce((sum, entry) => sum + (entry.constituent === id ? entry.share : 0), 0);
      return (share * own) / whole;
    });
  };
  const brought = oils.map(shareFrom);
  const whole = oils.reduce((sum, { share }) => sum + share, 0) + carrier;
  const masses = Float64Array.from(
    ids,
    (_, i) => (surface.load_kg_m2 * brought.reduce((sum, of) => sum + (of[i] as number), 0)) / whole,
  );
  const molarMasses = Float64Array.from(rows, (row) => row.molarMass.value);
  const loads = masses.map((mass, i) => mass / (molarMasses[i] as number));
  const moles = loads.reduce((sum, load) => sum + load, 0);
  const isNeat = carrier === 0;
  const carrierVolume = (surface.load_kg_m2 * carrier) / whole / CARRIER.density_kg_m3;
  const volumes = Float64Array.from(rows, (row) => row.molarMass.value / liquidDensity(row, row.liquidDensity.at));
  const oilVolume = loads.reduce((sum, load, i) => sum + load * (volumes[i] as number), 0);
  const carrierShare = carrierVolume / (carrierVolume + oilVolume);
  const sizes = isNeat ? new Float64Array(ids.length).fill(1) : volumes;
  const rates = Float64Array.from(rows, (row, i) => {
    const pure = pureRate(row, surface);
    return isNeat
      ? pure
      : pure *
          (volumes[i] as number) *
          activityInFixedOil(volumes[i] as number, CARRIER.molarVolume_m3_mol, carrierShare, CARRIER.interaction);
  });
  const origins = brought.map((of) =>
    of.map((own, i) => {
      const all = brought.reduce((sum, other) => sum + (other[i] as number), 0);
      return all > 0 ? own / all : 0;
    }),
  );
  const held = surface.residue * moles;
  return {
    ids,
    rows,
    coefficients: Float64Array.from(rows, (row) => coefficientOf(row, surface)),
    molarMasses,
    loads,
    sizes,
    rates,
    stays: isNeat ? held : carrierVolume,
    origins,
    classes: rows.map(noteClassOf),
    isNeat,
  };
}

export interface Fade {
  readonly times_s: Float64Array;
  /** kg/m² left of each constituent; cell `time * constituents + constituent`. */
  readonly left_kg_m2: Float64Array;
  /** kg/(m² s) that leave of each constituent. */
  readonly leaving_kg_m2_s: Float64Array;
  /** Share of what can leave that is left. */
  readonly leftShare: Float64Array;
}

/** Times evenly spread on a logarithmic axis. */
export const logTimes = (from_s: number, to_s: number, count: number): Float64Array =>
  Float64Array.from({ length: count }, (_, k) => from_s * Math.pow(to_s / from_s, k / (count - 1)));

/** The film at each of rising times. */
export function fade(film: Film, times_s: Float64Array): Fade {
  const count = film.ids.length;
  const left = new Float64Array(times_s.length * count);
  const leaving = new Float64Array(times_s.length * count);
  const start = massLeft(film, 0);
  const leftShare = new Float64Array(times_s.length);
  const dry_s = dryingTime(film);
  let s = 0;
  times_s.forEach((time_s, k) => {
    const now = s === Infinity ? Infinity : clockAt(film, time_s, s, dry_s);
    s = now;
    if (now === Infinity) return;
    let amount = film.stays;
    let whole = 0;
    for (let i = 0; i < count; i++) {
      const moles = (film.loads[i] as number) * Math.exp(-(film.rates[i] as number) * now);
      const mass = (film.molarMasses[i] as number) * moles;
      left[k * count + i] = mass;
      amount += (film.sizes[i] as number) * moles;
      whole += mass;
    }
    for (let i = 0; i < count; i++)
      leaving[k * count + i] = ((film.rates[i] as number) * (left[k * count + i] as number)) / amount;
    leftShare[k] = whole / start;
  });
  return { times_s, left_kg_m2: left, leaving_kg_m2_s: leaving, leftShare };
}

/**
 * The same with activity coefficients of a real mixture, which change as the film dries: from one time to the next they
 * are taken as at the middle of the step, found by a first try.
 */
export function fadeOfRealMixture(film: BlendFilm, times_s: Float64Array): Fade {
  const count = film.ids.length;
  const left = new Float64Array(times_s.length * count);
  const leaving = new Float64Array(times_s.length * count);
  const leftShare = new Float64Array(times_s.length);
  const start = massLeft(film, 0);
  let loads = film.loads;
  const withFactors = (from: Float64Array, factors: Float64Array): Film => ({
    ...film,
    loads: from,
    rates: film.rates.map((rate, i) => rate * (factors[i] as number)),
  });
  const after = (from: Float64Array, factors: Float64Array, span_s: number): Float64Array => {
    const now = withFactors(from, factors);
    const s = clockAt(now, span_s);
    return from.map((load, i) => (s === Infinity ? 0 : load * Math.exp(-(now.rates[i] as number) * s)));
  };
  let before_s = 0;
  times_s.forEach((time_s, k) => {
    const span_s = time_s - before_s;
    before_s = time_s;
    const middle = after(loads, polarityFactors(film.ids, loads), 0.5 * span_s);
    loads = after(loads, polarityFactors(film.ids, middle), span_s);
    const factors = polarityFactors(film.ids, loads);
    const now = withFactors(loads, factors);
    const amount = amountLeft(now, 0);
    for (let i = 0; i < count; i++) {
      const mass = (film.molarMasses[i] as number) * (loads[i] as number);
      left[k * count + i] = mass;
      leaving[k * count + i] = amount > 0 ? ((now.rates[i] as number) * mass) / amount : 0;
    }
    leftShare[k] = massLeft(now, 0) / start;
  });
  return { times_s, left_kg_m2: left, leaving_kg_m2_s: leaving, leftShare };
}

/** Time by which a share has left, s, between the moments of a fading; infinite where it does not get so far. */
export function timeLeftAt({ times_s, leftShare }: Fade, lost: number): number {
  const k = leftShare.findIndex((left) => left <= 1 - lost);
  if (k < 0) return Infinity;
  const after = times_s[k] as number;
  if (k === 0) return (after * lost) / (1 - (leftShare[0] as number));
  const before = times_s[k - 1] as number;
  const [high, low] = [leftShare[k - 1] as number, leftShare[k] as number];
  return before * Math.pow(after / before, (high - (1 - lost)) / (high - low));
}

export interface FadeSummary {
  readonly half_s: number;
  readonly nineTenths_s: number;
  /** Until dry; infinite where something stays. */
  readonly dry_s: number;
  /** Share of what can leave, by weight, in each class. */
  readonly classes: Readonly<Record<NoteClass, number>>;
}

export function fadeSummary(film: BlendFilm): FadeSummary {
  const whole = massLeft(film, 0);
  const classShare = (of: NoteClass): number =>
    film.classes.reduce(
      (sum, each, i) => sum + (each === of ? (film.loads[i] as number) * (film.molarMasses[i] as number) : 0),
      0,
    ) / whole;
  return {
    half_s: timeToLose(film, 0.5),
    nineTenths_s: timeToLose(film, 0.9),
    dry_s: dryingTime(film),
    classes: Object.fromEntries(NOTE_CLASSES.map((each) => [each, classShare(each)])) as Record<NoteClass, number>,
  };
}
