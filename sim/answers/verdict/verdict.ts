/**
 * The verdict on a run: what matters most, the next few things to know, all that can be concluded, and what to beware
 * of. Facts of a moment (events) and of the whole run (conclusions) stay apart: no sentence joins a number of the one to
 * the other.
 */
import { DEFAULT_ENERGY_PRICES_J, DEFAULT_WATER_PRICE_m3 } from '../../scenario/limits.ts';
import { coilFit } from '../../geometry/coil.ts';
import { isCoil, isTapFed, waterSource } from '../../geometry/condenser-kind.ts';
import { ZERO_CELSIUS } from '../../constants.ts';
import { EVENT_KINDS } from '../../run/event-kinds.ts';
import { LIMITS } from '../../run/limits.ts';
import type { RunRecord } from '../../run/record.ts';
import type { EventKind, RunEvent, RunResult, Severity, Summary } from '../../run/result.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { conclude, type Conclusion, type ConclusionKind, type EnoughLength } from './conclusion.ts';

export type Fact = Conclusion | RunEvent;

export interface Verdict {
  /** What matters most: of the whole run, or the first of its kind at a moment. */
  readonly lead: Fact;
  /** The next few things to know, to be said in few words. */
  readonly briefs: readonly Conclusion[];
  /** What else can be concluded: oil, cooling and separator, the run. */
  readonly paragraphs: readonly (readonly Conclusion[])[];
  /** What the run warned of and no conclusion tells, one of a kind, the dangerous ones first. */
  readonly warnings: readonly RunEvent[];
}

const timeOfPeak = (record: RunRecord, column: 'condensingLength_m' | 'coolantOut_K'): number => {
  const values = record.columns[column];
  let peak = 0;
  for (let row = 1; row < record.rows; row++) {
    if ((values[row] as number) > (values[peak] as number)) peak = row;
  }
  return record.columns.time_s[peak] as number;
};

/** A share of the length below which the reserve counts as scant. */
const SCANT = 0.1;
/** Share of the collected oil whose time is told. */
const MOST = 0.9;

/** A run that gets less than this share of the oil in the plant is hardly worth its water. */
const LITTLE = 0.5;

function escapes({ scenario, events }: RunResult, enough: EnoughLength | null): Conclusion[] {
  const { kind, length_m } = scenario.condenser;
  const escape = events.find((event) => event.kind === 'vapour-escapes');
  if (!escape) return [];
  return [conclude('condenser-fails', 'alarm', 'condenser', escape.time_s, { condenser: kind, length_m, enough })];
}

function ranDry({ events }: RunResult): Conclusion[] {
  const dry = events.find((event) => event.kind === 'pot-dry');
  return dry ? [conclude('ran-dry', 'alarm', 'pot', dry.time_s, { vessel: dry.values.vessel })] : [];
}

function burst({ events }: RunResult): Conclusion[] {
  const over = events.find((event) => event.kind === 'over-pressure');
  return over ? [conclude('too-much-pressure', 'alarm', 'pot', over.time_s, { limit_Pa: over.values.limit_Pa })] : [];
}

interface Peak {
  readonly time_s: number;
  readonly peak_K: number;
}

/** The warmest cooling water that runs off; what stands in a tub does not. */
function overflowPeak({ record, scenario }: RunResult): Peak | null {
  if (!isTapFed(scenario)) return null;
  const { coolantFlow_kg_s: flow, coolantOut_K: out, time_s } = record.columns;
  let peak = -1;
  for (let row = 0; row < record.rows; row++) {
    if ((flow[row] as number) > 0 && (peak < 0 || (out[row] as number) > (out[peak] as number))) peak = row;
  }
  return peak < 0 ? null : { time_s: time_s[peak] as number, peak_K: out[peak] as number };
}

function overflowScalds(result: RunResult): Conclusion[] {
  const peak = overflowPeak(result);
  if (peak === null || peak.peak_K < LIMITS.scaldingWater_K) return [];
  return [conclude('overflow-scalds', 'care', 'cooling', peak.time_s, { peak_K: peak.peak_K })];
}

