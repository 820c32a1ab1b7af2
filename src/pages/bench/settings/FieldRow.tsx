/** One scenario field as a row, by what kind of value it holds. */
import { createMemo, createSignal, createUniqueId, Match, Show, Switch } from 'solid-js';
import { type FieldInfo, type Schedule, displayUnit, priceUnit } from '../../../../sim/index.ts';
import { valueAtPath } from '../../../state/field-path.ts';
import { ChoiceInput, MOST_RADIOS } from '../../../ui/ChoiceInput.tsx';
import { describedBy } from '../../../ui/Field.tsx';
import { createQuantityEntry } from '../../../ui/quantity-entry.ts';
import { QuantityInput } from '../../../ui/QuantityInput.tsx';
import { CompositionEditor } from './CompositionEditor.tsx';
import { FieldFrame } from './FieldFrame.tsx';
import { valueWords } from './field-values.ts';
import { IceEditor } from './IceEditor.tsx';
import { choiceWords } from './part-words.ts';
import { scheduleWords } from './schedule-words.ts';
import { FUEL_PRICE, fuelPriceField } from './fuel-price.ts';
import { whatGoesAlong } from './goes-along.ts';
import type { SettingsContext } from './settings-context.ts';

export interface FieldRowProps {
  readonly field: FieldInfo;
  readonly context: SettingsContext;
}

/** A number, or the single setting of a schedule that does not change. */
function NumberRow(
  props: FieldRowProps & { readonly path: string; readonly withSchedule: boolean; readonly times?: number },
) {
  const id = createUniqueId();
  const [refused, setRefused] = createSignal<string | null>(null);
  const [also, setAlso] = createSignal<string | null>(null);
  const entry = createQuantityEntry({
    get value() {
      const value = valueAtPath(props.context.scenario, props.path) as number | null;
      return value === null ? null : value * (props.times ?? 1);
    },
    get asked() {
      return props.field;
    },
    get system() {
      return props.context.units;
    },
    onCommit: (value, nudge) => {
      setRefused(null);
      const stored = value === null ? null : value / (props.times ?? 1);
      const along = whatGoesAlong(props.path, stored, props.context.scenario);
      const words = props.context.editMany(along?.values ?? { [props.path]: stored }, nudge ? props.path : undefined);
      setAlso(words === null ? (along?.says ?? null) : null);
      return words;
    },
  });
  const set = (value: unknown) => {
    entry.revert();
    setRefused(props.context.edit(props.field.path, value));
  };
  return (
    <FieldFrame
      {...props}
      times={props.times ?? 1}
      id={id}
      error={entry.error() ?? refused()}
      note={entry.note() ?? also()}
      onSet={set}
      aside={
        <Show when={props.withSchedule}>
          <button type="button" class="word" onClick={() => props.context.editSchedule(props.field.path)}>
            Change it over time<span class="visually-hidden">: {props.field.title}</span>
          </button>
        </Show>
      }
    >
      <QuantityInput
        id={id}
        entry={entry}
        unit={priceUnit(
          displayUnit(props.field.unit, props.context.units, props.field.path).label,
          props.context.currency,
        )}
        describedBy={describedBy(id)}
        openWords={props.field.nullable ? 'open' : ''}
      />
    </FieldFrame>
  );
}

function ScheduleRow(props: FieldRowProps) {
  const id = createUniqueId();
  const [refused, setRefused] = createSignal<string | null>(null);
  const knots = () => valueAtPath(props.context.scenario, props.field.path) as Schedule;
  return (
    <Show
      when={knots().length > 1}
      fallback={<NumberRow {...props} path={`${props.field.path}.0.value`} withSchedule />}
    >
      <FieldFrame
        {...props}
        as="group"
        id={id}
        error={refused()}
        note={null}
        onSet={(value) => setRefused(props.context.edit(props.field.path, value))}
      >
        <p>{scheduleWords(knots(), props.field, props.context.units)}.</p>
        <div class="settings-schedule">
          <button type="button" onClick={() => props.context.editSchedule(props.field.path)}>
            Edit over time<span class="visually-hidden">: {props.field.title}</span>
          </button>
          <button
            type="button"
            class="word"
            onClick={() => setRefused(props.context.edit(props.field.path, knots().slice(0, 1)))}
          >
            hold the first setting<span class="visually-hidden"> of {props.field.title}</span>
          </button>
        </div>
      </FieldFrame>
    </Show>
  );
}

