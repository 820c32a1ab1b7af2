/** The run book: what was logged, shown over the model, fitted, and kept for the next plan. */
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { USUAL_FIT } from '../../../sim/index.ts';
import { fileName, saveJson } from '../../state/downloads.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import type { DoneFit } from './FitPanel.tsx';
import { KeptStills } from './KeptStills.tsx';
import { openLogFile, bookTable } from './log-files.ts';
import type { LogUnits } from '../../state/logbook.ts';
import { jsonWithPhotos, LARGEST_BOOK_BYTES, photosIn, writtenWithPhotos } from '../../state/photo-file.ts';
import { photoStore, tidyPhotos } from '../../state/photos.ts';
import type { KeptStill, LoggedRun } from '../../state/logbook-schema.ts';
import {
  addLogbook,
  addLogs,
  changeLog,
  keepStill,
  logbook,
  logbookState,
  openLogbook,
  removeLog,
  removeStill,
  closeInvented,
  isInvented,
  openInvented,
} from '../../state/logbook-store.ts';
import { newId } from '../../state/new-id.ts';
import { askToPersist } from '../../state/persist.ts';
import { dayOf, factsOf } from '../at-the-still/to-logbook.ts';
import { SaveBar } from '../parts/SaveBar.tsx';
import { ToldLine, type Told } from '../parts/ToldLine.tsx';
import { Seasons } from './Seasons.tsx';
import { openedRun, openRun } from '../../state/opened-run.ts';
import { LogEditor } from './LogEditor.tsx';
import './run-book.css';

/** Which log is open, kept while the reader looks elsewhere. */

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;

