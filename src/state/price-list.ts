/** The reader's own prices of tubes, kept on this device. */
import { createSignal } from 'solid-js';
import { isObject, NO_PRICES, type OwnPrice, type PriceList } from '../../sim/index.ts';
import { keptStore } from './browser-store.ts';
import type { Shape } from './kept-shape.ts';
import type { KeptStore } from './kept-store.ts';

const KEY = 'tube-prices';

const isPrice = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value) && value > 0;

function readOwn(value: unknown): OwnPrice | null {
  if (!isObject(value) || !isPrice(value['price'])) return null;
  const { price, length_m } = value;
  if (value['soldBy'] === 'metre') return { soldBy: 'metre', price };
  return value['soldBy'] === 'piece' && isPrice(length_m) ? { soldBy: 'piece', price, length_m } : null;
}

/** What cannot be read of a list is left out of it. */
export const priceListShape: Shape<PriceList> = {
  version: 1,
  read: (value) => {
    if (!isObject(value) || !isObject(value['metals']) || !isObject(value['tubes'])) return null;
    return {
      metals: Object.fromEntries(
        Object.entries(value['metals']).filter((entry): entry is [string, number] => isPrice(entry[1])),
      ),
      tubes: Object.fromEntries(
        Object.entries(value['tubes']).flatMap(([id, price]) => {
          const own = readOwn(price);
          return own === null ? [] : [[id, own] as const];
        }),
      ),
    };
  },
};

const [prices, setPrices] = createSignal<PriceList>(NO_PRICES);
export { prices };

let opening: Promise<void> | null = null;

/** Reads once what is kept; a browser that keeps nothing begins with none. */
export function openPrices(store: KeptStore = keptStore()): Promise<void> {
  opening ??= (async () => {
    try {
      const kept = await store.read(KEY, priceListShape);
      if (kept.kind === 'read') setPrices((now) => (now === NO_PRICES ? kept.value : now));
    } catch {
      // Prices typed now count until the page is left.
    }
  })();
  return opening;
}

export function keepPrices(list: PriceList, store: KeptStore = keptStore()): void {
  setPrices(list);
  store.keep(KEY, priceListShape, list);
}
