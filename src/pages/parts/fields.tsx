/** Rows of a form: a number of a kept record, a line of text, one of several choices. */
import { createMemo, createUniqueId, For, type Accessor } from 'solid-js';
import type { Currency, UnitSystem } from '../../../sim/index.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';

type NumberKey<T> = { [K in keyof T]: T[K] extends number ? K : never }[keyof T] & string;

export interface AmountProps<T> {
  readonly of: NumberKey<T>;
  readonly label: string;
  readonly units: UnitSystem;
  /** SI; a pure number where it is left out. */
  readonly unit?: string;
  readonly hint?: string;
  readonly min: number;
  readonly max: number;
  readonly integer?: boolean;
  readonly currency?: Currency | null;
  /** A sentence says why a number is not taken. */
  readonly check?: (value: number) => string | null;
}

/** A number of a record, which changes its own. */
export function AmountRow<T>(
  props: AmountProps<T> & { readonly now: T; readonly change: (changed: Partial<T>) => void },
) {
  // The record is another one whenever anything of it changes.
  const value = createMemo(() => props.now[props.of] as number);
  return (
    <QuantityField
      label={props.label}
      value={value()}
      unit={props.unit ?? '1'}
      {...(props.hint === undefined ? {} : { hint: props.hint })}
      {...(props.currency === undefined ? {} : { currency: props.currency })}
      integer={props.integer === true}
      min={props.min}
      max={props.max}
      system={props.units}
      onCommit={(value) => {
        const refused = props.check?.(value) ?? null;
        if (refused === null) props.change({ [props.of]: value } as unknown as Partial<T>);
        return refused;
      }}
    />
  );
}

/** The same for a record that is kept. */
export const amountOf =
  <T,>(now: Accessor<T>, change: (changed: Partial<T>) => void) =>
  (props: AmountProps<T>) => <AmountRow {...props} now={now()} change={change} />;

export interface TextRowProps {
  readonly label: string;
  readonly value: string;
  readonly longest?: number;
  readonly type?: 'text' | 'date';
  readonly class?: string;
  readonly onType: (text: string) => void;
}

export function TextRow(props: TextRowProps) {
  return (
    <label class={`answer-choice ${props.class ?? ''}`}>
      <span>{props.label}</span>
      <input
        class="text-input"
        type={props.type ?? 'text'}
        autocomplete="off"
        maxLength={props.longest ?? 400}
        value={props.value}
        onInput={(event) => props.onType(event.currentTarget.value)}
      />
    </label>
  );
}

export interface ChoiceRowProps<T> {
  readonly label: string;
  readonly value: T;
  readonly options: readonly { readonly value: T; readonly words: string }[];
  readonly onChoose: (value: T) => void;
}

export function ChoiceRow<T extends string | number>(props: ChoiceRowProps<T>) {
  return (
    <label class="answer-choice">
      <span>{props.label}</span>
      <select
        onChange={(event) => {
          const chosen = props.options[event.currentTarget.selectedIndex];
          if (chosen) props.onChoose(chosen.value);
        }}
      >
        <For each={props.options}>
          {(option) => (
            <option value={String(option.value)} selected={option.value === props.value}>
              {option.words}
            </option>
          )}
        </For>
      </select>
    </label>
  );
}

/** The same, each choice in sight. */
export function RadioRow<T extends string>(props: ChoiceRowProps<T> & { readonly class?: string }) {
  const name = createUniqueId();
  return (
    <fieldset class={`choice-radios ${props.class ?? ''}`}>
      <legend class="visually-hidden">{props.label}</legend>
      <For each={props.options}>
        {(option) => (
          <label class="choice-radio">
            <input
              type="radio"
              name={name}
              checked={option.value === props.value}
              onChange={() => props.onChoose(option.value)}
            />{' '}
            {option.words}
          </label>
        )}
      </For>
    </fieldset>
  );
}
