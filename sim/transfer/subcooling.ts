import { correlation, forReaders, type Argument, type Correlation } from '../correlation.ts';

/**
 * The condensate after the last steam. In an upright tube: a film on the whole bore, at the end of this file. In a
 * slightly sloping one: a thin laminar rivulet along the bottom, wetting part of the bore. AN ESTIMATE of this project, not a published correlation; heat transfer to a rivulet in a tube of
 * this size has not been measured in the sources read.
 *
 * Shape: the surface is level and meets the wall at an angle φ up from the lowest line, a circular segment.
 * Flow: every strip runs as a Nusselt film of its own depth δ, q = g sin α δ³/3ν; summed over the segment
 *   m = ρ g sin α R⁴/(3ν) · (4/35) φ⁷ (1 − φ²/3 + …), turned round for φ.
 * Heat: Nu = 3.66 on the hydraulic diameter 4 A/P, P the wetted perimeter. With a full bore that is the developed
 * laminar value; for a thin segment it lies between the bounds of 3.4 k/φ (everything waits for the deepest strip to
 * cool) and about 11 k/φ per metre (the segment as an even film, Nu = 1.885 on its mean depth). Treat as ± 40 %.
 */

/** Nusselt number on the hydraulic diameter. */
const NUSSELT = 3.66;

/** Angle from the lowest line of the bore to the edge of the rivulet: entry `rivulet-half-angle`. */
export const rivuletHalfAngle = (
  m: number,
  D_i: number,
  slope: number,
  rho_l: number,
  mu_l: number,
  g: number,
): number => {
  if (!(m > 0)) return 0;
  const fall = g * Math.sin(Math.abs(slope));
  if (!(fall > 0)) return Math.PI;
  const R = 0.5 * D_i;
  const seventh = (105 * mu_l * m) / (4 * rho_l * rho_l * fall * R * R * R * R);
  const thin = Math.pow(seventh, 1 / 7);
  return Math.min(Math.PI, thin * (1 + (thin * thin) / 21));
};

/** Greatest depth of the rivulet: entry `rivulet-depth`. */
export const rivuletDepth = (phi: number, D_i: number): number => 0.5 * D_i * (1 - Math.cos(phi));

/** Conductance from the rivulet’s bulk to the wall per metre: entry `rivulet-conductance`. */
export const rivuletConductance = (phi: number, k_l: number): number => {
  if (!(phi > 0)) return 0;
  // φ − sin φ cos φ loses its figures for a thin rivulet; there its series (2 φ³/3)(1 − φ²/5) serves.
  const squared = phi * phi;
  return phi < 0.01
    ? (1.5 * NUSSELT * k_l) / (phi * (1 - squared / 5))
    : (NUSSELT * k_l * squared) / (phi - Math.sin(phi) * Math.cos(phi));
};

/** Film coefficient on the wetted strip: entry `rivulet-film-coefficient`. */
export const rivuletFilmCoefficient = (phi: number, D_i: number, k_l: number): number =>
  phi > 0 ? rivuletConductance(phi, k_l) / (D_i * phi) : 0;

/** Conductance per metre straight from the flow: entry `subcooling-conductance`. */
export const subcoolingConductance = (
  m: number,
  D_i: number,
  slope: number,
  rho_l: number,
  mu_l: number,
  k_l: number,
  g: number,
): number => rivuletConductance(rivuletHalfAngle(m, D_i, slope, rho_l, mu_l, g), k_l);

/** Nusselt number on the film's depth of a laminar film that cools against a wall of one temperature, fully developed. */
const FILM_NUSSELT = 1.885;

/** Depth of a laminar film that runs down an upright bore: entry `falling-film-depth`. */
export const fallingFilmDepth = (m: number, D_i: number, rho_l: number, mu_l: number, g: number): number =>
  m > 0 ? Math.cbrt((3 * mu_l * m) / (Math.PI * D_i * rho_l * rho_l * g)) : 0;

/** Conductance of that film: entry `falling-film-conductance`. No lowest line lets a rivulet gather in an upright tube. */
export const fallingFilmConductance = (
  m: number,
  D_i: number,
  rho_l: number,
  mu_l: number,
  k_l: number,
  g: number,
): number => (m > 0 ? (FILM_NUSSELT * k_l * Math.PI * D_i) / fallingFilmDepth(m, D_i, rho_l, mu_l, g) : 0);

