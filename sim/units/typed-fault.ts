/** What is wrong with a quantity as it was typed: facts with values in SI and pieces of the text, worded in `sim/messages`. */
import type { StoredUnit } from './stored-units.ts';

/** Another quantity than was asked for. */
interface OtherQuantity {
  readonly kind: 'other-quantity';
  /** What was typed for it. */
  readonly part: string;
  /** What was asked for; `null` for a pure number. */
  readonly asked: StoredUnit | null;
}

/** Why a text makes no quantity. */
export type Unreadable =
  | {
      readonly kind:
        | 'no-number'
        | 'number-missing'
        | 'not-finite'
        | 'too-long'
        | 'comma-unclear'
        | 'opening-bracket-missing'
        | 'closing-bracket-missing'
        | 'sign-missing'
        | 'sign-before-bracket-missing'
        | 'unit-missing'
        | 'several-temperatures'
        | 'division-by-zero';
    }
  | { readonly kind: 'unit-needed'; readonly part: string }
  | { readonly kind: 'not-addable'; readonly left: string; readonly right: string }
  | OtherQuantity;

/** What may be wrong with a bare number. */
export type NumberFault =
  | { readonly kind: 'number-needed' }
  /** What reads units could not be fetched. */
  | { readonly kind: 'units-missing' }
  | {
      readonly kind: 'too-little' | 'too-much' | 'not-whole';
      readonly value: number;
      /** The sum or product that it was typed as; `null` for a number that stands as it was typed. */
      readonly typed: string | null;
    };

/** What may be wrong with a text that needs more than a look. */
export type ReadingFault =
  | { readonly kind: 'unit-unknown'; readonly unit: string }
  | { readonly kind: 'unreadable'; readonly typed: string; readonly because: Unreadable }
  | OtherQuantity;

export type TypedFault = NumberFault | ReadingFault;

export type TypedQuantity<Fault extends TypedFault = TypedFault> =
  | {
      readonly ok: true;
      readonly value: number | null;
      /** Whether a volume was taken as water. */
      readonly asWater: boolean;
    }
  | { readonly ok: false; readonly fault: Fault };
