/** The oils of a blend, each with its share to drag. */
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { formatQuantity, ownPlantName, priceUnit, type OilShare } from '../../../sim/index.ts';
import {
  changeBlend,
  changeOil,
  MOST_OILS,
  MOST_PARTS,
  type BlendedOil,
  type KeptBlend,
} from '../../state/blend-store.ts';
import { allPlants, openOwnPlants } from '../../state/own-plants-store.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { ChoiceRow } from '../parts/fields.tsx';
import { sentenceCase } from '../plants/plant-rows.ts';
import { sharesOf } from './fade-picture.ts';

const USUAL_PARTS = 20;
const RUN = 'run';

let given = 0;

export const libraryOil = (botanical: string, parts: number): BlendedOil => {
  const plant = allPlants().find(({ id }) => id === botanical);
  return {
    id: `${botanical}-${(given += 1)}-${Date.now().toString(36)}`,
    name: sentenceCase((plant?.name.value ?? ownPlantName(botanical)) || botanical),
    botanical,
    composition: (plant?.composition.value ?? []).map(({ constituent, massFraction }) => ({
      constituent,
      share: massFraction,
    })),
    parts,
    price: 0,
  };
};

/** What the run on the bench collected; `null` where it brought no oil. */
export function oilOfRun(context: AnalysisContext, parts: number): BlendedOil | null {
  const { summary, scenario } = context.result();
  const all = Object.entries(summary.oilByConstituent_kg).filter(([, mass]) => mass > 0);
  const whole = all.reduce((sum, [, mass]) => sum + mass, 0);
  if (!(whole > 0)) return null;
  const composition: readonly OilShare[] = all.map(([constituent, mass]) => ({ constituent, share: mass / whole }));
  const usual = libraryOil(scenario.charge.botanical, parts);
  return { ...usual, name: `Oil of ${scenario.name}`, composition };
}

export function BlendOils(props: { readonly blend: KeptBlend; readonly context: AnalysisContext }) {
  onMount(() => void openOwnPlants());
  const [chosen, setChosen] = createSignal<string>(RUN);
  const shares = createMemo(() => sharesOf({ ...props.blend, strength: 1 }));
  const add = () => {
    const oil = chosen() === RUN ? oilOfRun(props.context, USUAL_PARTS) : libraryOil(chosen(), USUAL_PARTS);
    if (oil) changeBlend({ oils: [...props.blend.oils, oil] });
  };
  const isFull = () => props.blend.oils.length >= MOST_OILS;
  return (
    <section class="blend-oils" aria-labelledby="blend-oils-title">
      <h3 id="blend-oils-title">The oils</h3>
      <ul>
        <For each={props.blend.oils.map(({ id }) => id)}>
          {(id) => {
            const at = () => props.blend.oils.findIndex((each) => each.id === id);
            const oil = createMemo(() => props.blend.oils[at()] as BlendedOil);
            return (
              <Show when={at() >= 0}>
                <li class="blend-oil">
                  <span class="blend-oil-name">{oil().name}</span>
                  <span class="blend-oil-share">
                    {formatQuantity(shares()[at()] ?? 0, '1', props.context.units(), { hint: 'share' })}
                  </span>
                  <input
                    type="range"
                    class="blend-slider"
                    min="0"
                    max={MOST_PARTS}
                    step="1"
                    aria-label={`Parts of ${oil().name}`}
                    value={oil().parts}
                    onInput={(event) => changeOil(id, { parts: Number(event.currentTarget.value) })}
                  />
                  <span class="answer-quiet" aria-hidden="true">
                    Price
                  </span>
                  <QuantityField
                    label={`Price of ${oil().name} per mL`}
                    labelHidden
                    class="blend-price"
                    value={oil().price}
                    unit="1"
                    min={0}
                    max={10000}
                    system={props.context.units()}
                    onCommit={(value) => changeOil(id, { price: value })}
                  />
                  <span class="answer-quiet">{priceUnit('per mL', props.context.reader().currency ?? null)}</span>
                  <Show when={props.blend.oils.length > 1}>
                    <button
                      type="button"
                      class="word"
                      onClick={() => changeBlend({ oils: props.blend.oils.filter((each) => each.id !== id) })}
                    >
                      Remove<span class="visually-hidden"> {oil().name}</span>
                    </button>
                  </Show>
                </li>
              </Show>
            );
          }}
        </For>
      </ul>
      <div class="answer-tools">
        <ChoiceRow
          label="Add"
          value={chosen()}
          options={[
            { value: RUN, words: 'the oil of the run on the bench' },
            ...allPlants().map((plant) => ({ value: plant.id, words: sentenceCase(plant.name.value) })),
          ]}
          onChoose={setChosen}
        />
        <button type="button" aria-disabled={isFull()} onClick={() => !isFull() && add()}>
          Add this oil
        </button>
      </div>
    </section>
  );
}
