/** A still that a class drives: heat and tap are turned as time goes on, and the run follows. */
import { createMemo, createSignal, type Accessor } from 'solid-js';
import { eventTimes, problemMessage, type Reader, type RunResult, type Scenario } from '../../../../sim/index.ts';
import { withValueAtPath } from '../../../state/field-path.ts';
import { fieldValue, liveControls, type LiveControl, type Reach } from '../../../state/live-controls.ts';
import { createQuery } from '../../../state/query.ts';
import { workerPool } from '../../../workers/start-pool.ts';

export type DrivenControl = 'heat' | 'tap';

export interface DrivenStill {
  /** The run as it is known; `null` before the first. */
  readonly result: Accessor<RunResult | null>;
  /** Whether the run shown is older than what was turned. */
  readonly asking: Accessor<boolean>;
  readonly problem: Accessor<string | null>;
  readonly controls: Accessor<readonly LiveControl[]>;
  /** Sets a control from the moment at hand on. */
  turn(id: DrivenControl, value: number): void;
  /** Turns a control by shares of its slider. */
  turnBy(id: DrivenControl, share: number): void;
  /** Keeps the moment while a slider is dragged. */
  release(): void;
  startAgain(): void;
}

/** A turn at the very start changes the plan from its beginning. */
const STARTED_S = 1;
const QUIET_MS = 60;

export function createDrivenStill(
  loaded: Scenario,
  time_s: Accessor<number>,
  told_s: Accessor<number>,
  reader: Accessor<Reader>,
): DrivenStill {
  const [scenario, setScenario] = createSignal(loaded);
  const [held_s, setHeld] = createSignal<number | null>(null);
  const run = createQuery(workerPool(), 'run', () => [scenario()], { priority: 'high', quiet_ms: QUIET_MS });
  const result = createMemo<RunResult | null>((before) => {
    const answer = run.answer();
    return answer?.kind === 'ran' ? answer.result : (before ?? null);
  }, null);
  const problem = () => {
    const answer = run.answer();
    if (answer?.kind === 'invalid') {
      const [first] = answer.problems;
      return first ? problemMessage(first, reader()) : null;
    }
    return answer?.kind === 'failed' ? answer.message : run.problem();
  };
  const reachAt = (moment_s: number): Reach => (moment_s < STARTED_S ? 'stretch' : 'from-here');
  const controlsAt = (moment_s: number) => {
    const known = result();
    const times = eventTimes(known?.summary ?? { firstBoil_s: null, firstDrop_s: null });
    return liveControls(scenario(), loaded, reachAt(moment_s), moment_s, times).filter(
      ({ id }) => id === 'heat' || id === 'tap',
    );
  };
  const controls = createMemo(() => controlsAt(held_s() ?? told_s()));
  const set = (control: LiveControl, value: number, moment_s: number) => {
    const within = Math.min(Math.max(value, control.range.min), control.range.max);
    const field = fieldValue(control, within, reachAt(moment_s), moment_s);
    setScenario((before) => withValueAtPath(before, control.path, field));
  };
  return {
    result,
    asking: run.asking,
    problem,
    controls,
    turn: (id, value) => {
      const moment_s = held_s() ?? time_s();
      setHeld(moment_s);
      const control = controlsAt(moment_s).find((each) => each.id === id);
      if (control) set(control, value, moment_s);
    },
    turnBy: (id, share) => {
      const control = controlsAt(time_s()).find((each) => each.id === id);
      if (!control) return;
      const step = share * (control.sliderMax - control.range.min);
      set(control, Math.min(control.sliderMax, control.value + step), time_s());
    },
    release: () => setHeld(null),
    startAgain: () => {
      setHeld(null);
      setScenario(loaded);
    },
  };
}
