/** The name of what stands on the bench, which can be changed where it stands. */
import { createSignal, Show } from 'solid-js';
import { useBench } from '../../state/bench.ts';

const LONGEST_TITLE = 120;

export function Title() {
  const bench = useBench();
  const [editing, setEditing] = createSignal(false);
  let abandoned = false;
  const title = () => bench.scenario().name;
  const finish = (typed: string) => {
    const name = typed.trim();
    if (!abandoned && name !== '' && name !== title()) bench.change('name', name);
    abandoned = false;
    setEditing(false);
  };
  return (
    <div class="title">
      <Show
        when={editing()}
        fallback={
          <>
            <h1>{title()}</h1>
            <button type="button" class="header-word screen-only" onClick={() => setEditing(true)}>
              Rename
            </button>
          </>
        }
      >
        <h1 class="visually-hidden">{title()}</h1>
        <input
          ref={(field) => queueMicrotask(() => field.select())}
          class="title-name"
          aria-label="Name of this run"
          maxLength={LONGEST_TITLE}
          value={title()}
          onBlur={(event) => finish(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Escape') abandoned = true;
            if (event.key === 'Escape' || event.key === 'Enter') event.currentTarget.blur();
          }}
        />
      </Show>
    </div>
  );
}
