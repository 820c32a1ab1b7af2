/** What a language must say of problems with an input. */
import type { ProblemKind, ProblemValues } from '../../scenario/problem.ts';

/** How the numbers of one field are written. */
export interface FieldFigures {
  readonly range: (min: number, max: number) => string;
  /** A lower limit of the field. */
  readonly least: (value: number) => string;
  /** An upper limit of the field. */
  readonly most: (value: number) => string;
  /** A time after the heat goes on, s. */
  readonly at: (time_s: number) => string;
  readonly option: (id: string) => string;
  /** What is added to a range where the field may be left open. */
  readonly orOpen: string;
}

export interface ProblemWords {
  readonly sentence: (name: string, value: string, allowed: string) => string;
  readonly wholeFile: string;
  /** Where there is no value. */
  readonly nothing: string;
  /** A value that is no number or text. */
  readonly something: string;
  /** Added to a range where the field may be left open, on the page and in a file. */
  readonly orEmpty: string;
  readonly orNull: string;
  readonly allowed: { readonly [K in ProblemKind]: (values: ProblemValues[K], figures: FieldFigures) => string };
}
