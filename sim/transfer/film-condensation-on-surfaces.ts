import { alternative, correlation, forReaders, type Argument, type Correlation } from '../correlation.ts';

/** Film condensation on the outside of surfaces: vertical walls (the pot's side seen from inside) and tubes. */

const fourthRoot = (x: number): number => Math.sqrt(Math.sqrt(x));

/** Nusselt's own constant for a vertical plate, 2√2/3; print rounds it to 0.943. */
const PLATE = (2 * Math.SQRT2) / 3;

const laminarFilm = (
  constant: number,
  length: number,
  dT: number,
  latent: number,
  rho_l: number,
  rho_v: number,
  k_l: number,
  mu_l: number,
  g: number,
): number =>
  dT > 0
    ? (constant * fourthRoot((g * rho_l * Math.max(0, rho_l - rho_v) * k_l * k_l * k_l * latent) / (mu_l * length))) /
      fourthRoot(dT)
    : 0;

/** Mean coefficient of a laminar film on a vertical surface: entry `film-coefficient-nusselt-vertical`. */
export const filmCoefficientNusseltVertical = (
  L: number,
  dT: number,
  h_fg: number,
  rho_l: number,
  rho_v: number,
  k_l: number,
  mu_l: number,
  cp_l: number,
  c: number,
  g: number,
): number => laminarFilm(PLATE, L, dT, h_fg + c * cp_l * dT, rho_l, rho_v, k_l, mu_l, g);

/** The same outside a horizontal tube or a tier of them: entry `film-coefficient-horizontal-tube-outside`. */
export const filmCoefficientHorizontalTier = (
  D: number,
  N: number,
  dT: number,
  h_fg: number,
  rho_l: number,
  rho_v: number,
  k_l: number,
  mu_l: number,
  cp_l: number,
  c: number,
  g: number,
): number => laminarFilm(0.729, N * D, dT, h_fg + c * cp_l * dT, rho_l, rho_v, k_l, mu_l, g);

/** Reynolds number at the foot of a rippling film: entry `film-reynolds-wavy-vertical`. */
export const filmReynoldsWavyVertical = (
  L: number,
  dT: number,
  h_fg: number,
  rho_l: number,
  k_l: number,
  mu_l: number,
  cp_l: number,
  g: number,
): number => {
  const nu = mu_l / rho_l;
  const latent = h_fg + 0.68 * cp_l * Math.max(0, dT);
  return Math.pow((3.7 * k_l * L * Math.max(0, dT)) / (mu_l * latent * Math.cbrt((nu * nu) / g)) + 4.8, 0.82);
};

/** Mean coefficient of a rippling film from its energy balance: entry `film-coefficient-wavy-vertical`. */
export const filmCoefficientWavyVertical = (
  L: number,
  dT: number,
  h_fg: number,
  rho_l: number,
  k_l: number,
  mu_l: number,
  cp_l: number,
  g: number,
): number =>
  dT > 0
    ? (filmReynoldsWavyVertical(L, dT, h_fg, rho_l, k_l, mu_l, cp_l, g) * mu_l * (h_fg + 0.68 * cp_l * dT)) /
      (4 * L * dT)
    : 0;

/**
 * Mean coefficient of a rippling film of known Reynolds number: entry `film-coefficient-kutateladze`. Its denominator
 * passes through zero near Re = 3.6, hence the floor.
 */
export const filmCoefficientKutateladze = (Re: number, k_l: number, nu_l: number, g: number): number => {
  const film = Math.max(30, Re);
  return (film * k_l * Math.cbrt(g / (nu_l * nu_l))) / (1.08 * Math.pow(film, 1.22) - 5.2);
};

const height: Argument = { unit: 'm', says: 'height of the surface' };
const difference: Argument = {
  unit: 'K',
  says: 'saturation temperature less wall temperature',
  range: [0, 100],
  isDifference: true,
};
const latentHeat: Argument = { unit: 'J/kg', says: 'latent heat at saturation' };
const densities = {
  rho_l: { unit: 'kg/m³', says: 'density of the condensate' },
  rho_v: { unit: 'kg/m³', says: 'density of the saturated vapour; 0 for the ρ² form' },
} as const;
const film = {
  k_l: { unit: 'W/(m K)', says: 'conductivity of the condensate' },
  mu_l: { unit: 'Pa s', says: 'viscosity of the condensate' },
  cp_l: { unit: 'J/(kg K)', says: 'heat capacity of the condensate' },
} as const;
const subcoolingFactor: Argument = {
  unit: '1',
  says: 'subcooling factor, 0.68 (Rohsenow) or 0 (plain)',
  range: [0, 0.68],
};
const gravity: Argument = { unit: 'm/s²', says: 'acceleration of gravity' };
const wavySource =
  'Kutateladze, in the form of Incropera et al. 6e ch. 10 (Example 10.3) and Cengel 3e eq. 10-25, which prints 4.81 for 4.8';

