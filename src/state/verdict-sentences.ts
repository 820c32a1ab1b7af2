/** What a run has to say, in sentences. Each knows the part and the minute that it comes from. */
import {
  type EventKind,
  type RunEvent,
  type RunRecord,
  type RunResult,
  type ScenarioPart,
  type Severity,
  type TubeVerdict,
  displayUnit,
  englishReader,
  eventMessage,
  failedVariable,
  formatDuration,
  formatNumber,
  formatQuantity,
  type UnitSystem,
} from '../../sim/index.ts';

export interface VerdictSentence {
  readonly id: string;
  readonly text: string;
  readonly part: ScenarioPart;
  /** Where in the run to look; null where the whole run is meant. */
  readonly time_s: number | null;
  readonly severity: Severity | 'good';
  /** What to do about it, in a sentence of its own. */
  readonly advice: string | null;
}

export interface Verdict {
  /** The one sentence that matters most. */
  readonly lead: VerdictSentence;
  /** The next few things to know, in few words each. */
  readonly facts: readonly VerdictSentence[];
  readonly paragraphs: readonly (readonly VerdictSentence[])[];
  readonly warnings: readonly VerdictSentence[];
}

/** The length that would hold, where it has been found for a condenser that fails. */
export interface LengthThatHolds {
  /** `null` where no length would. */
  readonly length_m: number | null;
  /** Why no length would; `null` where one does. */
  readonly because: TubeVerdict | null;
}

const clock = (time_s: number): string => formatDuration(time_s);

const firstOf = (result: RunResult, kind: EventKind): RunEvent | undefined =>
  result.events.find((event) => event.kind === kind);

const adviceOf = (event: RunEvent, units: UnitSystem): string => eventMessage(event, englishReader(units)).advice;

const timeOfPeak = (record: RunRecord, column: 'condensingLength_m' | 'coolantOut_K'): number => {
  const values = record.columns[column];
  let peak = 0;
  for (let row = 1; row < record.rows; row++) {
    if ((values[row] as number) > (values[peak] as number)) peak = row;
  }
  return record.columns.time_s[peak] as number;
};

const condenserName = (kind: RunResult['scenario']['condenser']['kind']): string =>
  kind === 'coil-in-tub' ? 'coil' : kind === 'bundle' ? 'bundle' : 'condenser';

const plain = (
  id: string,
  part: ScenarioPart,
  time_s: number | null,
  text: string,
  severity: VerdictSentence['severity'] = 'note',
  advice: string | null = null,
): VerdictSentence => ({ id, text, part, time_s, severity, advice });

/** Why no length would hold, as the place that sizes condensers found it. */
const NO_LENGTH: Readonly<Partial<Record<TubeVerdict, string>> & { readonly never: string }> = {
  never: 'No length would hold; it needs more cooling water or less heat.',
  'coolant-warm': 'No length would hold; it needs more cooling water.',
  'coolant-boils': 'No length would hold; it needs more cooling water.',
  pressure: 'No length would hold; the tube is too narrow for this boil.',
};

/** A share of the length below which the spare counts as scant. */
const SCANT = 0.1;
/** Less than this, m, is nothing to spare. */
const LEAST_SPARE = 0.005;

