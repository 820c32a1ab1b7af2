/** While a run is under way and another place is open: its time, what comes next, and what rings. */
import { createEffect, Show } from 'solid-js';
import { formatDuration, runSheetMessages, type Reader } from '../../../sim/index.ts';
import { Ringing } from './Ringing.tsx';
import { stillSession } from './session.ts';
import './run-bar.css';

export function RunBar(props: { readonly reader: Reader; readonly isElsewhere: boolean }) {
  const session = stillSession();
  createEffect(() => session.readAs(props.reader));
  const minutes = () => Math.floor(session.elapsed_s() / 60);
  return (
    <Show when={props.isElsewhere && session.run()}>
      <aside class="run-bar screen-only" aria-label="Run under way">
        <p>
          <a href="#at-the-still">At the still: {minutes() === 0 ? '0 min' : formatDuration(60 * minutes())}</a>
          <Show when={session.coming()[0]}>
            {(step) => (
              <>
                {' '}
                {runSheetMessages(props.reader).due(step().at_s - session.elapsed_s())}:{' '}
                {runSheetMessages(props.reader).step(step()).title}
              </>
            )}
          </Show>
        </p>
        <Ringing reader={props.reader} />
      </aside>
    </Show>
  );
}
