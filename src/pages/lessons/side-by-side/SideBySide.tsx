/** Two stills on one time line, which a class drives at once: each has its own heat and tap. */
import { createMediaQuery } from '@solid-primitives/media';
import { createMemo, createSignal, For, onCleanup, Show, untrack } from 'solid-js';
import {
  eventFlag,
  findPair,
  formatDuration,
  formatQuantity,
  lessonCommonMessages,
  quantities,
  sideBySideMessages,
  type PairId,
  type Reader,
} from '../../../../sim/index.ts';
import { PlainPlot } from '../../../charts/plain/PlainPlot.tsx';
import { SPEED_WORDS } from '../../../charts/playback/Playback.tsx';
import { StillDrawing } from '../../../drawing/StillDrawing.tsx';
import { stillStateAt } from '../../../drawing/still-state.ts';
import { useBench } from '../../../state/bench.ts';
import { focusOf } from '../../../state/keyboard.ts';
import { createPlayback, screenClock, SPEEDS } from '../../../state/playback.ts';
import { projecting, setProjecting } from '../../../state/projector.ts';
import { REDUCED_MOTION } from '../../../ui/reduced-motion.ts';
import { createThrottled } from '../../../ui/throttled.ts';
import { ROOM_CHART_NAMES, ROOM_CHARTS, roomChart, type RoomChartId } from '../../projector/room-charts.ts';
import { Explained } from '../Explained.tsx';
import { GroupDash } from '../GroupBar.tsx';
import { createDrivenStill, type DrivenStill } from './driven-still.ts';
import './side-by-side.css';

const LETTERS = ['A', 'B'] as const;
type Letter = (typeof LETTERS)[number];

const TOLD_EVERY_MS = 120;
/** Alarms are spoken; a playing run may not speak at every step. */
const SAID_EVERY_MS = 1000;
const KEY_SHARE = 0.1;
const KEY_STEP_S = 60;
const NONE = '–';
/** As many of each still stand under the chart. */
const MOST_ALARMS = 2;

const CHART_OF: Readonly<Partial<Record<string, RoomChartId>>> = {
  oilCollected_kg: 'oil',
  condensateTemperature_K: 'distillate',
  coolantOut_K: 'water',
};

interface OneStillProps {
  readonly letter: Letter;
  readonly name: string;
  readonly still: DrivenStill;
  readonly time_s: () => number;
  readonly told_s: () => number;
  readonly isChosen: boolean;
  readonly reader: Reader;
  readonly reducedMotion: boolean;
}

function OneStill(props: OneStillProps) {
  const numbers = createMemo(() => {
    const result = props.still.result();
    if (!result) return [];
    const q = quantities(props.reader);
    const state = stillStateAt(result, props.told_s());
    return [
      ['oil', q.oil(state.oilCollected_kg, state.oilDensity_kg_m3)],
      ['water over', q.water(state.hydrosol_kg)],
      ['distillate', state.condensate_kg_s > 0 ? q.temperature(state.condensateTemperature_K) : NONE],
      ['cooling water', q.temperature(state.tubTemperature_K[0] ?? state.coolantOut_K)],
    ] as const;
  });
  const valueWords = (value: number, unit: string, path: string) =>
    formatQuantity(value, unit, props.reader.units, { hint: path });
  return (
    <section
      class="pair-still"
      classList={{ 'is-chosen': props.isChosen }}
      aria-label={`${props.letter}: ${props.name}`}
    >
      <h3>
        {props.letter} <GroupDash id={LETTERS.indexOf(props.letter)} /> {props.name}
      </h3>
      <div class="pair-drawing" inert>
        <Show when={props.still.result()}>
          {(result) => (
            <StillDrawing
              scenario={result().scenario}
              result={result()}
              time_s={props.time_s}
              selected={null}
              onSelect={() => undefined}
              units={props.reader.units}
              reducedMotion={props.reducedMotion}
              stale={props.still.asking()}
              fills
            />
          )}
        </Show>
      </div>
      <dl class="pair-numbers">
        <For each={numbers()}>
          {([name, value]) => (
            <div>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          )}
        </For>
      </dl>
      <For each={props.still.controls().map(({ id }) => id)}>
        {(id) => (
          <Show when={props.still.controls().find((each) => each.id === id)}>
            {(control) => (
              <label class="pair-control">
                <span>{control().label}</span>
                <input
                  type="range"
                  class="drawn-slider"
                  aria-label={`${control().label} of ${props.letter}`}
                  min={control().range.min}
                  max={control().sliderMax}
                  step={control().step}
                  value={control().value}
                  aria-valuetext={valueWords(control().value, control().unit, control().path)}
                  onInput={(event) => {
                    if (id === 'heat' || id === 'tap') props.still.turn(id, event.currentTarget.valueAsNumber);
                  }}
                  onChange={() => props.still.release()}
                />
                <strong>{valueWords(control().value, control().unit, control().path)}</strong>
              </label>
            )}
          </Show>
        )}
      </For>
      <Show when={props.still.problem()}>{(problem) => <p class="answer-problem">{problem()}</p>}</Show>
    </section>
  );
}

