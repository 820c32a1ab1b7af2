/** A sentence that leads to the part and the minute it comes from. */
import type { ScenarioPart } from '../../../sim/index.ts';
import type { VerdictSentence } from '../../state/verdict-sentences.ts';

export interface SentenceLinkProps {
  readonly sentence: VerdictSentence;
  readonly onVisit: (part: ScenarioPart, time_s: number | null) => void;
}

export function SentenceLink(props: SentenceLinkProps) {
  const visit = (event: MouseEvent) => {
    event.preventDefault();
    props.onVisit(props.sentence.part, props.sentence.time_s);
  };
  return (
    <a class={`verdict-sentence is-${props.sentence.severity}`} href="#still" onClick={visit}>
      {props.sentence.text}
    </a>
  );
}
