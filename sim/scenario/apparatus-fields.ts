/** Fields of the apparatus: site, heat, pot, boiler, neck, condenser, cooling water, separator. */
import { z } from 'zod';
import { choice, count, optionalQuantity, quantity, schedule } from './field.ts';

const MATERIALS = ['copper', 'stainless-steel', 'aluminium', 'brass', 'carbon-steel', 'borosilicate-glass'] as const;

const materialOf = (title: string, initial: (typeof MATERIALS)[number], says: string) =>
  choice(MATERIALS, { title, says, default: initial, source: 'common practice, no source' });

const practice = 'common practice, no source';

export const siteSchema = z.strictObject({
  altitude_m: quantity({ unit: 'm', title: 'Altitude', says: 'Height of the shed above sea level; it sets the air pressure and so the boiling point.', default: 120, min: -400, max: 4500, source: 'Tern Hollow, invented' }),
  barometer_Pa: optionalQuantity({ unit: 'Pa', title: 'Barometer', says: 'Air pressure read at the still; leave open to take it from the altitude (ISO 2533).', min: 55_000, max: 108_000, source: 'left open: ISO 2533 standard atmosphere' }),
  airTemperature_K: quantity({ unit: 'K', title: 'Air temperature', says: 'Temperature of the air around the still.', default: 293.15, min: 253.15, max: 318.15, source: practice }),
  relativeHumidity: quantity({ unit: '1', title: 'Air humidity', says: 'Relative humidity of the air over an open tub.', default: 0.5, min: 0, max: 1, source: practice }),
  airSpeed_m_s: quantity({ unit: 'm/s', title: 'Draught', says: 'Air speed over the open tub.', default: 0, min: 0, max: 5, source: practice }),
});

export const HEAT_KINDS = ['electric-plate', 'immersion-element', 'induction', 'gas-ring', 'gas-burner', 'wood-fire', 'steam-generator'] as const;

export const heatSchema = z.strictObject({
  kind: choice(HEAT_KINDS, { title: 'Heat source', says: 'What heats the pot.', default: 'electric-plate', source: practice }),
  ratedPower_W: quantity({ unit: 'W', title: 'Rated power', says: 'Power the source takes at full setting (electric) or releases by burning (fuel).', default: 2200, min: 50, max: 60_000, source: 'portable plate, common practice' }),
  shareToPot: quantity({ unit: '1', title: 'Share into the pot', says: 'Part of the power that enters the pot through its base; the rest warms the room.', default: 0.75, min: 0.05, max: 1, source: 'US DOE cooking-top figures 74–80 % for electric plates, read in secondary sources' }),
  lag_s: quantity({ unit: 's', title: 'Lag', says: 'Time the source needs to follow a new setting (to 63 %).', default: 120, min: 0, max: 3600, source: practice }),
  control: choice(['schedule', 'hold-rate'], { title: 'Control', says: 'Follow the heat schedule, or let a controller hold a distillate rate.', default: 'schedule', source: practice }),
  setting: schedule({ unit: '1', title: 'Heat setting', says: 'Share of the rated power, over time.', default: 1, min: 0, max: 1, source: practice }),
  targetRate_kg_s: quantity({ unit: 'kg/s', title: 'Distillate rate to hold', says: 'Distillate rate the controller aims at.', default: 0.0004, min: 0.000_005, max: 0.02, source: practice }),
  heatedDiameter_m: optionalQuantity({ unit: 'm', title: 'Heated diameter', says: 'Diameter of the base that is heated; leave open for the whole base.', min: 0.03, max: 2, source: 'left open: pot diameter' }),
  supplyVolts_V: optionalQuantity({ unit: 'V', title: 'Supply voltage', says: 'Voltage of the circuit, to check its load; leave open for fuel.', min: 90, max: 480, source: 'left open' }),
  supplyAmps_A: optionalQuantity({ unit: 'A', title: 'Circuit rating', says: 'Current the circuit is fused for; leave open for fuel.', min: 1, max: 125, source: 'left open' }),
  energyPrice_J: quantity({ unit: '1/J', title: 'Energy price', says: 'Price of a joule of electricity or fuel, in your currency.', default: 0.3 / 3.6e6, min: 0, max: 1e-5, source: 'invented: 0.30 per kWh' }),
});

export const LAYOUTS = ['water', 'water-and-steam', 'steam'] as const;

