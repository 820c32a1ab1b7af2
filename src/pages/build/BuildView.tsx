/** The sheet to build from: drawings to scale, what to cut, buy and test; printed as it stands. */
import { createEffect, createMemo, createSignal, For, onMount, Show } from 'solid-js';
import {
  buildingSheetMessages,
  buildingSheetOf,
  burnerFor,
  decidingDraw,
  figureSvg,
  isCoil,
  otherPartsMessages,
  ownRate,
  sheetSvg,
  sizingMessages,
  USUAL_SPRING_BACK,
  wholeMessage,
  type DrawnFigure,
} from '../../../sim/index.ts';
import { sizeQuestion } from '../../state/length-that-holds.ts';
import { openPrices, prices } from '../../state/price-list.ts';
import { createQuery } from '../../state/query.ts';
import { basis, margin, setBasis, sizedFor } from '../../state/size-choices.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { workerPool } from '../../workers/start-pool.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { RunAlarms } from '../parts/RunAlarms.tsx';
import { SaveBar } from '../parts/SaveBar.tsx';
import './build.css';

const [springBack, setSpringBack] = createSignal(USUAL_SPRING_BACK);
const MOST_SPRING_BACK = 0.3;

function Drawing(props: { readonly figure: DrawnFigure }) {
  const [box, setBox] = createSignal<HTMLDivElement>();
  createEffect(() => {
    const svg = new DOMParser().parseFromString(figureSvg(props.figure), 'image/svg+xml').documentElement;
    svg.setAttribute('role', 'img');
    svg.setAttribute('aria-label', props.figure.title);
    box()?.replaceChildren(document.importNode(svg, true));
  });
  return <div class="sheet-drawing" ref={setBox} />;
}

export function BuildView(props: { readonly context: AnalysisContext }) {
  const reader = () => props.context.reader();
  const words = () => buildingSheetMessages(reader());
  const scenario = createMemo(() => props.context.result().scenario);
  const sized = createMemo(() => sizedFor(scenario()));
  const question = createMemo(() => sizedFor(sizeQuestion(scenario())), undefined, {
    equals: (a, b) => JSON.stringify(a) === JSON.stringify(b),
  });
  const own = createQuery(workerPool(), 'sizeOwnTube', () => [question(), margin()], { priority: 'high' });
  onMount(() => void openPrices());
  const tub = createQuery(workerPool(), 'leastTub', () => {
    const size = own.answer();
    const draw = size && decidingDraw(size);
    if (!size || size.lengthWithMargin_m === null || !draw || !isCoil(scenario().condenser) || own.asking())
      return null;
    return [{ ...question(), condenser: { ...question().condenser, length_m: size.lengthWithMargin_m } }, draw];
  });
  /** What is told of the tub and of the heat for the rate that the run itself has. */
  const others = () => {
    const messages = otherPartsMessages(reader());
    const result = props.context.result();
    const burner = burnerFor(result, ownRate(result));
    const found = tub.answer();
    return [...(found ? [messages.tub(found, scenario())] : []), ...(burner ? [messages.burner(burner)] : [])];
  };
  const sheet = createMemo(() => {
    const size = own.answer();
    return (
      size && buildingSheetOf(sized(), size, { prices: prices(), springBack: springBack(), others: others() }, reader())
    );
  });
  const isShorter = () => (sheet()?.scenario.condenser.length_m ?? 0) > scenario().condenser.length_m + 0.005;

  return (
    <article class="answer build-view" aria-labelledby="build-title">
      <header class="answer-head">
        <h2 id="build-title">{words().title}</h2>
        <p class="answer-lead is-small" role="status" classList={{ 'is-asking': own.asking() }}>
          <Show when={own.answer()} fallback={own.problem() ?? 'Looking for the length to build…'}>
            {(size) => <>{wholeMessage(sizingMessages(reader()).size(size(), sized()))}</>}
          </Show>
        </p>
        <Show when={own.answer() && sheet() === null && !own.asking()}>
          <p>{words().noSheet}</p>
        </Show>
        <div class="size-controls screen-only">
          <fieldset class="choice-radios">
            <legend class="visually-hidden">Built for</legend>
            <label class="choice-radio">
              <input type="radio" name="build-basis" checked={basis() === 'plan'} onChange={() => setBasis('plan')} />{' '}
              for your heat plan
            </label>
            <label class="choice-radio">
              <input
                type="radio"
                name="build-basis"
                checked={basis() === 'full-heat'}
                onChange={() => setBasis('full-heat')}
              />{' '}
              for full heat
            </label>
          </fieldset>
          <QuantityField
            label="A wound coil opens by"
            value={springBack()}
            unit="1"
            hint="share"
            min={0}
            max={MOST_SPRING_BACK}
            system={reader().units}
            onCommit={(value) => void setSpringBack(value)}
          />
        </div>
        <div class="answer-tools screen-only">
          <button type="button" class="is-first" disabled={!sheet()} onClick={() => print()}>
            Print the sheet
          </button>
          <Show when={isShorter() && sheet()}>
            {(known) => (
              <button
                type="button"
                onClick={() => props.context.change('condenser.length_m', known().scenario.condenser.length_m)}
              >
                Give your still this length
              </button>
            )}
          </Show>
          <Show when={sheet()}>
            {(known) => (
              <SaveBar
                of="the building sheet"
                runName={scenario().name}
                svg={() => sheetSvg(scenario().name, known().figures, reader())}
                json={() => ({ scenario: known().scenario, measures: known().measures, sections: known().sections })}
              />
            )}
          </Show>
        </div>
        <RunAlarms events={props.context.result().events} reader={reader()} />
      </header>
      <Show when={sheet()}>
        {(known) => (
          <>
            <section class="sheet-drawings" aria-label="Drawings to scale">
              <For each={known().figures}>
                {(figure) => (
                  <figure class={`sheet-figure is-${figure.id}`} tabindex="0">
                    <Drawing figure={figure} />
                    <figcaption>
                      {figure.title}, {words().scale(figure.scale)}
                    </figcaption>
                  </figure>
                )}
              </For>
            </section>
            <div class="sheet-sections">
              <For each={known().sections}>
                {({ heading, rows, lines }) => (
                  <section>
                    <h3>{heading}</h3>
                    <Show when={rows.length > 0}>
                      <dl class="sheet-rows">
                        <For each={rows}>
                          {({ name, value }) => (
                            <div>
                              <dt>{name}</dt>
                              <dd>{value}</dd>
                            </div>
                          )}
                        </For>
                      </dl>
                    </Show>
                    <Show when={lines.length > 0}>
                      <ul class="sheet-lines">
                        <For each={lines}>{(line) => <li>{line}</li>}</For>
                      </ul>
                    </Show>
                  </section>
                )}
              </For>
            </div>
          </>
        )}
      </Show>
    </article>
  );
}
