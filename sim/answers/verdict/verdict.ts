/**
 * The verdict on a run: what matters most, the next few things to know, all that can be concluded, and what to beware
 * of. Facts of a moment (events) and of the whole run (conclusions) stay apart: no sentence joins a number of the one to
 * the other.
 */
import { waterSource } from '../../geometry/condenser-kind.ts';
import { ZERO_CELSIUS } from '../../constants.ts';
import { LIMITS } from '../../run/limits.ts';
import type { RunRecord } from '../../run/record.ts';
import type { EventKind, RunEvent, RunResult, Severity } from '../../run/result.ts';
import { conclude, type Conclusion, type ConclusionKind, type EnoughLength } from './conclusion.ts';

export interface Verdict {
  /** The one conclusion that matters most. */
  readonly lead: Conclusion;
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

function condenserLead(result: RunResult, enough: EnoughLength | null): Conclusion {
  const { condenser } = result.scenario;
  const { kind, length_m } = condenser;
  const escape = result.events.find(({ kind }) => kind === 'vapour-escapes');
  if (escape)
    return conclude('condenser-fails', 'alarm', 'condenser', escape.time_s, { condenser: kind, length_m, enough });
  const peak_m = result.summary.condensingLengthPeak_m;
  const peak_s = timeOfPeak(result.record, 'condensingLength_m');
  const reserve_m = length_m - peak_m;
  if (reserve_m < SCANT * length_m)
    return conclude('condenser-scant', 'care', 'condenser', peak_s, { condenser: kind, reserve_m });
  return conclude('condenser-enough', 'good', 'condenser', peak_s, { condenser: kind, peak_m, length_m });
}

function leadOf(result: RunResult, enough: EnoughLength | null): Conclusion {
  const { summary, failure } = result;
  if (failure) return conclude('run-failed', 'alarm', 'advanced', failure.time_s, { variable: failure.variable });
  const dry = result.events.find((event) => event.kind === 'pot-dry');
  if (dry) return conclude('ran-dry', 'alarm', 'pot', dry.time_s, { vessel: dry.values.vessel });
  const burst = result.events.find((event) => event.kind === 'over-pressure');
  if (burst) return conclude('too-much-pressure', 'alarm', 'pot', burst.time_s, { limit_Pa: burst.values.limit_Pa });
  if (summary.firstBoil_s === null)
    return conclude('never-boils', 'care', 'heat', summary.end_s, { duration_s: summary.end_s });
  if (summary.firstDrop_s === null)
    return conclude('never-drips', 'care', 'condenser', summary.end_s, { firstBoil_s: summary.firstBoil_s });
  return condenserLead(result, enough);
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

function runConclusions({ summary, scenario }: RunResult): Conclusion[] {
  const vessel = scenario.pot.layout === 'steam' ? 'boiler' : 'pot';
  return [
    conclude('run-length', 'note', 'run', summary.end_s, { duration_s: summary.end_s, reason: summary.endReason }),
    conclude('energy', 'note', 'heat', null, {
      fuel_J: summary.energyFuel_J,
      cost: summary.energyCost + summary.waterCost,
    }),
    conclude('pot-water', 'note', 'pot', summary.end_s, { water_kg: summary.potWaterLeft_kg, vessel }),
  ];
}

/** Events that a conclusion already tells. */
const TOLD_BY: Readonly<Partial<Record<ConclusionKind, readonly EventKind[]>>> = {
  'condenser-fails': ['vapour-escapes', 'vapour-held-again'],
  'ran-dry': ['pot-dry'],
  'too-much-pressure': ['over-pressure'],
  'distillate-warm': ['outlet-warm'],
};

const rank: Readonly<Record<Severity, number>> = { alarm: 0, care: 1, note: 2 };

function warningsOf({ events }: RunResult, told: ReadonlySet<EventKind>): RunEvent[] {
  const seen = new Set(told);
  const warnings: RunEvent[] = [];
  for (const event of events) {
    if (event.severity === 'note' || seen.has(event.kind)) continue;
    seen.add(event.kind);
    warnings.push(event);
  }
  return warnings.sort((a, b) => rank[a.severity] - rank[b.severity] || a.time_s - b.time_s);
}

/** The whole verdict. `enough` is the length that is enough, once it is known, where the condenser fails. */
export function verdictOf(result: RunResult, enough: EnoughLength | null = null): Verdict {
  const lead = leadOf(result, enough);
  // Sums over a run that could not be calculated to its end say nothing.
  const paragraphs = result.failure
    ? []
    : [
        oilConclusions(result),
        [coolingWater(result), ...distillate(result), ...separator(result), ...haze(result)],
        runConclusions(result),
      ].filter((paragraph) => paragraph.length > 0);
  const used = result.summary.coolantUsed_kg > 0 ? [coolingWater(result)] : [];
  const told = new Set([lead, ...paragraphs.flat()].flatMap(({ kind }) => TOLD_BY[kind] ?? []));
  return {
    lead,
    briefs: result.failure ? [] : [...firstDrop(result), ...mostOil(result), ...used],
    paragraphs,
    warnings: warningsOf(result, told),
  };
}