export const surfaceCondensationCorrelations: readonly Correlation[] = [
  correlation({
    name: 'film-coefficient-nusselt-vertical',
    says: 'Mean film coefficient of vapour condensing as a laminar film on a vertical surface.',
    arguments: { L: height, dT: difference, h_fg: latentHeat, ...densities, ...film, c: subcoolingFactor, g: gravity },
    result: { symbol: 'h', unit: 'W/(m² K)' },
    tex: "h = 0.943\\left[\\frac{g\\,\\rho_l(\\rho_l-\\rho_v)k_l^3 h'_{fg}}{\\mu_l\\,\\Delta T\\,L}\\right]^{1/4},\\quad h'_{fg}=h_{fg}+c\\,c_{p,l}\\Delta T",
    source: 'Nusselt 1916 with the subcooling factor of Rohsenow 1956; Incropera et al. 6e eq. 10.30',
    outside: 'evaluated; low by up to 20 % once the film ripples (Re > 30); zero where the wall is not colder',
    compute: filmCoefficientNusseltVertical,
  }),
  forReaders({
    name: 'film-coefficient-horizontal-tube-outside',
    says: 'Mean film coefficient of vapour condensing on the outside of a horizontal tube or a tier of tubes.',
    arguments: {
      D: { unit: 'm', says: 'outside diameter' },
      N: { unit: '1', says: 'tubes above one another', range: [1, 100] },
      dT: difference,
      h_fg: latentHeat,
      ...densities,
      ...film,
      c: subcoolingFactor,
      g: gravity,
    },
    result: { symbol: 'h', unit: 'W/(m² K)' },
    tex: "h = 0.729\\left[\\frac{g\\,\\rho_l(\\rho_l-\\rho_v)k_l^3 h'_{fg}}{\\mu_l\\,\\Delta T\\,N D}\\right]^{1/4}",
    source:
      'Nusselt 1916; Cengel 3e eq. 10-31, Incropera et al. 6e eq. 10.46; of the constants in print (0.725, 0.728, 0.729) the last',
    outside:
      'evaluated; film Reynolds number up to about 3600; cautious for many tubes; zero where the wall is not colder',
    compute: filmCoefficientHorizontalTier,
  }),
  correlation({
    name: 'film-reynolds-wavy-vertical',
    says: 'Reynolds number at the foot of a rippling condensate film on a vertical surface.',
    arguments: { L: height, dT: difference, h_fg: latentHeat, rho_l: densities.rho_l, ...film, g: gravity },
    result: { symbol: 'Re', unit: '1' },
    tex: "Re = \\left[\\frac{3.70\\,k_l L\\,\\Delta T}{\\mu_l h'_{fg}(\\nu_l^2/g)^{1/3}}+4.8\\right]^{0.82}",
    source: wavySource,
    outside: 'evaluated; meant for 30 < Re < 1800; 3.6, which means nothing, where the wall is not colder',
    compute: filmReynoldsWavyVertical,
  }),
  correlation({
    name: 'film-coefficient-wavy-vertical',
    says: 'Mean film coefficient of vapour condensing as a rippling film on a vertical surface.',
    arguments: { L: height, dT: difference, h_fg: latentHeat, rho_l: densities.rho_l, ...film, g: gravity },
    result: { symbol: 'h', unit: 'W/(m² K)' },
    tex: "h = \\frac{Re\\,\\mu_l h'_{fg}}{4L\\,\\Delta T}",
    source: wavySource,
    outside: 'evaluated; meant for 30 < Re < 1800; zero where the wall is not colder',
    compute: filmCoefficientWavyVertical,
  }),
  alternative({
    name: 'film-coefficient-kutateladze',
    says: 'Mean film coefficient of a rippling film of known Reynolds number.',
    arguments: {
      Re: { unit: '1', says: 'film Reynolds number', range: [30, 1800] },
      k_l: film.k_l,
      nu_l: { unit: 'm²/s', says: 'kinematic viscosity of the condensate' },
      g: gravity,
    },
    result: { symbol: 'h', unit: 'W/(m² K)' },
    tex: 'h = \\frac{Re\\,k_l}{1.08Re^{1.22}-5.2}\\left(\\frac{g}{\\nu_l^2}\\right)^{1/3}',
    source: wavySource,
    outside: 'below Re 30 the value at 30; above 1800 evaluated',
    compute: filmCoefficientKutateladze,
  }),
];