const bore: Argument = { unit: 'm', says: 'bore of the tube' };
const angle: Argument = { unit: 'rad', says: 'angle from the lowest line to the edge of the rivulet', range: [0, 1] };
const conductivity: Argument = { unit: 'W/(m K)', says: 'conductivity of the condensate' };
const gravity: Argument = { unit: 'm/s²', says: 'acceleration of gravity' };
const m: Argument = { unit: 'kg/s', says: 'condensate in the tube' };
const liquid: Readonly<Record<string, Argument>> = {
  rho_l: { unit: 'kg/m³', says: 'density of the condensate' },
  mu_l: { unit: 'Pa s', says: 'viscosity of the condensate' },
};
const stream: Readonly<Record<string, Argument>> = {
  m,
  D_i: bore,
  slope: { unit: 'rad', says: 'inclination of the tube', range: [0.017, 0.27] },
  ...liquid,
};
const fallingFilm: Readonly<Record<string, Argument>> = { m, D_i: bore, ...liquid, g: gravity };
const source = 'estimate of this project: Nusselt films side by side, Nu = 3.66 on the hydraulic diameter; ± 40 %';
const outside = 'evaluated; at most the full bore';

export const subcoolingCorrelations: readonly Correlation[] = [
  correlation({
    name: 'rivulet-half-angle',
    says: 'How far up the bore a rivulet of condensate reaches in a sloping tube; an estimate.',
    arguments: { ...stream, g: gravity },
    result: { symbol: '\\varphi', unit: 'rad' },
    tex: '\\dot m = \\frac{\\rho_l^2g\\sin\\alpha\\,R^4}{3\\mu_l}\\cdot\\frac{4}{35}\\varphi^7\\left(1-\\frac{\\varphi^2}{3}\\right)',
    source,
    outside:
      'evaluated; meant for angles below about 1 and slopes of 1–15°; a level tube counts as full; zero without flow',
    compute: rivuletHalfAngle,
  }),
  forReaders({
    name: 'rivulet-depth',
    says: 'Greatest depth of a rivulet of condensate in a tube; an estimate.',
    arguments: { phi: angle, D_i: bore },
    result: { symbol: '\\delta', unit: 'm' },
    tex: '\\delta = R(1-\\cos\\varphi)',
    source,
    outside,
    compute: rivuletDepth,
  }),
  correlation({
    name: 'rivulet-conductance',
    says: 'Heat that a rivulet of known width gives to the wall, per metre of tube and kelvin; an estimate.',
    arguments: { phi: angle, k_l: conductivity },
    result: { symbol: "UA'", unit: 'W/(m K)' },
    tex: "UA' = 3.66\\,k_l\\frac{P^2}{4A} = 3.66\\,k_l\\frac{\\varphi^2}{\\varphi-\\sin\\varphi\\cos\\varphi}",
    source,
    outside: 'evaluated; zero without a rivulet',
    compute: rivuletConductance,
  }),
  forReaders({
    name: 'rivulet-film-coefficient',
    says: 'Film coefficient of a rivulet of condensate on the strip that it wets; an estimate.',
    arguments: { phi: angle, D_i: bore, k_l: conductivity },
    result: { symbol: 'h', unit: 'W/(m² K)' },
    tex: 'h = 3.66\\frac{k_l}{4A/P}',
    source,
    outside,
    compute: rivuletFilmCoefficient,
  }),
  correlation({
    name: 'subcooling-conductance',
    says: 'Heat that a rivulet of condensate gives to the wall, per metre of tube and kelvin; an estimate.',
    arguments: { ...stream, k_l: conductivity, g: gravity },
    result: { symbol: "UA'", unit: 'W/(m K)' },
    tex: "UA' = 3.66\\,k_l\\frac{\\varphi^2}{\\varphi-\\sin\\varphi\\cos\\varphi}",
    source,
    outside,
    compute: subcoolingConductance,
  }),
  correlation({
    name: 'falling-film-depth',
    says: 'Depth of a laminar film of condensate that runs down the whole bore of an upright tube.',
    arguments: fallingFilm,
    result: { symbol: '\\delta', unit: 'm' },
    tex: '\\delta = \\left(\\frac{3\\mu_l\\,\\dot m}{\\pi D_i\\,\\rho_l^2\\,g}\\right)^{1/3}',
    source: 'Nusselt’s film depth',
    outside: 'evaluated; ripples thin the film above a film Reynolds number of about 30; zero without flow',
    compute: fallingFilmDepth,
  }),
  correlation({
    name: 'falling-film-conductance',
    says: 'Heat that condensate running down the whole bore of an upright tube gives to the wall, per metre of tube and kelvin.',
    arguments: { m, D_i: bore, ...liquid, k_l: conductivity, g: gravity },
    result: { symbol: "UA'", unit: 'W/(m K)' },
    tex: "UA' = 1.885\\,\\frac{k_l}{\\delta}\\,\\pi D_i,\\quad \\delta = \\left(\\frac{3\\mu_l\\,\\dot m}{\\pi D_i\\,\\rho_l^2\\,g}\\right)^{1/3}",
    source: 'Nusselt’s film depth; developed laminar film on a wall of one temperature (Nu = 1.885 on the depth)',
    outside:
      'evaluated; a lower bound above a film Reynolds number of 30, where ripples help; dry patches hinder; zero without flow',
    compute: fallingFilmConductance,
  }),
];
