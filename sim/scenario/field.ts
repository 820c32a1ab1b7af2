/**
 * Builders for the fields of a scenario. Every field carries its unit, default, allowed range, one plain sentence
 * and the source of its default as schema metadata, so that messages, forms and the JSON Schema all read the
 * same words.
 */
import { z } from 'zod';
import { LATEST_CHANGE_S, MOST_KNOTS } from './limits.ts';

export interface FieldWords {
  /** SI unit of the stored number; `1` for a pure number or share. */
  readonly unit: string;
  /** Short label, a noun. */
  readonly title: string;
  /** One plain sentence. */
  readonly says: string;
  /** Where the default comes from. */
  readonly source: string;
}

export interface QuantityWords extends FieldWords {
  readonly default: number;
  readonly min: number;
  readonly max: number;
}

const meta = (words: FieldWords) => ({
  title: words.title,
  description: words.says,
  unit: words.unit,
  source: words.source,
});

/** A number with a unit and a closed allowed range. */
export const quantity = (words: QuantityWords) =>
  z.number().min(words.min).max(words.max).default(words.default).meta(meta(words));

/** A whole number with a closed allowed range. */
export const count = (words: QuantityWords) =>
  z.number().int().min(words.min).max(words.max).default(words.default).meta(meta(words));

/** A quantity that may be left open (`null`), with a stated meaning of open in its sentence. */
export const optionalQuantity = (words: Omit<QuantityWords, 'default'>) =>
  z.number().min(words.min).max(words.max).nullable().default(null).meta(meta(words));

/** One of a few named choices. */
export const choice = <const T extends readonly [string, ...string[]]>(
  options: T,
  words: Omit<FieldWords, 'unit'> & { readonly default: T[number] },
) =>
  z
    .enum(options)
    .default(words.default as never)
    .meta(meta({ ...words, unit: '1' }));

/** Free text with a length limit. */
export const text = (words: Omit<FieldWords, 'unit'> & { readonly default: string; readonly maxLength: number }) =>
  z
    .string()
    .max(words.maxLength)
    .default(words.default)
    .meta(meta({ ...words, unit: '1' }));

/** One knot of a schedule: the value holds from `at_s` (step), or is reached at `at_s` in a straight line (ramp). */
const knot = (words: QuantityWords) =>
  z.strictObject({
    at_s: z
      .number()
      .min(0)
      .max(LATEST_CHANGE_S)
      .meta({ title: 'Time', description: 'Time after the heat goes on.', unit: 's' }),
    value: z.number().min(words.min).max(words.max).meta(meta(words)),
    shape: z
      .enum(['step', 'ramp'])
      .default('step')
      .meta({
        title: 'Shape',
        description: 'Whether the setting jumps at this time or is reached in a straight line from the knot before.',
      }),
  });

/** A control over time: at least one knot, the first at time zero, times rising. */
export const schedule = (words: QuantityWords) =>
  z
    .array(knot(words))
    .min(1)
    .max(MOST_KNOTS)
    .default([{ at_s: 0, value: words.default, shape: 'step' }])
    .superRefine((knots, context) => {
      knots.forEach((here, index) => {
        const before = knots[index - 1];
        if (index === 0 && here.at_s !== 0)
          context.addIssue({
            code: 'custom',
            path: [0, 'at_s'],
            message: 'the first knot must be at 0 s',
            input: here.at_s,
          });
        if (before && here.at_s <= before.at_s)
          context.addIssue({
            code: 'custom',
            path: [index, 'at_s'],
            message: `must be later than the knot before it (${before.at_s} s)`,
            input: here.at_s,
          });
      });
    })
    .meta({ ...meta(words), schedule: true, minimumValue: words.min, maximumValue: words.max });

export type Schedule = readonly { readonly at_s: number; readonly value: number; readonly shape: 'step' | 'ramp' }[];
