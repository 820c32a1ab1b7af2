/** Look anything up: search in plain words or leaf through the topics, then type values into what was found. */
import { debounce } from '@solid-primitives/scheduled';
import { createEffect, createMemo, createSignal, createUniqueId, For, Match, on, Show, Switch } from 'solid-js';
import {
  botanicals,
  constituents,
  findCorrelation,
  searchReference,
  topics,
  type ReferenceItem,
  type UnitSystem,
} from '../../../sim/index.ts';
import { ConstituentSheet, PlantSheet } from './DataSheet.tsx';
import { RelationSheet } from './RelationSheet.tsx';
import { capital, titleOf } from './titles.ts';
import '../analysis.css';
import './reference.css';

export interface ReferenceViewProps {
  /** What is opened, by name; empty for nothing. */
  readonly opened: string;
  readonly units: UnitSystem;
}

const QUIET_ms = 150;
const TRIES = ['surface tension of water', 'film inside the coil', 'vapour pressure of linalool'];

/** What an address names. */
export function itemNamed(name: string): ReferenceItem | null {
  const entry = findCorrelation(name);
  if (entry) return { kind: 'relation', id: name, entry };
  const constituent = constituents.find(({ id }) => id === name);
  if (constituent) return { kind: 'constituent', id: name, constituent };
  const plant = botanicals.find(({ id }) => id === name);
  return plant ? { kind: 'plant', id: name, plant } : null;
}

const linkWords = (item: ReferenceItem): string =>
  item.kind === 'relation'
    ? titleOf(item.entry)
    : item.kind === 'constituent'
      ? `${capital(item.constituent.name)}, oil constituent`
      : `${capital(item.plant.name.value)}, plant`;

export function ReferenceView(props: ReferenceViewProps) {
  const id = createUniqueId();
  const [typed, setTyped] = createSignal('');
  const [asked, setAsked] = createSignal('');
  const askSoon = debounce((words: string) => setAsked(words), QUIET_ms);
  const found = createMemo(() => searchReference(asked()));
  const item = createMemo(() => itemNamed(props.opened));
  const ask = (words: string) => {
    setTyped(words);
    setAsked(words);
  };
  let sheet: HTMLElement | undefined;
  // Whoever follows a link reads on where it leads.
  createEffect(
    on(item, (now) => now && queueMicrotask(() => sheet?.querySelector<HTMLElement>('.reference-title')?.focus())),
  );
  const link = (each: ReferenceItem) => (
    <li>
      <a href={`#reference/${each.id}`} aria-current={each.id === props.opened ? 'true' : undefined}>
        {linkWords(each)}
      </a>
    </li>
  );

  return (
    <div class="answer reference">
      <section class="answer-head">
        <h2>Reference</h2>
        <form
          role="search"
          class="reference-search"
          onSubmit={(event) => {
            event.preventDefault();
            askSoon.clear();
            setAsked(typed());
            const best = searchReference(typed()).items[0];
            if (best) location.hash = `#reference/${best.id}`;
          }}
        >
          <label for={`${id}-words`}>Look up</label>
          <input
            id={`${id}-words`}
            class="text-input"
            type="search"
            autocomplete="off"
            value={typed()}
            onInput={(event) => {
              setTyped(event.currentTarget.value);
              askSoon(event.currentTarget.value);
            }}
          />
        </form>
        <p class="answer-quiet" role="status">
          <Show
            when={asked().trim() !== ''}
            fallback={<>Any property or relation of the model, an oil constituent, a plant. Use plain words.</>}
          >
            <Show when={found().items.length > 0} fallback={<>Nothing here speaks of “{asked()}”. Try fewer words.</>}>
              <Show when={found().readAs}>{(words) => <>Read as “{words()}”. </>}</Show>
              {found().items.length} found, best first.
            </Show>
          </Show>
        </p>
        <Show when={asked().trim() === '' && props.opened === ''}>
          <p class="reference-tries">
            <span>Try:</span>
            <For each={TRIES}>
              {(words) => (
                <button type="button" class="word" onClick={() => ask(words)}>
                  {words}
                </button>
              )}
            </For>
          </p>
        </Show>
      </section>
      <div class="reference-body" classList={{ 'is-open': props.opened !== '' && asked().trim() === '' }}>
        <a class="reference-back" href="#reference">
          All topics
        </a>
        <nav class="reference-found" aria-label="What the reference holds">
          <Show
            when={found().items.length > 0}
            fallback={
              <>
                <details>
                  <summary>Oil constituents</summary>
                  <ul class="reference-list">
                    <For each={constituents}>
                      {(constituent) => link({ kind: 'constituent', id: constituent.id, constituent })}
                    </For>
                  </ul>
                </details>
                <details>
                  <summary>Plants</summary>
                  <ul class="reference-list">
                    <For each={botanicals}>{(plant) => link({ kind: 'plant', id: plant.id, plant })}</For>
                  </ul>
                </details>
                <For each={topics.filter(({ title }) => !title.startsWith('Oil '))}>
                  {({ title, entries }) => (
                    <details>
                      <summary>{title}</summary>
                      <ul class="reference-list">
                        <For each={entries}>{(entry) => link({ kind: 'relation', id: entry.name, entry })}</For>
                      </ul>
                    </details>
                  )}
                </For>
              </>
            }
          >
            <ol class="reference-list">
              <For each={found().items}>{link}</For>
            </ol>
          </Show>
        </nav>
        <section ref={sheet} class="reference-opened" aria-label="What was looked up">
          <Show
            when={item()}
            keyed
            fallback={
              <p class="answer-quiet">
                {props.opened === ''
                  ? 'What you choose opens here.'
                  : `There is no “${props.opened}” in the reference.`}
              </p>
            }
          >
            {(each) => (
              <Switch>
                <Match when={each.kind === 'relation' && each.entry} keyed>
                  {(entry) => <RelationSheet entry={entry} units={props.units} />}
                </Match>
                <Match when={each.kind === 'constituent' && each.constituent} keyed>
                  {(constituent) => <ConstituentSheet constituent={constituent} units={props.units} />}
                </Match>
                <Match when={each.kind === 'plant' && each.plant} keyed>
                  {(plant) => <PlantSheet plant={plant} units={props.units} />}
                </Match>
              </Switch>
            )}
          </Show>
        </section>
      </div>
      <p class="answer-quiet screen-only">
        This page is made from open libraries and fonts; <a href="./notices.txt">their licences</a> come with it.
      </p>
    </div>
  );
}
