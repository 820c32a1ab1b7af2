/** The still’s parts in English. */
import type { PartDetailValues, PartLineValues, PartNameKind } from '../part-facts.ts';
import type { Quantities } from '../quantities.ts';

const NAMES: Readonly<Record<PartNameKind, string>> = {
  'electric-plate': 'Electric plate',
  'immersion-element': 'Heating element',
  induction: 'Induction plate',
  'gas-ring': 'Gas ring',
  'gas-burner': 'Gas burner',
  'wood-fire': 'Wood fire',
  'steam-generator': 'Steam generator',
  boiler: 'Boiler',
  pot: 'Pot',
  charge: 'Charge',
  neck: 'Swan neck',
  coil: 'Coil',
  bundle: 'Tube bundle',
  condenser: 'Condenser',
  tub: 'Cooling tub',
  barrel: 'Cooling barrel',
  'cooling-water': 'Cooling water',
  separator: 'Separator',
  hydrosol: 'Hydrosol',
};

export function parts(q: Quantities) {
  const length = (value: number): string => q.tubeLength(value, { decimals: 1 });
  const boilingWater = (water_kg: number): string => `${q.water(water_kg)} water`;

  /** In one unit and with one decimal, so that a number that changes fast keeps its shape. */
  const speed = (value: number): string => q.speed(value, { decimals: 1, near: 1 });

  const lines: { readonly [K in keyof PartLineValues]: (values: PartLineValues[K]) => string } = {
    'rated-power': ({ rated_W }) => q.power(rated_W),
    power: ({ power_W, rated_W }) => `${q.power(power_W)} of ${q.power(rated_W)}`,
    water: ({ water_kg }) => boilingWater(water_kg),
    'hot-water': ({ water_kg, temperature_K }) => `${boilingWater(water_kg)}, ${q.temperature(temperature_K)}`,
    'fed-with-steam': () => 'fed with steam',
    'lid-temperature': ({ temperature_K }) => `${q.temperature(temperature_K)} at the lid`,
    'charge-empty': () => 'empty',
    'charge-in-water': ({ mass_kg }) => `${q.mass(mass_kg)} in the water`,
    'charge-on-grid': ({ mass_kg }) => `${q.mass(mass_kg)} on the grid`,
    'charge-steaming': ({ mass_kg, front_m }) => `${q.mass(mass_kg)}, steam up ${q.size(front_m)}`,
    'charge-steamed': ({ mass_kg }) => `${q.mass(mass_kg)}, steam through`,
    'neck-length': ({ length_m }) => `${length(length_m)} long`,
    'neck-vapour': ({ temperature_K, speed_m_s }) => `${q.temperature(temperature_K)}, ${speed(speed_m_s)}`,
    tube: ({ length_m }) => `${length(length_m)} of tube`,
    tubes: ({ tubes, length_m }) => `${tubes} tubes of ${length(length_m)}`,
    'tube-too-short': ({ length_m }) => `all ${length(length_m)} are not enough`,
    condensing: ({ condensing_m, length_m }) =>
      `condenses in ${q.tubeLength(condensing_m, { decimals: 2 })} of ${length(length_m)}`,
    'coolant-start': ({ temperature_K }) => q.temperature(temperature_K),
    'coolant-flow': ({ flow_kg_s, in_K, out_K }) =>
      `${q.waterFlow(flow_kg_s, { decimals: 2 })}, ${q.temperature(in_K)} to ${q.temperature(out_K)}`,
    'still-tub': ({ top_K }) => `no flow, ${q.temperature(top_K)} at the top`,
    'still-coolant': ({ temperature_K }) => `no flow, ${q.temperature(temperature_K)}`,
    'no-oil': () => 'no oil yet',
    oil: ({ oil_kg, density_kg_m3 }) => `${q.oil(oil_kg, density_kg_m3)} oil`,
    'receiver-empty': () => 'empty',
    hydrosol: ({ water_kg }) => q.water(water_kg),
  };
  const details: { readonly [K in keyof PartDetailValues]: (values: PartDetailValues[K]) => string } = {
    plant: ({ name }) => name,
    'own-plant': () => 'own plant',
    'water-low': () => 'water is low',
    dry: () => 'dry',
    pressure: ({ gauge_Pa }) => `${q.pressure(gauge_Pa)} above the air`,
    escaping: () => 'vapour is escaping from the outlet',
    scalding: () => 'hot enough to scald',
    catches: ({ drop_m }) => `catches drops over ${q.drop(drop_m)}`,
  };
  return { names: NAMES, lines, details };
}
