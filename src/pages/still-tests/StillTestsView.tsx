/** Tests of the still at home, step by step: what they find is set on the bench, and the next plans are surer. */
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { HOME_TESTS, hindranceOf, homeTestMessages, wholeMessage, type HomeTest } from '../../../sim/index.ts';
import { openHomeTests } from '../../state/home-test-store.ts';
import { openLogbook } from '../../state/logbook-store.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { TestSheet } from './TestSheet.tsx';
import './still-tests.css';

/** Which test is open, kept while the reader looks elsewhere. */
const [opened, setOpened] = createSignal<HomeTest>('heat-up');

export function StillTestsView(props: { readonly context: AnalysisContext }) {
  onMount(() => {
    void openHomeTests();
    void openLogbook();
  });
  const scenario = createMemo(() => props.context.result().scenario);
  const messages = () => homeTestMessages(props.context.reader());
  const hindrance = () => {
    const problem = hindranceOf(opened(), scenario());
    return problem === null ? null : wholeMessage(messages().refusal(problem));
  };
  return (
    <article class="answer still-tests" aria-labelledby="tests-title">
      <header class="answer-head">
        <h2 id="tests-title">Test the still without plant</h2>
        <p class="answer-lead">
          Three things that no drawing tells. An hour with a thermometer finds each, and every later plan is surer.
        </p>
        <fieldset class="choice-radios screen-only">
          <legend class="visually-hidden">Which test</legend>
          <For each={HOME_TESTS}>
            {(test) => (
              <label class="choice-radio">
                <input type="radio" name="home-test" checked={opened() === test} onChange={() => setOpened(test)} />{' '}
                {messages().words(test, scenario()).title}
              </label>
            )}
          </For>
        </fieldset>
      </header>
      <Show when={hindrance()} fallback={<TestSheet test={opened()} still={scenario()} context={props.context} />}>
        {(why) => <p class="answer-quiet">{why()}</p>}
      </Show>
      <p class="answer-quiet screen-only">
        Readings of a whole run tell more still: <a href="#run-book">fit the still in the run book</a>.
      </p>
    </article>
  );
}
