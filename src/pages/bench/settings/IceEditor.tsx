/** Ice put on the tub, lot by lot. */
import { Index, Show } from 'solid-js';
import { QuantityField } from '../../../ui/QuantityField.tsx';
import { formatQuantity, ICE_LOT_KG, LATEST_CHANGE_S, MOST_ICE_LOTS, type UnitSystem } from '../../../../sim/index.ts';
import { withAnotherLot, withLot, withoutLot, type IceLots } from './ice-lots.ts';

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
                min={ICE_LOT_KG.min}
                max={ICE_LOT_KG.max}
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
                max={LATEST_CHANGE_S}
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
          disabled={props.lots.length >= MOST_ICE_LOTS}
          onClick={() => props.onChange(withAnotherLot(props.lots))}
        >
          add ice
        </button>
      </div>
    </div>
  );
}
