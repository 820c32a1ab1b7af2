/**
 * The units in which quantities are shown. The model stores SI; a kind of quantity says how people in a shed would
 * say it, in metric and in US customary units. A kind with several scales lets prose pick the one that fits the
 * size of the number; forms, axes and tables keep to the first, usual scale.
 */

export type UnitSystem = 'metric' | 'us';

export interface Scale<Label extends string = string> {
  readonly label: Label;
  /** SI value of one shown unit. */
  readonly size: number;
  /** SI value at which the shown number is zero; only temperatures differ from 0. */
  readonly zero: number;
  /** Decimals in a column or on an axis. */
  readonly decimals: number;
  /** Significant digits in prose, or `null` to keep the column's decimals. */
  readonly significant: number | null;
}

export interface Kind {
  readonly si: string;
  readonly metric: readonly [Scale, ...Scale[]];
  readonly us: readonly [Scale, ...Scale[]];
}

const scale = <const Label extends string>(
  label: Label,
  size: number,
  decimals = 0,
  significant: number | null = 2,
): Scale<Label> => ({ label, size, zero: 0, decimals, significant });
const fixed = <const Label extends string>(label: Label, size: number, decimals: number, zero = 0): Scale<Label> => ({
  label,
  size,
  zero,
  decimals,
  significant: null,
});

export const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.45359237;
const OUNCE = POUND / 16;
const POUND_FORCE = POUND * 9.80665;
const US_GALLON = 3.785411784e-3;
const US_QUART = US_GALLON / 4;
const WATER = 1000;
const MINUTE = 60;
const HOUR = 3600;
const KILOWATT_HOUR = 3.6e6;
/** International table BTU, in joules. */
const BTU = 1055.05585262;
const FAHRENHEIT = 5 / 9;
const INCH_OF_MERCURY = 3386.388640341;
const INCH_OF_WATER = 249.08891;
const PSI = 6894.757293168;

const both = <const Scales extends readonly [Scale, ...Scale[]]>(si: string, ...scales: Scales) => ({
  si,
  metric: scales,
  us: scales,
});

