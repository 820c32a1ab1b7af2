/** How long a run of a plant takes in the still on the bench, with its range, worked out when it is asked for. */
import { createEffect, createSignal, on, onCleanup, Show } from 'solid-js';
import { chargeFromPlant, quantities, summariseEnsemble, USUAL_SEED, type Botanical } from '../../../sim/index.ts';
import { changeMany } from '../../state/edit.ts';
import { errorMessage } from '../../workers/errors.ts';
import { workerPool } from '../../workers/start-pool.ts';
import { madeToFit } from '../bench/pickers/make-it-fit.ts';
import { underPart } from '../bench/pickers/picker-row.ts';
import { Source } from '../parts/Source.tsx';
import type { AnalysisContext } from '../parts/analysis-context.ts';

/** Runs with what is uncertain drawn anew: enough for a range to the minute, few enough to wait for. */
const DRAWS = 24;

export function RunHere(props: { readonly plant: Botanical; readonly context: AnalysisContext }) {
  const [told, setTold] = createSignal('');
  let asked = new AbortController();
  const giveUp = () => asked.abort();
  onCleanup(giveUp);
  createEffect(
    on(
      () => props.plant.id,
      () => {
        giveUp();
        setTold('');
      },
    ),
  );
  const ask = async (plant: Botanical) => {
    giveUp();
    asked = new AbortController();
    const { signal } = asked;
    const still = props.context.scenario();
    const { values } = madeToFit(still, underPart('charge', chargeFromPlant(plant)), props.context.units());
    const changed = changeMany(still, values);
    if (!changed.ok) {
      setTold('This still cannot run it. Put it in the still to see why.');
      return;
    }
    setTold('Working it out…');
    try {
      const pool = workerPool();
      const scenario = changed.scenario;
      const content = plant.states[scenario.charge.state]?.oilContent.value;
      const bands = content
        ? { oilContent: { low: content.low / content.typical, high: content.high / content.typical } }
        : {};
      const design = await pool.ask('design', [scenario, DRAWS, USUAL_SEED, bands], { signal });
      const rows = [...design.rows.keys()].filter((row) => design.rows[row]?.kind === 'draw');
      const lots = rows.flatMap((_, k) => (k % 3 === 0 ? [rows.slice(k, k + 3)] : []));
      const members = await Promise.all(lots.map((lot) => pool.ask('members', [design, lot], { signal })));
      const q = quantities(props.context.reader());
      const { t90_s, oil_mL } = summariseEnsemble(design, members.flat()).headline;
      if (t90_s.p10 === null || t90_s.p50 === null || t90_s.p90 === null)
        setTold('This still gets too little oil out of it in the planned time.');
      else
        setTold(
          `90 % of what the planned run gives is collected by ${q.time(t90_s.p50)}. In 8 of 10 likely runs it is between ${q.time(t90_s.p10)} and ${q.time(t90_s.p90)}, and the oil between ${q.oilVolume((oil_mL.p10 ?? 0) * 1e-6)} and ${q.oilVolume((oil_mL.p90 ?? 0) * 1e-6)}, from ${q.mass(scenario.charge.mass_kg)}.`,
        );
    } catch (error) {
      if (!signal.aborted) setTold(`It could not be worked out: ${errorMessage(error)}.`);
    }
  };
  return (
    <>
      <button type="button" class="word" onClick={() => void ask(props.plant)}>
        Work it out for the still on the bench
      </button>{' '}
      <Show when={told()}>
        {(words) => (
          <>
            <span role="status">{words()}</span>{' '}
            <Source
              of={{ kind: 'computed', source: `${DRAWS} runs of the model, with what is uncertain drawn anew in each` }}
            />
          </>
        )}
      </Show>
    </>
  );
}
