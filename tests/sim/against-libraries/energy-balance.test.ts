/** Energy balances of a still worked out by hand from the IF97 enthalpies of python iapws 1.5.5. */
import { describe, expect, it } from 'vitest';
import { region1Enthalpy } from '../../../sim/fluids/if97-region1.ts';
import {
  latentHeat,
  liquidDensity,
  liquidEnthalpy,
  liquidHeatCapacity,
  saturationTemperature,
  vapourEnthalpy,
} from '../../../sim/fluids/water.ts';

const ATMOSPHERE = 101_325;
const boiling = saturationTemperature(ATMOSPHERE);
const kelvin = (celsius: number): number => celsius + 273.15;
const perHour = 3600;

/** Heat given up by a kilogram of steam at one atmosphere that leaves as water at that temperature, J/kg. */
const heatOfCondensing = (celsius: number): number => vapourEnthalpy(boiling) - liquidEnthalpy(kelvin(celsius));

const within = (value: number, expected: number, rel: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThanOrEqual(rel);

describe('energy balances with water and steam', () => {
  it('2000 W less 250 W of loss make 2.791 884 kg/h of steam from a boiling pot', () => {
    within(((2000 - 250) / latentHeat(boiling)) * perHour, 2.791884, 0.002);
  });

  it('3500 W less 300 W make 4.445 270 4 kg/h while feed at 20 °C replaces the steam', () => {
    const rise = vapourEnthalpy(boiling) - region1Enthalpy(kelvin(20), ATMOSPHERE);
    within(((3500 - 300) / rise) * perHour, 4.4452704, 0.002);
  });

  it('condensing 3 kg/h of steam to 40 °C takes 2089.9226 W', () => {
    within((3 / perHour) * heatOfCondensing(40), 2089.9226, 0.001);
  });

  it('that takes 39.989 227 kg/h of water warmed from 15 to 60 °C', () => {
    const duty = (3 / perHour) * heatOfCondensing(40);
    within((duty / (liquidEnthalpy(kelvin(60)) - liquidEnthalpy(kelvin(15)))) * perHour, 39.989227, 0.003);
  });

  it('20 L of water at 15 °C boil after 46.480 421 min with 3000 W of which 85 % reaches it', () => {
    const mass = 0.02 * liquidDensity(kelvin(15));
    const heat = mass * (liquidEnthalpy(boiling) - liquidEnthalpy(kelvin(15)));
    within(heat / (0.85 * 3000) / 60, 46.480421, 0.003);
  });

  it('3 kg/h of steam condensed to 30 °C warm a tub of 60 L at 20 °C by 30.517 721 K/h', () => {
    const mass = 0.06 * liquidDensity(kelvin(20));
    within((3 * heatOfCondensing(30)) / (mass * liquidHeatCapacity(kelvin(20))), 30.517721, 0.003);
  });
});
