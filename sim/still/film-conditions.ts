/**
 * What each segment's film coefficients were last worked out for: they are worked out anew when that has changed, not by
 * the clock, since a still that boils steadily asks for the same films over and over.
 */

/** Change of a temperature, K, and of a share, at which coefficients are no longer good: they move by a few per mille. */
const CHANGED_K = 0.25;
const CHANGED_SHARE = 0.01;

export class FilmConditions {
  private readonly water: Float64Array;
  private readonly inside: Float64Array;
  private readonly vapourShare: Float64Array;
  private readonly rate: Float64Array;

  constructor(segments: number) {
    this.water = new Float64Array(segments);
    this.inside = new Float64Array(segments);
    this.vapourShare = new Float64Array(segments);
    this.rate = new Float64Array(segments);
  }

  /**
   * Keeps what a segment is worked out for.
   * @param water temperature of the cooling water and `inside` of what is in the tube, K
   * @param vapourShare share of the vapour that gets as far, `rate` all that flows in, kg/s
   */
  keep(segment: number, water: number, inside: number, vapourShare: number, rate: number): void {
    this.water[segment] = water;
    this.inside[segment] = inside;
    this.vapourShare[segment] = vapourShare;
    this.rate[segment] = rate;
  }

  /** Whether a segment meets other conditions than it was worked out for; arguments as for `keep`. */
  changed(segment: number, water: number, inside: number, vapourShare: number, rate: number): boolean {
    return (
      Math.abs(water - (this.water[segment] as number)) > CHANGED_K ||
      Math.abs(inside - (this.inside[segment] as number)) > CHANGED_K ||
      Math.abs(vapourShare - (this.vapourShare[segment] as number)) > CHANGED_SHARE ||
      Math.abs(rate - (this.rate[segment] as number)) > CHANGED_SHARE * rate
    );
  }
}
