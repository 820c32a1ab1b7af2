/** What is noted of a run beside its readings, and what follows: yield and cost. */
import { createUniqueId, For, Show } from 'solid-js';
import { quantities, type Reader } from '../../../sim/index.ts';
import type { LoggedRun } from '../../state/logbook-schema.ts';
import { yieldOf, type RunFacts } from '../../state/run-facts.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';

type TextFact = 'place' | 'plant' | 'field';
type AmountFact = Exclude<keyof RunFacts, TextFact | 'date'>;

const TEXTS: readonly { readonly name: TextFact; readonly words: string }[] = [
  { name: 'plant', words: 'Plant' },
  { name: 'field', words: 'Where it grew' },
  { name: 'place', words: 'Where it was distilled' },
];

const AMOUNTS: readonly {
  readonly name: AmountFact;
  readonly words: string;
  readonly unit: string;
  readonly hint: string;
  readonly max: number;
}[] = [
  { name: 'plant_kg', words: 'Weight of the plant', unit: 'kg', hint: 'mass', max: 1000 },
  { name: 'moisture', words: 'Water in the plant', unit: '1', hint: 'share', max: 0.98 },
  { name: 'hydrosol_kg', words: 'Hydrosol', unit: 'kg', hint: 'water', max: 1000 },
  { name: 'energy_J', words: 'Energy', unit: 'J', hint: 'energy', max: 3.6e9 },
  { name: 'water_kg', words: 'Cooling water', unit: 'kg', hint: 'water', max: 1e5 },
];

export interface RunDetailsProps {
  readonly log: LoggedRun;
  readonly reader: Reader;
  readonly onChange: (facts: RunFacts) => void;
}

export function RunDetails(props: RunDetailsProps) {
  const id = createUniqueId();
  const facts = () => props.log.facts;
  const set = (changed: Partial<RunFacts>) => props.onChange({ ...facts(), ...changed });
  const told = () => {
    const { oil_mL, yield_mL_kg, cost, cost_mL } = yieldOf(props.log);
    const q = quantities(props.reader);
    const oil = oil_mL === null ? null : q.stored(oil_mL, 'mL', 'oilVolume', { significant: 3 });
    return [
      ...(oil === null || yield_mL_kg === null
        ? []
        : [`${oil} of oil: ${q.stored(yield_mL_kg * 1e-6, 'm³/kg', 'oilYield', { significant: 3 })} of plant.`]),
      ...(cost === null
        ? []
        : [
            `Energy and cooling water cost ${q.cost(cost)}${cost_mL === null ? '' : `, ${q.cost(cost_mL)} a millilitre`}.`,
          ]),
    ];
  };

  return (
    <section class="run-details" aria-labelledby={id}>
      <h3 id={id}>This run</h3>
      <div class="run-facts">
        <label>
          <span>Date</span>
          <input
            class="text-input"
            type="date"
            value={facts().date}
            onInput={(event) => set({ date: event.currentTarget.value })}
          />
        </label>
        <For each={TEXTS}>
          {({ name, words }) => (
            <label>
              <span>{words}</span>
              <input
                class="text-input"
                type="text"
                maxlength="120"
                value={facts()[name]}
                onInput={(event) => set({ [name]: event.currentTarget.value })}
              />
            </label>
          )}
        </For>
        <For each={AMOUNTS}>
          {({ name, words, unit, hint, max }) => (
            <QuantityField
              label={words}
              value={facts()[name]}
              unit={unit}
              hint={hint}
              min={0}
              max={max}
              system={props.reader.units}
              onClear={() => set({ [name]: null })}
              onCommit={(value) => set({ [name]: value })}
            />
          )}
        </For>
      </div>
      <Show when={told().length > 0}>
        <p class="run-yield" role="status">
          {told().join(' ')}
        </p>
      </Show>
    </section>
  );
}
