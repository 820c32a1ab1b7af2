/**
 * What happens when the outlet of a boiling still is closed: teaching only, never an operating mode. The pot is taken
 * as rigid and tight, its water and steam at saturation, the air swept out, no heat lost to the room. The heat then
 * goes into the rise of the internal energy of water, steam and metal from one boiling point to the next.
 */
import { correlation, forReaders, type Argument, type Correlation } from '../correlation.ts';
import { region1State } from '../fluids/if97-region1.ts';
import { region2State } from '../fluids/if97-region2.ts';
import { region4SaturationPressure, region4SaturationTemperature } from '../fluids/if97-region4.ts';
import { bisect, bisectedRoot } from '../maths/bisect.ts';

/** Highest pressure looked at, Pa absolute: any pot has burst long before. */
const HIGHEST_PRESSURE = 2e6;

interface ClosedWater {
  /** Water and steam together, kg. */
  readonly mass: number;
  readonly volume: number;
}

/** All the water in a pot that holds m of liquid, the rest of its volume being steam at the same boiling point. */
function closedWater(T: number, m: number, V: number): ClosedWater {
  const p = region4SaturationPressure(T);
  const liquidVolume = m * region1State(T, p).volume;
  if (!(m >= 0 && liquidVolume <= V))
    throw new RangeError(`blocked outlet: ${m} kg of water is outside what a pot of ${V} m³ holds`);
  return { mass: m + (V - liquidVolume) / region2State(T, p).volume, volume: V };
}

/** Internal energy of water and its steam in a closed volume at saturation, J, above liquid at the triple point. */
function internalEnergy(T: number, { mass, volume }: ClosedWater): number {
  const p = region4SaturationPressure(T);
  const liquid = region1State(T, p);
  const steam = region2State(T, p);
  const inSteam = (volume - mass * liquid.volume) / (steam.volume - liquid.volume);
  if (!(inSteam >= 0 && inSteam <= mass))
    throw new RangeError(
      `blocked outlet: ${mass} kg of water in ${volume} m³ at ${T} K is outside what can stand partly as steam`,
    );
  const liquidEnergy = liquid.enthalpy - p * liquid.volume;
  const steamEnergy = steam.enthalpy - p * steam.volume;
  return mass * liquidEnergy + inSteam * (steamEnergy - liquidEnergy);
}

/** Heat that takes a closed pot from the boil to a pressure: entry `blocked-outlet-heat`. */
export function blockedOutletHeat(m: number, V: number, C: number, p_0: number, dp: number): number {
  if (p_0 + dp > HIGHEST_PRESSURE)
    throw new RangeError(`blocked outlet: pressure ${p_0 + dp} Pa is outside 611.213–${HIGHEST_PRESSURE} Pa`);
  const T_0 = region4SaturationTemperature(p_0);
  const T = region4SaturationTemperature(p_0 + dp);
  const content = closedWater(T_0, m, V);
  return internalEnergy(T, content) - internalEnergy(T_0, content) + C * (T - T_0);
}

/** Time in which a closed pot reaches a pressure: entry `blocked-outlet-time`. */
export const blockedOutletTime = (P: number, m: number, V: number, C: number, p_0: number, dp: number): number =>
  blockedOutletHeat(m, V, C, p_0, dp) / P;

/** Pressure in a closed pot after a time, by bisection: entry `blocked-outlet-pressure`. */
export function blockedOutletGauge(t: number, P: number, m: number, V: number, C: number, p_0: number): number {
  const fullest = fullestGauge(m, V, p_0);
  const timeTo = (gauge: number): number => blockedOutletTime(P, m, V, C, p_0, gauge);
  return timeTo(fullest) <= t ? fullest : bisectedRoot((gauge) => timeTo(gauge) < t, 0, fullest);
}

/** Highest pressure over the air at which the pot still holds water and steam side by side, Pa. */
function fullestGauge(m: number, V: number, p_0: number): number {
  const { mass } = closedWater(region4SaturationTemperature(p_0), m, V);
  const holdsBoth = (p: number): boolean => {
    const T = region4SaturationTemperature(p);
    return mass * region1State(T, p).volume < V && mass * region2State(T, p).volume > V;
  };
  const fullest = holdsBoth(HIGHEST_PRESSURE) ? HIGHEST_PRESSURE : bisect(holdsBoth, p_0, HIGHEST_PRESSURE, 50).low;
  return fullest - p_0;
}

const water: Argument = { unit: 'kg', says: 'liquid water left when the outlet closes', range: [0.05, 1500] };
const volume: Argument = { unit: 'm³', says: 'inner volume of the pot', range: [0.001, 2] };
const metal: Argument = { unit: 'J/K', says: 'heat capacity of the metal, mass times specific heat', range: [0, 1e6] };
const air: Argument = { unit: 'Pa', says: 'air pressure, at which it boiled', range: [55e3, 108e3] };
const source = 'energy balance of a rigid closed vessel, saturated, without heat loss, properties by IAPWS-IF97';
const outside = 'gives no value above 2 MPa, and when the pot is full of water or of steam';

export const blockedOutletCorrelations: readonly Correlation[] = [
  correlation({
    name: 'blocked-outlet-heat',
    says: 'Heat that takes a pot whose outlet is closed from the boil to a pressure; teaching only.',
    arguments: {
      m: water,
      V: volume,
      C: metal,
      p_0: air,
      dp: { unit: 'Pa', says: 'pressure over the air', range: [0, 3e5] },
    },
    result: { symbol: 'Q', unit: 'J' },
    tex: 'Q = U(T,M,V)-U(T_0,M,V)+C\\,(T-T_0),\\quad U = M\\,u_l+\\frac{V-M\\,v_l}{v_g-v_l}\\,(u_g-u_l)',
    source,
    outside,
    compute: blockedOutletHeat,
  }),
  correlation({
    name: 'blocked-outlet-time',
    says: 'Time in which a pot whose outlet is closed reaches a pressure; teaching only.',
    arguments: {
      P: { unit: 'W', says: 'heat entering the pot', range: [100, 60e3] },
      m: water,
      V: volume,
      C: metal,
      p_0: air,
      dp: { unit: 'Pa', says: 'pressure over the air', range: [0, 3e5] },
    },
    result: { symbol: 't', unit: 's' },
    tex: 't = \\frac{U(T,M,V)-U(T_0,M,V)+C\\,(T-T_0)}{P}',
    source,
    outside,
    compute: blockedOutletTime,
  }),
  forReaders({
    name: 'blocked-outlet-pressure',
    says: 'Pressure over the air in a pot whose outlet has been closed for a time; teaching only.',
    arguments: {
      t: { unit: 's', says: 'time since the outlet was closed', range: [0, 3600] },
      P: { unit: 'W', says: 'heat entering the pot', range: [100, 60e3] },
      m: water,
      V: volume,
      C: metal,
      p_0: air,
    },
    result: { symbol: '\\Delta p', unit: 'Pa' },
    tex: 'P\\,t = U(T,M,V)-U(T_0,M,V)+C\\,(T-T_0),\\quad \\Delta p = p_{sat}(T)-p_0',
    source,
    outside: 'held at 2 MPa absolute, and where the pot is full of water or all of it has boiled off',
    compute: blockedOutletGauge,
  }),
];
