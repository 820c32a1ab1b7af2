/** What filter and drying salt take, and how they are used. */
import { Show } from 'solid-js';
import { FILTER_KINDS, LEAST_TO_FILTER_m3, type FilterKind } from '../../../sim/index.ts';
import { changeBottling } from '../../state/bottling-store.ts';
import { Toggle } from '../../ui/Toggle.tsx';
import { RadioRow } from '../parts/fields.tsx';
import { Source } from '../parts/Source.tsx';
import type { BottlingPartProps } from './bottling-plan.ts';

const FILTER_WORDS: Readonly<Record<FilterKind, string>> = {
  none: 'not filtered',
  cotton: 'through cotton',
  paper: 'through paper',
};

export function Filtering(props: BottlingPartProps) {
  return (
    <section aria-labelledby="filter-title">
      <h3 id="filter-title">Filter and dry</h3>
      <RadioRow
        label="Filter"
        value={props.now.filter}
        options={FILTER_KINDS.map((kind) => ({ value: kind, words: FILTER_WORDS[kind] }))}
        onChoose={(filter) => changeBottling({ filter })}
      />
      <Toggle on={props.now.dried} onChange={(on) => changeBottling({ dried: on })}>
        Dried with sodium sulfate
      </Toggle>
      <ul class="rules">
        <li>
          {props.plan.lost_m3()[1] > 0
            ? `These steps keep ${props.plan.q().range(props.plan.lost_m3()[0], props.plan.lost_m3()[1], 'm³', 'oilVolume')} of the oil.`
            : 'Pouring off keeps almost nothing back.'}{' '}
          Left to bottle: about {props.plan.volume(props.plan.left_m3())}.{' '}
          <Source
            of={{ kind: 'estimated', source: 'paper holds one to two times its weight; salt 0.3 to 0.5 mL a gram' }}
          />
        </li>
        <Show when={props.oil.oil_m3 < LEAST_TO_FILTER_m3}>
          <li>
            Under {props.plan.volume(LEAST_TO_FILTER_m3)} do not filter: only pour off.{' '}
            <Source of={{ kind: 'estimated', source: 'a paper keeps a tenth of it' }} />
          </li>
        </Show>
        <Show when={props.now.dried}>
          <li>
            Take {props.plan.q().range(props.plan.dried().dose_kg[0], props.plan.dried().dose_kg[1], 'kg', 'oil')} of
            anhydrous sodium sulfate, below {props.plan.q().temperature(303.15)}, for 30–60 minutes. Never calcium
            chloride, soda, lime or open heat.{' '}
            <Source of={{ kind: 'common-practice', source: 'laboratory practice; the water alone would need less' }} />
          </li>
        </Show>
        <li>
          Wet the paper with oil, not with water.{' '}
          <Source of={{ kind: 'common-practice', source: 'laboratory practice' }} />
        </li>
      </ul>
    </section>
  );
}
