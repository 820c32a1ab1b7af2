/** What is wrong with an input: one fact a mistake, with the field, what stands there, and its bounds in SI. */
import { fieldAt } from './fields.ts';
import type { ScenarioPart } from './scenario.ts';

/** What each kind of problem needs to be told, SI. */
export interface ProblemValues {
  /** Not an object at all. */
  'not-a-scenario': Nothing;
  'other-version': { readonly version: number };
  'unknown-field': Nothing;
  'not-a-number': Partial<Bounds> & { readonly orOpen: boolean };
  'outside-range': Bounds & { readonly orOpen: boolean };
  'below-least': { readonly least: number };
  'above-most': { readonly most: number };
  'not-an-option': { readonly options: readonly string[] };
  'other-type': { readonly needed: NeededType };
  'too-few-entries': { readonly least: number };
  'too-many-entries': { readonly most: number };
  'too-long-a-text': { readonly most: number };
  'schedule-begins-late': Nothing;
  'schedule-out-of-order': { readonly before_s: number };
  'schedule-phases-out-of-order': Nothing;
  'unknown-botanical': Nothing;
  'unknown-constituent': Nothing;
  'constituent-twice': Nothing;
  'shares-not-whole': Nothing;
  'bore-not-within-tube': { readonly outside_m: number };
  'jacket-too-narrow': { readonly least_m: number };
  'turns-too-close': { readonly least_m: number };
  'coil-too-tight': { readonly least_m: number };
  'rise-longer-than-neck': { readonly most_m: number };
  'inlet-below-separator': { readonly below_m: number };
  'grid-above-pot': { readonly below_m: number };
  'charge-too-large': { readonly most_kg: number };
  'pot-too-full': { readonly most_kg: number };
  'boiler-too-full': { readonly most_kg: number };
  'water-above-grid': { readonly most_kg: number };
  'takes-too-long': { readonly least_s: number };
}

type Nothing = Readonly<Record<never, never>>;

export interface Bounds {
  readonly min: number;
  readonly max: number;
}

/** What a value of the wrong JSON type should have been. */
export type NeededType = 'object' | 'list' | 'text' | 'truth';

export type ProblemKind = keyof ProblemValues;

/** One mistake in an input; `title` and `unit` are the field's, where the path leads to one. */
export type Problem<K extends ProblemKind = ProblemKind> = {
  readonly [P in K]: {
    readonly kind: P;
    /** Dotted path, e.g. `pot.diameter_m`; empty for the whole file. */
    readonly path: string;
    readonly part: ScenarioPart | null;
    readonly title: string | null;
    readonly unit: string;
    /** What stands there, as it was given. */
    readonly value: unknown;
    readonly values: ProblemValues[P];
  };
}[K];

/** The problem of one field, named after what stands at its path. */
export function problemAt<K extends ProblemKind>(
  path: string,
  value: unknown,
  kind: K,
  values: ProblemValues[K],
): Problem {
  const field = fieldAt(path);
  const named = field?.path === path ? field : undefined;
  // A path into a schedule or a list has the unit of its entries, and times have their own.
  const unit = path.endsWith('.at_s') ? 's' : (field?.unit ?? '1');
  return { kind, path, part: field?.part ?? null, title: named?.title ?? null, unit, value, values } as Problem;
}
