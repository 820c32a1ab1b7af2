/** A few questions, each of which may be skipped, to a still on the bench: does it work, what is weakest, what to buy. */
import { createMemo, createSignal, For, onMount, Show, type JSX } from 'solid-js';
import {
  atFullHeat,
  botanicals,
  englishReader,
  fieldAt,
  firstPlanMessages,
  heatSources,
  PLAN_QUESTIONS,
  planStill,
  problemMessage,
  toldPlan,
  tubes,
  type OwnTubeSize,
  type PlanAnswers,
  type PlanQuestion,
  type PlanValues,
  type Scenario,
} from '../../../sim/index.ts';
import { lengthOf, sizeQuestion } from '../../state/length-that-holds.ts';
import { openPrices, prices } from '../../state/price-list.ts';
import { margin, setBasis } from '../../state/size-choices.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { errorMessage } from '../../workers/errors.ts';
import { workerPool } from '../../workers/start-pool.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { RunAlarms } from '../parts/RunAlarms.tsx';
import './begin.css';

/** What is answered, and the still that was worked out last, kept while the reader looks elsewhere. */
const [answers, setAnswers] = createSignal<PlanAnswers>({});
const [worked, setWorked] = createSignal<{ readonly still: Scenario; readonly size: OwnTubeSize } | null>(null);

interface NumberQuestion {
  readonly id: 'plant_kg' | 'pot_m3' | 'heat_W' | 'tub_m3' | 'tap_K' | 'altitude_m';
  readonly unit: string;
  readonly hint: string;
  readonly min: number;
  readonly max: number;
}

const range = (path: string, min: number, max: number) => ({
  min: Math.max(min, fieldAt(path)?.min ?? min),
  max: Math.min(max, fieldAt(path)?.max ?? max),
});

const NUMBERS: Readonly<Record<NumberQuestion['id'], NumberQuestion>> = {
  plant_kg: { id: 'plant_kg', unit: 'kg', hint: 'mass', ...range('charge.mass_kg', 0.05, 500) },
  pot_m3: { id: 'pot_m3', unit: 'm³', hint: 'volume', min: 0.001, max: 1 },
  heat_W: { id: 'heat_W', unit: 'W', hint: 'power', ...range('heat.ratedPower_W', 100, 60_000) },
  tub_m3: { id: 'tub_m3', unit: 'm³', hint: 'volume', min: 0.005, max: 5 },
  tap_K: { id: 'tap_K', unit: 'K', hint: 'temperature', ...range('cooling.tapTemperature_K', 273.25, 313.15) },
  altitude_m: { id: 'altitude_m', unit: 'm', hint: 'altitude', ...range('site.altitude_m', -400, 4500) },
};

const HOSES = ['laid', 'pointing-up', 'perforated', 'top'] as const;
type ChoiceQuestion = Exclude<PlanQuestion, NumberQuestion['id']>;

const isNumber = (question: PlanQuestion): question is NumberQuestion['id'] => Object.hasOwn(NUMBERS, question);

interface Option {
  readonly value: string;
  readonly words: string;
}

function optionsOf(question: ChoiceQuestion, words: ReturnType<typeof firstPlanMessages>): readonly Option[] {
  switch (question) {
    case 'plant':
      return botanicals.map(({ id, name }) => ({ value: id, words: name.value }));
    case 'heatSource':
      return heatSources
        .filter(({ kind }) => kind !== 'steam-generator')
        .map(({ id, name }) => ({ value: id, words: name }));
    case 'tube':
      return tubes.filter(({ coilable }) => coilable).map(({ id, name }) => ({ value: id, words: name }));
    case 'hose':
      return HOSES.map((value) => ({ value, words: words.hoses[value] }));
    case 'waterRuns':
      return [
        { value: 'yes', words: words.running.yes },
        { value: 'no', words: words.running.no },
      ];
  }
}

function chosen(question: ChoiceQuestion, value: string): PlanAnswers {
  if (question === 'waterRuns') return { waterRuns: value === 'yes' };
  if (question === 'hose') return { hose: HOSES.find((each) => each === value) };
  return { [question]: value };
}

function chosenOf(question: ChoiceQuestion, used: PlanValues | null): string | undefined {
  if (used === null) return undefined;
  return question === 'waterRuns' ? (used.waterRuns ? 'yes' : 'no') : used[question];
}

