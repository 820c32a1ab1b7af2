/** The verdict on a run in words: each fact with the part and the minute that it comes from. */
import type { Conclusion, ConclusionKind, ConclusionValues } from '../answers/verdict/conclusion.ts';
import type { Suggestion } from '../answers/verdict/suggestion.ts';
import { isEvent, type Fact, type Verdict } from '../answers/verdict/verdict.ts';
import type { EventKind, RunEvent, Severity } from '../run/result.ts';
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

/** The one thing worth trying, as words on a button. */
export function suggestionMessage<K extends Suggestion['kind']>(
  wish: Extract<Suggestion, { readonly kind: K }>,
  reader: Reader,
): string {
  const kind: K = wish.kind;
  return messagesFor(reader).suggestions[kind](wish);
}
