/** The controls that change over the run, as lines to draw on the charts' time axis, wired to the bench. */
import { createMemo, For, onMount } from 'solid-js';
import { eventTimes, fieldAt, type Schedule } from '../../../sim/index.ts';
import { ScheduleEditor } from '../../charts/schedule/ScheduleEditor.tsx';
import { useBench } from '../../state/bench.ts';
import { valueAtPath } from '../../state/field-path.ts';
import { scheduleAnchor, showAwaitedSchedule } from '../../state/schedule-anchor.ts';

const PATHS = ['heat.setting', 'cooling.flow_kg_s', 'cooling.tapTemperature_K'] as const;

const INKS = { 'heat.setting': 'copper', 'cooling.flow_kg_s': 'water', 'cooling.tapTemperature_K': 'water' } as const;

export function BenchSchedules() {
  const bench = useBench();
  onMount(showAwaitedSchedule);
  const times = createMemo(() => eventTimes(bench.result().summary));
  const paths = () => PATHS.filter((path) => path !== 'heat.setting' || bench.scenario().heat.control === 'schedule');
  return (
    <div class="bench-schedules">
      <h2>Over the run</h2>
      <p class="quiet">
        What you turn, and when: by the clock, or from the first boil or the first drop. Drag the square knots, or type
        into the rows.
      </p>
      <For each={paths()}>
        {(path) => {
          const field = fieldAt(path);
          return (
            <div id={scheduleAnchor(path)} tabindex="-1" class="bench-schedule">
              <ScheduleEditor
                schedule={valueAtPath(bench.scenario(), path) as Schedule}
                unit={field?.unit ?? '1'}
                hint={path}
                title={field?.title ?? path}
                min={field?.min ?? 0}
                max={field?.max ?? 1}
                times={times()}
                duration_s={bench.scenario().run.duration_s}
                axisEnd_s={bench.axisEnd_s()}
                time_s={bench.time_s}
                onChange={(schedule, quick) => bench.change(path, schedule, quick ? `schedule-${path}` : undefined)}
                units={bench.units()}
                ink={INKS[path]}
                theme={bench.shownTheme()}
              />
            </div>
          );
        }}
      </For>
    </div>
  );
}
