/** Which plant: the library compared, searched and filtered; each opens its own page and goes into the still. */
import { createMemo, createSignal, For, Match, onCleanup, onMount, Show, Switch } from 'solid-js';
import {
  displayUnit,
  formatQuantity,
  isOwnPlant,
  ownPlantId,
  yieldOf,
  type Botanical,
  type OwnPlant,
} from '../../../sim/index.ts';
import { openGathered, setWild, wild } from '../../state/gathered-store.ts';
import { allPlants, openOwnPlants, ownPlantOf, removeOwnPlant, keepOwnPlant } from '../../state/own-plants-store.ts';
import type { PlantTexts } from './plant-texts.ts';
import { restOf } from '../../state/places.ts';
import { Toggle } from '../../ui/Toggle.tsx';
import { AnswerTable, type TableColumn } from '../parts/AnswerTable.tsx';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { HowMuch } from './HowMuch.tsx';
import { NeverDistil } from './NeverDistil.tsx';
import { OwnPlantForm } from './OwnPlantForm.tsx';
import { NEW_PLANT, OwnPlants } from './OwnPlants.tsx';
import { PlantPage } from './PlantPage.tsx';
import { FILTER_IDS, FILTERS, plantsMatching, sentenceCase, type FilterId } from './plant-rows.ts';
import { plantWords } from './plant-words.ts';
import { PutInStill } from './PutInStill.tsx';
import './plants.css';

const [typed, setTyped] = createSignal('');
const [filters, setFilters] = createSignal<ReadonlySet<FilterId>>(new Set());

const createRest = () => {
  const [rest, setRest] = createSignal(restOf(location.hash));
  const follow = () => setRest(restOf(location.hash));
  addEventListener('hashchange', follow);
  onCleanup(() => removeEventListener('hashchange', follow));
  return rest;
};

const missing = '–';

const EDIT = 'edit';
/** Where a plant is shown: the name of an own plant may hold any sign. */
const addressOf = (id: string): string => `plants/${encodeURIComponent(id)}`;

/** Plant of an address, and whether it is to be edited; an address that cannot be read is of no plant. */
function readAddress(rest: string): { readonly id: string; readonly isEdit: boolean } {
  const [id = '', then] = rest.split('/');
  try {
    return { id: decodeURIComponent(id), isEdit: then === EDIT };
  } catch {
    return { id: '', isEdit: false };
  }
}

