/** Every tube of the library as the condenser of a scenario: length, coil, fit, bend, mass, pressure drop, price, packs. */
import { standardPressure } from '../../fluids/atmosphere.ts';
import { tableSaturationTemperature, tableVapourDensity } from '../../fluids/water-table.ts';
import { isCoil } from '../../geometry/condenser-kind.ts';
import { circleArea } from '../../geometry/cylinder.ts';
import { findMaterial, tubes, type Tube } from '../../library/index.ts';
import { condenserFromTube } from '../../scenario/presets.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { coilBendRadius, coilFit, coilHeight, tubeMass } from '../../geometry/coil.ts';
import { tubeEnds, tubeToBuy, type TubeEnds } from '../../geometry/tube-ends.ts';
import { narrowestJacket, tubeCount } from '../../geometry/jacket.ts';
import { withDrawn, type UncertainId } from '../ensemble/factors.ts';
import { withHeat } from './heat-and-water.ts';
import { lengthInDoubt, NINE_IN_TEN, type Draw, type LengthInDoubt } from './in-doubt.ts';
import { packsOf, type Packs } from './packs.ts';
import type { CondenserFailure } from './trial.ts';
import { sizeLikeSeen, type TubeSeen } from './like-seen.ts';
import { LONGEST_TUBE, sizeCondenser, type SizeOptions, type SizeVerdict } from './shortest-length.ts';

/** Share added to the length that nine runs in ten need where the user names none: the doubts are in it already. */
export const DEFAULT_MARGIN = 0;

/** Corrugated tube has this or more outside surface than the plain tube it is computed as. */
const PLAIN_AREA = 1.05;

export type TubeVerdict =
  | SizeVerdict
  /** Sold only as hard or rigid tube. */
  | 'cannot-be-coiled'
  | 'too-thick-for-turns'
  | 'too-thick-for-jacket';

/** How a tube can be bent to its coil. */
export type Bend = 'by-hand' | 'with-bender' | 'too-tight';

export interface TubeSize {
  /** Id and name in the library; `null` for the scenario's own measures. */
  readonly id: string | null;
  readonly name: string | null;
  readonly material: string;
  readonly insideDiameter_m: number;
  readonly outsideDiameter_m: number;
  readonly verdict: TubeVerdict;
  /** What failed first where no length holds. */
  readonly failure: CondenserFailure | null;
  /** Corrugated, but computed as a plain tube of its outside diameter, so on the long side. */
  readonly computedAsPlain: boolean;
  /** Length of one tube that the run as planned needs, m; `null` where none is enough or where it was not looked for. */
  readonly typical_m: number | null;
  /** Share of the runs for which the length below is enough. */
  readonly confidence: number;
  /** Length that so many of the runs need, and with the margin, m. The measures below are for the latter. */
  readonly length_m: number | null;
  readonly lengthWithMargin_m: number | null;
  /** What one tube needs beside its cooled length, and the whole with it, m. */
  readonly ends: TubeEnds | null;
  readonly toBuy_m: number | null;
  /** Largest rate of steam into the condenser, kg/s; `null` where nothing comes over. */
  readonly peakVapour_kg_s: number | null;
  /** The doubt that the length goes with most; `null` where it was not looked for. */
  readonly decidedBy: UncertainId | null;
  /** Number of tubes side by side. */
  readonly tubes: number;
  readonly turns: number | null;
  readonly coilHeight_m: number | null;
  readonly fitsTub: boolean | null;
  /** `null` for straight tubes and tubes without data. */
  readonly bend: Bend | null;
  readonly bendOk: boolean | null;
  /** Of the cooled length, all tubes together. */
  readonly mass_kg: number | null;
  readonly peakDrop_Pa: number | null;
  /** Largest speed of the steam as it enters the tube, m/s; `null` where nothing comes over. */
  readonly steamSpeed_m_s: number | null;
  /** Whole pieces as they are usually sold that give all tubes with their ends. */
  readonly packs: Packs | null;
  readonly warmestOutlet_K: number | null;
}

