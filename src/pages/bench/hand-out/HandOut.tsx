/** The bench on paper: two sheets to take to the still, with room to write. */
import { createMemo, createUniqueId, For, Show } from 'solid-js';
import {
  findBotanical,
  isOwnPlant,
  ownPlantName,
  handOutMessages,
  handOutOf,
  libraryText,
  type BotanicalText,
  type NamedValue,
  type RunResult,
  type UnitSystem,
} from '../../../../sim/index.ts';
import type { EnsembleSummary, Reader } from '../../../../sim/index.ts';
import { StillDrawing } from '../../../drawing/StillDrawing.tsx';
import { qrCode } from './qr-code.ts';
import './hand-out.css';

export interface HandOutProps {
  readonly result: RunResult;
  readonly units: UnitSystem;
  readonly reader: Reader;
  /** `null` while it is not known. */
  readonly link: string | null;
  readonly likely: EnsembleSummary | null;
  readonly texts: Readonly<Record<string, BotanicalText>>;
}

/** A longer address makes a code too fine to photograph from paper. */
const LONGEST_LINK = 700;
const LOG_ROWS = 9;
const NOTHING = () => undefined;

const today = (): string => new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' }).format(new Date());

function plantOf({ scenario: { charge } }: RunResult): string | null {
  if (!isOwnPlant(charge.botanical)) return findBotanical(charge.botanical).name.value;
  return ownPlantName(charge.botanical) || null;
}

function Named(props: { readonly rows: readonly NamedValue[] }) {
  return (
    <dl class="hand-out-named">
      <For each={props.rows}>
        {({ name, value }) => (
          <div>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        )}
      </For>
    </dl>
  );
}

function Code(props: { readonly link: string; readonly says: string }) {
  const code = createMemo(() => qrCode(props.link));
  return (
    <svg class="hand-out-code" role="img" aria-label={props.says} viewBox={`0 0 ${code().size} ${code().size}`}>
      <path d={code().path} shape-rendering="crispEdges" />
    </svg>
  );
}

export function HandOut(props: HandOutProps) {
  const id = createUniqueId();
  const reader = () => props.reader;
  const words = () => handOutMessages(reader());
  const plantCautions = () =>
    (props.texts[props.result.scenario.charge.botanical]?.cautions ?? []).map(({ value }) =>
      libraryText(value, reader()),
    );
  const sheet = createMemo(() =>
    handOutOf(props.result, props.likely, plantOf(props.result), reader(), plantCautions()),
  );
  const half_s = () => props.result.summary.end_s / 2;
  const shortLink = () => (props.link !== null && props.link.length <= LONGEST_LINK ? props.link : null);
  return (
    <article class="hand-out" aria-labelledby={id}>
      <header class="hand-out-head">
        <div>
          <h1 id={id}>{props.result.scenario.name}</h1>
          <p class="hand-out-date">Limbeck · {words().printed(today())}</p>
          <p class="hand-out-lead">{sheet().lead}</p>
        </div>
        <Show when={shortLink()}>{(link) => <Code link={link()} says={words().codeSays} />}</Show>
      </header>
      <figure class="hand-out-still">
        <StillDrawing
          scenario={props.result.scenario}
          result={props.result}
          time_s={half_s}
          selected={null}
          onSelect={NOTHING}
          units={props.units}
          reducedMotion
          stale={false}
        />
        <figcaption>{words().figure}</figcaption>
      </figure>
      <div class="hand-out-columns">
        <section>
          <h2>{words().headings.still}</h2>
          <Named rows={sheet().sizes} />
        </section>
        <section>
          <h2>{words().headings.expected}</h2>
          <Named
            rows={sheet().expected.map(({ name, value, range }) => ({
              name,
              value: range === null ? value : `${value} (${range})`,
            }))}
          />
          <p class="hand-out-small">{props.likely ? words().ranges(props.likely.finished) : words().noRanges}</p>
        </section>
      </div>
      <section class="hand-out-second">
        <h2>{words().headings.plan}</h2>
        <p class="hand-out-small">{words().sinceHeat}</p>
        <table class="hand-out-plan">
          <thead>
            <tr>
              <th scope="col">{words().planColumns.time}</th>
              <th scope="col">{words().planColumns.what}</th>
            </tr>
          </thead>
          <tbody>
            <For each={sheet().plan}>
              {({ time, does, sentence, isAlarm }) => (
                <tr classList={{ 'is-to-do': does, 'is-alarm': isAlarm }}>
                  <td>{time}</td>
                  <td>{sentence}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <Show when={sheet().more > 0}>
          <p class="hand-out-small">{words().andMore(sheet().more)}</p>
        </Show>
      </section>
      <section>
        <h2>{words().headings.cautions}</h2>
        <ul class="hand-out-cautions">
          <For each={sheet().cautions}>{(caution) => <li>{caution}</li>}</For>
        </ul>
      </section>
      <section>
        <h2>{words().headings.log}</h2>
        <p class="hand-out-blanks">
          <For each={words().blanks}>{(blank) => <span>{blank}</span>}</For>
        </p>
        <table class="hand-out-log">
          <thead>
            <tr>
              <For each={words().logColumns}>{(column) => <th scope="col">{column}</th>}</For>
            </tr>
          </thead>
          <tbody>
            <For each={Array.from({ length: LOG_ROWS })}>
              {() => (
                <tr>
                  <For each={words().logColumns}>{() => <td />}</For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </section>
      <p class="hand-out-link">
        {words().headings.link}: {shortLink() ?? words().tooLong}
      </p>
    </article>
  );
}