export function BeginView(props: { readonly context: AnalysisContext }) {
  const reader = () => props.context.reader();
  const words = () => firstPlanMessages(reader());
  const planned = createMemo(() => planStill(answers()));
  const plan = () => {
    const now = planned();
    return now.ok ? now.plan : null;
  };
  /** What is used of each answer; the last that made a still, where the latest makes none. */
  const used = createMemo<PlanValues | null>((before) => plan()?.used ?? before, null);
  const [state, setState] = createSignal<'resting' | 'working'>('resting');
  const [problem, setProblem] = createSignal<string | null>(null);
  const answer = (change: PlanAnswers): void => {
    setAnswers((now) => ({ ...now, ...change }));
  };
  const isAssumed = (question: PlanQuestion) => answers()[question] === undefined;
  onMount(() => void openPrices());

  const work = async () => {
    const now = plan();
    if (!now) return;
    setState('working');
    setProblem(null);
    try {
      const full = atFullHeat(now.scenario) ?? now.scenario;
      const size = await workerPool().ask('sizeOwnTube', [sizeQuestion(full), margin()], {
        priority: 'high',
        remember: true,
      });
      const { length_m } = lengthOf({ ...size, length_m: size.lengthWithMargin_m });
      const still: Scenario =
        length_m === null ? now.scenario : { ...now.scenario, condenser: { ...now.scenario.condenser, length_m } };
      const refused = await props.context.load(still);
      if (refused !== null) setProblem(refused);
      else {
        setBasis('full-heat');
        setWorked({ still, size });
      }
    } catch (error) {
      setProblem(errorMessage(error));
    }
    setState('resting');
  };
  /** What was worked out, while the run on the bench is that of its still. */
  const told = createMemo(() => {
    const known = worked();
    const result = props.context.result();
    if (!known || JSON.stringify(result.scenario) !== JSON.stringify(known.still)) return null;
    return toldPlan(result, known.size, atFullHeat(known.still) ?? known.still, prices(), reader());
  });

  const numbers = (question: NumberQuestion['id']) => (
    <Row question={question}>
      <QuantityField
        label={words().question(question)}
        value={used()?.[question] ?? 0}
        unit={NUMBERS[question].unit}
        hint={NUMBERS[question].hint}
        min={NUMBERS[question].min}
        max={NUMBERS[question].max}
        system={reader().units}
        takesSame
        onCommit={(value) => answer({ [question]: value })}
      />
    </Row>
  );
  const choices = (question: ChoiceQuestion) => (
    <Row question={question}>
      <label class="begin-choice">
        <span class="quantity-label">{words().question(question)}</span>
        <select onChange={(event) => answer(chosen(question, event.currentTarget.value))}>
          <For each={optionsOf(question, words())}>
            {(option) => (
              <option value={option.value} selected={option.value === chosenOf(question, used())}>
                {option.words}
              </option>
            )}
          </For>
        </select>
      </label>
    </Row>
  );
  const Row = (row: { readonly question: PlanQuestion; readonly children: JSX.Element }) => (
    <div class="begin-row" classList={{ 'is-assumed': isAssumed(row.question) }}>
      {row.children}
      <span class="begin-state">
        {isAssumed(row.question) ? words().assumed : words().yours}
        <Show when={!isAssumed(row.question)}>
          {' '}
          <button type="button" class="word" onClick={() => answer({ [row.question]: undefined })}>
            {words().skip}
            <span class="visually-hidden">: {words().question(row.question)}</span>
          </button>
        </Show>
      </span>
    </div>
  );

  return (
    <article class="answer begin-view" aria-labelledby="begin-title">
      <header class="answer-head">
        <h2 id="begin-title">{words().title}</h2>
        <p class="answer-lead is-small">{words().lead}</p>
      </header>
      <form
        class="begin-form"
        onSubmit={(event) => {
          event.preventDefault();
          void work();
        }}
      >
        <div class="begin-rows">
          <For each={PLAN_QUESTIONS}>{(question) => (isNumber(question) ? numbers(question) : choices(question))}</For>
        </div>
        <div class="begin-notes" role="status">
          <Show when={plan()?.plantCut}>
            <p>{words().plantCut(plan()?.used.plant_kg ?? 0)}</p>
          </Show>
          <Show when={plan()?.turnedDown}>
            <p>{words().turnedDown}</p>
          </Show>
          <For each={refusals(planned(), reader().units)}>{(line) => <p class="answer-problem">{line}</p>}</For>
        </div>
        <p>
          <button type="submit" class="is-first" disabled={!plan() || state() === 'working'}>
            {words().make}
          </button>{' '}
          <span role="status">{state() === 'working' ? words().working : ''}</span>
        </p>
        <Show when={problem()}>
          {(said) => (
            <p class="answer-problem" role="alert">
              {said()}
            </p>
          )}
        </Show>
      </form>
      <Show when={told()}>
        {(plan) => (
          <section class="begin-told" aria-label="What comes of it">
            <h3>{words().headings.works}</h3>
            <p class="answer-lead is-small" role="status">
              {plan().works}
            </p>
            <RunAlarms events={props.context.result().events} reader={englishReader(props.context.units())} />
            <h3>{words().headings.weakest}</h3>
            <p>{plan().weakest}</p>
            <h3>{words().headings.next}</h3>
            <ol class="begin-next">
              <For each={plan().next}>{(line) => <li>{line}</li>}</For>
            </ol>
            <p>
              <a href="#build">Building sheet</a> to print, with drawings to scale. The still is on the{' '}
              <a href="#bench">bench</a>; other tubes and prices stand under <a href="#size">Size</a>.
            </p>
          </section>
        )}
      </Show>
    </article>
  );
}

const refusals = (planned: ReturnType<typeof planStill>, units: 'metric' | 'us'): readonly string[] =>
  planned.ok ? [] : planned.problems.map((each) => problemMessage(each, englishReader(units)));