export interface OwnTubeSize extends TubeSize {
  /** The length before it is rounded up, m; `null` where none is enough. */
  readonly found_m: number | null;
  /** Draws of the doubts that need about this length: other tubes are sized for them. */
  readonly deciding: readonly Draw[];
}

export interface TubeSizeOptions extends Omit<SizeOptions, 'among'> {
  /** Share of the runs for which the length must be enough; nine in ten when left out. */
  readonly confidence?: number;
  /** Share added to the length; default `DEFAULT_MARGIN`. */
  readonly margin?: number;
}

export interface OtherTubeOptions extends TubeSizeOptions {
  /** Draws of the doubts, of which more than half must hold; the plan alone when left out. */
  readonly deciding?: readonly Draw[];
}

/** What bears a tube's name and size, from the library or from the scenario. */
type TubeLike = Pick<TubeSize, 'id' | 'name' | 'material' | 'insideDiameter_m' | 'outsideDiameter_m'>;

/** The library's row with the measures of the scenario's own tube, if there is one. */
export const libraryTubeOf = ({ condenser }: Scenario): Tube | undefined =>
  tubes.find(
    (row) =>
      row.material === condenser.material &&
      Math.abs(row.insideDiameter_m - condenser.insideDiameter_m) < 1e-6 &&
      Math.abs(row.outsideDiameter_m - condenser.outsideDiameter_m) < 1e-6,
  );

/** The scenario with another tube; the turns are spread where the tube is thicker than their pitch. Or why it can't be. */
export function withTube(
  scenario: Scenario,
  tube: Tube,
): { readonly scenario: Scenario } | { readonly verdict: TubeVerdict } {
  const { condenser } = scenario;
  const changed = { ...condenser, ...condenserFromTube(tube.id) };
  if (isCoil(condenser)) {
    if (!tube.coilable) return { verdict: 'cannot-be-coiled' };
    if (condenser.coilDiameter_m < 2 * tube.outsideDiameter_m) return { verdict: 'too-thick-for-turns' };
    return {
      scenario: {
        ...scenario,
        condenser: { ...changed, coilPitch_m: Math.max(condenser.coilPitch_m, tube.outsideDiameter_m) },
      },
    };
  }
  if (condenser.jacketDiameter_m < narrowestJacket({ ...condenser, outsideDiameter_m: tube.outsideDiameter_m }))
    return { verdict: 'too-thick-for-jacket' };
  return { scenario: { ...scenario, condenser: changed } };
}

function bendOf(tube: Tube | undefined, radius: number): Bend | null {
  if (!tube) return null;
  const { byHand, withTool } = tube.minimumBendRadius_m;
  if (byHand === null && withTool === null) return null;
  if (byHand !== null && radius >= byHand) return 'by-hand';
  return withTool !== null && radius >= withTool ? 'with-bender' : 'too-tight';
}

const nothing = {
  failure: null,
  computedAsPlain: false,
  typical_m: null,
  decidedBy: null,
  length_m: null,
  lengthWithMargin_m: null,
  ends: null,
  toBuy_m: null,
  peakVapour_kg_s: null,
  turns: null,
  coilHeight_m: null,
  fitsTub: null,
  bend: null,
  bendOk: null,
  mass_kg: null,
  peakDrop_Pa: null,
  steamSpeed_m_s: null,
  packs: null,
  warmestOutlet_K: null,
} as const;

/** Of steam at the pressure outside, as it enters the tubes side by side. */
function steamSpeed({ condenser, site }: Scenario, steam_kg_s: number): number {
  const density = tableVapourDensity(
    tableSaturationTemperature(site.barometer_Pa ?? standardPressure(site.altitude_m)),
  );
  return steam_kg_s / (density * circleArea(condenser.insideDiameter_m) * tubeCount(condenser));
}

/** Tubes are measured to the centimetre, never shorter than what is enough, m. */
const LENGTH_STEP = 0.01;
const upToStep = (length: number): number => Number((Math.ceil(length / LENGTH_STEP - 1e-6) * LENGTH_STEP).toFixed(2));