export const KINDS = {
  length: {
    si: 'm',
    metric: [scale('m', 1, 2), scale('mm', 1e-3), scale('µm', 1e-6)],
    us: [scale('ft', FOOT, 2), scale('in', INCH, 2), scale('µm', 1e-6)],
  },
  size: { si: 'm', metric: [fixed('mm', 1e-3, 0)], us: [fixed('in', INCH, 2)] },
  bore: { si: 'm', metric: [fixed('mm', 1e-3, 1)], us: [fixed('in', INCH, 3)] },
  wall: { si: 'm', metric: [fixed('mm', 1e-3, 2)], us: [fixed('in', INCH, 3)] },
  /** Outside of a tube, which the trade sells by fractions of an inch. */
  tubeOutside: { si: 'm', metric: [fixed('mm', 1e-3, 2)], us: [fixed('in', INCH, 3)] },
  run: { si: 'm', metric: [fixed('m', 1, 2)], us: [fixed('ft', FOOT, 1)] },
  altitude: { si: 'm', metric: [fixed('m', 1, 0)], us: [fixed('ft', FOOT, 0)] },
  drop: both('m', fixed('µm', 1e-6, 0)),
  temperature: {
    si: 'K',
    metric: [fixed('°C', 1, 1, 273.15)],
    us: [fixed('°F', FAHRENHEIT, 1, 273.15 - 32 * FAHRENHEIT)],
  },
  temperatureDifference: { si: 'K', metric: [fixed('°C', 1, 1)], us: [fixed('°F', FAHRENHEIT, 1)] },
  mass: {
    si: 'kg',
    metric: [scale('kg', 1, 2), scale('g', 1e-3), scale('mg', 1e-6)],
    us: [scale('lb', POUND, 2), scale('oz', OUNCE, 1)],
  },
  oil: { si: 'kg', metric: [scale('g', 1e-3, 1), scale('mg', 1e-6)], us: [scale('oz', OUNCE, 2)] },
  // Oil is measured in millilitres by everybody who bottles it.
  oilVolume: both('m³', scale('mL', 1e-6, 1)),
  oilVolumeFlow: both('m³/s', scale('mL/h', 1e-6 / HOUR, 1)),
  water: {
    si: 'kg',
    metric: [scale('L', WATER * 1e-3, 1), scale('mL', WATER * 1e-6)],
    us: [scale('gal', WATER * US_GALLON, 2), scale('qt', WATER * US_QUART, 2)],
  },
  volume: {
    si: 'm³',
    metric: [scale('L', 1e-3, 1), scale('mL', 1e-6)],
    us: [scale('gal', US_GALLON, 2), scale('qt', US_QUART, 2)],
  },
  coolantFlow: {
    si: 'kg/s',
    metric: [scale('L/min', (WATER * 1e-3) / MINUTE, 2)],
    us: [scale('gal/min', (WATER * US_GALLON) / MINUTE, 2)],
  },
  distillateFlow: {
    si: 'kg/s',
    metric: [scale('mL/min', (WATER * 1e-6) / MINUTE, 1)],
    us: [scale('qt/h', (WATER * US_QUART) / HOUR, 2)],
  },
  steamFlow: {
    si: 'kg/s',
    metric: [scale('kg/h', 1 / HOUR, 2), scale('g/h', 1e-3 / HOUR)],
    us: [scale('lb/h', POUND / HOUR, 2), scale('oz/h', OUNCE / HOUR, 1)],
  },
  oilFlow: {
    si: 'kg/s',
    metric: [scale('g/h', 1e-3 / HOUR, 1), scale('mg/h', 1e-6 / HOUR)],
    us: [scale('oz/h', OUNCE / HOUR, 2)],
  },
  pressure: {
    si: 'Pa',
    metric: [scale('kPa', 1e3, 2), scale('Pa', 1)],
    us: [scale('psi', PSI, 2), scale('in H₂O', INCH_OF_WATER, 2)],
  },
  barometer: { si: 'Pa', metric: [fixed('hPa', 100, 0)], us: [fixed('in Hg', INCH_OF_MERCURY, 2)] },
  power: both('W', scale('kW', 1e3, 2), scale('W', 1)),
  ratedPower: both('W', scale('W', 1), scale('kW', 1e3, 2)),
  energy: both('J', scale('kWh', KILOWATT_HOUR, 2), scale('Wh', KILOWATT_HOUR / 1e3)),
  duration: both('s', fixed('min', MINUTE, 0)),
  seconds: both('s', fixed('s', 1, 0)),
  share: both('1', scale('%', 0.01, 0)),
  number: both('1', scale('', 1, 2, 3)),
  oilContent: both('kg/kg', scale('%', 0.01, 2)),
  amountPerMass: { si: 'mol/kg', metric: [scale('mmol/kg', 1e-3, 2)], us: [scale('mmol/lb', 1e-3 / POUND, 2)] },
  amountPerVolume: { si: 'mol/m³', metric: [scale('mmol/L', 1, 2, 3)], us: [scale('mmol/qt', 1e-3 / US_QUART, 2, 3)] },
  /** Oil from a kilogram of plant. */
  oilYield: { si: 'm³/kg', metric: [scale('mL/kg', 1e-6, 1)], us: [scale('mL/lb', 1e-6 / POUND, 1)] },
  harvest: { si: 'kg/m²', metric: [scale('kg/m²', 1, 2)], us: [scale('lb/ft²', POUND / FOOT ** 2, 3)] },
  plantsPerArea: { si: '1/m²', metric: [fixed('1/m²', 1, 1)], us: [fixed('1/ft²', 1 / FOOT ** 2, 2)] },
  dissolved: { si: 'kg/m³', metric: [scale('g/L', 1, 2)], us: [scale('oz/gal', OUNCE / US_GALLON, 3)] },
  massRatio: { si: 'kg/kg', metric: [scale('kg/kg', 1, 2)], us: [scale('lb/lb', 1, 2)] },
  density: { si: 'kg/m³', metric: [fixed('kg/m³', 1, 0)], us: [fixed('lb/ft³', POUND / FOOT ** 3, 1)] },
  massPerLength: {
    si: 'kg/m',
    metric: [scale('kg/m', 1, 2), scale('g/m', 1e-3)],
    us: [scale('lb/ft', POUND / FOOT, 3)],
  },
  speed: { si: 'm/s', metric: [scale('m/s', 1, 2), scale('mm/s', 1e-3, 1)], us: [scale('ft/s', FOOT, 2)] },
  heatPerLength: { si: 'W/m', metric: [scale('W/m', 1)], us: [scale('W/ft', 1 / FOOT)] },
  heatFlux: { si: 'W/m²', metric: [scale('kW/m²', 1e3, 1)], us: [scale('W/in²', 1 / INCH ** 2, 1)] },
  conductivity: {
    si: 'W/(m K)',
    metric: [scale('W/(m K)', 1, 3)],
    us: [scale('BTU/(h ft °F)', BTU / (HOUR * FOOT * FAHRENHEIT), 4)],
  },
  resistance: {
    si: 'm² K/W',
    metric: [scale('m² K/W', 1, 4)],
    us: [scale('ft² h °F/BTU', (FOOT ** 2 * HOUR * FAHRENHEIT) / BTU, 4)],
  },
  heatCapacity: {
    si: 'J/(kg K)',
    metric: [fixed('J/(kg K)', 1, 0)],
    us: [fixed('BTU/(lb °F)', BTU / (POUND * FAHRENHEIT), 3)],
  },
  filmCoefficient: {
    si: 'W/(m² K)',
    metric: [fixed('W/(m² K)', 1, 0)],
    us: [fixed('BTU/(h ft² °F)', BTU / (HOUR * FOOT ** 2 * FAHRENHEIT), 1)],
  },
  wallResistance: {
    si: 'm K/W',
    metric: [scale('m K/W', 1, 4)],
    us: [scale('ft h °F/BTU', (FOOT * HOUR * FAHRENHEIT) / BTU, 4)],
  },
  viscosity: {
    si: 'Pa s',
    metric: [scale('mPa s', 1e-3, 3, 3), scale('µPa s', 1e-6, 1, 3)],
    us: [scale('lb/(ft h)', POUND / (FOOT * HOUR), 3, 3)],
  },
  diffusivity: { si: 'm²/s', metric: [scale('mm²/s', 1e-6, 3, 3)], us: [scale('ft²/h', FOOT ** 2 / HOUR, 4, 3)] },
  surfaceTension: { si: 'N/m', metric: [scale('mN/m', 1e-3, 1, 3)], us: [scale('lbf/ft', POUND_FORCE / FOOT, 5, 3)] },
  force: { si: 'N', metric: [scale('N', 1, 1)], us: [scale('lbf', POUND_FORCE, 1)] },
  massFlux: {
    si: 'kg/(m² s)',
    metric: [scale('kg/(m² s)', 1, 2), scale('g/(m² s)', 1e-3, 2)],
    us: [scale('lb/(ft² h)', POUND / (FOOT ** 2 * HOUR), 2)],
  },
  volumeFlow: {
    si: 'm³/s',
    metric: [scale('L/min', 1e-3 / MINUTE, 2), scale('mL/min', 1e-6 / MINUTE, 1)],
    us: [scale('gal/min', US_GALLON / MINUTE, 3), scale('qt/h', US_QUART / HOUR, 2)],
  },
  area: {
    si: 'm²',
    metric: [scale('m²', 1, 3), scale('cm²', 1e-4, 1)],
    us: [scale('ft²', FOOT ** 2, 3), scale('in²', INCH ** 2, 2)],
  },
  acceleration: { si: 'm/s²', metric: [fixed('m/s²', 1, 3)], us: [fixed('ft/s²', FOOT, 3)] },
  pressureGradient: {
    si: 'Pa/m',
    metric: [scale('kPa/m', 1e3, 2), scale('Pa/m', 1)],
    us: [scale('psi/ft', PSI / FOOT, 3), scale('in H₂O/ft', INCH_OF_WATER / FOOT, 3)],
  },
  pressureSlope: { si: 'Pa/K', metric: [scale('kPa/K', 1e3, 3)], us: [scale('psi/°F', PSI / FAHRENHEIT, 3)] },
  specificEnergy: { si: 'J/kg', metric: [scale('kJ/kg', 1e3, 1, 4)], us: [scale('BTU/lb', BTU / POUND, 1, 4)] },
  specificVolume: { si: 'm³/kg', metric: [scale('m³/kg', 1, 4, 4)], us: [scale('ft³/lb', FOOT ** 3 / POUND, 3, 4)] },
  heatRate: { si: 'W/K', metric: [scale('W/K', 1, 1)], us: [scale('BTU/(h °F)', BTU / (HOUR * FAHRENHEIT), 1)] },
  thermalMass: { si: 'J/K', metric: [scale('kJ/K', 1e3, 2)], us: [scale('BTU/°F', BTU / FAHRENHEIT, 2)] },
  expansivity: { si: '1/K', metric: [scale('1/K', 1, 5, 3)], us: [scale('1/°F', 1 / FAHRENHEIT, 5, 3)] },
  molarEnergy: both('J/mol', scale('kJ/mol', 1e3, 1)),
  ratePerMinute: both('1/s', scale('1/min', 1 / MINUTE, 3)),
  ratePerHour: both('1/s', scale('1/h', 1 / HOUR, 3)),
  voltage: both('V', fixed('V', 1, 0)),
  current: both('A', fixed('A', 1, 0)),
  angle: both('rad', fixed('°', Math.PI / 180, 1)),
  takeUp: both('SI', scale('', 1, 4)),
  energyPrice: both('1/J', fixed('per kWh', 1 / KILOWATT_HOUR, 3)),
  massPrice: { si: '1/kg', metric: [fixed('per kg', 1, 2)], us: [fixed('per lb', 1 / POUND, 2)] },
  lengthPrice: { si: '1/m', metric: [fixed('per m', 1, 2)], us: [fixed('per ft', 1 / FOOT, 2)] },
  waterPrice: { si: '1/m³', metric: [fixed('per m³', 1, 2)], us: [fixed('per 1000 gal', 1 / (1000 * US_GALLON), 2)] },
  text: both('', scale('', 1)),
} as const satisfies Record<string, Kind>;

