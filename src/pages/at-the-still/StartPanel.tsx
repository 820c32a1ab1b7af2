/** Before the run: what is planned, the sheet to follow, the alarms tried, and the start. */
import { createMemo, createSignal, createUniqueId, For, Show } from 'solid-js';
import { NOTHING_SEEN, runSheet, STOP_RULES, stopRule, STOP_RULE_KINDS, type StopRule } from '../../../sim/index.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { displayUnit } from '../../../sim/index.ts';
import { readySound } from './alarm-sounds.ts';
import { AlarmCheck } from './AlarmCheck.tsx';
import { stillSession } from './session.ts';
import { SheetTable } from './SheetTable.tsx';

const RULE_WORDS: Readonly<Record<StopRule['kind'], string>> = {
  share: 'when 90 % of the oil is collected',
  'oil-in-ten-minutes': 'when ten minutes bring less than 0.5 mL',
  'cost-of-next': 'when the next mL costs more than 0.50',
};
const LONGEST_AGO_MIN = 12 * 60;

export function StartPanel(props: { readonly context: AnalysisContext }) {
  const session = stillSession();
  const id = createUniqueId();
  const [rule, setRule] = createSignal<StopRule['kind']>('share');
  const [ago, setAgo] = createSignal('10');
  const [holds, setHolds] = createSignal('');
  const result = () => props.context.result();
  const water = () => displayUnit('kg', props.context.units(), 'water');
  const receiver_kg = () => {
    const number = Number(holds().replace(',', '.'));
    return holds().trim() !== '' && number > 0 ? water().toSI(number) : null;
  };
  const ago_min = () => Number(ago().replace(',', '.'));
  const agoIsGood = () => ago().trim() !== '' && ago_min() >= 0 && ago_min() <= LONGEST_AGO_MIN;
  const sheet = createMemo(() => runSheet(result(), { ...NOTHING_SEEN, receiver_kg: receiver_kg() }));
  const start = (ago_s: number) => {
    void readySound();
    const { scenario } = result();
    void session.start(scenario, scenario.name, stopRule(rule()), receiver_kg(), ago_s);
  };

  return (
    <>
      <header class="answer-head">
        <h2>At the still</h2>
        <p class="answer-quiet screen-only">
          From the start on, this page knows the minute. It says what comes next, takes your readings, and says how the
          run will end. It never replaces watching the still. <a href="#still-tests">Tests without plant</a> make its
          forecasts surer.
        </p>
      </header>
      <p role="status" class="start-told">
        <Show when={session.endedElsewhere()}>
          The run was ended in another window. It is in the <a href="#run-book">run book</a>.
        </Show>
      </p>
      <section class="start screen-only" aria-label="Start">
        <div class="start-fields">
          <label>
            <span>Stop</span>
            <select onChange={(event) => setRule(STOP_RULE_KINDS[event.currentTarget.selectedIndex] ?? 'share')}>
              <For each={STOP_RULE_KINDS}>
                {(kind) => (
                  <option value={kind} selected={kind === rule()}>
                    {RULE_WORDS[kind]}
                  </option>
                )}
              </For>
            </select>
          </label>
          <label>
            <span>The receiver holds</span>
            <span class="start-amount">
              <input
                class="text-input"
                type="text"
                inputmode="decimal"
                placeholder="not said"
                value={holds()}
                onInput={(event) => setHolds(event.currentTarget.value)}
              />{' '}
              {water().label}
            </span>
          </label>
        </div>
        <div class="start-buttons">
          <button type="button" class="tall is-first" onClick={() => start(0)}>
            Start now: heat is on
          </button>
          <form
            class="start-ago"
            onSubmit={(event) => {
              event.preventDefault();
              if (agoIsGood()) start(60 * ago_min());
            }}
          >
            <label for={id}>or the heat went on</label>
            <input
              id={id}
              class="text-input"
              type="text"
              inputmode="decimal"
              aria-invalid={agoIsGood() ? undefined : 'true'}
              value={ago()}
              onInput={(event) => setAgo(event.currentTarget.value)}
            />
            <button type="submit" class="tall" aria-disabled={!agoIsGood()}>
              min ago: start
            </button>
          </form>
        </div>
        <Show when={STOP_RULES[rule()].unit === '1' && rule() === 'cost-of-next'}>
          <p class="answer-quiet">By the prices of energy and water in the settings.</p>
        </Show>
      </section>
      <AlarmCheck />
      <section aria-labelledby="sheet-title">
        <h3 id="sheet-title">Run sheet</h3>
        <p class="answer-quiet">
          Times count from the moment the heat goes on.{' '}
          <span class="screen-only">Print it to take it to the still.</span>
        </p>
        <SheetTable steps={sheet()} reader={props.context.reader()} doneAt={null} />
      </section>
    </>
  );
}
