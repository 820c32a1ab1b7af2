/** Separators as a workshop has them. Heights are above the inside bottom. */
import { circleArea } from '../geometry/cylinder.ts';
import { findRow } from './find-row.ts';
import type { Provenance } from './provenance.ts';
import type { SeparatorVessel } from './types.ts';

const provenance: Provenance = {
  kind: 'common-practice',
  source: 'usual proportions of Florentine vessels',
  note: 'sizes chosen to give 10 to 30 minutes of hold-up; outlet heights estimated and trimmed at the still',
};

interface Sizes {
  readonly id: string;
  readonly name: string;
  readonly material: string;
  readonly suits: SeparatorVessel['suits'];
  /** Millimetres. */
  readonly bore: number;
  readonly height: number;
}

/** Outlets as shares of the height: oil spout, water crest, inlet. */
const OUTLETS = {
  floating: { oil: 0.9, water: 0.84, inlet: 0.5 },
  sinking: { oil: 0.03, water: 0.9, inlet: 0.6 },
  both: { oil: 0.9, water: 0.84, inlet: 0.55 },
} as const;

const separator = ({ id, name, material, suits, bore, height }: Sizes): SeparatorVessel => {
  const outlets = OUTLETS[suits];
  const bore_m = bore / 1000;
  const height_m = height / 1000;
  return {
    id,
    name,
    material,
    suits,
    bore_m,
    height_m,
    inletHeight_m: outlets.inlet * height_m,
    oilOutletHeight_m: outlets.oil * height_m,
    waterOutletHeight_m: outlets.water * height_m,
    holdUp_m3: circleArea(bore_m) * Math.max(outlets.oil, outlets.water) * height_m,
    provenance,
  };
};

export const separators: readonly SeparatorVessel[] = [
  separator({
    id: 'burette-separator',
    name: 'glass measuring separator, {40 mm}',
    material: 'borosilicate-glass',
    suits: 'floating',
    bore: 40,
    height: 200,
  }),
  separator({
    id: 'glass-500',
    name: 'half-litre glass Florentine vessel',
    material: 'borosilicate-glass',
    suits: 'floating',
    bore: 60,
    height: 200,
  }),
  separator({
    id: 'glass-1000',
    name: 'one-litre glass Florentine vessel',
    material: 'borosilicate-glass',
    suits: 'floating',
    bore: 80,
    height: 240,
  }),
  separator({
    id: 'glass-2000',
    name: 'two-litre glass Florentine vessel',
    material: 'borosilicate-glass',
    suits: 'floating',
    bore: 100,
    height: 280,
  }),
  separator({
    id: 'beaker-1000',
    name: 'one-litre beaker with a side leg',
    material: 'borosilicate-glass',
    suits: 'floating',
    bore: 105,
    height: 145,
  }),
  separator({
    id: 'sinking-1000',
    name: 'one-litre glass vessel for sinking oil',
    material: 'borosilicate-glass',
    suits: 'sinking',
    bore: 80,
    height: 240,
  }),
  separator({
    id: 'two-way-1000',
    name: 'one-litre glass vessel with top and bottom taps',
    material: 'borosilicate-glass',
    suits: 'both',
    bore: 80,
    height: 240,
  }),
  separator({
    id: 'copper-5000',
    name: 'five-litre copper Florentine vessel',
    material: 'copper',
    suits: 'floating',
    bore: 150,
    height: 320,
  }),
  separator({
    id: 'steel-10000',
    name: 'ten-litre stainless Florentine vessel',
    material: 'stainless-steel',
    suits: 'both',
    bore: 200,
    height: 360,
  }),
];

export const findSeparator = (id: string): SeparatorVessel => findRow('separator', separators, id);
