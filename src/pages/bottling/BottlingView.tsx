/** After the still: settling, bottles, how long it keeps, labels, and the hydrosol. */
import { createMemo, For, onMount, Show } from 'solid-js';
import {
  botanicals,
  BOTTLE_SIZES_m3,
  countAfter,
  DISSOLVED_OXYGEN_mol_m3,
  drying,
  FILL_RANGE,
  FILTER_KINDS,
  FILTERS,
  formatNumber,
  formatQuantity,
  HYDROSOL,
  hydrosolLife,
  hydrosolSheet,
  keeping,
  LEAST_TO_FILTER_m3,
  libraryText,
  peroxideAtFill,
  peroxideSheet,
  planBottles,
  quantities,
  standing,
  standingSheet,
  WATER_DROPS_m,
  type FilterKind,
} from '../../../sim/index.ts';
import { bottling, changeBottling, openBottling, type Bottling } from '../../state/bottling-store.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { Toggle } from '../../ui/Toggle.tsx';
import { LabelSheet, printLabels } from '../labels/LabelSheet.tsx';
import { labelFor, type LabelText } from '../labels/label-sizes.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { Source } from '../parts/Source.tsx';
import { identifiedBy, wild } from '../plants/gathered.ts';
import { sentenceCase } from '../plants/plant-rows.ts';
import { SheetButton } from '../working/SheetButton.tsx';
import { bottledOil, monthAfter, spanWords, type BottledOil } from './bottled-oil.ts';
import { CurvePicture } from './CurvePicture.tsx';
import './bottling.css';

const FILTER_WORDS: Readonly<Record<FilterKind, string>> = {
  none: 'not filtered',
  cotton: 'through cotton',
  paper: 'through paper',
};
const SETTLED_DROP_m = 20e-6;
const FILLS = Array.from({ length: 73 }, (_, k) => 0.25 + k * 0.01);
const GROWTH_DAYS = 60;
const DAY_s = 86400;

export function BottlingView(props: { readonly context: AnalysisContext }) {
  onMount(() => void openBottling());
  const oil = createMemo(() => bottledOil(bottling(), props.context.result()));
  const units = () => props.context.units();
  return (
    <article class="answer bottling-view" aria-labelledby="bottling-title">
      <header class="answer-head">
        <h2 id="bottling-title">From the receiver to the bottle</h2>
        <fieldset class="choice-radios">
          <legend class="visually-hidden">Which oil</legend>
          <label class="choice-radio">
            <input
              type="radio"
              name="bottling-source"
              checked={bottling().source === 'run'}
              onChange={() => changeBottling({ source: 'run' })}
            />{' '}
            the oil of the run on the bench
          </label>
          <label class="choice-radio">
            <input
              type="radio"
              name="bottling-source"
              checked={bottling().source === 'typed'}
              onChange={() => changeBottling({ source: 'typed' })}
            />{' '}
            another oil
          </label>
        </fieldset>
        <Show when={bottling().source === 'typed'}>
          <div class="answer-tools">
            <label class="answer-choice">
              <span>Plant</span>
              <select onChange={(event) => changeBottling({ botanical: event.currentTarget.value })}>
                <For each={botanicals}>
                  {(plant) => (
                    <option value={plant.id} selected={plant.id === bottling().botanical}>
                      {sentenceCase(plant.name.value)}
                    </option>
                  )}
                </For>
              </select>
            </label>
            <QuantityField
              label="Oil"
              value={bottling().oil_m3}
              unit="m³"
              hint="oilVolume"
              min={1e-7}
              max={0.01}
              system={units()}
              onCommit={(value) => changeBottling({ oil_m3: value })}
            />
          </div>
        </Show>
        <Show
          when={oil()}
          fallback={
            <p class="answer-problem">This run brings no oil to bottle. Choose another oil, or change the run.</p>
          }
        >
          {(of) => <Bottled oil={of()} now={bottling()} context={props.context} />}
        </Show>
      </header>
    </article>
  );
}

