/** The reader's own stills: each can be opened, renamed, copied, deleted, and had back as it was before. */
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { fileName, saveJson } from '../state/downloads.ts';
import { DELETED_KEPT_DAYS, MOST_VERSIONS, type Shelf, type ShelfStill } from '../state/shelf.ts';
import { nameOfStill, unreadKept } from '../state/still-names.ts';
import { Dialog } from '../ui/Dialog.tsx';
import { moment } from './moment.ts';
import { ShelfRow } from './ShelfRow.tsx';
import './shelf.css';

export interface ShelfDialogProps {
  readonly open: boolean;
  /** `null` until it is fetched. */
  readonly shelf: Shelf | null;
  /** Id of the still on the bench. */
  readonly onBench: string;
  readonly onClose: () => void;
}

/** With more than these a list is no longer seen at a glance. */
const SEARCHED_FROM = 8;
const DAY_MS = 86_400_000;

const folded = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

function Stills(props: { readonly shelf: Shelf; readonly onBench: string; readonly onClose: () => void }) {
  const [sought, setSought] = createSignal('');
  const [said, setSaid] = createSignal('');
  const [deleted, setDeleted] = createSignal<ShelfStill | null>(null);
  let list: HTMLDivElement | undefined;

  // Where the storage does not answer the page says so.
  onMount(() => void props.shelf.lookAside().catch(() => undefined));
  const all = createMemo(() => props.shelf.stills());
  const own = createMemo(() => all().filter((still) => still.touched && !still.visit && still.deleted_ms === null));
  const visitors = createMemo(() =>
    all().filter(
      ({ id, touched, visit, deleted_ms }) => visit && deleted_ms === null && (touched || id === props.onBench),
    ),
  );
  const gone = createMemo(() => all().filter(({ deleted_ms }) => deleted_ms !== null));
  const found = createMemo(() =>
    own().filter(({ scenario }) => folded(nameOfStill(scenario)).includes(folded(sought().trim()))),
  );

  const open = async (act: Promise<string | null>, name: string) => {
    const problem = await act;
    if (problem === null) props.onClose();
    else setSaid(`“${name}” was not opened, and your work is as it was. ${problem}`);
  };
  const remove = (still: ShelfStill) => {
    props.shelf.setDeleted(still.id, true);
    setDeleted(still);
    setSaid(`“${nameOfStill(still.scenario)}” is deleted.`);
    list?.focus();
  };
  const restore = (still: ShelfStill) => {
    props.shelf.setDeleted(still.id, false);
    setDeleted(null);
    setSaid(`“${nameOfStill(still.scenario)}” is back.`);
    list?.focus();
  };
  const ids = (stills: readonly ShelfStill[]) => stills.map(({ id }) => id);
  /** By id, so that a row stays the same while its still changes. */
  const row = (id: string) => <Show when={all().find((still) => still.id === id)}>{rowOf}</Show>;
  const rowOf = (still: () => ShelfStill) => {
    const name = () => nameOfStill(still().scenario);
    return (
      <ShelfRow
        still={still()}
        isOnBench={still().id === props.onBench}
        versionsOf={props.shelf.versionsOf}
        onOpen={() => void open(props.shelf.open(still().id), name())}
        onGoBack={(version) => void open(props.shelf.goBack(still().id, version), name())}
        onRename={(next) => props.shelf.rename(still().id, next)}
        onCopy={() => {
          props.shelf.copy(still().id);
          setSaid(`“${name()}” is copied.`);
        }}
        onDelete={() => remove(still())}
        onKeep={still().visit ? () => props.shelf.keepVisitor(still().id) : null}
      />
    );
  };

  return (
    <div class="shelf" tabindex="-1" ref={list}>
      <p class="shelf-about">
        Every still that you change is kept on this device. A version is kept when you pause for a minute, open another
        still or leave the page: the last {MOST_VERSIONS} of each still.
      </p>
      <div class="shelf-said" role="status">
        <Show when={said()}>
          <p>{said()}</p>
        </Show>
        <Show when={deleted()}>
          {(still) => (
            <button type="button" onClick={() => restore(still())}>
              Undo
            </button>
          )}
        </Show>
      </div>
      <Show when={own().length > SEARCHED_FROM}>
        <label class="shelf-search">
          <span>Find</span>
          <input
            class="text-input"
            type="search"
            value={sought()}
            onInput={(event) => setSought(event.currentTarget.value)}
          />
        </label>
      </Show>
      <Show
        when={found().length > 0}
        fallback={
          <p class="quiet">
            {own().length > 0
              ? 'No still has this in its name.'
              : 'None yet. Change the still on the bench, and it is here.'}
          </p>
        }
      >
        <ul class="shelf-list" aria-label="My stills">
          <For each={ids(found())}>{row}</For>
        </ul>
      </Show>
      <Show when={visitors().length > 0}>
        <h3>From a link or a file</h3>
        <ul class="shelf-list" aria-label="From a link or a file">
          <For each={ids(visitors())}>{row}</For>
        </ul>
      </Show>
      <Show when={props.shelf.unread().length > 0}>
        <h3>Can’t be read by this version</h3>
        <ul class="shelf-list" aria-label="Can’t be read by this version">
          <For each={props.shelf.unread()}>
            {({ key, value }) => {
              const { words, holds } = unreadKept(key, value);
              return (
                <li class="shelf-row">
                  <p class="shelf-name">{words}</p>
                  <p class="shelf-acts">
                    <button type="button" class="word" onClick={() => saveJson(holds, fileName('json', words))}>
                      Save as a file<span class="visually-hidden">: {words}</span>
                    </button>
                  </p>
                  <p class="shelf-when">It stays as it is. A newer version of Limbeck may open it.</p>
                </li>
              );
            }}
          </For>
        </ul>
      </Show>
      <Show when={gone().length > 0}>
        <details class="shelf-gone">
          <summary>Deleted ({gone().length})</summary>
          <ul class="shelf-list" aria-label="Deleted">
            <For each={gone()}>
              {(still) => (
                <li class="shelf-row">
                  <p class="shelf-name">{nameOfStill(still.scenario)}</p>
                  <p class="shelf-acts">
                    <button type="button" class="word" onClick={() => restore(still)}>
                      Restore
                    </button>
                  </p>
                  <p class="shelf-when">
                    Kept until {moment((still.deleted_ms ?? 0) + DELETED_KEPT_DAYS * DAY_MS, 'day')}
                  </p>
                </li>
              )}
            </For>
          </ul>
        </details>
      </Show>
    </div>
  );
}

export function ShelfDialog(props: ShelfDialogProps) {
  return (
    <Dialog open={props.open} title="My stills" onClose={() => props.onClose()}>
      <Show when={props.open && props.shelf} fallback={<p class="quiet">Fetching your stills…</p>}>
        {(shelf) => <Stills shelf={shelf()} onBench={props.onBench} onClose={() => props.onClose()} />}
      </Show>
    </Dialog>
  );
}