export function RunBookView(props: { readonly context: AnalysisContext }) {
  const [told, setTold] = createSignal<Told | null>(null);
  let picker: HTMLInputElement | undefined;
  const open = async () => {
    await openLogbook();
    // A browser that keeps nothing has no photos to tidy.
    if (logbookState() === 'kept' && !isInvented()) await tidyPhotos(logbook()).catch(() => undefined);
  };
  onMount(() => void open());
  const chosen = createMemo<LoggedRun | null>(() => {
    const { logs } = logbook();
    return logs.find(({ id }) => id === openedRun()) ?? logs.at(-1) ?? null;
  });
  const usualUnits = (): LogUnits =>
    props.context.units() === 'us'
      ? { oil: 'mL', temperature: '°F', distillate: 'qt' }
      : { oil: 'mL', temperature: '°C', distillate: 'L' };
  const begin = (more: Partial<LoggedRun> = {}) => {
    const log: LoggedRun = {
      id: newId(),
      name: `Run ${logbook().logs.length + 1} of ${props.context.scenario().name}`,
      notes: '',
      scenario: props.context.scenario(),
      units: usualUnits(),
      rows: [],
      draft: '',
      factors: USUAL_FIT,
      zero: 'heat-on',
      zeroAt: '',
      facts: { ...factsOf(props.context.scenario()), date: dayOf(Date.now()) },
      photos: [],
      ...more,
    };
    askToPersist();
    addLogs([log]);
    openRun(log.id);
  };
  const openFile = async (file: File) => {
    const opened = await openLogFile(file, usualUnits());
    if (opened.kind === 'refused') setTold({ words: `${opened.message} Your run book is as it was.` });
    else if (opened.kind === 'book') {
      closeInvented();
      const photos = await keepPhotosOf(opened.json, opened.book.logs);
      const added = addLogbook(opened.book);
      const isNews = added.logs + added.stills > 0;
      openRun(null);
      setTold({
        words: `${
          isNews
            ? `Added ${counted(added.logs, 'log')} and ${counted(added.stills, 'fitted still')} from “${file.name}”.`
            : `All of “${file.name}” is in this run book already.`
        }${photos}`,
      });
    } else {
      begin({ name: opened.name, ...opened.log });
      setTold({ words: `“${opened.name}” stands in the paste box. Check what each column is, then take its lines.` });
    }
  };
  /** Keeps the photos of a file; answers what there is to say of it. */
  const keepPhotosOf = async (json: unknown, logs: readonly LoggedRun[]): Promise<string> => {
    const { photos, damaged } = await photosIn(json, logs);
    const said = damaged === 0 ? '' : ` ${counted(damaged, 'photo')} of the file cannot be read, and is left out.`;
    try {
      if (photos.length > 0) await photoStore().keep(photos);
      return said;
    } catch {
      return ` The storage of this browser is full: the photos of the file are not kept. Delete some photos, then open the file again.${said}`;
    }
  };
  const save = async () => {
    const { json, leftOut } = await writtenWithPhotos(logbook());
    saveJson(json, fileName('json', 'run book'));
    if (leftOut > 0)
      setTold({
        words: `With its ${counted(leftOut, 'photo')} the file would be larger than ${LARGEST_BOOK_BYTES / 1e6} MB, so it is saved without them. Save a log alone to have its photos in a file.`,
      });
  };
  const lookRound = async () => {
    const { ternHollowBook } = await import('./tern-hollow-book.ts');
    openInvented(ternHollowBook());
    openRun(null);
    setTold(null);
  };
  const listOfRuns = () => bookTable(logbook().logs);
  const load = async (still: KeptStill) => {
    const problem = await props.context.load(still.scenario);
    setTold({ words: problem ?? `“${still.name}” is on the bench. Undo brings back the still before it.` });
  };
  const loadOf = async (log: LoggedRun) => {
    const problem = await props.context.load(log.scenario);
    setTold({ words: problem ?? `The still of “${log.name}” is on the bench. Undo brings back the still before it.` });
  };
  const keep = (name: string, { answer }: DoneFit) => {
    if (answer.fitted)
      keepStill({ id: newId(), name, scenario: { ...answer.fitted.scenario, name }, bands: answer.fitted.bands });
  };

  return (
    <article
      class="answer runs-view"
      aria-labelledby="runs-title"
      onDrop={(event) => {
        const file = event.dataTransfer?.files[0];
        if (!file) return;
        // A log or a run book, not a still: the page leaves what is taken here alone.
        event.preventDefault();
        void openFile(file);
      }}
    >
      <header class="answer-head">
        <h2 id="runs-title">What did it really give?</h2>
        <p class="answer-lead">
          Log what came out and when. The model is fitted to your readings, so that the next plan is better.
        </p>
        <div class="answer-tools">
          <button type="button" class="is-first" onClick={() => begin()}>
            New log
          </button>
          <button type="button" onClick={() => picker?.click()}>
            Open a file
          </button>
          <input
            ref={picker}
            type="file"
            hidden
            accept=".json,.csv,.txt,.tsv,application/json,text/csv,text/plain"
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              event.currentTarget.value = '';
              if (file) void openFile(file);
            }}
          />
          <button type="button" onClick={() => void save()}>
            Save the run book
          </button>
          <Show when={!isInvented()}>
            <button type="button" onClick={() => void lookRound()}>
              Look round an invented book
            </button>
          </Show>
        </div>
        <Show when={isInvented()}>
          <p class="runs-invented">
            <span>
              <strong>An invented book</strong>: three seasons of the Tern Hollow garden, distilled by nobody. Try
              anything in it; nothing is kept.
            </span>
            <button
              type="button"
              onClick={() => {
                closeInvented();
                openRun(null);
              }}
            >
              Close it
            </button>
          </p>
        </Show>
        <ToldLine told={told()} onUndone={() => setTold(null)} />
        <Show when={logbookState() === 'refused'}>
          <p class="answer-problem" role="alert">
            This browser stores nothing for this page. Save the run book as a file before you leave.
          </p>
        </Show>
        <Show when={logbook().unread.length > 0}>
          <p class="answer-quiet">
            {logbook().unread.length} entries cannot be read by this version. They are kept, and saved with the others.
          </p>
        </Show>
      </header>
      <Show when={logbookState() !== 'opening'} fallback={<p class="answer-quiet">Opening the run book…</p>}>
        <Show when={chosen()} fallback={<p class="answer-quiet">No run is logged yet.</p>}>
          {(log) => (
            <>
              <div class="log-choice">
                <label class="answer-choice">
                  <span>Log</span>
                  <select onChange={(event) => openRun(event.currentTarget.value)}>
                    <For each={logbook().logs}>
                      {({ id, name }) => (
                        <option value={id} selected={id === log().id}>
                          {name === '' ? 'without a name' : name}
                        </option>
                      )}
                    </For>
                  </select>
                </label>
                <button
                  type="button"
                  class="word"
                  onClick={() => {
                    const { id, name } = log();
                    setTold({ words: `“${name}” is deleted.`, undo: removeLog(id) });
                  }}
                >
                  Delete<span class="visually-hidden"> this log</span>
                </button>
              </div>
              <LogEditor
                log={log()}
                context={props.context}
                onChange={(changed) => changeLog(log().id, changed)}
                onKeep={keep}
                onLoad={() => void loadOf(log())}
              />
            </>
          )}
        </Show>
        <Seasons logs={logbook().logs} units={props.context.units()} />
        <Show when={logbook().logs.length > 0}>
          <SaveBar of="the list of runs" runName="Run book" table={listOfRuns} json={() => jsonWithPhotos(logbook())} />
        </Show>
        <KeptStills
          stills={logbook().stills}
          onLoad={(still) => void load(still)}
          onRemove={(still) => setTold({ words: `“${still.name}” is deleted.`, undo: removeStill(still.id) })}
        />
      </Show>
    </article>
  );
}
