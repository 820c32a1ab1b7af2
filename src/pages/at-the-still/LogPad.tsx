/** Logging with one thumb: a large button a kind, then a pad of digits. No key, drag, hover or long press is needed. */
import { createEffect, createMemo, createSignal, For, Match, Show, Switch, untrack } from 'solid-js';
import { isTapFed, quantities, type Reader, type UnitSystem } from '../../../sim/index.ts';
import { standing, type EntryKind, type StillEntry } from '../../state/still-run.ts';
import {
  isNumberKind,
  kindUnitOf,
  NUMBER_KINDS,
  odd,
  OTHER_WORDS,
  shownValue,
  type NumberKindName,
} from './log-kinds.ts';
import { PhotoButton } from '../parts/Photo.tsx';
import { stillSession } from './session.ts';

/** What is on the pad: a new entry, or one that is corrected. */
export interface OnPad {
  readonly kind: EntryKind;
  readonly entry: StillEntry | null;
}

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0', 'back'] as const;
const ORDER: readonly EntryKind[] = [
  'oil',
  'outlet',
  'tub',
  'distillate',
  'pot-water',
  'heat',
  'tap',
  'lid',
  'drops',
  'note',
  'opened',
  'heat-off',
];
const LONGEST = 7;
const MINUTE_MS = 60_000;

export function LogPad(props: {
  readonly reader: Reader;
  readonly onPad: OnPad | null;
  readonly setPad: (on: OnPad | null) => void;
}) {
  const session = stillSession();
  const firstDrop = () => {
    const run = session.run();
    return run !== null && standing(run).some(({ kind }) => kind === 'first-drop');
  };
  const kinds = createMemo<readonly EntryKind[]>(() => {
    const plan = session.plan();
    const isHeld = plan?.heat.control === 'hold-rate';
    return ORDER.filter(
      (kind) => !(kind === 'heat' && isHeld) && !(kind === 'tap' && plan !== null && !isTapFed(plan)),
    );
  });
  /** What was logged last. */
  const [told, setTold] = createSignal<StillEntry | null>(null);
  const saying = ({ kind, value }: StillEntry): string =>
    isNumberKind(kind) && value !== null
      ? `${NUMBER_KINDS[kind].words}: ${shownValue(kind, value, props.reader.units)} ${kindUnitOf(kind, props.reader.units).label}`
      : `${words(kind)} logged.`;
  const press = (kind: EntryKind) => {
    if (kind === 'first-drop' || kind === 'opened' || kind === 'heat-off') setTold(session.log(kind));
    else props.setPad({ kind, entry: null });
  };
  const [photoProblem, setPhotoProblem] = createSignal<string | null>(null);
  let section: HTMLElement | undefined;
  // Of a low window the digits would stand below its edge.
  createEffect(() => {
    if (props.onPad) section?.scrollIntoView({ block: 'nearest' });
  });
  const words = (kind: EntryKind) => (isNumberKind(kind) ? NUMBER_KINDS[kind].words : OTHER_WORDS[kind]);

  return (
    <section ref={section} class="pad" aria-labelledby="pad-title">
      <h3 id="pad-title">Log</h3>
      <Show
        when={props.onPad}
        keyed
        fallback={
          <div class="pad-kinds">
            <Show when={!firstDrop()}>
              <button type="button" class="pad-kind is-first" onClick={() => press('first-drop')}>
                First drop
              </button>
            </Show>
            <For each={kinds()}>
              {(kind) => (
                <button type="button" class="pad-kind" onClick={() => press(kind)}>
                  {words(kind)}
                </button>
              )}
            </For>
            <PhotoButton
              words="Photo"
              class="pad-kind"
              camera
              onKept={(id, at_ms) => setTold(session.log('photo', { text: id, at_ms }))}
              onProblem={setPhotoProblem}
            />
          </div>
        }
      >
        {(on) => (
          <Switch>
            <Match when={isNumberKind(on.kind) && on.kind}>
              {(kind) => (
                <NumberPad
                  kind={kind()}
                  entry={on.entry}
                  reader={props.reader}
                  onDone={(entry) => {
                    props.setPad(null);
                    setTold(entry);
                  }}
                  onCancel={() => props.setPad(null)}
                />
              )}
            </Match>
            <Match when={on.kind === 'note'}>
              <NotePad
                entry={on.entry}
                onDone={(entry) => {
                  props.setPad(null);
                  setTold(entry);
                }}
                onCancel={() => props.setPad(null)}
              />
            </Match>
            <Match when={on.entry}>
              {(entry) => (
                <div class="pad-one">
                  <p class="pad-name">{words(on.kind)}</p>
                  <When entry={entry()} reader={props.reader} />
                  <button type="button" class="pad-save" onClick={() => props.setPad(null)}>
                    Done
                  </button>
                </div>
              )}
            </Match>
          </Switch>
        )}
      </Show>
      <Show when={photoProblem()}>
        {(why) => (
          <p class="answer-problem" role="alert">
            {why()}
          </p>
        )}
      </Show>
      <p class="pad-told" role="status">
        <Show when={told()}>
          {(now) => (
            <>
              {saying(now())}{' '}
              <button
                type="button"
                class="pad-undo"
                onClick={() => {
                  session.change(now().id, { gone: true });
                  setTold(null);
                }}
              >
                Undo
              </button>
            </>
          )}
        </Show>
      </p>
    </section>
  );
}

