/** Pots and boilers by size. The model sees each as an upright cylinder of the vessel's bore and volume. */
import { cylinderDiameter, cylinderHeight, cylinderVolume } from '../geometry/cylinder.ts';
import { findRow } from './find-row.ts';
import type { Provenance } from './provenance.ts';
import type { Vessel } from './types.ts';

const litres = (volume_m3: number): string => {
  const value = volume_m3 * 1000;
  return value < 10 ? value.toFixed(1) : value.toFixed(0);
};

const potProvenance: Provenance = {
  kind: 'common-practice',
  source: 'deep catering pots, sold with height equal to diameter',
  note: 'volume reckoned from the size; mass estimated: shell, sandwich base of 1.8 mm steel and 4.2 mm aluminium, 1 mm lid',
};

/** Diameter in cm, wall in mm, estimated mass in kg. */
const cateringPots = (
  [
    [20, 0.8, 1.8],
    [24, 0.8, 2.7],
    [28, 0.8, 3.6],
    [32, 0.8, 4.7],
    [36, 0.8, 6.0],
    [40, 1, 8.2],
    [45, 1, 10.3],
    [50, 1, 12.8],
    [60, 1, 18.4],
  ] as const
).map(([centimetres, wall, emptyMass_kg]): Vessel => {
  const side = centimetres / 100;
  const volume_m3 = cylinderVolume(side, side);
  return {
    id: `catering-pot-${centimetres}`,
    name: `{${centimetres} cm} catering pot, {${litres(volume_m3)} L}`,
    kind: 'catering-pot',
    material: 'stainless-steel',
    insideDiameter_m: side,
    height_m: side,
    wall_m: wall / 1000,
    volume_m3,
    emptyMass_kg,
    provenance: potProvenance,
  };
});

const COPPER_DENSITY = 8940;
/** Body height over diameter of a copper still, and what hat, rim and handles add to the bare shell. */
const COPPER_SHAPE = 0.9;
const COPPER_FITTINGS = 1.3;

/** Capacity in litres, sheet in mm. */
const copperPots = (
  [
    [5, 0.8],
    [10, 0.8],
    [20, 1],
    [30, 1.2],
    [40, 1.2],
    [50, 1.5],
    [80, 1.5],
    [100, 2],
  ] as const
).map(([capacity, wall]): Vessel => {
  const insideDiameter_m = Math.cbrt(capacity / 1000 / ((Math.PI / 4) * COPPER_SHAPE));
  const height_m = COPPER_SHAPE * insideDiameter_m;
  const shell = Math.PI * insideDiameter_m * height_m + (Math.PI / 2) * insideDiameter_m ** 2;
  return {
    id: `copper-pot-${capacity}`,
    name: `{${capacity} L} copper pot with hat`,
    kind: 'copper-pot',
    material: 'copper',
    insideDiameter_m,
    height_m,
    wall_m: wall / 1000,
    volume_m3: capacity / 1000,
    emptyMass_kg: Math.round(10 * COPPER_FITTINGS * shell * (wall / 1000) * COPPER_DENSITY) / 10,
    provenance: {
      kind: 'estimated',
      source: 'bellied copper pot taken as a cylinder 0.9 times as high as wide; sheet 0.8 to 2 mm is common practice',
      note: 'mass from the sheet plus 30 % for hat, rim and handles',
    },
  };
});

/** Capacity in litres: a can 1.4 times as high as wide. */
const CAN_SHAPE = 1.4;
const cans = (
  [
    [10, 2.5],
    [20, 4],
    [30, 5.5],
    [40, 7],
  ] as const
).map(([capacity, emptyMass_kg]): Vessel => {
  const insideDiameter_m = Math.cbrt(capacity / 1000 / ((Math.PI / 4) * CAN_SHAPE));
  return {
    id: `milk-can-${capacity}`,
    name: `{${capacity} L} milk can`,
    kind: 'can',
    material: 'stainless-steel',
    insideDiameter_m,
    height_m: CAN_SHAPE * insideDiameter_m,
    wall_m: 0.001,
    volume_m3: capacity / 1000,
    emptyMass_kg,
    provenance: { kind: 'estimated', source: 'dairy can sizes, common practice; shape, wall and mass estimated' },
  };
});

/** Capacity in litres, wall in mm, mass in kg. */
const flasks = (
  [
    [1, 2, 0.25],
    [2, 2.5, 0.45],
    [5, 3, 1.1],
    [10, 3.5, 2.1],
  ] as const
).map(([capacity, wall, emptyMass_kg]): Vessel => {
  const volume_m3 = capacity / 1000;
  const height_m = Math.cbrt((6 * volume_m3) / Math.PI);
  return {
    id: `flask-${capacity}`,
    name: `{${capacity} L} round-bottom glass flask`,
    kind: 'flask',
    material: 'borosilicate-glass',
    insideDiameter_m: cylinderDiameter(volume_m3, height_m),
    height_m,
    wall_m: wall / 1000,
    volume_m3,
    emptyMass_kg,
    provenance: {
      kind: 'estimated',
      source: 'laboratory flask taken as a cylinder as high as the sphere and of its volume; wall and mass estimated',
    },
  };
});

export const vessels: readonly Vessel[] = [
  ...cateringPots,
  ...copperPots,
  {
    id: 'rose-alembic',
    name: '{110 L} historical rose alembic',
    kind: 'copper-pot',
    material: 'copper',
    insideDiameter_m: 0.8,
    height_m: 0.11 / ((Math.PI / 4) * 0.64),
    wall_m: 0.0015,
    volume_m3: 0.11,
    emptyMass_kg: 25,
    provenance: {
      kind: 'seen',
      source: 'public history of the Kazanlak rose industry: 80 to 120 L, 0.8 m across the base',
      note: 'height from the volume; sheet and mass estimated',
    },
  },
  {
    id: 'drum-200',
    name: '{200 L} stainless drum',
    kind: 'drum',
    material: 'stainless-steel',
    insideDiameter_m: 0.5715,
    height_m: 0.85,
    wall_m: 0.0012,
    volume_m3: cylinderVolume(0.5715, 0.85),
    emptyMass_kg: 20,
    provenance: {
      kind: 'seen',
      source: 'ISO 15750 steel drums: sheet 0.8 to 1.2 mm, 16.6 to 23.6 kg, 880 mm high',
      note: 'inside diameter from memory, inside height estimated; food-grade drums only, never a reconditioned chemical drum',
    },
  },
  {
    id: 'keg-50',
    name: '{50 L} keg',
    kind: 'keg',
    material: 'stainless-steel',
    insideDiameter_m: 0.39,
    height_m: cylinderHeight(0.05, 0.39),
    wall_m: 0.0015,
    volume_m3: 0.05,
    emptyMass_kg: 11.5,
    provenance: {
      kind: 'memory',
      source: 'DIN 6647 kegs: 381 to 408 mm across, 532 to 600 mm high, 9.5 to 13.5 kg',
      note: 'height of the model’s cylinder from the volume',
    },
  },
  ...cans,
  ...flasks,
];

export const findVessel = (id: string): Vessel => findRow('vessel', vessels, id);
