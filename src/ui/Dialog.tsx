/** A dialog over the page: the browser's own, so that focus, Escape and the page behind are looked after. */
import { createEffect, createUniqueId, type JSX } from 'solid-js';
import './ui.css';

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
      class="sheet"
      aria-labelledby={id}
      onClose={() => props.onClose()}
      onKeyDown={(event) => {
        // Escape closes this sheet, not what it was opened from.
        if (event.key === 'Escape') event.stopPropagation();
      }}
      onClick={(event) => {
        if (event.target === element) props.onClose();
      }}
    >
      <div class="sheet-body">
        <div class="sheet-head">
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
