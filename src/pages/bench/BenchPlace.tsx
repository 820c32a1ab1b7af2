/**
 * The bench. Its first screen holds cause, still and effect together: the drawing with its time line and the live
 * controls, the verdict, four numbers and a chart. Below it stand the whole verdict, all charts and the timetables.
 */
import { debounce } from '@solid-primitives/scheduled';
import { createEffect, createSignal, lazy, on, onMount, Show, Suspense } from 'solid-js';
import type { ScenarioPart, WorkingId } from '../../../sim/index.ts';
import { Headline } from './Headline.tsx';
import { useBench } from '../../state/bench.ts';
import { createBenchVerdict } from '../../state/bench-verdict.ts';
import { BenchDrawing } from './BenchDrawing.tsx';
import { BenchPlayback } from './BenchPlayback.tsx';
import { BenchHandOut } from './BenchHandOut.tsx';
import { BigNumbers } from './BigNumbers.tsx';
import { createLiveReach, LivePanel } from './LivePanel.tsx';
import { Question } from './Question.tsx';
import { showSchedule } from '../../state/schedule-anchor.ts';
import { Section } from '../../ui/Section.tsx';
import { WhenNear } from '../../ui/WhenNear.tsx';
import './bench.css';
import './first-screen.css';

/** Drawn once the still stands, or below the first view: fetched after it. */
const BenchChart = lazy(async () => ({ default: (await import('./BenchChart.tsx')).BenchChart }));
const BenchCharts = lazy(async () => ({ default: (await import('./BenchCharts.tsx')).BenchCharts }));
const BenchSchedules = lazy(async () => ({ default: (await import('./BenchSchedules.tsx')).BenchSchedules }));
const VerdictPanel = lazy(async () => ({ default: (await import('./Verdict.tsx')).VerdictPanel }));
/** Typesetting is large, and few ask for it. */
const WorkingDialog = lazy(async () => ({ default: (await import('../working/WorkingDialog.tsx')).WorkingDialog }));

/** The forms and the schema behind them are fetched when first needed, or when the page has nothing else to do. */
const loadSettings = () => import('./BenchSettings.tsx');
const BenchSettings = lazy(async () => ({ default: (await loadSettings()).BenchSettings }));

/** The settings are fetched ahead once the first view has had its time. */
const AHEAD_AFTER_MS = 3000;
/** The chart comes once still, verdict and numbers stand. */
const CHART_AFTER_MS = 700;

export function BenchPlace() {
  const bench = useBench();
  const live = createLiveReach();
  const judged = createBenchVerdict(live);
  const [planning, setPlanning] = createSignal(false);
  /** The working asked for last; `open` tells whether it is still looked at. */
  const [working, setWorking] = createSignal<{ readonly topic: WorkingId; readonly open: boolean } | null>(null);
  let still: HTMLElement | undefined;
  const [chartDue, setChartDue] = createSignal(false);
  onMount(debounce(() => setChartDue(true), CHART_AFTER_MS));

  onMount(debounce(() => void loadSettings(), AHEAD_AFTER_MS));

  const planOverTime = (path: string) => {
    bench.select(null);
    setPlanning(true);
    queueMicrotask(() => showSchedule(path));
  };
  /** Back to the first screen, where the still has been scrolled away. */
  const showStill = () => {
    if (still && still.getBoundingClientRect().top < 0) scrollTo({ top: 0 });
  };
  const visit = (part: ScenarioPart, time_s: number | null) => {
    judged.visit(part, time_s);
    showStill();
  };
  // The settings open beside the drawing, or under it: both are to be seen.
  createEffect(
    on(
      bench.selected,
      (part, before) => {
        if (part && !before) showStill();
      },
      { defer: true },
    ),
  );

  return (
    <div class="bench">
      <Section name="The sheets to print">
        <BenchHandOut />
      </Section>
      <div class="first">
        <div class="first-headline">
          <Headline
            lead={judged.verdict().lead}
            soFar={judged.soFar()}
            briefs={judged.verdict().briefs}
            staleBecause={bench.staleBecause()}
            isRough={bench.isRough()}
            onUndo={() => bench.undo()}
            isNew={!bench.hintsDismissed()}
            onKnown={() => bench.dismissHints()}
            onVisit={visit}
          />
        </div>
        <section class="first-still" id="still" aria-label="The still" ref={still}>
          <Section name="The drawing">
            <BenchDrawing />
          </Section>
        </section>
        <div class="first-playback" id="playback" tabindex="-1">
          <Section name="Playback">
            <BenchPlayback />
          </Section>
        </div>
        <div class="first-effect">
          <BigNumbers />
          <div class="first-chart">
            <Section name="The chart">
              <Show when={chartDue()}>
                <Suspense>
                  <BenchChart />
                </Suspense>
              </Show>
            </Section>
          </div>
          <Question suggestion={judged.suggestion()} />
        </div>
        <Show when={bench.selected()}>
          {(part) => (
            <aside class="first-settings screen-only" aria-label="Settings">
              <Section name="The settings">
                <Suspense fallback={<p class="quiet">Fetching the settings…</p>}>
                  <BenchSettings part={part()} onEditSchedule={planOverTime} />
                </Suspense>
              </Section>
            </aside>
          )}
        </Show>
        <div class="first-live screen-only" id="live-controls" tabindex="-1">
          <Section name="The live controls">
            <LivePanel live={live} onPlan={planOverTime} />
          </Section>
        </div>
      </div>
      <div class="bench-verdict" id="verdict" tabindex="-1">
        <Section name="The verdict">
          <Suspense>
            <VerdictPanel
              verdict={judged.verdict()}
              running={bench.running()}
              scenario={bench.result().scenario}
              units={bench.units()}
              onVisit={visit}
              onWorking={(topic) => setWorking({ topic, open: true })}
            />
          </Suspense>
        </Section>
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
