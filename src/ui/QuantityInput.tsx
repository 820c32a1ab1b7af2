/** A number with its unit: takes any unit typed, Enter or leaving commits, Escape gives back, arrows nudge. */
import type { QuantityEntry } from './quantity-entry.ts';

export interface QuantityInputProps {
  readonly id: string;
  readonly entry: QuantityEntry;
  /** Symbol after the number; empty for pure numbers. */
  readonly unit: string;
  /** Ids of the sentences that belong to it. */
  readonly describedBy: string;
  /** Name, where no label element points at the input. */
  readonly name?: string;
  /** Shown while the field is left open. */
  readonly openWords?: string;
}

export function QuantityInput(props: QuantityInputProps) {
  const key = (event: KeyboardEvent) => {
    if (event.key === 'Enter') void props.entry.finish();
    else if (event.key === 'Escape') {
      // Only a field with nothing to give back lets Escape close what it stands in.
      if (props.entry.revert()) event.stopPropagation();
      else return;
    } else if (event.key === 'ArrowUp' || event.key === 'ArrowDown')
      props.entry.nudge(event.key === 'ArrowUp' ? 1 : -1, event.shiftKey);
    else return;
    event.preventDefault();
  };
  return (
    <span class="quantity">
      <input
        id={props.id}
        class="quantity-input"
        type="text"
        inputmode="text"
        autocomplete="off"
        autocapitalize="none"
        spellcheck={false}
        enterkeyhint="done"
        aria-label={props.name}
        aria-describedby={props.describedBy}
        aria-invalid={props.entry.error() === null ? undefined : 'true'}
        placeholder={props.openWords}
        value={props.entry.text()}
        onInput={(event) => props.entry.type(event.currentTarget.value)}
        onBlur={() => void props.entry.finish()}
        onKeyDown={key}
      />
      <span class="quantity-unit" id={`${props.id}-unit`}>
        {props.unit}
      </span>
    </span>
  );
}
