/** From percent to drops, millilitres and grams, and what of it exceeds which limit. */
import { createMemo, createSignal, For, Index, Show } from 'solid-js';
import {
  amountsOf,
  CARRIER,
  carrierSheet,
  dilutionMessages,
  DROPS_RANGE_per_mL,
  DROPS_TO_KEEP_A_CAP_per_mL,
  dropsFromWeighing,
  dropsSheet,
  formatNumber,
  formatQuantity,
  judgeDilution,
  mostOf,
  oilDensity,
  quantities,
  recipeCostSheet,
  USES,
} from '../../../sim/index.ts';
import { changeBlend, NEAT, type KeptBlend } from '../../state/blend-store.ts';
import { createThrottled } from '../../ui/throttled.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { AmountRow, ChoiceRow } from '../parts/fields.tsx';
import { Source } from '../parts/Source.tsx';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { SheetButton } from '../working/SheetButton.tsx';
import { LATEST_ms, sharesOf } from './fade-picture.ts';

const ROOM_K = 293.15;
const WEIGHED_DROPS = 50;
const PERCENT = { hint: 'share', significant: 2 } as const;

export function Dilution(asked: { readonly blend: KeptBlend; readonly context: AnalysisContext }) {
  const followed = createThrottled(() => asked.blend, LATEST_ms);
  const props = {
    get blend() {
      return followed();
    },
    get context() {
      return asked.context;
    },
  };
  const reader = () => props.context.reader();
  const units = () => props.context.units();
  const messages = () => dilutionMessages(reader());
  const q = () => quantities(reader());
  const [weighed_kg, setWeighed] = createSignal(0);
  const shares = createMemo(() => sharesOf(props.blend));
  const rows = createMemo(() =>
    props.blend.oils.map((oil, i) => {
      const share = shares()[i] as number;
      const density = oilDensity(oil.composition, ROOM_K);
      return {
        oil,
        share,
        density,
        ...amountsOf(share, props.blend.product_m3, props.blend.dropsPer_mL, density),
        most: mostOf(oil.botanical, props.blend.use),
      };
    }),
  );
  const verdict = createMemo(() =>
    judgeDilution(
      rows().map(({ oil, share }) => ({ botanical: oil.botanical, composition: oil.composition, share })),
      props.blend.use,
    ),
  );
  const carrier_m3 = () => props.blend.product_m3 * (1 - props.blend.strength);
  const cost = () =>
    rows().reduce((sum, { oil, oil_m3 }) => sum + oil.price * oil_m3 * 1e6, 0) +
    props.blend.carrierPrice * carrier_m3() * 1e6;
  const density = () => {
    const oils = rows();
    const whole = oils.reduce((sum, { oil_m3 }) => sum + oil_m3, 0);
    return whole > 0 ? oils.reduce((sum, { oil_m3, density: own }) => sum + oil_m3 * own, 0) / whole : 0;
  };
  const weigh = (mass_kg: number) => {
    setWeighed(mass_kg);
    const found = dropsFromWeighing(WEIGHED_DROPS, mass_kg, density());
    const [least, most] = DROPS_RANGE_per_mL;
    if (!(found >= least / 2 && found <= most * 2))
      return `That gives ${formatNumber(found, 0)} drops a millilitre, which no bottle drops. Weigh ${WEIGHED_DROPS} drops again.`;
    changeBlend({ dropsPer_mL: found });
    return null;
  };

  return (
    <section class="dilution" aria-labelledby="dilution-title">
      <h3 id="dilution-title">Dilute it</h3>
      <div class="form-rows">
        <ChoiceRow
          label="Used"
          value={props.blend.use}
          options={USES.map((use) => ({ value: use, words: messages().use(use) }))}
          onChoose={(use) => changeBlend({ use })}
        />
        <AmountRow
          now={props.blend}
          change={changeBlend}
          of="product_m3"
          label="Product"
          units={units()}
          unit="m³"
          hint="oilVolume"
          min={1e-6}
          max={2e-3}
        />
        <AmountRow
          now={props.blend}
          change={changeBlend}
          of="strength"
          label="Oils in it"
          units={units()}
          hint="share"
          min={0.001}
          max={NEAT}
        />
        <AmountRow
          now={props.blend}
          change={changeBlend}
          of="dropsPer_mL"
          label="Drops in a millilitre"
          units={units()}
          min={10}
          max={112}
        />
        <AmountRow
          now={props.blend}
          change={changeBlend}
          of="carrierPrice"
          label="Price of the fixed oil, a mL"
          units={units()}
          currency={reader().currency ?? null}
          min={0}
          max={10000}
        />
        <QuantityField
          label={`Weight of ${WEIGHED_DROPS} drops`}
          value={weighed_kg()}
          unit="kg"
          hint="oil"
          min={0}
          max={0.02}
          system={units()}
          onCommit={weigh}
        />
      </div>
      <p class="answer-lead is-small" role="status" classList={{ 'answer-problem': verdict().findings.length > 0 }}>
        {messages().lead(verdict(), props.blend.use)}
      </p>
      <ul class="dilution-findings" aria-label="What exceeds which limit">
        <For each={verdict().findings}>
          {(finding) => (
            <li>
              {messages().finding(finding)} <Source of={finding.provenance} />
            </li>
          )}
        </For>
      </ul>
      <div class="answer-table is-cards" role="region" aria-label="The dilution, oil by oil" tabindex="0">
        <table>
          <caption class="visually-hidden">The dilution, oil by oil</caption>
          <thead>
            <tr>
              <th scope="col" class="is-words">
                Oil
              </th>
              <th scope="col">Share</th>
              <th scope="col">Drops</th>
              <th scope="col">Volume</th>
              <th scope="col">Weight</th>
              <th scope="col">Limit</th>
              <th scope="col" class="is-words">
                Source of the limit
              </th>
            </tr>
          </thead>
          <tbody>
            <Index each={rows()}>
              {(row) => (
                <tr>
                  <th scope="row" class="is-words">
                    {row().oil.name}
                  </th>
                  <td data-title="Share">{formatQuantity(row().share, '1', units(), PERCENT)}</td>
                  <td data-title="Drops">
                    {formatNumber(row().drops, row().drops < 10 ? 1 : 0)}{' '}
                    <SheetButton
                      sheet={() =>
                        dropsSheet(row().share, props.blend.product_m3, props.blend.dropsPer_mL, row().density)
                      }
                      units={units()}
                      of={`the drops of ${row().oil.name}`}
                    />
                  </td>
                  <td data-title="Volume">{q().of('oilVolume', row().oil_m3, { decimals: 2 })}</td>
                  <td data-title="Weight">{q().oilMass(row().oil_kg)}</td>
                  <td data-title="Limit">
                    {row().most.limit === null ? 'look up' : formatQuantity(row().most.limit, '1', units(), PERCENT)}
                  </td>
                  <td class="is-words" data-title="Source of the limit">
                    <Source of={row().most.provenance} />
                  </td>
                </tr>
              )}
            </Index>
            <Show when={carrier_m3() > 0}>
              <tr>
                <th scope="row" class="is-words">
                  Fixed oil, to fill up
                </th>
                <td data-title="Share">{formatQuantity(1 - props.blend.strength, '1', units(), PERCENT)}</td>
                <td data-title="Drops">–</td>
                <td data-title="Volume">{q().of('oilVolume', carrier_m3(), { decimals: 1 })}</td>
                <td data-title="Weight">{q().oilMass(carrier_m3() * CARRIER.density_kg_m3)}</td>
                <td data-title="Limit">–</td>
                <td class="is-words" data-title="Working">
                  <SheetButton
                    sheet={() => carrierSheet(props.blend.strength, props.blend.product_m3)}
                    units={units()}
                    of="the fixed oil"
                  />
                </td>
              </tr>
            </Show>
          </tbody>
        </table>
      </div>
      <p>
        Drops differ in size: {formatNumber(props.blend.dropsPer_mL, 0)} drops a millilitre here. To be sure to stay
        below a limit, count as if {DROPS_TO_KEEP_A_CAP_per_mL} made a millilitre, or weigh.{' '}
        <SheetButton
          sheet={() => dropsSheet(props.blend.strength, props.blend.product_m3, props.blend.dropsPer_mL, density())}
          units={units()}
          of="the number of drops"
        />{' '}
        <Show when={cost() > 0}>
          It costs {q().cost(cost())}.{' '}
          <SheetButton
            sheet={() =>
              recipeCostSheet([
                ...rows().map(({ oil, oil_m3 }) => ({ name: oil.name, oil_m3, price: oil.price })),
                { name: 'fixed oil', oil_m3: carrier_m3(), price: props.blend.carrierPrice },
              ])
            }
            units={units()}
            of="the cost"
          />
        </Show>
      </p>
      <p>
        {messages().allergens(verdict())}{' '}
        <Source of={{ kind: 'read', source: 'Commission Regulation (EU) 2023/1545; older entries from memory' }} />
      </p>
      <ul class="dilution-cautions" aria-label="Cautions">
        <For each={[...messages().forUse(props.blend.use), ...messages().always]}>
          {(caution) => <li>{caution}</li>}
        </For>
        <li>
          <Source
            of={{
              kind: 'common-practice',
              source: 'drops and minutes of the trade; first aid as poison centres print it',
            }}
          />
        </li>
      </ul>
    </section>
  );
}
