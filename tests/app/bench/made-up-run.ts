/** A run that no model made: enough of a result to test what the page says and does with one. */
import {
  COLUMN_NAMES,
  readScenario,
  type ColumnName,
  type RunEvent,
  type RunRecord,
  type RunResult,
  type Scenario,
  type Summary,
} from '../../../sim/index.ts';
import { eventOf } from '../../sim/messages/sample-events.ts';

export function scenarioWith(input: unknown = {}): Scenario {
  const read = readScenario(input);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.scenario;
}

const summary: Summary = {
  firstBoil_s: 1320,
  firstDrop_s: 1860,
  end_s: 9000,
  endReason: 'duration',
  oilInCharge_kg: 0.0112,
  oilCollected_kg: 0.0089,
  oilCollected_mL: 10,
  oilDensity_kg_m3: 890,
  oilByConstituent_kg: { linalool: 0.0089 },
  recovery: 0.795,
  t50_s: 3600,
  t80_s: 5400,
  t90_s: 6720,
  t95_s: 7500,
  t99_s: 8700,
  hydrosol_kg: 2.41,
  oilDissolved_kg: 0.0006,
  oilHaze_kg: 0.0002,
  hazeClears_s: 7200,
  oilUncondensed_kg: 0,
  oilHydrolysed_kg: 0,
  oilLeft_kg: 0.0015,
  waterUncondensed_kg: 0,
  peakSteam_kg_s: 0.0005,
  peakDuty_W: 1150,
  coolantPeakOut_C: 44,
  coolantUsed_kg: 34,
  condensatePeak_C: 27,
  condensingLengthPeak_m: 3.2,
  energyFuel_J: 4.2 * 3.6e6,
  energyToPot_J: 3.1 * 3.6e6,
  energyCost: 1.26,
  waterCost: 0.1,
  potWaterLeft_kg: 4.1,
  peakPotGauge_Pa: 120,
  peakNeckSpeed_m_s: 3,
  baseFlux_W_m2: 20_000,
  oilSinks: false,
};

const ROWS = 10;

/** Condensing length peaks in row 6 (6000 s), the cooling water in row 8 (8000 s). */
function record(end_s: number): RunRecord {
  const columns = Object.fromEntries(COLUMN_NAMES.map((name) => [name, new Float64Array(ROWS)])) as Record<
    ColumnName,
    Float64Array
  >;
  columns.time_s.set(Array.from({ length: ROWS }, (_, row) => Math.min(row * 1000, end_s)));
  columns.condensingLength_m.set([0, 0, 1, 2, 2, 2, 3.2, 2, 2, 2]);
  columns.coolantOut_K.set([288, 288, 300, 305, 306, 307, 310, 314, 317.15, 316]);
  return { rows: ROWS, columns, grids: {} as RunRecord['grids'], constituents: ['linalool'] };
}

export { eventOf };

export interface MadeUp {
  readonly scenario?: Scenario;
  readonly summary?: Partial<Summary>;
  readonly events?: readonly RunEvent[];
  readonly failure?: RunResult['failure'];
}

export function madeUpRun(parts: MadeUp = {}): RunResult {
  const whole = { ...summary, ...parts.summary };
  return {
    scenario: parts.scenario ?? scenarioWith({ condenser: { length_m: 5 } }),
    record: record(whole.end_s),
    events: parts.events ?? [
      eventOf('first-boil', 1320),
      eventOf('first-drop', 1860),
      eventOf('run-ends', whole.end_s),
    ],
    summary: whole,
    balance: {} as RunResult['balance'],
    failure: parts.failure ?? null,
  };
}
