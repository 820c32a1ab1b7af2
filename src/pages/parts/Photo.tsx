/** A photo that is kept on this device: small, and whole when it is pressed; and the button that takes one. */
import { createResource, createSignal, onCleanup, Show } from 'solid-js';
import { keepPhoto, PhotoError, photoStore } from '../../state/photos.ts';
import { Dialog } from '../../ui/Dialog.tsx';
import { errorMessage } from '../../workers/errors.ts';

export function Photo(props: { readonly id: string; readonly title: string }) {
  const [isWhole, setWhole] = createSignal(false);
  let address: string | null = null;
  const letGo = () => {
    if (address !== null) URL.revokeObjectURL(address);
    address = null;
  };
  onCleanup(letGo);
  const [shown] = createResource(
    () => props.id,
    async (id) => {
      const jpeg = await photoStore()
        .photo(id)
        .catch(() => null);
      letGo();
      return (address = jpeg === null ? null : URL.createObjectURL(jpeg));
    },
  );
  return (
    <Show when={shown.state === 'ready'} fallback={<span class="photo-room" />}>
      <Show when={shown()} fallback={<span class="photo-room answer-quiet">This photo is not on this device.</span>}>
        {(source) => (
          <>
            <button type="button" class="photo-small" onClick={() => setWhole(true)}>
              <img src={source()} alt={props.title} />
            </button>
            <Dialog open={isWhole()} title={props.title} onClose={() => setWhole(false)}>
              <Show when={isWhole()}>
                <img class="photo-whole" src={source()} alt="" />
              </Show>
            </Dialog>
          </>
        )}
      </Show>
    </Show>
  );
}

export interface PhotoButtonProps {
  readonly words: string;
  readonly class: string;
  /** Asks a phone for its camera at once, not for a picture it has. */
  readonly camera: boolean;
  /** @param asked_ms when the button was pressed */
  readonly onKept: (id: string, asked_ms: number) => void;
  readonly onProblem: (words: string | null) => void;
}

export function PhotoButton(props: PhotoButtonProps) {
  const [isBusy, setBusy] = createSignal(false);
  let picker: HTMLInputElement | undefined;
  let asked_ms = 0;
  const take = async (file: File) => {
    setBusy(true);
    props.onProblem(null);
    try {
      props.onKept(await keepPhoto(file), asked_ms);
    } catch (error) {
      props.onProblem(error instanceof PhotoError ? error.message : `The photo is not kept: ${errorMessage(error)}`);
    }
    setBusy(false);
  };
  return (
    <>
      <button
        type="button"
        class={props.class}
        aria-disabled={isBusy()}
        onClick={() => {
          if (isBusy()) return;
          asked_ms = Date.now();
          picker?.click();
        }}
      >
        {isBusy() ? 'Shrinking the photo…' : props.words}
      </button>
      <input
        ref={picker}
        type="file"
        hidden
        accept="image/*"
        {...(props.camera ? { capture: 'environment' as const } : {})}
        aria-label={props.words}
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          event.currentTarget.value = '';
          if (file) void take(file);
        }}
      />
    </>
  );
}
