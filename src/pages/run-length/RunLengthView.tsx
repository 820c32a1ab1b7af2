/** How long to run: times to the shares of the oil, when to stop, and how sure all that is. */
import { debounce } from '@solid-primitives/scheduled';
import { createEffect, createMemo, createSignal, on, onCleanup, Show } from 'solid-js';
import {
  displayUnit,
  failureMessages,
  formatDuration,
  formatNumber,
  formatQuantity,
  MOST_SEED,
  OIL_SHARES,
  quantities,
  runLengthMessages,
  stopRule,
  toldRunLength,
  toldUncertain,
  USUAL_MEMBERS,
  USUAL_SEED,
  wholeMessage,
  type HeadlineName,
  type Reader,
  type ShareReached,
  type StopRule,
} from '../../../sim/index.ts';
import type { DataTable } from '../../charts/export/data-table.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { workerPool } from '../../workers/start-pool.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { createQuery } from '../../state/query.ts';
import { AnswerTable, type TableColumn } from '../parts/AnswerTable.tsx';
import { ChartGroup } from '../../charts/ChartGroup.tsx';
import { RunAlarms } from '../parts/RunAlarms.tsx';
import { Progress } from '../parts/Progress.tsx';
import { SaveBar } from '../parts/SaveBar.tsx';
import { WorkingButton } from '../working/WorkingButton.tsx';
import { keptBandsFor } from '../../state/logbook-store.ts';
import { createEnsembleSession, type EnsembleSession } from './ensemble-session.ts';
import { fanCharts } from './fan-charts.ts';
import { Influences } from './Influences.tsx';
import { Spread } from './Spread.tsx';
import { StopRulePanel } from './StopRulePanel.tsx';
import './run-length.css';

/** The likely runs start when the still has been left alone for so long. */
const QUIET_MS = 700;

/** The rows before the first answer, so that nothing moves when it comes. */
const UNKNOWN: readonly ShareReached[] = OIL_SHARES.map((share) => ({ share, at: null }));

/** What is kept while the reader looks elsewhere. */
let session: EnsembleSession | null = null;
const [rules, setRules] = createSignal<Readonly<Record<StopRule['kind'], StopRule>>>({
  share: stopRule('share'),
  'oil-in-ten-minutes': stopRule('oil-in-ten-minutes'),
  'cost-of-next': stopRule('cost-of-next'),
});
const [chosen, setChosen] = createSignal<StopRule['kind']>('share');
const [runs, setRuns] = createSignal(USUAL_MEMBERS);
const [seed, setSeed] = createSignal(USUAL_SEED);
const [influenceOf, setInfluenceOf] = createSignal<HeadlineName>('oil_mL');

