/** Seasons side by side: oil a kilogram by plant and year, one small picture a plant, all on one scale. */
import { createMemo, For, Show } from 'solid-js';
import { displayUnit, formatNumber, type UnitSystem } from '../../../sim/index.ts';
import type { LoggedRun } from '../../state/logbook-schema.ts';
import { seasonsOf } from '../../state/run-facts.ts';

const CUBIC_METRES_A_MILLILITRE = 1e-6;

export function Seasons(props: { readonly logs: readonly LoggedRun[]; readonly units: UnitSystem }) {
  const plants = createMemo(() => seasonsOf(props.logs));
  const most = () => Math.max(...plants().flatMap(({ seasons }) => seasons.map(({ most_mL_kg }) => most_mL_kg)));
  const share = (value: number): string => `${(100 * value) / most()}%`;
  const unit = () => displayUnit('m³/kg', props.units, 'oilYield');
  const number = (mL_kg: number): string => formatNumber(unit().fromSI(mL_kg * CUBIC_METRES_A_MILLILITRE), 1);
  return (
    <section aria-labelledby="seasons-title">
      <h3 id="seasons-title">Seasons side by side</h3>
      <Show
        when={plants().length > 0}
        fallback={
          <p class="answer-quiet">
            Runs with a date, a plant, its weight and a reading of oil are compared here by season.
          </p>
        }
      >
        <p class="answer-quiet">
          Oil from the plant, {unit().label}. The bar is the mean of the season; the mark spans its runs.
        </p>
        <div class="seasons">
          <For each={plants()}>
            {({ plant, seasons }) => (
              <table class="season-plant">
                <caption>{plant}</caption>
                <colgroup>
                  <col class="season-year" />
                  <col />
                  <col class="season-all" />
                </colgroup>
                <thead class="visually-hidden">
                  <tr>
                    <th scope="col">Year</th>
                    <th scope="col">Mean, {unit().label}</th>
                    <th scope="col">Least to most</th>
                  </tr>
                </thead>
                <tbody>
                  <For each={seasons}>
                    {({ year, runs, mean_mL_kg, least_mL_kg, most_mL_kg }) => (
                      <tr>
                        <th scope="row">{year}</th>
                        <td class="season-bar">
                          <span class="season-mean" style={{ width: share(mean_mL_kg) }} />
                          <Show when={runs > 1}>
                            <span
                              class="season-span"
                              style={{ left: share(least_mL_kg), width: share(most_mL_kg - least_mL_kg) }}
                            />
                          </Show>
                          <span class="season-number">{number(mean_mL_kg)}</span>
                        </td>
                        <td class="season-runs">
                          {runs === 1 ? '1 run' : `${number(least_mL_kg)} to ${number(most_mL_kg)}, ${runs} runs`}
                        </td>
                      </tr>
                    )}
                  </For>
                </tbody>
              </table>
            )}
          </For>
        </div>
      </Show>
    </section>
  );
}
