import { describe, expect, test } from 'vitest';
import { botanicals } from '../../../sim/library/botanicals.ts';
import { separators } from '../../../sim/library/separators.ts';
import { tubs } from '../../../sim/library/tubs.ts';
import { vessels } from '../../../sim/library/vessels.ts';
import { botanicalTexts } from '../../../sim/library-texts.ts';
import { englishReader } from '../../../sim/messages/language.ts';
import { libraryText } from '../../../sim/messages/library-text.ts';

const thin = (text: string) => text.replaceAll('\u202f', ' ');
const metric = (text: string) => thin(libraryText(text, englishReader('metric')));
const us = (text: string) => thin(libraryText(text, englishReader('us')));

describe('quantities in texts of the library', () => {
  test.each([
    ['melts at {50 °C}: warm it', 'melts at 50 °C: warm it', 'melts at 122 °F: warm it'],
    ['keep at {35–45 °C}', 'keep at 35–45 °C', 'keep at 95–113 °F'],
    ['boils {18 K} lower', 'boils 18 K lower', 'boils 32 °F lower'],
    ['{20 cm} pot, {6.3 L}', '20 cm pot, 6.3 L', '8 in pot, 1.7 gal'],
    ['under {69 kPa}', 'under 69 kPa', 'under 10 psi'],
    ['nothing in braces, 6 mg a day', 'nothing in braces, 6 mg a day', 'nothing in braces, 6 mg a day'],
  ])('%s', (written, inMetric, inUS) => {
    expect(metric(written)).toBe(inMetric);
    expect(us(written)).toBe(inUS);
  });

  test('a unit that is not known is refused', () => {
    expect(() => us('{5 furlong} away')).toThrow('furlong');
  });

  test('every text of the library can be written for both readers, and no brace is left', () => {
    const all = JSON.stringify([botanicals, Object.values(botanicalTexts), vessels, tubs, separators], (_, value) =>
      typeof value === 'string' ? `${metric(value)} ${us(value)}` : (value as unknown),
    );
    expect(all).not.toMatch(/\{[\d.]/u);
    expect(all).toContain('°F');
  });
});
