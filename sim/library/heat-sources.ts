/** Heat sources: what they take, how much of it reaches the pot, and how fast they follow their setting. */
import { findRow } from './find-row.ts';
import type { Band, Provenance, Sourced } from './provenance.ts';
import type { HeatSource } from './types.ts';

const band = (typical: number, low: number, high: number, provenance: Provenance): Sourced<Band> => ({
  value: { typical, low, high },
  ...provenance,
});
const practice: Provenance = { kind: 'common-practice', source: 'plates, elements and burners as sold' };
const lag = (typical: number, low: number, high: number, says: string): Sourced<Band> =>
  band(typical, low, high, { kind: 'estimated', source: says });
const doe = 'US Department of Energy cooktop figures, quoted on public pages';

const propane: Sourced<number> = {
  value: 46.33e6,
  kind: 'computed',
  source: 'standard enthalpies of combustion at 25 °C',
  note: 'enthalpies from memory; commercial mixes lie between propane and butane, 45.72 MJ/kg',
};
const naturalGas: Sourced<number> = {
  value: 47.5e6,
  kind: 'memory',
  source: 'natural gas, about 36 MJ/m³ and 0.76 kg/m³',
  note: 'varies by a tenth with the supply',
};
const wood: Sourced<number> = {
  value: 14.5e6,
  kind: 'memory',
  source: 'air-dry wood at 20 % moisture',
  note: '13.5 to 15.5 MJ/kg; oven-dry 18.5',
};
const electric = { carrier: 'electricity', lowerHeatingValue_J_kg: null } as const;

export const heatSources: readonly HeatSource[] = [
  {
    id: 'electric-plate',
    name: 'electric plate',
    kind: 'electric-plate',
    ...electric,
    ratedPower_W: band(2000, 1000, 2200, practice),
    efficiency: band(0.75, 0.51, 0.8, {
      kind: 'secondary',
      source: `${doe}: 74 to 80 %`,
      note: 'a water-boiling test found 51 to 58 % (Ikpambese, Ager and Ipilakyaa, IJERST 3(2) 2014, seen)',
    }),
    lag_s: lag(180, 60, 600, 'a glowing coil a minute, a cast plate up to ten'),
  },
  {
    id: 'catering-plate',
    name: 'catering hotplate',
    kind: 'electric-plate',
    ...electric,
    ratedPower_W: band(3500, 3000, 5000, practice),
    efficiency: band(0.75, 0.6, 0.8, { kind: 'secondary', source: `${doe}: 74 to 80 %`, note: 'low end estimated' }),
    lag_s: lag(300, 120, 900, 'heavy plates are slow'),
  },
  {
    id: 'immersion-element',
    name: 'immersion element',
    kind: 'immersion-element',
    ...electric,
    ratedPower_W: band(2500, 1000, 5500, {
      ...practice,
      note: '1 to 3 kW on one phase; 5.5 kW on 240 V in North America',
    }),
    efficiency: band(0.99, 0.97, 1, {
      kind: 'computed',
      source: 'all input reaches the water; wall losses are counted separately',
    }),
    lag_s: lag(10, 5, 30, 'heat capacity of a rod element'),
  },
  {
    id: 'induction',
    name: 'induction plate',
    kind: 'induction',
    ...electric,
    ratedPower_W: band(2000, 1400, 3500, {
      ...practice,
      note: 'needs a magnetic base; plain copper and aluminium do not heat',
    }),
    efficiency: band(0.8, 0.7, 0.9, {
      kind: 'secondary',
      source: `${doe}: 84 %`,
      note: 'ceiling of 90 % and little gain with big pots: Sweeney, Dols, Fortenbery and Sharp, ACEEE Summer Study 2014 (abstract seen)',
    }),
    lag_s: lag(5, 1, 20, 'heat is made in the base itself'),
  },
  {
    id: 'gas-ring',
    name: 'gas hob ring',
    kind: 'gas-ring',
    carrier: 'natural-gas',
    ratedPower_W: band(2500, 1000, 5000, { ...practice, note: 'single rings to 3.5 kW, triple rings to 5 kW' }),
    efficiency: band(0.44, 0.4, 0.58, {
      kind: 'secondary',
      source: `${doe}: 40 to 44 %`,
      note: 'EN 30-2-1 asks 52 % (memory); best bottled-gas head in one test 58 % (Khan and Saxena, IJERT 2(7) 2013, seen)',
    }),
    lag_s: lag(5, 1, 15, 'a flame follows its tap'),
    lowerHeatingValue_J_kg: naturalGas,
  },
  {
    id: 'outdoor-gas-burner',
    name: 'outdoor gas ring',
    kind: 'gas-burner',
    carrier: 'propane',
    ratedPower_W: band(8000, 4000, 12000, {
      ...practice,
      note: 'an 11 to 13 kg cylinder gives 6 to 12 kW for hours before it chills',
    }),
    efficiency: band(0.35, 0.25, 0.45, {
      kind: 'common-practice',
      source: 'cast ring in the open, tall pot, light wind',
    }),
    lag_s: lag(5, 1, 15, 'a flame follows its tap'),
    lowerHeatingValue_J_kg: propane,
  },
  {
    id: 'jet-gas-burner',
    name: 'outdoor jet burner',
    kind: 'gas-burner',
    carrier: 'propane',
    ratedPower_W: band(20000, 12000, 35000, practice),
    efficiency: band(0.35, 0.25, 0.45, { kind: 'common-practice', source: 'as the outdoor ring' }),
    lag_s: lag(5, 1, 15, 'a flame follows its tap'),
    lowerHeatingValue_J_kg: propane,
  },
  {
    id: 'wood-fire',
    name: 'open wood fire',
    kind: 'wood-fire',
    carrier: 'wood',
    ratedPower_W: band(10000, 3000, 30000, { ...practice, note: 'power of the fire' }),
    efficiency: band(0.14, 0.096, 0.2, {
      kind: 'seen',
      source: 'water-boiling test, 9.6 % cold and 14.6 % hot start: Ikpambese, Ager and Ipilakyaa, IJERST 3(2) 2014',
      note: 'three-stone fires 10 to 20 % (memory)',
    }),
    lag_s: lag(300, 120, 900, 'fuel has to catch or burn down'),
    lowerHeatingValue_J_kg: wood,
  },
  {
    id: 'wood-stove',
    name: 'improved wood stove',
    kind: 'wood-fire',
    carrier: 'wood',
    ratedPower_W: band(6000, 2000, 12000, practice),
    efficiency: band(0.3, 0.25, 0.4, {
      kind: 'memory',
      source: 'water-boiling-test literature on improved and rocket stoves',
    }),
    lag_s: lag(240, 120, 600, 'fuel has to catch or burn down'),
    lowerHeatingValue_J_kg: wood,
  },
  {
    id: 'steam-generator',
    name: 'electric steam generator',
    kind: 'steam-generator',
    ...electric,
    ratedPower_W: band(3000, 1500, 9000, {
      kind: 'estimated',
      source: 'small electric boilers; above about 3 kW three-phase',
    }),
    efficiency: band(0.95, 0.85, 0.98, {
      kind: 'estimated',
      source: 'an immersed element less the losses of boiler and hose',
    }),
    lag_s: lag(60, 20, 300, 'water held in the boiler'),
  },
];

export const findHeatSource = (id: string): HeatSource => findRow('heat source', heatSources, id);
