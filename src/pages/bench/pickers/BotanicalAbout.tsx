/** What is known of a plant in words, and its cautions; the texts are fetched when they are first wanted. */
import { createResource, For, Show } from 'solid-js';
import {
  englishReader,
  libraryText,
  type BotanicalText,
  type Provenance,
  type Scenario,
  type UnitSystem,
} from '../../../../sim/index.ts';
import { provenanceLine } from './provenance-words.ts';
import { rangesBySource, relativeDensityWords } from './botanical-about.ts';

const fetchTexts = async () => (await import('../../../../sim/library-texts.ts')).botanicalTexts;

const createTexts = (id: () => string) => {
  const [texts] = createResource(fetchTexts);
  return {
    text: (): BotanicalText | undefined => (texts.state === 'ready' ? texts()[id()] : undefined),
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

/** Everything: how to prepare it, how the trade distils it, what makes good oil, what the oil holds. */
export function BotanicalAbout(props: BotanicalAboutProps) {
  const { text, problem } = createTexts(() => props.id);
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
          <dt>Cautions</dt>
          <For each={found().cautions}>
            {(caution) => (
              <dd>
                {read(caution.value)} <Source of={caution} />
              </dd>
            )}
          </For>
          <dt>Preparation</dt>
          <dd>
            {read(found().preparation.value)} <Source of={found().preparation} />
          </dd>
          <dt>How the trade distils it</dt>
          <dd>
            {read(found().tradeMethod.value)} <Source of={found().tradeMethod} />
          </dd>
          <dt>Where the oil sits</dt>
          <dd>
            {read(found().oilSite.value)} <Source of={found().oilSite} />
          </dd>
          <Show when={found().qualityNotes.length > 0}>
            <dt>Quality</dt>
            <For each={found().qualityNotes}>
              {(note) => (
                <dd>
                  {read(note.value)} <Source of={note} />
                </dd>
              )}
            </For>
          </Show>
          <dt>Density of the oil</dt>
          <dd>
            {relativeDensityWords(found().relativeDensity.value, props.units)} <Source of={found().relativeDensity} />
          </dd>
          <dt>Published composition</dt>
          <For each={rangesBySource(found().publishedRanges)}>
            {(group) => (
              <dd>
                {group.shares.join('; ')} <Source of={group.source} />
              </dd>
            )}
          </For>
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
  const { text } = createTexts(() => props.scenario.charge.botanical);
  return (
    <Show when={text()?.cautions}>
      {(cautions) => (
        <ul class={props.class ?? 'plant-cautions'} aria-label="Cautions for this plant">
          <For each={cautions()}>{(caution) => <li>{libraryText(caution.value, englishReader(props.units))}</li>}</For>
        </ul>
      )}
    </Show>
  );
}
