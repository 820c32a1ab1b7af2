/** Something that is on or off, at once. */
import type { JSX } from 'solid-js';
import './ui.css';

export interface ToggleProps {
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly children: JSX.Element;
}

export function Toggle(props: ToggleProps) {
  return (
    <label class="toggle">
      <input
        type="checkbox"
        role="switch"
        checked={props.on}
        onChange={(event) => props.onChange(event.currentTarget.checked)}
      />{' '}
      <span>{props.children}</span>
    </label>
  );
}