/** Measures of a found length. */
function measure(
  scenario: Scenario,
  like: TubeLike,
  tube: Tube | undefined,
  { size, typical_m, decidedBy, peakVapour_kg_s }: Omit<LengthInDoubt, 'deciding'>,
  { margin, confidence }: Required<Pick<TubeSizeOptions, 'margin' | 'confidence'>>,
): TubeSize {
  const { condenser, cooling } = scenario;
  const count = tubeCount(condenser);
  const { verdict, trial } = size;
  const common = {
    ...like,
    typical_m,
    decidedBy,
    confidence,
    verdict,
    failure: trial.failure,
    peakVapour_kg_s: trial.vapourCame ? peakVapour_kg_s : null,
    tubes: count,
    peakDrop_Pa: trial.vapourCame ? trial.drop_Pa : null,
    steamSpeed_m_s: trial.vapourCame ? steamSpeed(scenario, peakVapour_kg_s) : null,
    warmestOutlet_K: trial.warmestOutlet_K,
  };
  if (size.length_m === null) return { ...nothing, ...common };
  const needed = upToStep(size.length_m);
  const length = upToStep(needed * (1 + margin));
  const ends = tubeEnds(scenario, length);
  const toBuy_m = tubeToBuy(length, ends);
  const coil = isCoil(condenser);
  const { coilDiameter_m: D, coilPitch_m: p, outsideDiameter_m: D_o } = condenser;
  const fit = coil ? coilFit({ ...condenser, length_m: length }, cooling) : null;
  const bend = coil ? bendOf(tube, coilBendRadius(D, p)) : null;
  const perMetre =
    tube?.massPerLength_kg_m ??
    tubeMass(condenser.insideDiameter_m, D_o, 1, findMaterial(condenser.material).density_kg_m3.value);
  return {
    ...common,
    computedAsPlain: tube !== undefined && tube.areaFactor > PLAIN_AREA,
    length_m: needed,
    lengthWithMargin_m: length,
    turns: fit && fit.turns,
    coilHeight_m: coil ? coilHeight(length, D, p, D_o) : null,
    fitsTub: fit && !fit.isTooDeep && !fit.isTooWide,
    bend,
    bendOk: bend === null ? null : bend !== 'too-tight',
    mass_kg: perMetre * length * count,
    ends,
    toBuy_m,
    packs: tube ? packsOf(tube.coilLengths_m, toBuy_m, count) : null,
  };
}

/** Bores are doubled so often, at most, to rank the draws where the own tube is too narrow for any. */
const MOST_DOUBLINGS = 3;

/** Draws that decide on a wider tube, where the scenario's own is too narrow for the boil. */
function decidingOnWider(scenario: Scenario): readonly Draw[] {
  let { insideDiameter_m: bore, outsideDiameter_m: outside } = scenario.condenser;
  for (let doubling = 0; doubling < MOST_DOUBLINGS; doubling++) {
    outside += bore;
    bore *= 2;
    const wider = { ...scenario.condenser, insideDiameter_m: bore, outsideDiameter_m: outside };
    const { condenser } = scenario;
    const found = lengthInDoubt(
      {
        ...scenario,
        condenser: {
          ...wider,
          coilPitch_m: Math.max(condenser.coilPitch_m, outside),
          jacketDiameter_m: Math.max(condenser.jacketDiameter_m, narrowestJacket(wider)),
        },
      },
      { confirm: false },
    );
    if (found.size.verdict !== 'pressure') return found.deciding;
  }
  return [{}];
}

/** The scenario's own tube. */
export function sizeOwnTube(
  scenario: Scenario,
  { margin = DEFAULT_MARGIN, confidence = NINE_IN_TEN, ...options }: TubeSizeOptions = {},
): OwnTubeSize {
  const tube = libraryTubeOf(scenario);
  const { insideDiameter_m, outsideDiameter_m, material } = scenario.condenser;
  const like = { id: tube?.id ?? null, name: tube?.name ?? null, material, insideDiameter_m, outsideDiameter_m };
  const found = lengthInDoubt(scenario, { ...options, confidence });
  const deciding = found.size.verdict === 'pressure' ? decidingOnWider(scenario) : found.deciding;
  return { ...measure(scenario, like, tube, found, { margin, confidence }), found_m: found.size.length_m, deciding };
}

