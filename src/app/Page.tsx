/** The page: its head, the place that is shown, and what may lie over it. */
import { debounce } from '@solid-primitives/scheduled';
import {
  createEffect,
  createMemo,
  createSignal,
  For,
  lazy,
  onCleanup,
  onMount,
  Show,
  Suspense,
  untrack,
} from 'solid-js';
import { Announcer } from '../pages/bench/Announcer.tsx';
import { useBench } from '../state/bench.ts';
import { createBenchFiles } from './bench-files.ts';
import { obeyKeys } from '../pages/bench/bench-keys.ts';
import { BenchHeader } from './BenchHeader.tsx';
import { BenchPlace } from '../pages/bench/BenchPlace.tsx';
import type { DialogName } from './Dialogs.tsx';
import { Notice } from './Notice.tsx';
import { projecting, setProjecting } from '../state/projector.ts';
import { createPlace } from '../state/route.ts';
import { Section } from '../ui/Section.tsx';
import { isShareHash } from '../state/route.ts';
import type { StartingPoint } from './StartDialog.tsx';
import { keepBench } from '../state/kept-bench.ts';
import type { KeptStore } from '../state/kept-store.ts';
import type { Trouble } from '../state/opening.ts';
import type { AnalysisPlace } from '../state/places.ts';
import type { Shelf } from '../state/shelf.ts';
import { waitingBuild } from '../state/waiting-build.ts';
import { isUnderWay } from '../state/run-under-way.ts';
import type { Told } from './told.ts';
import './app.css';
import './header.css';
import './notices.css';

export interface PageProps {
  readonly initialStore: KeptStore;
  /** Fetches where one may start from. */
  readonly startingPoints: () => Promise<readonly StartingPoint[]>;
  /** What the reader must know at once, if anything. */
  readonly initialTrouble: Trouble | null;
  /** Whether what stands on the bench is kept as it stands there. */
  readonly initiallyKept: boolean;
  /** Whether the run sets off by itself. */
  readonly setsOff: boolean;
}

const Dialogs = lazy(async () => ({ default: (await import('./Dialogs.tsx')).Dialogs }));
const KeptLines = lazy(async () => ({ default: (await import('./KeptLines.tsx')).KeptLines }));
const VisitStrip = lazy(async () => ({ default: (await import('./VisitStrip.tsx')).VisitStrip }));
const Projector = lazy(async () => ({ default: (await import('../pages/projector/Projector.tsx')).Projector }));
const ReferencePlace = lazy(async () => ({ default: (await import('./ReferencePlace.tsx')).ReferencePlace }));
const AnalysisPlaces = lazy(async () => ({ default: (await import('./AnalysisPlaces.tsx')).AnalysisPlaces }));

/** After what more readers want. */
const SHELF_AFTER_MS = 5000;

/** Past the head of the page, by the id of what a skip link leads to. */
const SKIPS = [['main', 'To the content']] as const;
const BENCH_SKIPS = [
  ['verdict', 'To the verdict'],
  ['playback', 'To playback'],
  ['live-controls', 'To the live controls'],
] as const;

