/** Puts a plant into the still on the bench; one from the wild only once somebody has put a name to it. */
import { createUniqueId, Show } from 'solid-js';
import { chargeFromPlant, type Botanical } from '../../../sim/index.ts';
import { madeToFit } from '../bench/pickers/make-it-fit.ts';
import { underPart } from '../bench/pickers/picker-row.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { identifierOf, setIdentifier, wild } from '../../state/gathered-store.ts';
import { ownPlantOf } from '../../state/own-plants-store.ts';
import { gatheredWords, isIdentified, withGathering } from './gathered.ts';
import { sentenceCase } from './plant-rows.ts';

export interface PutInStillProps {
  readonly plant: Botanical;
  readonly context: AnalysisContext;
  /** Without the question who identified it, which stands elsewhere. */
  readonly brief?: boolean;
}

export function PutInStill(props: PutInStillProps) {
  const id = createUniqueId();
  const isReady = () => isIdentified(props.plant.id);
  const put = () => {
    const still = props.context.scenario();
    const { values } = madeToFit(still, underPart('charge', chargeFromPlant(props.plant)), props.context.units());
    const all = withGathering(values, still);
    if (typeof all === 'string') return;
    props.context.changeMany(all);
    location.hash = 'bench';
  };
  return (
    <div class="put-in-still">
      <Show when={ownPlantOf(props.plant.id)?.wild && props.brief !== true}>
        <p>{sentenceCase(gatheredWords(props.plant.id))}.</p>
      </Show>
      <Show when={wild() && ownPlantOf(props.plant.id) === undefined && props.brief !== true}>
        <p>
          <label for={id}>Who identified this plant? Write the name of a person who knows it for certain.</label>{' '}
          <input
            id={id}
            class="text-input put-name"
            type="text"
            autocomplete="off"
            value={identifierOf(props.plant.id)}
            onInput={(event) => setIdentifier(props.plant.id, event.currentTarget.value)}
          />
        </p>
      </Show>
      <button type="button" classList={{ 'is-first': props.brief !== true }} aria-disabled={!isReady()} onClick={put}>
        Put in the still<span class="visually-hidden">: {props.plant.name.value}</span>
      </button>
      <Show when={!isReady() && props.brief !== true}>
        <span class="answer-quiet" role="status">
          Gathered wild: first write who identified it.
        </span>
      </Show>
    </div>
  );
}
