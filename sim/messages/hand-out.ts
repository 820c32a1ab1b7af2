/** The sheet that one takes to the still: sizes, the plan by the minute, what to expect, what to beware of. */
import type { RunEvent, RunResult } from '../run/result.ts';
import type { EnsembleSummary } from '../answers/ensemble/summary.ts';
import { HEADLINE_NAMES, type HeadlineName } from '../answers/ensemble/ensemble.ts';
import { verdictOf } from '../answers/verdict/verdict.ts';
import { isTapFed } from '../geometry/condenser-kind.ts';
import { clockSchedule, eventTimes } from '../run/schedule-value.ts';
import type { Schedule } from '../scenario/knot.ts';
import { handOut, type NamedValue } from './english/hand-out.ts';
import { eventMessage } from './events.ts';
import type { Reader } from './language.ts';
import { partNameMessage } from './parts.ts';
import { quantities } from './quantities.ts';
import { runLengthMessages } from './run-length.ts';
import { hazardMessages, safetyMessages } from './safety.ts';
import { scheduleMessages } from './schedule.ts';
import { section, wholeMessage } from './section.ts';
import { verdictMessages } from './verdict.ts';

export const handOutMessages = section<ReturnType<typeof handOut>>({ en: handOut });

export interface PlanLine {
  readonly time: string;
  /** What to do then, or what will be seen. */
  readonly does: boolean;
  readonly sentence: string;
  readonly isAlarm: boolean;
}

export interface Expected extends NamedValue {
  /** Where 8 of 10 likely runs lie; `null` where it is not known. */
  readonly range: string | null;
}

export interface HandOut {
  readonly sizes: readonly NamedValue[];
  readonly plan: readonly PlanLine[];
  /** Lines of the plan that have no room on the sheet. */
  readonly more: number;
  readonly expected: readonly Expected[];
  readonly lead: string;
  readonly cautions: readonly string[];
}

/** More than this would need a third sheet. */
const MOST_LINES = 16;

const EXPECTED: readonly HeadlineName[] = HEADLINE_NAMES.filter((name) =>
  [
    'oil_mL',
    'firstDrop_s',
    't90_s',
    'hydrosol_kg',
    'distillateWarmest_K',
    'coolantUsed_kg',
    'energyFuel_J',
    'cost',
  ].includes(name),
);

interface Line extends PlanLine {
  readonly at_s: number;
}

function planLines(result: RunResult, reader: Reader): readonly Line[] {
  const { scenario, events, summary } = result;
  const words = handOutMessages(reader);
  const { time } = quantities(reader);
  const { moment } = scheduleMessages(reader);
  const doing = (at_s: number, sentence: string): Line => ({
    at_s,
    time: time(at_s),
    does: true,
    sentence,
    isAlarm: false,
  });
  const seeing = (event: RunEvent): Line => ({
    at_s: event.time_s,
    time: time(event.time_s),
    does: false,
    sentence: eventMessage(event, reader).sentence,
    isAlarm: event.severity === 'alarm',
  });
  /** What counts from an event stands at its time in this run, and says what to wait for. */
  const turning = (plan: Schedule, say: typeof words.heat): readonly Line[] =>
    clockSchedule(plan, eventTimes(summary)).flatMap(({ at_s, value, shape, place }) => {
      const knot = place === null ? undefined : plan[place];
      if (!knot) return [];
      const awaited = knot.after === undefined ? null : moment(knot.at_s, knot.after);
      return doing(at_s, say(value, shape === 'ramp', awaited));
    });
  const { heat, cooling } = scenario;
  const heating =
    heat.control === 'hold-rate' ? [doing(0, words.holdRate(heat.targetRate_kg_s))] : turning(heat.setting, words.heat);
  const tapping = isTapFed(scenario) ? turning(cooling.flow_kg_s, words.tap) : [];
  return [...heating, ...tapping, ...events.map(seeing)]
    .filter(({ at_s }) => at_s <= summary.end_s)
    .sort((a, b) => a.at_s - b.at_s);
}

/** What has to be done and what can hurt comes before what is only to be seen. */
function fitting(lines: readonly Line[]): readonly Line[] {
  if (lines.length <= MOST_LINES) return lines;
  const first = [...lines].sort((a, b) => Number(b.does || b.isAlarm) - Number(a.does || a.isAlarm));
  const kept = new Set(first.slice(0, MOST_LINES));
  return lines.filter((line) => kept.has(line));
}

function expectedOf(result: RunResult, likely: EnsembleSummary | null, reader: Reader): readonly Expected[] {
  const messages = runLengthMessages(reader);
  const { summary, scenario } = result;
  const planned: Partial<Record<HeadlineName, number | null>> = {
    oil_mL: summary.oilCollected_mL,
    firstDrop_s: summary.firstDrop_s,
    t90_s: summary.t90_s,
    hydrosol_kg: summary.hydrosol_kg,
    coolantUsed_kg: summary.coolantUsed_kg,
    energyFuel_J: summary.energyFuel_J,
    cost: summary.energyCost + summary.waterCost,
  };
  const isPriced = scenario.heat.energyPrice_J > 0 || scenario.cooling.waterPrice_m3 > 0;
  return EXPECTED.filter((name) => name !== 'cost' || isPriced).flatMap((name): readonly Expected[] => {
    const title = messages.headline(name);
    if (likely) {
      const { middle, range } = messages.band(name, likely.headline[name], scenario.condenser.length_m);
      return [{ name: title, value: middle, range }];
    }
    const value = planned[name];
    return value === undefined ? [] : [{ name: title, value: messages.headlineValue(name, value), range: null }];
  });
}

/** @param likely the likely runs of this still, where they have been worked out */
export function handOutOf(
  result: RunResult,
  likely: EnsembleSummary | null,
  plant: string | null,
  reader: Reader,
  plantCautions: readonly string[] = [],
): HandOut {
  const words = handOutMessages(reader);
  const safety = safetyMessages(reader);
  const { scenario } = result;
  const lines = planLines(result, reader);
  const plan = fitting(lines);
  return {
    sizes: words.sizes(scenario, plant, partNameMessage(scenario.heat.kind, reader)),
    plan: plan.map(({ time, does, sentence, isAlarm }) => ({ time, does, sentence, isAlarm })),
    more: lines.length - plan.length,
    expected: expectedOf(result, likely, reader),
    lead: wholeMessage(verdictMessages(verdictOf(result), reader).lead),
    cautions: [
      safety.licence,
      ...words.cautions,
      ...safety.always,
      ...hazardMessages(scenario, reader),
      ...plantCautions,
    ],
  };
}
