/** Messages on the prices of tubes. */
import { priceList } from './english/price-list.ts';
import { section } from './section.ts';

export const priceListMessages = section<ReturnType<typeof priceList>>({ en: priceList });
