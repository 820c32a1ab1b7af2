/** Entries of the desk reference for water and steam on the saturation line. */
import { correlation, type Correlation } from '../correlation.ts';
import * as water from './water.ts';

const IF97 = 'IAPWS R7-97(2012)';
const VISCOSITY = 'IAPWS R12-08, μ₂ = 1, at the IF97 density';
const CONDUCTIVITY = 'IAPWS R15-11, λ₂ = 0, at the IF97 density';

const T = {
  unit: 'K',
  says: 'temperature',
  range: [water.WATER_MIN_TEMPERATURE, water.WATER_MAX_TEMPERATURE],
} as const;

const onSaturationLine = (
  name: string,
  says: string,
  symbol: string,
  unit: string,
  tex: string,
  source: string,
  property: (T: number) => number,
): Correlation =>
  correlation({
    name,
    says,
    arguments: { T },
    result: { symbol, unit },
    tex,
    source,
    outside: 'throws a RangeError',
    evaluate: ({ T: temperature = Number.NaN }) => property(temperature),
  });

export const waterCorrelations: readonly Correlation[] = [
  onSaturationLine(
    'liquid-density',
    'Density of water at its boiling pressure.',
    'ρ_l',
    'kg/m³',
    "\\rho_l=1/v'(T),\\ v'=\\frac{RT}{p_{sat}}\\pi\\gamma_\\pi",
    `${IF97}, region 1`,
    water.liquidDensity,
  ),
  onSaturationLine(
    'liquid-enthalpy',
    'Enthalpy of water at its boiling pressure, zero at the triple point.',
    'h_l',
    'J/kg',
    "h'(T)=RT\\,\\tau\\gamma_\\tau",
    `${IF97}, region 1`,
    water.liquidEnthalpy,
  ),
  onSaturationLine(
    'liquid-heat-capacity',
    'Isobaric heat capacity of water at its boiling pressure.',
    'c_pl',
    'J/(kg K)',
    'c_p=-R\\tau^2\\gamma_{\\tau\\tau}',
    `${IF97}, region 1`,
    water.liquidHeatCapacity,
  ),
  onSaturationLine(
    'liquid-expansivity',
    'Expansivity of water: share by which the volume grows per kelvin.',
    'β',
    '1/K',
    '\\beta=\\frac1v\\Big(\\frac{\\partial v}{\\partial T}\\Big)_p=\\frac1T\\Big(1-\\frac{\\tau\\gamma_{\\pi\\tau}}{\\gamma_\\pi}\\Big)',
    `${IF97}, region 1`,
    water.liquidExpansivity,
  ),
  onSaturationLine(
    'latent-heat',
    'Heat that turns a kilogram of boiling water to steam.',
    'h_fg',
    'J/kg',
    "h_{fg}=h''(T)-h'(T)",
    `${IF97}, regions 1, 2 and 4`,
    water.latentHeat,
  ),
  onSaturationLine(
    'vapour-density',
    'Density of saturated steam.',
    'ρ_v',
    'kg/m³',
    "\\rho_v=1/v''(T),\\ v''=\\frac{RT}{p_{sat}}\\pi(\\gamma^{\\mathrm o}_\\pi+\\gamma^{\\mathrm r}_\\pi)",
    `${IF97}, region 2`,
    water.vapourDensity,
  ),
  onSaturationLine(
    'vapour-enthalpy',
    'Enthalpy of saturated steam, zero for the liquid at the triple point.',
    'h_v',
    'J/kg',
    "h''(T)=RT\\,\\tau(\\gamma^{\\mathrm o}_\\tau+\\gamma^{\\mathrm r}_\\tau)",
    `${IF97}, region 2`,
    water.vapourEnthalpy,
  ),
  onSaturationLine(
    'vapour-heat-capacity',
    'Isobaric heat capacity of saturated steam.',
    'c_pv',
    'J/(kg K)',
    'c_p=-R\\tau^2(\\gamma^{\\mathrm o}_{\\tau\\tau}+\\gamma^{\\mathrm r}_{\\tau\\tau})',
    `${IF97}, region 2`,
    water.vapourHeatCapacity,
  ),
  onSaturationLine(
    'liquid-viscosity',
    'Dynamic viscosity of water at its boiling pressure.',
    'μ_l',
    'Pa s',
    '\\mu_l=\\mu(T,\\rho_l(T))',
    VISCOSITY,
    water.liquidViscosity,
  ),
  onSaturationLine(
    'vapour-viscosity',
    'Dynamic viscosity of saturated steam.',
    'μ_v',
    'Pa s',
    '\\mu_v=\\mu(T,\\rho_v(T))',
    VISCOSITY,
    water.vapourViscosity,
  ),
  onSaturationLine(
    'liquid-conductivity',
    'Thermal conductivity of water at its boiling pressure.',
    'k_l',
    'W/(m K)',
    'k_l=\\lambda(T,\\rho_l(T))',
    CONDUCTIVITY,
    water.liquidConductivity,
  ),
  onSaturationLine(
    'vapour-conductivity',
    'Thermal conductivity of saturated steam.',
    'k_v',
    'W/(m K)',
    'k_v=\\lambda(T,\\rho_v(T))',
    CONDUCTIVITY,
    water.vapourConductivity,
  ),
  onSaturationLine(
    'liquid-prandtl',
    'Prandtl number of water at its boiling pressure.',
    'Pr_l',
    '1',
    'Pr=\\frac{c_p\\mu}{k}',
    'definition, with the IAPWS properties',
    water.liquidPrandtl,
  ),
  onSaturationLine(
    'vapour-prandtl',
    'Prandtl number of saturated steam.',
    'Pr_v',
    '1',
    'Pr=\\frac{c_p\\mu}{k}',
    'definition, with the IAPWS properties',
    water.vapourPrandtl,
  ),
];
