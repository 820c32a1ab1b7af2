import { correlation, type Argument, type Correlation } from '../correlation.ts';

/**
 * Condensation inside horizontal and slightly sloping tubes: the stratified laminar film that every ordinary
 * coil has, and the vapour speed at which shear takes over.
 *
 * Order of arguments throughout: flow, geometry, temperature difference, then properties, g last.
 */

const fourthRoot = (x: number): number => Math.sqrt(Math.sqrt(x));

/**
 * Heat flux to the wall of a horizontal tube: entry `condensation-flux-chato`. This is the form to solve with: it runs
 * smoothly through ΔT = 0, where the coefficient has no finite limit.
 */
export const condensationFluxChato = (
  D_i: number,
  dT: number,
  h_fg: number,
  rho_l: number,
  rho_v: number,
  k_l: number,
  mu_l: number,
  cp_l: number,
  g: number,
): number => {
  if (!(dT > 0)) return 0;
  const latent = h_fg + 0.375 * cp_l * dT;
  const group = (g * rho_l * Math.max(0, rho_l - rho_v) * k_l * k_l * k_l * latent) / (mu_l * D_i);
  return 0.555 * fourthRoot(group * dT) * Math.sqrt(dT);
};

/** Mean film coefficient of the same film: entry `film-coefficient-chato`. */
export const filmCoefficientChato = (
  D_i: number,
  dT: number,
  h_fg: number,
  rho_l: number,
  rho_v: number,
  k_l: number,
  mu_l: number,
  cp_l: number,
  g: number,
): number => (dT > 0 ? condensationFluxChato(D_i, dT, h_fg, rho_l, rho_v, k_l, mu_l, cp_l, g) / dT : 0);

/** Vapour velocity against gravity acting on the film: entry `dimensionless-vapour-velocity`. */
export const dimensionlessVapourVelocity = (
  G: number,
  x: number,
  D_i: number,
  rho_l: number,
  rho_v: number,
  g: number,
): number => (x * G) / Math.sqrt(g * D_i * rho_v * (rho_l - rho_v));

/**
 * The transition of `cavalliniTransition` from the logarithms of x, 1 − x, ρ_l/ρ_v and μ_l/μ_v. Multiplied through by
 * x^(0.9·1.111), so that nothing grows without bound as the vapour goes.
 */
const transitionFromLogs = (vapour: number, liquid: number, densities: number, viscosities: number): number => {
  const exponent = 0.9 * 1.111;
  const dry = Math.exp(exponent * vapour);
  const wet = Math.exp(exponent * liquid + 1.111 * (0.1 * viscosities - 0.5 * densities));
  const wavy = (7.5 * dry) / (4.3 * wet + dry);
  return (2.6 * wavy) / Math.cbrt(2.6 * 2.6 * 2.6 + wavy * wavy * wavy);
};

/** Vapour velocity at which shear takes over: entry `cavallini-transition-velocity`. */
export const cavalliniTransition = (x: number, rho_l: number, rho_v: number, mu_l: number, mu_v: number): number => {
  const share = Math.min(1, Math.max(0, x));
  return transitionFromLogs(Math.log(share), Math.log(1 - share), Math.log(rho_l / rho_v), Math.log(mu_l / mu_v));
};

/**
 * Local film coefficient with vapour shear counted: entry `film-coefficient-cavallini`. Written so that the gravity
 * branch stays finite at x = 0, where it tends to the all-liquid coefficient.
 */