export function Page(props: PageProps) {
  const bench = useBench();
  const place = createPlace();
  const analysisPlace = (): AnalysisPlace | null => {
    const here = place();
    return here === 'bench' || here === 'reference' ? null : here;
  };
  const [notice, setNotice] = createSignal<Told | null>(null);
  const [dialog, setDialog] = createSignal<DialogName | 'none'>('none');
  const everAsked = createMemo<boolean>((before) => before || dialog() !== 'none', false);
  const [points, setPoints] = createSignal<readonly StartingPoint[]>([]);
  const files = createBenchFiles(bench, setNotice);
  const opened = bench.desk();
  const known = keepBench(bench, props.initialStore, props.initiallyKept ? opened : null);
  const [shelf, setShelf] = createSignal<Shelf | null>(null);
  /** No first view needs it; what is changed before it is there is kept all the same. */
  const fetchShelf = async (): Promise<Shelf> => {
    const { startShelf } = await import('./start-shelf.ts');
    const tell = (message: string) => setNotice({ message });
    return untrack(shelf) ?? setShelf(startShelf({ bench, opened, store: props.initialStore, known, tell }));
  };
  onMount(debounce(() => void fetchShelf(), SHELF_AFTER_MS));
  createEffect(() => {
    if (bench.desk() !== opened || dialog() === 'shelf' || bench.desk().still.visit) void fetchShelf();
  });
  obeyKeys(bench, {
    onBench: () => place() === 'bench' || projecting(),
    project: () => setProjecting(!projecting()),
    showShelf: () => setDialog('shelf'),
    showKeys: () => setDialog('keys'),
  });

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
  createEffect(() => {
    if (place() !== 'bench') bench.pause();
    scrollTo({ top: 0 });
  });
  onMount(() => {
    if (props.setsOff && place() === 'bench') bench.play();
    const trouble = props.initialTrouble;
    if (trouble) void import('./opening-words.ts').then(({ openingTold }) => setNotice(openingTold(trouble)));
    if (isUnderWay()) void import('./AnalysisPlaces.tsx').then((late) => late.followRun(bench.reader));
  });

  /** A link to a still puts it on the bench once; the address is then free of it, so that a reload keeps later changes. */
  const openLink = async () => {
    const { hash } = location;
    if (!isShareHash(hash)) return;
    history.replaceState(null, '', '#bench');
    dispatchEvent(new HashChangeEvent('hashchange'));
    const { openLinkVisitor } = await import('./open-visitor.ts');
    setNotice(await openLinkVisitor(bench, hash));
  };
  onMount(() => void openLink());
  // A file that is dropped anywhere opens here; a browser left to itself would go to it and leave the page.
  addEventListener('dragover', files.onDragOver);
  addEventListener('drop', files.onDrop);
  onCleanup(() => {
    removeEventListener('dragover', files.onDragOver);
    removeEventListener('drop', files.onDrop);
  });
  const onHash = () => void openLink();
  addEventListener('hashchange', onHash);
  onCleanup(() => removeEventListener('hashchange', onHash));

  const openStart = () => {
    setDialog('start');
    void props.startingPoints().then(setPoints);
  };
  const choose = async (point: StartingPoint) => {
    setDialog('none');
    const message = await bench.load(point.scenario);
    setNotice(message === null ? null : { message });
  };

  return (
    <div class="page">
      <For each={place() === 'bench' ? BENCH_SKIPS : SKIPS}>
        {([id, words]) => (
          <a class="skip screen-only" href={`#${id}`}>
            {words}
          </a>
        )}
      </For>
      <BenchHeader
        place={place()}
        files={files}
        onStart={openStart}
        onShelf={() => setDialog('shelf')}
        onShare={() => setDialog('share')}
        onKeys={() => setDialog('keys')}
      />
      <main id="main" tabindex="-1">
        <div class="page-notices">
          <Show when={bench.desk().still.visit}>
            {(visit) => (
              <div class="visit-place screen-only">
                <Suspense>
                  <VisitStrip visit={visit()} shelf={fetchShelf} tell={setNotice} />
                </Suspense>
              </div>
            )}
          </Show>
          <Notice message={notice()?.message ?? null} action={notice()?.action} onDismiss={() => setNotice(null)} />
          <Show
            when={
              waitingBuild() || bench.longRun() || props.initialStore.refused() || props.initialStore.clashes().length
            }
          >
            <Suspense>
              <KeptLines store={props.initialStore} onSaveScenario={() => files.saveScenario()} />
            </Suspense>
          </Show>
        </div>
        <Show when={place() === 'reference'}>
          <Section name="The reference">
            <Suspense fallback={<p class="opening">Fetching this place…</p>}>
              <ReferencePlace />
            </Suspense>
          </Section>
        </Show>
        <Show
          when={analysisPlace()}
          fallback={
            <Show when={place() === 'bench'}>
              <BenchPlace />
            </Show>
          }
        >
          {(here) => (
            <Section name="The answer">
              <Suspense fallback={<p class="opening">Fetching this place…</p>}>
                <AnalysisPlaces place={here()} />
              </Suspense>
            </Section>
          )}
        </Show>
      </main>
      <Show when={projecting()}>
        <Suspense>
          <Projector />
        </Suspense>
      </Show>
      <Announcer />
      <Show when={everAsked()}>
        <Suspense>
          <Dialogs
            open={dialog()}
            keysOn={bench.keysOn()}
            onKeysOn={(on) => bench.setKeysOn(on)}
            scenario={bench.scenario()}
            points={points()}
            shelf={shelf()}
            onBench={bench.desk().still.id}
            onChoose={(point) => void choose(point)}
            onOpenFile={() => {
              setDialog('none');
              files.pick();
            }}
            onClose={() => setDialog('none')}
          />
        </Suspense>
      </Show>
    </div>
  );
}
