/** The four numbers one watches, at the moment of the time mark. */
import { createMemo, Index } from 'solid-js';
import { isCoil, quantities } from '../../../sim/index.ts';
import { stillStateAt } from '../../drawing/still-state.ts';
import { useBench } from '../../state/bench.ts';
import { createThrottled } from '../../ui/throttled.ts';

const TOLD_EVERY_MS = 120;
/** Where there is nothing to measure yet. */
const NONE = '–';

interface BigNumber {
  readonly id: 'time' | 'oil' | 'distillate' | 'water';
  readonly name: string;
  readonly value: string;
}

export function BigNumbers() {
  const bench = useBench();
  const time_s = createThrottled(() => bench.time_s(), TOLD_EVERY_MS);
  const numbers = createMemo<readonly BigNumber[]>(() => {
    const result = bench.result();
    const state = stillStateAt(result, time_s());
    const q = quantities(bench.reader());
    const coiled = isCoil(result.scenario.condenser);
    const water_K = coiled ? (state.tubTemperature_K[0] ?? state.tubMean_K) : state.coolantOut_K;
    return [
      { id: 'time', name: 'time', value: q.time(state.time_s) },
      { id: 'oil', name: 'oil', value: q.oil(state.oilCollected_kg, state.oilDensity_kg_m3) },
      {
        id: 'distillate',
        name: 'distillate',
        value: state.condensate_kg_s > 0 ? q.temperature(state.condensateTemperature_K) : NONE,
      },
      { id: 'water', name: coiled ? 'top of the tub' : 'cooling water out', value: q.temperature(water_K) },
    ];
  });
  return (
    <dl class="numbers" aria-label="At the time mark">
      <Index each={numbers()}>
        {(number) => (
          <div class={`number is-${number().id}`}>
            <dt>{number().name}</dt>
            <dd>{number().value}</dd>
          </div>
        )}
      </Index>
    </dl>
  );
}