/** When it was: put back or forward by the minute. */
function When(props: { readonly entry: StillEntry; readonly reader: Reader }) {
  const session = stillSession();
  const entry = () => session.run()?.entries.find(({ id }) => id === props.entry.id) ?? props.entry;
  const since_s = () => (entry().at_ms - (session.run()?.started_ms ?? entry().at_ms)) / 1000;
  const move = (minutes: number) =>
    session.change(props.entry.id, {
      at_ms: Math.min(Date.now(), Math.max(session.run()?.started_ms ?? 0, entry().at_ms + minutes * MINUTE_MS)),
    });
  return (
    <p class="pad-when">
      <span>at {quantities(props.reader).time(Math.round(since_s() / 60) * 60) || '0 min'}</span>
      <button type="button" onClick={() => move(-1)}>
        1 min earlier
      </button>
      <button type="button" onClick={() => move(1)}>
        1 min later
      </button>
    </p>
  );
}

interface NumberPadProps {
  readonly kind: NumberKindName;
  readonly entry: StillEntry | null;
  readonly reader: Reader;
  readonly onDone: (entry: StillEntry | null) => void;
  readonly onCancel: () => void;
}

function NumberPad(props: NumberPadProps) {
  const session = stillSession();
  const units = () => props.reader.units;
  const unit = () => kindUnitOf(props.kind, units());
  const before = () => {
    const run = session.run();
    return run === null ? [] : standing(run).filter(({ id }) => id !== props.entry?.id);
  };
  const offered = () => {
    const wanted = props.kind;
    return (
      props.entry?.value ?? before().findLast(({ kind, value }) => kind === wanted && value !== null)?.value ?? null
    );
  };
  const offeredText = () => {
    const last = offered();
    return last === null ? '' : shownValue(props.kind, last, units()).replace('−', '-');
  };
  const [text, setText] = createSignal('');
  /** What was asked about a number, and in which units it was typed: in others it is another. */
  const [asked, setAsked] = createSignal<{ readonly words: string; readonly units: UnitSystem } | null>(null);
  const doubt = () => (asked()?.units === units() ? (asked()?.words ?? null) : null);
  const setDoubt = (words: string | null) => setAsked(words === null ? null : { words, units: units() });
  const shown = () => (text() === '' ? offeredText() : text());
  const type = (key: (typeof DIGITS)[number]) => {
    setDoubt(null);
    if (key === 'back') setText(text().slice(0, -1));
    else if (text().length < LONGEST && !(key === '.' && text().includes('.'))) setText(text() + key);
  };
  const save = () => {
    const number = Number(shown());
    if (shown() === '' || !Number.isFinite(number)) {
      setDoubt('Type a number first.');
      return;
    }
    const value = unit().toSI(number);
    const why = odd(props.kind, value, before(), units());
    if (why !== null && doubt() !== why) {
      setDoubt(why);
      return;
    }
    if (props.entry) {
      session.change(props.entry.id, { value });
      props.onDone(null);
    } else props.onDone(session.log(props.kind, { value }));
  };
  return (
    <div class="pad-one">
      <p class="pad-name">{NUMBER_KINDS[props.kind].words}</p>
      <p class="pad-shown" aria-live="polite" classList={{ 'is-offered': text() === '' }}>
        <span>{shown() === '' ? '–' : shown()}</span> <span class="pad-unit">{unit().label}</span>
      </p>
      <Show when={text() === '' && shown() !== ''}>
        <p class="answer-quiet">The last value. Type over it, or save it as it is.</p>
      </Show>
      <Show when={NUMBER_KINDS[props.kind].apart}>
        {(why) => <p class="answer-quiet">The forecast does not use this. {why()}</p>}
      </Show>
      <Show when={props.entry}>{(entry) => <When entry={entry()} reader={props.reader} />}</Show>
      <Show when={doubt()}>
        {(why) => (
          <p class="answer-problem" role="alert">
            {why()} {text() === '' && shown() === '' ? '' : 'Press again to save it all the same.'}
          </p>
        )}
      </Show>
      <div class="pad-digits">
        <For each={DIGITS}>
          {(key) => (
            <button type="button" classList={{ 'is-word': key === 'back' }} onClick={() => type(key)}>
              {key === 'back' ? 'Delete' : key}
            </button>
          )}
        </For>
      </div>
      <div class="pad-ends">
        <button type="button" onClick={() => props.onCancel()}>
          Cancel
        </button>
        <button type="button" class="pad-save" onClick={save}>
          Save {NUMBER_KINDS[props.kind].words.toLowerCase()}
        </button>
      </div>
    </div>
  );
}

const SMELLS = ['Fresh, green', 'Sweet, like the plant', 'Heavy, cooked', 'Burnt', 'Clear', 'Cloudy', 'Coloured'];

function NotePad(props: {
  readonly entry: StillEntry | null;
  readonly onDone: (entry: StillEntry | null) => void;
  readonly onCancel: () => void;
}) {
  const session = stillSession();
  const [text, setText] = createSignal(untrack(() => props.entry?.text ?? ''));
  const save = (words: string) => {
    const written = words.trim();
    if (written === '') return;
    if (props.entry) {
      session.change(props.entry.id, { text: written });
      props.onDone(null);
    } else props.onDone(session.log('note', { text: written }));
  };
  return (
    <div class="pad-one">
      <p class="pad-name">Smell, colour, anything else</p>
      <div class="pad-kinds">
        <For each={SMELLS}>
          {(words) => (
            <button
              type="button"
              class="pad-kind"
              onClick={() => save(text() === '' ? words : `${text()}, ${words.toLowerCase()}`)}
            >
              {words}
            </button>
          )}
        </For>
      </div>
      <label class="pad-note">
        <span>In your own words</span>
        <input
          class="text-input"
          type="text"
          maxlength="300"
          value={text()}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </label>
      <div class="pad-ends">
        <button type="button" onClick={() => props.onCancel()}>
          Cancel
        </button>
        <button type="button" class="pad-save" onClick={() => save(text())}>
          Save note
        </button>
      </div>
    </div>
  );
}
