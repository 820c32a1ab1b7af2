/** What another window compared while this one had a comparison of its own: shown on demand, and deleted only on demand. */
import { For } from 'solid-js';
import { isObject } from '../../../sim/index.ts';
import { comparedBeside, deleteCompared, exchangeCompared, type KeptRun } from '../../state/comparison-store.ts';
import { workerPool } from '../../workers/start-pool.ts';

const nameOf = ({ scenario }: KeptRun): string =>
  isObject(scenario) && typeof scenario['name'] === 'string' ? `“${scenario['name']}”` : 'a still';

export function OtherComparisons() {
  return (
    <For each={[...comparedBeside()]}>
      {([key, runs]) => (
        <div class="compare-stale">
          <p>Kept from another window: a comparison of {runs.map(nameOf).join(', ')}.</p>
          <button type="button" onClick={() => void exchangeCompared(workerPool(), key)}>
            Show it and keep this one
          </button>
          <button type="button" onClick={() => deleteCompared(key)}>
            Delete it
          </button>
        </div>
      )}
    </For>
  );
}
