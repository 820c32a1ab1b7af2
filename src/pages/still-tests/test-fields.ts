/** How the readings of each test are asked for: their names, units and what is possible. */
import type { HomeTest } from '../../../sim/index.ts';

export interface TestField {
  readonly words: string;
  readonly unit: string;
  readonly hint: string;
  readonly min: number;
  readonly max: number;
}

const ICE_K = 273.15;
const BOIL_K = 373.15;
const warm = (words: string): TestField => ({ words, unit: 'K', hint: 'temperature', min: ICE_K, max: BOIL_K });
const water = (words: string, min: number, max: number): TestField => ({ words, unit: 'kg', hint: 'water', min, max });
const time = (words: string, max: number, min = 0): TestField => ({ words, unit: 's', hint: 'duration', min, max });

const CAUGHT: Readonly<Record<string, TestField>> = {
  caught_kg: water('Water caught', 0.005, 100),
  caught_s: time('in', 3600, 1),
};

export const TEST_FIELDS: Readonly<Record<HomeTest, Readonly<Record<string, TestField>>>> = {
  tub: {
    ...CAUGHT,
    start_K: warm('Tub at the start'),
    inlet_K: warm('Tap water'),
    letIn_kg: water('Water let in', 0.5, 2000),
    height_m: { words: 'Height above the floor', unit: 'm', hint: 'size', min: 0, max: 2 },
    value_K: warm('Temperature'),
  },
  coil: {
    ...CAUGHT,
    length_m: { words: 'Tube under water', unit: 'm', hint: 'tubeLength', min: 0.1, max: 100 },
    inlet_K: warm('Water in the funnel'),
    outlet_K: warm('Outlet'),
    bath_K: warm('Water round the tube'),
  },
  'heat-up': {
    water_kg: water('Water in the pot', 0.2, 500),
    start_K: warm('Water at the start'),
    air_K: { words: 'Air', unit: 'K', hint: 'temperature', min: 243.15, max: 323.15 },
    setting: { words: 'Setting of the heat', unit: '1', hint: 'share', min: 0.05, max: 1 },
    off_s: time('Heat off after', 14_400),
    time_s: time('Time since heat on', 21_600),
    value_K: warm('Water'),
  },
};
