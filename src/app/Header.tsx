/** The head of the page: where one can go, and what can be done with the whole of what is on the bench. */
import { createSignal, For, onCleanup, onMount } from 'solid-js';
import { GROUPS, placeWords, type Place } from '../state/places.ts';
import { CURRENCIES, type Currency, type UnitSystem } from '../../sim/index.ts';
import { currencyOf, THEMES, type Theme } from '../state/kept-bench.ts';
import { Menu } from '../ui/Menu.tsx';

export interface HeaderProps {
  readonly place: Place;
  /** The reader's hand or focus comes near the places. */
  readonly onNearPlaces: () => void;
  readonly units: UnitSystem;
  readonly currency: Currency | null;
  readonly theme: Theme;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly onStart: () => void;
  readonly onShelf: () => void;
  readonly onOpenFile: () => void;
  readonly onSaveScenario: () => void;
  readonly onSaveTable: (of: 'people' | 'programs') => void;
  readonly onShare: () => void;
  readonly onPrint: () => void;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
  readonly onUnits: (units: UnitSystem) => void;
  readonly onCurrency: (currency: Currency | null) => void;
  readonly onTheme: (theme: Theme) => void;
  readonly onProject: () => void;
  readonly onKeys: () => void;
}

const THEME_WORDS: Readonly<Record<Theme, string>> = {
  auto: 'as the device',
  light: 'light',
  dark: 'dark',
  contrast: 'high contrast',
  projector: 'projector',
};

function Places(props: Pick<HeaderProps, 'place' | 'onNearPlaces'>) {
  return (
    <nav
      class="header-places"
      aria-label="Places"
      onPointerEnter={() => props.onNearPlaces()}
      onFocusIn={() => props.onNearPlaces()}
    >
      <ul>
        <For each={GROUPS}>
          {({ words, places }) => {
            const isHere = () => places.some((place) => place === props.place);
            return (
              <li classList={{ 'is-here': isHere() }}>
                <a class="header-group" href={`#${places[0]}`} aria-current={isHere() ? 'true' : undefined}>
                  {words}
                </a>
                <ul aria-label={words}>
                  <For each={places}>
                    {(place) => (
                      <li>
                        <a href={`#${place}`} aria-current={props.place === place ? 'page' : undefined}>
                          {placeWords(place)}
                        </a>
                      </li>
                    )}
                  </For>
                </ul>
              </li>
            );
          }}
        </For>
      </ul>
    </nav>
  );
}

export function Header(props: HeaderProps) {
  const [sheetOpen, setSheetOpen] = createSignal(false);
  let sheet!: HTMLDivElement;
  let sheetButton!: HTMLButtonElement;

  onMount(() => {
    const chosen = ({ target }: MouseEvent) => {
      if (!sheetOpen() || !(target instanceof Element) || !target.closest('a, button')) return;
      sheetButton.focus();
      setSheetOpen(false);
    };
    const elsewhere = ({ target }: PointerEvent) => {
      if (target instanceof Node && !sheet.contains(target) && !sheetButton.contains(target)) setSheetOpen(false);
    };
    sheet.addEventListener('click', chosen, true);
    document.addEventListener('pointerdown', elsewhere);
    onCleanup(() => document.removeEventListener('pointerdown', elsewhere));
  });

  return (
    <header
      class="header"
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !sheetOpen()) return;
        setSheetOpen(false);
        sheetButton.focus();
      }}
    >
      <p class="header-mark">Limbeck</p>
      <div id="header-sheet" class="header-sheet screen-only" classList={{ 'is-open': sheetOpen() }} ref={sheet}>
        <Places place={props.place} onNearPlaces={() => props.onNearPlaces()} />
        <Menu words="Files">
          <button type="button" onClick={() => props.onStart()}>
            Examples
          </button>
          <button type="button" onClick={() => props.onShelf()}>
            My stills
          </button>
          <button type="button" onClick={() => props.onOpenFile()}>
            Open
          </button>
          <button type="button" onClick={() => props.onSaveScenario()}>
            Save<span class="visually-hidden"> this scenario as a file</span>
          </button>
          <button type="button" onClick={() => props.onSaveTable('people')}>
            Save table<span class="visually-hidden"> of the run as CSV, in the units shown</span>
          </button>
          <button type="button" onClick={() => props.onSaveTable('programs')}>
            Save SI table<span class="visually-hidden"> of the run as CSV, for programs</span>
          </button>
          <button type="button" onClick={() => props.onShare()}>
            Share<span class="visually-hidden"> this still by a link</span>
          </button>
          <button type="button" onClick={() => props.onPrint()}>
            Print
          </button>
        </Menu>
        <Menu words="Show">
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
            <span>Currency</span>
            <select
              value={props.currency ?? ''}
              onChange={(event) => props.onCurrency(currencyOf(event.currentTarget.value))}
            >
              <option value="">not shown</option>
              <For each={Object.entries(CURRENCIES)}>
                {([code, sign]) => <option value={code}>{sign === code ? code : `${code} ${sign}`}</option>}
              </For>
            </select>
          </label>
          <label class="header-choice">
            <span>Theme</span>
            <select
              value={props.theme}
              onChange={(event) => props.onTheme(THEMES[event.currentTarget.selectedIndex] ?? 'auto')}
            >
              <For each={THEMES}>{(theme) => <option value={theme}>{THEME_WORDS[theme]}</option>}</For>
            </select>
          </label>
          <button type="button" onClick={() => props.onProject()}>
            Projector view
          </button>
          <button type="button" onClick={() => props.onKeys()}>
            Keys
          </button>
        </Menu>
      </div>
      <div class="header-steps screen-only" role="group" aria-label="Changes">
        <button type="button" class="header-word" aria-disabled={!props.canUndo} onClick={() => props.onUndo()}>
          Undo
        </button>
        <button type="button" class="header-word" aria-disabled={!props.canRedo} onClick={() => props.onRedo()}>
          Redo
        </button>
      </div>
      <button
        ref={sheetButton}
        type="button"
        class="header-menu screen-only"
        aria-expanded={sheetOpen()}
        aria-controls="header-sheet"
        onClick={() => setSheetOpen(!sheetOpen())}
      >
        Menu
      </button>
    </header>
  );
}
