/** The live controls, wired to the bench: what a turn changes, and from when. */
import { createMemo, createSignal } from 'solid-js';
import { LiveControls } from './LiveControls.tsx';
import { createThrottled } from '../../ui/throttled.ts';
import { eventTimes, formatDuration, type ScenarioPart } from '../../../sim/index.ts';
import { useBench } from '../../state/bench.ts';
import {
  fieldValue,
  liveControls,
  reachInWords,
  type LiveControlId,
  type Reach,
  type LiveReach,
} from '../../state/live-controls.ts';

const clock = (time_s: number): string => formatDuration(time_s);

const TOLD_EVERY_MS = 120;

/** The part of the drawing that a control works on. */
const PART_OF: Readonly<Record<LiveControlId, ScenarioPart>> = {
  heat: 'heat',
  tap: 'cooling',
  coil: 'condenser',
  charge: 'charge',
};

/** Once a run has been set playing, heat and tap change it from the time mark on; the reader may choose otherwise. */
export function createLiveReach(): LiveReach {
  const bench = useBench();
  const [chosen, setChosen] = createSignal<Reach | null>(null);
  const [held_s, setHeld] = createSignal<number | null>(null);
  const moment_s = () => held_s() ?? bench.time_s();
  const reach = createMemo(() =>
    moment_s() < 1 ? 'stretch' : (chosen() ?? (bench.everPlayed() ? 'from-here' : 'stretch')),
  );
  return {
    reach,
    moment_s,
    toldMoment_s: createThrottled(moment_s, TOLD_EVERY_MS),
    setReach: setChosen,
    hold: () => setHeld((held) => held ?? bench.time_s()),
    release: () => setHeld(null),
  };
}

export interface LivePanelProps {
  readonly live: LiveReach;
  /** Shows where a control is planned over the run. */
  readonly onPlan: (path: string) => void;
}

export function LivePanel(props: LivePanelProps) {
  const bench = useBench();
  const controls = createMemo(() =>
    liveControls(
      bench.scenario(),
      bench.loaded(),
      props.live.reach(),
      props.live.toldMoment_s(),
      eventTimes(bench.result().summary),
    ),
  );
  const isPlain = () => controls().every(({ schedule }) => schedule === null || schedule.length === 1);
  return (
    <LiveControls
      controls={controls()}
      units={bench.units()}
      reach={props.live.reach()}
      reachWords={(control) => reachInWords(control, props.live.reach(), props.live.toldMoment_s(), clock)}
      stretchWords={isPlain() ? 'the whole run' : 'since the last change'}
      hereWords={clock(props.live.toldMoment_s())}
      canReachFromHere={bench.time_s() >= 1}
      onReach={(reach) => props.live.setReach(reach)}
      onPlan={(control) => props.onPlan(control.path)}
      onTouch={(control) => bench.touch(control === null ? null : PART_OF[control])}
      onTurn={(control, value, gesture) => {
        props.live.hold();
        bench.change(control.path, fieldValue(control, value, props.live.reach(), props.live.moment_s()), gesture);
      }}
      onTurnEnd={() => props.live.release()}
    />
  );
}
