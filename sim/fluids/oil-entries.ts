/** Entries of the desk reference for each oil constituent, alone and over water. */
import { correlation, forReaders, type Argument, type Correlation, type Role } from '../correlation.ts';
import type { Constituent } from './constituent.ts';
import {
  coldestPourable,
  constituents,
  curveOf,
  heatCapacity,
  isCrystalAtRoom,
  latentHeat,
  liquidDensity,
  liquidViscosity,
  OIL_MAX_TEMPERATURE,
  OIL_MIN_TEMPERATURE,
  SOLUTION_HEAT,
  vapourPressure,
  waterSolubility,
} from './constituents.ts';
import {
  canFreeze,
  COLDEST_OIL,
  crystalSolubility,
  freezingTemperature,
  LEAST_FROZEN_FRACTION,
  type Freezing,
} from './freezing.ts';
import { coBoilingOilShare, coBoilingTemperature, saturationOilPerSteam } from './immiscible.ts';
import { WATER_MAX_PRESSURE, WATER_MAX_TEMPERATURE, WATER_MIN_PRESSURE, WATER_MIN_TEMPERATURE } from './water.ts';

const IDEAL =
  'Dalton and Raoult, oil and water immiscible; water by IAPWS R7-97(2012), region 4; oil vapour pressure: ';

const LIQUID_SOLUBILITY = 'S=S_{25}\\exp\\Big[\\frac{\\Delta H}{R}\\Big(\\frac1{298.15}-\\frac1T\\Big)\\Big]';
const FROM_CRYSTAL = '\\,\\exp\\Big[\\frac{\\Delta H_f}{R}\\Big(\\frac1{298.15}-\\frac1{T_m}\\Big)\\Big]';

/** Id as it stands in entry names: `alpha_pinene` becomes `alpha-pinene`. */
const entryId = (constituent: Constituent): string => constituent.id.replaceAll('_', '-');

const temperature = (low: number, high: number): Argument => ({ unit: 'K', says: 'temperature', range: [low, high] });
const oilTemperature = temperature(OIL_MIN_TEMPERATURE, OIL_MAX_TEMPERATURE);

/** Pressures at which the constituent and water boil together between 273.15 and 403.15 K. */
const totalPressure = (constituent: Constituent): Argument => ({
  unit: 'Pa',
  says: 'total pressure',
  range: [WATER_MIN_PRESSURE + vapourPressure(constituent, WATER_MIN_TEMPERATURE), WATER_MAX_PRESSURE],
});

/** The curve from its join up, and the straight line below room temperature. */
const curveTex = (constituent: Constituent): string => {
  const { A, B, C, join } = curveOf(constituent);
  const { pressure, heat } = constituent.roomVapour;
  return `\\ln\\frac{p_i}{\\mathrm{Pa}}=\\begin{cases}${A}-\\frac{${B}}{T/\\mathrm{K}${C < 0 ? '' : '+'}${C}}&T\\ge ${join}\\,\\mathrm{K}\\\\ \\ln ${pressure}-\\frac{${heat}\\,\\mathrm{J/mol}}{R}\\Big(\\frac1T-\\frac1{298.15\\,\\mathrm{K}}\\Big)&T\\le 298.15\\,\\mathrm{K}\\end{cases}`;
};

const provenance = (...values: readonly { readonly kind: string; readonly source: string }[]): string =>
  values.map(({ kind, source }) => `${kind}: ${source}`).join('; ');

const pureEntries = (constituent: Constituent): Correlation[] => {
  const { name, vapourPressure: fit, roomVapour: room } = constituent;
  const ofTemperature = (
    quantity: string,
    says: string,
    argument: Argument,
    result: Correlation['result'],
    tex: string,
    source: string,
    outside: string,
    property: (constituent: Constituent, T: number) => number,
    role: Role = 'engine',
  ): Correlation =>
    correlation({
      name: `${quantity}-${entryId(constituent)}`,
      says: `${says} of ${name}.`,
      arguments: { T: argument },
      result,
      tex,
      source,
      outside,
      role,
      compute: (T = Number.NaN) => property(constituent, T),
    });
  const working = 'gives no value';
  return [
    ofTemperature(
      'oil-vapour-pressure',
      'Vapour pressure',
      temperature(288.15, Math.max(393.15, fit.validTo)),
      { symbol: 'p_i', unit: 'Pa' },
      curveTex(constituent),
      `from ${curveOf(constituent).join} K: ${provenance(fit)}; at 298.15 K, ${room.pressure} Pa (${room.range.join('–')}) and ${room.heat} J/mol: ${provenance(room)}; between them a cubic of ln p in 1/T`,
      `goes on to ${OIL_MIN_TEMPERATURE}–${OIL_MAX_TEMPERATURE} K; gives no value outside`,
      vapourPressure,
    ),
    ofTemperature(
      'oil-density',
      'Density of the liquid',
      oilTemperature,
      { symbol: 'ρ', unit: 'kg/m³' },
      '\\rho=\\rho_0+\\frac{d\\rho}{dT}(T-T_0)',
      provenance(constituent.liquidDensity, constituent.densitySlope),
      working,
      liquidDensity,
    ),
    ofTemperature(
      'oil-latent-heat',
      'Heat of vaporisation',
      oilTemperature,
      { symbol: 'h_fg', unit: 'J/kg' },
      'h_{fg}=\\frac1M\\Big[\\Delta H_{25}+(\\Delta H_{100}-\\Delta H_{25})\\frac{T-298.15}{75}\\Big]',
      provenance(constituent.latentHeatAt25C, constituent.latentHeatAt100C),
      working,
      latentHeat,
    ),
    ofTemperature(
      'oil-heat-capacity',
      'Heat capacity of the liquid',
      oilTemperature,
      { symbol: 'c_p', unit: 'J/(kg K)' },
      'c_p=c_{25}+(c_{90}-c_{25})\\frac{T-298.15}{65}',
      provenance(constituent.heatCapacity),
      working,
      heatCapacity,
    ),
    ofTemperature(
      'oil-viscosity',
      'Viscosity of the liquid',
      temperature(coldestPourable(constituent), OIL_MAX_TEMPERATURE),
      { symbol: 'μ', unit: 'Pa s' },
      '\\mu^{-0.2661}=\\mu_0^{-0.2661}+\\frac{T-T_0}{233},\\ \\mu\\text{ in mPa s}',
      `${provenance(constituent.viscosity)}; carried to other temperatures by Lewis and Squires, Oil Gas J. (1934), as in Poling, Prausnitz and O’Connell, from memory, good to 5–15 %`,
      'gives no value; the range begins where it is thinner than 10 Pa s',
      liquidViscosity,
    ),
    ofTemperature(
      'oil-water-solubility',
      'Solubility in water, as a liquid,',
      temperature(273.15, 373.15),
      { symbol: 'S', unit: 'kg/m³' },
      isCrystalAtRoom(constituent) ? `${LIQUID_SOLUBILITY}${FROM_CRYSTAL}` : LIQUID_SOLUBILITY,
      `${provenance(constituent.waterSolubility, ...(isCrystalAtRoom(constituent) ? [constituent.fusionHeat] : []))}; temperature factor estimated with ${SOLUTION_HEAT / 1000} kJ/mol`,
      'gives no value',
      waterSolubility,
    ),
  ];
};

