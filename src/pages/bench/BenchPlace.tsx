/** The bench: the drawing across the top, playback, charts in one column, and the verdict beside them. */
import { createMediaQuery } from '@solid-primitives/media';
import { debounce } from '@solid-primitives/scheduled';
import { createEffect, createSignal, lazy, on, onMount, Show, Suspense } from 'solid-js';
import { safetyMessages, type ScenarioPart, type WorkingId } from '../../../sim/index.ts';
import { Headline } from './Headline.tsx';
import { VerdictPanel } from './Verdict.tsx';
import { useBench } from '../../state/bench.ts';
import { createBenchVerdict } from '../../state/bench-verdict.ts';
import { BenchDrawing } from './BenchDrawing.tsx';
import { BenchPlayback } from './BenchPlayback.tsx';
import { BenchSettings, fetchSettingsAhead } from './BenchSettings.tsx';
import { FirstHints } from './FirstHints.tsx';
import { createLiveReach, LivePanel } from './LivePanel.tsx';
import { showSchedule } from '../../state/schedule-anchor.ts';
import { Section } from '../../ui/Section.tsx';
import { Title } from '../parts/Title.tsx';
import { WhenNear } from '../../ui/WhenNear.tsx';

/** Below the first view, so fetched after it. */
const BenchCharts = lazy(async () => ({ default: (await import('./BenchCharts.tsx')).BenchCharts }));
const BenchSchedules = lazy(async () => ({ default: (await import('./BenchSchedules.tsx')).BenchSchedules }));
/** Typesetting is large, and few ask for it. */
const WorkingDialog = lazy(async () => ({ default: (await import('../working/WorkingDialog.tsx')).WorkingDialog }));

/** Up to this width the settings rise from the bottom edge, and the drawing must stand above them. */
const SETTINGS_BELOW = '(max-width: 1199px)';
/** The settings are fetched ahead once the first view has had its time. */
const AHEAD_AFTER_MS = 3000;

export function BenchPlace() {
  const bench = useBench();
  const live = createLiveReach();
  const judged = createBenchVerdict(live);
  const [planning, setPlanning] = createSignal(false);
  /** The working asked for last; `open` tells whether it is still looked at. */
  const [working, setWorking] = createSignal<{ readonly topic: WorkingId; readonly open: boolean } | null>(null);
  let still: HTMLElement | undefined;

  const isSettingsBelow = createMediaQuery(SETTINGS_BELOW);
  onMount(debounce(fetchSettingsAhead, AHEAD_AFTER_MS));

  const planOverTime = (path: string) => {
    bench.select(null);
    setPlanning(true);
    queueMicrotask(() => showSchedule(path));
  };
  const visit = (part: ScenarioPart, time_s: number | null) => {
    judged.visit(part, time_s);
    still?.scrollIntoView({ block: isSettingsBelow() ? 'start' : 'nearest' });
  };
  // A part picked in the drawing must stay in sight when the settings rise from below.
  createEffect(
    on(
      bench.selected,
      (part, before) => {
        if (part && !before && isSettingsBelow()) still?.scrollIntoView({ block: 'start' });
      },
      { defer: true },
    ),
  );

  return (
    <div class="bench">
      <div class="bench-headline">
        <Title />
        <Headline
          lead={judged.verdict().lead}
          briefs={judged.verdict().briefs}
          suggestion={judged.suggestion()}
          stale={bench.stale()}
          onVisit={visit}
        />
      </div>
      <section class="bench-still" id="still" aria-label="The still" ref={still}>
        <Section name="The drawing">
          <BenchDrawing />
        </Section>
      </section>
      <Show when={bench.selected()}>
        {(part) => (
          <aside class="bench-settings screen-only" aria-label="Settings">
            <Section name="The settings">
              <BenchSettings part={part()} onEditSchedule={planOverTime} />
            </Section>
          </aside>
        )}
      </Show>
      <div class="bench-playback">
        <Section name="Playback">
          <BenchPlayback />
        </Section>
        <Show when={!bench.hintsDismissed()}>
          <FirstHints onDismiss={() => bench.dismissHints()} />
        </Show>
      </div>
      <div class="bench-live screen-only">
        <Section name="The live controls">
          <LivePanel live={live} onPlan={planOverTime} />
        </Section>
      </div>
      <div class="bench-side">
        <div class="bench-verdict" id="verdict" tabindex="-1">
          <Section name="The verdict">
            <VerdictPanel
              verdict={judged.verdict()}
              staleBecause={bench.staleBecause()}
              running={bench.running()}
              safety={safetyMessages(bench.reader())}
              onUndo={() => bench.undo()}
              onVisit={visit}
              onWorking={(topic) => setWorking({ topic, open: true })}
            />
          </Section>
        </div>
      </div>
      <div class="bench-charts">
        <WhenNear wanted={planning()}>
          <Section name="The charts">
            <Suspense>
              <BenchCharts />
            </Suspense>
          </Section>
          <Section name="The schedules">
            <Suspense>
              <BenchSchedules />
            </Suspense>
          </Section>
        </WhenNear>
      </div>
      <Show when={working()}>
        {(asked) => (
          <Suspense>
            <WorkingDialog
              open={asked().open}
              topic={asked().topic}
              scenario={bench.result().scenario}
              units={bench.units()}
              onClose={() => setWorking({ topic: asked().topic, open: false })}
            />
          </Suspense>
        )}
      </Show>
    </div>
  );
}
