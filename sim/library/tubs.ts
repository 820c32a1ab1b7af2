/** Tubs and barrels for the coil or the pump, as upright cylinders. */
import { cylinderVolume } from '../geometry/cylinder.ts';
import { findRow } from './find-row.ts';
import type { Tub } from './types.ts';

/** Millimetres; the volume follows. */
const tub = (
  id: string,
  name: string,
  material: string,
  diameter: number,
  height: number,
  wall: number,
  open = true,
): Tub => {
  const insideDiameter_m = diameter / 1000;
  const height_m = height / 1000;
  const volume_m3 = cylinderVolume(insideDiameter_m, height_m);
  return {
    id,
    name: `${name}, {${(volume_m3 * 1000).toFixed(0)} L}`,
    material,
    volume_m3,
    insideDiameter_m,
    height_m,
    wall_m: wall / 1000,
    open,
    provenance: {
      kind: 'common-practice',
      source: 'volumes as sold',
      note: 'diameter and height estimated to give the volume',
    },
  };
};

export const tubs: readonly Tub[] = [
  tub('bucket', 'bucket', 'polyethylene', 250, 245, 2),
  tub('trug', 'flexible trug', 'polyethylene', 440, 276, 4),
  tub('tall-tub', 'tall tub', 'polyethylene', 420, 500, 3),
  tub('large-tub', 'large flexible tub', 'polyethylene', 550, 316, 4),
  tub('half-barrel', 'wooden half barrel', 'wood', 580, 379, 25),
  tub('rain-barrel', 'rain barrel', 'polyethylene', 570, 784, 4),
  tub('steel-drum', 'steel drum', 'carbon-steel', 571.5, 850, 1),
  tub('tank-1000', 'caged tank', 'polyethylene', 1236, 833, 3, false),
];

export const findTub = (id: string): Tub => findRow('tub', tubs, id);