export const potSchema = z.strictObject({
  layout: choice(LAYOUTS, { title: 'Layout', says: 'Plant in the water (water distillation), on a grid above it (water-and-steam), or fed from a separate boiler (steam).', default: 'water-and-steam', source: practice }),
  diameter_m: quantity({ unit: 'm', title: 'Pot diameter', says: 'Inside diameter of the pot.', default: 0.32, min: 0.05, max: 1.5, source: 'catering pot, height equal to diameter: common practice' }),
  height_m: quantity({ unit: 'm', title: 'Pot height', says: 'Inside height from base to lid.', default: 0.32, min: 0.05, max: 2.5, source: 'catering pot, height equal to diameter: common practice' }),
  wallThickness_m: quantity({ unit: 'm', title: 'Wall thickness', says: 'Thickness of side and lid.', default: 0.0008, min: 0.0002, max: 0.01, source: practice }),
  material: materialOf('Pot material', 'stainless-steel', 'What pot and lid are made of.'),
  emissivity: quantity({ unit: '1', title: 'Surface emissivity', says: 'How well the outside radiates: bright metal 0.05–0.2, tarnished copper 0.6–0.8, paint or cloth 0.9.', default: 0.2, min: 0.02, max: 1, source: 'handbook range from memory' }),
  insulationThickness_m: quantity({ unit: 'm', title: 'Insulation', says: 'Thickness of insulation round side and lid; zero is bare.', default: 0, min: 0, max: 0.2, source: practice }),
  insulationConductivity_W_mK: quantity({ unit: 'W/(m K)', title: 'Insulation conductivity', says: 'Conductivity of the insulation.', default: 0.04, min: 0.015, max: 0.3, source: 'mineral wool and felt 0.035–0.05, handbook table' }),
  water_kg: quantity({ unit: 'kg', title: 'Water in the pot', says: 'Water filled at the start (in the boiler for the steam layout).', default: 8, min: 0.05, max: 1500, source: practice }),
  waterTemperature_K: quantity({ unit: 'K', title: 'Filling temperature', says: 'Temperature of the water filled in.', default: 288.15, min: 273.2, max: 372, source: practice }),
  gridHeight_m: quantity({ unit: 'm', title: 'Grid height', says: 'Height of the grid over the base, for the water-and-steam layout.', default: 0.12, min: 0, max: 2, source: practice }),
  minimumDepth_m: quantity({ unit: 'm', title: 'Least water depth', says: 'Depth below which the element or base is uncovered and scorches.', default: 0.015, min: 0, max: 0.5, source: practice }),
});

export const boilerSchema = z.strictObject({
  diameter_m: quantity({ unit: 'm', title: 'Boiler diameter', says: 'Inside diameter of the separate boiler (steam layout).', default: 0.3, min: 0.05, max: 1.5, source: practice }),
  height_m: quantity({ unit: 'm', title: 'Boiler height', says: 'Inside height of the separate boiler.', default: 0.4, min: 0.05, max: 2.5, source: practice }),
  insulationThickness_m: quantity({ unit: 'm', title: 'Boiler insulation', says: 'Thickness of insulation round the boiler.', default: 0.02, min: 0, max: 0.2, source: practice }),
  dryness: quantity({ unit: '1', title: 'Steam dryness', says: 'Share of the boiler’s steam that is vapour; the rest is carried-over water.', default: 0.97, min: 0.7, max: 1, source: practice }),
  drain: choice(['waste', 'boiler'], { title: 'Bed drain', says: 'Where water draining from the bed goes.', default: 'waste', source: practice }),
});

export const neckSchema = z.strictObject({
  bore_m: quantity({ unit: 'm', title: 'Neck bore', says: 'Inside diameter of the swan neck.', default: 0.025, min: 0.004, max: 0.3, source: practice }),
  length_m: quantity({ unit: 'm', title: 'Neck length', says: 'Length of the neck from lid to condenser.', default: 0.8, min: 0.05, max: 6, source: practice }),
  risingLength_m: quantity({ unit: 'm', title: 'Rising part', says: 'Part of the length that slopes back to the pot; what condenses there returns.', default: 0.25, min: 0, max: 6, source: practice }),
  wallThickness_m: quantity({ unit: 'm', title: 'Neck wall', says: 'Wall thickness of the neck.', default: 0.001, min: 0.0002, max: 0.01, source: practice }),
  material: materialOf('Neck material', 'copper', 'What the neck is made of.'),
  emissivity: quantity({ unit: '1', title: 'Neck emissivity', says: 'How well the outside of the neck radiates.', default: 0.6, min: 0.02, max: 1, source: 'tarnished copper 0.6–0.8, from memory' }),
  insulationThickness_m: quantity({ unit: 'm', title: 'Neck insulation', says: 'Thickness of insulation round the neck.', default: 0, min: 0, max: 0.1, source: practice }),
});

