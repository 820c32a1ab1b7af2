/** A word in the head of the page that opens a short list under it. Choosing from it, Escape and leaving it close it. */
import { createSignal, createUniqueId, onCleanup, onMount, type JSX } from 'solid-js';

export interface MenuProps {
  readonly words: string;
  readonly children: JSX.Element;
}

export function Menu(props: MenuProps) {
  const id = createUniqueId();
  const [open, setOpen] = createSignal(false);
  let root!: HTMLDivElement;
  let panel!: HTMLDivElement;
  let button!: HTMLButtonElement;

  onMount(() => {
    // Before the item acts: a dialog it opens gives the focus back to where it was, which must then be in sight.
    const chosen = ({ target }: MouseEvent) => {
      if (!open() || !(target instanceof Element) || !target.closest('button')) return;
      button.focus();
      setOpen(false);
    };
    const elsewhere = ({ target }: PointerEvent) => {
      if (open() && target instanceof Node && !root.contains(target)) setOpen(false);
    };
    panel.addEventListener('click', chosen, true);
    document.addEventListener('pointerdown', elsewhere);
    onCleanup(() => document.removeEventListener('pointerdown', elsewhere));
  });

  return (
    <div
      class="menu"
      ref={root}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !open()) return;
        event.stopPropagation();
        setOpen(false);
        button.focus();
      }}
      onFocusOut={({ relatedTarget }) => {
        if (relatedTarget instanceof Node && !root.contains(relatedTarget)) setOpen(false);
      }}
    >
      <button
        ref={button}
        type="button"
        class="menu-button"
        aria-expanded={open()}
        aria-controls={id}
        onClick={() => setOpen(!open())}
      >
        {props.words}
      </button>
      <div ref={panel} id={id} class="menu-panel" role="group" aria-label={props.words} hidden={!open()}>
        {props.children}
      </div>
    </div>
  );
}
