/** The groups of the class: whose turn it is, their names, their dashes. */
import { createSignal, For, Show } from 'solid-js';
import { CheckMark } from '../parts/marks.tsx';
import { classRoom, MOST_GROUPS } from './commitments.ts';

const LONGEST_NAME = 20;

/** A short stroke in the colour and dash of a group. */
export function GroupDash(props: { readonly id: number }) {
  return (
    <svg class={`group-dash is-group-${props.id}`} viewBox="0 0 40 8" aria-hidden="true">
      <path d="M1,4H39" />
    </svg>
  );
}

export function GroupBar(props: { readonly committed: (group: number) => boolean }) {
  const [naming, setNaming] = createSignal(false);
  return (
    <div class="groups">
      <Show
        when={classRoom.groups().length > 1}
        fallback={
          <p class="groups-one">
            <GroupDash id={classRoom.groups()[0]?.id ?? 0} /> {classRoom.groups()[0]?.name}
          </p>
        }
      >
        <fieldset class="groups-choice">
          <legend class="visually-hidden">Whose turn it is</legend>
          <For each={classRoom.groups()}>
            {(group) => (
              <label class="group-name" classList={{ 'is-on': classRoom.active() === group.id }}>
                <input
                  type="radio"
                  name="group"
                  checked={classRoom.active() === group.id}
                  onChange={() => classRoom.setActive(group.id)}
                />
                <GroupDash id={group.id} /> {group.name}
                <Show when={props.committed(group.id)}>
                  <span class="group-done">
                    {' '}
                    <CheckMark />
                    <span class="visually-hidden"> has answered</span>
                  </span>
                </Show>
              </label>
            )}
          </For>
        </fieldset>
      </Show>
      <button type="button" class="group-word" aria-expanded={naming()} onClick={() => setNaming(!naming())}>
        Groups
      </button>
      <Show when={naming()}>
        <div class="groups-names">
          <For each={classRoom.groups().map(({ id }) => id)}>
            {(id) => {
              const name = () => classRoom.groups().find((group) => group.id === id)?.name ?? '';
              return (
                <span class="groups-naming">
                  <GroupDash id={id} />
                  <input
                    class="text-input"
                    aria-label="Name of the group"
                    maxLength={LONGEST_NAME}
                    value={name()}
                    onInput={(event) => classRoom.rename(id, event.currentTarget.value)}
                  />
                  <Show when={classRoom.groups().length > 1}>
                    <button type="button" aria-label={`Delete ${name()}`} onClick={() => classRoom.removeGroup(id)}>
                      Delete
                    </button>
                  </Show>
                </span>
              );
            }}
          </For>
          <Show when={classRoom.groups().length < MOST_GROUPS}>
            <button type="button" onClick={() => classRoom.addGroup()}>
              Add a group
            </button>
          </Show>
        </div>
      </Show>
    </div>
  );
}
