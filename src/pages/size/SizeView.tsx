/** How much tube: the shortest that is enough, the picture of what it depends on, what the own one can handle, and which to buy. */
import { debounce } from '@solid-primitives/scheduled';
import { createEffect, createMemo, createSignal, on, For, onCleanup, onMount, Show } from 'solid-js';
import {
  atFullHeat,
  busyPower,
  isCoil,
  coolantFails,
  decidingDraw,
  englishReader,
  eventTimes,
  rangeAt,
  sizedLengthSheet,
  sizingMessages,
  toldSizing,
  tubeCost,
  wholeMessage,
  withDrawn,
  type Scenario,
  type OwnTubeSize,
} from '../../../sim/index.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { workerPool } from '../../workers/start-pool.ts';
import { stillAt, type MapAxis } from '../../workers/map-axis.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { createQuery } from '../../state/query.ts';
import { RunAlarms } from '../parts/RunAlarms.tsx';
import { SaveBar } from '../parts/SaveBar.tsx';
import { WorkingButton } from '../working/WorkingButton.tsx';
import { openPrices, prices } from '../../state/price-list.ts';
import { basis, margin, setBasis, setMargin, sizedFor } from '../../state/size-choices.ts';
import { BothHeats } from './BothHeats.tsx';
import { OtherParts } from './OtherParts.tsx';
import { PriceDialog } from './PriceDialog.tsx';
import { CondenserMap } from './CondenserMap.tsx';
import { isConstant, mapBounds, usualAxis, type MapBounds } from './map-grid.ts';
import { createMapSession, type MapSession } from './map-session.ts';
import { sizeQuestion } from '../../state/length-that-holds.ts';
import { createTubeSession, type TubeSession } from './tube-session.ts';
import { ALL_GOOD, tubesInOrder, type TubeFilter } from './tube-rows.ts';
import { createTubeUse } from './tube-use.ts';
import { TubeTable } from './TubeTable.tsx';
import { WhatItHandles } from './WhatItHandles.tsx';
import './size.css';

/** What is kept while the reader looks elsewhere. */
let tubeSession: TubeSession | null = null;
let mapSession: MapSession | null = null;
let mapOf: string | null = null;
let doubtOf: string | null = null;
const [filter, setFilter] = createSignal<TubeFilter>(ALL_GOOD);
const [chosenAxis, setChosenAxis] = createSignal<MapAxis | null>(null);

const QUIET_MS = 250;
const LONGEST_TUBE = 100;

const AGAINST = [
  { axis: 'flow', words: 'against cooling-water flow' },
  { axis: 'tub-volume', words: 'against water in the tub' },
  { axis: 'heat', words: 'against heat' },
] as const;

/** Any place of an axis: the picture has all of them. */
const NOWHERE: Readonly<Record<MapAxis, number>> = { flow: 0, 'tub-volume': 0.1, heat: 0 };

/** What the picture depends on: neither length nor what its axis says. */
const pictureOf = (question: Scenario, axis: MapAxis): Scenario => ({
  ...stillAt(question, axis, NOWHERE[axis]),
  condenser: { ...question.condenser, outletLimit_K: 308.15 },
});

const drawOf = (size: OwnTubeSize | null) => size && decidingDraw(size);

/** Scenarios are told apart by what they say, not by which object says it. */
const bySaying = { equals: (a: Scenario, b: Scenario) => JSON.stringify(a) === JSON.stringify(b) };

