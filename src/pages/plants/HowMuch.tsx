/** From wanted oil to plant, batches, days and garden, or back from a harvest; and what a millilitre costs. */
import { createMemo, For, onMount, Show } from 'solid-js';
import {
  amountSheet,
  bedRoom,
  batchesSheet,
  chargeSheet,
  COST_KINDS,
  costRangeSheet,
  costSheet,
  daysSheet,
  gardenSheet,
  moistureSheet,
  costs,
  formatNumber,
  moistureFromWeighings,
  oilFrom,
  plantFor,
  plantSheet,
  priceUnit,
  quantities,
  quantityQuestion,
  formatQuantity,
  type BatchCosts,
  type QuantityQuestion,
  type Spread,
} from '../../../sim/index.ts';
import { allPlants } from '../../state/own-plants-store.ts';
import { changeQuantity, openQuantity, quantity } from '../../state/quantity-store.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { amountOf, ChoiceRow, RadioRow } from '../parts/fields.tsx';
import { Source } from '../parts/Source.tsx';
import { SheetButton } from '../working/SheetButton.tsx';
import { sentenceCase } from './plant-rows.ts';
import type { PlantTexts } from './plant-texts.ts';
import { plantWords } from './plant-words.ts';

const COST_WORDS: Readonly<Record<keyof BatchCosts, string>> = {
  plant: 'plant',
  energy: 'energy',
  water: 'cooling water',
  work: 'work',
  still: 'share of the still',
  bottles: 'bottles and labels',
  other: 'all else',
};

const MILLILITRE_m3 = 1e-6;

const Amount = amountOf(quantity, changeQuantity);

