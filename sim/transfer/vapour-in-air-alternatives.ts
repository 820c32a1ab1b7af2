import { alternative, forReaders, type Argument, type Correlation } from '../correlation.ts';

/** Other ways to the transfer coefficient of a vapour, and single drops; the four laws spread eightfold. */

/** Coefficient over a flat plate in a draught: entry `film-coefficient-flat-plate`. */
export const filmCoefficientFlatPlate = (u: number, L: number, nu: number, D: number): number =>
  (0.664 * Math.sqrt((u * L) / nu) * Math.cbrt(nu / D) * D) / L;

/** Coefficient over a spill outdoors: entry `film-coefficient-spill`. */
export const filmCoefficientSpill = (u: number, d: number, nu: number, D: number): number =>
  0.0048 * Math.pow(u, 7 / 9) * Math.pow(d, -1 / 9) * Math.pow(nu / D, -2 / 3);

/** Coefficient over a sheltered surface: entry `film-coefficient-sheltered`. */
export const filmCoefficientSheltered = (u: number, M: number): number =>
  0.0025 * Math.pow(u, 0.78) * Math.cbrt(0.018 / M);

/** Coefficient from that of heat: entry `film-coefficient-from-heat`. */
export const filmCoefficientFromHeat = (h: number, rho: number, cp: number, alpha: number, D: number): number =>
  (h / (rho * cp)) * Math.pow(alpha / D, -2 / 3);

/** Coefficient of a vapour that moves the air by its own weight: entry `film-coefficient-own-vapour`. */
export const filmCoefficientOwnVapour = (y: number, M: number, L: number, nu: number, D: number): number => {
  const Sc = nu / D;
  const Ra = ((9.81 * y * Math.abs(1000 * M - 28.96) * L * L * L) / (28.96 * nu * nu)) * Sc;
  return ((0.68 + (0.67 * Math.pow(Ra, 0.25)) / Math.pow(1 + Math.pow(0.492 / Sc, 9 / 16), 4 / 9)) * D) / L;
};

/** Time in which a hanging drop is gone in still air: entry `drop-life-still-air`. */
export const dropLifeStillAir = (V: number, rho: number, D: number, c: number): number =>
  (rho * Math.pow((6 * V) / Math.PI, 2 / 3)) / (8 * D * c);

/** Evaporation of a drop that sits on a surface in still air: entry `sitting-drop-still-air`. */
export const sittingDropStillAir = (r: number, theta: number, D: number, c: number): number =>
  Math.PI * r * D * c * (0.27 * theta * theta + 1.3);

const speed: Argument = { unit: 'm/s', says: 'speed of the air', range: [0.01, 2] };
const viscosity: Argument = { unit: 'm²/s', says: 'kinematic viscosity of the air' };
const diffusivity: Argument = { unit: 'm²/s', says: 'diffusivity of the vapour in air' };
const saturated: Argument = { unit: 'kg/m³', says: 'concentration of saturated vapour' };
const result = { symbol: 'k', unit: 'm/s' } as const;

