/** The verdict, read like a paragraph. Every sentence leads to the part and the minute it comes from. */
import { For, Index, Show, type JSX } from 'solid-js';
import type { ScenarioPart } from '../../sim/index.ts';
import type { Verdict, VerdictSentence } from './verdict-sentences.ts';
import './verdict.css';

export interface VerdictPanelProps {
  readonly verdict: Verdict;
  /** Why the numbers are older than the settings, in words; null while they are not. */
  readonly staleBecause: string | null;
  readonly running: boolean;
  /** The one thing worth trying next. */
  readonly suggestion: { readonly words: string; readonly act: () => void } | null;
  readonly cautions: readonly string[];
  readonly onVisit: (part: ScenarioPart, time_s: number | null) => void;
  readonly onUndo: () => void;
}

function SentenceLink(props: { readonly sentence: VerdictSentence; readonly onVisit: VerdictPanelProps['onVisit']; readonly children?: JSX.Element }) {
  const visit = (event: MouseEvent) => {
    event.preventDefault();
    props.onVisit(props.sentence.part, props.sentence.time_s);
  };
  return (
    <a class={`verdict-sentence is-${props.sentence.severity}`} href="#still" onClick={visit}>
      {props.children ?? props.sentence.text}
    </a>
  );
}

const SEVERITY_WORDS = { alarm: 'Danger', care: 'Take care', note: '', good: '' } as const;

export function VerdictPanel(props: VerdictPanelProps) {
  return (
    <section class="verdict" aria-label="Verdict" aria-busy={props.running}>
      <Show when={props.staleBecause}>
        {(because) => (
          <div class="verdict-stale" role="alert">
            <p>
              <strong>These numbers are from before your last change.</strong> {because()}
            </p>
            <button type="button" onClick={() => props.onUndo()}>
              Take the change back
            </button>
          </div>
        )}
      </Show>
      <h2 class={`verdict-lead is-${props.verdict.lead.severity}`}>
        <SentenceLink sentence={props.verdict.lead} onVisit={props.onVisit} />
      </h2>
      <Show when={props.verdict.lead.advice}>{(advice) => <p class="verdict-advice">{advice()}</p>}</Show>
      <Index each={props.verdict.paragraphs}>
        {(paragraph) => (
          <p>
            <Index each={paragraph()}>
              {(sentence) => (
                <>
                  <SentenceLink sentence={sentence()} onVisit={props.onVisit} />{' '}
                  <Show when={sentence().advice}>{(advice) => <span class="verdict-advice">{advice()} </span>}</Show>
                </>
              )}
            </Index>
          </p>
        )}
      </Index>
      <Show when={props.suggestion}>
        {(suggestion) => (
          <p class="verdict-try">
            <span>Try this: </span>
            <button type="button" onClick={() => suggestion().act()}>
              {suggestion().words}
            </button>
          </p>
        )}
      </Show>
      <Show when={props.verdict.warnings.length > 0}>
        <h3>Watch out</h3>
        <ul class="verdict-warnings">
          <Index each={props.verdict.warnings}>
            {(warning) => (
              <li class={`is-${warning().severity}`}>
                <span class="verdict-mark">{SEVERITY_WORDS[warning().severity]}: </span>
                <SentenceLink sentence={warning()} onVisit={props.onVisit} />{' '}
                <Show when={warning().advice}>{(advice) => <span class="verdict-advice">{advice()}</span>}</Show>
              </li>
            )}
          </Index>
        </ul>
      </Show>
      <h3>At any still</h3>
      <ul class="verdict-cautions">
        <For each={props.cautions}>{(caution) => <li>{caution}</li>}</For>
      </ul>
    </section>
  );
}
