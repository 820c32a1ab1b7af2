/** How long the scented water keeps. */
import { Show } from 'solid-js';
import { countAfter, formatNumber, HYDROSOL, hydrosolLife, hydrosolSheet } from '../../../sim/index.ts';
import { changeBottling } from '../../state/bottling-store.ts';
import { ChoiceRow } from '../parts/fields.tsx';
import { Source } from '../parts/Source.tsx';
import { SheetButton } from '../working/SheetButton.tsx';
import { spanWords } from './bottled-oil.ts';
import type { BottlingPartProps } from './bottling-plan.ts';
import { CurvePicture } from './CurvePicture.tsx';
import { Amount } from './fields.tsx';

const GROWTH_DAYS = 60;
const DAY_s = 86400;

export function Hydrosol(props: BottlingPartProps) {
  const life = () => hydrosolLife(props.now.hydrosolStart, props.now.hydrosol_K);
  return (
    <section aria-labelledby="hydrosol-title">
      <h3 id="hydrosol-title">Hydrosol</h3>
      <Show when={props.oil.hydrosol_kg}>
        {(mass) => <p>The run leaves {props.plan.q().water(mass())} of hydrosol.</p>}
      </Show>
      <div class="form-rows">
        <ChoiceRow
          label="Bottled"
          value={props.now.hydrosolStart}
          options={[
            { value: 'kitchen', words: 'as a kitchen does' },
            { value: 'clean', words: 'hot, into clean glass' },
          ]}
          onChoose={(hydrosolStart) => changeBottling({ hydrosolStart })}
        />
        <Amount
          of="hydrosol_K"
          label="Hydrosol kept at"
          units={props.plan.units()}
          unit="K"
          hint="temperature"
          min={274.15}
          max={308.15}
        />
      </div>
      <p>
        <strong>Throw it away after about {spanWords(life())}</strong>, and at once when it is hazy, slimy or smells
        off.{' '}
        <SheetButton
          sheet={() => hydrosolSheet(props.now.hydrosolStart, props.now.hydrosol_K)}
          units={props.plan.units()}
          of="how long the hydrosol keeps"
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
          Fill small bottles to the brim, hot, into glass that was heated dry to {props.plan.q().temperature(433.15)}{' '}
          for two hours. Boiling for ten minutes only disinfects. Rinse caps with alcohol of 70&#8239;%, away from
          flames. <Source of={{ kind: 'memory', source: 'pharmacopoeia methods' }} />
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