export function HowMuch(props: { readonly context: AnalysisContext; readonly texts: PlantTexts }) {
  onMount(() => void openQuantity());
  const reader = () => props.context.reader();
  const units = () => props.context.units();
  const q = () => quantities(reader());
  const now = quantity;
  const plant = createMemo(() => allPlants().find(({ id }) => id === now().botanical) ?? allPlants()[0]);
  const state = () =>
    plant()?.states[now().state] === undefined ? (plant()?.defaultCharge.state ?? 'fresh') : now().state;
  /** Room for the charge in the still on the bench. */
  const chamber_m3 = createMemo(() => bedRoom(props.context.scenario().pot));
  const gardenOf = () => plantWords(plant()?.id ?? '', props.texts).harvest?.garden;
  const question = createMemo<QuantityQuestion | null>(() => {
    const of = plant();
    if (!of) return null;
    const { loss, fill, batchesADay } = now();
    return quantityQuestion(of, state(), gardenOf()?.value, { loss, fill, batchesADay, chamber_m3: chamber_m3() });
  });
  /** Where there is an answer there was a question. */
  const asked = () => question() as QuantityQuestion;
  const answer = createMemo(() => {
    const of = question();
    if (of === null) return null;
    return now().from === 'oil' ? plantFor(now().oil_m3, of) : oilFrom(now().harvest_kg, of);
  });
  const between = ({ low, typical, high }: Spread, write: (value: number) => string): string =>
    low === high ? write(typical) : `${write(typical)} (${write(low)}–${write(high)})`;
  const count = (value: number) => formatNumber(value, 0);
  const summary = () => props.context.result().summary;
  const oilABatch_mL = () => {
    const of = question();
    const found = answer();
    return of && found ? (of.yield_m3_kg.typical * found.perBatch_kg) / MILLILITRE_m3 : 0;
  };
  const batch = createMemo<BatchCosts>(() => ({
    plant: now().plantPrice_kg * (answer()?.perBatch_kg ?? 0),
    energy: summary().energyCost,
    water: summary().waterCost,
    work: now().hours * now().wage,
    still: now().stillABatch,
    bottles: now().bottlesABatch,
    other: now().otherABatch,
  }));
  const price = () => (now().price_mL > 0 ? now().price_mL : null);
  const cost = createMemo(() => (oilABatch_mL() > 0 ? costs(batch(), oilABatch_mL(), now().loss, price()) : null));
  const money = (
    label: string,
    key: 'plantPrice_kg' | 'wage' | 'stillABatch' | 'bottlesABatch' | 'otherABatch' | 'price_mL',
    unit = '1',
    hint?: string,
  ) => (
    <Amount
      of={key}
      label={label}
      unit={unit}
      {...(hint === undefined ? {} : { hint })}
      min={0}
      max={1e6}
      units={units()}
      currency={reader().currency ?? null}
    />
  );

  return (
    <section class="how-much" aria-labelledby="how-much-title">
      <h3 id="how-much-title">How much plant, how much oil</h3>
      <div class="form-rows">
        <ChoiceRow
          label="Plant"
          value={plant()?.id ?? ''}
          options={allPlants().map((each) => ({ value: each.id, words: sentenceCase(each.name.value) }))}
          onChoose={(botanical) => changeQuantity({ botanical })}
        />
        <ChoiceRow
          label="Charged"
          value={state()}
          options={(['fresh', 'dry'] as const)
            .filter((each) => plant()?.states[each] !== undefined)
            .map((each) => ({ value: each, words: each }))}
          onChoose={(each) => changeQuantity({ state: each })}
        />
        <RadioRow
          label="Worked out from"
          value={now().from}
          options={[
            { value: 'oil', words: 'from oil that I want' },
            { value: 'harvest', words: 'from plant that I have' },
          ]}
          onChoose={(from) => changeQuantity({ from })}
        />
        <Show
          when={now().from === 'oil'}
          fallback={
            <Amount
              of="harvest_kg"
              label="Plant that I have"
              units={units()}
              unit="kg"
              hint="mass"
              min={0.001}
              max={1e5}
            />
          }
        >
          <Amount of="oil_m3" label="Oil that I want" units={units()} unit="m³" hint="oilVolume" min={1e-7} max={1} />
        </Show>
        <Amount of="batchesADay" label="Batches a day" units={units()} min={1} max={24} integer />
        <Amount of="fill" label="Chamber filled to" units={units()} hint="share" min={0.1} max={1} />
        <Amount of="loss" label="Lost in settling and filling" units={units()} hint="share" min={0} max={0.5} />
      </div>
      <Show when={answer()}>
        {(of) => (
          <>
            <p class="answer-lead is-small" role="status">
              <Show
                when={now().from === 'oil'}
                fallback={
                  <>
                    {q().mass(now().harvest_kg)} give {between(of().oil_m3, (value) => q().oilVolume(value))} of oil.
                  </>
                }
              >
                {q().oilVolume(now().oil_m3)} of oil take {between(of().plant_kg, (value) => q().mass(value))} of plant.
              </Show>{' '}
              <SheetButton
                sheet={() => amountSheet(now().from, asked(), of())}
                units={units()}
                of={now().from === 'oil' ? 'the plant' : 'the oil'}
              />
            </p>
            <dl class="how-much-answer">
              <div>
                <dt>Goes in at once</dt>
                <dd>
                  {q().mass(of().perBatch_kg)}, in the {q().volume(chamber_m3())} over the grid of the still on the
                  bench{' '}
                  <SheetButton sheet={() => chargeSheet(asked(), of())} units={units()} of="what goes in at once" />
                </dd>
              </div>
              <div>
                <dt>Batches</dt>
                <dd>
                  {between(of().batches, count)}{' '}
                  <SheetButton sheet={() => plantSheet(asked(), of())} units={units()} of="the number of batches" />
                </dd>
              </div>
              <div>
                <dt>Days</dt>
                <dd>
                  {between(of().days, count)}{' '}
                  <SheetButton sheet={() => daysSheet(asked(), of())} units={units()} of="the number of days" />
                </dd>
              </div>
              <div>
                <dt>Energy and cooling water</dt>
                <dd>
                  {q().energy(summary().energyFuel_J * of().batches.typical)}{' '}
                  <SheetButton
                    sheet={() => batchesSheet('energy', summary().energyFuel_J, of())}
                    units={units()}
                    of="the energy"
                  />
                  , {q().water(summary().coolantUsed_kg * of().batches.typical)}{' '}
                  <SheetButton
                    sheet={() => batchesSheet('water', summary().coolantUsed_kg, of())}
                    units={units()}
                    of="the cooling water"
                  />
                  , by the run on the bench
                </dd>
              </div>
              <Show when={of().area_m2}>
                {(area) => (
                  <div>
                    <dt>Garden bed</dt>
                    <dd>
                      {between(area(), (value) => q().of('area', value))}, full crop{' '}
                      <SheetButton
                        sheet={() => gardenSheet(asked(), of(), 'bed')}
                        units={units()}
                        of="the garden bed"
                      />{' '}
                      <Show when={gardenOf()}>{(garden) => <Source of={garden()} />}</Show>
                    </dd>
                  </div>
                )}
              </Show>
              <Show when={of().plants}>
                {(plants) => (
                  <div>
                    <dt>Plants in it</dt>
                    <dd>
                      {between(plants(), (value) => count(Math.ceil(value)))}{' '}
                      <SheetButton
                        sheet={() => gardenSheet(asked(), of(), 'plants')}
                        units={units()}
                        of="the number of plants"
                      />
                    </dd>
                  </div>
                )}
              </Show>
            </dl>
          </>
        )}
      </Show>
      <details class="home-test">
        <summary>How moist is it? Weigh it twice</summary>
        <p>
          Weigh a handful, dry it through in a cool oven with the door ajar until it loses no more weight, and weigh it
          again.
        </p>
        <Amount
          of="before_kg"
          label="Before"
          units={units()}
          unit="kg"
          hint="mass"
          min={0.001}
          max={100}
          check={(value) => (value > now().after_kg ? null : 'It must weigh more before than after.')}
        />
        <Amount
          of="after_kg"
          label="After"
          units={units()}
          unit="kg"
          hint="mass"
          min={0.0001}
          max={100}
          check={(value) => (value < now().before_kg ? null : 'It must weigh less after than before.')}
        />
        <p role="status">
          Water in it: {q().share(moistureFromWeighings(now().before_kg, now().after_kg))}.{' '}
          <SheetButton
            sheet={() => moistureSheet(now().before_kg, now().after_kg)}
            units={units()}
            of="the water in the plant"
          />{' '}
          <button
            type="button"
            onClick={() =>
              props.context.change('charge.moisture', moistureFromWeighings(now().before_kg, now().after_kg))
            }
          >
            Use it for the charge on the bench
          </button>
        </p>
      </details>
      <details class="home-test how-much-costs">
        <summary>What a millilitre costs</summary>
        <div class="form-rows">
          {money('Plant', 'plantPrice_kg', '1/kg', 'massPrice')}
          <Amount of="hours" label="Hours a batch" units={units()} min={0} max={200} />
          {money('An hour of work', 'wage')}
          {money('Share of the still, a batch', 'stillABatch')}
          {money('Bottles and labels, a batch', 'bottlesABatch')}
          {money('All else, a batch', 'otherABatch')}
          {money('Price that you get for a mL', 'price_mL')}
        </div>
        <Show when={cost()}>
          {(of) => (
            <>
              <p role="status">
                A batch costs {q().cost(of().batch)} and gives about {q().oilVolume(oilABatch_mL() * MILLILITRE_m3)}:{' '}
                {q().cost(of().perMillilitre)} {priceUnit('per mL', null)}{' '}
                <SheetButton
                  sheet={() => costSheet(batch(), oilABatch_mL(), now().loss, of())}
                  units={units()}
                  of="the cost of a millilitre"
                />
                . With 30&#8239;% less oil {q().cost(of().yieldLow)}, with 30&#8239;% more {q().cost(of().yieldHigh)}
                <Show when={of().plantAtPrice !== null}>
                  ; at your price the plant of a batch may cost {q().cost(of().plantAtPrice)}
                </Show>{' '}
                <SheetButton
                  sheet={() => costRangeSheet(batch(), oilABatch_mL(), now().loss, price(), of())}
                  units={units()}
                  of="the cost with less and with more oil"
                />
                .
              </p>
              <ul class="cost-shares" aria-label="What the cost is made of">
                <For each={COST_KINDS.filter((kind) => of().shares[kind] > 0)}>
                  {(kind) => (
                    <li>
                      {COST_WORDS[kind]}: {formatQuantity(of().shares[kind], '1', units(), { hint: 'share' })},{' '}
                      {q().cost(batch()[kind])}
                    </li>
                  )}
                </For>
              </ul>
            </>
          )}
        </Show>
        <p class="answer-quiet">Energy and cooling water come from the run on the bench. All prices are your own.</p>
      </details>
    </section>
  );
}
