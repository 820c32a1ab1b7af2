/**
 * How high everything stands, in metres above the floor. Only gravity decides: the jug stands on the floor, the
 * separator spills into it, the outlet drips into the separator, the neck falls to the condenser, and pot or tub is
 * raised on a stand where that needs it. The neck keeps its true length, so the distance from pot to condenser follows.
 */
import type { CoilSize, StraightSize, TrueSizes } from './true-sizes.ts';

export interface Heights {
  /** Underside of the separator; zero when it stands on the floor. */
  readonly separator: number;
  /** Where the separated water spills over into the jug. */
  readonly crest: number;
  readonly funnelTop: number;
  /** End of the outlet, from which drops fall. */
  readonly tip: number;
  /** Underside of the tub, or the outlet end of a straight tube. */
  readonly condenser: number;
  /** Where the neck ends and the cooled tube begins. */
  readonly inlet: number;
  /** Top of the stand under pot and heat source (or under the steam-fed pot). */
  readonly potStand: number;
  /** Inside base of the pot. */
  readonly pot: number;
  readonly lid: number;
  /** Highest point of the neck. */
  readonly apex: number;
  /** Across from the pot's centre to the apex, and from there to the condenser's inlet, at the neck's true length. */
  readonly riseAcross: number;
  readonly fallAcross: number;
}

/** The separator's rim stands this share of its height above the oil spout. */
export const SEPARATOR_RIM = 1.1;
/** Water crest of a floating-oil separator as a share of the spout's height; a few millimetres lower in life. */
export const CREST_SHARE = 0.96;
const JUG_CLEARANCE = 1.1;
/** Between a jug and the table over it, m. */
const UNDER_TABLE = 0.02;
const TAIL_SLOPE = 0.12;
const FEET = 0.02;

/** Free fall of the drops from outlet to funnel: a third of the separator's height, within a hand's width. */
const dropFall = (separatorHeight: number): number => Math.min(0.14, Math.max(0.02, 0.34 * separatorHeight));

/** Height of the coil's end above the tub's base; never through the base. */
export const coilEnd = (coil: CoilSize, tubHeight: number): number =>
  Math.max(coil.tube_m, tubHeight - coil.topDepth_m - coil.height_m);

/** Fall of a straight condenser over its length. */
export const straightFall = (tube: StraightSize, drawnLength: number): number =>
  tube.upright ? drawnLength : drawnLength * Math.sin(tube.slope_rad);

/** Height needed between a straight tube's outlet end and the tip below it. */
const stub = (tube: StraightSize): number => 0.5 * tube.jacket_m + Math.max(0.02, 1.5 * tube.tube_m);

interface Neck {
  readonly potLift: number;
  readonly condenserLift: number;
  readonly apex: number;
  readonly riseAcross: number;
  readonly fallAcross: number;
}

const STEEPEST = Math.sin((84 * Math.PI) / 180);
const FLATTEST = Math.sin((38 * Math.PI) / 180);

/**
 * A neck of true length from lid to inlet. The falling part drops by a third of its length where it is free to; the
 * rise leans as that needs; when no lean will do, pot or condenser is lifted.
 */
function bendNeck(lid: number, inlet: number, rising: number, falling: number): Neck {
  const wanted = inlet + 0.33 * falling;
  const highest = lid + rising * STEEPEST;
  const lowest = lid + rising * FLATTEST;
  const apex = Math.min(highest, Math.max(lowest, wanted));
  const drop = apex - inlet;
  const least = 0.08 * falling;
  const most = 0.92 * falling;
  const potLift = Math.max(0, least - drop);
  const condenserLift = Math.max(0, drop - most);
  const settled = Math.min(most, Math.max(least, drop));
  const climb = apex - lid;
  return {
    potLift,
    condenserLift,
    apex: apex + potLift,
    riseAcross: Math.sqrt(Math.max(0, rising ** 2 - climb ** 2)),
    fallAcross: Math.sqrt(Math.max(0, falling ** 2 - settled ** 2)),
  };
}

/**
 * @param tubeDrawn length at which a straight condenser is drawn, m (its own unless a break shortens it)
 * @param tucked the jug stands under the tub
 */
export function heightsOf(sizes: TrueSizes, tubeDrawn: number, tucked: boolean): Heights {
  const { separator, jug, neck, condenser, pot, heat } = sizes;
  const spill = JUG_CLEARANCE * jug.height_m + 0.3 * separator.bore_m;
  const separatorFoot = Math.max(0, spill - CREST_SHARE * separator.height_m);
  const funnelTop = separatorFoot + SEPARATOR_RIM * separator.height_m + 0.5 * separator.funnel_m;
  const lowestTip = funnelTop + dropFall(separator.height_m);
  const tub = sizes.tub;
  const isCoil = condenser.kind === 'coil';
  const least =
    isCoil && tub
      ? Math.max(
          tucked ? JUG_CLEARANCE * jug.height_m + UNDER_TABLE : 0,
          lowestTip + TAIL_SLOPE * tub.diameter_m - coilEnd(condenser, tub.height_m),
        )
      : lowestTip + stub(condenser as StraightSize);
  const inletAbove =
    isCoil && tub
      ? tub.height_m + tub.freeboard_m + Math.max(0.02, neck.bore_m)
      : straightFall(condenser as StraightSize, tubeDrawn);
  const potBase = sizes.boiler ? Math.max(FEET, 0.08 * pot.diameter_m) : heat.height_m;
  const lid = potBase + pot.height_m + pot.lid_m;
  const bent = bendNeck(lid, least + inletAbove, neck.rising_m, neck.falling_m);
  const { potLift } = bent;
  const condenserFoot = least + bent.condenserLift;
  return {
    separator: separatorFoot,
    crest: separatorFoot + CREST_SHARE * separator.height_m,
    funnelTop,
    tip: lowestTip,
    condenser: condenserFoot,
    inlet: condenserFoot + inletAbove,
    potStand: potLift,
    pot: potLift + potBase,
    lid: potLift + lid,
    apex: bent.apex,
    riseAcross: bent.riseAcross,
    fallAcross: bent.fallAcross,
  };
}

/** Highest point of everything, m above the floor. */
export const topOf = (heights: Heights): number => Math.max(heights.apex, heights.inlet, heights.lid);