export const filmCoefficientCavallini = (
  G: number,
  x: number,
  D_i: number,
  dT: number,
  h_fg: number,
  rho_l: number,
  rho_v: number,
  k_l: number,
  mu_l: number,
  mu_v: number,
  cp_l: number,
  g: number,
): number => {
  const share = Math.min(1, Math.max(0, x));
  // Every power is of one of seven numbers: their logarithms are taken once, four times as fast as the powers.
  const vapour = Math.log(share);
  const liquid = Math.log(1 - share);
  const densities = Math.log(rho_l / rho_v);
  const viscosities = Math.log(mu_l / mu_v);
  const prandtl = Math.log((mu_l * cp_l) / k_l);
  const h_LO = ((0.023 * k_l) / D_i) * Math.exp(0.8 * Math.log((G * D_i) / mu_l) + 0.4 * prandtl);
  const transition = transitionFromLogs(vapour, liquid, densities, viscosities);
  if (transition === 0) return h_LO;
  const annular =
    0.817 * vapour +
    0.3685 * densities +
    0.2363 * viscosities +
    2.144 * Math.log(Math.max(0, 1 - mu_v / mu_l)) -
    0.1 * prandtl;
  const h_A = h_LO * (1 + 1.128 * Math.exp(annular));
  const ratio = dimensionlessVapourVelocity(G, share, D_i, rho_l, rho_v, g) / transition;
  if (ratio >= 1) return h_A;
  const film =
    dT > 0
      ? (0.725 / (1 + 0.741 * Math.exp(0.3321 * (liquid - vapour)))) *
        (fourthRoot((k_l * k_l * k_l * rho_l * (rho_l - rho_v) * g * h_fg) / (mu_l * D_i)) / fourthRoot(dT))
      : 0;
  const h_S = film + (1 - Math.exp(0.087 * vapour)) * h_LO;
  return h_A * Math.exp(0.2 * Math.log(ratio)) + h_S * (1 - ratio);
};

const bore: Argument = { unit: 'm', says: 'bore of the tube', range: [0.003, 0.05] };
const massFlux: Argument = { unit: 'kg/(m² s)', says: 'mass flux over the whole bore' };
const vapourShare: Argument = { unit: '1', says: 'vapour share of the flow', range: [0, 1] };
const liquid = {
  rho_l: { unit: 'kg/m³', says: 'density of the condensate' },
  rho_v: { unit: 'kg/m³', says: 'density of the saturated vapour' },
} as const;
const gravity: Argument = { unit: 'm/s²', says: 'acceleration of gravity' };
const chatoArguments: Readonly<Record<string, Argument>> = {
  D_i: bore,
  dT: { unit: 'K', says: 'saturation temperature less wall temperature', range: [0, 100], isDifference: true },
  h_fg: { unit: 'J/kg', says: 'latent heat at saturation' },
  ...liquid,
  k_l: { unit: 'W/(m K)', says: 'conductivity of the condensate' },
  mu_l: { unit: 'Pa s', says: 'viscosity of the condensate' },
  cp_l: { unit: 'J/(kg K)', says: 'heat capacity of the condensate' },
  g: gravity,
};
const chatoSource =
  'Chato, J. Am. Soc. Refrig. Air Cond. Eng. 4 (1962) 52, in the 0.555 form of Incropera et al. 6e eq. 10.50 and Cengel 3e eq. 10-34';
const cavalliniSource =
  'Cavallini et al., Heat Transfer Engineering 27(8) (2006) 31–38, C_T = 2.6 for fluids other than hydrocarbons';

