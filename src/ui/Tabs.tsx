/** Words of which one is chosen, each with its own page; arrow keys move along them, Home and End to the ends. */
import { createEffect, createUniqueId, Index, type JSX } from 'solid-js';
import './ui.css';

export interface Tab {
  readonly id: string;
  readonly words: string;
  /** Read after the words, such as how many fields are changed. */
  readonly heard?: string;
  /** Shown as a quiet mark. */
  readonly marked?: boolean;
}

export interface TabsProps {
  readonly label: string;
  readonly tabs: readonly Tab[];
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
  readonly children: JSX.Element;
}

const MOVES: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowRight: (at, count) => (at + 1) % count,
  ArrowLeft: (at, count) => (at - 1 + count) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
};

export function Tabs(props: TabsProps) {
  const id = createUniqueId();
  let list: HTMLDivElement | undefined;
  // On a narrow screen the row of words scrolls; the chosen one comes into view, the page stays where it is.
  createEffect(() => {
    const chosen = list?.querySelector<HTMLElement>(`#${CSS.escape(`${id}-${props.chosen}`)}`);
    if (!list || !chosen) return;
    const start = chosen.offsetLeft - list.offsetLeft;
    const hidden = start < list.scrollLeft || start + chosen.offsetWidth > list.scrollLeft + list.clientWidth;
    if (hidden) list.scrollLeft = start - (list.clientWidth - chosen.offsetWidth) / 2;
  });
  const key = (event: KeyboardEvent) => {
    const move = MOVES[event.key];
    if (!move) return;
    event.preventDefault();
    const at = props.tabs.findIndex((tab) => tab.id === props.chosen);
    const next = props.tabs[move(Math.max(0, at), props.tabs.length)];
    if (!next) return;
    props.onChoose(next.id);
    list?.querySelector<HTMLElement>(`#${CSS.escape(`${id}-${next.id}`)}`)?.focus();
  };
  return (
    <div class="tabs">
      <div class="tabs-list" role="tablist" aria-label={props.label} ref={list} onKeyDown={key}>
        <Index each={props.tabs}>
          {(tab) => (
            <button
              type="button"
              role="tab"
              class="tab"
              classList={{ 'is-marked': tab().marked === true }}
              id={`${id}-${tab().id}`}
              aria-selected={tab().id === props.chosen}
              aria-controls={`${id}-page`}
              tabindex={tab().id === props.chosen ? 0 : -1}
              onClick={() => props.onChoose(tab().id)}
            >
              {tab().words}
              <span class="visually-hidden">{tab().heard}</span>
            </button>
          )}
        </Index>
      </div>
      <div class="tabs-page" role="tabpanel" id={`${id}-page`} aria-labelledby={`${id}-${props.chosen}`}>
        {props.children}
      </div>
    </div>
  );
}