function ChoiceRow(props: FieldRowProps) {
  const id = createUniqueId();
  const [refused, setRefused] = createSignal<string | null>(null);
  const [note, setNote] = createSignal<string | null>(null);
  const options = () =>
    (props.field.options ?? []).map((value) => ({ value, words: choiceWords(props.field.path, value) }));
  const set = (value: unknown) => {
    const along = whatGoesAlong(props.field.path, value, props.context.scenario);
    const words = along === null ? props.context.edit(props.field.path, value) : props.context.editMany(along.values);
    setRefused(words);
    setNote(words === null ? (along?.says ?? null) : null);
  };
  return (
    <FieldFrame
      {...props}
      as={options().length <= MOST_RADIOS ? 'group' : 'single'}
      id={id}
      error={refused()}
      note={note()}
      onSet={set}
    >
      <ChoiceInput
        id={id}
        options={options()}
        value={valueAtPath(props.context.scenario, props.field.path) as string}
        describedBy={describedBy(id)}
        onChoose={set}
      />
    </FieldFrame>
  );
}

function TextRow(props: FieldRowProps) {
  const id = createUniqueId();
  const [refused, setRefused] = createSignal<string | null>(null);
  const value = () => valueAtPath(props.context.scenario, props.field.path) as string;
  const set = (text: unknown) => setRefused(props.context.edit(props.field.path, text));
  return (
    <FieldFrame {...props} id={id} error={refused()} note={null} onSet={set}>
      <Show
        when={props.field.path === 'note'}
        fallback={
          <input
            id={id}
            class="text-input"
            type="text"
            autocomplete="off"
            aria-describedby={describedBy(id)}
            value={value()}
            onChange={(event) => set(event.currentTarget.value)}
          />
        }
      >
        <textarea
          id={id}
          class="text-input"
          rows={3}
          aria-describedby={describedBy(id)}
          value={value()}
          onChange={(event) => set(event.currentTarget.value)}
        />
      </Show>
    </FieldFrame>
  );
}

/** The plant is picked from the library, beside the heading; here it is named. */
function PlantRow(props: FieldRowProps) {
  const id = createUniqueId();
  return (
    <FieldFrame
      {...props}
      as="group"
      id={id}
      error={null}
      note={null}
      onSet={(value) => props.context.edit(props.field.path, value)}
    >
      {valueWords(valueAtPath(props.context.scenario, props.field.path), props.field, props.context.units, 'alone')}
    </FieldFrame>
  );
}

function ListRow(props: FieldRowProps) {
  const id = createUniqueId();
  const [refused, setRefused] = createSignal<string | null>(null);
  const set = (value: unknown) => setRefused(props.context.edit(props.field.path, value));
  return (
    <FieldFrame {...props} as="group" id={id} error={refused()} note={null} onSet={set}>
      <Show
        when={props.field.path === 'cooling.ice'}
        fallback={
          <CompositionEditor
            rows={props.context.scenario.charge.composition}
            units={props.context.units}
            onChange={set}
          />
        }
      >
        <IceEditor lots={props.context.scenario.cooling.ice} units={props.context.units} onChange={set} />
      </Show>
    </FieldFrame>
  );
}

/** The price of gas or wood is typed by weight, as it is sold. */
function FuelPriceRow(props: FieldRowProps) {
  const shown = createMemo(() => fuelPriceField(props.field, props.context.scenario, props.context.units));
  return (
    <NumberRow
      context={props.context}
      field={shown().field}
      times={shown().times}
      path={props.field.path}
      withSchedule={false}
    />
  );
}

export function FieldRow(props: FieldRowProps) {
  return (
    <Switch fallback={<NumberRow {...props} path={props.field.path} withSchedule={false} />}>
      <Match when={props.field.path === 'charge.botanical'}>
        <PlantRow {...props} />
      </Match>
      <Match when={props.field.path === FUEL_PRICE}>
        <FuelPriceRow {...props} />
      </Match>
      <Match when={props.field.kind === 'schedule'}>
        <ScheduleRow {...props} />
      </Match>
      <Match when={props.field.kind === 'choice'}>
        <ChoiceRow {...props} />
      </Match>
      <Match when={props.field.kind === 'text'}>
        <TextRow {...props} />
      </Match>
      <Match when={props.field.kind === 'list'}>
        <ListRow {...props} />
      </Match>
    </Switch>
  );
}
