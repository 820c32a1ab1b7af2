/** Currencies in which a reader may want amounts; they are stored bare, and none is ever turned into another. */
import { THIN_SPACE } from './numbers.ts';

export const CURRENCIES = {
  EUR: '€',
  GBP: '£',
  USD: '$',
  AUD: 'A$',
  BRL: 'R$',
  CAD: 'C$',
  CHF: 'CHF',
  CZK: 'Kč',
  DKK: 'DKK',
  INR: '₹',
  NOK: 'NOK',
  NZD: 'NZ$',
  PLN: 'zł',
  SEK: 'SEK',
  TRY: '₺',
  ZAR: 'R',
} as const;

/** By its three letters of ISO 4217. */
export type Currency = keyof typeof CURRENCIES;

/** An amount or a price with the sign of its currency before it; bare where none is chosen. */
export function inCurrency(amount: string, currency: Currency | null): string {
  if (currency === null) return amount;
  const sign = CURRENCIES[currency];
  return /\p{L}$/u.test(sign) ? `${sign}${THIN_SPACE}${amount}` : `${sign}${amount}`;
}

/** What stands after the number of a price: `€ per kWh`. */
export const priceUnit = (label: string, currency: Currency | null): string =>
  currency !== null && label.startsWith('per ') ? `${CURRENCIES[currency]}${THIN_SPACE}${label}` : label;
