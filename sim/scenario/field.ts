/**
 * Builders for the fields of a scenario. Every field carries its unit, default, allowed range, one plain sentence
 * and the source of its default as schema metadata, so that messages, forms and the JSON Schema all read the
 * same words.
 */
import * as z from 'zod/mini';
import { phaseOrder, SCHEDULE_EVENTS } from './knot.ts';
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

/** A number in a closed range. */
export const between = ({ min, max }: Pick<QuantityWords, 'min' | 'max'>) =>
  z.number().check(z.minimum(min), z.maximum(max));

/** A number with a unit and a closed allowed range. */
export const quantity = (words: QuantityWords) => z._default(between(words), words.default).check(z.meta(meta(words)));

/** A whole number with a closed allowed range. */
export const count = (words: QuantityWords) =>
  z._default(between(words).check(z.int()), words.default).check(z.meta(meta(words)));

/** A quantity that may be left open (`null`), with a stated meaning of open in its sentence. */
export const optionalQuantity = (words: Omit<QuantityWords, 'default'>) =>
  z._default(z.nullable(between(words)), null).check(z.meta(meta(words)));

/** One of a few named choices. */
export const choice = <const T extends readonly [string, ...string[]]>(
  options: T,
  words: Omit<FieldWords, 'unit'> & { readonly default: T[number] },
) => z._default(z.enum(options), words.default).check(z.meta(meta({ ...words, unit: '1' })));

/** Free text with a length limit. */
export const text = (words: Omit<FieldWords, 'unit'> & { readonly default: string; readonly maxLength: number }) =>
  z
    ._default(z.string().check(z.maxLength(words.maxLength)), words.default)
    .check(z.meta(meta({ ...words, unit: '1' })));

/** One knot of a schedule: the value holds from `at_s` (step), or is reached at `at_s` in a straight line (ramp). */
const knot = (words: QuantityWords) =>
  z.strictObject({
    at_s: between({ min: 0, max: LATEST_CHANGE_S }).check(
      z.meta({ title: 'Time', description: 'Time after the heat goes on, or after the event named.', unit: 's' }),
    ),
    after: z.optional(
      z
        .enum(SCHEDULE_EVENTS)
        .check(
          z.meta({
            title: 'After',
            description:
              'Event from which the time counts; left out, it counts from heat on. Until the event comes, the entry before holds.',
          }),
        ),
    ),
    value: between(words).check(z.meta(meta(words))),
    shape: z
      ._default(z.enum(['step', 'ramp']), 'step')
      .check(
        z.meta({
          title: 'Shape',
          description: 'Whether the setting jumps at this time or is reached in a straight line from the knot before.',
        }),
      ),
  });

/**
 * A control over time: at least one knot, the first at time zero. Knots that count from an event stand after those that
 * count from the start, in the order of the events; times rise within each phase.
 */
export const schedule = (words: QuantityWords) =>
  z
    ._default(z.array(knot(words)).check(z.minLength(1), z.maxLength(MOST_KNOTS)), [
      { at_s: 0, value: words.default, shape: 'step' },
    ])
    .check(({ value: knots, issues }) => {
      knots.forEach(({ at_s, after }, index) => {
        const path = [index, 'at_s'];
        const before = knots[index - 1];
        if (!before) {
          if (at_s !== 0) issues.push({ code: 'custom', path, input: at_s });
          if (after !== undefined) issues.push({ code: 'custom', path: [index, 'after'], input: after });
        } else if (phaseOrder(after) < phaseOrder(before.after))
          issues.push({ code: 'custom', path: [index, 'after'], input: after, params: { isPhase: true } });
        else if (after === before.after && at_s <= before.at_s)
          issues.push({ code: 'custom', path, input: at_s, params: { before_s: before.at_s } });
      });
    })
    .check(z.meta({ ...meta(words), schedule: true, minimumValue: words.min, maximumValue: words.max }));
