/** What a language must say of an answer of the desk reference, and of what is wrong with a question. */
import type { Role } from '../../correlation.ts';
import type { LookUpProblem } from '../../reference/look-up.ts';

export interface LookUpMessages {
  readonly problems: {
    readonly [K in LookUpProblem['kind']]: (problem: Extract<LookUpProblem, { readonly kind: K }>) => string;
  };
  /** How runs use a relation, as a sentence. */
  readonly roles: Readonly<Record<Role, string>>;
  /** A range in SI: `273.15 to 403.15 K`, or that the source gives none. */
  readonly range: (range: readonly [number, number] | null, unit: string) => string;
}
