/** Working of the numbers after the still: films of a blend, drops, standing, bottles, hydrosol and quantities. */
import { constituentById, type Constituent } from '../fluids/constituents.ts';
import type { BlendFilm, Surface } from '../products/blend.ts';
import { pureRate } from '../products/blend.ts';
import { diffusionVolume, diffusivityOf, roomPressure, type OilShare } from '../products/oil.ts';
import { massLeft, timeAt, timeToLose } from '../products/film.ts';
import { HYDROSOL, type HydrosolStart } from '../products/keeping.ts';
import { standing } from '../products/standing.ts';
import { bisectedRoot } from '../maths/bisect.ts';
import { GAS_CONSTANT, STANDARD_ATMOSPHERE } from '../constants.ts';
import { entryStep, sheetOf, STEP, writtenStep, type Row, type WorkingSheet } from './sheet.ts';

const DATA = 'data of the constituent';
const ROOM_K = 298.15;

const SHARE_WORDS = { half: 'half', nineTenths: 'nine tenths' } as const;

/** Time until a share of a blend has left: of its main constituent step by step, then of all of them together. */
export function halfTimeSheet(film: BlendFilm, surface: Surface, of: keyof typeof SHARE_WORDS = 'half'): WorkingSheet {
  const lost = of === 'half' ? 0.5 : 0.9;
  const words = SHARE_WORDS[of];
  const masses = film.loads.map((load, i) => load * (film.molarMasses[i] as number));
  const main = masses.indexOf(Math.max(...masses));
  const row = film.rows[main] as Constituent;
  const limonene = constituentById('limonene');
  const T = surface.temperature_K;
  const M = row.molarMass.value;
  const pressure = roomPressure(row, T);
  const half = timeToLose(film, lost);
  const whole = massLeft(film, 0);
  const latest = 40 / Math.min(...film.rates);
  const s = bisectedRoot((at) => timeAt(film, at) < half, 0, latest);
  const coefficient = (pureRate(row, surface) * GAS_CONSTANT * T) / pressure;
  return sheetOf(
    [`blend-${of}`, `Time until ${words} has left`, null],
    `The steps show ${row.name}, of which there is most; the last takes all constituents together.`,
    'the film on the page',
    entryStep('diffusivity-in-air-fuller', {
      T: [ROOM_K, 'reference temperature'],
      p: [STANDARD_ATMOSPHERE, 'standard atmosphere'],
      M: [M, DATA],
      V: [diffusionVolume(row), 'its formula'],
    }),
    entryStep('film-coefficient-from-diffusivity', {
      k_ref: [surface.coefficient_m_s, 'transfer coefficient chosen on the page'],
      D: [diffusivityOf(row, ROOM_K), STEP],
      D_ref: [diffusivityOf(limonene, ROOM_K), 'the same for limonene'],
    }),
    entryStep('vapour-pressure-near-room', {
      p_25: [row.roomVapour.pressure, `${DATA}: ${row.roomVapour.source}`],
      H: [row.roomVapour.heat, DATA],
      T: [T, 'temperature of the film'],
    }),
    entryStep('film-evaporation', {
      k: [coefficient, STEP],
      p_v: [pressure, STEP],
      M: [M, DATA],
      T: [T, 'temperature of the film'],
    }),
    writtenStep(
      `Time of all constituents together, where ${words} of the mass has left`,
      't = \\sum_i \\frac{w_i n_i(1-e^{-\\alpha_i s})}{\\alpha_i} + N\\,s',
      [half, 's', 'exact solution of a film that keeps Raoult’s law; s is found so that so much of the mass has left'],
      ['s', s, '1', 'reading of the film’s own clock', 'solved for'],
      ['N', film.stays, '1', 'what never leaves, per square metre', 'residue or fixed oil'],
      ...film.ids.map((_, i): Row => {
        const each = film.rows[i] as Constituent;
        return [
          `n_{${i + 1}}`,
          film.loads[i] as number,
          'mol/m²',
          `${each.name}, ${((100 * (masses[i] as number)) / whole).toPrecision(3)} % by weight`,
          `its rate α is ${(film.rates[i] as number).toPrecision(4)}`,
        ];
      }),
    ),
  );
}

