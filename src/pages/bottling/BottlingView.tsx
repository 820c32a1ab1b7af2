/** After the still: settling, bottles, how long it keeps, labels, and the hydrosol. */
import { createMemo, onMount, Show } from 'solid-js';
import { WATER_DROPS_m } from '../../../sim/index.ts';
import { allPlants, openOwnPlants } from '../../state/own-plants-store.ts';
import { openGathered } from '../../state/gathered-store.ts';
import { bottling, changeBottling, openBottling, type Bottling } from '../../state/bottling-store.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { ChoiceRow, RadioRow } from '../parts/fields.tsx';
import { sentenceCase } from '../plants/plant-rows.ts';
import { bottledOil, type BottledOil } from './bottled-oil.ts';
import { createBottlingPlan, spanOrTime } from './bottling-plan.ts';
import { Bottles } from './Bottles.tsx';
import { Filtering } from './Filtering.tsx';
import { Hydrosol } from './Hydrosol.tsx';
import { Labels } from './Labels.tsx';
import { Settling } from './Settling.tsx';
import './bottling.css';
import { Amount } from './fields.tsx';

const SETTLED_DROP_m = 20e-6;

export function BottlingView(props: { readonly context: AnalysisContext }) {
  onMount(() => {
    void openBottling();
    void openOwnPlants();
    void openGathered();
  });
  const oil = createMemo(() => bottledOil(bottling(), props.context.result()));
  const units = () => props.context.units();
  return (
    <article class="answer bottling-view" aria-labelledby="bottling-title">
      <header class="answer-head">
        <h2 id="bottling-title">From the receiver to the bottle</h2>
        <RadioRow
          label="Which oil"
          value={bottling().source}
          options={[
            { value: 'run', words: 'the oil of the run on the bench' },
            { value: 'typed', words: 'another oil' },
          ]}
          onChoose={(source) => changeBottling({ source })}
        />
        <Show when={bottling().source === 'typed'}>
          <div class="answer-tools">
            <ChoiceRow
              label="Plant"
              value={bottling().botanical}
              options={allPlants().map((plant) => ({ value: plant.id, words: sentenceCase(plant.name.value) }))}
              onChoose={(botanical) => changeBottling({ botanical })}
            />
            <Amount of="oil_m3" label="Oil" units={units()} unit="m³" hint="oilVolume" min={1e-7} max={0.01} />
          </div>
        </Show>
        <Show
          when={oil()}
          fallback={
            <p class="answer-problem">This run brings no oil to bottle. Choose another oil, or change the run.</p>
          }
        >
          {(of) => <Bottled oil={of()} now={bottling()} context={props.context} />}
        </Show>
      </header>
    </article>
  );
}

function Bottled(props: { readonly oil: BottledOil; readonly now: Bottling; readonly context: AnalysisContext }) {
  const plan = createBottlingPlan(props);
  const dropTime = createMemo(() => plan.settled().times_s[WATER_DROPS_m.indexOf(SETTLED_DROP_m)] as number);
  return (
    <>
      <p class="answer-lead" role="status">
        {plan.volume(props.oil.oil_m3)} of oil fill {plan.bottles()} {plan.bottles() === 1 ? 'bottle' : 'bottles'} of{' '}
        {plan.volume(props.now.bottle_m3)}. Let it stand first: water drops of {plan.q().drop(SETTLED_DROP_m)} need{' '}
        {spanOrTime(dropTime(), plan.q().time)}.
      </p>
      <Settling {...props} plan={plan} />
      <Filtering {...props} plan={plan} />
      <Bottles {...props} plan={plan} />
      <Labels {...props} plan={plan} />
      <Hydrosol {...props} plan={plan} />
    </>
  );
}
