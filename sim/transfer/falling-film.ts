import { correlation, type Argument, type Correlation } from '../correlation.ts';

/**
 * The condensate after the last steam in an upright tube: no lowest line lets a rivulet gather, so it runs down the whole
 * bore as a laminar film. In a sloping tube it is a rivulet: `rivulet.ts`.
 */

/** Nusselt number on the film's depth of a laminar film that cools against a wall of one temperature, fully developed. */
const FILM_NUSSELT = 1.885;

/** Depth of a laminar film that runs down an upright bore: entry `falling-film-depth`. */
export const fallingFilmDepth = (m: number, D_i: number, rho_l: number, mu_l: number, g: number): number =>
  m > 0 ? Math.cbrt((3 * mu_l * m) / (Math.PI * D_i * rho_l * rho_l * g)) : 0;

/** Conductance of that film per metre: entry `falling-film-conductance`. */
export const fallingFilmConductance = (
  m: number,
  D_i: number,
  rho_l: number,
  mu_l: number,
  k_l: number,
  g: number,
): number => (m > 0 ? (FILM_NUSSELT * k_l * Math.PI * D_i) / fallingFilmDepth(m, D_i, rho_l, mu_l, g) : 0);

const bore: Argument = { unit: 'm', says: 'bore of the tube' };
const gravity: Argument = { unit: 'm/s²', says: 'acceleration of gravity' };
const m: Argument = { unit: 'kg/s', says: 'condensate in the tube' };
const liquid: Readonly<Record<string, Argument>> = {
  rho_l: { unit: 'kg/m³', says: 'density of the condensate' },
  mu_l: { unit: 'Pa s', says: 'viscosity of the condensate' },
};

export const fallingFilmCorrelations: readonly Correlation[] = [
  correlation({
    name: 'falling-film-depth',
    says: 'Depth of a laminar film of condensate that runs down the whole bore of an upright tube.',
    arguments: { m, D_i: bore, ...liquid, g: gravity },
    result: { symbol: '\\delta', unit: 'm' },
    tex: '\\delta = \\left(\\frac{3\\mu_l\\,\\dot m}{\\pi D_i\\,\\rho_l^2\\,g}\\right)^{1/3}',
    source: 'Nusselt’s film depth',
    outside: 'evaluated; ripples thin the film above a film Reynolds number of about 30; zero without flow',
    compute: fallingFilmDepth,
  }),
  correlation({
    name: 'falling-film-conductance',
    says: 'Heat that condensate running down the whole bore of an upright tube gives to the wall, per length of tube and degree.',
    arguments: {
      m,
      D_i: bore,
      ...liquid,
      k_l: { unit: 'W/(m K)', says: 'conductivity of the condensate' },
      g: gravity,
    },
    result: { symbol: "UA'", unit: 'W/(m K)' },
    tex: "UA' = 1.885\\,\\frac{k_l}{\\delta}\\,\\pi D_i,\\quad \\delta = \\left(\\frac{3\\mu_l\\,\\dot m}{\\pi D_i\\,\\rho_l^2\\,g}\\right)^{1/3}",
    source: 'Nusselt’s film depth; developed laminar film on a wall of one temperature (Nu = 1.885 on the depth)',
    outside:
      'evaluated; a lower bound above a film Reynolds number of 30, where ripples help; dry patches hinder; zero without flow',
    compute: fallingFilmConductance,
  }),
];
