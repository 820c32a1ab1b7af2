/** The bench as a page: the drawing across the top, playback, charts in one column, and the verdict beside them. */
import { createEffect, createSignal, lazy, onMount, Show, Suspense } from 'solid-js';
import type { ScenarioPart } from '../../sim/index.ts';
import { Announcer } from './Announcer.tsx';
import { createAutosave } from './autosave.ts';
import { useBench } from './bench.ts';
import { createBenchFiles } from './bench-files.ts';
import { obeyKeys } from './bench-keys.ts';
import { createBenchVerdict } from './bench-verdict.ts';
import { BenchDrawing } from './BenchDrawing.tsx';
import { BenchHeader } from './BenchHeader.tsx';
import { BenchPlayback } from './BenchPlayback.tsx';
import { BenchSettings } from './BenchSettings.tsx';
import { FirstHints } from './FirstHints.tsx';
import { KeysDialog } from './KeysDialog.tsx';
import { createLiveReach, LivePanel } from './LivePanel.tsx';
import { Notice } from './Notice.tsx';
import { showSchedule } from './schedule-anchor.ts';
import { Section } from './Section.tsx';
import { StartDialog, type StartingPoint } from './StartDialog.tsx';
import type { BenchStorage } from './storage.ts';
import { ALWAYS } from '../panels/cautions.ts';
import { Headline } from '../panels/headline.tsx';
import { VerdictPanel } from '../panels/verdict.tsx';
import './app.css';

export interface BenchPageProps {
  readonly initialStorage: BenchStorage;
  /** Fetches where one may start from. */
  readonly startingPoints: () => Promise<readonly StartingPoint[]>;
  /** What the reader must know at once, if anything. */
  readonly initialNotice: string | null;
  /** Whether the run sets off by itself. */
  readonly setsOff: boolean;
}

/** Below the fold, so fetched once the rest stands. */
const BenchCharts = lazy(async () => ({ default: (await import('./BenchCharts.tsx')).BenchCharts }));
const BenchSchedules = lazy(async () => ({ default: (await import('./BenchSchedules.tsx')).BenchSchedules }));

/** Up to this width the settings rise from the bottom edge, and the drawing must stand above them. */
const SETTINGS_BELOW = '(max-width: 1199px)';

const CANNOT_KEEP = 'This browser could not keep your work: its storage is full or blocked. Save the scenario as a file to have it later.';

export function BenchPage(props: BenchPageProps) {
  const bench = useBench();
  const live = createLiveReach();
  const judged = createBenchVerdict(live);
  const [notice, setNotice] = createSignal(props.initialNotice);
  const [dialog, setDialog] = createSignal<'none' | 'keys' | 'start'>('none');
  const [points, setPoints] = createSignal<readonly StartingPoint[]>([]);
  const files = createBenchFiles(bench, setNotice);
  const refused = createAutosave(bench.snapshot, props.initialStorage);
  obeyKeys(bench, () => setDialog('keys'));

  createEffect(() => {
    const theme = bench.shownTheme();
    if (theme === 'auto') delete document.documentElement.dataset['theme'];
    else document.documentElement.dataset['theme'] = theme;
  });
  createEffect(() => {
    document.documentElement.toggleAttribute('data-paper', bench.paper.onPaper());
  });
  createEffect(() => {
    document.title = `${bench.scenario().name} – Limbeck`;
  });
  onMount(() => {
    if (props.setsOff) bench.play();
  });

  const planOverTime = (path: string) => {
    bench.select(null);
    queueMicrotask(() => showSchedule(path));
  };
  const openStart = () => {
    setDialog('start');
    void props.startingPoints().then(setPoints);
  };
  const choose = async (point: StartingPoint) => {
    setDialog('none');
    setNotice(await bench.load(point.scenario));
  };

  let still: HTMLElement | undefined;
  const visit = (part: ScenarioPart, time_s: number | null) => {
    judged.visit(part, time_s);
    still?.scrollIntoView({ block: matchMedia(SETTINGS_BELOW).matches ? 'start' : 'nearest' });
  };

  return (
    <div class="page" classList={{ 'has-settings': bench.selected() !== null }}>
      <a class="skip screen-only" href="#verdict">
        To the verdict
      </a>
      <BenchHeader files={files} onStart={openStart} onKeys={() => setDialog('keys')} />
      <main class="bench" onDragOver={files.onDragOver} onDrop={files.onDrop}>
        <div class="bench-notices">
          <Notice message={notice()} onDismiss={() => setNotice(null)} />
          <Notice message={refused() ? CANNOT_KEEP : null} action={{ words: 'Save the scenario', act: () => files.saveScenario() }} />
        </div>
        <div class="bench-headline">
          <Headline
            lead={judged.verdict().lead}
            facts={judged.verdict().facts}
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
                cautions={ALWAYS}
                onUndo={() => bench.undo()}
                onVisit={visit}
              />
            </Section>
          </div>
        </div>
        <div class="bench-charts">
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
        </div>
      </main>
      <Announcer />
      <KeysDialog open={dialog() === 'keys'} keysOn={bench.keysOn()} onKeysOn={(on) => bench.setKeysOn(on)} onClose={() => setDialog('none')} />
      <StartDialog
        open={dialog() === 'start'}
        points={points()}
        onChoose={(point) => void choose(point)}
        onOpenFile={() => {
          setDialog('none');
          files.pick();
        }}
        onClose={() => setDialog('none')}
      />
    </div>
  );
}
