/** What the condenser computed in its last step, for the working of a number. */

/** Terms of the last step in which vapour or condensate arrived; amounts are of the whole step and of all tubes. */
export class CondenserTerms {
  /** Enthalpy of what arrives: vapour, and condensate of the neck, J. */
  vapourEnthalpy = NaN;
  liquidEnthalpy = NaN;
  /** Enthalpy of the vapour's water and oil as liquid at the dew temperature, J, and what it lies above that. */
  asLiquid = NaN;
  latent = NaN;
  /** Vapour flux at the inlet of the tubes, kg/m²s. */
  massFlux = NaN;
  /** Pieces of tube that condense along their whole length. */
  whole = 0;
  /** Latent heat left for the piece after them and what that piece could take, J; zero where none is left. */
  left = 0;
  possible = 0;
  /** Temperature of the water at that piece, or at the last where vapour escapes, K. */
  water = NaN;
  /** Friction gradient if all ran as liquid and if all ran as steam, Pa/m; share of the vapour that escapes. */
  liquidGradient = NaN;
  steamGradient = NaN;
  meanGradient = NaN;
  escapingShare = NaN;
}
