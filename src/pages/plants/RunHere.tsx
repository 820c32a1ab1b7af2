/** How long a run of a plant takes in the still on the bench, worked out when it is asked for. */
import { createEffect, createSignal, on, Show } from 'solid-js';
import { chargeFromBotanical, quantities, type Botanical } from '../../../sim/index.ts';
import { errorMessage } from '../../workers/errors.ts';
import { workerPool } from '../../workers/start-pool.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';

export function RunHere(props: { readonly plant: Botanical; readonly context: AnalysisContext }) {
  const [told, setTold] = createSignal('');
  createEffect(
    on(
      () => props.plant.id,
      () => setTold(''),
    ),
  );
  const ask = async () => {
    const { id } = props.plant;
    const now = props.context.scenario();
    const scenario = { ...now, charge: { ...now.charge, ...chargeFromBotanical(id) } };
    setTold('Working it out…');
    try {
      const reply = await workerPool().ask('run', [scenario], { priority: 'high' });
      if (props.plant.id !== id) return;
      const q = quantities(props.context.reader());
      if (reply.kind !== 'ran') setTold('This still cannot run it. Put it in the still to see why.');
      else {
        const { t90_s, oilCollected_mL } = reply.result.summary;
        setTold(
          t90_s === null
            ? 'This still gets no oil out of it in the planned time.'
            : `90 % of what the planned run gives is collected by ${q.time(t90_s)}: ${q.oilVolume(0.9 * oilCollected_mL * 1e-6)} from ${q.mass(now.charge.mass_kg)}. A range comes with Run length.`,
        );
      }
    } catch (error) {
      setTold(`It could not be worked out: ${errorMessage(error)}.`);
    }
  };
  return (
    <>
      <button type="button" class="word" onClick={() => void ask()}>
        Work it out for the still on the bench
      </button>{' '}
      <Show when={told()}>{(words) => <span role="status">{words()}</span>}</Show>
    </>
  );
}