/** @param leads whether nothing worse is to be said of the run */
function overflowWarm(result: RunResult, leads: boolean): Conclusion[] {
  const peak = overflowPeak(result);
  if (peak === null || peak.peak_K < LIMITS.hotWater_K || peak.peak_K >= LIMITS.scaldingWater_K) return [];
  const [enough] = leads ? reserve(result) : [];
  const condenses = enough?.kind === 'condenser-enough' ? enough.values : null;
  return [conclude('overflow-warm', 'care', 'cooling', peak.time_s, { peak_K: peak.peak_K, condenses })];
}

function noSteam({ summary }: RunResult): Conclusion[] {
  const { firstBoil_s, firstDrop_s, end_s } = summary;
  if (firstBoil_s === null) return [conclude('never-boils', 'care', 'heat', end_s, { duration_s: end_s })];
  if (firstDrop_s === null) return [conclude('never-drips', 'care', 'condenser', end_s, { firstBoil_s })];
  return [];
}

function littleOil({ summary }: RunResult): Conclusion[] {
  const { recovery, oilCollected_kg: oil_kg, oilDensity_kg_m3: density_kg_m3, end_s } = summary;
  if (recovery === null || recovery >= LITTLE || !(oil_kg > 0)) return [];
  return [conclude('little-oil', 'care', 'heat', end_s, { recovery, oil_kg, density_kg_m3 })];
}

function coilInTub({ scenario }: RunResult): Conclusion[] {
  const { condenser, cooling } = scenario;
  if (!isCoil(condenser)) return [];
  const { depth_m, width_m, isTooDeep, isTooWide } = coilFit(condenser, cooling);
  if (isTooDeep)
    return [conclude('coil-too-deep', 'care', 'cooling', null, { needs_m: depth_m, has_m: cooling.tubHeight_m })];
  return isTooWide
    ? [conclude('coil-too-wide', 'care', 'cooling', null, { needs_m: width_m, has_m: cooling.tubDiameter_m })]
    : [];
}

/** How much of the tube condenses, where it is enough. */
function reserve(result: RunResult): Conclusion[] {
  const { summary, scenario, events } = result;
  if (summary.firstDrop_s === null || events.some((event) => event.kind === 'vapour-escapes')) return [];
  const { kind: condenser, length_m } = scenario.condenser;
  const peak_m = summary.condensingLengthPeak_m;
  const peak_s = timeOfPeak(result.record, 'condensingLength_m');
  const reserve_m = length_m - peak_m;
  if (reserve_m < SCANT * length_m)
    return [conclude('condenser-scant', 'care', 'condenser', peak_s, { condenser, reserve_m })];
  return [conclude('condenser-enough', 'good', 'condenser', peak_s, { condenser, peak_m, length_m })];
}

const firstDrop = ({ summary }: RunResult): Conclusion[] =>
  summary.firstDrop_s === null ? [] : [conclude('first-drop', 'note', 'condenser', summary.firstDrop_s, {})];

function mostOil({ summary }: RunResult): Conclusion[] {
  if (summary.t90_s === null || !(summary.oilCollected_kg > 0)) return [];
  return [
    conclude('most-oil', 'note', 'separator', summary.t90_s, {
      share: MOST,
      oil_kg: summary.oilCollected_kg,
      density_kg_m3: summary.oilDensity_kg_m3,
    }),
  ];
}

function oilConclusions(result: RunResult): Conclusion[] {
  const { summary } = result;
  if (!(summary.oilCollected_kg > 0)) {
    const dripped = summary.firstDrop_s !== null;
    return [...firstDrop(result), ...(dripped ? [conclude('no-oil', 'care', 'charge', summary.end_s, {})] : [])];
  }
  return [
    ...firstDrop(result),
    ...mostOil(result),
    conclude('products', 'note', 'separator', summary.end_s, {
      oil_kg: summary.oilCollected_kg,
      density_kg_m3: summary.oilDensity_kg_m3,
      recovery: summary.recovery,
      hydrosol_kg: summary.hydrosol_kg,
    }),
  ];
}

/** What the cooling water stands in. */
const VESSELS = { tub: 'tub', barrel: 'barrel', tap: 'none' } as const;

