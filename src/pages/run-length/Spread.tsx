/** The likely runs in words: the middle and the range in which eight of ten lie. */
import { For, Show } from 'solid-js';
import type { EnsembleSummary, HeadlineName, NumberBand, UnitSystem } from '../../../sim/index.ts';
import { bandWords, TOLD } from './length-words.ts';

export interface SpreadProps {
  readonly summary: EnsembleSummary;
  /** Of the reader's own tube: a run that would need more is only known to need more than this. */
  readonly length_m: number;
  readonly isPriced: boolean;
  /** Whether the run goes on until most of its oil is in, so that a time to nine tenths means something. */
  readonly seesMost: boolean;
  readonly units: UnitSystem;
}

/** Runs that did not get so far, where there were any. */
const missing = ({ counted, of }: NumberBand): string => (counted < of ? ` (${of - counted} of ${of} runs never)` : '');

export function Spread(props: SpreadProps) {
  const told = () =>
    TOLD.filter(
      ({ name }) =>
        props.summary.headline[name].p50 !== null &&
        (name !== 'cost' || props.isPriced) &&
        (name !== 't90_s' || props.seesMost),
    );
  const words = (name: HeadlineName) => bandWords(name, props.summary.headline[name], props.length_m, props.units);
  return (
    <dl class="spread">
      <For each={told()}>
        {({ name, title }) => (
          <div class="spread-row">
            <dt>{title}</dt>
            <dd>
              <span class="spread-middle">{words(name).middle}</span>
              <Show when={words(name).range}>
                {(range) => (
                  <span class="spread-range">
                    {range()}
                    {missing(props.summary.headline[name])}
                  </span>
                )}
              </Show>
            </dd>
          </div>
        )}
      </For>
    </dl>
  );
}
