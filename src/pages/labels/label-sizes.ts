/** Labels that go round common bottles, and what of an oil has to stand on one. */

export interface LabelSize {
  readonly id: string;
  /** Bottles that it goes round, m³. */
  readonly upTo_m3: number;
  readonly width_m: number;
  readonly height_m: number;
}

export const LABEL_SIZES: readonly LabelSize[] = [
  { id: 'small', upTo_m3: 10e-6, width_m: 0.06, height_m: 0.03 },
  { id: 'middle', upTo_m3: 30e-6, width_m: 0.075, height_m: 0.045 },
  { id: 'large', upTo_m3: 50e-6, width_m: 0.095, height_m: 0.065 },
  { id: 'largest', upTo_m3: Infinity, width_m: 0.12, height_m: 0.08 },
];

export const labelFor = (bottle_m3: number): LabelSize =>
  LABEL_SIZES.find(({ upTo_m3 }) => bottle_m3 <= upTo_m3) ?? (LABEL_SIZES.at(-1) as LabelSize);

export interface LabelText {
  readonly name: string;
  /** Latin name and part, or what is in a blend. */
  readonly under: string;
  /** Batch, date, origin, volume, best before: a line each. */
  readonly lines: readonly string[];
  readonly cautions: readonly string[];
}
