/** Labels for the bottles, to print on plain paper. */
import { createMemo } from 'solid-js';
import { botanicals, libraryText } from '../../../sim/index.ts';
import { changeBottling } from '../../state/bottling-store.ts';
import { LabelSheet, printLabels } from '../labels/LabelSheet.tsx';
import { labelFor, type LabelText } from '../labels/label-sizes.ts';
import { identifiedBy, wild } from '../plants/gathered.ts';
import { sentenceCase } from '../plants/plant-rows.ts';
import type { BottlingPartProps } from './bottling-plan.ts';

export function Labels(props: BottlingPartProps) {
  const reader = () => props.context.reader();
  const plant = createMemo(() => botanicals.find(({ id }) => id === props.oil.botanical));
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
        `${props.plan.volume(oil_m3)}${props.now.batch.trim() === '' ? '' : `, batch ${props.now.batch.trim()}`}`,
        props.now.date === '' ? '' : `Distilled ${props.now.date}`,
        origin.filter((each) => each !== '').join(', '),
        props.plan.bestBefore() === null ? '' : `Best before ${props.plan.bestBefore() ?? ''}`,
        'Opened:',
        props.now.ownText.trim(),
      ].filter((line) => line !== ''),
      cautions: [
        'Flammable. Do not swallow. Keep from children, pets, food and flames. May cause allergy. Dilute for skin.',
      ],
    };
  };
  const labels = createMemo(() => [
    ...Array<LabelText>(props.plan.filled().full).fill(labelOf(props.now.bottle_m3 * props.now.fill)),
    ...(props.plan.filled().last_m3 > 0 ? [labelOf(props.plan.filled().last_m3)] : []),
  ]);

  return (
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
          Print {props.plan.bottles()} {props.plan.bottles() === 1 ? 'label' : 'labels'}
        </button>
        <span class="answer-quiet">
          On plain paper: cut out and glue on. What you sell needs more: check your local rules.
        </span>
      </div>
      <LabelSheet of={labels()} size={labelFor(props.now.bottle_m3)} />
    </section>
  );
}
