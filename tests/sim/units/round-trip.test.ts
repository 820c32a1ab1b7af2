/** What a field shows, typed back, gives what is stored: for every field over its whole range, in both systems. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fieldAt, scenarioFields } from '../../../sim/scenario/fields.ts';
import { fieldText, formatQuantity, type UnitSystem } from '../../../sim/units/index.ts';
import { KINDS } from '../../../sim/units/scales.ts';
import { displayUnit } from '../../../sim/units/display.ts';
import { FIELD_KINDS } from '../../../sim/units/field-kinds.ts';
import { entry } from './typing.ts';

const numeric = scenarioFields.filter((field) => field.min !== undefined && field.max !== undefined);
const systems = ['metric', 'us'] satisfies UnitSystem[];
const cases = numeric.flatMap((field) => systems.map((system) => ({ field, system, path: field.path })));

/** Values spread evenly and by decades, ends included. */
const within = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.constantFrom(min, max),
    fc.double({ min, max, noNaN: true }),
    fc.double({ min: -9, max: 0, noNaN: true }).map((decades) => min + (max - min) * 10 ** decades),
  );

/** Half of the last digit printed, in the shown unit; spans of time are printed to the minute from ten minutes up. */
const halfOfLastDigit = (
  text: string,
  value: number,
  field: { readonly path: string; readonly unit: string },
): number => {
  if (field.unit === 's' && FIELD_KINDS[field.path] === undefined) return value >= 599 ? 0.5 : 0.5 / 60;
  const decimals = /\.(\d+)/u.exec(text)?.[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals;
};

describe('a field typed back as it is shown', () => {
  test('covers every field of a scenario that has a number', () => {
    expect(numeric.length).toBeGreaterThan(90);
  });

  test.each(cases)('$path ($system)', async ({ field, system }) => {
    const min = field.min ?? 0;
    const max = field.max ?? 0;
    await fc.assert(
      fc.asyncProperty(within(min, max), async (drawn) => {
        const value = field.kind === 'integer' ? Math.round(drawn) : drawn;
        const shown = displayUnit(field.unit, system, field.path);
        const number = fieldText(value, field, system);
        const typed = shown.label === '' ? [number] : [number, `${number} ${shown.label}`];
        for (const text of typed) {
          const parsed = await entry(text, field, system);
          if (!parsed.ok) throw new Error(`${text}: ${parsed.message}`);
          // Four digits are shown at least, so half a unit of the fourth may be lost, of the shown number.
          const lost = Math.abs(shown.fromSI(parsed.value ?? Number.NaN) - shown.fromSI(value));
          expect(lost).toBeLessThanOrEqual(5.1e-4 * Math.abs(shown.fromSI(value)) + 1e-12);
        }
      }),
      { numRuns: 20 },
    );
  });

  test.each(cases)('$path ($system) in prose, to the digits that prose prints', async ({ field, system }) => {
    const min = field.min ?? 0;
    const max = field.max ?? 0;
    await fc.assert(
      fc.asyncProperty(within(min, max), async (drawn) => {
        const value = field.kind === 'integer' ? Math.round(drawn) : drawn;
        const text = formatQuantity(value, field.unit, system, { hint: field.path });
        const parsed = await entry(text, { ...field, min: -Infinity, max: Infinity, kind: 'number' }, system);
        if (!parsed.ok) throw new Error(parsed.message);
        const shown = displayUnit(field.unit, system, field.path, value);
        const lost = Math.abs(shown.fromSI(parsed.value ?? Number.NaN) - shown.fromSI(value));
        expect(lost).toBeLessThanOrEqual(halfOfLastDigit(text, value, field) * (1 + 1e-9) + 1e-12);
      }),
      { numRuns: 20 },
    );
  });
});

describe('the table of kinds', () => {
  test('gives every named scenario field a kind of its own unit', () => {
    const named = Object.keys(FIELD_KINDS).filter((path) => path.includes('.'));
    for (const path of named) {
      const kind = FIELD_KINDS[path];
      if (kind === undefined) throw new Error(path);
      expect([path, fieldAt(path)?.path]).toEqual([path, path]);
      expect([path, KINDS[kind].si]).toEqual([path, fieldAt(path)?.unit]);
    }
  });
});