export function PlantsView(props: { readonly context: AnalysisContext; readonly texts: PlantTexts }) {
  const rest = createRest();
  onMount(() => {
    void openOwnPlants();
    void openGathered();
  });
  const asked = createMemo(() => readAddress(rest()));
  const opened = createMemo(() => allPlants().find(({ id }) => id === asked().id) ?? null);
  const isForm = () => asked().id === NEW_PLANT || (asked().isEdit && ownPlantOf(asked().id) !== undefined);
  const done = (name: string | null) => {
    const id = name === null ? opened()?.id : ownPlantId(name);
    location.hash = id === undefined ? 'plants' : addressOf(id);
  };
  const found = createMemo(() => plantsMatching(allPlants(), typed(), filters()));
  const toggle = (id: FilterId, on: boolean) =>
    setFilters((before) => {
      const after = new Set(before);
      if (on) after.add(id);
      else after.delete(id);
      return after;
    });
  const units = () => props.context.units();
  const oil = (plant: Botanical, state: 'fresh' | 'dry') => {
    const of = yieldOf(plant, state);
    return of === null ? missing : formatQuantity(of.typical, 'm³/kg', units(), { hint: 'oilYield', bare: true });
  };
  const deadly = (plant: Botanical) =>
    plantWords(plant.id, props.texts).lookAlikes.filter(({ severity }) => severity === 'deadly').length;
  const columns = createMemo<readonly TableColumn<Botanical>[]>(() => [
    {
      id: 'name',
      title: 'Plant',
      isWords: true,
      cell: (plant) => (
        <>
          <a href={`#${addressOf(plant.id)}`} class="plant-link">
            {sentenceCase(plant.name.value)}
          </a>
          <Show when={isOwnPlant(plant.id)}>
            {' '}
            <span class="answer-quiet">your own</span>
          </Show>
        </>
      ),
      sortBy: (plant) => plant.name.value,
    },
    {
      id: 'alike',
      title: 'Deadly look-alikes',
      isWords: true,
      cell: (plant) => (
        <Show when={deadly(plant) > 0} fallback={<span class="answer-quiet">none listed</span>}>
          <span class="is-bad alarm-mark">{deadly(plant)}</span>
        </Show>
      ),
      sortBy: (plant) => -deadly(plant),
    },
    {
      id: 'fresh',
      title: 'Oil, fresh',
      unit: displayUnit('m³/kg', units(), 'oilYield').label,
      cell: (plant) => oil(plant, 'fresh'),
      sortBy: (plant) => yieldOf(plant, 'fresh')?.typical ?? null,
    },
    {
      id: 'dry',
      title: 'Oil, dry',
      unit: displayUnit('m³/kg', units(), 'oilYield').label,
      cell: (plant) => oil(plant, 'dry'),
      sortBy: (plant) => yieldOf(plant, 'dry')?.typical ?? null,
    },
    {
      id: 'minutes',
      title: 'Run at home',
      unit: 'min',
      cell: (plant) => plant.distillationMinutes.home.value.join('–'),
      sortBy: (plant) => plant.distillationMinutes.home.value[1],
    },
    {
      id: 'floats',
      title: 'Its oil',
      isWords: true,
      cell: (plant) => plant.floats.value,
      sortBy: (plant) => plant.floats.value,
    },
    {
      id: 'put',
      title: 'Next',
      isWords: true,
      cell: (plant) => <PutInStill plant={plant} context={props.context} brief />,
    },
  ]);

  return (
    <article class="answer plants-view" aria-label="Plants">
      <Switch>
        <Match when={isForm()}>
          <OwnPlantForm
            edited={ownPlantOf(asked().id) ?? null}
            context={props.context}
            texts={props.texts}
            onDone={done}
          />
        </Match>
        <Match when={opened()}>
          {(plant) => <Opened plant={plant()} context={props.context} texts={props.texts} />}
        </Match>
        <Match when={true}>
          <>
            <header class="answer-head">
              <h2>Which plant?</h2>
              <p class="answer-lead">What to cut and when, what it gives, and what it must not be mistaken for.</p>
              <div class="plant-search">
                <label>
                  <span>Search</span>{' '}
                  <input
                    type="search"
                    class="text-input"
                    value={typed()}
                    onInput={(event) => setTyped(event.currentTarget.value)}
                  />
                </label>
                <fieldset class="plant-filters">
                  <legend class="visually-hidden">Show only plants of which</legend>
                  <For each={FILTER_IDS}>
                    {(id) => (
                      <label class="choice-radio">
                        <input
                          type="checkbox"
                          checked={filters().has(id)}
                          onChange={(event) => toggle(id, event.currentTarget.checked)}
                        />{' '}
                        {FILTERS[id].words}
                      </label>
                    )}
                  </For>
                </fieldset>
                <Toggle on={wild()} onChange={setWild}>
                  Gathered wild
                </Toggle>
              </div>
              <Show when={wild()}>
                <p class="answer-problem">
                  Plants from the wild are mistaken for deadly ones every year. Open the plant, compare it with its
                  look-alikes, and have it identified by a person whom you can name. Ask the owner of the land. Check
                  your local rules for protected plants.
                </p>
              </Show>
            </header>
            <section>
              <Show
                when={found().length > 0}
                fallback={
                  <p class="answer-problem">
                    {typed() === '' ? 'No plant passes these filters.' : `“${typed()}” is not in this library.`} The
                    model knows nothing of other plants. Read first which plants must never be distilled.
                  </p>
                }
              >
                <AnswerTable
                  caption="The plants compared"
                  class="plants-table is-cards"
                  columns={columns()}
                  rows={found()}
                />
              </Show>
              <Removed />
              <OwnPlants context={props.context} />
            </section>
            <HowMuch context={props.context} texts={props.texts} />
            <NeverDistil texts={props.texts} />
          </>
        </Match>
      </Switch>
    </article>
  );
}

/** The plant that was deleted last, so that it can come back. */
const [removed, setRemoved] = createSignal<OwnPlant | null>(null);

function Removed() {
  return (
    <Show when={removed()}>
      {(plant) => (
        <p role="status">
          “{plant().name}” is deleted.{' '}
          <button
            type="button"
            onClick={() => {
              keepOwnPlant(plant(), null);
              setRemoved(null);
            }}
          >
            Bring it back
          </button>
        </p>
      )}
    </Show>
  );
}

interface OpenedProps {
  readonly plant: Botanical;
  readonly context: AnalysisContext;
  readonly texts: PlantTexts;
}

function Opened(props: OpenedProps) {
  const own = () => ownPlantOf(props.plant.id);
  const remove = (plant: OwnPlant) => {
    setRemoved(plant);
    location.hash = 'plants';
    removeOwnPlant(plant.name);
  };
  return (
    <>
      <div class="plant-tools">
        <a href="#plants">All plants</a>
        <Show when={own() === undefined}>
          <Toggle on={wild()} onChange={setWild}>
            Gathered wild
          </Toggle>
        </Show>
        <Show when={own()}>
          {(plant) => (
            <>
              <a href={`#${addressOf(props.plant.id)}/${EDIT}`}>Edit this plant</a>
              <button type="button" onClick={() => remove(plant())}>
                Delete this plant
              </button>
            </>
          )}
        </Show>
      </div>
      <PlantPage plant={props.plant} context={props.context} texts={props.texts} />
    </>
  );
}