function coolingWater({ summary, scenario, record }: RunResult): Conclusion {
  const standing = VESSELS[waterSource(scenario)];
  return conclude('cooling-water', 'note', 'cooling', timeOfPeak(record, 'coolantOut_K'), {
    used_kg: summary.coolantUsed_kg,
    peak_K: summary.coolantPeakOut_C + ZERO_CELSIUS,
    supply: summary.coolantUsed_kg > 0 ? 'tap' : standing,
  });
}

function distillate(result: RunResult): Conclusion[] {
  const { summary, scenario, record } = result;
  if (summary.condensatePeak_C === null) return [];
  const values = { peak_K: summary.condensatePeak_C + ZERO_CELSIUS, limit_K: scenario.condenser.outletLimit_K };
  const warm = values.peak_K > values.limit_K;
  const time_s = result.events.find(({ kind }) => kind === 'outlet-warm')?.time_s ?? timeOfPeak(record, 'coolantOut_K');
  return [conclude(warm ? 'distillate-warm' : 'distillate-cool', warm ? 'care' : 'note', 'condenser', time_s, values)];
}

function separator({ summary }: RunResult): Conclusion[] {
  const reached = summary.oilCollected_kg + summary.oilHaze_kg;
  if (!(reached > 0)) return [];
  const share = summary.oilCollected_kg / reached;
  return [
    conclude('separator-catches', share < LIMITS.captureShare ? 'care' : 'note', 'separator', summary.t50_s, {
      share,
      dissolved_kg: summary.oilDissolved_kg,
      density_kg_m3: summary.oilDensity_kg_m3,
    }),
  ];
}

/** A share of the oil that reached the separator below which its haze is not worth telling. */
const LEAST_HAZE = 0.002;

function haze({ summary }: RunResult): Conclusion[] {
  const { oilHaze_kg, oilCollected_kg, oilDensity_kg_m3, hazeClears_s, oilSinks } = summary;
  if (!(oilHaze_kg > LEAST_HAZE * (oilHaze_kg + oilCollected_kg))) return [];
  return [
    conclude('cloudy-hydrosol', 'note', 'separator', null, {
      haze_kg: oilHaze_kg,
      density_kg_m3: oilDensity_kg_m3,
      depth_m: LIMITS.jarDepth_m,
      clears_s: hazeClears_s,
      sinks: oilSinks,
    }),
  ];
}

/** Whether nobody has chosen the prices of what the run uses. */
const arePricesDefault = ({ heat, cooling }: Scenario, { waterCost }: Summary): boolean =>
  DEFAULT_ENERGY_PRICES_J.includes(heat.energyPrice_J) &&
  (waterCost === 0 || cooling.waterPrice_m3 === DEFAULT_WATER_PRICE_m3);

function runConclusions({ summary, scenario }: RunResult): Conclusion[] {
  const vessel = scenario.pot.layout === 'steam' ? 'boiler' : 'pot';
  return [
    conclude('run-length', 'note', 'run', summary.end_s, { duration_s: summary.end_s, reason: summary.endReason }),
    conclude('energy', 'note', 'heat', null, {
      fuel_J: summary.energyFuel_J,
      cost: summary.energyCost + summary.waterCost,
      pricesAreDefault: arePricesDefault(scenario, summary),
    }),
    conclude('pot-water', 'note', 'pot', summary.end_s, { water_kg: summary.potWaterLeft_kg, vessel }),
  ];
}

/** Events that a conclusion already tells. */
const TOLD_BY: Readonly<Partial<Record<ConclusionKind, readonly EventKind[]>>> = {
  'condenser-fails': ['vapour-escapes', 'vapour-held-again'],
  'ran-dry': ['pot-dry', 'pot-low'],
  'too-much-pressure': ['over-pressure', 'pressure-high'],
  'overflow-scalds': ['tub-warm', 'tub-hot'],
  'overflow-warm': ['tub-warm'],
  'distillate-warm': ['outlet-warm'],
};

const rank: Readonly<Record<Severity, number>> = { alarm: 0, care: 1, note: 2 };

