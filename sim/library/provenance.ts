/**
 * Where a number comes from. Every row of the library carries one of these, and the interface shows it.
 */

/** How far a value can be trusted, from best to least. */
export type ProvenanceKind =
  /** The figure was read in the named source. */
  | 'read'
  /** The figure was read in the source's text or in a faithful copy of its table. */
  | 'seen'
  /** Printed in a named compilation or standard. */
  | 'published'
  /** Read on a page that quotes the named source. */
  | 'secondary'
  /** Worked out from formulas and reference data named in the source text. */
  | 'computed'
  /** Arithmetic on values that carry their own provenance. */
  | 'derived'
  /** Least-squares fit to a published curve; the source text names curve and residual. */
  | 'fitted'
  /** Recalled from the named source and not looked up again. */
  | 'memory'
  /** What people in the trade do; no citable source found. */
  | 'common-practice'
  /** Judged within a plausible range; the source text says how. */
  | 'estimated'
  /** A modelling default that no measurement supports. */
  | 'assumption'
  /** Typed by the reader. */
  | 'own';

export interface Provenance {
  readonly kind: ProvenanceKind;
  readonly source: string;
  readonly note?: string;
}

/** A value with its provenance. */
export interface Sourced<T> extends Provenance {
  readonly value: T;
}

/** A typical value with the range within which it usually lies. */
export interface Band {
  readonly typical: number;
  readonly low: number;
  readonly high: number;
}

/** A value with its provenance, on one line. */
export const sourced = <const T>(value: T, kind: ProvenanceKind, source: string, note?: string): Sourced<T> =>
  note === undefined ? { value, kind, source } : { value, kind, source, note };

export const origin = (kind: ProvenanceKind, source: string, note?: string): Provenance =>
  note === undefined ? { kind, source } : { kind, source, note };

export const band = (typical: number, low: number, high: number): Band => ({ typical, low, high });