export function SizeView(props: { readonly context: AnalysisContext }) {
  const pool = workerPool();
  const tubes = (tubeSession ??= createTubeSession(pool));
  const map = (mapSession ??= createMapSession(pool));
  const units = () => props.context.units();
  const messages = () => sizingMessages(props.context.reader());
  const scenario = createMemo(() => props.context.result().scenario);
  const ofRun = createMemo(() => ({
    times: eventTimes(props.context.result().summary),
    heat_W: busyPower(props.context.result()),
  }));
  const question = createMemo(() => sizeQuestion(scenario()), undefined, bySaying);
  // The first coarse picture is to be seen at once; the longer searches wait for it.
  const pictured = createMemo(() => map.field() !== null || map.problem() !== null);
  const fullHeat = createMemo(() => atFullHeat(question()), undefined, {
    equals: (a, b) => JSON.stringify(a) === JSON.stringify(b),
  });
  /** Where the plan is full heat, both are one. */
  const isFull = () => basis() === 'full-heat' && fullHeat() !== null;
  const asked = () => sizedFor(question());
  const unasked = () => (isFull() ? question() : fullHeat());
  /** What the lead is told for: the still with the heat that it is sized for. */
  const sized = createMemo(() => sizedFor(scenario()));
  const own = createQuery(pool, 'sizeOwnTube', () => (pictured() ? [asked(), margin()] : null), { priority: 'high' });
  const other = createQuery(
    pool,
    'sizeOwnTube',
    () => {
      const rest = unasked();
      return own.answer() && rest ? [rest, margin()] : null;
    },
    { quiet_ms: 500 },
  );
  const bothSizes = () => {
    const [here, there] = [own.answer(), unasked() === null ? own.answer() : other.answer()];
    return isFull() ? { plan: there, 'full-heat': here } : { plan: here, 'full-heat': there };
  };
  const cost = () => {
    const size = own.answer();
    return size && tubeCost(size, prices(), scenario());
  };
  const [pricing, setPricing] = createSignal<{ readonly tube: string | null } | null>(null);
  onMount(() => void openPrices());
  const hardest = createQuery(pool, 'hardestBoil', () => (pictured() ? [scenario()] : null), { quiet_ms: 500 });
  const least = createQuery(pool, 'leastWater', () => (pictured() ? [scenario()] : null), { quiet_ms: 500 });

  /** The coil that is to be bought, in the run that the tub must last. */
  const tub = createQuery(
    pool,
    'leastTub',
    () => {
      const size = own.answer();
      const draw = drawOf(size);
      if (!size || size.lengthWithMargin_m === null || draw === null || !isCoil(scenario().condenser) || own.asking())
        return null;
      return [{ ...asked(), condenser: { ...asked().condenser, length_m: size.lengthWithMargin_m } }, draw];
    },
    { quiet_ms: 500 },
  );

  const axis = () => chosenAxis() ?? usualAxis(scenario());
  const nothingComes = () => own.answer()?.verdict === 'no-vapour';
  const needed = () => own.answer()?.length_m ?? null;
  // The axes follow the run, not the pointer: a point dragged to the edge changes them once it rests.
  const bounds = createMemo<MapBounds>((before) => {
    const next = mapBounds(sized(), axis(), ofRun(), needed(), before ?? null);
    const isSame =
      before?.axis === next.axis &&
      before.x[0] === next.x[0] &&
      before.x[1] === next.x[1] &&
      before.length_m[1] === next.length_m[1];
    return isSame ? before : next;
  });
  const picture = createMemo(() => pictureOf(asked(), axis()), undefined, bySaying);
  createEffect(
    on([picture, bounds], ([still, within]) => {
      const of = JSON.stringify([still, within]);
      if (mapOf === of && (map.field() !== null || map.running())) return;
      const start = () => {
        mapOf = of;
        map.start(still, within);
      };
      debounce(start, mapOf === null ? 0 : QUIET_MS)();
    }),
  );

  // The band of the doubt comes once the picture is whole and it is known which run decides.
  createEffect(
    on([picture, bounds, map.running, own.answer, own.asking], ([still, within, running, size, asking]) => {
      const draw = drawOf(size);
      if (running || asking || !draw || !size || size.length_m === null || map.field()?.bounds !== within) return;
      const deciding = withDrawn(still, draw);
      const of = JSON.stringify(deciding);
      if (map.doubt()?.bounds === within && doubtOf === of) return;
      doubtOf = of;
      map.startDoubt(deciding, within);
    }),
  );

  const tubesOf = (size: OwnTubeSize) => JSON.stringify([asked(), margin(), size.length_m]);
  const startTubes = () => {
    const size = own.answer();
    // Where nothing comes over every tube holds at any length, which tells no tube from another.
    if (!size || size.verdict === 'no-vapour') return;
    const hopeless = coolantFails(size.verdict) ? LONGEST_TUBE : 2 * scenario().condenser.length_m;
    tubes.start(
      tubesOf(size),
      asked(),
      margin(),
      size,
      tubesInOrder(filter(), size, isCoil(question().condenser), hopeless, prices()),
    );
  };
  createEffect(
    on([own.answer, own.asking], ([size, asking]) => {
      if (size && !asking && tubes.of() !== tubesOf(size)) startTubes();
    }),
  );
  onCleanup(() => {
    tubes.stop();
    map.stop();
  });

  const use = createTubeUse(
    pool,
    () => ({ scenario: asked(), margin: margin() }),
    (values) => props.context.changeMany(values),
  );
  const hasTub = () => isCoil(scenario().condenser);

  return (
    <article class="answer size-view" aria-labelledby="size-title">
      <header class="answer-head">
        <h2 id="size-title">How much tube?</h2>
        <p class="answer-lead" role="status" classList={{ 'is-asking': own.asking() }}>
          <Show
            when={own.answer()}
            fallback={own.problem() ?? 'Looking for the shortest that is enough in nine runs of ten…'}
          >
            {(size) => <>{wholeMessage(messages().size(size(), sized()))}</>}
          </Show>
        </p>
        <p class="answer-more">
          <Show when={own.answer()}>
            {(size) => (
              <>
                {[
                  messages().coil(size(), scenario(), cost()),
                  messages().ownLength(size(), scenario()),
                  messages().decides(size()),
                  messages().condensing(scenario(), props.context.result().summary),
                ]
                  .filter((sentence) => sentence !== null)
                  .join(' ')}
              </>
            )}
          </Show>
        </p>
        <BothHeats
          basis={isFull() ? 'full-heat' : basis()}
          onBasis={setBasis}
          sizes={bothSizes()}
          reader={props.context.reader()}
        />
        <div class="size-controls">
          <QuantityField
            label="Distillate no warmer than"
            value={scenario().condenser.outletLimit_K}
            unit="K"
            {...rangeAt('condenser.outletLimit_K')}
            system={units()}
            onCommit={(value, nudge) =>
              props.context.change('condenser.outletLimit_K', value, nudge ? 'size-limit' : undefined)
            }
          />
          <QuantityField
            label="Margin on the length"
            value={margin()}
            unit="1"
            hint="share"
            min={0}
            max={2}
            system={units()}
            onCommit={(value) => void setMargin(value)}
          />
        </div>
        <div class="answer-tools">
          <WorkingButton
            topic="condensing-length"
            sheet={() => {
              const size = own.answer();
              return size && sizedLengthSheet(size, sized());
            }}
            scenario={sized()}
            units={units()}
          />
          <SaveBar
            of="the size"
            runName={scenario().name}
            json={() => ({
              scenario: scenario(),
              margin: margin(),
              ...toldSizing(
                {
                  own: bothSizes().plan,
                  atFullHeat: fullHeat() === null ? null : bothSizes()['full-heat'],
                  hardestBoil: hardest.answer(),
                  leastWater: least.answer(),
                },
                scenario(),
                englishReader(units()),
              ),
            })}
          />
        </div>
        <p class="screen-only">
          <a href="#build">Building sheet</a>: drawings to scale, what to cut, what to buy, what to test.
        </p>
        <RunAlarms events={props.context.result().events} reader={englishReader(props.context.units())} />
      </header>

      <section class="size-map" aria-labelledby="map-title">
        <h3 id="map-title">What it depends on</h3>
        <p class="answer-quiet">
          Lines of equal outlet temperature at its warmest over the whole run. Above the dashed line nine runs of ten
          stay below the limit. Drag your still, or move it with the arrow keys, and it changes on the bench too.
          <Show when={axis() === 'flow' && !isConstant(scenario().cooling.flow_kg_s)}>
            {' '}
            Your tap changes during the run: the point stands at its mean, and moving it sets one flow for the whole
            run.
          </Show>
          <Show when={axis() === 'heat'}>
            {' '}
            The heat is the same throughout the run here: the point stands at what your plan has while it distils, and
            moving it sets one heat for the whole run. A plan that starts harder needs more than its point shows.
          </Show>
        </p>
        <fieldset class="choice-radios">
          <legend class="visually-hidden">Across</legend>
          <For each={AGAINST.filter(({ axis: id }) => id !== 'tub-volume' || hasTub())}>
            {({ axis: id, words }) => (
              <label class="choice-radio">
                <input type="radio" name="map-axis" checked={axis() === id} onChange={() => setChosenAxis(id)} />{' '}
                {words}
              </label>
            )}
          </For>
        </fieldset>
        <CondenserMap
          scenario={props.context.scenario()}
          run={ofRun()}
          bounds={bounds()}
          field={map.field()}
          doubt={map.doubt()}
          units={units()}
          theme={props.context.theme}
          onMove={(changes, gesture) => props.context.changeMany(changes, gesture)}
        />
        <p class="map-state answer-quiet" role="status">
          {map.problem() ??
            (map.running()
              ? map.field()?.bounds === bounds()
                ? 'Refining the picture…'
                : 'Working out the picture…'
              : '')}
        </p>
      </section>

      <WhatItHandles context={props.context} hardest={hardest} least={least} nothingComes={nothingComes()} />

      <Show when={!nothingComes()}>
        <OtherParts
          result={props.context.result()}
          peakVapour_kg_s={own.answer()?.peakVapour_kg_s ?? null}
          tub={tub}
          water={least}
          units={units()}
        />
      </Show>

      <Show
        when={!nothingComes()}
        fallback={
          <section class="tubes" aria-labelledby="tubes-title">
            <h3 id="tubes-title">Which tube</h3>
            <p class="answer-quiet">
              Almost nothing comes over in this run, so any tube is enough. Set a run that boils to compare tubes.
            </p>
          </section>
        }
      >
        {/* Its hundred rows wait too: drawing them would take time from the first picture. */}
        <Show when={pictured()}>
          <TubeTable
            session={tubes}
            scenario={scenario()}
            units={units()}
            reader={props.context.reader()}
            filter={filter()}
            onFilter={setFilter}
            onStart={startTubes}
            onPrices={(tube) => setPricing({ tube })}
            use={use}
          />
        </Show>
      </Show>
      <PriceDialog
        open={pricing() !== null}
        tube={pricing()?.tube ?? null}
        onTube={(tube) => setPricing({ tube })}
        reader={props.context.reader()}
        onClose={() => setPricing(null)}
      />
    </article>
  );
}
