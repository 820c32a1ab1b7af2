/** How many bottles, how much peroxide their air can make, and how long the oil keeps in them. */
import { Show } from 'solid-js';
import {
  BOTTLE_SIZES_m3,
  bottlesSheet,
  DISSOLVED_OXYGEN_mol_m3,
  FILL_RANGE,
  formatQuantity,
  keepingSheet,
  lastBottleSheet,
  peroxideAtFill,
  peroxideSheet,
} from '../../../sim/index.ts';
import { changeBottling } from '../../state/bottling-store.ts';
import { Toggle } from '../../ui/Toggle.tsx';
import { ChoiceRow } from '../parts/fields.tsx';
import { Source } from '../parts/Source.tsx';
import { SheetButton } from '../working/SheetButton.tsx';
import { spanWords } from './bottled-oil.ts';
import type { BottlingPartProps } from './bottling-plan.ts';
import { CurvePicture } from './CurvePicture.tsx';
import { Amount } from './fields.tsx';

const FILLS = Array.from({ length: 73 }, (_, k) => 0.25 + k * 0.01);

export function Bottles(props: BottlingPartProps) {
  const peroxide = (value: number) => props.plan.q().of('amountPerVolume', value, { significant: 2 });
  return (
    <section aria-labelledby="bottles-title">
      <h3 id="bottles-title">Bottles</h3>
      <div class="form-rows">
        <ChoiceRow
          label="Size"
          value={props.now.bottle_m3}
          options={BOTTLE_SIZES_m3.map((size) => ({ value: size, words: props.plan.volume(size) }))}
          onChoose={(bottle_m3) => changeBottling({ bottle_m3 })}
        />
        <Amount of="fill" label="Filled to" units={props.plan.units()} hint="share" min={0.25} max={FILL_RANGE[1]} />
        <Amount
          of="store_K"
          label="Kept at"
          units={props.plan.units()}
          unit="K"
          hint="temperature"
          min={255.15}
          max={313.15}
        />
        <Toggle on={props.now.openedOften} onChange={(on) => changeBottling({ openedOften: on })}>
          Opened often
        </Toggle>
      </div>
      <p>
        {props.plan.filled().full} full {props.plan.filled().full === 1 ? 'bottle' : 'bottles'}{' '}
        <SheetButton
          sheet={() =>
            bottlesSheet(
              props.oil.oil_m3,
              props.now.filter,
              props.now.dried ? props.plan.dried().lost_m3 : [0, 0],
              props.now.bottle_m3,
              props.now.fill,
            )
          }
          units={props.plan.units()}
          of="the number of bottles"
        />
        <Show when={props.plan.filled().last_m3 > 0}>
          {' '}
          and a last one with {props.plan.volume(props.plan.filled().last_m3)},{' '}
          {formatQuantity(props.plan.filled().lastFill, '1', props.plan.units(), { hint: 'share' })} full{' '}
          <SheetButton
            sheet={() => lastBottleSheet(props.plan.left_m3(), props.now.bottle_m3, props.now.fill, props.now.store_K)}
            units={props.plan.units()}
            of="how full the last bottle is"
          />
        </Show>
        . The air in a full one can make {peroxide(props.plan.filled().peroxide_mol_m3)} of peroxide{' '}
        <SheetButton
          sheet={() => peroxideSheet(props.now.fill, props.now.bottle_m3, props.now.store_K)}
          units={props.plan.units()}
          of="the peroxide"
        />
        <Show when={props.plan.filled().lastPeroxide_mol_m3}>
          {(most) => (
            <>
              , in the last one {peroxide(most())}{' '}
              <SheetButton
                sheet={() => peroxideSheet(props.plan.filled().lastFill, props.now.bottle_m3, props.now.store_K)}
                units={props.plan.units()}
                of="the peroxide in the last bottle"
              />
            </>
          )}
        </Show>
        .{' '}
        <Show when={props.plan.filled().lastPeroxide_mol_m3}>
          Use a smaller bottle for the last one, or use it first.
        </Show>
      </p>
      <CurvePicture
        label={`Most peroxide from the air in a bottle, against how full it is. Filled to ${formatQuantity(props.now.fill, '1', props.plan.units(), { hint: 'share' })}: ${peroxide(props.plan.filled().peroxide_mol_m3)}.`}
        xTitle="how full the bottle is"
        yTitle={`most peroxide of one fill, ${props.plan.units() === 'us' ? 'mmol/qt' : 'mmol/L'}`}
        points={FILLS.map((fill) => [fill, peroxideAtFill(fill, props.now.store_K)])}
        marks={[
          { x: props.now.fill, y: props.plan.filled().peroxide_mol_m3, label: 'a full bottle' },
          ...(props.plan.filled().lastPeroxide_mol_m3 === null || props.plan.filled().lastFill < 0.25
            ? []
            : [
                {
                  x: props.plan.filled().lastFill,
                  y: props.plan.filled().lastPeroxide_mol_m3 ?? 0,
                  label: 'the last one',
                },
              ]),
        ]}
        xTicks={[0.25, 0.5, 0.75, 0.95].map((fill) => [
          fill,
          formatQuantity(fill, '1', props.plan.units(), { hint: 'share' }),
        ])}
        yTicks={[0, 10, 20, 30].map((at) => [
          at,
          props.plan.q().of('amountPerVolume', at, { bare: true, decimals: 0 }),
        ])}
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
        <strong>It keeps about {spanWords(props.plan.keeps().life_s)}</strong>, perhaps{' '}
        {spanWords(props.plan.keeps().range_s[0])} or {spanWords(props.plan.keeps().range_s[1])}
        <Show when={props.plan.bestBefore()}>{(month) => <>: best before {month()}</>}</Show>.{' '}
        <SheetButton
          sheet={() => keepingSheet(props.oil.botanical, props.now.store_K, props.now.openedOften)}
          units={props.plan.units()}
          of="how long it keeps"
        />{' '}
        <Source
          of={{
            kind: 'common-practice',
            source:
              'years of the trade for full, dark bottles; twice the rate in ten degrees, halved when opened often',
          }}
        />
      </p>
    </section>
  );
}
