/** The picture that explains a lesson, in the size of its place. */
import { createElementSize } from '@solid-primitives/resize-observer';
import { createMediaQuery } from '@solid-primitives/media';
import { createEffect, createMemo, createSignal, For, Match, on, onMount, Show, Switch, untrack } from 'solid-js';
import type { LessonAnswer, Reader } from '../../../../sim/index.ts';
import { createPlayback, screenClock } from '../../../state/playback.ts';
import { REDUCED_MOTION } from '../../../ui/reduced-motion.ts';
import type { Mark } from '../../../charts/pictures/picture.ts';
import { lessonPicture, pictureTime } from './lesson-picture.ts';

/** A picture plays in so many seconds. */
const PLAYS_S = 7;

const FIRST = { width: 560, height: 340, text: 15 };
const ink = (token: string | undefined): string => (token === undefined ? 'none' : `var(--${token})`);

function PictureMark(props: { readonly mark: Mark }) {
  const text = () => (props.mark.tag === 'text' ? props.mark : null);
  const circle = () => (props.mark.tag === 'circle' ? props.mark : null);
  const path = () => (props.mark.tag === 'path' ? props.mark : null);
  return (
    <Switch>
      <Match when={text()}>
        {(mark) => (
          <text
            x={mark().x}
            y={mark().y}
            text-anchor={mark().anchor ?? 'start'}
            style={{ fill: ink(mark().fill), 'font-weight': mark().bold ? '600' : '400' }}
          >
            {mark().words}
          </text>
        )}
      </Match>
      <Match when={circle()}>
        {(mark) => (
          <circle
            cx={mark().cx}
            cy={mark().cy}
            r={mark().r}
            style={{ fill: ink(mark().fill), stroke: ink(mark().stroke), 'stroke-width': `${mark().width ?? 1}` }}
          />
        )}
      </Match>
      <Match when={path()}>
        {(mark) => (
          <path
            d={mark().d}
            stroke-dasharray={mark().dash}
            opacity={mark().opacity}
            style={{ fill: ink(mark().fill), stroke: ink(mark().stroke), 'stroke-width': `${mark().width ?? 1}` }}
          />
        )}
      </Match>
    </Switch>
  );
}

export function LessonPicture(props: { readonly answer: LessonAnswer; readonly reader: Reader }) {
  const [place, setPlace] = createSignal<HTMLDivElement>();
  const measured = createElementSize(place);
  const calm = createMediaQuery(REDUCED_MOTION);
  // Where things should stand still the picture shows its end; the reader may move it.
  const [mark, setMark] = createSignal(untrack(calm) ? 1 : 0);
  const clock = createPlayback(() => PLAYS_S, screenClock, 1);
  createEffect(on(clock.time_s, (time_s) => setMark(time_s / PLAYS_S), { defer: true }));
  onMount(() => {
    if (!calm() && said() !== null) clock.play();
  });
  const said = createMemo(() => pictureTime(props.answer, mark(), props.reader));
  const picture = createMemo(() => {
    const element = place();
    const size =
      element && measured.width !== null
        ? {
            width: Math.max(240, Math.floor(measured.width)),
            height: Math.max(220, Math.floor(measured.height ?? FIRST.height)),
            text: Number.parseFloat(getComputedStyle(element).fontSize) || FIRST.text,
          }
        : FIRST;
    return lessonPicture(props.answer, { ...size, reader: props.reader, mark: said() === null ? 1 : mark() });
  });
  return (
    <div class="picture">
      <div class="lesson-picture" ref={setPlace}>
        <svg
          role="img"
          aria-label={picture().says}
          width={picture().width}
          height={picture().height}
          viewBox={`0 0 ${picture().width} ${picture().height}`}
        >
          <For each={picture().marks}>{(mark) => <PictureMark mark={mark} />}</For>
        </svg>
      </div>
      <Show when={said()}>
        {(words) => (
          <p class="picture-time">
            <button type="button" onClick={() => (clock.playing() ? clock.pause() : clock.play())}>
              {clock.playing() ? 'Pause' : 'Play'}
            </button>
            <input
              type="range"
              class="drawn-slider"
              aria-label="Time mark of the picture"
              aria-valuetext={words()}
              min="0"
              max="1"
              step="0.01"
              value={mark()}
              onInput={(event) => {
                clock.pause();
                clock.setTime(event.currentTarget.valueAsNumber * PLAYS_S);
                setMark(event.currentTarget.valueAsNumber);
              }}
            />
            <strong>{words()}</strong>
          </p>
        )}
      </Show>
    </div>
  );
}