function condenserLead(result: RunResult, units: UnitSystem, holds: LengthThatHolds | null): VerdictSentence {
  const { condenser } = result.scenario;
  const name = condenserName(condenser.kind);
  const run = (length_m: number) => formatQuantity(length_m, 'm', units, { hint: 'run', significant: 2 });
  const escape = firstOf(result, 'vapour-escapes');
  if (escape) {
    const exactly = (length_m: number) => formatQuantity(length_m, 'm', units, { hint: 'run' });
    const enough_m = holds?.length_m ?? null;
    const by = enough_m === null ? 'not enough' : `too short by ${exactly(Math.max(enough_m - condenser.length_m, 0))}`;
    const would =
      enough_m !== null
        ? ` ${exactly(enough_m)} would hold.`
        : holds
          ? ` ${NO_LENGTH[holds.because ?? 'never'] ?? NO_LENGTH.never}`
          : '';
    const text = `The ${name} is ${by}: from ${clock(escape.time_s)} on, vapour leaves the outlet.${would}`;
    return plain('condenser-fails', 'condenser', escape.time_s, text, 'alarm', adviceOf(escape, units));
  }
  const peak_s = timeOfPeak(result.record, 'condensingLength_m');
  const spare = condenser.length_m - result.summary.condensingLengthPeak_m;
  if (spare < SCANT * condenser.length_m) {
    const left = spare < LEAST_SPARE ? 'nothing' : run(spare);
    const text = `The ${name} only just condenses everything, with ${left} to spare.`;
    return plain(
      'condenser-scant',
      'condenser',
      peak_s,
      text,
      'care',
      'A warmer tap or a scaled tube would use that up; give it more length or less heat.',
    );
  }
  // What lies beyond is no spare copper: it brings the distillate below its limit.
  const text = `The ${name} condenses everything in the first ${run(result.summary.condensingLengthPeak_m)} of its ${run(condenser.length_m)}; the rest cools the distillate.`;
  return plain('condenser-holds', 'condenser', peak_s, text, 'good');
}

function leadOf(result: RunResult, units: UnitSystem, holds: LengthThatHolds | null): VerdictSentence {
  const { summary, failure } = result;
  if (failure) {
    const text = `The model breaks off at ${clock(failure.time_s)}: ${failedVariable(failure, englishReader(units))} is no longer a number.`;
    return plain(
      'run-failed',
      'advanced',
      failure.time_s,
      text,
      'alarm',
      'Take back the last change, or choose a shorter time step.',
    );
  }
  const dry = firstOf(result, 'pot-dry');
  if (dry) {
    const text = `The pot runs dry at ${clock(dry.time_s)}, and the run stops there.`;
    return plain('pot-dry', 'pot', dry.time_s, text, 'alarm', adviceOf(dry, units));
  }
  const burst = firstOf(result, 'over-pressure');
  if (burst) {
    const text = `The pressure in the pot is too high at ${clock(burst.time_s)}, and the run stops there.`;
    return plain('over-pressure', burst.part, burst.time_s, text, 'alarm', adviceOf(burst, units));
  }
  if (summary.firstBoil_s === null) {
    const text = `The pot never boils in ${clock(summary.end_s)}, so nothing comes over.`;
    return plain(
      'never-boils',
      'heat',
      summary.end_s,
      text,
      'care',
      'Turn up the heat, fill less water, or let it run longer.',
    );
  }
  if (summary.firstDrop_s === null) {
    const text = `The pot boils from ${clock(summary.firstBoil_s)}, but nothing drips from the outlet before the end.`;
    return plain('never-drips', 'condenser', summary.end_s, text, 'care', 'Turn up the heat, or let it run longer.');
  }
  return condenserLead(result, units, holds);
}

/** Nine tenths of a volume and the volume, to the same decimals: `9` of `10 mL`. */
function nineTenths(total_mL: number, units: UnitSystem): { readonly most: string; readonly all: string } {
  const shownAs = displayUnit('mL', units);
  const shown = shownAs.fromSI(total_mL);
  const decimals = shown >= 10 ? 0 : shown >= 1 ? 1 : 2;
  return { most: formatNumber(0.9 * shown, decimals), all: `${formatNumber(shown, decimals)}\u202f${shownAs.label}` };
}