export const CONDENSER_KINDS = ['coil-in-tub', 'jacketed-tube', 'bundle'] as const;

export const condenserSchema = z.strictObject({
  kind: choice(CONDENSER_KINDS, { title: 'Condenser', says: 'A coil in a tub, a straight tube in a jacket, or several tubes in one jacket.', default: 'coil-in-tub', source: practice }),
  insideDiameter_m: quantity({ unit: 'm', title: 'Tube bore', says: 'Inside diameter of the condenser tube.', default: 0.01, min: 0.002, max: 0.08, source: 'EN 1057, 12 × 1 mm' }),
  outsideDiameter_m: quantity({ unit: 'm', title: 'Tube outside', says: 'Outside diameter of the condenser tube.', default: 0.012, min: 0.003, max: 0.1, source: 'EN 1057, 12 × 1 mm' }),
  material: materialOf('Tube material', 'copper', 'What the tube is made of.'),
  length_m: quantity({ unit: 'm', title: 'Tube length', says: 'Cooled length of the tube (of each tube in a bundle).', default: 5, min: 0.05, max: 100, source: practice }),
  tubes: count({ unit: '1', title: 'Tubes', says: 'Number of parallel tubes in a bundle.', default: 7, min: 1, max: 200, source: practice }),
  coilDiameter_m: quantity({ unit: 'm', title: 'Coil diameter', says: 'Diameter of a turn, centre to centre of the tube.', default: 0.25, min: 0.03, max: 2, source: practice }),
  coilPitch_m: quantity({ unit: 'm', title: 'Coil pitch', says: 'Rise from one turn to the next.', default: 0.045, min: 0.004, max: 0.5, source: practice }),
  coilTopDepth_m: quantity({ unit: 'm', title: 'First turn below rim', says: 'Depth of the uppermost turn below the overflow.', default: 0.05, min: 0, max: 2, source: practice }),
  orientation: choice(['sloping', 'upright'], { title: 'Tube stands', says: 'Whether a jacketed tube or bundle slopes gently or stands upright.', default: 'sloping', source: practice }),
  slope_rad: quantity({ unit: 'rad', title: 'Slope', says: 'Fall of a sloping jacketed tube.', default: 0.1, min: 0.01, max: 0.5, source: practice }),
  jacketDiameter_m: quantity({ unit: 'm', title: 'Jacket bore', says: 'Inside diameter of the jacket.', default: 0.022, min: 0.005, max: 0.5, source: practice }),
  flow: choice(['counterflow', 'parallel'], { title: 'Jacket flow', says: 'Whether the cooling water meets the vapour head-on or runs with it.', default: 'counterflow', source: practice }),
  fouling_m2K_W: quantity({ unit: 'm² K/W', title: 'Fouling', says: 'Thermal resistance of scale on the water side.', default: 0.0001, min: 0, max: 0.005, source: 'handbook order 1e-4 for tap water, from memory' }),
  oilFilmFactor: quantity({ unit: '1', title: 'Oil film factor', says: 'How much the oil in the condensate film slows condensation (judgement).', default: 0.85, min: 0.3, max: 1, source: 'judgement 0.8–0.9; no correlation fits' }),
  outletLimit_K: quantity({ unit: 'K', title: 'Outlet limit', says: 'Warmest condensate you want at the outlet.', default: 308.15, min: 278.15, max: 363.15, source: 'condensate 25–35 °C: common practice, no source' }),
  tubePrice_m: quantity({ unit: '1/m', title: 'Tube price', says: 'Price of a metre of tube, in your currency.', default: 9, min: 0, max: 1000, source: 'invented' }),
});

const iceAddition = z.strictObject({
  at_s: z.number().min(0).max(604_800).meta({ title: 'Time', description: 'When the ice goes in.', unit: 's' }),
  mass_kg: z.number().min(0.01).max(500).meta({ title: 'Ice', description: 'Ice put on the tub at that time.', unit: 'kg' }),
});

