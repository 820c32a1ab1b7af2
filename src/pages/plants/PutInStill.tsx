/** Puts a plant into the still on the bench; one from the wild only once somebody has put a name to it. */
import { createUniqueId, Show } from 'solid-js';
import { chargeFromPlant, type Botanical } from '../../../sim/index.ts';
import { madeToFit } from '../bench/pickers/make-it-fit.ts';
import { underPart } from '../bench/pickers/picker-row.ts';
import { withName } from '../bench/settings/named-after.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { identifiedBy, isIdentified, setIdentifiedBy, wild } from './gathered.ts';

export interface PutInStillProps {
  readonly plant: Botanical;
  readonly context: AnalysisContext;
  /** Without the question who identified it, which stands elsewhere. */
  readonly brief?: boolean;
}

export function PutInStill(props: PutInStillProps) {
  const id = createUniqueId();
  const put = () => {
    if (!isIdentified()) return;
    const still = props.context.scenario();
    const { values } = madeToFit(still, underPart('charge', chargeFromPlant(props.plant)), props.context.units());
    props.context.changeMany(withName(values, still));
    location.hash = 'bench';
  };
  return (
    <div class="put-in-still">
      <Show when={wild() && props.brief !== true}>
        <p>
          <label for={id}>Who identified this plant? Write the name of a person who knows it for certain.</label>{' '}
          <input
            id={id}
            class="text-input put-name"
            type="text"
            autocomplete="off"
            value={identifiedBy()}
            onInput={(event) => setIdentifiedBy(event.currentTarget.value)}
          />
        </p>
      </Show>
      <button
        type="button"
        classList={{ 'is-first': props.brief !== true }}
        aria-disabled={!isIdentified()}
        onClick={put}
      >
        Put in the still<span class="visually-hidden">: {props.plant.name.value}</span>
      </button>
      <Show when={!isIdentified() && props.brief !== true}>
        <span class="answer-quiet" role="status">
          Gathered wild: first write who identified it.
        </span>
      </Show>
    </div>
  );
}
