/** The likely runs in words: the typical one and the range in which 8 of 10 lie. */
import { For, Show } from 'solid-js';
import {
  runLengthMessages,
  type EnsembleSummary,
  type HeadlineName,
  type NumberBand,
  type Reader,
} from '../../../sim/index.ts';
import { TOLD } from './told-headlines.ts';

export interface SpreadProps {
  readonly summary: EnsembleSummary;
  /** Of the reader's own tube: a run that would need more is only known to need more than this. */
  readonly length_m: number;
  readonly isPriced: boolean;
  /** Whether the run goes on until most of its oil is in, so that a time to 90 % means something. */
  readonly seesMost: boolean;
  readonly reader: Reader;
}

/** Runs that did not get so far, where there were any. */
const missing = ({ counted, of }: NumberBand): string => (counted < of ? ` (${of - counted} of ${of} runs never)` : '');

export function Spread(props: SpreadProps) {
  const told = () =>
    TOLD.filter(
      (name) =>
        props.summary.headline[name].p50 !== null &&
        (name !== 'cost' || props.isPriced) &&
        (name !== 't90_s' || props.seesMost),
    );
  const messages = () => runLengthMessages(props.reader);
  const words = (name: HeadlineName) => messages().band(name, props.summary.headline[name], props.length_m);
  return (
    <dl class="spread">
      <For each={told()}>
        {(name) => (
          <div class="spread-row">
            <dt>{messages().headline(name)}</dt>
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