export interface SideBySideProps {
  readonly pair: PairId | 'bench';
  readonly reader: Reader;
}

export function SideBySide(props: SideBySideProps) {
  const bench = useBench();
  const calm = createMediaQuery(REDUCED_MOTION);
  const words = () => sideBySideMessages(props.reader).pairs[props.pair];
  const asked = untrack(() => props.pair);
  const pair = asked === 'bench' ? null : findPair(asked);
  const [first, second] = pair?.stills() ?? [bench.scenario(), bench.scenario()];
  const end_s = Math.max(first.run.duration_s, second.run.duration_s);
  const clock = createPlayback(() => end_s, screenClock);
  const told_s = createThrottled(clock.time_s, TOLD_EVERY_MS);
  const said_s = createThrottled(clock.time_s, SAID_EVERY_MS);
  const stills = [
    createDrivenStill(first, clock.time_s, told_s, () => props.reader),
    createDrivenStill(second, clock.time_s, told_s, () => props.reader),
  ] as const;
  const both = LETTERS.map((letter, index) => ({ letter, still: index === 0 ? stills[0] : stills[1] }));
  const nameOf = (letter: Letter) => (letter === 'A' ? words().a : words().b);
  const [chosen, setChosen] = createSignal<Letter>('A');
  const [chart, setChart] = createSignal<RoomChartId>(CHART_OF[pair?.column ?? ''] ?? 'oil');
  const nextChart = () => setChart((id) => ROOM_CHARTS[(ROOM_CHARTS.indexOf(id) + 1) % ROOM_CHARTS.length] ?? 'oil');
  const startAgain = () => {
    clock.load(0);
    for (const still of stills) still.startAgain();
  };
  const playOrPause = () => (clock.playing() ? clock.pause() : clock.play());

  const drawn = createMemo(() => {
    const charts = stills.flatMap((still, index) => {
      const result = still.result();
      return result ? [{ index, ...roomChart(chart(), result, end_s) }] : [];
    });
    const [known] = charts;
    return (
      known && {
        axes: { ...known.axes, max: Math.max(...charts.map(({ axes }) => axes.max)) },
        curves: charts.map(({ index, curve }) => ({
          ...curve,
          name: LETTERS[index] ?? '',
          class: `is-run is-group-${index}`,
        })),
      }
    );
  });
  /** What has gone wrong by now, still by still, the latest first. */
  const alarms = createMemo(
    () =>
      both.flatMap(({ letter, still }) => {
        const events = still.result()?.events ?? [];
        const past = events.filter(({ severity, time_s }) => severity !== 'note' && time_s <= said_s());
        return past
          .toReversed()
          .slice(0, MOST_ALARMS)
          .map((event) => `${letter}: ${eventFlag(event.kind, props.reader)}, ${formatDuration(event.time_s)}`);
      }),
    [],
    { equals: (before, after) => before.join() === after.join() },
  );
  const time = () => quantities(props.reader).time(60 * Math.floor(told_s() / 60));

  const KEYS: Readonly<Record<string, (event: KeyboardEvent) => void>> = {
    a: () => setChosen('A'),
    b: () => setChosen('B'),
    h: ({ shiftKey }) => stills[LETTERS.indexOf(chosen())]?.turnBy('heat', shiftKey ? -KEY_SHARE : KEY_SHARE),
    t: ({ shiftKey }) => stills[LETTERS.indexOf(chosen())]?.turnBy('tap', shiftKey ? -KEY_SHARE : KEY_SHARE),
    c: nextChart,
    p: playOrPause,
    q: () => clock.stepSpeed(1),
    s: () => clock.stepSpeed(-1),
    arrowleft: () => clock.setTime(clock.time_s() - KEY_STEP_S),
    arrowright: () => clock.setTime(clock.time_s() + KEY_STEP_S),
    home: () => clock.setTime(0),
    end: () => clock.setTime(end_s),
  };
  // Before the bench, whose keys they are elsewhere.
  const onKey = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey || !bench.keysOn()) return;
    const focus = focusOf(event.target);
    const key = event.key.toLowerCase();
    if (focus === 'typing' || (focus === 'own-arrows' && key.length > 1)) return;
    const act = KEYS[key];
    if (!act) return;
    event.preventDefault();
    act(event);
  };
  addEventListener('keydown', onKey, true);
  onCleanup(() => removeEventListener('keydown', onKey, true));

  return (
    <article class="lesson pair" aria-label={words().title}>
      <header class="lesson-head">
        <h2 class="lesson-title">{words().title}</h2>
        <div class="pair-says">
          <Explained text={words().says} reader={props.reader} />
          <For each={pair?.hazards ?? (['steam'] as const)}>
            {(hazard) => <p class="lesson-caution alarm-mark">{lessonCommonMessages(props.reader).hazards[hazard]}</p>}
          </For>
        </div>
      </header>
      <div class="pair-body">
        <For each={both}>
          {({ letter, still }) => (
            <OneStill
              letter={letter}
              name={nameOf(letter)}
              still={still}
              time_s={clock.time_s}
              told_s={told_s}
              isChosen={chosen() === letter}
              reader={props.reader}
              reducedMotion={calm()}
            />
          )}
        </For>
        <div class="pair-both">
          <Show when={drawn()} fallback={<p role="status">Working it out…</p>}>
            {(plot) => (
              <PlainPlot
                axes={plot().axes}
                title={ROOM_CHART_NAMES[chart()]}
                units={props.reader.units}
                curves={plot().curves}
                until_s={clock.time_s()}
                says={`${ROOM_CHART_NAMES[chart()]} of A and B, up to now`}
              />
            )}
          </Show>
          <div class="pair-alarms" role="status">
            <For each={alarms()}>{(sentence) => <p class="alarm-mark">{sentence}</p>}</For>
          </div>
        </div>
      </div>
      <div class="pair-time">
        <button type="button" class="is-first" onClick={playOrPause}>
          {clock.playing() ? 'Pause' : 'Play'}
        </button>
        <input
          type="range"
          class="drawn-slider"
          data-time-mark
          aria-label="Time mark"
          aria-valuetext={time()}
          min="0"
          max={end_s}
          step="1"
          value={told_s()}
          onInput={(event) => clock.setTime(event.currentTarget.valueAsNumber)}
        />
        <strong class="pair-now">{time()}</strong>
        <label>
          <span class="visually-hidden">Speed</span>
          <select
            value={String(clock.speed())}
            onChange={(event) => clock.setSpeed(SPEEDS[event.currentTarget.selectedIndex] ?? 60)}
          >
            <For each={SPEEDS}>{(speed) => <option value={String(speed)}>{SPEED_WORDS[speed]}</option>}</For>
          </select>
        </label>
        <button type="button" onClick={nextChart}>
          Chart
        </button>
        <button type="button" onClick={startAgain}>
          Start again
        </button>
        <Show when={projecting()}>
          <button type="button" onClick={() => setProjecting(false)}>
            Leave
          </button>
        </Show>
      </div>
      <p class="pair-keys">
        Keys: A or B chooses the still. H turns its heat up, T its tap, with Shift down. C changes the chart, P plays,
        the arrows move the time mark.
      </p>
    </article>
  );
}
