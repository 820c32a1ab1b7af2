/** A word that opens a dialog; the dialog is fetched when it is first opened, and stays to close by itself. */
import { createSignal, Show, Suspense, type Accessor, type JSX } from 'solid-js';

export interface LateDialogProps {
  readonly words: JSX.Element;
  readonly children: (open: Accessor<boolean>, close: () => void) => JSX.Element;
}

export function LateDialog(props: LateDialogProps) {
  const [wanted, setWanted] = createSignal(false);
  const [open, setOpen] = createSignal(false);
  return (
    <>
      <button
        type="button"
        class="word"
        onClick={() => {
          setWanted(true);
          setOpen(true);
        }}
      >
        {props.words}
      </button>
      <Show when={wanted()}>
        <Suspense>{props.children(open, () => setOpen(false))}</Suspense>
      </Show>
    </>
  );
}
