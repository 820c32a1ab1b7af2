/** The frame of one setting: label, control, sentence, what is allowed, where the default comes from, what is wrong. */
import { Show, type JSX } from 'solid-js';
import './ui.css';

export interface FieldProps {
  /** Id of the control; the texts derive theirs from it. */
  readonly id: string;
  readonly label: string;
  /** `group` for several radio buttons, which need a legend instead of a label. */
  readonly as?: 'single' | 'group';
  /** One plain sentence. */
  readonly says: string;
  /** What is allowed, in a few words; opens to `more`. */
  readonly allowed: string;
  /** Default and its source, and the way back to it. */
  readonly more: JSX.Element;
  /** What it was when the scenario was loaded, where it has been changed since. */
  readonly was: string | null;
  readonly onPutBack: () => void;
  readonly error: string | null;
  readonly note: string | null;
  /** What else can be done with it, in a word or two after the sentence. */
  readonly aside?: JSX.Element;
  readonly children: JSX.Element;
}

/** Ids of the texts that describe a field's control. */
export const describedBy = (id: string): string => `${id}-unit ${id}-says ${id}-said`;

export function Field(props: FieldProps) {
  const body = () => (
    <>
      <div class="field-control">{props.children}</div>
      <div class="field-said" id={`${props.id}-said`}>
        <Show when={props.error}>
          {(words) => (
            <p class="field-error" role="alert">
              {words()}
            </p>
          )}
        </Show>
        <Show when={props.note}>
          {(words) => (
            <p class="field-note" role="status">
              {words()}
            </p>
          )}
        </Show>
      </div>
      <div class="field-text">
        <p class="field-says" id={`${props.id}-says`}>
          {props.says}
        </p>
        {props.aside}
        <Show when={props.was}>
          {(was) => (
            <span class="field-was">
              Was {was()}{' '}
              <button type="button" class="word" onClick={() => props.onPutBack()}>
                put back<span class="visually-hidden"> {props.label}</span>
              </button>
            </span>
          )}
        </Show>
        <details class="field-more">
          <summary>
            <span class="visually-hidden">{props.label}: </span>
            {props.allowed}
          </summary>
          <div class="field-more-body">{props.more}</div>
        </details>
      </div>
    </>
  );
  return (
    <Show
      when={props.as === 'group'}
      fallback={
        <div class="field" classList={{ 'is-changed': props.was !== null }}>
          <label class="field-label" for={props.id}>
            {props.label}
          </label>
          {body()}
        </div>
      }
    >
      <fieldset
        class="field"
        classList={{ 'is-changed': props.was !== null }}
        id={props.id}
        aria-describedby={`${props.id}-says ${props.id}-said`}
      >
        <legend class="field-label">{props.label}</legend>
        {body()}
      </fieldset>
    </Show>
  );
}