function oilSentences(result: RunResult, units: UnitSystem): VerdictSentence[] {
  const { summary } = result;
  const said: VerdictSentence[] = [];
  if (summary.firstDrop_s !== null)
    said.push(
      plain('first-drop', 'condenser', summary.firstDrop_s, `The first drops come at ${clock(summary.firstDrop_s)}.`),
    );
  const total = summary.oilCollected_mL;
  if (!(total > 0)) {
    if (summary.firstDrop_s !== null)
      said.push(plain('no-oil', 'charge', summary.end_s, 'No oil is collected.', 'care'));
    return said;
  }
  if (summary.t90_s !== null) {
    const { most, all } = nineTenths(total, units);
    said.push(
      plain(
        'most-oil',
        'separator',
        summary.t90_s,
        `${most} of the ${all} of oil are in the receiver by ${clock(summary.t90_s)}.`,
      ),
    );
  }
  const weight = formatQuantity(summary.oilCollected_kg, 'kg', units, { hint: 'oil' });
  const recovery =
    summary.recovery === null
      ? ''
      : `, ${formatQuantity(summary.recovery, '1', units, { hint: 'share' })} of what the plant holds`;
  const hydrosol = formatQuantity(summary.hydrosol_kg, 'kg', units, { hint: 'hydrosol_kg' });
  said.push(
    plain(
      'products',
      'separator',
      summary.end_s,
      `In the end you have ${weight} of oil${recovery}, and ${hydrosol} of hydrosol.`,
    ),
  );
  return said;
}

function factsOf(result: RunResult, units: UnitSystem): VerdictSentence[] {
  const { summary } = result;
  const facts: VerdictSentence[] = [];
  if (summary.firstDrop_s !== null)
    facts.push(plain('fact-drops', 'condenser', summary.firstDrop_s, `first drops at ${clock(summary.firstDrop_s)}`));
  if (summary.t90_s !== null && summary.oilCollected_mL > 0) {
    const { most, all } = nineTenths(summary.oilCollected_mL, units);
    facts.push(
      plain('fact-oil', 'separator', summary.t90_s, `${most} of the ${all} of oil by ${clock(summary.t90_s)}`),
    );
  }
  if (summary.coolantUsed_kg > 0) {
    const used = formatQuantity(summary.coolantUsed_kg, 'kg', units, { hint: 'coolantUsed_kg' });
    facts.push(plain('fact-water', 'cooling', summary.end_s, `${used} of cooling water`));
  }
  return facts;
}

function waterSentences(result: RunResult, units: UnitSystem): VerdictSentence[] {
  const { summary, scenario, record } = result;
  const used = formatQuantity(summary.coolantUsed_kg, 'kg', units, { hint: 'coolantUsed_kg' });
  const warmest = formatQuantity(summary.coolantPeakOut_C, '°C', units, { decimals: 0 });
  const peak_s = timeOfPeak(record, 'coolantOut_K');
  const standing = scenario.condenser.kind === 'coil-in-tub' || scenario.cooling.jacketSupply === 'barrel';
  const text =
    summary.coolantUsed_kg > 0
      ? `Cooling takes ${used} of tap water, which leaves at up to ${warmest}.`
      : standing
        ? `No tap water runs; the ${scenario.condenser.kind === 'coil-in-tub' ? 'tub' : 'barrel'} warms to ${warmest}.`
        : 'No cooling water runs at all.';
  const said = [plain('cooling-water', 'cooling', peak_s, text)];
  if (summary.condensatePeak_C !== null) {
    const limit_C = scenario.condenser.outletLimit_K - 273.15;
    const warm = summary.condensatePeak_C > limit_C;
    const outlet = formatQuantity(summary.condensatePeak_C, '°C', units, { decimals: 0 });
    const bound = formatQuantity(limit_C, '°C', units, { decimals: 0 });
    const event = firstOf(result, 'outlet-warm');
    said.push(
      plain(
        'outlet-temperature',
        'condenser',
        event?.time_s ?? peak_s,
        warm
          ? `The distillate leaves at up to ${outlet}, warmer than the ${bound} you want.`
          : `The distillate leaves no warmer than ${outlet}.`,
        warm ? 'care' : 'note',
        warm && event ? adviceOf(event, units) : null,
      ),
    );
  }
  return said;
}