/** Oil and drops for a share of a product. */
export function dropsSheet(share: number, product_m3: number, dropsPer_mL: number, density: number): WorkingSheet {
  const oil = share * product_m3;
  return sheetOf(
    ['drops', 'Drops', null],
    'Drops differ in size by a factor of two from bottle to bottle. Weigh fifty once, or weigh the oil.',
    'the dilution on the page',
    writtenStep(
      'Volume of the oil',
      'V = x\\,V_p',
      [oil, 'm³'],
      ['x', share, '1', 'share of the product by volume', 'chosen on the page'],
      ['V_p', product_m3, 'm³', 'volume of the product', 'chosen on the page'],
    ),
    writtenStep(
      'Its mass',
      'm = V\\rho',
      [oil * density, 'kg'],
      ['V', oil, 'm³', 'volume of the oil', STEP],
      ['\\rho', density, 'kg/m³', 'density of the oil at 20 °C', 'constituents, volumes added'],
    ),
    writtenStep(
      'Drops',
      'n = 10^6\\,V\\,d',
      [oil * 1e6 * dropsPer_mL, '1'],
      ['V', oil, 'm³', 'volume of the oil', 'first step'],
      ['d', dropsPer_mL, '1', 'drops in a millilitre', 'chosen on the page; 27 from weighings of bottles with inserts'],
    ),
  );
}

/** Time in which water drops of a size leave the oil. */
export function standingSheet(
  composition: readonly OilShare[],
  T: number,
  height_m: number,
  drop_m: number,
): WorkingSheet {
  const { difference_kg_m3: difference, viscosity_Pa_s: viscosity } = standing(composition, T, height_m);
  const step = entryStep('stokes-velocity', {
    d: [drop_m, 'size of the water drop'],
    drho: [Math.abs(difference), 'water less oil at this temperature'],
    mu: [viscosity, 'viscosity of the oil, constituents mixed'],
  });
  return sheetOf(
    ['standing', 'Standing time', null],
    'Small drops move slowly: half the size takes four times as long.',
    'the vessel on the page',
    step,
    writtenStep(
      'Time through the whole height',
      't = \\frac{h}{v}',
      [height_m / step.result.value, 's'],
      ['h', height_m, 'm', 'height of the oil in its vessel', 'chosen on the page'],
      ['v', step.result.value, 'm/s', 'velocity', STEP],
    ),
  );
}

/** Most peroxide of one fill. */
export const peroxideSheet = (fill: number, size_m3: number, T: number): WorkingSheet =>
  sheetOf(
    ['peroxide', 'Peroxide from the air in the bottle', null],
    'An upper bound for the air above the oil: all its oxygen is taken up. About 2 mmol/L from air dissolved in the oil may come on top.',
    'the bottle on the page',
    entryStep('headspace-peroxide', {
      V_a: [(1 - fill) * size_m3, 'what is not filled'],
      V_o: [fill * size_m3, 'what is filled'],
      T: [T, 'temperature of the store'],
    }),
  );

/** Time until hydrosol is to be thrown away. */
export function hydrosolSheet(start: HydrosolStart, T: number): WorkingSheet {
  const step = entryStep('microbe-growth-rate', {
    mu_25: [HYDROSOL.mu25_1_s, 'estimate'],
    T: [T, 'temperature of the store'],
    T_min: [HYDROSOL.coldest_K, 'estimate'],
  });
  return sheetOf(
    ['hydrosol', 'How long the hydrosol keeps', null],
    'Rate and lowest temperature are estimates, tuned to one ceiling that was seen: a guide, no promise.',
    'the bottle on the page',
    step,
    entryStep('microbe-growth-time', {
      mu: [step.result.value, STEP],
      N_0: [HYDROSOL.starts_per_mL[start], 'how clean it was filled'],
      N: [HYDROSOL.discard_per_mL, 'count at which it is thrown away'],
      N_max: [HYDROSOL.ceiling_per_mL, 'seen in stored hydrosols'],
    }),
  );
}
