/** What is asked of plant and money, kept on this device between visits. */
import { createSignal, untrack } from 'solid-js';
import * as z from 'zod/mini';
import { USUAL_CHAMBER_FILL, USUAL_LOSS } from '../../sim/index.ts';
import { keptStore } from './browser-store.ts';
import type { Shape } from './kept-shape.ts';

export interface Quantity {
  readonly botanical: string;
  readonly state: 'fresh' | 'dry';
  /** What is known: oil that is wanted, or a harvest that there is. */
  readonly from: 'oil' | 'harvest';
  readonly oil_m3: number;
  readonly harvest_kg: number;
  readonly fill: number;
  readonly loss: number;
  readonly batchesADay: number;
  /** Two weighings for moisture. */
  readonly before_kg: number;
  readonly after_kg: number;
  /** Prices and hours, in the reader’s currency. */
  readonly plantPrice_kg: number;
  readonly hours: number;
  readonly wage: number;
  readonly stillABatch: number;
  readonly bottlesABatch: number;
  readonly otherABatch: number;
  readonly price_mL: number;
}

export const USUAL_QUANTITY: Quantity = {
  botanical: 'lavender-true',
  state: 'fresh',
  from: 'oil',
  oil_m3: 50e-6,
  harvest_kg: 5,
  fill: USUAL_CHAMBER_FILL,
  loss: USUAL_LOSS,
  batchesADay: 2,
  before_kg: 0.1,
  after_kg: 0.033,
  plantPrice_kg: 0,
  hours: 4,
  wage: 0,
  stillABatch: 0,
  bottlesABatch: 0,
  otherABatch: 0,
  price_mL: 0,
};

const amount = z.number().check(z.gte(0));
const positive = z.number().check(z.gt(0));

const schema = z.object({
  botanical: z.string(),
  state: z.enum(['fresh', 'dry'] as const),
  from: z.enum(['oil', 'harvest'] as const),
  oil_m3: positive,
  harvest_kg: positive,
  fill: positive,
  loss: amount,
  batchesADay: positive,
  before_kg: positive,
  after_kg: positive,
  plantPrice_kg: amount,
  hours: amount,
  wage: amount,
  stillABatch: amount,
  bottlesABatch: amount,
  otherABatch: amount,
  price_mL: amount,
});

export const quantityShape: Shape<Quantity> = {
  version: 1,
  read: (value) => {
    const read = schema.safeParse(value);
    return read.success ? read.data : null;
  },
};

const KEY = 'quantity';
const [quantity, setQuantity] = createSignal<Quantity>(USUAL_QUANTITY);
export { quantity };

let opening: Promise<void> | null = null;

export function openQuantity(): Promise<void> {
  opening ??= (async () => {
    try {
      const kept = await keptStore().read(KEY, quantityShape);
      if (kept.kind === 'read') setQuantity(kept.value);
    } catch {
      // A browser that keeps nothing begins with what is usual.
    }
  })();
  return opening;
}

export function changeQuantity(changed: Partial<Quantity>): void {
  const after = { ...untrack(quantity), ...changed };
  setQuantity(after);
  keptStore().keep(KEY, quantityShape, after);
}
