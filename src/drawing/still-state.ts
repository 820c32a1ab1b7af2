/**
 * What the moving parts show at a moment: plain numbers read from the record of the run. Nothing is computed here but
 * reading between rows, counting drops and asking which events hold.
 */
import {
  LIMITS,
  cellAt,
  positionAt,
  valueAt,
  type Position,
  type ColumnName,
  type GridName,
  type RunEvent,
  type RunRecord,
  type RunResult,
} from '../../sim/index.ts';

/** Above this many drops a second the eye sees a thin stream. */
export const STREAM_FROM = 10;

export interface Alarms {
  readonly escaping: boolean;
  readonly pressure: boolean;
  readonly potLow: boolean;
  readonly potDry: boolean;
  readonly tubHot: boolean;
}

export interface StillState {
  readonly time_s: number;
  /** Power drawn and its share of the rated power. */
  readonly power_W: number;
  readonly heatShare: number;
  readonly heatSetting: number;
  readonly potTemperature_K: number;
  readonly potWater_kg: number;
  readonly potDepth_m: number;
  readonly potGauge_Pa: number;
  readonly steam_kg_s: number;
  readonly vapourTemperature_K: number;
  readonly neckSpeed_m_s: number;
  readonly vapour_kg_s: number;
  readonly frontHeight_m: number;
  /** From the grid up. */
  readonly bedTemperature_K: readonly number[];
  readonly oilLeft_kg: number;
  readonly condensingLength_m: number;
  /** Share of the vapour left at the end of each piece of tube, from the vapour end. */
  readonly vapourShare: readonly number[];
  readonly condensate_kg_s: number;
  readonly condensateTemperature_K: number;
  readonly dropsPerSecond: number;
  readonly escaping_kg_s: number;
  readonly coolantFlow_kg_s: number;
  readonly coolantIn_K: number;
  readonly coolantOut_K: number;
  readonly tubMean_K: number;
  readonly tubDepth_m: number;
  /** Depth of the tub that the water let in mixes. */
  readonly mixedDepth_m: number;
  /** From the top down; empty when there is no tub. */
  readonly tubTemperature_K: readonly number[];
  readonly ice_kg: number;
  readonly cutSize_m: number;
  readonly oilLayer_m: number;
  readonly oilCollected_kg: number;
  readonly oilRate_kg_s: number;
  readonly hydrosol_kg: number;
  /** Oil as haze per kilogram of kept water. */
  readonly haze: number;
  readonly oilDensity_kg_m3: number | null;
  readonly oilSinks: boolean;
  readonly alarms: Alarms;
}

/** Position among the rows of a record, found once and then read for every column. */
interface Moment {
  readonly record: RunRecord;
  readonly position: Position;
}

function column({ record, position }: Moment, name: ColumnName): number {
  const value = valueAt(record.columns[name], position);
  return Number.isFinite(value) ? value : 0;
}

function cells({ record, position }: Moment, name: GridName): number[] {
  const { cells: count, data } = record.grids[name];
  return Array.from({ length: count }, (_, cell) => cellAt(data, count, cell, position)).filter(Number.isFinite);
}

/** Whether something that begins and ends by events holds at a time. */
function holds(events: readonly RunEvent[], begins: RunEvent['kind'], ends: RunEvent['kind'], time_s: number): boolean {
  let on = false;
  for (const event of events) {
    if (event.time_s > time_s) continue;
    if (event.kind === begins) on = true;
    else if (event.kind === ends) on = false;
  }
  return on;
}

const happened = (events: readonly RunEvent[], kind: RunEvent['kind'], time_s: number): boolean =>
  events.some((event) => event.kind === kind && event.time_s <= time_s);

function alarmsAt(
  { events, summary }: RunResult,
  time_s: number,
  escaping_kg_s: number,
  gauge_Pa: number,
  tubTop_K: number,
): Alarms {
  return {
    escaping: escaping_kg_s > 0 && holds(events, 'vapour-escapes', 'vapour-held-again', time_s),
    pressure: gauge_Pa > LIMITS.potGauge_Pa,
    potLow: happened(events, 'pot-low', time_s),
    potDry: happened(events, 'pot-dry', time_s) || (summary.endReason === 'pot-dry' && time_s >= summary.end_s),
    tubHot: tubTop_K >= LIMITS.scaldingWater_K,
  };
}

