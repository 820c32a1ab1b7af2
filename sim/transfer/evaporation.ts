import { alternative, correlation, forReaders, type Argument, type Correlation } from '../correlation.ts';

/** Evaporation from the open top of a tub, which rules its balance above about 60 °C. */

/** Heat carried off an open water surface by evaporation: entry `evaporation-flux-carrier`. */
export const evaporationFluxCarrier = (p_w: number, p_a: number, V: number): number =>
  (p_w - p_a) * (0.089 + 0.0782 * Math.max(0, V));

/** Water evaporated from an open surface: entry `evaporation-rate-carrier`. */
export const evaporationRateCarrier = (p_w: number, p_a: number, V: number, h_fg: number): number =>
  evaporationFluxCarrier(p_w, p_a, V) / h_fg;

/** Density of moist air: entry `moist-air-density`. */
export const moistAirDensity = (p: number, p_v: number, T: number): number => (p - p_v) / (287 * T) + p_v / (461.5 * T);

/** Grashof number of a wet surface facing up: entry `moist-air-grashof`. */
export const moistAirGrashof = (rho_s: number, rho_inf: number, L: number, nu: number, g: number): number =>
  Math.max(0, (g * (rho_inf - rho_s) * L * L * L) / (0.5 * (rho_s + rho_inf) * nu * nu));

/** Mean Nusselt or Sherwood number of a hot, wet surface facing up: entry `sherwood-hot-side-up`. */
export const sherwoodHotSideUp = (Gr: number, Sc: number): number => 0.15 * Math.cbrt(Gr * Sc);

/** Diffusivity of water vapour in air: entry `vapour-diffusivity-in-air`. */
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
  correlation({
    name: 'evaporation-flux-carrier',
    says: 'Heat carried off an open water surface by evaporation.',
    arguments: surface,
    result: { symbol: 'q', unit: 'W/m²' },
    tex: 'q = (p_w-p_a)(0.089+0.0782V)',
    source: carrier,
    outside: fitted,
    compute: evaporationFluxCarrier,
  }),
  correlation({
    name: 'evaporation-rate-carrier',
    says: 'Water evaporated from an open surface.',
    arguments: { ...surface, h_fg: { unit: 'J/kg', says: "latent heat at the water's temperature" } },
    result: { symbol: 'w', unit: 'kg/(m² s)' },
    tex: 'w = \\frac{(p_w-p_a)(0.089+0.0782V)}{h_{fg}}',
    source: carrier,
    outside: fitted,
    compute: evaporationRateCarrier,
  }),
  forReaders({
    name: 'moist-air-density',
    says: 'Density of moist air.',
    arguments: {
      p: { unit: 'Pa', says: 'pressure' },
      p_v: { unit: 'Pa', says: 'partial pressure of water vapour' },
      T: { unit: 'K', says: 'temperature' },
    },
    result: { symbol: '\\rho', unit: 'kg/m³' },
    tex: '\\rho = \\frac{p-p_v}{R_aT}+\\frac{p_v}{R_vT},\\quad R_a=287.0,\\ R_v=461.5\\ \\mathrm{J/(kg\\,K)}',
    source: analogy,
    outside: 'ideal gases; no limits',
    compute: moistAirDensity,
  }),
  forReaders({
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
    compute: moistAirGrashof,
  }),
  alternative({
    name: 'sherwood-hot-side-up',
    says: 'Mass or heat transfer over a wet surface facing up.',
    arguments: {
      Gr: { unit: '1', says: 'Grashof number' },
      Sc: { unit: '1', says: 'Schmidt number, or Prandtl number for heat' },
    },
    result: { symbol: 'Sh', unit: '1' },
    tex: 'Sh = 0.15(Gr\\,Sc)^{1/3}',
    source: analogy,
    outside: 'evaluated; meant for Gr Sc 10⁷–10¹¹',
    compute: sherwoodHotSideUp,
  }),
  forReaders({
    name: 'vapour-diffusivity-in-air',
    says: 'Diffusivity of water vapour in air.',
    arguments: { T: { unit: 'K', says: 'temperature', range: [280, 450] }, p: { unit: 'Pa', says: 'pressure' } },
    result: { symbol: 'D_{AB}', unit: 'm²/s' },
    tex: 'D_{AB} = 1.87\\cdot10^{-10}\\frac{T^{2.072}}{p/\\mathrm{atm}}',
    source: 'Marrero and Mason 1972, as Cengel 3e eq. 14-15',
    outside: 'evaluated',
    compute: vapourDiffusivityInAir,
  }),
];
