import { describe, expect, it } from 'vitest';
import { CURRENCIES, inCurrency, priceUnit } from '../../../sim/units/index.ts';
import { englishReader } from '../../../sim/messages/language.ts';
import { quantities, spokenQuantities } from '../../../sim/messages/quantities.ts';

describe('an amount', () => {
  it('stands behind the sign of its currency, letters apart', () => {
    expect(inCurrency('1.36', 'EUR')).toBe('€1.36');
    expect(inCurrency('1.36', 'CHF')).toBe('CHF\u202f1.36');
    expect(inCurrency('1.36', null)).toBe('1.36');
  });

  it('is said in the reader’s currency, and bare to one who has chosen none', () => {
    expect(quantities(englishReader('metric', 'GBP')).cost(12.345)).toBe('£12.35');
    expect(quantities(englishReader('us', 'USD')).cost(0.5)).toBe('$0.50');
    expect(quantities(englishReader('metric')).cost(12.345)).toBe('12.35');
    expect(spokenQuantities(englishReader('metric', 'EUR')).cost(2)).toBe('€2.00');
    expect(quantities(englishReader('metric', 'EUR')).cost(null)).toBe('–');
  });

  it('has a sign for every currency, and no two the same', () => {
    const signs = Object.values(CURRENCIES);
    expect(new Set(signs).size).toBe(signs.length);
  });
});

describe('the unit of a price', () => {
  it('names the currency too, and other units stay', () => {
    expect(priceUnit('per kWh', 'EUR')).toBe('€\u202fper kWh');
    expect(priceUnit('per kWh', null)).toBe('per kWh');
    expect(priceUnit('kg', 'EUR')).toBe('kg');
  });
});
