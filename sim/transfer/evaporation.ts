import { type Argument, type Correlation, positionalCorrelation } from '../correlation.ts';

/** Evaporation from the open top of a tub, which rules its balance above about 60 °C. */

/**
 * Heat carried off an open water surface by evaporation (Carrier 1918, as in the ASHRAE Handbook, activity factor
 * 1), W/m²: (p_w − p_a)(0.089 + 0.0782 V) with pressures in Pa.
 *
 * @param p_w saturation pressure at the water's temperature, Pa
 * @param p_a partial pressure of water vapour in the air, Pa
 * @param V speed of the air over the surface, m/s
 * Range: fitted near room temperature; ±30 % above 50 °C. Moister air than the water gives a negative value: dew.
 * Source: see the entry.
 */
export const evaporationFluxCarrier = (p_w: number, p_a: number, V: number): number =>
  (p_w - p_a) * (0.089 + 0.0782 * Math.max(0, V));

/** Water evaporated, kg/m²s: `evaporationFluxCarrier` over the latent heat h_fg at the water's temperature, J/kg. */
export const evaporationRateCarrier = (p_w: number, p_a: number, V: number, h_fg: number): number =>
  evaporationFluxCarrier(p_w, p_a, V) / h_fg;

/**
 * Density of moist air as a mixture of ideal gases, kg/m³: (p − p_v)/(R_a T) + p_v/(R_v T).
 * @param p pressure, Pa; @param p_v partial pressure of water vapour, Pa; @param T temperature, K
 * R_a = 287.0, R_v = 461.5 J/kgK. Exact for ideal gases.
 */
export const moistAirDensity = (p: number, p_v: number, T: number): number => (p - p_v) / (287 * T) + p_v / (461.5 * T);

/**
 * Grashof number of a wet surface facing up, from the densities of the air at the surface and far off, pure number:
 * g (ρ_∞ − ρ_s) L³/(ρ̄ ν²). Heavier air below the light: zero when the surface air is the heavier.
 * @param rho_s, rho_inf densities, kg/m³; @param L area over perimeter, m; @param nu kinematic viscosity, m²/s
 */
export const moistAirGrashof = (rho_s: number, rho_inf: number, L: number, nu: number, g: number): number =>
  Math.max(0, (g * (rho_inf - rho_s) * L * L * L) / (0.5 * (rho_s + rho_inf) * nu * nu));

/**
 * Mean Nusselt or Sherwood number of a hot, wet surface facing up, pure number: 0.15 (Gr · Pr or Sc)^⅓.
 * Cross-check of the Carrier relation, not used by the engine. Range: Gr Pr 10⁷–10¹¹. Source: see the entry.
 */
export const sherwoodHotSideUp = (Gr: number, Sc: number): number => 0.15 * Math.cbrt(Gr * Sc);

/**
 * Diffusivity of water vapour in air, m²/s: 1.87·10⁻¹⁰ T^2.072 / (p/atm).
 * @param T K; @param p Pa. Range: 280–450 K. Source: see the entry.
 */
export const vapourDiffusivityInAir = (T: number, p: number): number => (1.87e-10 * Math.pow(T, 2.072)) / (p / 101325);

const surface: Readonly<Record<string, Argument>> = {
  p_w: { unit: 'Pa', says: "saturation pressure at the water's temperature" },
  p_a: { unit: 'Pa', says: 'partial pressure of water vapour in the air' },
  V: { unit: 'm/s', says: 'speed of the air over the surface', range: [0, 1] },
};
const carrier =
  'Carrier 1918; ASHRAE Handbook HVAC Applications, natatoriums, activity factor 1 (constants from memory)';
const fitted = 'evaluated; fitted near room temperature, ±30 % above 50 °C; negative when dew falls';
const analogy = 'Cengel 3e, section 14-10 and Example 14-13';

export const evaporationCorrelations: readonly Correlation[] = [
  positionalCorrelation(
    {
      name: 'evaporation-flux-carrier',
      says: 'Heat carried off an open water surface by evaporation.',
      arguments: surface,
      result: { symbol: 'q', unit: 'W/m²' },
      tex: 'q = (p_w-p_a)(0.089+0.0782V)',
      source: carrier,
      outside: fitted,
    },
    evaporationFluxCarrier,
  ),
  positionalCorrelation(
    {
      name: 'evaporation-rate-carrier',
      says: 'Water evaporated from an open surface.',
      arguments: { ...surface, h_fg: { unit: 'J/kg', says: "latent heat at the water's temperature" } },
      result: { symbol: 'w', unit: 'kg/(m² s)' },
      tex: 'w = \\frac{(p_w-p_a)(0.089+0.0782V)}{h_{fg}}',
      source: carrier,
      outside: fitted,
    },
    evaporationRateCarrier,
  ),
  positionalCorrelation(
    {
      name: 'moist-air-density',
      says: 'Density of moist air.',
      arguments: {
        p: { unit: 'Pa', says: 'pressure' },
        p_v: { unit: 'Pa', says: 'partial pressure of water vapour' },
        T: { unit: 'K', says: 'temperature' },
      },
      result: { symbol: '\\rho', unit: 'kg/m³' },
      tex: '\\rho = \\frac{p-p_v}{R_aT}+\\frac{p_v}{R_vT}',
      source: analogy,
      outside: 'ideal gases; no limits',
    },
    moistAirDensity,
  ),
  positionalCorrelation(
    {
      name: 'moist-air-grashof',
      says: 'Buoyancy of warm, moist air over a wet surface.',
      arguments: {
        rho_s: { unit: 'kg/m³', says: 'density of the air at the surface' },
        rho_inf: { unit: 'kg/m³', says: 'density of the air far off' },
        L: { unit: 'm', says: 'area over perimeter' },
        nu: { unit: 'm²/s', says: 'kinematic viscosity of the air' },
        g: { unit: 'm/s²', says: 'acceleration of gravity' },
      },
      result: { symbol: 'Gr', unit: '1' },
      tex: 'Gr = \\frac{g(\\rho_\\infty-\\rho_s)L^3}{\\bar\\rho\\,\\nu^2}',
      source: analogy,
      outside: 'zero when the surface air is the heavier',
    },
    moistAirGrashof,
  ),
  positionalCorrelation(
    {
      name: 'sherwood-hot-side-up',
      says: 'Mass or heat transfer over a wet surface facing up; comparison only.',
      arguments: {
        Gr: { unit: '1', says: 'Grashof number' },
        Sc: { unit: '1', says: 'Schmidt number, or Prandtl number for heat' },
      },
      result: { symbol: 'Sh', unit: '1' },
      tex: 'Sh = 0.15(Gr\\,Sc)^{1/3}',
      source: analogy,
      outside: 'evaluated; comparison only, not used by the engine',
    },
    sherwoodHotSideUp,
  ),
  positionalCorrelation(
    {
      name: 'vapour-diffusivity-in-air',
      says: 'Diffusivity of water vapour in air.',
      arguments: { T: { unit: 'K', says: 'temperature', range: [280, 450] }, p: { unit: 'Pa', says: 'pressure' } },
      result: { symbol: 'D_{AB}', unit: 'm²/s' },
      tex: 'D_{AB} = 1.87\\cdot10^{-10}\\frac{T^{2.072}}{p/\\mathrm{atm}}',
      source: 'Marrero and Mason 1972, as Cengel 3e eq. 14-15',
      outside: 'evaluated',
    },
    vapourDiffusivityInAir,
  ),
];
