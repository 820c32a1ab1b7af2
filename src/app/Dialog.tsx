/** A dialog over the page: the browser's own, so focus, Escape and the page behind are looked after. */
import { createEffect, createUniqueId, type JSX } from 'solid-js';

export interface DialogProps {
  readonly open: boolean;
  readonly title: string;
  readonly onClose: () => void;
  readonly children: JSX.Element;
}

export function Dialog(props: DialogProps) {
  const id = createUniqueId();
  let element: HTMLDialogElement | undefined;
  createEffect(() => {
    if (!element) return;
    if (props.open && !element.open) element.showModal();
    else if (!props.open && element.open) element.close();
  });
  return (
    <dialog
      ref={element}
      class="dialog"
      aria-labelledby={id}
      onClose={() => props.onClose()}
      onClick={(event) => {
        if (event.target === element) props.onClose();
      }}
    >
      <div class="dialog-body">
        <div class="dialog-head">
          <h2 id={id}>{props.title}</h2>
          <button type="button" onClick={() => props.onClose()}>
            Close
          </button>
        </div>
        {props.children}
      </div>
    </dialog>
  );
}
