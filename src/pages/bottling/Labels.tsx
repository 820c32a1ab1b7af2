/** Labels for the bottles, to print on plain paper. */
import { createMemo } from 'solid-js';
import { formatQuantity, libraryText, ownPlantName } from '../../../sim/index.ts';
import { allPlants } from '../../state/own-plants-store.ts';
import { changeBottling, USUAL_LABEL } from '../../state/bottling-store.ts';
import { LabelSheet, printLabels } from '../labels/LabelSheet.tsx';
import { LABEL_SIZES, labelFor, type LabelSize, type LabelText } from '../labels/label-sizes.ts';
import { gatheredOf, gatheredWords } from '../plants/gathered.ts';
import { sentenceCase } from '../plants/plant-rows.ts';
import { ChoiceRow, TextRow } from '../parts/fields.tsx';
import type { BottlingPartProps } from './bottling-plan.ts';

export function Labels(props: BottlingPartProps) {
  const reader = () => props.context.reader();
  const sizeWords = ({ width_m, height_m }: LabelSize): string =>
    [width_m, height_m].map((side) => formatQuantity(side, 'm', props.plan.units(), { hint: 'bore' })).join(' × ');
  const plant = createMemo(() => allPlants().find(({ id }) => id === props.oil.botanical));
  /** A run tells by its still; it may have come as a link. */
  const gathered = () =>
    (props.oil.run === null ? '' : gatheredOf(props.context.result().scenario)) || gatheredWords(props.oil.botanical);
  const labelOf = (oil_m3: number): LabelText => {
    const name = sentenceCase((plant()?.name.value ?? ownPlantName(props.oil.botanical)) || 'your own plant');
    const origin = [props.now.origin.trim(), gathered()];
    return {
      name: `Essential oil of ${name.toLowerCase()}`,
      under: [plant()?.latinName.value ?? '', libraryText(plant()?.part.value ?? '', reader())]
        .filter((each) => each !== '')
        .join(', '),
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
      <div class="form-rows">
        <TextRow label="Distilled on" type="date" value={props.now.date} onType={(date) => changeBottling({ date })} />
        <TextRow label="Batch" longest={20} value={props.now.batch} onType={(batch) => changeBottling({ batch })} />
        <TextRow
          label="Grown at"
          longest={60}
          value={props.now.origin}
          onType={(origin) => changeBottling({ origin })}
        />
        <TextRow
          label="Own text"
          longest={120}
          value={props.now.ownText}
          onType={(ownText) => changeBottling({ ownText })}
        />
        <ChoiceRow
          label="Size of a label"
          value={props.now.labelSize}
          options={[
            { value: USUAL_LABEL, words: 'the usual for the bottle' },
            ...LABEL_SIZES.map((size) => ({ value: size.id, words: sizeWords(size) })),
          ]}
          onChoose={(labelSize) => changeBottling({ labelSize })}
        />
      </div>
      <div class="answer-tools">
        <button type="button" class="is-first" onClick={printLabels}>
          Print {props.plan.bottles()} {props.plan.bottles() === 1 ? 'label' : 'labels'}
        </button>
        <span class="answer-quiet">
          On plain paper: cut out and glue on. What you sell needs more: check your local rules.
        </span>
      </div>
      <LabelSheet
        of={labels()}
        size={LABEL_SIZES.find(({ id }) => id === props.now.labelSize) ?? labelFor(props.now.bottle_m3)}
      />
    </section>
  );
}