function Bottled(props: { readonly oil: BottledOil; readonly now: Bottling; readonly context: AnalysisContext }) {
  const reader = () => props.context.reader();
  const units = () => props.context.units();
  const q = () => quantities(reader());
  const volume = (value_m3: number) => q().of('oilVolume', value_m3);
  const plant = createMemo(() => botanicals.find(({ id }) => id === props.oil.botanical));
  const settle = createMemo(() => standing(props.oil.composition, props.now.standing_K, props.now.height_m));
  const dry = createMemo(() => drying(props.oil.composition, props.oil.oil_m3, props.now.standing_K));
  const lost = createMemo(() => {
    const filter = FILTERS[props.now.filter].kept_m3;
    const salt = props.now.dried ? dry().lost_m3 : ([0, 0] as const);
    return [filter[0] + salt[0], filter[1] + salt[1]] as const;
  });
  const left_m3 = () => Math.max(0, props.oil.oil_m3 - (lost()[0] + lost()[1]) / 2);
  const plan = createMemo(() => planBottles(left_m3(), props.now.bottle_m3, props.now.fill, props.now.store_K));
  const keep = createMemo(() => keeping(props.oil.botanical, props.now.store_K, props.now.openedOften));
  const peroxide = (value: number) => q().of('amountPerVolume', value, { significant: 2 });
  const bottles = () => plan().full + (plan().last_m3 > 0 ? 1 : 0);
  const dropTime = createMemo(() => settle().times_s[WATER_DROPS_m.indexOf(SETTLED_DROP_m)] as number);
  const best = () => monthAfter(props.now.date, keep().life_s);
  const labelOf = (oil_m3: number): LabelText => {
    const name = sentenceCase(plant()?.name.value ?? props.oil.botanical);
    const origin = [
      props.now.origin.trim(),
      wild() && identifiedBy().trim() !== '' ? `gathered wild, identified by ${identifiedBy().trim()}` : '',
    ];
    return {
      name: `Essential oil of ${name.toLowerCase()}`,
      under: `${plant()?.latinName.value ?? ''}, ${libraryText(plant()?.part.value ?? '', reader())}`,
      lines: [
        `${volume(oil_m3)}${props.now.batch.trim() === '' ? '' : `, batch ${props.now.batch.trim()}`}`,
        props.now.date === '' ? '' : `Distilled ${props.now.date}`,
        origin.filter((each) => each !== '').join(', '),
        best() === null ? '' : `Best before ${best() ?? ''}`,
        'Opened:',
        props.now.ownText.trim(),
      ].filter((line) => line !== ''),
      cautions: [
        'Flammable. Do not swallow. Keep from children, pets, food and flames. May cause allergy. Dilute for skin.',
      ],
    };
  };
  const labels = createMemo(() => [
    ...Array<LabelText>(plan().full).fill(labelOf(props.now.bottle_m3 * props.now.fill)),
    ...(plan().last_m3 > 0 ? [labelOf(plan().last_m3)] : []),
  ]);

  return (
    <>
      <p class="answer-lead" role="status">
        {volume(props.oil.oil_m3)} of oil fill {bottles()} {bottles() === 1 ? 'bottle' : 'bottles'} of{' '}
        {volume(props.now.bottle_m3)}. Let it stand first: water drops of {q().drop(SETTLED_DROP_m)} need{' '}
        {spanOrTime(dropTime(), q().time)}.
      </p>
      <section aria-labelledby="settle-title">
        <h3 id="settle-title">Let it settle</h3>
        <div class="dilution-fields">
          <QuantityField
            label="Height of the oil"
            value={props.now.height_m}
            unit="m"
            hint="size"
            min={0.005}
            max={0.5}
            system={units()}
            onCommit={(value) => changeBottling({ height_m: value })}
          />
          <QuantityField
            label="Temperature while it stands"
            value={props.now.standing_K}
            unit="K"
            hint="temperature"
            min={278.15}
            max={313.15}
            system={units()}
            onCommit={(value) => changeBottling({ standing_K: value })}
          />
        </div>
        <div class="answer-table" role="region" aria-label="Time in which water drops leave the oil" tabindex="0">
          <table>
            <caption class="visually-hidden">Time in which water drops leave the oil</caption>
            <thead>
              <tr>
                <th scope="col" class="is-words">
                  Drops of water
                </th>
                <th scope="col">Gone after</th>
                <th scope="col" class="is-words">
                  Working
                </th>
              </tr>
            </thead>
            <tbody>
              <For each={WATER_DROPS_m}>
                {(drop, at) => (
                  <tr>
                    <th scope="row" class="is-words">
                      {q().drop(drop)}
                    </th>
                    <td>{spanOrTime(settle().times_s[at()] as number, q().time)}</td>
                    <td class="is-words">
                      <SheetButton
                        sheet={() =>
                          standingSheet(props.oil.composition, props.now.standing_K, props.now.height_m, drop)
                        }
                        units={units()}
                        of={`the time for drops of ${q().drop(drop)}`}
                      />
                    </td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
        <ul class="rules">
          <li>
            The water gathers{' '}
            {settle().waterSinks
              ? 'at the bottom: draw it off from below'
              : 'on top: this oil sinks. Draw the oil off from below'}
            . Stand overnight in a tall, narrow vessel, then 2–7 days closed, then pour off the clear oil.{' '}
            <Source of={{ kind: 'common-practice', source: 'trade practice' }} />
          </li>
          <li>
            This oil holds about {q().mass(dry().water_kg)} of water that no standing removes, half or twice that. It
            clouds in the cold.{' '}
            <Source of={{ kind: 'estimated', source: 'group contribution, good to a factor of two; never measured' }} />
          </li>
          <li>
            Thick oils: warm to {q().range(308.15, 313.15, 'K', 'temperature')}. No open flame.{' '}
            <Source of={{ kind: 'common-practice', source: 'trade practice' }} />
          </li>
        </ul>
      </section>
      <section aria-labelledby="filter-title">
        <h3 id="filter-title">Filter and dry</h3>
        <fieldset class="choice-radios">
          <legend class="visually-hidden">Filter</legend>
          <For each={FILTER_KINDS}>
            {(kind) => (
              <label class="choice-radio">
                <input
                  type="radio"
                  name="bottling-filter"
                  checked={props.now.filter === kind}
                  onChange={() => changeBottling({ filter: kind })}
                />{' '}
                {FILTER_WORDS[kind]}
              </label>
            )}
          </For>
        </fieldset>
        <Toggle on={props.now.dried} onChange={(on) => changeBottling({ dried: on })}>
          Dried with sodium sulfate
        </Toggle>
        <ul class="rules">
          <li>
            {lost()[1] > 0
              ? `These steps keep ${q().range(lost()[0], lost()[1], 'm³', 'oilVolume')} of the oil.`
              : 'Pouring off keeps almost nothing back.'}{' '}
            Left to bottle: about {volume(left_m3())}.{' '}
            <Source
              of={{ kind: 'estimated', source: 'paper holds one to two times its weight; salt 0.3 to 0.5 mL a gram' }}
            />
          </li>
          <Show when={props.oil.oil_m3 < LEAST_TO_FILTER_m3}>
            <li>
              Under {volume(LEAST_TO_FILTER_m3)} do not filter: only pour off.{' '}
              <Source of={{ kind: 'estimated', source: 'a paper keeps a tenth of it' }} />
            </li>
          </Show>
          <Show when={props.now.dried}>
            <li>
              Take {q().range(dry().dose_kg[0], dry().dose_kg[1], 'kg', 'oil')} of anhydrous sodium sulfate, below{' '}
              {q().temperature(303.15)}, for 30–60 minutes. Never calcium chloride, soda, lime or open heat.{' '}
              <Source
                of={{ kind: 'common-practice', source: 'laboratory practice; the water alone would need less' }}
              />
            </li>
          </Show>
          <li>
            Wet the paper with oil, not with water.{' '}
            <Source of={{ kind: 'common-practice', source: 'laboratory practice' }} />
          </li>
        </ul>
      </section>
      <section aria-labelledby="bottles-title">
        <h3 id="bottles-title">Bottles</h3>
        <div class="dilution-fields">
          <label class="answer-choice">
            <span>Size</span>
            <select
              onChange={(event) =>
                changeBottling({ bottle_m3: BOTTLE_SIZES_m3[event.currentTarget.selectedIndex] ?? 10e-6 })
              }
            >
              <For each={BOTTLE_SIZES_m3}>
                {(size) => (
                  <option value={size} selected={size === props.now.bottle_m3}>
                    {volume(size)}
                  </option>
                )}
              </For>
            </select>
          </label>
          <QuantityField
            label="Filled to"
            value={props.now.fill}
            unit="1"
            hint="share"
            min={0.25}
            max={FILL_RANGE[1]}
            system={units()}
            onCommit={(value) => changeBottling({ fill: value })}
          />
          <QuantityField
            label="Kept at"
            value={props.now.store_K}
            unit="K"
            hint="temperature"
            min={255.15}
            max={313.15}
            system={units()}
            onCommit={(value) => changeBottling({ store_K: value })}
          />
          <Toggle on={props.now.openedOften} onChange={(on) => changeBottling({ openedOften: on })}>
            Opened often
          </Toggle>
        </div>
        <p>
          {plan().full} full {plan().full === 1 ? 'bottle' : 'bottles'}
          <Show when={plan().last_m3 > 0}>
            {' '}
            and a last one with {volume(plan().last_m3)},{' '}
            {formatQuantity(plan().lastFill, '1', units(), { hint: 'share' })} full
          </Show>
          . The air in a full one can make {peroxide(plan().peroxide_mol_m3)} of peroxide
          <Show when={plan().lastPeroxide_mol_m3}>
            {(most) => <>, in the last one {peroxide(most())}: use a smaller bottle for it, or use it first</>}
          </Show>
          .{' '}
          <SheetButton
            sheet={() => peroxideSheet(props.now.fill, props.now.bottle_m3, props.now.store_K)}
            units={units()}
            of="the peroxide"
          />
        </p>
        <CurvePicture
          label={`Most peroxide from the air in a bottle, against how full it is. Filled to ${formatQuantity(props.now.fill, '1', units(), { hint: 'share' })}: ${peroxide(plan().peroxide_mol_m3)}.`}
          xTitle="how full the bottle is"
          yTitle={`most peroxide of one fill, ${units() === 'us' ? 'mmol/qt' : 'mmol/L'}`}
          points={FILLS.map((fill) => [fill, peroxideAtFill(fill, props.now.store_K)])}
          marks={[
            { x: props.now.fill, y: plan().peroxide_mol_m3, label: 'a full bottle' },
            ...(plan().lastPeroxide_mol_m3 === null || plan().lastFill < 0.25
              ? []
              : [{ x: plan().lastFill, y: plan().lastPeroxide_mol_m3 ?? 0, label: 'the last one' }]),
          ]}
          xTicks={[0.25, 0.5, 0.75, 0.95].map((fill) => [fill, formatQuantity(fill, '1', units(), { hint: 'share' })])}
          yTicks={[0, 10, 20, 30].map((at) => [at, q().of('amountPerVolume', at, { bare: true, decimals: 0 })])}
        />
        <ul class="rules">
          <li>
            Oxygen that is dissolved in the oil can add about {peroxide(DISSOLVED_OXYGEN_mol_m3)} at each opening. Open
            seldom, never shake, and move the rest to a smaller bottle.{' '}
            <Source of={{ kind: 'memory', source: 'air-saturated organic liquids, 1.5 to 3 mmol/L' }} />
          </li>
          <li>
            A limit for peroxide exists in the IFRA Standards. We have not read it and show no figure: look it up before
            you sell. <Source of={{ kind: 'memory', source: 'IFRA Standards' }} />
          </li>
          <li>
            Use brown or blue glass and a cap lined with PTFE. Leave no rubber bulb in the bottle, and never keep oil in
            copper.{' '}
            <Source
              of={{ kind: 'common-practice', source: 'trade practice; copper from Nguyen et al. 2009, abstract' }}
            />
          </li>
          <li>
            Keep it dark, cool, locked, away from food and flames.{' '}
            <Source of={{ kind: 'common-practice', source: 'trade practice' }} />
          </li>
        </ul>
        <p>
          <strong>It keeps about {spanWords(keep().life_s)}</strong>, perhaps {spanWords(keep().range_s[0])} or{' '}
          {spanWords(keep().range_s[1])}
          <Show when={best()}>{(month) => <>: best before {month()}</>}</Show>.{' '}
          <Source
            of={{
              kind: 'common-practice',
              source:
                'years of the trade for full, dark bottles; twice the rate in ten degrees, halved when opened often',
            }}
          />
        </p>
      </section>
      <section aria-labelledby="labels-title" class="bottling-labels">
        <h3 id="labels-title">Labels</h3>
        <div class="dilution-fields">
          <label class="answer-choice">
            <span>Distilled on</span>
            <input
              type="date"
              class="text-input"
              value={props.now.date}
              onChange={(event) => changeBottling({ date: event.currentTarget.value })}
            />
          </label>
          <label class="answer-choice">
            <span>Batch</span>
            <input
              class="text-input"
              type="text"
              maxLength={20}
              value={props.now.batch}
              onInput={(event) => changeBottling({ batch: event.currentTarget.value })}
            />
          </label>
          <label class="answer-choice">
            <span>Grown at</span>
            <input
              class="text-input"
              type="text"
              maxLength={60}
              value={props.now.origin}
              onInput={(event) => changeBottling({ origin: event.currentTarget.value })}
            />
          </label>
          <label class="answer-choice">
            <span>Own text</span>
            <input
              class="text-input"
              type="text"
              maxLength={120}
              value={props.now.ownText}
              onInput={(event) => changeBottling({ ownText: event.currentTarget.value })}
            />
          </label>
        </div>
        <div class="answer-tools">
          <button type="button" class="is-first" onClick={printLabels}>
            Print {bottles()} {bottles() === 1 ? 'label' : 'labels'}
          </button>
          <span class="answer-quiet">
            On plain paper: cut out and glue on. What you sell needs more: check your local rules.
          </span>
        </div>
        <LabelSheet of={labels()} size={labelFor(props.now.bottle_m3)} />
      </section>
      <Hydrosol oil={props.oil} now={props.now} context={props.context} />
    </>
  );
}

const spanOrTime = (time_s: number, words: (time_s: number) => string): string =>
  time_s < 2 * DAY_s ? words(Math.max(60, Math.round(time_s / 60) * 60)) : spanWords(time_s);

function Hydrosol(props: { readonly oil: BottledOil; readonly now: Bottling; readonly context: AnalysisContext }) {
  const units = () => props.context.units();
  const q = () => quantities(props.context.reader());
  const life = () => hydrosolLife(props.now.hydrosolStart, props.now.hydrosol_K);
  return (
    <section aria-labelledby="hydrosol-title">
      <h3 id="hydrosol-title">Hydrosol</h3>
      <Show when={props.oil.hydrosol_kg}>{(mass) => <p>The run leaves {q().water(mass())} of hydrosol.</p>}</Show>
      <div class="dilution-fields">
        <label class="answer-choice">
          <span>Bottled</span>
          <select
            onChange={(event) =>
              changeBottling({ hydrosolStart: event.currentTarget.value === 'clean' ? 'clean' : 'kitchen' })
            }
          >
            <option value="kitchen" selected={props.now.hydrosolStart === 'kitchen'}>
              as a kitchen does
            </option>
            <option value="clean" selected={props.now.hydrosolStart === 'clean'}>
              hot, into clean glass
            </option>
          </select>
        </label>
        <QuantityField
          label="Hydrosol kept at"
          value={props.now.hydrosol_K}
          unit="K"
          hint="temperature"
          min={274.15}
          max={308.15}
          system={units()}
          onCommit={(value) => changeBottling({ hydrosol_K: value })}
        />
      </div>
      <p>
        <strong>Throw it away after about {spanWords(life())}</strong>, and at once when it is hazy, slimy or smells
        off.{' '}
        <SheetButton
          sheet={() => hydrosolSheet(props.now.hydrosolStart, props.now.hydrosol_K)}
          units={units()}
          of="how long it keeps"
        />{' '}
        <Source
          of={{
            kind: 'estimated',
            source: 'a growth law with estimated rates and one ceiling that was seen in stored hydrosols',
          }}
        />
      </p>
      <CurvePicture
        label={`Microbes in the hydrosol over ${GROWTH_DAYS} days. It reaches the count at which it is thrown away after ${spanWords(life())}.`}
        xTitle="days in the bottle"
        yTitle="microbes in a millilitre"
        logarithmic
        points={Array.from({ length: 2 * GROWTH_DAYS + 1 }, (_, k) => [
          k / 2,
          countAfter(props.now.hydrosolStart, props.now.hydrosol_K, (k * DAY_s) / 2),
        ])}
        marks={
          life() <= GROWTH_DAYS * DAY_s ? [{ x: life() / DAY_s, y: HYDROSOL.discard_per_mL, label: 'throw away' }] : []
        }
        xTicks={[0, 15, 30, 45, 60].map((day) => [day, String(day)])}
        yTicks={[0.01, 1, 100, 1e4, 1e6].map((at) => [at, formatNumber(at, at < 1 ? 2 : 0)])}
      />
      <ul class="rules">
        <li>
          Fill small bottles to the brim, hot, into glass that was heated dry to {q().temperature(433.15)} for two
          hours. Boiling for ten minutes only disinfects. Rinse caps with alcohol of 70&#8239;%, away from flames.{' '}
          <Source of={{ kind: 'memory', source: 'pharmacopoeia methods' }} />
        </li>
        <li>
          Use an open bottle within one to two weeks, cold. Do not believe in months.{' '}
          <Source
            of={{
              kind: 'estimated',
              source:
                'growth law; Labadie et al. 2016 and Moein et al., abstracts: half of bought rose waters were spoilt',
            }}
          />
        </li>
        <li class="answer-problem">
          Never in eyes, nose or mouth, on wounds, in a nebuliser, humidifier or ultrasonic diffuser, nor for infants or
          people with weak defences. Germs that harm them grow in it.
        </li>
      </ul>
    </section>
  );
}
