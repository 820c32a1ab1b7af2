/** What is known of a plant in words, and its cautions; the texts are fetched when they are first wanted. */
import { createResource, For, Show, type JSX } from 'solid-js';
import {
  englishReader,
  libraryText,
  type Provenance,
  type Scenario,
  type Sourced,
  type UnitSystem,
} from '../../../../sim/index.ts';
import { plantWords } from '../../plants/plant-words.ts';
import { SEVERITY_WORDS } from '../../plants/plant-rows.ts';
import { deadlyLookAlikes, lookAlikesOf } from './look-alikes-of.ts';
import { provenanceLine } from './provenance-words.ts';
import { rangesBySource, relativeDensityWords } from './botanical-about.ts';

const fetchTexts = () => import('../../../../sim/library-texts.ts');

const createTexts = (id: () => string) => {
  const [texts] = createResource(fetchTexts);
  return {
    words: () => (texts.state === 'ready' ? plantWords(id(), texts()) : undefined),
    problem: (): boolean => texts.state === 'errored',
  };
};

const Source = (props: { readonly of: Provenance }) => (
  <span class="about-source" data-as-printed>
    {provenanceLine(props.of)}.
  </span>
);

export interface BotanicalAboutProps {
  readonly id: string;
  readonly units: UnitSystem;
}

/** A heading with its lines, where there are any. */
function Part<T>(props: {
  readonly title: string;
  readonly of: readonly Sourced<T>[];
  readonly children: (value: T) => JSX.Element;
}) {
  return (
    <Show when={props.of.length > 0}>
      <dt>{props.title}</dt>
      <For each={props.of}>
        {(each) => (
          <dd>
            {props.children(each.value)} <Source of={each} />
          </dd>
        )}
      </For>
    </Show>
  );
}

const said = (...of: readonly Sourced<string>[]) => of.filter(({ value }) => value !== '');

/** Everything: how to prepare it, how the trade distils it, what makes good oil, what the oil holds. */
export function BotanicalAbout(props: BotanicalAboutProps) {
  const { words, problem } = createTexts(() => props.id);
  const text = () => words()?.text;
  const whoAvoids = () => {
    const of = words()?.whoAvoids;
    return of ? said(of) : [];
  };
  const alike = () => lookAlikesOf(props.id).map((each) => ({ ...each.provenance, value: each }));
  const read = (written: string) => libraryText(written, englishReader(props.units));
  return (
    <Show
      when={text()}
      fallback={
        <p role="status">
          {problem() ? 'The texts could not be fetched. Check the network, then open this again.' : 'Fetching…'}
        </p>
      }
    >
      {(found) => (
        <dl class="about">
          <Part title="Do not mistake it" of={alike()}>
            {(each) => (
              <>
                <span classList={{ 'picker-warning alarm-mark': each.severity === 'deadly' }}>
                  {SEVERITY_WORDS[each.severity]}: {each.plant}.
                </span>{' '}
                {read(each.tellApart)}
              </>
            )}
          </Part>
          <Part title="Cautions" of={found().cautions}>
            {(written) => read(written)}
          </Part>
          <Part title="Who should avoid it" of={whoAvoids()}>
            {(written) => read(written)}
          </Part>
          <Part title="Preparation" of={said(found().preparation)}>
            {(written) => read(written)}
          </Part>
          <Part title="How the trade distils it" of={said(found().tradeMethod)}>
            {(written) => read(written)}
          </Part>
          <Part title="Where the oil sits" of={said(found().oilSite)}>
            {(written) => read(written)}
          </Part>
          <Part title="Quality" of={found().qualityNotes}>
            {(written) => read(written)}
          </Part>
          <dt>Density of the oil</dt>
          <dd>
            {relativeDensityWords(found().relativeDensity.value, props.units)} <Source of={found().relativeDensity} />
          </dd>
          <Show when={found().publishedRanges.length > 0}>
            <dt>Published composition</dt>
            <For each={rangesBySource(found().publishedRanges)}>
              {(group) => (
                <dd>
                  {group.shares.join('; ')} <Source of={group.source} />
                </dd>
              )}
            </For>
          </Show>
          <Show when={found().compositionNotes.length > 0}>
            <dt>How the model’s oil was shortened</dt>
            <dd>{read(found().compositionNotes.join('; '))}</dd>
          </Show>
        </dl>
      )}
    </Show>
  );
}

/** The cautions alone, for the plant that is in the still. */
export interface BotanicalCautionsProps {
  readonly scenario: Scenario;
  readonly units: UnitSystem;
  readonly class?: string;
}

export function BotanicalCautions(props: BotanicalCautionsProps) {
  const { words } = createTexts(() => props.scenario.charge.botanical);
  const cautions = () => words()?.text?.cautions ?? [];
  return (
    <Show when={cautions().length > 0}>
      <ul class={props.class ?? 'plant-cautions'} aria-label="Cautions for this plant">
        <For each={cautions()}>{(caution) => <li>{libraryText(caution.value, englishReader(props.units))}</li>}</For>
      </ul>
    </Show>
  );
}

/** What is deadly to mistake for the plant that is in the still. */
export function DeadlyLookAlikes(props: BotanicalCautionsProps) {
  const deadly = () => deadlyLookAlikes(props.scenario.charge.botanical);
  return (
    <Show when={deadly().length > 0}>
      <ul class="plant-cautions" aria-label="Deadly look-alikes of this plant">
        <For each={deadly()}>
          {({ plant, tellApart }) => (
            <li>
              <strong class="picker-warning alarm-mark">Deadly look-alike: {plant}.</strong>{' '}
              {libraryText(tellApart, englishReader(props.units))}
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