function separatorSentences(result: RunResult, units: UnitSystem): VerdictSentence[] {
  const { summary } = result;
  const reached = summary.oilCollected_kg + summary.oilHaze_kg;
  if (!(reached > 0)) return [];
  const overrun = firstOf(result, 'separator-overrun');
  const share = formatQuantity(summary.oilCollected_kg / reached, '1', units, { hint: 'share', decimals: 0 });
  const dissolved = formatQuantity(summary.oilDissolved_kg, 'kg', units, { hint: 'oil' });
  const text = overrun
    ? `The separator is overrun from ${clock(overrun.time_s)}: it catches only ${share} of the oil drops.`
    : `The separator keeps up and catches ${share} of the oil drops; ${dissolved} of oil stays dissolved in the hydrosol.`;
  return [
    plain(
      'separator',
      'separator',
      overrun?.time_s ?? summary.t50_s,
      text,
      overrun ? 'care' : 'note',
      overrun ? adviceOf(overrun, units) : null,
    ),
  ];
}

function costSentences(result: RunResult, units: UnitSystem): VerdictSentence[] {
  const { summary } = result;
  const energy = formatQuantity(summary.energyFuel_J, 'J', units);
  const cost = summary.energyCost + summary.waterCost;
  const price = cost > 0 ? `, ${formatNumber(cost, 2)} with the water at the prices you set` : '';
  const left = formatQuantity(summary.potWaterLeft_kg, 'kg', units, { hint: 'potWaterLeft_kg' });
  const vessel = result.scenario.pot.layout === 'steam' ? 'boiler' : 'pot';
  return [
    plain(
      'run-length',
      'run',
      summary.end_s,
      `The run ends after ${clock(summary.end_s)}${END_WORDS[summary.endReason]}.`,
    ),
    plain('energy', 'heat', null, `It takes ${energy}${price}.`),
    plain('pot-water', 'pot', summary.end_s, `${left} of water is left in the ${vessel}.`),
  ];
}

const END_WORDS: Readonly<Record<RunResult['summary']['endReason'], string>> = {
  duration: '',
  'stop-share': ', when your share of the oil is in',
  'stop-oil-rate': ', when the oil comes too slowly to wait for',
  'stop-distillate': ', when your distillate is in',
  'pot-dry': ', because the pot is dry',
  'over-pressure': ', because the pressure is too high',
  'non-finite': ', because the model broke off',
};

/** Events that a sentence above has already told. */
const TOLD_BY: Readonly<Record<string, readonly EventKind[]>> = {
  'condenser-fails': ['vapour-escapes', 'vapour-held-again'],
  'pot-dry': ['pot-dry'],
  'over-pressure': ['over-pressure'],
  'outlet-temperature': ['outlet-warm'],
  separator: ['separator-overrun'],
};

const rank: Readonly<Record<Severity, number>> = { alarm: 0, care: 1, note: 2 };

function warningsOf(result: RunResult, told: ReadonlySet<EventKind>, units: UnitSystem): VerdictSentence[] {
  const seen = new Set<EventKind>();
  const warnings: RunEvent[] = [];
  for (const event of result.events) {
    if (event.severity === 'note' || told.has(event.kind) || seen.has(event.kind)) continue;
    seen.add(event.kind);
    warnings.push(event);
  }
  return warnings
    .sort((a, b) => rank[a.severity] - rank[b.severity] || a.time_s - b.time_s)
    .map((event) => {
      const { sentence, advice } = eventMessage(event, englishReader(units));
      return plain(event.kind, event.part, event.time_s, sentence, event.severity, advice);
    });
}

/** The whole verdict of a run. `holds` is the length that would hold, once it is known, where the condenser fails. */
export function verdictOf(result: RunResult, units: UnitSystem, holds: LengthThatHolds | null = null): Verdict {
  const lead = leadOf(result, units, holds);
  const paragraphs = [
    oilSentences(result, units),
    [...waterSentences(result, units), ...separatorSentences(result, units)],
    costSentences(result, units),
  ].filter((paragraph) => paragraph.length > 0);
  const sentences = [lead, ...paragraphs.flat()];
  const told = new Set(
    sentences
      .filter(({ severity }) => severity === 'alarm' || severity === 'care')
      .flatMap(({ id }) => TOLD_BY[id] ?? []),
  );
  return { lead, facts: factsOf(result, units), paragraphs, warnings: warningsOf(result, told, units) };
}
