/** One still of the shelf. */
import { createEffect, createSignal, For, on, Show } from 'solid-js';
import type { ShelfStill, Version } from '../state/shelf.ts';
import { LONGEST_NAME, nameOfStill } from '../state/still-names.ts';
import { moment } from './moment.ts';

export interface ShelfRowProps {
  readonly still: ShelfStill;
  readonly isOnBench: boolean;
  readonly versionsOf: (id: string) => Promise<readonly Version[]>;
  readonly onOpen: () => void;
  readonly onGoBack: (version: Version) => void;
  readonly onRename: (name: string) => void;
  readonly onCopy: () => void;
  readonly onDelete: () => void;
  /** Makes it the reader's own, where it is not. */
  readonly onKeep: (() => void) | null;
}

function Versions(props: { readonly versions: readonly Version[]; readonly onGoBack: (version: Version) => void }) {
  return (
    <Show when={props.versions.length > 0} fallback={<p class="quiet">No earlier version yet.</p>}>
      <ul class="shelf-versions">
        <For each={props.versions}>
          {(version) => (
            <li>
              <span>{moment(version.made_ms)}</span>
              <button type="button" class="word" onClick={() => props.onGoBack(version)}>
                Go back to this<span class="visually-hidden"> version of {moment(version.made_ms)}</span>
              </button>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}

export function ShelfRow(props: ShelfRowProps) {
  const [naming, setNaming] = createSignal(false);
  const [unfolded, setUnfolded] = createSignal(false);
  /** No resource: the sheet would leave the page while that is read. */
  const [versions, setVersions] = createSignal<readonly Version[] | null>(null);
  createEffect(
    on([unfolded, () => props.still], ([isUnfolded, { id }]) => {
      if (isUnfolded) void props.versionsOf(id).then(setVersions, () => setVersions([]));
    }),
  );
  const name = () => nameOfStill(props.still.scenario);
  let renaming!: HTMLButtonElement;
  let abandoned = false;
  const finish = (typed: string) => {
    const next = typed.trim();
    if (!abandoned && next !== '' && next !== name()) props.onRename(next);
    abandoned = false;
    setNaming(false);
  };

  return (
    <li class="shelf-row">
      <p class="shelf-name">
        <Show
          when={naming()}
          fallback={
            <button type="button" class="word" onClick={() => props.onOpen()}>
              <span class="visually-hidden">Open </span>
              {name()}
            </button>
          }
        >
          <input
            ref={(field) => queueMicrotask(() => field.select())}
            class="text-input"
            aria-label="Name of this still"
            maxLength={LONGEST_NAME}
            value={name()}
            onBlur={(event) => finish(event.currentTarget.value)}
            onKeyDown={(event) => {
              if (event.key !== 'Escape' && event.key !== 'Enter') return;
              // Escape leaves the field, not the sheet.
              event.preventDefault();
              event.stopPropagation();
              abandoned = event.key === 'Escape';
              event.currentTarget.blur();
              renaming.focus();
            }}
          />
        </Show>
      </p>
      <p class="shelf-acts">
        <Show when={props.onKeep}>
          {(keep) => (
            <button type="button" class="word" onClick={() => keep()()}>
              Keep as mine
            </button>
          )}
        </Show>
        <button ref={renaming} type="button" class="word" onClick={() => setNaming(true)}>
          Rename<span class="visually-hidden"> {name()}</span>
        </button>
        <button type="button" class="word" onClick={() => props.onCopy()}>
          Copy<span class="visually-hidden"> {name()}</span>
        </button>
        <button type="button" class="word" aria-expanded={unfolded()} onClick={() => setUnfolded(!unfolded())}>
          Versions<span class="visually-hidden"> of {name()}</span>
        </button>
        <Show when={!props.isOnBench}>
          <button type="button" class="word" onClick={() => props.onDelete()}>
            Delete<span class="visually-hidden"> {name()}</span>
          </button>
        </Show>
      </p>
      <p class="shelf-when">
        Changed {moment(props.still.changed_ms)}
        {props.isOnBench ? ' · on the bench now' : ''}
      </p>
      <Show when={unfolded() && versions()}>
        {(all) => <Versions versions={all()} onGoBack={(version) => props.onGoBack(version)} />}
      </Show>
    </li>
  );
}
