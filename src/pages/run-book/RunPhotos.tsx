/** The photos of a run: seen, named, added, deleted. */
import { createSignal, createUniqueId, For, Show } from 'solid-js';
import { formatDuration } from '../../../sim/index.ts';
import type { LoggedPhoto, LoggedRun } from '../../state/logbook-schema.ts';
import { isInvented } from '../../state/logbook-store.ts';
import { ToldLine, type Told } from '../parts/ToldLine.tsx';
import { Photo, PhotoButton } from '../parts/Photo.tsx';

/** More are hard to look through, and a log with its photos must fit into a file. */
const MOST_PHOTOS = 40;

export interface RunPhotosProps {
  readonly log: LoggedRun;
  readonly onChange: (photos: readonly LoggedPhoto[]) => void;
}

export function RunPhotos(props: RunPhotosProps) {
  const id = createUniqueId();
  const [problem, setProblem] = createSignal<string | null>(null);
  /** The photo deleted last, and from which log. */
  const [deleted, setDeleted] = createSignal<{ readonly of: string; readonly undo: () => void } | null>(null);
  const told = (): Told | null => {
    const last = deleted();
    return last?.of === props.log.id ? { words: 'The photo is deleted.', undo: last.undo } : null;
  };
  const photos = () => props.log.photos;
  const when = ({ at_s }: LoggedPhoto) => (at_s === null ? '' : at_s < 30 ? 'at the start' : formatDuration(at_s));
  const title = (photo: LoggedPhoto) => ['Photo', when(photo), photo.words].filter((part) => part !== '').join(', ');
  const add = (photoId: string) => {
    setDeleted(null);
    if (photos().some((photo) => photo.id === photoId)) setProblem('This photo is in the log already.');
    else props.onChange([...photos(), { id: photoId, at_s: null, words: '' }]);
  };
  const remove = (photo: LoggedPhoto) => {
    const at = photos().indexOf(photo);
    const undo = () => props.onChange(photos().toSpliced(at, 0, photo));
    props.onChange(photos().filter((other) => other !== photo));
    setDeleted({ of: props.log.id, undo });
  };
  return (
    <Show when={!isInvented() || photos().length > 0}>
      <section class="run-photos" aria-labelledby={id}>
        <h3 id={id}>Photos</h3>
        <Show when={photos().length > 0}>
          <ul class="run-photo-list">
            <For each={photos().map((photo) => photo.id)}>
              {(photoId, index) => {
                const photo = (): LoggedPhoto => photos()[index()] ?? { id: photoId, at_s: null, words: '' };
                return (
                  <li class="run-photo">
                    <Photo id={photoId} title={title(photo())} />
                    <span class="answer-quiet">{when(photo())}</span>
                    <input
                      class="text-input"
                      type="text"
                      maxlength="120"
                      placeholder="What it shows"
                      aria-label={`What photo ${index() + 1} shows`}
                      value={photo().words}
                      onInput={(event) => {
                        const words = event.currentTarget.value;
                        props.onChange(photos().map((each, place) => (place === index() ? { ...each, words } : each)));
                      }}
                    />
                    <button type="button" class="word" onClick={() => remove(photo())}>
                      Delete<span class="visually-hidden"> photo {index() + 1}</span>
                    </button>
                  </li>
                );
              }}
            </For>
          </ul>
        </Show>
        <ToldLine told={told()} onUndone={() => setDeleted(null)} />
        <Show when={problem()}>
          {(words) => (
            <p class="answer-problem" role="alert">
              {words()}
            </p>
          )}
        </Show>
        <Show
          when={photos().length < MOST_PHOTOS}
          fallback={<p class="answer-quiet">A log holds {MOST_PHOTOS} photos. Delete one to add another.</p>}
        >
          <div class="answer-tools">
            <PhotoButton words="Add a photo" class="" camera={false} onKept={add} onProblem={setProblem} />
          </div>
        </Show>
      </section>
    </Show>
  );
}
