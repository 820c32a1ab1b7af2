/** One plant: when and how to cut it, what it gives, what it is mistaken for, and who should leave its oil alone. */
import { createMemo, For, Show, type JSX } from 'solid-js';
import {
  displayUnit,
  dissolvedOil,
  flashPoint,
  formatQuantity,
  freezesAt,
  HAZE,
  hazeSheet,
  hazeTime,
  libraryText,
  quantities,
  yieldOf,
  yieldSheet,
  type Botanical,
  type ChargeState,
  type Layout,
  type Packing,
  type Provenance,
  type Reader,
  type Sourced,
} from '../../../sim/index.ts';
import { relativeDensityWords } from '../bench/pickers/botanical-about.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { Source } from '../parts/Source.tsx';
import { SheetButton } from '../working/SheetButton.tsx';
import { LookAlikes } from './LookAlikes.tsx';
import { sentenceCase } from './plant-rows.ts';
import type { PlantTexts } from './plant-texts.ts';
import { plantWords } from './plant-words.ts';
import { PutInStill } from './PutInStill.tsx';
import { RunHere } from './RunHere.tsx';

export interface PlantPageProps {
  readonly plant: Botanical;
  readonly context: AnalysisContext;
  readonly texts: PlantTexts;
}

const STATE_WORDS: Readonly<Record<ChargeState, string>> = { fresh: 'Fresh', dry: 'Dry' };
const CHARGED: Readonly<Record<Layout, string>> = {
  water: 'In the water',
  'water-and-steam': 'On a grid above the water',
  steam: 'On a grid, with steam from a boiler',
};
const PACKED: Readonly<Record<Packing, string>> = { loose: 'shaken in loosely', packed: 'pressed down' };
const ROOM_K = 293.15;
const ICE_K = 273.15;

function Fact(props: { readonly title: string; readonly children: JSX.Element }) {
  return (
    <div class="plant-fact">
      <dt>{props.title}</dt>
      <dd>{props.children}</dd>
    </div>
  );
}

/** A line of words, where there are any. */
function Told(props: { readonly title: string; readonly of: Sourced<string>; readonly reader: Reader }) {
  return (
    <Show when={props.of.value !== ''}>
      <Fact title={props.title}>
        {sentenceCase(libraryText(props.of.value, props.reader))}. <Source of={props.of} />
      </Fact>
    </Show>
  );
}