/** What the run warned of and no conclusion tells, one of a kind, the dangerous ones first. */
function warningsOf({ events }: RunResult, conclusions: readonly Conclusion[]): readonly RunEvent[] {
  const seen = new Set(conclusions.flatMap(({ kind }) => TOLD_BY[kind] ?? []));
  // What scalds in seconds has scalded in minutes before.
  if (events.some(({ kind }) => kind === 'tub-hot')) seen.add('tub-warm');
  const warnings: RunEvent[] = [];
  for (const event of events) {
    if (event.severity === 'note' || seen.has(event.kind)) continue;
    seen.add(event.kind);
    warnings.push(event);
  }
  return warnings.sort((a, b) => rank[a.severity] - rank[b.severity] || a.time_s - b.time_s);
}

const isCare = ({ severity }: Conclusion): boolean => severity === 'care';

/** Every fact that may lead, by whom it hurts and then by what it costs; that all is well comes last. */
function ranked(result: RunResult, enough: EnoughLength | null): readonly Fact[] {
  const { failure, summary } = result;
  if (failure) return [conclude('run-failed', 'alarm', 'advanced', failure.time_s, { variable: failure.variable })];
  const dangers = [...escapes(result, enough), ...ranDry(result), ...burst(result)];
  const scalds = overflowScalds(result);
  const faults = [
    ...noSteam(result),
    ...distillate(result).filter(isCare),
    ...littleOil(result),
    ...coilInTub(result),
    ...separator(result).filter(isCare),
  ];
  const isTold = [...dangers, ...scalds, ...faults, ...overflowWarm(result, false)];
  const warnings = warningsOf(result, isTold);
  const alarms = warnings.filter(({ severity }) => severity === 'alarm');
  const cares = warnings.filter(({ severity }) => severity !== 'alarm');
  const of = (wanted: EventKind) => cares.filter(({ kind }) => kind === wanted);
  const graver = [...dangers, ...alarms, ...scalds, ...of('tub-hot'), ...faults];
  const facts = [
    ...graver,
    ...overflowWarm(result, graver.length === 0),
    ...of('tub-warm'),
    ...cares.filter(({ kind }) => kind !== 'tub-hot' && kind !== 'tub-warm'),
    ...reserve(result),
  ];
  return facts.length > 0
    ? facts
    : [conclude('run-length', 'note', 'run', summary.end_s, { duration_s: summary.end_s, reason: summary.endReason })];
}

/** The worst that a run has warned of up to a moment, the latest of its kind; `null` while it has warned of nothing. */
export function worstSoFar({ events }: RunResult, time_s: number): RunEvent | null {
  return events
    .filter((event) => event.severity !== 'note' && event.time_s <= time_s)
    .reduce<RunEvent | null>(
      (worst, event) => (worst === null || rank[event.severity] <= rank[worst.severity] ? event : worst),
      null,
    );
}

export const isEvent = (fact: Fact): fact is RunEvent => EVENT_KINDS.some((kind) => kind === fact.kind);
const isConclusion = (fact: Fact): fact is Conclusion => !isEvent(fact);

/** The whole verdict. `enough` is the length that is enough, once it is known, where the condenser fails. */
export function verdictOf(result: RunResult, enough: EnoughLength | null = null): Verdict {
  const [lead, ...others] = ranked(result, enough) as readonly [Fact, ...Fact[]];
  const whole = [
    oilConclusions(result),
    [coolingWater(result), ...distillate(result), ...separator(result), ...haze(result)],
    runConclusions(result),
  ];
  const inWhole = new Set(whole.flat().map(({ kind }) => kind));
  // Sums over a run that could not be calculated to its end say nothing.
  const paragraphs = result.failure
    ? []
    : [others.filter(isConclusion).filter(({ kind }) => !inWhole.has(kind)), ...whole]
        .map((paragraph) => paragraph.filter(({ kind }) => kind !== lead.kind))
        .filter((paragraph) => paragraph.length > 0);
  const used = result.summary.coolantUsed_kg > 0 ? [coolingWater(result)] : [];
  return {
    lead,
    briefs: result.failure ? [] : [...firstDrop(result), ...mostOil(result), ...used],
    paragraphs,
    warnings: others.filter(isEvent),
  };
}
