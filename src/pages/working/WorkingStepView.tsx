/** One step of a working: the equation, the values put in, what comes out, and whether the relation holds there. */
import { For, Show } from 'solid-js';
import {
  displayUnit,
  formatQuantity,
  type UnitSystem,
  type WorkingStep,
  type WorkingSymbol,
} from '../../../sim/index.ts';
import { Formula } from './Formula.tsx';
import { PlainNumber } from './PlainNumber.tsx';
import { unitWords } from './working-words.ts';

export interface WorkingStepProps {
  readonly step: WorkingStep;
  readonly number: number;
  readonly units: UnitSystem;
}

/** A value in the reader's units, where those are not the SI units in which equations work. */
const readersQuantity = ({ value, unit }: WorkingSymbol, units: UnitSystem): string | null =>
  displayUnit(unit, units).label === displayUnit(unit, 'metric').label
    ? null
    : formatQuantity(value, unit, units, { significant: 4 });

export function WorkingStepView(props: WorkingStepProps) {
  return (
    <section class="working-step">
      <h3>
        <span class="working-number">{props.number}</span> {props.step.title}
      </h3>
      <Formula tex={props.step.tex} display />
      <table class="working-values">
        <caption class="visually-hidden">Values put into {props.step.title}</caption>
        <thead class="visually-hidden">
          <tr>
            <th scope="col">Symbol</th>
            <th scope="col">What it is</th>
            <th scope="col">Value</th>
            <th scope="col">Where it comes from</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.step.symbols}>
            {(symbol) => (
              <tr>
                <td class="working-symbol">
                  <Formula tex={symbol.tex} />
                </td>
                <th scope="row">{symbol.says}</th>
                <td class="working-value">
                  <span data-as-printed>
                    <PlainNumber value={symbol.value} /> {unitWords(symbol.unit)}
                  </span>
                  <Show when={readersQuantity(symbol, props.units)}>
                    {(words) => <span class="working-own-unit">{words()}</span>}
                  </Show>
                </td>
                <td class="working-from">{symbol.from}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <Formula tex={props.step.substituted} display />
      <Show when={props.step.result.unit !== '1'}>
        <p class="working-plain">
          That is {formatQuantity(props.step.result.value, props.step.result.unit, props.units, { significant: 4 })}.
        </p>
      </Show>
      <Show when={!props.step.valid.inside}>
        <p class="working-outside">Used outside the range that its source gives.</p>
      </Show>
      <Show when={props.step.valid.says.length > 0}>
        <details class="working-validity">
          <summary>{props.step.valid.inside ? 'Within its range' : 'Where it is outside its range'}</summary>
          <ul>
            <For each={props.step.valid.says}>{(said) => <li>{said}</li>}</For>
          </ul>
        </details>
      </Show>
      <p class="working-source">Source: {props.step.source}</p>
    </section>
  );
}
