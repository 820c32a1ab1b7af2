/** The verdict, read like a paragraph. Every sentence leads to the part and the minute it comes from. */
import { For, Index, Show } from 'solid-js';
import { SentenceLink, type SentenceLinkProps } from './SentenceLink.tsx';
import type { Verdict } from './verdict-sentences.ts';
import './verdict.css';

export interface VerdictPanelProps {
  readonly verdict: Verdict;
  /** Why the numbers are older than the settings, in words; null while they are not. */
  readonly staleBecause: string | null;
  readonly running: boolean;
  readonly cautions: readonly string[];
  readonly onVisit: SentenceLinkProps['onVisit'];
  readonly onUndo: () => void;
}

const SEVERITY_WORDS = { alarm: 'Danger', care: 'Take care', note: '', good: '' } as const;

export function VerdictPanel(props: VerdictPanelProps) {
  return (
    <section class="verdict" aria-labelledby="verdict-title" aria-busy={props.running}>
      <h2 id="verdict-title">What to make of it</h2>
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
      <p class="verdict-lead">
        <SentenceLink sentence={props.verdict.lead} onVisit={props.onVisit} />{' '}
        <Show when={props.verdict.lead.advice}>{(advice) => <span class="verdict-advice">{advice()}</span>}</Show>
      </p>
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