export type KindName = keyof typeof KINDS;

/** SI unit in which numbers of a kind are stored. */
export const kindUnit = (kind: KindName): string => KINDS[kind].si;

/** Every unit that can stand after a number. */
export type UnitLabel = (typeof KINDS)[KindName][UnitSystem][number]['label'];

/** What a unit means when nothing more is known. */
export const KIND_OF_UNIT: Readonly<Record<string, KindName>> = {
  m: 'length',
  K: 'temperature',
  kg: 'mass',
  'm³': 'volume',
  'kg/s': 'steamFlow',
  Pa: 'pressure',
  W: 'power',
  J: 'energy',
  s: 'duration',
  '1': 'number',
  'mol/kg': 'amountPerMass',
  'mol/m³': 'amountPerVolume',
  'kg/m²': 'harvest',
  '1/m²': 'plantsPerArea',
  'kg/kg': 'massRatio',
  'kg/m³': 'density',
  'kg/m': 'massPerLength',
  'm/s': 'speed',
  'W/m': 'heatPerLength',
  'W/m²': 'heatFlux',
  'W/(m K)': 'conductivity',
  'm² K/W': 'resistance',
  'J/(kg K)': 'heatCapacity',
  'W/(m² K)': 'filmCoefficient',
  'm K/W': 'wallResistance',
  'Pa s': 'viscosity',
  'm²/s': 'diffusivity',
  'N/m': 'surfaceTension',
  N: 'force',
  'kg/(m² s)': 'massFlux',
  'm³/s': 'volumeFlow',
  'm²': 'area',
  'm/s²': 'acceleration',
  'Pa/m': 'pressureGradient',
  'Pa/K': 'pressureSlope',
  'J/kg': 'specificEnergy',
  'm³/kg': 'specificVolume',
  'W/K': 'heatRate',
  'J/K': 'thermalMass',
  '1/K': 'expansivity',
  'J/mol': 'molarEnergy',
  '1/s': 'ratePerMinute',
  V: 'voltage',
  A: 'current',
  rad: 'angle',
  SI: 'takeUp',
  '1/J': 'energyPrice',
  '1/kg': 'massPrice',
  '1/m': 'lengthPrice',
  '1/m³': 'waterPrice',
  '': 'text',
};

/** Everyday units in which some results already stand: the kind, and the SI value of one. */
export const EVERYDAY_UNITS: Readonly<
  Record<string, { readonly kind: KindName; readonly size: number; readonly zero: number }>
> = {
  '°C': { kind: 'temperature', size: 1, zero: 273.15 },
  mL: { kind: 'oilVolume', size: 1e-6, zero: 0 },
  L: { kind: 'volume', size: 1e-3, zero: 0 },
  mm: { kind: 'length', size: 1e-3, zero: 0 },
  µm: { kind: 'length', size: 1e-6, zero: 0 },
  g: { kind: 'mass', size: 1e-3, zero: 0 },
  kPa: { kind: 'pressure', size: 1e3, zero: 0 },
  kW: { kind: 'power', size: 1e3, zero: 0 },
  kWh: { kind: 'energy', size: KILOWATT_HOUR, zero: 0 },
  '%': { kind: 'share', size: 0.01, zero: 0 },
  min: { kind: 'duration', size: MINUTE, zero: 0 },
  h: { kind: 'duration', size: HOUR, zero: 0 },
};