/** The own tube's row among all: it has been sized by more draws than others are. */
export function ownAsRow({ found_m: _, deciding: __, ...size }: OwnTubeSize): TubeSize {
  return size;
}

/** The scenario at full heat throughout; `null` where its plan is that already. */
export function atFullHeat(scenario: Scenario): Scenario | null {
  const { control, setting } = scenario.heat;
  return control === 'schedule' && setting.every(({ value }) => value === 1) ? null : withHeat(scenario, 1);
}

export interface SizedTube {
  readonly size: TubeSize;
  /** `null` where nothing was seen that another tube could begin from. */
  readonly seen: TubeSeen | null;
}

/** One tube of the library in place of the scenario's own. */
export const sizeTube = (scenario: Scenario, tube: Tube, options: OtherTubeOptions = {}): TubeSize =>
  sizeTubeFrom(scenario, tube, options, []).size;

/** The same, from what was seen of other tubes, and with what is now seen of this one. */
export function sizeTubeFrom(
  scenario: Scenario,
  tube: Tube,
  {
    margin = DEFAULT_MARGIN,
    confidence = NINE_IN_TEN,
    confirm = false,
    deciding = [{}],
    start_m = 1.5 * scenario.condenser.length_m,
    ...options
  }: OtherTubeOptions,
  seen: readonly TubeSeen[],
): SizedTube {
  const { id, name, material, insideDiameter_m, outsideDiameter_m } = tube;
  const like = { id, name, material, insideDiameter_m, outsideDiameter_m };
  const changed = withTube(scenario, tube);
  if (!('scenario' in changed))
    return { size: { ...like, ...nothing, confidence, tubes: tubeCount(scenario.condenser), ...changed }, seen: null };
  const among = deciding.map((draw) => withDrawn(changed.scenario, draw));
  const quick = sizeLikeSeen(among, { start_m, seen, confirm });
  const size = quick?.size ?? sizeCondenser(changed.scenario, { confirm, among, start_m, ...options });
  const found = { size, typical_m: null, decidedBy: null, peakVapour_kg_s: size.trial.peakVapour_kg_s };
  return { size: measure(changed.scenario, like, tube, found, { margin, confidence }), seen: quick?.seen ?? null };
}

/** Whether the cooling water is at fault, so that no tube holds. */
export const coolantFails = (verdict: TubeVerdict): boolean =>
  verdict === 'coolant-boils' || verdict === 'coolant-warm';

/**
 * A list of tubes, each as `sizeTube`, without confirming at the scenario's own step unless asked. Tubes are taken by
 * their diameter, so that each tells where to look for the next.
 * @param own the scenario's own tube, sized before
 */
export function sizeTubes(
  scenario: Scenario,
  list: readonly Tube[],
  options: TubeSizeOptions,
  own: OwnTubeSize,
): TubeSize[] {
  const start_m = coolantFails(own.verdict) ? LONGEST_TUBE : 1.5 * (own.length_m ?? scenario.condenser.length_m);
  const order = list
    .map((tube, index) => ({ tube, index }))
    .sort(
      (a, b) =>
        a.tube.outsideDiameter_m - b.tube.outsideDiameter_m || a.tube.insideDiameter_m - b.tube.insideDiameter_m,
    );
  const rows = new Array<TubeSize>(list.length);
  const before: TubeSeen[] = [];
  for (const { tube, index } of order) {
    if (tube.id === own.id) {
      rows[index] = ownAsRow(own);
      continue;
    }
    const { size, seen } = sizeTubeFrom(scenario, tube, { ...options, start_m, deciding: own.deciding }, before);
    if (seen) before.push(seen);
    rows[index] = size;
  }
  return rows;
}
