import { correlation, forReaders, type Argument, type Correlation } from '../correlation.ts';

/** Boiling on the pot's base, and carrying-over of drops by steam. */

/** The flux scale of Rohsenow's relation, W/m²: μ_l h_fg √[g (ρ_l − ρ_v)/σ]. */
const scaleFlux = (mu_l: number, h_fg: number, rho_l: number, rho_v: number, sigma: number, g: number): number =>
  mu_l * h_fg * Math.sqrt((g * (rho_l - rho_v)) / sigma);

/** Heat flux of nucleate boiling at a known superheat: entry `boiling-flux-rohsenow`. */
export const boilingFluxRohsenow = (
  dT_e: number,
  C_sf: number,
  n: number,
  h_fg: number,
  rho_l: number,
  rho_v: number,
  mu_l: number,
  cp_l: number,
  Pr_l: number,
  sigma: number,
  g: number,
): number => {
  if (!(dT_e > 0)) return 0;
  const drive = (cp_l * dT_e) / (C_sf * h_fg * Math.pow(Pr_l, n));
  return scaleFlux(mu_l, h_fg, rho_l, rho_v, sigma, g) * drive * drive * drive;
};

/** Superheat of the wall at a known flux: entry `boiling-superheat-rohsenow`. */
export const boilingSuperheatRohsenow = (
  q: number,
  C_sf: number,
  n: number,
  h_fg: number,
  rho_l: number,
  rho_v: number,
  mu_l: number,
  cp_l: number,
  Pr_l: number,
  sigma: number,
  g: number,
): number =>
  q > 0 ? (Math.cbrt(q / scaleFlux(mu_l, h_fg, rho_l, rho_v, sigma, g)) * C_sf * h_fg * Math.pow(Pr_l, n)) / cp_l : 0;

/** Critical heat flux of pool boiling: entry `critical-heat-flux-pool`. */
export const criticalHeatFlux = (
  C: number,
  h_fg: number,
  rho_l: number,
  rho_v: number,
  sigma: number,
  g: number,
): number => C * h_fg * Math.sqrt(rho_v) * Math.sqrt(Math.sqrt(sigma * g * Math.max(0, rho_l - rho_v)));

/** Greatest vapour velocity that lets drops fall back: entry `souders-brown`. */
export const soudersBrownVelocity = (K: number, rho_l: number, rho_v: number): number =>
  K * Math.sqrt(Math.max(0, rho_l - rho_v) / rho_v);

/** Velocity of a vapour averaged over a round vessel or neck: entry `superficial-velocity`. */
export const superficialVelocity = (m: number, D: number, rho_v: number): number => (4 * m) / (Math.PI * D * D * rho_v);

const latentHeat: Argument = { unit: 'J/kg', says: 'latent heat' };
const densities: Readonly<Record<string, Argument>> = {
  rho_l: { unit: 'kg/m³', says: 'density of the liquid' },
  rho_v: { unit: 'kg/m³', says: 'density of the vapour' },
};
const tension: Argument = { unit: 'N/m', says: 'surface tension' };
const gravity: Argument = { unit: 'm/s²', says: 'acceleration of gravity' };
const rohsenowTail: Readonly<Record<string, Argument>> = {
  C_sf: {
    unit: '1',
    says: 'surface and fluid: 0.013 stainless, 0.0128 polished copper, 0.006–0.008 ground or scored',
    range: [0.005, 0.02],
  },
  n: { unit: '1', says: '1 for water, 1.7 for other fluids', range: [1, 1.7] },
  h_fg: latentHeat,
  ...densities,
  mu_l: { unit: 'Pa s', says: 'viscosity of the liquid' },
  cp_l: { unit: 'J/(kg K)', says: 'heat capacity of the liquid' },
  Pr_l: { unit: '1', says: 'Prandtl number of the liquid' },
  sigma: tension,
  g: gravity,
};
const rohsenow = 'Rohsenow, Trans. ASME 74 (1952) 969; Incropera et al. 6e eq. 10.5';
const nucleate = 'evaluated; meant for nucleate boiling, ±100 % on flux and ±30 % on superheat';

