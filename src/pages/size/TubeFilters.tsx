/** Which tubes of the table the reader looks at. */
import { For, type JSX } from 'solid-js';
import type { UnitSystem } from '../../../sim/index.ts';
import { Toggle } from '../../ui/Toggle.tsx';
import { BORES, boreWords, MATERIALS, standards, type TubeFilter } from './tube-rows.ts';

export interface TubeFiltersProps {
  readonly filter: TubeFilter;
  readonly onFilter: (filter: TubeFilter) => void;
  readonly units: UnitSystem;
  /** Stands behind the choices. */
  readonly children: JSX.Element;
}

export function TubeFilters(props: TubeFiltersProps) {
  const change = (part: Partial<TubeFilter>) => props.onFilter({ ...props.filter, ...part });
  return (
    <div class="tubes-controls">
      <label class="answer-choice">
        <span>Find</span>
        <input
          type="search"
          class="text-input"
          placeholder={props.units === 'us' ? '3/8, stainless' : '10 mm, stainless'}
          value={props.filter.search}
          onInput={(event) => change({ search: event.currentTarget.value })}
        />
      </label>
      <label class="answer-choice">
        <span>Standard</span>
        <select onChange={(event) => change({ standard: event.currentTarget.value })}>
          <option value="" selected={props.filter.standard === ''}>
            all standards
          </option>
          <For each={standards}>
            {(standard) => (
              <option value={standard} selected={standard === props.filter.standard}>
                {standard}
              </option>
            )}
          </For>
        </select>
      </label>
      <label class="answer-choice">
        <span>Made of</span>
        <select onChange={(event) => change({ material: event.currentTarget.value })}>
          <option value="" selected={props.filter.material === ''}>
            any material
          </option>
          <For each={MATERIALS}>
            {({ id, words }) => (
              <option value={id} selected={id === props.filter.material}>
                {words}
              </option>
            )}
          </For>
        </select>
      </label>
      <label class="answer-choice">
        <span>Bore</span>
        <select onChange={(event) => change({ bore: BORES[event.currentTarget.selectedIndex]?.id ?? 'any' })}>
          <For each={BORES}>
            {({ id, from_m, to_m }) => (
              <option value={id} selected={id === props.filter.bore}>
                {boreWords(from_m, to_m, props.units)}
              </option>
            )}
          </For>
        </select>
      </label>
      <Toggle on={props.filter.onlyGood} onChange={(onlyGood) => change({ onlyGood })}>
        only what works and fits
      </Toggle>
      <Toggle on={props.filter.onlyPriced} onChange={(onlyPriced) => change({ onlyPriced })}>
        only yours and those with a price of your own
      </Toggle>
      {props.children}
    </div>
  );
}
