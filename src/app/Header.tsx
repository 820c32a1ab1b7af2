/** The head of the page: what is on the bench, and what can be done with the whole of it. */
import { createSignal, For } from 'solid-js';
import { PLACES, type Place } from '../state/places.ts';
import type { UnitSystem } from '../../sim/index.ts';
import { THEMES, type Theme } from '../state/kept-bench.ts';

export interface HeaderProps {
  readonly place: Place;
  /** The reader's hand or focus comes near the places. */
  readonly onNearPlaces: () => void;
  readonly units: UnitSystem;
  readonly theme: Theme;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly onStart: () => void;
  readonly onOpenFile: () => void;
  readonly onSaveScenario: () => void;
  readonly onSaveTable: () => void;
  readonly onShare: () => void;
  readonly onPrint: () => void;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
  readonly onUnits: (units: UnitSystem) => void;
  readonly onTheme: (theme: Theme) => void;
  readonly onKeys: () => void;
}

const THEME_WORDS: Readonly<Record<Theme, string>> = {
  auto: 'as the device',
  light: 'paper',
  dark: 'slate',
  contrast: 'high contrast',
  projector: 'projector',
};

export function Header(props: HeaderProps) {
  const [menuOpen, setMenuOpen] = createSignal(false);
  return (
    <header class="header">
      <p class="header-mark">Limbeck</p>
      <nav
        class="header-places screen-only"
        aria-label="Places"
        onPointerEnter={() => props.onNearPlaces()}
        onFocusIn={() => props.onNearPlaces()}
      >
        <For each={PLACES}>
          {({ id, words }) => (
            <a href={`#${id}`} aria-current={props.place === id ? 'page' : undefined}>
              {words}
            </a>
          )}
        </For>
      </nav>
      <button
        type="button"
        class="header-menu screen-only"
        aria-expanded={menuOpen()}
        aria-controls="header-actions"
        onClick={() => setMenuOpen(!menuOpen())}
      >
        Menu
      </button>
      <div
        id="header-actions"
        class="header-actions screen-only"
        classList={{ 'is-open': menuOpen() }}
        role="group"
        aria-label="This still"
        onClick={({ target }) => {
          // What opens something else makes way for it; undo and redo, which may be pressed in a row, do not.
          if (target instanceof HTMLButtonElement && !target.hasAttribute('aria-disabled')) setMenuOpen(false);
        }}
      >
        <button type="button" class="header-word" onClick={() => props.onStart()}>
          Examples
        </button>
        <button type="button" class="header-word" onClick={() => props.onOpenFile()}>
          Open
        </button>
        <button type="button" class="header-word" onClick={() => props.onSaveScenario()}>
          Save<span class="visually-hidden"> this scenario as a file</span>
        </button>
        <button type="button" class="header-word" onClick={() => props.onSaveTable()}>
          Save table<span class="visually-hidden"> of the run as CSV</span>
        </button>
        <button type="button" class="header-word" onClick={() => props.onShare()}>
          Share<span class="visually-hidden"> this still by a link</span>
        </button>
        <button type="button" class="header-word" onClick={() => props.onPrint()}>
          Print
        </button>
        <button type="button" class="header-word" aria-disabled={!props.canUndo} onClick={() => props.onUndo()}>
          Undo
        </button>
        <button type="button" class="header-word" aria-disabled={!props.canRedo} onClick={() => props.onRedo()}>
          Redo
        </button>
        <label class="header-choice">
          <span>Units</span>
          <select
            value={props.units}
            onChange={(event) => props.onUnits(event.currentTarget.value === 'us' ? 'us' : 'metric')}
          >
            <option value="metric">metric</option>
            <option value="us">US</option>
          </select>
        </label>
        <label class="header-choice">
          <span>Look</span>
          <select
            value={props.theme}
            onChange={(event) => props.onTheme(THEMES[event.currentTarget.selectedIndex] ?? 'auto')}
          >
            <For each={THEMES}>{(theme) => <option value={theme}>{THEME_WORDS[theme]}</option>}</For>
          </select>
        </label>
        <button type="button" class="header-word" onClick={() => props.onKeys()}>
          Keys
        </button>
      </div>
    </header>
  );
}