export const boilingCorrelations: readonly Correlation[] = [
  forReaders({
    name: 'boiling-flux-rohsenow',
    says: 'Heat flux of nucleate boiling at a known superheat of the wall.',
    arguments: {
      dT_e: { unit: 'K', says: 'wall temperature less saturation temperature', range: [0, 30], isDifference: true },
      ...rohsenowTail,
    },
    result: { symbol: 'q', unit: 'W/m²' },
    tex: 'q = \\mu_lh_{fg}\\left[\\frac{g(\\rho_l-\\rho_v)}{\\sigma}\\right]^{1/2}\\left[\\frac{c_{p,l}\\Delta T_e}{C_{sf}h_{fg}Pr_l^n}\\right]^3',
    source: rohsenow,
    outside: `${nucleate}; zero without superheat`,
    compute: boilingFluxRohsenow,
  }),
  forReaders({
    name: 'boiling-superheat-rohsenow',
    says: 'Superheat of a boiling wall at a known heat flux.',
    arguments: { q: { unit: 'W/m²', says: 'heat flux', range: [0, 1.1e6] }, ...rohsenowTail },
    result: { symbol: '\\Delta T_e', unit: 'K', isDifference: true },
    tex: '\\Delta T_e = \\frac{C_{sf}h_{fg}Pr_l^n}{c_{p,l}}\\left\\{\\frac{q}{\\mu_lh_{fg}}\\left[\\frac{\\sigma}{g(\\rho_l-\\rho_v)}\\right]^{1/2}\\right\\}^{1/3}',
    source: rohsenow,
    outside: `${nucleate}; zero without heat flux`,
    compute: boilingSuperheatRohsenow,
  }),
  forReaders({
    name: 'critical-heat-flux-pool',
    says: 'Heat flux at which a boiling surface is blanketed by its own steam.',
    arguments: {
      C: { unit: '1', says: '0.131 (Zuber) or 0.149 (large flat plates)', range: [0.119, 0.18] },
      h_fg: latentHeat,
      ...densities,
      sigma: tension,
      g: gravity,
    },
    result: { symbol: 'q_{max}', unit: 'W/m²' },
    tex: 'q_{max} = C\\,h_{fg}\\rho_v^{1/2}\\left[\\sigma g(\\rho_l-\\rho_v)\\right]^{1/4}',
    source: 'Zuber 1958; Lienhard and Dhir 1973; Incropera et al. 6e eq. 10.6',
    outside: 'evaluated; meant for saturated pools on large surfaces',
    compute: criticalHeatFlux,
  }),
  correlation({
    name: 'souders-brown',
    says: 'Greatest vapour velocity that lets drops fall back.',
    arguments: {
      K: { unit: 'm/s', says: '0.107 with wire mesh, 0.03–0.06 without', range: [0.01, 0.12] },
      ...densities,
    },
    result: { symbol: 'v_{max}', unit: 'm/s' },
    tex: 'v_{max} = K\\sqrt{\\frac{\\rho_l-\\rho_v}{\\rho_v}}',
    source: 'Souders and Brown, Ind. Eng. Chem. 26 (1934) 98',
    outside: 'evaluated; meant for open vessels',
    compute: soudersBrownVelocity,
  }),
  forReaders({
    name: 'superficial-velocity',
    says: 'Velocity of a vapour averaged over a round vessel or neck.',
    arguments: {
      m: { unit: 'kg/s', says: 'vapour rate' },
      D: { unit: 'm', says: 'inside diameter' },
      rho_v: { unit: 'kg/m³', says: 'density of the vapour' },
    },
    result: { symbol: 'v', unit: 'm/s' },
    tex: 'v = \\frac{4\\dot m}{\\pi D^2\\rho_v}',
    source: 'continuity',
    outside: 'exact definition; no limits',
    compute: superficialVelocity,
  }),
];