export const vapourInAirAlternatives: readonly Correlation[] = [
  alternative({
    name: 'film-coefficient-flat-plate',
    says: 'Transfer coefficient of a vapour from a flat surface in a draught.',
    arguments: { u: speed, L: { unit: 'm', says: 'length of the surface' }, nu: viscosity, D: diffusivity },
    result,
    tex: 'k = 0.664\\,\\sqrt{\\frac{uL}{\\nu}}\\left(\\frac{\\nu}{D}\\right)^{1/3}\\frac{D}{L}',
    source: 'laminar flat plate, Incropera 6e eq. 7.31 for mass',
    outside: 'evaluated; laminar below a Reynolds number of 500 000',
    compute: filmCoefficientFlatPlate,
  }),
  alternative({
    name: 'film-coefficient-spill',
    says: 'Transfer coefficient of a vapour from a spill outdoors.',
    arguments: { u: speed, d: { unit: 'm', says: 'diameter of the spill' }, nu: viscosity, D: diffusivity },
    result,
    tex: 'k = 0.0048\\,u^{7/9}d^{-1/9}\\left(\\frac{\\nu}{D}\\right)^{-2/3}',
    source: 'Kawamura and Mackay 1987, as quoted in teaching slides',
    outside: 'evaluated; made for pools of metres',
    compute: filmCoefficientSpill,
  }),
  alternative({
    name: 'film-coefficient-sheltered',
    says: 'Transfer coefficient of a vapour from a sheltered surface.',
    arguments: { u: speed, M: { unit: 'kg/mol', says: 'molar mass' } },
    result,
    tex: 'k = 0.0025\\,u^{0.78}\\left(\\frac{0.018}{M}\\right)^{1/3}',
    source: 'EPA form, chosen for recessed skin cells by Gajjar, Miller and Kasting 2013 (constant from memory)',
    outside: 'evaluated',
    compute: filmCoefficientSheltered,
  }),
  alternative({
    name: 'film-coefficient-from-heat',
    says: 'Transfer coefficient of a vapour from that of heat.',
    arguments: {
      h: { unit: 'W/(m² K)', says: 'film coefficient of heat' },
      rho: { unit: 'kg/m³', says: 'density of the air' },
      cp: { unit: 'J/(kg K)', says: 'heat capacity of the air' },
      alpha: { unit: 'm²/s', says: 'thermal diffusivity of the air' },
      D: diffusivity,
    },
    result,
    tex: 'k = \\frac{h}{\\rho c_p}\\left(\\frac{\\alpha}{D}\\right)^{-2/3}',
    source: 'Chilton and Colburn 1934, Incropera 6e eq. 6.60',
    outside: 'evaluated',
    compute: filmCoefficientFromHeat,
  }),
  alternative({
    name: 'film-coefficient-own-vapour',
    says: 'Transfer coefficient of a vapour that falls along an upright strip by its own weight, or rises where it is lighter than air.',
    arguments: {
      y: { unit: '1', says: 'vapour pressure over air pressure', range: [0, 0.1] },
      M: { unit: 'kg/mol', says: 'molar mass' },
      L: { unit: 'm', says: 'height of the strip' },
      nu: viscosity,
      D: diffusivity,
    },
    result,
    tex: 'k = \\frac{D}{L}\\left[0.68+\\frac{0.67\\,Ra^{1/4}}{\\left(1+(0.492/Sc)^{9/16}\\right)^{4/9}}\\right],\\quad Ra = \\frac{9.81\\,y\\,|1000M-28.96|\\,L^3}{28.96\\,\\nu^2}Sc',
    source: 'Churchill and Chu 1975, laminar, with the weight of the vapour for that of warm air',
    outside: 'evaluated',
    compute: filmCoefficientOwnVapour,
  }),
  forReaders({
    name: 'drop-life-still-air',
    says: 'Time in which a hanging drop evaporates in still air.',
    arguments: {
      V: { unit: 'm³', says: 'volume of the drop' },
      rho: { unit: 'kg/m³', says: 'density of the liquid' },
      D: diffusivity,
      c: saturated,
    },
    result: { symbol: 't', unit: 's' },
    tex: 't = \\frac{\\rho\\,d^2}{8Dc},\\quad d = \\left(\\frac{6V}{\\pi}\\right)^{1/3}',
    source: 'Langmuir 1918',
    outside: 'evaluated',
    compute: dropLifeStillAir,
  }),
  forReaders({
    name: 'sitting-drop-still-air',
    says: 'Evaporation of a drop that sits on a surface in still air.',
    arguments: {
      r: { unit: 'm', says: 'radius of the wetted spot' },
      theta: { unit: 'rad', says: 'contact angle', range: [0, 1.571] },
      D: diffusivity,
      c: saturated,
    },
    result: { symbol: 'J', unit: 'kg/s' },
    tex: 'J = \\pi rDc\\,(0.27\\theta^2+1.30)',
    source: 'Hu and Larson 2002',
    outside: 'evaluated',
    compute: sittingDropStillAir,
  }),
];