export function RunLengthView(props: { readonly context: AnalysisContext }) {
  const pool = workerPool();
  const likely = (session ??= createEnsembleSession(pool));
  const scenario = createMemo(() => props.context.result().scenario);
  const asked = createQuery(pool, 'length', () => [scenario(), rules()[chosen()]], { priority: 'high' });
  const kept = createMemo(() => keptBandsFor(scenario()));
  const isCurrent = () => likely.scenario() === scenario();
  const start = () => likely.start(scenario(), runs(), seed(), kept()?.bands ?? {});

  createEffect(
    on(scenario, (now) => {
      if (likely.scenario() === now && (likely.running() || likely.summary())) return;
      debounce(start, likely.scenario() === null ? 0 : QUIET_MS)();
    }),
  );
  onCleanup(() => likely.stop());

  const units = () => props.context.units();
  const reader = () => props.context.reader();
  const messages = () => runLengthMessages(reader());
  /** Nothing is told of a run that broke off but that it did. */
  const answer = () => (asked.answer()?.failure === null ? asked.answer() : null);
  const problem = () => {
    const failure = asked.answer()?.failure ?? null;
    return failure === null ? asked.problem() : wholeMessage(failureMessages(reader()).brokeOff(failure));
  };
  const isPriced = () => scenario().heat.energyPrice_J > 0 || scenario().cooling.waterPrice_m3 > 0;
  /** Whether the planned run goes on until most of its oil is collected, so that a time to 90 % means something. */
  const seesMost = () => {
    const most = answer()?.length.shares.find(({ share }) => share === 0.9)?.at;
    return most !== null && most !== undefined && most.time_s <= props.context.result().summary.end_s;
  };
  const charts = createMemo(() => fanCharts(props.context.result(), isCurrent() ? likely.summary() : null));
  const columns = createMemo<readonly TableColumn<ShareReached>[]>(() => [
    {
      id: 'share',
      title: 'Oil',
      cell: ({ share }) => formatQuantity(share, '1', units(), { hint: 'share', decimals: 0 }),
    },
    { id: 'time', title: 'Time', cell: ({ at }) => (at ? formatDuration(at.time_s) : answer() ? 'not reached' : '…') },
    { id: 'oil', title: 'Collected', cell: ({ at }) => (at ? messages().oil(at.oil_mL) : '–') },
    {
      id: 'distillate',
      title: 'Distillate',
      cell: ({ at }) => (at ? formatQuantity(at.distillate_L, 'L', units()) : '–'),
    },
    {
      id: 'coolant',
      title: 'Cooling water',
      cell: ({ at }) => (at ? formatQuantity(at.coolantUsed_L, 'L', units()) : '–'),
    },
    { id: 'energy', title: 'Energy', cell: ({ at }) => (at ? formatQuantity(at.energy_J, 'J', units()) : '–') },
    ...(isPriced()
      ? [
          {
            id: 'cost',
            title: 'Energy and water cost',
            cell: ({ at }: ShareReached) => (at ? quantities(reader()).cost(at.cost) : '–'),
          },
        ]
      : []),
  ]);
  const sharesTable = (): DataTable => {
    const shares = answer()?.length.shares ?? [];
    const numbers = (read: (at: NonNullable<ShareReached['at']>) => number) =>
      shares.map(({ at }) => (at ? read(at) : Number.NaN));
    const water = displayUnit('L', units());
    const energy = displayUnit('J', units());
    return {
      caption: 'How long to run',
      rows: shares.length,
      columns: [
        {
          title: 'Share of the oil that can come',
          unit: '%',
          says: '',
          decimals: 0,
          values: shares.map(({ share }) => 100 * share),
        },
        { title: 'Time', unit: 'min', says: '', decimals: 1, values: numbers(({ time_s }) => time_s / 60) },
        { title: 'Oil', unit: 'mL', says: '', decimals: 2, values: numbers(({ oil_mL }) => oil_mL) },
        {
          title: 'Distillate',
          unit: water.label,
          says: '',
          decimals: 2,
          values: numbers(({ distillate_L }) => water.fromSI(distillate_L)),
        },
        {
          title: 'Cooling water',
          unit: water.label,
          says: '',
          decimals: 2,
          values: numbers(({ coolantUsed_L }) => water.fromSI(coolantUsed_L)),
        },
        {
          title: 'Energy',
          unit: energy.label,
          says: '',
          decimals: 2,
          values: numbers(({ energy_J }) => energy.fromSI(energy_J)),
        },
        { title: 'Energy and water cost', unit: '', says: '', decimals: 2, values: numbers(({ cost }) => cost) },
      ],
    };
  };
  const inJson = () => ({
    of: scenario().name,
    scenario: scenario(),
    ...toldRunLength(answer(), reader()),
    likely: isCurrent() ? likelyInJson(likely, reader()) : null,
  });

  return (
    <article class="answer length-view" aria-labelledby="length-title">
      <header class="answer-head">
        <h2 id="length-title">How long to run?</h2>
        <p class="answer-lead" role="status" classList={{ 'is-asking': asked.asking() }}>
          <Show when={answer()} fallback={problem() ?? 'Running the still on until almost no more oil comes…'}>
            {(found) => <>{messages().lead(found())}</>}
          </Show>
        </p>
        <p class="answer-more">
          <Show when={answer()}>{(found) => <>{messages().plan(found(), props.context.result().summary)} </>}</Show>
          <Show when={isCurrent() && likely.summary()}>
            {(summary) => <>{messages().spread(summary(), seesMost())}</>}
          </Show>
        </p>
        <div class="answer-tools">
          <WorkingButton topic="time-to-90" scenario={scenario()} units={units()} />
          <SaveBar of="how long to run" runName={scenario().name} table={sharesTable} json={inJson} />
        </div>
        <RunAlarms events={props.context.result().events} reader={reader()} />
      </header>
      <div class="length-first">
        <Show when={answer()?.length.obtainable_mL !== 0}>
          <AnswerTable
            caption="Time, water and cost to each share of the oil"
            columns={columns()}
            rows={answer()?.length.shares ?? UNKNOWN}
          />
        </Show>
        <StopRulePanel
          rules={rules()}
          chosen={chosen()}
          advice={answer()?.advice ?? null}
          asking={asked.asking()}
          duration_s={scenario().run.duration_s}
          units={units()}
          reader={reader()}
          onChoose={setChosen}
          onRule={(rule) => {
            setRules((before) => ({ ...before, [rule.kind]: rule }));
            setChosen(rule.kind);
          }}
          onEndThere={(duration_s) => props.context.change('run.duration_s', duration_s)}
        />
      </div>
      <section class="likely" aria-labelledby="likely-title">
        <h3 id="likely-title">How sure is this?</h3>
        <p class="answer-quiet">
          Plants, taps and tubes differ. So the same still is run many times, each time with the uncertain values picked
          at random: oil content, release, heat transfer, losses, scale, tap temperature and drop size.
          <Show when={kept()}>
            {(found) => (
              <> What your run “{found().name}” showed is varied only within the range that its fit leaves.</>
            )}
          </Show>
        </p>
        <div class="likely-controls">
          <QuantityField
            label="Runs"
            value={runs()}
            unit="1"
            integer
            min={10}
            max={5000}
            system={units()}
            onCommit={(value) => void setRuns(value)}
          />
          <QuantityField
            label="Seed"
            value={seed()}
            unit="1"
            integer
            min={0}
            max={MOST_SEED}
            system={units()}
            onCommit={(value) => void setSeed(value)}
          />
          <button type="button" onClick={start}>
            {likely.running() ? 'Start again' : 'Run again'}
          </button>
          <Show when={likely.total() > 0}>
            <Progress
              words="runs"
              done={likely.finished()}
              of={likely.total()}
              running={likely.running()}
              onCancel={() => likely.stop()}
            />
          </Show>
        </div>
        <Show when={likely.problem()}>
          {(told) => (
            <p class="answer-problem" role="alert">
              The likely runs stopped: {told()}
            </p>
          )}
        </Show>
        <ChartGroup
          charts={charts()}
          runName={scenario().name}
          end_s={props.context.result().summary.end_s}
          units={units()}
          theme={props.context.theme()}
        />
        <Show when={isCurrent() && likely.summary()}>
          {(summary) => (
            <>
              <p class="answer-quiet">
                The typical run, and the range of 8 of 10 runs, out of {formatNumber(summary().finished, 0)} random
                runs. The other runs are the still as planned and each uncertain value alone.
                <Show when={summary().failed > 0}>
                  {' '}
                  {formatNumber(summary().failed, 0)} of them could not be calculated and are left out.
                </Show>
              </p>
              <Spread
                summary={summary()}
                length_m={scenario().condenser.length_m}
                isPriced={isPriced()}
                seesMost={seesMost()}
                reader={reader()}
              />
              <Influences
                summary={summary()}
                of={influenceOf()}
                onOf={setInfluenceOf}
                units={units()}
                runName={scenario().name}
              />
            </>
          )}
        </Show>
      </section>
    </article>
  );
}

/** The likely runs as plain data. */
function likelyInJson({ design, summary }: EnsembleSession, reader: Reader): unknown {
  const plan = design();
  const found = summary();
  if (!plan || !found) return null;
  const { times_s, oil_mL, recovery, headline, asPlanned, influences, finished, members } = found;
  const curve = ({ p10, p50, p90 }: typeof oil_mL) => ({ p10: [...p10], p50: [...p50], p90: [...p90] });
  return {
    seed: plan.seed,
    doubts: toldUncertain(plan.doubts, reader),
    members,
    finished,
    times_s: [...times_s],
    oil_mL: curve(oil_mL),
    recovery: curve(recovery),
    headline,
    asPlanned,
    influences,
  };
}
