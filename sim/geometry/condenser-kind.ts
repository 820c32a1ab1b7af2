/**
 * What each kind of condenser is. A kind is told apart here and nowhere else: all others ask whether it is coiled, has
 * many tubes, or where its cooling water stands.
 */

interface Traits {
  /** A tube wound into a coil that stands in a tub; else straight, with the water in a jacket round it. */
  readonly isCoiled: boolean;
  /** Several tubes side by side; else one. */
  readonly isBundle: boolean;
}

const TRAITS = {
  'coil-in-tub': { isCoiled: true, isBundle: false },
  'jacketed-tube': { isCoiled: false, isBundle: false },
  bundle: { isCoiled: false, isBundle: true },
} as const satisfies Readonly<Record<string, Traits>>;

export type CondenserKind = keyof typeof TRAITS;

export interface OfKind {
  readonly kind: CondenserKind;
}

export const isCoil = ({ kind }: OfKind): boolean => TRAITS[kind].isCoiled;

export const isBundle = ({ kind }: OfKind): boolean => TRAITS[kind].isBundle;

export interface CooledCondenser {
  readonly condenser: OfKind;
  readonly cooling: { readonly jacketSupply: 'tap' | 'barrel' };
}

/** What the cooling water comes from: the tub that holds the coil, a barrel pumped round, or the tap once through. */
export const waterSource = ({ condenser, cooling }: CooledCondenser): 'tub' | 'barrel' | 'tap' =>
  isCoil(condenser) ? 'tub' : cooling.jacketSupply;

/** Whether fresh water comes from the tap; a barrel is pumped round. */
export const isTapFed = (still: CooledCondenser): boolean => waterSource(still) !== 'barrel';