export const coolingSchema = z.strictObject({
  jacketSupply: choice(['tap', 'barrel'], { title: 'Jacket supply', says: 'Water for a jacket runs once through from the tap, or is pumped round from a barrel.', default: 'tap', source: practice }),
  flow_kg_s: schedule({ unit: 'kg/s', title: 'Water flow', says: 'Cooling water let in (or pumped round), over time; zero is a still tub.', default: 0.025, min: 0, max: 2, source: practice }),
  tapTemperature_K: schedule({ unit: 'K', title: 'Tap temperature', says: 'Temperature of the water that comes in, over time.', default: 288.15, min: 273.25, max: 313.15, source: 'UK mains about 4–20 °C over the year, read in secondary sources' }),
  tubDiameter_m: quantity({ unit: 'm', title: 'Tub diameter', says: 'Inside diameter of the tub or barrel.', default: 0.42, min: 0.05, max: 3, source: practice }),
  tubHeight_m: quantity({ unit: 'm', title: 'Tub water height', says: 'Height of the water up to the overflow.', default: 0.5, min: 0.05, max: 3, source: practice }),
  tubFill: quantity({ unit: '1', title: 'Tub filled to', says: 'Share of the tub that is full at the start.', default: 1, min: 0.1, max: 1, source: practice }),
  startTemperature_K: quantity({ unit: 'K', title: 'Tub at start', says: 'Temperature of the tub or barrel when the heat goes on.', default: 288.15, min: 273.2, max: 353.15, source: practice }),
  tubWallResistance_m2K_W: quantity({ unit: 'm² K/W', title: 'Tub wall resistance', says: 'Thermal resistance of the tub wall (3 mm plastic about 0.015, sheet metal almost zero).', default: 0.015, min: 0, max: 3, source: 'thickness over conductivity of polyethylene, from memory' }),
  stir_m_s: quantity({ unit: 'm/s', title: 'Stirring', says: 'Water speed past the coil when the tub is stirred; zero is still.', default: 0, min: 0, max: 1, source: practice }),
  ice: z.array(iceAddition).max(50).default([]).meta({ title: 'Ice', description: 'Ice put on the tub by time.', unit: 'kg', source: practice }),
  waterPrice_m3: quantity({ unit: '1/m³', title: 'Water price', says: 'Price of a cubic metre of tap water, in your currency.', default: 3, min: 0, max: 1000, source: 'invented' }),
});

export const separatorSchema = z.strictObject({
  bore_m: quantity({ unit: 'm', title: 'Separator bore', says: 'Inside diameter of the separator.', default: 0.08, min: 0.01, max: 1, source: practice }),
  height_m: quantity({ unit: 'm', title: 'Separator height', says: 'Height of the separator up to the oil spout.', default: 0.22, min: 0.03, max: 2, source: practice }),
  inletDepth_m: quantity({ unit: 'm', title: 'Inlet depth', says: 'Depth below the surface at which condensate enters.', default: 0.05, min: 0, max: 1, source: practice }),
  dropMedian_m: quantity({ unit: 'm', title: 'Drop size', says: 'Median oil drop by volume in the condensate; nobody has measured it, so vary it.', default: 0.00012, min: 0.000_005, max: 0.003, source: 'assumption: no measured distribution found' }),
  dropSpread: quantity({ unit: '1', title: 'Drop spread', says: 'Geometric standard deviation of the drop sizes.', default: 2.2, min: 1.05, max: 4, source: 'assumption: no measured distribution found' }),
  turbulenceFactor: quantity({ unit: '1', title: 'Turbulence factor', says: 'How much larger the separator must be than in calm flow (API 421 gives 1.28–1.74).', default: 1.3, min: 1, max: 3, source: 'API 421 range' }),
  interfaceMobility: quantity({ unit: '1', title: 'Drop surface mobility', says: 'Zero: drops rise as rigid spheres (Stokes); one: as clean fluid drops (Hadamard).', default: 0, min: 0, max: 1, source: 'dirty interfaces are rigid: handbook rule' }),
  returnShare: quantity({ unit: '1', title: 'Cohobation', says: 'Share of the separated water that runs back to the pot.', default: 0, min: 0, max: 1, source: practice }),
});
