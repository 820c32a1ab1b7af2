/**
 * A control over time as a line on the charts' own time axis: knots to drag or to move by keys, and the same knots as
 * rows to type into. Hands on valid schedules only.
 */
import { createMemo, createSignal, createUniqueId, For, Index, Show, untrack, type Accessor } from 'solid-js';
import {
  clockSchedule,
  displayUnit,
  englishReader,
  formatDuration,
  formatNumber,
  formatQuantity,
  phasesBegun,
  scheduleMessages,
  type EventTimes,
  type Knot,
  type Schedule,
  type UnitSystem,
} from '../../../sim/index.ts';
import { linearMap } from '../model/decimate.ts';
import { tickDecimals, valueTicks, type Domain } from '../model/domain.ts';
import { gutters, layOut, type Gutters } from '../model/layout.ts';
import type { Token } from '../model/palette.ts';
import { xTicks } from '../model/x-axis.ts';
import { createLook, createWidth } from '../plot/look.ts';
import { KnotHandle, type KnotMove } from './KnotHandle.tsx';
import { KnotTable } from './KnotTable.tsx';
import {
  addKnot,
  beginning,
  moveKnot,
  removeKnot,
  scheduleProblem,
  toggleShape,
  type Edited,
  type ScheduleLimits,
} from './schedule-edit.ts';
import { scheduleDomain, scheduleLine, snapValue, timeStep, valueStep } from './schedule-line.ts';
import './schedule.css';

export interface ScheduleEditorProps {
  readonly schedule: Schedule;
  /** Stored unit. */
  readonly unit: string;
  /** Path of the field or kind of the quantity, for its shown unit. */
  readonly hint?: string | undefined;
  readonly title: string;
  readonly min: number;
  readonly max: number;
  /** When the events came from which knots may count. */
  readonly times: EventTimes;
  /** Length of the run. */
  readonly duration_s: number;
  /** End of the charts' time axis, where it is later than the run's. */
  readonly axisEnd_s?: number | undefined;
  readonly time_s: Accessor<number>;
  /** `quick` marks one of several small steps, of a drag or a held key, that are undone together. */
  readonly onChange: (schedule: Schedule, quick: boolean) => void;
  readonly units: UnitSystem;
  readonly ink?: Token | undefined;
  /** Whatever the page's text size depends on; a change makes the editor read it again. */
  readonly theme?: unknown;
  /** Distance of the time axis from the left and right edge, to line up with the charts. */
  readonly timeInset?: Gutters | undefined;
}

const HEIGHT = 112;
const LARGE_STEP = 10;