export const filmCondensationCorrelations: readonly Correlation[] = [
  correlation({
    name: 'film-coefficient-chato',
    says: 'Mean film coefficient of vapour condensing inside a horizontal or slightly sloping tube.',
    arguments: chatoArguments,
    result: { symbol: 'h', unit: 'W/(m² K)' },
    tex: "h = 0.555\\left[\\frac{g\\,\\rho_l(\\rho_l-\\rho_v)k_l^3 h'_{fg}}{\\mu_l\\,\\Delta T\\,D_i}\\right]^{1/4},\\quad h'_{fg}=h_{fg}+\\tfrac{3}{8}c_{p,l}\\Delta T",
    source: chatoSource,
    outside:
      'evaluated; meant for slopes of 0–15°; reads low once vapour shear matters (inlet Re_v > 35 000 or J_G > 2.6); zero where the wall is not colder',
    compute: filmCoefficientChato,
  }),
  correlation({
    name: 'condensation-flux-chato',
    says: 'Heat flux from vapour condensing inside a horizontal tube to its wall.',
    arguments: chatoArguments,
    result: { symbol: 'q', unit: 'W/m²' },
    tex: "q = 0.555\\left[\\frac{g\\,\\rho_l(\\rho_l-\\rho_v)k_l^3 h'_{fg}}{\\mu_l\\,D_i}\\right]^{1/4}\\Delta T^{3/4}",
    source: chatoSource,
    outside:
      'evaluated; meant for slopes of 0–15°; reads low once vapour shear matters; zero where the wall is not colder',
    compute: condensationFluxChato,
  }),
  correlation({
    name: 'dimensionless-vapour-velocity',
    says: 'Vapour velocity in a horizontal tube against gravity acting on the film: below about 2.6 gravity shapes the film, above it shear.',
    arguments: { G: massFlux, x: vapourShare, D_i: bore, ...liquid, g: gravity },
    result: { symbol: 'J_G', unit: '1' },
    tex: 'J_G = \\frac{x\\,G}{\\sqrt{g\\,D_i\\,\\rho_v(\\rho_l-\\rho_v)}}',
    source: `Wallis; ${cavalliniSource}`,
    outside: 'exact definition; no limits',
    compute: dimensionlessVapourVelocity,
  }),
  correlation({
    name: 'cavallini-transition-velocity',
    says: 'Dimensionless vapour velocity above which shear, not gravity, shapes the condensate film.',
    arguments: {
      x: vapourShare,
      ...liquid,
      mu_l: { unit: 'Pa s', says: 'viscosity of the condensate' },
      mu_v: { unit: 'Pa s', says: 'viscosity of the vapour' },
    },
    result: { symbol: 'J_G^T', unit: '1' },
    tex: 'J_G^T = \\left\\{\\left[\\frac{7.5}{4.3X_{tt}^{1.111}+1}\\right]^{-3}+C_T^{-3}\\right\\}^{-1/3},\\quad C_T=2.6',
    source: cavalliniSource,
    outside:
      'evaluated; tubes of 3–17 mm, mostly with refrigerants; steam near 1 atm is an extrapolation; zero without vapour',
    compute: cavalliniTransition,
  }),
  correlation({
    name: 'film-coefficient-cavallini',
    says: 'Local film coefficient of vapour condensing inside a horizontal tube, vapour shear counted.',
    arguments: {
      G: massFlux,
      x: vapourShare,
      D_i: { unit: 'm', says: 'bore of the tube', range: [0.003, 0.017] },
      dT: { unit: 'K', says: 'saturation temperature less wall temperature', range: [0, 100], isDifference: true },
      h_fg: { unit: 'J/kg', says: 'latent heat' },
      ...liquid,
      k_l: { unit: 'W/(m K)', says: 'conductivity of the condensate' },
      mu_l: { unit: 'Pa s', says: 'viscosity of the condensate' },
      mu_v: { unit: 'Pa s', says: 'viscosity of the vapour' },
      cp_l: { unit: 'J/(kg K)', says: 'heat capacity of the condensate' },
      g: gravity,
    },
    result: { symbol: 'h', unit: 'W/(m² K)' },
    tex: 'h=\\begin{cases}h_A & J_G>J_G^T\\\\ \\left[h_A\\left(J_G^T/J_G\\right)^{0.8}-h_S\\right]\\left(J_G/J_G^T\\right)+h_S & J_G\\le J_G^T\\end{cases}',
    source: cavalliniSource,
    outside:
      'evaluated; mostly refrigerants: low-pressure steam (density ratio 1600) is an extrapolation; the film term is left out where the wall is not colder',
    compute: filmCoefficientCavallini,
  }),
];
