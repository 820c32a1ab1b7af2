/** When to stop: the reader picks the rule, the run says the minute. */
import { createMemo, For, Show } from 'solid-js';
import {
  runLengthMessages,
  STOP_RULES,
  wholeMessage,
  type Reader,
  type StopAdvice,
  type StopRule,
  type UnitSystem,
} from '../../../sim/index.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { CUBIC_METRES_A_MILLILITRE } from './fan-charts.ts';

export interface StopRulePanelProps {
  readonly rules: Readonly<Record<StopRule['kind'], StopRule>>;
  readonly chosen: StopRule['kind'];
  readonly advice: StopAdvice | null;
  readonly asking: boolean;
  readonly duration_s: number;
  readonly units: UnitSystem;
  readonly reader: Reader;
  readonly onChoose: (kind: StopRule['kind']) => void;
  readonly onRule: (rule: StopRule) => void;
  readonly onEndThere: (duration_s: number) => void;
}

const KINDS: readonly { readonly kind: StopRule['kind']; readonly words: string }[] = [
  { kind: 'share', words: 'when this share of the oil is collected' },
  { kind: 'oil-in-ten-minutes', words: 'when ten minutes bring less than' },
  { kind: 'cost-of-next', words: 'when the next millilitre costs more than' },
];

export function StopRulePanel(props: StopRulePanelProps) {
  const share = () => (props.rules.share.kind === 'share' ? props.rules.share.share : STOP_RULES.share.usual);
  const below_mL = () =>
    props.rules['oil-in-ten-minutes'].kind === 'oil-in-ten-minutes'
      ? props.rules['oil-in-ten-minutes'].below_mL
      : STOP_RULES['oil-in-ten-minutes'].usual;
  const above = () =>
    props.rules['cost-of-next'].kind === 'cost-of-next'
      ? props.rules['cost-of-next'].above
      : STOP_RULES['cost-of-next'].usual;
  const end_s = createMemo(() =>
    props.advice?.minute === null || props.advice?.minute === undefined ? null : props.advice.minute * 60,
  );
  const words = createMemo(() => (props.advice ? runLengthMessages(props.reader).stop(props.advice) : null));
  return (
    <section class="stop-rule" aria-labelledby="stop-title">
      <h3 id="stop-title">When to stop</h3>
      <fieldset class="stop-kinds">
        <legend class="visually-hidden">Stop</legend>
        <For each={KINDS}>
          {({ kind, words }) => (
            <div class="stop-kind">
              <label class="choice-radio">
                <input
                  type="radio"
                  name="stop-rule"
                  value={kind}
                  checked={props.chosen === kind}
                  onChange={() => props.onChoose(kind)}
                />{' '}
                Stop {words}
              </label>
              <Show when={kind === 'share'}>
                <QuantityField
                  label="Share of the oil to stop at"
                  labelHidden
                  value={share()}
                  unit="1"
                  hint="share"
                  min={STOP_RULES.share.min}
                  max={STOP_RULES.share.max}
                  system={props.units}
                  onCommit={(value) => props.onRule({ kind: 'share', share: value })}
                />
              </Show>
              <Show when={kind === 'oil-in-ten-minutes'}>
                <QuantityField
                  label="Oil of ten minutes to stop at"
                  labelHidden
                  value={below_mL() * CUBIC_METRES_A_MILLILITRE}
                  unit="m³"
                  hint="oilVolume"
                  min={STOP_RULES['oil-in-ten-minutes'].min * CUBIC_METRES_A_MILLILITRE}
                  max={STOP_RULES['oil-in-ten-minutes'].max * CUBIC_METRES_A_MILLILITRE}
                  system={props.units}
                  onCommit={(value) =>
                    props.onRule({ kind: 'oil-in-ten-minutes', below_mL: value / CUBIC_METRES_A_MILLILITRE })
                  }
                />
              </Show>
              <Show when={kind === 'cost-of-next'}>
                <QuantityField
                  label="Cost of a millilitre to stop at"
                  labelHidden
                  value={above()}
                  unit="1"
                  min={STOP_RULES['cost-of-next'].min}
                  max={STOP_RULES['cost-of-next'].max}
                  system={props.units}
                  onCommit={(value) => props.onRule({ kind: 'cost-of-next', above: value })}
                />
              </Show>
            </div>
          )}
        </For>
      </fieldset>
      <div class="stop-advice" role="status" classList={{ 'is-asking': props.asking }}>
        <Show when={words()} fallback={<p>Working it out…</p>}>
          {(told) => (
            <>
              <p>{told().sentences.join(' ')}</p>
              <For each={told().dangers}>{(danger) => <p class="answer-problem">{wholeMessage(danger)}</p>}</For>
            </>
          )}
        </Show>
      </div>
      <Show when={end_s()}>
        {(at) => (
          <button type="button" aria-disabled={at() === props.duration_s} onClick={() => props.onEndThere(at())}>
            {at() === props.duration_s ? 'The run ends there' : 'End the run there'}
          </button>
        )}
      </Show>
    </section>
  );
}
