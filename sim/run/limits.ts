/**
 * The numbers at which a run raises an event, each named once. Whoever draws, sizes or judges by one of them reads it
 * here; where each comes from stands in `limit-sources.ts`, which the engine does not need.
 */
export const LIMITS = {
  /** Gauge pressure in the pot above which a loose lid can lift or spray. */
  potGauge_Pa: 5_000,
  /** Gauge pressure above which the run stops: pressure-vessel law begins here, and no open still's lid holds it. */
  burstGauge_Pa: 50_000,
  /** What a condenser tube alone may hold back. */
  tubeDrop_Pa: 2_000,
  /** Vapour faster than this in neck or tube roars and drags liquid along. */
  vapourSpeed_m_s: 30,
  /** Souders–Brown factor above which rising steam carries spray and foam into the neck. */
  foamFactor_m_s: 0.045,
  /** Heat flux of a base above which plant that lies on it scorches. */
  scorchFlux_W_m2: 70_000,
  /** Water from here on scalds. */
  scaldingWater_K: 333.15,
  /** Water from here on scalds whoever stays in it for minutes, a child sooner. */
  hotWater_K: 323.15,
  /** Cooling water this near below the boil is about to boil. */
  coolingBelowBoil_K: 1.5,
  /** A separator that catches a smaller share of the oil drops is overrun. */
  captureShare: 0.9,
  /** A larger share of the oil as crystals no longer runs down the tube. */
  solidOilShare: 0.2,
  /** Oil and water whose densities differ by less separate badly. */
  nearNeutral_kg_m3: 15,
  /** Difference of density that a receiver's temperature is advised for. */
  separatesWell_kg_m3: 20,
  /** Share of the vapour from which on it counts as escaping. */
  escapeShare: 0.002,
  /** Depth of hydrosol that stands in a jar of two litres or so; judgement, and the time to clear is in proportion to it. */
  jarDepth_m: 0.2,
  /** Distillate that makes the first drop. */
  firstDrop_kg: 0.000_05,
  /** A pot with less water counts as dry, and the run stops. */
  dryDepth_m: 0.000_8,
  /** Share of a distillate rate asked for below which, at full heat, it counts as out of reach. */
  rateReached: 0.95,
} as const;

export type LimitName = keyof typeof LIMITS;
