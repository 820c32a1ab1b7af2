/** One equation, typeset. */
import katex from 'katex';
import 'katex/dist/katex.min.css';
import './formula.css';
import { createEffect } from 'solid-js';

export interface FormulaProps {
  readonly tex: string;
  /** On a line of its own; a long one scrolls sideways. */
  readonly display?: boolean;
}

export function Formula(props: FormulaProps) {
  let element: HTMLElement | undefined;
  createEffect(() => {
    if (!element) return;
    katex.render(props.tex, element, {
      displayMode: props.display === true,
      throwOnError: false,
      strict: 'ignore',
      output: 'htmlAndMathml',
    });
  });
  return (
    <span
      ref={element}
      class={props.display === true ? 'formula is-display' : 'formula'}
      tabindex={props.display === true ? 0 : undefined}
      role={props.display === true ? 'group' : undefined}
      aria-label={props.display === true ? 'Equation' : undefined}
    />
  );
}