export function ScheduleEditor(props: ScheduleEditorProps) {
  const helpId = createUniqueId();
  const [root, setRoot] = createSignal<HTMLElement>();
  const width = createWidth(root);
  const look = createLook(root, () => props.theme);
  const textScale = () => look()?.textScale ?? 1;
  const [message, setMessage] = createSignal('');
  const [dragging, setDragging] = createSignal(false);
  const handles: HTMLElement[] = [];

  const unit = createMemo(() => displayUnit(props.unit, props.units, props.hint));
  const axisEnd_s = () => props.axisEnd_s ?? props.duration_s;
  const limits = (): ScheduleLimits => ({
    min: props.min,
    max: props.max,
    duration_s: props.duration_s,
    times: props.times,
  });
  const layout = createMemo(() =>
    layOut({
      width: width(),
      gutters: props.timeInset ?? gutters(width(), textScale()),
      textScale: textScale(),
      parts: [1],
      partHeight: HEIGHT * Math.sqrt(textScale()),
    }),
  );
  const top = () => layout().lanes[0]?.top ?? 0;
  /** The axis waits until a drag is over. */
  const domain = createMemo<Domain | undefined>((earlier) =>
    dragging() && earlier ? earlier : scheduleDomain(earlier, props.schedule, unit(), props.min, props.max),
  );
  const bounds = (): Domain => domain() ?? [0, 1];
  const x = createMemo(() => linearMap([0, axisEnd_s()], [0, layout().plotWidth]));
  const y = createMemo(() => linearMap(bounds(), [layout().axisTop, top()]));
  const xOf = (at_s: number) => layout().left + x().offset + x().slope * at_s;
  const yOf = (value: number) => y().offset + y().slope * unit().fromSI(value);
  const ticks = createMemo(() => valueTicks(bounds(), (layout().axisTop - top()) / textScale()));
  const timeTicks = createMemo(() => xTicks('time', [0, axisEnd_s()], layout().plotWidth / textScale(), props.units));
  const path = () =>
    scheduleLine(clock(), props.duration_s)
      .map(({ at_s, value }, index) => `${index === 0 ? 'M' : 'L'}${xOf(at_s)},${yOf(value)}`)
      .join('');
  /** The plan by the clock of this run, and what of it can be held: a place in the plan, where it stands. */
  const clock = createMemo(() => clockSchedule(props.schedule, props.times));
  const shownKnots = createMemo(() =>
    clock().flatMap(({ at_s, place }) => {
      const knot = place === null ? undefined : props.schedule[place];
      return place === null || !knot || at_s > props.duration_s ? [] : { at_s, place, knot };
    }),
  );
  const messages = () => scheduleMessages(englishReader(props.units));
  /** Events that the plan waits for, where they came. */
  const marks = createMemo(() =>
    phasesBegun(props.schedule, props.times).flatMap(({ after, begins_s }) =>
      after === undefined ? [] : { after, at_s: begins_s, words: messages().origin(after) },
    ),
  );
  const said = (value: number) =>
    formatQuantity(value, props.unit, props.units, props.hint === undefined ? {} : { hint: props.hint });
  const knotWords = ({ at_s, after, value, shape }: Knot) =>
    `${shape === 'ramp' ? `evenly to ${said(value)} at` : `${said(value)} from`} ${messages().moment(at_s, after)}`;

  const hand = (schedule: Schedule, quick: boolean): void => {
    const problem = scheduleProblem(schedule, limits());
    setMessage(problem ?? '');
    if (problem === null) props.onChange(schedule, quick);
  };
  const focusKnot = (index: number): void => handles[shownKnots().findIndex(({ place }) => place === index)]?.focus();
  const take = (edited: Edited): void => {
    if (!edited.ok) {
      setMessage(edited.because);
      return;
    }
    hand(edited.schedule, false);
    queueMicrotask(() => untrack(() => focusKnot(edited.index)));
  };
  const moveTo = (index: number, at_s: number, value: number): void => {
    const moved = moveKnot(props.schedule, index, at_s, value, limits());
    const [before, after] = [props.schedule[index], moved[index]];
    if (before && after && (before.at_s !== after.at_s || before.value !== after.value)) hand(moved, true);
  };
  const drag = (index: number, toX: number, toY: number): void => {
    const step = timeStep(props.duration_s);
    const time_s =
      (toX - layout().left - x().offset) / x().slope - (beginning(props.schedule, index, props.times) ?? 0);
    const at_s = Math.round(time_s / step) * step;
    moveTo(index, at_s, snapValue(unit().toSI((toY - y().offset) / y().slope), unit(), valueStep(bounds())));
  };
  const nudge = (index: number, { time, value, large }: KnotMove): void => {
    const knot = props.schedule[index];
    if (!knot) return;
    const times = large ? LARGE_STEP : 1;
    const step = valueStep(bounds());
    const raised =
      value === 0 ? knot.value : snapValue(unit().toSI(unit().fromSI(knot.value) + value * times * step), unit(), step);
    moveTo(index, knot.at_s + time * times * timeStep(props.duration_s), raised);
  };
  const addAt = (at_s: number): void => take(addKnot(props.schedule, at_s, props.times));
  const addWhere = (event: MouseEvent & { currentTarget: HTMLElement }): void => {
    const pixel = event.clientX - event.currentTarget.getBoundingClientRect().left - layout().left;
    const step = timeStep(props.duration_s);
    addAt(Math.round((pixel - x().offset) / x().slope / step) * step);
  };

  return (
    <section class="schedule" aria-label={props.title} ref={setRoot}>
      <div class="schedule-head">
        <h3>{props.title}</h3>
        <button type="button" class="schedule-word" onClick={() => addAt(props.time_s())}>
          Add a change at {formatDuration(Math.round(props.time_s()))}
        </button>
      </div>
      <p class="visually-hidden" id={helpId}>
        Left and Right move it in time, Up and Down change the setting, Shift for larger steps. S switches between at
        once and evenly, Delete removes, Enter adds a change at the time mark.
      </p>
      <Show when={width() > 0}>
        <div class="schedule-plot" style={{ height: `${layout().height}px` }} onDblClick={addWhere}>
          <svg class="schedule-axes" width={layout().width} height={layout().height} aria-hidden="true">
            <For each={timeTicks()}>
              {(tick) => (
                <>
                  <line class="schedule-grid" x1={xOf(tick.at)} x2={xOf(tick.at)} y1={top()} y2={layout().axisTop} />
                  <text
                    class="schedule-tick"
                    x={xOf(tick.at)}
                    y={layout().axisTop + layout().line}
                    text-anchor="middle"
                  >
                    {tick.words}
                  </text>
                </>
              )}
            </For>
            <For each={ticks()}>
              {(tick) => (
                <>
                  <line
                    class="schedule-grid"
                    x1={layout().left}
                    x2={layout().right}
                    y1={y().offset + y().slope * tick}
                    y2={y().offset + y().slope * tick}
                  />
                  <text
                    class="schedule-tick"
                    x={layout().left - 12}
                    y={y().offset + y().slope * tick}
                    dy="0.32em"
                    text-anchor="end"
                  >
                    {formatNumber(tick, tickDecimals(ticks()))}
                  </text>
                </>
              )}
            </For>
            <text class="schedule-tick" x={layout().left - 12} y={top() - layout().line * 0.65} text-anchor="end">
              {unit().label}
            </text>
            <For each={marks()}>
              {(mark) => (
                <>
                  <line
                    class="schedule-event"
                    x1={xOf(mark.at_s)}
                    x2={xOf(mark.at_s)}
                    y1={top()}
                    y2={layout().axisTop}
                  />
                  <text
                    class="schedule-tick"
                    x={xOf(mark.at_s)}
                    y={top() - layout().line * 0.65}
                    text-anchor={mark.after === 'first-boil' ? 'end' : 'start'}
                  >
                    {mark.words}
                  </text>
                </>
              )}
            </For>
            <path class="schedule-line" d={path()} style={{ stroke: `var(--${props.ink ?? 'copper'})` }} />
          </svg>
          <div
            class="schedule-time-mark"
            style={{
              top: `${top()}px`,
              height: `${layout().axisTop - top()}px`,
              transform: `translateX(${Math.round(xOf(Math.min(props.time_s(), props.duration_s)) * 2) / 2}px)`,
            }}
          />
          <Index each={shownKnots()}>
            {(shown, position) => (
              <KnotHandle
                ref={(element) => (handles[position] = element)}
                name={shown().place === 0 ? `${props.title} at the start` : `${props.title}, change ${shown().place}`}
                now={unit().fromSI(shown().knot.value)}
                min={unit().fromSI(props.min)}
                max={unit().fromSI(props.max)}
                words={knotWords(shown().knot)}
                describedBy={helpId}
                x={xOf(shown().at_s)}
                y={yOf(shown().knot.value)}
                ramp={shown().knot.shape === 'ramp'}
                onDrag={(toX, toY) => drag(shown().place, toX, toY)}
                onDragging={setDragging}
                onMove={(move) => nudge(shown().place, move)}
                onRemove={() => take(removeKnot(props.schedule, shown().place))}
                onToggle={() => take(toggleShape(props.schedule, shown().place))}
                onAdd={() => addAt(props.time_s())}
              />
            )}
          </Index>
        </div>
      </Show>
      <p class="schedule-problem" role="status">
        {message()}
      </p>
      <KnotTable
        title={props.title}
        schedule={props.schedule}
        clock={clock()}
        limits={limits()}
        unit={props.unit}
        hint={props.hint}
        system={props.units}
        onEdit={hand}
      />
    </section>
  );
}