export function PlantPage(props: PlantPageProps) {
  const reader = () => props.context.reader();
  const q = () => quantities(reader());
  const words = createMemo(() => plantWords(props.plant.id, props.texts));
  const texts = () => words().text;
  const harvest = () => words().harvest;
  const states = () => (['fresh', 'dry'] as const).filter((state) => props.plant.states[state] !== undefined);
  const composition = () =>
    props.plant.composition.value.map(({ constituent, massFraction }) => ({ constituent, share: massFraction }));
  /** Colder than ice no tube of a still gets. */
  const coldCrystals = () => {
    const at = freezesAt(composition());
    return at !== null && at > ICE_K ? at : null;
  };
  const between = (low: number, high: number, unit: string, kind: string) =>
    low === high ? formatQuantity(low, unit, props.context.units(), { hint: kind }) : q().range(low, high, unit, kind);
  /** `2–3 plants per m²`. */
  const plantsWords = ([low, high]: readonly [number, number]): string => {
    const write = (value: number) =>
      formatQuantity(value, '1/m²', props.context.units(), { hint: 'plantsPerArea', bare: true, significant: 2 });
    const area = displayUnit('m²', props.context.units(), 'area').label;
    return `${low === high ? write(low) : `${write(low)}–${write(high)}`} plants per ${area}`;
  };
  const moisture = (state: ChargeState) => {
    const found = props.plant.states[state]?.moisture.value;
    return found ? between(found.low, found.high, '1', 'share') : '';
  };
  const yields = (state: ChargeState) => yieldOf(props.plant, state);

  return (
    <article class="plant-page" aria-labelledby="plant-name">
      <header>
        <h2 id="plant-name">{sentenceCase(props.plant.name.value)}</h2>
        <p class="plant-latin">{props.plant.latinName.value}</p>
      </header>
      <LookAlikes of={words().lookAlikes} name={props.plant.name.value} reader={reader()} />
      <PutInStill plant={props.plant} context={props.context} />
      <div class="plant-columns">
        <section aria-labelledby="plant-cut">
          <h3 id="plant-cut">Cutting and preparing</h3>
          <dl>
            <Told title="What to cut" of={props.plant.part} reader={reader()} />
            <Show when={harvest()}>
              {(of) => (
                <>
                  <Told title="When in its growth" of={of().stage} reader={reader()} />
                  <Told title="Season" of={of().season} reader={reader()} />
                  <Told title="Hour" of={of().hour} reader={reader()} />
                  <Told title="Wilting" of={of().wilting} reader={reader()} />
                  <Told title="Before charging" of={of().cutting} reader={reader()} />
                </>
              )}
            </Show>
            <For each={states()}>
              {(state) => (
                <Fact title={`Water in it, ${STATE_WORDS[state].toLowerCase()}`}>
                  {moisture(state)}. <Source of={props.plant.states[state]?.moisture as Provenance} />
                </Fact>
              )}
            </For>
            <Show when={harvest()?.wiltedMoisture}>
              {(of) => (
                <Fact title="Water in it, wilted">
                  {between(of()[0], of()[1], '1', 'share')}.{' '}
                  <Source of={{ kind: 'estimated', source: 'between fresh and dry' }} />
                </Fact>
              )}
            </Show>
          </dl>
        </section>
        <section aria-labelledby="plant-gives">
          <h3 id="plant-gives">What it gives</h3>
          <dl>
            <For each={states()}>
              {(state) => (
                <>
                  <Fact title={`Oil, ${STATE_WORDS[state].toLowerCase()}`}>
                    <Show when={yields(state)}>
                      {(of) => (
                        <>
                          {between(of().low, of().high, 'm³/kg', 'oilYield')}, usually{' '}
                          {q().of('oilYield', of().typical)}.{' '}
                          <SheetButton
                            sheet={() => yieldSheet(props.plant, state)}
                            units={props.context.units()}
                            of={`the oil of the ${STATE_WORDS[state].toLowerCase()} plant`}
                          />{' '}
                        </>
                      )}
                    </Show>
                    <Source of={props.plant.states[state]?.oilContent as Provenance} />
                  </Fact>
                  <Fact title={`Packs to, ${STATE_WORDS[state].toLowerCase()}`}>
                    {between(
                      props.plant.states[state]?.bulkDensity_kg_m3.value.loose ?? 0,
                      props.plant.states[state]?.bulkDensity_kg_m3.value.packed ?? 0,
                      'kg/m³',
                      'density',
                    )}
                    , loose to pressed. <Source of={props.plant.states[state]?.bulkDensity_kg_m3 as Provenance} />
                  </Fact>
                </>
              )}
            </For>
            <Fact title="How it is charged">
              {CHARGED[props.plant.defaultCharge.layout]}, {STATE_WORDS[props.plant.defaultCharge.state].toLowerCase()},
              about {q().mass(props.plant.defaultCharge.mass_kg)}, {PACKED[props.plant.defaultCharge.packing]}
              {props.plant.defaultCharge.cut === ''
                ? ''
                : `, ${libraryText(props.plant.defaultCharge.cut, reader())}`}.{' '}
              <Source of={props.plant.defaultCharge.provenance} />
            </Fact>
            <Fact title="Run at home">
              {props.plant.distillationMinutes.home.value.join('–')} min.{' '}
              <RunHere plant={props.plant} context={props.context} />{' '}
              <Source of={props.plant.distillationMinutes.home} />
            </Fact>
            <Fact title="In the separator">
              The oil {props.plant.floats.value}.{' '}
              <Show when={texts()}>
                {(of) => (
                  <>
                    {sentenceCase(relativeDensityWords(of().relativeDensity.value, props.context.units()))}.{' '}
                    <Source of={of().relativeDensity} />
                  </>
                )}
              </Show>
            </Fact>
            <Fact title="Haze">
              <Show
                when={Number.isFinite(hazeTime(composition()))}
                fallback="At this temperature the oil is as heavy as water: it stays in the hydrosol."
              >
                Drops of {q().drop(HAZE.drop_m)} need {q().time(hazeTime(composition()))} for{' '}
                {formatQuantity(HAZE.way_m, 'm', props.context.units(), { hint: 'size' })} of hydrosol at{' '}
                {q().temperature(HAZE.hydrosol_K)}. Finer ones make it cloudy.{' '}
                <SheetButton
                  sheet={() => hazeSheet(composition())}
                  units={props.context.units()}
                  of="how long fine drops need"
                />
              </Show>
            </Fact>
            <Fact title="In the cold">
              <Show when={coldCrystals()} fallback="Nothing in this oil is known to freeze in a condenser.">
                {(at) => <>Crystals may form below {q().temperature(at())} and clog a cold tube.</>}
              </Show>{' '}
              <Source of={{ kind: 'computed', source: 'ideal solution of the constituents’ crystals' }} />
            </Fact>
            <Fact title="Lost in the water">
              Up to {q().of('dissolved', dissolvedOil(composition(), ROOM_K))} of hydrosol, dissolved.{' '}
              <Source of={{ kind: 'computed', source: 'solubilities of the constituents, by their share' }} />
            </Fact>
            <Fact title="Fire">
              Its vapour can be lit from about {q().temperature(flashPoint(composition()))}. Treat every oil as
              flammable.{' '}
              <Source
                of={{
                  kind: 'computed',
                  source: 'Le Chatelier from the constituents’ flash points, ± 5 K; no safety data',
                }}
              />
            </Fact>
            <Show when={harvest()}>
              {(of) => (
                <Show when={of().garden.value.fresh_kg_m2 ?? of().garden.value.dry_kg_m2}>
                  {(yearly) => (
                    <Fact title="From a garden, a year">
                      {between(yearly()[0], yearly()[1], 'kg/m²', 'harvest')}
                      {of().garden.value.fresh_kg_m2 === null ? ', dry' : ', fresh'}
                      <Show when={of().garden.value.plants_per_m2}>{(density) => <>, {plantsWords(density())}</>}</Show>
                      . <Source of={of().garden} />
                    </Fact>
                  )}
                </Show>
              )}
            </Show>
          </dl>
        </section>
        <section aria-labelledby="plant-care">
          <h3 id="plant-care">Care, and other ways</h3>
          <dl>
            <Fact title="Who should avoid it">
              {words().whoAvoids.value === ''
                ? 'Nothing is noted. That does not make it safe.'
                : words().whoAvoids.value}{' '}
              <Source of={words().whoAvoids} />
            </Fact>
            <Show when={texts()}>
              {(of) => (
                <>
                  <For each={of().cautions}>
                    {(each) => (
                      <Fact title="Caution">
                        {libraryText(each.value, reader())} <Source of={each} />
                      </Fact>
                    )}
                  </For>
                  <For each={of().qualityNotes}>
                    {(each) => (
                      <Fact title="Quality">
                        {libraryText(each.value, reader())} <Source of={each} />
                      </Fact>
                    )}
                  </For>
                  <Told title="How the trade distils it" of={of().tradeMethod} reader={reader()} />
                </>
              )}
            </Show>
            <Show when={harvest()}>
              {(of) => (
                <Show when={of().otherWay.value !== ''}>
                  <Fact title="Other ways than steam">
                    {libraryText(of().otherWay.value, reader())} Only steam is modelled here.{' '}
                    <Source of={of().otherWay} />
                  </Fact>
                </Show>
              )}
            </Show>
          </dl>
        </section>
      </div>
    </article>
  );
}
