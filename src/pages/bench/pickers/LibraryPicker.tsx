/** A sheet with the rows of one library and one's own entries: find, compare, pick; where each number comes from. */
import { createMemo, createSignal, createUniqueId, For, onMount, Show, type Component } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import type { UnitSystem } from '../../../../sim/index.ts';
import { Dialog } from '../../../ui/Dialog.tsx';
import type { OwnEntry } from './own-entries.ts';
import { matching, type PickerRow } from './picker-row.ts';
import { provenanceLine } from './provenance-words.ts';
import './pickers.css';

export interface LibraryPickerProps {
  readonly open: boolean;
  /** What one row is, as in `plant`. */
  readonly what: string;
  readonly columns: readonly string[];
  readonly groups: string | null;
  readonly rows: readonly PickerRow[];
  readonly own: readonly OwnEntry[];
  /** More to read of a row. */
  readonly about?: Component<{ readonly id: string; readonly units: UnitSystem }> | undefined;
  readonly units: UnitSystem;
  readonly isInUse: (values: Readonly<Record<string, unknown>>) => boolean;
  /** Takes a pick; a sentence in return says why it can't be used. */
  readonly onPick: (values: Readonly<Record<string, unknown>>) => string | null;
  /** Keeps the present settings under a name; whether that went well. */
  readonly onKeep: (name: string) => boolean;
  readonly onRemove: (id: string) => void;
  readonly onClose: () => void;
}

/** From this many rows on a search is worth its place. */
const SEARCH_FROM = 12;

