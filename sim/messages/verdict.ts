/** The verdict on a run in words: each fact with the part and the minute that it comes from. */
import type { Conclusion, ConclusionKind, ConclusionValues } from '../answers/verdict/conclusion.ts';
import type { Tried } from '../answers/verdict/suggestion.ts';
import { isEvent, worstSoFar, type Fact, type Verdict } from '../answers/verdict/verdict.ts';
import { columnAt } from '../run/record.ts';
import type { EventKind, RunEvent, RunResult, Severity } from '../run/result.ts';
import type { ScenarioPart } from '../scenario/scenario.ts';
import { verdict } from './english/verdict.ts';
import { eventMessage } from './events.ts';
import type { Reader } from './language.ts';
import { section } from './section.ts';

export type VerdictMessages = ReturnType<typeof verdict>;

const messagesFor = section<VerdictMessages>({ en: verdict });

/** A fact of the verdict, said. */
export interface SaidFact {
  readonly kind: ConclusionKind | EventKind;
  readonly part: ScenarioPart;
  /** Where in the run to look; `null` where the whole run is meant. */
  readonly time_s: number | null;
  readonly severity: Severity | 'good';
  readonly sentence: string;
  /** What to do about it, in sentences of its own. */
  readonly advice: string | null;
}

export interface SaidVerdict {
  readonly lead: SaidFact;
  readonly briefs: readonly SaidFact[];
  readonly paragraphs: readonly (readonly SaidFact[])[];
  readonly warnings: readonly SaidFact[];
}

function sayConclusion<K extends ConclusionKind>(conclusion: Conclusion<K>, reader: Reader, briefly = false): SaidFact {
  const { kind, values, time_s, part, severity } = conclusion as Omit<Conclusion, 'kind' | 'values'> & {
    readonly kind: K;
    readonly values: ConclusionValues[K];
  };
  const words: VerdictMessages['conclusions'][K] = messagesFor(reader).conclusions[kind];
  const said = { values, time_s };
  const sentence = (briefly && words.brief ? words.brief : words.sentence)(said);
  return { kind, part, time_s, severity, sentence, advice: words.advice?.(said) ?? null };
}

const sayEvent = (event: RunEvent, reader: Reader): SaidFact => {
  const { kind, part, time_s, severity } = event;
  return { kind, part, time_s, severity, ...eventMessage(event, reader) };
};

const sayFact = (fact: Fact, reader: Reader): SaidFact =>
  isEvent(fact) ? sayEvent(fact, reader) : sayConclusion(fact, reader);

/** Every fact of a verdict, said for a reader. */
export const verdictMessages = (facts: Verdict, reader: Reader): SaidVerdict => ({
  lead: sayFact(facts.lead, reader),
  briefs: facts.briefs.map((brief) => sayConclusion(brief, reader, true)),
  paragraphs: facts.paragraphs.map((paragraph) => paragraph.map((fact) => sayConclusion(fact, reader))),
  warnings: facts.warnings.map((warning) => sayEvent(warning, reader)),
});

/** What a run has come to at a moment, in one sentence that speaks of nothing later. */
export function soFarMessage(result: RunResult, time_s: number, reader: Reader): SaidSoFar {
  const worst = worstSoFar(result, time_s);
  const sentence = messagesFor(reader).soFar({
    worst: worst && sayEvent(worst, reader).sentence,
    oil_kg: columnAt(result.record, 'oilCollected_kg', time_s),
    density_kg_m3: result.summary.oilDensity_kg_m3,
    time_s,
  });
  return { sentence, severity: worst?.severity ?? 'good' };
}

export interface SaidSoFar {
  readonly sentence: string;
  readonly severity: Severity | 'good';
}

export interface SaidSuggestion {
  /** On the button. */
  readonly words: string;
  /** What the model saw when it tried. */
  readonly sees: string;
}

/** The one thing worth trying, and what came of it when the model tried. */
export function suggestionMessage(tried: Tried, reader: Reader): SaidSuggestion {
  const { suggestion } = messagesFor(reader);
  const { wish, isQuestion, before, after, lead } = tried;
  const ends = lead.severity === 'alarm' || lead.severity === 'care' ? sayFact(lead, reader).sentence : null;
  return {
    words: (isQuestion ? suggestion.question : suggestion.remedy)(wish),
    sees: suggestion.sees({ before: before.summary, after: after.summary, ends }),
  };
}