const IDEAL_CRYSTAL =
  'Schröder, Z. Phys. Chem. 11 (1893) 449, and van Laar: ideal solubility of a pure crystal, from memory';

const freezingEntries = (constituent: Freezing): Correlation[] => {
  const { name, meltingPoint, fusionHeat } = constituent;
  const source = `${IDEAL_CRYSTAL}; melting point ${provenance(meltingPoint)}; heat of fusion ${provenance(fusionHeat)}`;
  return [
    correlation({
      name: `oil-crystal-solubility-${entryId(constituent)}`,
      says: `Mole fraction of ${name} that an oil holds before it crystallises.`,
      arguments: { T: temperature(COLDEST_OIL, meltingPoint.value) },
      result: { symbol: 'x', unit: '1' },
      tex: 'x=\\exp\\Big[-\\frac{\\Delta H_f}{R}\\Big(\\frac1T-\\frac1{T_m}\\Big)\\Big]',
      source,
      outside: 'gives no value; a run takes 1 above the melting point',
      role: 'other-form',
      compute: (T = Number.NaN) => crystalSolubility(constituent, T),
    }),
    correlation({
      name: `oil-freezing-temperature-${entryId(constituent)}`,
      says: `Temperature at which an oil with so much ${name} begins to crystallise.`,
      arguments: { x: { unit: '1', says: `mole fraction of ${name} in the oil`, range: [LEAST_FROZEN_FRACTION, 1] } },
      result: { symbol: 'T', unit: 'K' },
      tex: '\\frac1T=\\frac1{T_m}-\\frac{R\\ln x}{\\Delta H_f}',
      source,
      outside: 'gives no value',
      compute: (x = Number.NaN) => freezingTemperature(constituent, x),
    }),
  ];
};

const overWaterEntries = (constituent: Constituent): Correlation[] => {
  const { name, vapourPressure: fit } = constituent;
  const source = `${IDEAL}${provenance(fit)}`;
  const boils = 'p_w(T)+p_i(T)=P';
  const ratio = 'r=\\frac{M_i\\,p_i(T)}{M_w\\,p_w(T)}';
  return [
    forReaders({
      name: `co-boiling-temperature-${entryId(constituent)}`,
      says: `Temperature at which water and ${name} boil together.`,
      arguments: { p: totalPressure(constituent) },
      result: { symbol: 'T', unit: 'K' },
      tex: boils,
      source,
      outside: 'gives no value',
      compute: (p = Number.NaN) => coBoilingTemperature(p, [1], [constituent]),
    }),
    forReaders({
      name: `co-boiling-oil-share-${entryId(constituent)}`,
      says: `Mass share of ${name} in the condensate when it boils together with water.`,
      arguments: { p: totalPressure(constituent) },
      result: { symbol: 'w', unit: '1' },
      tex: `w=\\frac{r}{1+r},\\ ${ratio},\\ ${boils}`,
      source,
      outside: 'gives no value',
      compute: (p = Number.NaN) => coBoilingOilShare(p, [1], [constituent]),
    }),
    forReaders({
      name: `oil-per-steam-${entryId(constituent)}`,
      says: `Mass of ${name} vapour over that of the steam with it, above both liquids.`,
      arguments: { T: temperature(WATER_MIN_TEMPERATURE, WATER_MAX_TEMPERATURE) },
      result: { symbol: 'r', unit: 'kg/kg' },
      tex: ratio,
      source,
      outside: 'gives no value',
      compute: (T = Number.NaN) => saturationOilPerSteam(T, [1], [constituent]),
    }),
  ];
};

export const constituentCorrelations: readonly Correlation[] = [
  ...constituents.flatMap(pureEntries),
  ...constituents.filter(canFreeze).flatMap(freezingEntries),
];
export const immiscibleCorrelations: readonly Correlation[] = constituents.flatMap(overWaterEntries);
