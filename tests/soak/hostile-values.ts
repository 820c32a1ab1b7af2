/** Values that nobody means well with. */
import fc from 'fast-check';
import { scenarioFields } from '../../sim/index.ts';

export const HOSTILE = [
  '__proto__',
  'constructor',
  '<script>alert(1)</script>',
  '</text><image href="x" onerror="x"/>',
  '\u0000\u001b[2J\u202e',
  '\ud800',
  '&lt;&#0;]]>',
  '=1+1',
  'NaN',
  '1e999',
  '-0',
  '9'.repeat(400),
  '"quoted", ‘so’, \u200fשלום\u202c 🌿',
  '+1',
  '-2+3',
  '@sum',
  'x'.repeat(10_000),
];
export const text = fc.oneof(fc.constantFrom(...HOSTILE), fc.string({ unit: 'binary', maxLength: 40 }), fc.string());

/** What JSON can hold, with the keys and values of a still among it. */
export const anyJson = fc.letrec<{ value: unknown }>((tie) => ({
  value: fc.oneof(
    { depthSize: 'small' },
    text,
    fc.double(),
    fc.constantFrom(null, true, -1, 0, 1e308, 5e-324),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(
      fc.oneof(text, fc.constantFrom(...scenarioFields.flatMap(({ path }) => path.split('.')))),
      tie('value'),
      { maxKeys: 5 },
    ),
  ),
})).value;

export const throughJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value) ?? 'null');
