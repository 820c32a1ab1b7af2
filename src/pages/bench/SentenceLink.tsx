/** A sentence that leads to the part and the minute it comes from. */
import type { SaidFact, ScenarioPart } from '../../../sim/index.ts';

export interface SentenceLinkProps {
  readonly fact: SaidFact;
  readonly onVisit: (part: ScenarioPart, time_s: number | null) => void;
}

export function SentenceLink(props: SentenceLinkProps) {
  const visit = (event: MouseEvent) => {
    event.preventDefault();
    props.onVisit(props.fact.part, props.fact.time_s);
  };
  return (
    <a class={`verdict-sentence is-${props.fact.severity}`} href="#still" onClick={visit}>
      {props.fact.sentence}
    </a>
  );
}
