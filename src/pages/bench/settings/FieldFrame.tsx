/** The frame of a scenario field: its words from the schema, what it was when loaded, and the way back to the default. */
import { Show, type JSX } from 'solid-js';
import { englishReader, formatRange, problemMessage, type FieldInfo } from '../../../../sim/index.ts';
import { valueAtPath } from '../../../state/field-path.ts';
import { Field } from '../../../ui/Field.tsx';
import { defaultOf, isSame, valueWords } from './field-values.ts';
import type { SettingsContext } from './settings-context.ts';

export interface FieldFrameProps {
  readonly id: string;
  readonly field: FieldInfo;
  readonly context: SettingsContext;
  readonly as?: 'single' | 'group';
  readonly error: string | null;
  readonly note: string | null;
  /** Takes the way back; rows that must change more than the field give their own. */
  readonly onSet: (value: unknown) => void;
  readonly aside?: JSX.Element;
  /** What is shown for one of what is stored, where that is not one. */
  readonly times?: number;
  readonly children: JSX.Element;
}

/** Sentences that say it better where a picker stands beside the field. */
const SAYS_HERE: Readonly<Record<string, string>> = {
  'charge.botanical': 'Picked from the library; its figures fill the fields below and may be changed.',
};

export function FieldFrame(props: FieldFrameProps) {
  const value = () => valueAtPath(props.context.scenario, props.field.path);
  const loaded = () => valueAtPath(props.context.loaded, props.field.path);
  const standard = () => defaultOf(props.field, props.context.scenario);
  const words = (what: unknown) =>
    valueWords(typeof what === 'number' ? what * (props.times ?? 1) : what, props.field, props.context.units);
  const ownProblem = () => {
    const problem = props.context.problems.find(
      ({ path }) => path === props.field.path || path.startsWith(`${props.field.path}.`),
    );
    return problem ? problemMessage(problem, englishReader(props.context.units)) : null;
  };
  const allowed = () => {
    const { min, max, unit, path, nullable } = props.field;
    if (min === undefined || max === undefined) return `by default ${words(standard())}`;
    return formatRange(min, max, unit, props.context.units, path) + (nullable ? ', or empty' : '');
  };
  return (
    <Field
      id={props.id}
      label={props.field.title}
      as={props.as ?? 'single'}
      says={SAYS_HERE[props.field.path] ?? props.field.says}
      allowed={allowed()}
      was={isSame(value(), loaded()) ? null : words(loaded())}
      onPutBack={() => props.onSet(loaded())}
      error={props.error ?? ownProblem()}
      note={props.note}
      aside={props.aside}
      more={
        <>
          <p>
            Default {words(standard())}
            <Show when={props.field.source !== ''}>
              : <span data-as-printed>{props.field.source}</span>
            </Show>
            .
          </p>
          <Show when={!isSame(value(), standard())}>
            <button type="button" onClick={() => props.onSet(standard())}>
              Back to the default
              <span class="visually-hidden"> of {props.field.title}</span>
            </button>
          </Show>
        </>
      }
    >
      {props.children}
    </Field>
  );
}
