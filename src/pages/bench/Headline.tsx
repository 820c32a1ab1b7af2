/** The name of the still, what its run comes to in one sentence, and the next few things to know. */
import { Index, Show } from 'solid-js';
import type { SaidFact, SaidSoFar, ScenarioPart } from '../../../sim/index.ts';
import { Title } from '../parts/Title.tsx';
import { SentenceLink } from './SentenceLink.tsx';

export interface HeadlineProps {
  readonly lead: SaidFact;
  /** What has happened so far, said instead while the run plays. */
  readonly soFar: SaidSoFar | null;
  /** The next few things to know, in few words each. */
  readonly briefs: readonly SaidFact[];
  /** Why the numbers are older than the settings, in words; null while they are not. */
  readonly staleBecause: string | null;
  /** The numbers are of this still, in coarser steps: there is no change to undo. */
  readonly isRough: boolean;
  readonly onUndo: () => void;
  /** Whether the reader may never have been here. */
  readonly isNew: boolean;
  readonly onKnown: () => void;
  readonly onVisit: (part: ScenarioPart, time_s: number | null) => void;
}

export function Headline(props: HeadlineProps) {
  return (
    <section class="headline" classList={{ 'is-stale': props.staleBecause !== null }} aria-label="In one line">
      <div class="headline-top">
        <Title />
        <Show
          when={props.isNew}
          fallback={
            <p class="headline-facts">
              <Index each={props.briefs}>
                {(fact, index) => (
                  <>
                    <Show when={index > 0}> · </Show>
                    <SentenceLink fact={fact()} onVisit={props.onVisit} />
                  </>
                )}
              </Index>
            </p>
          }
        >
          <p class="headline-new screen-only">
            Try a still before you build it
            <span class="wide-only">: turn a control below, or pick a part of the drawing</span>.{' '}
            <button type="button" onClick={() => props.onKnown()}>
              Understood
            </button>
          </p>
        </Show>
      </div>
      <Show
        when={props.staleBecause}
        fallback={
          <p class={`headline-lead is-${(props.soFar ?? props.lead).severity}`}>
            <Show when={props.soFar} fallback={<SentenceLink fact={props.lead} onVisit={props.onVisit} />}>
              {(soFar) => <span class={`verdict-sentence is-${soFar().severity}`}>{soFar().sentence}</span>}
            </Show>
          </p>
        }
      >
        {(because) => (
          <div class="headline-stale" role="alert">
            <strong>These numbers are {props.isRough ? 'of coarser steps' : 'from before your last change'}.</strong>{' '}
            {because()}{' '}
            <Show when={!props.isRough}>
              <button type="button" class="screen-only" onClick={() => props.onUndo()}>
                Undo the change
              </button>
            </Show>
          </div>
        )}
      </Show>
    </section>
  );
}
