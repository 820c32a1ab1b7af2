/** One property or relation: its equation, its arguments to type into, what comes out, where it holds, who says so. */
import { createMemo, createSignal, createUniqueId, For, Show } from 'solid-js';
import {
  englishReader,
  evaluateAt,
  formatQuantity,
  limitsOf,
  lookUpMessages,
  quantities,
  symbolTex,
  usualValues,
  type Argument,
  type Correlation,
  type UnitSystem,
} from '../../../sim/index.ts';
import { createQuery } from '../../state/query.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { workerPool } from '../../workers/start-pool.ts';
import { Formula } from '../working/Formula.tsx';
import { CurvePlot } from './CurvePlot.tsx';
import { kindShown } from './shown-kind.ts';
import { capital, titleOf } from './titles.ts';

export interface RelationSheetProps {
  readonly entry: Correlation;
  readonly units: UnitSystem;
}

export function RelationSheet(props: RelationSheetProps) {
  const id = createUniqueId();
  const usual = createMemo(() => usualValues(props.entry));
  const [typed, setTyped] = createSignal<Readonly<Record<string, number>>>({});
  const values = createMemo(() => ({ ...usual(), ...typed() }));
  const symbols = () => Object.keys(props.entry.arguments);
  const [chosen, setChosen] = createSignal<string | null>(null);
  const over = () => chosen() ?? symbols()[0] ?? '';
  const asked = createQuery(workerPool(), 'curve', () => [props.entry.name, values(), over()], { priority: 'high' });
  const value = createMemo(() => evaluateAt(props.entry, values()));
  const limits = createMemo(() => limitsOf(props.entry, values()));
  const out = createMemo(() => limits().filter(({ inRange }) => !inRange));
  const q = () => quantities(englishReader(props.units));
  const hint = (argument: Argument, symbol: string) => kindShown(argument, usual()[symbol] ?? 0);

  const rangeText = (range: readonly [number, number] | undefined | null, unit: string, kind?: string): string => {
    if (!range) return 'no limits given';
    return range[1] >= Number.MAX_VALUE
      ? `at least ${q().stored(range[0], unit, kind)}`
      : q().range(range[0], range[1], unit, kind);
  };
  const resultText = () => {
    const { unit, isDifference } = props.entry.result;
    const found = value();
    if (found === null) return 'No value here';
    const kind = kindShown(isDifference ? { unit, isDifference } : { unit }, found);
    return formatQuantity(found, unit, props.units, { significant: 5, ...(kind === undefined ? {} : { hint: kind }) });
  };

  return (
    <article class="reference-sheet" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`} tabindex="-1" class="reference-title">
        {titleOf(props.entry)}
      </h3>
      <Formula tex={props.entry.tex} display />
      <div class="reference-arguments" role="group" aria-label="Arguments">
        <For each={Object.entries(props.entry.arguments)}>
          {([symbol, argument]) => (
            <div class="reference-argument">
              <Formula tex={symbolTex(symbol)} />
              <QuantityField
                label={capital(argument.says)}
                value={values()[symbol] ?? 0}
                unit={argument.unit}
                {...(hint(argument, symbol) === undefined ? {} : { hint: hint(argument, symbol) as string })}
                system={props.units}
                onCommit={(number) => {
                  setTyped({ ...typed(), [symbol]: number });
                }}
              />
              <span class="reference-range">{rangeText(argument.range, argument.unit, hint(argument, symbol))}</span>
            </div>
          )}
        </For>
      </div>
      <p class="reference-result" role="status">
        <Formula tex={symbolTex(props.entry.result.symbol)} /> <span aria-hidden="true">=</span>{' '}
        <strong>{resultText()}</strong>
      </p>
      <Show when={out().length > 0}>
        <p class="reference-out">
          Out of range:{' '}
          {out()
            .map(({ says, range, unit, symbol }) => {
              const argument = props.entry.arguments[symbol];
              return `${says} (${rangeText(range, unit, argument ? hint(argument, symbol) : undefined)})`;
            })
            .join('; ')}
          .
        </p>
      </Show>
      <figure class="reference-figure">
        <Show when={symbols().length > 1}>
          <label class="answer-choice">
            <span>Curve over</span>
            <select onChange={(event) => setChosen(event.currentTarget.value)}>
              <For each={Object.entries(props.entry.arguments)}>
                {([symbol, { says }]) => (
                  <option value={symbol} selected={symbol === over()}>
                    {says}
                  </option>
                )}
              </For>
            </select>
          </label>
        </Show>
        <div class="reference-plot" aria-busy={asked.asking()}>
          <Show
            when={asked.answer()}
            fallback={<p class="answer-quiet">{asked.problem() ?? 'The curve is being drawn…'}</p>}
          >
            {(curve) => (
              <CurvePlot entry={props.entry} values={values()} curve={curve()} value={value()} units={props.units} />
            )}
          </Show>
        </div>
      </figure>
      <dl class="reference-facts">
        <For each={props.entry.checks ?? []}>
          {({ says, range }) => (
            <>
              <dt>Limit</dt>
              <dd>
                {capital(says)}: {rangeText(range, '1')}
              </dd>
            </>
          )}
        </For>
        <dt>Outside its range</dt>
        <dd data-as-printed>{capital(props.entry.outside)}.</dd>
        <dt>Source</dt>
        <dd data-as-printed>{props.entry.source}.</dd>
        <dt>In the model</dt>
        <dd>{lookUpMessages(englishReader(props.units)).roles[props.entry.role ?? 'engine']}</dd>
        <dt>Name at the command line</dt>
        <dd>{props.entry.name}</dd>
      </dl>
      <p class="answer-quiet">Equation, source and what happens outside are in SI units.</p>
    </article>
  );
}
