/** Ice put on the tub, lot by lot. */
import { Index, Show } from 'solid-js';
import { QuantityField } from '../../../ui/QuantityField.tsx';
import { formatQuantity, type UnitSystem } from '../../../../sim/index.ts';
import { ICE_LIMITS, LATEST_S, MOST_LOTS, withAnotherLot, withLot, withoutLot, type IceLots } from './ice-lots.ts';

export interface IceEditorProps {
  readonly lots: IceLots;
  readonly units: UnitSystem;
  readonly onChange: (lots: IceLots) => void;
}

export function IceEditor(props: IceEditorProps) {
  const sum = () => props.lots.reduce((total, { mass_kg }) => total + mass_kg, 0);
  return (
    <div class="list-editor">
      <ul class="list-rows">
        <Index each={props.lots}>
          {(lot, index) => (
            <li class="list-row">
              <QuantityField
                label={`Lot ${index + 1}, weight`}
                labelHidden
                value={lot().mass_kg}
                unit="kg"
                system={props.units}
                min={ICE_LIMITS.least_kg}
                max={ICE_LIMITS.most_kg}
                onCommit={(mass_kg) => props.onChange(withLot(props.lots, index, { mass_kg }))}
              />
              <span aria-hidden="true">at</span>
              <QuantityField
                label={`Lot ${index + 1}, time`}
                labelHidden
                value={lot().at_s}
                unit="s"
                system={props.units}
                min={0}
                max={LATEST_S}
                onCommit={(at_s) => props.onChange(withLot(props.lots, index, { at_s }))}
              />
              <button type="button" class="word" onClick={() => props.onChange(withoutLot(props.lots, index))}>
                remove<span class="visually-hidden"> lot {index + 1}</span>
              </button>
            </li>
          )}
        </Index>
      </ul>
      <div class="list-foot">
        <span class="list-sum" role="status">
          <Show when={props.lots.length > 0} fallback="No ice.">
            Together {formatQuantity(sum(), 'kg', props.units)}
          </Show>
        </span>
        <button
          type="button"
          class="word"
          disabled={props.lots.length >= MOST_LOTS}
          onClick={() => props.onChange(withAnotherLot(props.lots))}
        >
          add ice
        </button>
      </div>
    </div>
  );
}