export function LibraryPicker(props: LibraryPickerProps) {
  const id = createUniqueId();
  const [typed, setTyped] = createSignal('');
  const [group, setGroup] = createSignal('');
  const [refused, setRefused] = createSignal<{ readonly id: string; readonly words: string } | null>(null);
  const [name, setName] = createSignal('');
  const [keepWords, setKeepWords] = createSignal<string | null>(null);
  const groups = createMemo(() => [...new Set(props.rows.map((row) => row.group))]);
  const found = createMemo(() => matching(props.rows, typed(), group()));

  const pick = (rowId: string, values: Readonly<Record<string, unknown>>) => {
    const words = props.onPick(values);
    setRefused(words === null ? null : { id: rowId, words });
    if (words === null) props.onClose();
  };
  const keep = () => {
    const wished = name().trim();
    if (wished === '') setKeepWords('Give it a name first.');
    else if (props.onKeep(wished)) {
      setName('');
      setKeepWords(`Kept as “${wished}” on this device.`);
    } else setKeepWords('This browser could not keep it: its storage is full or blocked.');
  };
  // The row in use is where one starts from; later the list stays where it was scrolled to.
  let list: HTMLDivElement | undefined;
  let shown = false;
  const showIfInUse = (element: HTMLElement, row: PickerRow) =>
    onMount(() => {
      if (shown || !list || !props.isInUse(row.values)) return;
      shown = true;
      list.scrollTop = element.offsetTop - (list.clientHeight - element.offsetHeight) / 2;
    });
  const refusalOf = (rowId: string) => (refused()?.id === rowId ? refused()?.words : undefined);

  return (
    <Dialog open={props.open} title={`Choose a ${props.what}`} onClose={props.onClose}>
      <Show when={props.rows.length >= SEARCH_FROM}>
        <div class="picker-find">
          <label class="picker-search">
            Find{' '}
            <input
              type="search"
              class="text-input"
              autocomplete="off"
              value={typed()}
              onInput={(event) => setTyped(event.currentTarget.value)}
            />
          </label>
          <Show when={props.groups}>
            {(label) => (
              <label>
                {label()}{' '}
                <select onChange={(event) => setGroup(event.currentTarget.value)}>
                  <option value="">any</option>
                  <For each={groups()}>{(each) => <option value={each}>{each}</option>}</For>
                </select>
              </label>
            )}
          </Show>
          <span class="picker-count" role="status">
            {found().length === props.rows.length ? `${found().length}` : `${found().length} of ${props.rows.length}`}
          </span>
        </div>
      </Show>
      <div class="picker-scroll" ref={list} tabindex="0" role="region" aria-label={`Choices of ${props.what}`}>
        <div class="picker-columns" style={{ '--columns': props.columns.length }} aria-hidden="true">
          <span />
          <For each={props.columns}>{(column) => <span class="picker-fact">{column}</span>}</For>
        </div>
        <ul class="picker-rows" style={{ '--columns': props.columns.length }}>
          <For each={props.own}>
            {(entry) => (
              <li class="picker-row">
                <div class="picker-name">
                  <button
                    type="button"
                    class="word"
                    aria-current={props.isInUse(entry.values)}
                    onClick={() => pick(entry.id, entry.values)}
                  >
                    {entry.name}
                  </button>
                  <span class="picker-aside">your own{props.isInUse(entry.values) ? ', in use' : ''}</span>
                  <button type="button" class="word picker-remove" onClick={() => props.onRemove(entry.id)}>
                    remove<span class="visually-hidden"> {entry.name}</span>
                  </button>
                </div>
                <Show when={refusalOf(entry.id)}>
                  {(words) => (
                    <p class="field-error picker-line" role="alert">
                      {words()}
                    </p>
                  )}
                </Show>
              </li>
            )}
          </For>
          <For each={found()}>
            {(row) => (
              <li
                class="picker-row"
                classList={{ 'is-in-use': props.isInUse(row.values) }}
                ref={(element) => showIfInUse(element, row)}
              >
                <div class="picker-name">
                  <button
                    type="button"
                    class="word"
                    aria-current={props.isInUse(row.values)}
                    onClick={() => pick(row.id, row.values)}
                  >
                    {row.name}
                  </button>
                  <span class="picker-aside">
                    {row.aside}
                    {props.isInUse(row.values) ? `${row.aside === '' ? '' : ', '}in use` : ''}
                  </span>
                </div>
                <dl class="picker-facts">
                  <For each={props.columns}>
                    {(column, index) => (
                      <div class="picker-fact">
                        <dt>{column}</dt>
                        <dd>{row.facts[index()]}</dd>
                      </div>
                    )}
                  </For>
                </dl>
                <Show when={row.warning}>
                  {(warning) => <p class="picker-words picker-warning alarm-mark">{warning()}</p>}
                </Show>
                <Show when={row.line !== ''}>
                  <p class="picker-words">{row.line}</p>
                </Show>
                <Show when={props.about}>
                  {(about) => <About of={about()} id={row.id} units={props.units} name={row.name} />}
                </Show>
                <details class="picker-line">
                  <summary>
                    Sources<span class="visually-hidden">: {row.name}</span>
                  </summary>
                  <ul class="picker-origins">
                    <For each={row.origins}>
                      {(origin) => (
                        <li>
                          <b>{origin.what}</b>: <span data-as-printed>{provenanceLine(origin.provenance)}.</span>
                        </li>
                      )}
                    </For>
                  </ul>
                </details>
                <Show when={refusalOf(row.id)}>
                  {(words) => (
                    <p class="field-error picker-line" role="alert">
                      {words()}
                    </p>
                  )}
                </Show>
              </li>
            )}
          </For>
        </ul>
        <Show when={found().length === 0}>
          <p class="picker-none">Nothing here goes by that name.</p>
        </Show>
      </div>
      <form
        class="picker-own"
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <label for={`${id}-name`}>Keep the present settings as your own</label>
        <input
          id={`${id}-name`}
          class="text-input"
          type="text"
          maxlength="60"
          placeholder="name"
          autocomplete="off"
          value={name()}
          onInput={(event) => setName(event.currentTarget.value)}
        />
        <button type="submit">Keep</button>
        <Show when={keepWords()}>
          {(words) => (
            <p class="picker-kept" role="status">
              {words()}
            </p>
          )}
        </Show>
      </form>
    </Dialog>
  );
}

interface AboutProps {
  readonly of: Component<{ readonly id: string; readonly units: UnitSystem }>;
  readonly id: string;
  readonly units: UnitSystem;
  readonly name: string;
}

/** Made when it is first opened. */
function About(props: AboutProps) {
  const [opened, setOpened] = createSignal(false);
  return (
    <details class="picker-line" onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary>
        About this plant<span class="visually-hidden">: {props.name}</span>
      </summary>
      <Show when={opened()}>
        <Dynamic component={props.of} id={props.id} units={props.units} />
      </Show>
    </details>
  );
}
