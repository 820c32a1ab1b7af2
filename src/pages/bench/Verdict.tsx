/** The verdict, read like a paragraph. Every sentence leads to the part and the minute it comes from. */
import { For, Index, Show } from 'solid-js';
import {
  englishReader,
  hazardMessages,
  type SaidFact,
  safetyMessages,
  type SaidVerdict,
  type Scenario,
  type UnitSystem,
  type WorkingId,
} from '../../../sim/index.ts';
import { BotanicalCautions } from './pickers/BotanicalAbout.tsx';
import { SentenceLink, type SentenceLinkProps } from './SentenceLink.tsx';
import { workingOf } from './working-of.ts';
import './verdict.css';

export interface VerdictPanelProps {
  readonly verdict: SaidVerdict;
  readonly running: boolean;
  /** The still that was run. */
  readonly scenario: Scenario;
  readonly units: UnitSystem;
  readonly onVisit: SentenceLinkProps['onVisit'];
  /** Opens the working of a number. */
  readonly onWorking: (topic: WorkingId) => void;
}

/** Keeps the sign on the line of its sentence. */
const WORD_JOINER = '\u2060';

/** Stands behind a sentence whose number can be shown how it came about. */
function HowSo(props: { readonly fact: SaidFact; readonly onWorking: VerdictPanelProps['onWorking'] }) {
  return (
    <Show when={workingOf(props.fact.kind)}>
      {(topic) => (
        <>
          {WORD_JOINER}
          <button
            type="button"
            class="how-so screen-only"
            title="Show the working"
            aria-label={`Show the working of: ${props.fact.sentence}`}
            onClick={() => props.onWorking(topic())}
          >
            <svg viewBox="0 0 12 12" aria-hidden="true">
              <path d="M2 4.2h8M2 7.8h8" />
            </svg>
          </button>
        </>
      )}
    </Show>
  );
}

const SEVERITY_WORDS = { alarm: 'Danger', care: 'Take care', note: '', good: '' } as const;

export function VerdictPanel(props: VerdictPanelProps) {
  const reader = () => englishReader(props.units);
  const safety = () => safetyMessages(reader());
  return (
    <section class="verdict" aria-labelledby="verdict-title" aria-busy={props.running}>
      <h2 id="verdict-title">What this run tells you</h2>
      <div class="verdict-columns">
        <p class="verdict-lead">
          <SentenceLink fact={props.verdict.lead} onVisit={props.onVisit} />
          <HowSo fact={props.verdict.lead} onWorking={props.onWorking} />{' '}
          <Show when={props.verdict.lead.advice}>{(advice) => <span class="verdict-advice">{advice()}</span>}</Show>
        </p>
        <Index each={props.verdict.paragraphs}>
          {(paragraph) => (
            <p>
              <Index each={paragraph()}>
                {(sentence) => (
                  // One element a fact: a loose row of nodes is taken out and put back when the run changes, and with it the focus.
                  <span>
                    <SentenceLink fact={sentence()} onVisit={props.onVisit} />
                    <HowSo fact={sentence()} onWorking={props.onWorking} />{' '}
                    <Show when={sentence().advice}>{(advice) => <span class="verdict-advice">{advice()} </span>}</Show>
                  </span>
                )}
              </Index>
            </p>
          )}
        </Index>
        <Show when={props.verdict.warnings.length > 0}>
          <div>
            <h3>Watch out</h3>
            <ul class="verdict-warnings">
              <Index each={props.verdict.warnings}>
                {(warning) => (
                  <li class={`is-${warning().severity}`}>
                    <span class="verdict-mark">{SEVERITY_WORDS[warning().severity]}: </span>
                    <SentenceLink fact={warning()} onVisit={props.onVisit} />{' '}
                    <Show when={warning().advice}>{(advice) => <span class="verdict-advice">{advice()}</span>}</Show>
                  </li>
                )}
              </Index>
            </ul>
          </div>
        </Show>
        <div>
          <h3>{safety().heading}</h3>
          <ul class="verdict-cautions">
            <For each={[...safety().always, ...hazardMessages(props.scenario, reader())]}>
              {(caution) => <li>{caution}</li>}
            </For>
          </ul>
          <BotanicalCautions class="verdict-cautions" scenario={props.scenario} units={props.units} />
        </div>
      </div>
    </section>
  );
}
