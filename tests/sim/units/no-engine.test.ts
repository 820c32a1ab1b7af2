import { expect, test, vi } from 'vitest';
import { englishReader } from '../../../sim/messages/language.ts';

vi.mock('../../../sim/units/unit-engine.ts', () => {
  throw new Error('offline');
});

const diameter = { title: 'Pot diameter', unit: 'm', path: 'pot.diameter_m', min: 0.05, max: 1.5 };

test('when the file that knows units can\u2019t be fetched, the field says so and still takes numbers and shown units', async () => {
  // Whatever other tests have fetched, a fresh copy has fetched nothing.
  vi.resetModules();
  const { readEntry } = await import('../../../sim/messages/read-entry.ts');
  const reader = englishReader('metric');
  const parsed = await readEntry('12 cm', diameter, reader);
  expect(parsed).toEqual({
    ok: false,
    message: "Pot diameter: other units can't be read just now; type the number in mm; allowed is 50–1500\u202fmm.",
  });
  expect(await readEntry('400', diameter, reader)).toEqual({ ok: true, value: 0.4, note: null });
  expect(await readEntry('12 in + 4 mm', diameter, reader)).toEqual({ ok: true, value: 0.3088, note: null });
});
