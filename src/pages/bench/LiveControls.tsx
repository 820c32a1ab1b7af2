/** The four controls one turns while watching: heat, tap, coil length, charge. A bar at the thumb on small screens. */
import { debounce } from '@solid-primitives/scheduled';
import { createSignal, createUniqueId, Index } from 'solid-js';
import type { LiveControl, LiveControlId, Reach } from '../../state/live-controls.ts';
import { controlSafetyMessages, englishReader, formatQuantity, type UnitSystem } from '../../../sim/index.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import './live.css';

export interface LiveControlsProps {
  readonly controls: readonly LiveControl[];
  readonly units: UnitSystem;
  readonly reach: Reach;
  /** What each control changes, in words. */
  readonly reachWords: (control: LiveControl) => string;
  /** Name of the moment `from-here` starts at. */
  readonly hereWords: string;
  /** Name of what `stretch` covers. */
  readonly stretchWords: string;
  readonly canReachFromHere: boolean;
  readonly onReach: (reach: Reach) => void;
  /** A turn of a control; turns of one drag share a gesture. */
  readonly onTurn: (control: LiveControl, value: number, gesture: string) => void;
  readonly onTurnEnd: () => void;
  readonly onPlan: (control: LiveControl) => void;
  /** The reader's hand or focus comes to a control, or leaves them all. */
  readonly onTouch: (control: LiveControlId | null) => void;
}

/** Arrow keys that follow each other within this time are one turn; a drag is one turn until it is let go. */
const QUIET_MS = 1000;

interface LiveSliderProps extends Pick<LiveControlsProps, 'units' | 'reachWords' | 'onTurn' | 'onTurnEnd' | 'onTouch'> {
  readonly control: LiveControl;
}

function LiveSlider(props: LiveSliderProps) {
  const id = createUniqueId();
  let gesture: string | null = null;
  let count = 0;
  let isPressed = false;
  const finish = () => {
    finishSoon.clear();
    gesture = null;
    props.onTurnEnd();
  };
  const finishSoon = debounce(finish, QUIET_MS);
  const turn = (value: number) => {
    gesture ??= `${props.control.id}-${id}-${(count += 1)}`;
    props.onTurn(props.control, Math.min(Math.max(value, props.control.range.min), props.control.range.max), gesture);
    if (isPressed) finishSoon.clear();
    else finishSoon();
  };
  const press = (pressed: boolean) => {
    isPressed = pressed;
    if (!pressed && gesture !== null) finish();
  };
  const inSteps = (value: number) => Math.round(value / props.control.step) * props.control.step;
  const caution = () => controlSafetyMessages(englishReader(props.units))[props.control.id];
  const words = (value: number) => formatQuantity(value, props.control.unit, props.units, { hint: props.control.path });
  return (
    <div
      class={`live-control is-${props.control.id}`}
      onFocusIn={() => props.onTouch(props.control.id)}
      onFocusOut={() => props.onTouch(null)}
    >
      <label class="live-label" for={`${id}-slider`}>
        {props.control.label}
      </label>
      <QuantityField
        class="live-value"
        label={`${props.control.label}, typed`}
        labelHidden
        value={props.control.value}
        unit={props.control.unit}
        hint={props.control.path}
        system={props.units}
        min={props.control.range.min}
        max={props.control.range.max}
        onCommit={(value: number) => {
          turn(value);
          finish();
        }}
      />
      <input
        id={`${id}-slider`}
        type="range"
        class="live-slider drawn-slider"
        aria-describedby={`${id}-reach`}
        aria-valuetext={words(props.control.value)}
        min={props.control.range.min}
        max={props.control.sliderMax}
        step={props.control.step}
        value={props.control.value}
        style={{
          '--share': Math.min(
            1,
            (props.control.value - props.control.range.min) / (props.control.sliderMax - props.control.range.min),
          ),
        }}
        onInput={(event) => turn(inSteps(event.currentTarget.valueAsNumber))}
        onPointerDown={() => press(true)}
        onPointerUp={() => press(false)}
        onPointerCancel={() => press(false)}
      />
      <p class="live-reach visually-hidden" id={`${id}-reach`}>
        {props.reachWords(props.control)} {caution()}
      </p>
    </div>
  );
}

export function LiveControls(props: LiveControlsProps) {
  const [open, setOpen] = createSignal<LiveControlId | null>(null);
  const group = createUniqueId();
  return (
    <section class="live" aria-label="Live controls">
      <div class="live-tabs">
        <Index each={props.controls}>
          {(control) => (
            <button
              type="button"
              class="live-tab"
              aria-expanded={open() === control().id}
              onClick={() => setOpen(open() === control().id ? null : control().id)}
            >
              {control().label}{' '}
              <span>{formatQuantity(control().value, control().unit, props.units, { hint: control().path })}</span>
            </button>
          )}
        </Index>
      </div>
      <div class="live-controls" data-open={open() ?? 'none'}>
        <Index each={props.controls}>
          {(control) => (
            <LiveSlider
              control={control()}
              units={props.units}
              reachWords={props.reachWords}
              onTurn={props.onTurn}
              onTurnEnd={props.onTurnEnd}
              onTouch={props.onTouch}
            />
          )}
        </Index>
      </div>
      <div class="live-row">
        <fieldset class="live-when">
          <legend class="visually-hidden">Heat and tap change</legend>
          <span aria-hidden="true">Heat and tap change </span>
          <label>
            <input
              type="radio"
              name={group}
              checked={props.reach === 'stretch'}
              onChange={() => props.onReach('stretch')}
            />{' '}
            {props.stretchWords}
          </label>
          <label>
            <input
              type="radio"
              name={group}
              checked={props.reach === 'from-here'}
              disabled={!props.canReachFromHere}
              onChange={() => props.onReach('from-here')}
            />{' '}
            from {props.hereWords} on
          </label>
        </fieldset>
        <p class="live-plans">
          Set a timetable:{' '}
          <Index each={props.controls.filter(({ schedule }) => schedule !== null)}>
            {(control) => (
              <button type="button" class="live-plan" onClick={() => props.onPlan(control())}>
                <span class="visually-hidden">Set a timetable for </span>
                {control().label}
              </button>
            )}
          </Index>
        </p>
      </div>
    </section>
  );
}