/** After the end of a run the heat is off and nothing flows or boils; what it gave stands, as warm as it was. */
export function stillStateAt(result: RunResult, time_s: number): StillState {
  const { record, summary, scenario } = result;
  const moment = { record, position: positionAt(record, time_s) };
  const isOver = time_s > summary.end_s;
  const at = (name: ColumnName) => column(moment, name);
  const flow = (name: ColumnName) => (isOver ? 0 : at(name));
  const power = flow('sourcePower_W');
  const condensate = flow('condensateRate_kg_s');
  const escaping = flow('escapingWater_kg_s') + flow('escapingOil_kg_s');
  const gauge = flow('potGauge_Pa');
  const tubTemperature = cells(moment, 'tubTemperature_K');
  const hydrosol = at('hydrosol_kg');
  const coolantOut = at('coolantOut_K');
  return {
    time_s,
    power_W: power,
    heatShare: Math.min(1, Math.max(0, power / scenario.heat.ratedPower_W)),
    heatSetting: flow('heatSetting'),
    potTemperature_K: at('potTemperature_K'),
    potWater_kg: at('potWater_kg'),
    potDepth_m: Math.max(0, at('potDepth_m')),
    potGauge_Pa: gauge,
    steam_kg_s: Math.max(0, flow('steamRate_kg_s')),
    vapourTemperature_K: at('vapourTemperature_K'),
    neckSpeed_m_s: Math.max(0, flow('neckSpeed_m_s')),
    vapour_kg_s: Math.max(0, flow('vapourRate_kg_s')),
    frontHeight_m: Math.max(0, at('frontHeight_m')),
    bedTemperature_K: cells(moment, 'bedTemperature_K'),
    oilLeft_kg: at('oilReady_kg') + at('oilHeld_kg'),
    condensingLength_m: Math.max(0, flow('condensingLength_m')),
    vapourShare: cells(moment, 'condenserVapourShare'),
    condensate_kg_s: Math.max(0, condensate),
    condensateTemperature_K: at('condensateTemperature_K'),
    dropsPerSecond: Math.max(0, condensate) / LIMITS.firstDrop_kg,
    escaping_kg_s: Math.max(0, escaping),
    coolantFlow_kg_s: Math.max(0, flow('coolantFlow_kg_s')),
    coolantIn_K: at('coolantIn_K'),
    coolantOut_K: coolantOut,
    tubMean_K: at('tubMean_K'),
    tubDepth_m: Math.max(0, at('tubDepth_m')),
    mixedDepth_m: Math.max(0, at('mixedDepth_m')),
    tubTemperature_K: tubTemperature,
    ice_kg: Math.max(0, at('iceLeft_kg')),
    cutSize_m: at('cutSize_m'),
    oilLayer_m: Math.max(0, at('oilLayer_m')),
    oilCollected_kg: Math.max(0, at('oilCollected_kg')),
    oilRate_kg_s: Math.max(0, flow('oilRate_kg_s')),
    hydrosol_kg: Math.max(0, hydrosol),
    haze: hydrosol > 0 ? Math.max(0, at('oilHaze_kg')) / hydrosol : 0,
    oilDensity_kg_m3: summary.oilDensity_kg_m3,
    oilSinks: summary.oilSinks,
    alarms: alarmsAt(result, time_s, escaping, gauge, tubTemperature[0] ?? coolantOut),
  };
}

/** Where along the cooled tube the vapour ends, as a share of its length. */
export const condensingShare = (state: StillState, length_m: number): number =>
  state.vapour_kg_s > 0 ? Math.min(1, state.condensingLength_m / length_m) : 0;

/** Share of the vapour still uncondensed at a share of the tube's length. */
export function vapourLeftAt(state: StillState, share: number): number {
  const { vapourShare } = state;
  if (state.vapour_kg_s <= 0 || vapourShare.length === 0) return 0;
  const cell = Math.min(vapourShare.length - 1, Math.floor(share * vapourShare.length));
  return Math.min(1, Math.max(0, vapourShare[cell] as number));
}
