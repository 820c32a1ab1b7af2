/** The likely runs in words: the middle and the range in which eight of ten lie. */
import { For, Show } from 'solid-js';
import type { EnsembleSummary, NumberBand } from '../../../sim/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { headlineWords, TOLD } from './length-words.ts';

export interface SpreadProps {
  readonly summary: EnsembleSummary;
  readonly units: UnitSystem;
}

/** Runs that did not get so far, where there were any. */
const missing = ({ counted, of }: NumberBand): string => (counted < of ? ` (${of - counted} of ${of} runs never)` : '');

export function Spread(props: SpreadProps) {
  return (
    <dl class="spread">
      <For each={TOLD}>
        {({ name, title }) => {
          const band = () => props.summary.headline[name];
          const said = (value: number | null) => headlineWords(name, value, props.units);
          return (
            <Show when={band().p50 !== null}>
              <div class="spread-row">
                <dt>{title}</dt>
                <dd>
                  <span class="spread-middle">{said(band().p50)}</span>
                  <span class="spread-range">
                    {said(band().p10)} to {said(band().p90)}
                    {missing(band())}
                  </span>
                </dd>
              </div>
            </Show>
          );
        }}
      </For>
    </dl>
  );
}
