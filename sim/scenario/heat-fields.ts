/** Fields of the site and of the heat source. */
import * as z from 'zod/mini';
import { choice, optionalQuantity, quantity, schedule } from './field.ts';
import { LIVE_RANGES } from './limits.ts';
import { practice } from './material-fields.ts';

export const siteSchema = z.strictObject({
  altitude_m: quantity({
    unit: 'm',
    title: 'Altitude',
    says: 'Height of the shed above sea level; it sets the air pressure and so the boiling point.',
    default: 120,
    min: -400,
    max: 4500,
    source: 'Tern Hollow, invented',
  }),
  barometer_Pa: optionalQuantity({
    unit: 'Pa',
    title: 'Barometer',
    says: 'Air pressure read at the still; leave open to take it from the altitude (ISO 2533).',
    min: 55_000,
    max: 108_000,
    source: 'left open: ISO 2533 standard atmosphere',
  }),
  airTemperature_K: quantity({
    unit: 'K',
    title: 'Air temperature',
    says: 'Temperature of the air around the still.',
    default: 293.15,
    min: 253.15,
    max: 318.15,
    source: practice,
  }),
  relativeHumidity: quantity({
    unit: '1',
    title: 'Air humidity',
    says: 'Relative humidity of the air over an open tub.',
    default: 0.5,
    min: 0,
    max: 1,
    source: practice,
  }),
  airSpeed_m_s: quantity({
    unit: 'm/s',
    title: 'Draught',
    says: 'Air speed over the open tub.',
    default: 0,
    min: 0,
    max: 5,
    source: practice,
  }),
});

export const HEAT_KINDS = [
  'electric-plate',
  'immersion-element',
  'induction',
  'gas-ring',
  'gas-burner',
  'wood-fire',
  'steam-generator',
] as const;

export const heatSchema = z.strictObject({
  kind: choice(HEAT_KINDS, {
    title: 'Heat source',
    says: 'What heats the pot.',
    default: 'electric-plate',
    source: practice,
  }),
  ratedPower_W: quantity({
    unit: 'W',
    title: 'Rated power',
    says: 'Power the source takes at full setting (electric) or releases by burning (fuel).',
    default: 2200,
    min: 50,
    max: 60_000,
    source: 'portable plate, common practice',
  }),
  shareToPot: quantity({
    unit: '1',
    title: 'Share into the pot',
    says: 'Part of the power that enters the pot through its base; the rest warms the room.',
    default: 0.75,
    min: 0.05,
    max: 1,
    source: 'US DOE cooking-top figures 74–80 % for electric plates, read in secondary sources',
  }),
  lag_s: quantity({
    unit: 's',
    title: 'Lag',
    says: 'Time the source needs to follow a new setting (to 63 %).',
    default: 120,
    min: 0,
    max: 3600,
    source: practice,
  }),
  control: choice(['schedule', 'hold-rate'], {
    title: 'Control',
    says: 'Follow the heat schedule, or let a controller hold a distillate rate.',
    default: 'schedule',
    source: practice,
  }),
  setting: schedule({
    unit: '1',
    title: 'Heat setting',
    says: 'Share of the rated power, over time.',
    default: 1,
    ...LIVE_RANGES['heat.setting'],
    source: practice,
  }),
  targetRate_kg_s: quantity({
    unit: 'kg/s',
    title: 'Distillate rate to hold',
    says: 'Distillate rate the controller aims at.',
    default: 0.0004,
    ...LIVE_RANGES['heat.targetRate_kg_s'],
    source: practice,
  }),
  heatedDiameter_m: optionalQuantity({
    unit: 'm',
    title: 'Heated diameter',
    says: 'Diameter of the base that is heated; leave open for the whole base.',
    min: 0.03,
    max: 2,
    source: 'left open: pot diameter',
  }),
  supplyVolts_V: optionalQuantity({
    unit: 'V',
    title: 'Supply voltage',
    says: 'Voltage of the circuit, to check its load; leave open for fuel.',
    min: 90,
    max: 480,
    source: 'left open',
  }),
  supplyAmps_A: optionalQuantity({
    unit: 'A',
    title: 'Circuit rating',
    says: 'Current the circuit is fused for; leave open for fuel.',
    min: 1,
    max: 125,
    source: 'left open',
  }),
  energyPrice_J: quantity({
    unit: '1/J',
    title: 'Energy price',
    says: 'Price of electricity or fuel by its energy.',
    default: 0.3 / 3.6e6,
    min: 0,
    max: 1e-5,
    source: 'invented: 0.30 per kWh',
  }),
});
