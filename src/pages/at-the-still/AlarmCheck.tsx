/** The alarms tried beforehand, and in plain words what this device can and cannot do. */
import { createSignal, Show } from 'solid-js';
import { canBuzz, canSound, readySound, ring } from './alarm-sounds.ts';
import { askToNotify, awake, canNotify, canStayAwake, mayNotify } from './device.ts';

export function AlarmCheck() {
  const [sounds, setSounds] = createSignal<boolean | null>(null);
  const attempt = async (kind: 'notice' | 'alarm') => {
    setSounds(await readySound());
    ring(kind);
  };
  return (
    <section class="alarm-check screen-only" aria-labelledby="alarm-check-title">
      <h3 id="alarm-check-title">Alarms</h3>
      <p>
        Two sounds: a soft one when something is due, a hard one for danger. Try both now, with the volume turned up.
      </p>
      <div class="answer-tools">
        <button type="button" class="tall" onClick={() => void attempt('notice')}>
          Try the soft one
        </button>
        <button type="button" class="tall" onClick={() => void attempt('alarm')}>
          Try the hard one
        </button>
        <Show when={canNotify() && !mayNotify()}>
          <button type="button" class="tall" onClick={() => void askToNotify()}>
            Allow notifications
          </button>
        </Show>
      </div>
      <ul class="alarm-can">
        <li>
          Sound:{' '}
          {!canSound()
            ? 'this browser makes none. Use a kitchen timer.'
            : sounds() === false
              ? 'this browser held it back. Press again, or use a kitchen timer.'
              : 'works while this page is open. Check that the device is not muted.'}
        </li>
        <li>Vibration: {canBuzz() ? 'works where the device has it switched on.' : 'not on this device.'}</li>
        <li>
          Notifications:{' '}
          {!canNotify()
            ? 'not in this browser.'
            : mayNotify()
              ? 'allowed.'
              : 'not allowed yet. The page still sounds without.'}
        </li>
        <li>
          Screen:{' '}
          {!canStayAwake()
            ? 'this device does not let a page keep it on. Set its screen to stay on, and plug it in.'
            : awake()
              ? 'kept on while this page is in front.'
              : 'is kept on during a run, while this page is in front.'}
        </li>
      </ul>
      <p class="sheet-danger">
        An alarm can fail: a locked phone sleeps, a battery runs out. It is never the only safeguard. Stay with the
        still, and set a kitchen timer too.
      </p>
    </section>
  );
}
