/** A labelled number with its unit and, when it can't be taken, the reason beside it. */
import { createUniqueId, Show } from 'solid-js';
import { displayUnit, priceUnit, type Currency, type UnitSystem } from '../../sim/index.ts';
import { createQuantityEntry } from './quantity-entry.ts';
import { QuantityInput } from './QuantityInput.tsx';
import './ui.css';

export interface QuantityFieldProps {
  readonly label: string;
  /** The label is read out but not shown. */
  readonly labelHidden?: boolean;
  readonly class?: string;
  /** SI value; `null` where it is left open. */
  readonly value: number | null;
  readonly unit: string;
  /** Path of the field or kind of the quantity, for its shown unit. */
  readonly hint?: string;
  readonly system: UnitSystem;
  /** Of a price: what it is in. */
  readonly currency?: Currency | null;
  readonly min?: number;
  readonly max?: number;
  readonly integer?: boolean;
  /** A number that is typed counts even where it is the one that stands there. */
  readonly takesSame?: boolean;
  /** The field may be left open; said when it is. */
  readonly onClear?: () => void;
  /** Takes the number in SI; a sentence in return says why it was not taken. */
  readonly onCommit: (value: number, nudge: boolean) => string | null | undefined | void;
}

export function QuantityField(props: QuantityFieldProps) {
  const id = createUniqueId();
  const entry = createQuantityEntry({
    get value() {
      return props.value;
    },
    get asked() {
      return {
        title: props.label,
        unit: props.unit,
        ...(props.hint === undefined ? {} : { path: props.hint }),
        ...(props.min === undefined ? {} : { min: props.min }),
        ...(props.max === undefined ? {} : { max: props.max }),
        ...(props.integer === true ? { kind: 'integer' } : {}),
        nullable: props.onClear !== undefined,
      };
    },
    get system() {
      return props.system;
    },
    get takesSame() {
      return props.takesSame;
    },
    onCommit: (value, nudge) => (value === null ? props.onClear?.() : props.onCommit(value, nudge)),
  });
  return (
    <div class={`quantity-field ${props.class ?? ''}`}>
      <label class={props.labelHidden === true ? 'visually-hidden' : 'quantity-label'} for={id}>
        {props.label}
      </label>
      <QuantityInput
        id={id}
        entry={entry}
        unit={priceUnit(displayUnit(props.unit, props.system, props.hint).label, props.currency ?? null)}
        describedBy={`${id}-unit ${id}-said`}
      />
      <span id={`${id}-said`} class="quantity-said">
        <Show when={entry.error() ?? entry.note()}>
          {(words) => (
            <span
              class={entry.error() === null ? 'field-note' : 'field-error'}
              role={entry.error() === null ? 'status' : 'alert'}
            >
              {words()}
            </span>
          )}
        </Show>
      </span>
    </div>
  );
}
