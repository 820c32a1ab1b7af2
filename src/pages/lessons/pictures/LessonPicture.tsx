/** The picture that explains a lesson, in the size of its place. */
import { createElementSize } from '@solid-primitives/resize-observer';
import { createMemo, createSignal, For, Match, Switch } from 'solid-js';
import type { LessonAnswer, Reader, RunResult } from '../../../../sim/index.ts';
import type { Mark, Picture } from '../../../charts/pictures/picture.ts';
import { flatStretch, kilojoules, ladders, peopleOnLid, tubLayers, waterLeft, type Sheet } from './heat-pictures.ts';
import { dropsWithForces, jars, lastTenth, pressuresAddUp, twoBoils, withReturn } from './oil-pictures.ts';

function firstOf(runs: readonly RunResult[]): RunResult {
  const [run] = runs;
  if (!run) throw new RangeError('this lesson has no run to draw');
  return run;
}

export function lessonPicture(answer: LessonAnswer, sheet: Sheet): Picture {
  switch (answer.id) {
    case 'heat-of-steam':
      return flatStretch(firstOf(answer.runs), answer.facts, sheet);
    case 'harder-flame':
      return kilojoules(firstOf(answer.runs), sheet);
    case 'two-liquids':
      return pressuresAddUp(answer.facts, sheet);
    case 'steam-in-the-coil':
      return ladders(answer.facts, sheet);
    case 'tap-off':
      return tubLayers(firstOf(answer.runs), answer.facts, sheet);
    case 'gentle-or-hard':
      return twoBoils(answer.facts, sheet);
    case 'when-to-stop':
      return lastTenth(answer.facts, sheet);
    case 'float-or-sink':
      return dropsWithForces(answer.facts, sheet);
    case 'drops-rise':
      return jars(answer.facts, sheet);
    case 'water-back':
      return withReturn(answer.facts, sheet);
    case 'closed-outlet':
      return peopleOnLid(answer.facts, sheet);
    case 'dry-pot':
      return waterLeft(answer.runs, answer.facts, sheet);
  }
}

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
    return lessonPicture(props.answer, { ...size, reader: props.reader });
  });
  return (
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
  );
}
