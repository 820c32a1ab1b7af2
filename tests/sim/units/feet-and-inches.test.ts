import { describe, expect, test } from 'vitest';
import { englishReader, quantities, tubes } from '../../../sim/index.ts';
import { spokenQuantities } from '../../../sim/messages/quantities.ts';
import { formatQuantity, tradeFraction } from '../../../sim/units/index.ts';

const said = (text: string): string => text.replace(/[\u202f\u00a0]/gu, ' ');
const INCH = 0.0254;

describe('a length of tube in US units', () => {
  test.each([
    [1.5, '4 ft 11 in'],
    [3.2, '10 ft 6 in'],
    [0.6096, '2 ft'],
    [0.3047, '1 ft'],
    [0.2, '7.9 in'],
    [-1.5, '−4 ft 11 in'],
    [0, '0.0 ft'],
  ])('%d m is %s', (length, words) => {
    expect(said(formatQuantity(length, 'm', 'us', { hint: 'run' }))).toBe(words);
    expect(said(formatQuantity(length, 'm', 'us', { hint: 'run', significant: 2 }))).toBe(
      words === '0.0 ft' ? '0 ft' : words,
    );
  });

  test('is said to those who listen in whole words, and stays decimal where a number stands alone', () => {
    expect(spokenQuantities(englishReader('us')).tubeLength(1.5)).toBe('4 feet 11 inches');
    expect(formatQuantity(1.5, 'm', 'us', { hint: 'run', bare: true })).toBe('4.9');
    expect(said(formatQuantity(1.5, 'm', 'metric', { hint: 'run' }))).toBe('1.50 m');
  });

  test('is told apart from another by more than inches', () => {
    const [one, other] = quantities(englishReader('us')).apart('run', 3, 3.001);
    expect(one).not.toBe(other);
  });
});

describe('the outside of a tube in US units', () => {
  test.each([
    [0.375, '3/8 in'],
    [0.312, '5/16 in'],
    [0.625, '5/8 in'],
    [1.125, '1 1/8 in'],
    [1, '1 in'],
  ])('%d in is sold as %s', (inches, words) => {
    expect(said(quantities(englishReader('us')).tubeOutside(inches * INCH))).toBe(words);
  });

  test('stays decimal where the trade has no such fraction, and metric where it is read so', () => {
    expect(tradeFraction(0.012)).toBe(null);
    expect(said(quantities(englishReader('us')).tubeOutside(0.012))).toBe('0.472 in');
    expect(said(quantities(englishReader('metric')).tubeOutside(0.5 * INCH))).toBe('12.70 mm');
  });

  test('is an eighth more than the nominal size by which plumbers’ tube is called', () => {
    const tube = tubes.find(({ id }) => id === 'astm-b88-l-3-8');
    expect(tube?.name).toBe('3/8 in nominal, type L');
    expect(tradeFraction(tube?.outsideDiameter_m ?? 0)).toBe('1/2');
  });
});
