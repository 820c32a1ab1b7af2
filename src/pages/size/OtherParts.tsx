/** Separator, tub and heat source, each sized in a sentence with its working. */
import { createMemo, createSignal, Show } from 'solid-js';
import {
  buildingSheetMessages,
  burnerFor,
  burnerSheet,
  englishReader,
  otherPartsMessages,
  ownRate,
  sheetMeasures,
  wholeMessage,
  sizingMessages,
  type LeastTub,
  type LeastWater,
  type RunResult,
} from '../../../sim/index.ts';
import type { Query } from '../../state/query.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import type { UnitSystem } from '../../../sim/index.ts';
import { SheetButton } from '../working/SheetButton.tsx';
import { WorkingButton } from '../working/WorkingButton.tsx';

export interface OtherPartsProps {
  readonly result: RunResult;
  /** The most vapour that the tube is sized for, as on the building sheet; `null` while it is looked for. */
  readonly peakVapour_kg_s: number | null;
  readonly tub: Query<LeastTub | null>;
  readonly water: Query<LeastWater>;
  readonly units: UnitSystem;
}

/** Rates that a field takes, kg/s: those of a still at home. */
const RATES = { min: 1e-5, max: 0.02 } as const;
const [wanted, setWanted] = createSignal<number | null>(null);

export function OtherParts(props: OtherPartsProps) {
  const reader = () => englishReader(props.units);
  const words = () => otherPartsMessages(reader());
  const scenario = () => props.result.scenario;
  /** What is asked for, or what the run itself gives. */
  const rate = () => wanted() ?? Math.max(RATES.min, ownRate(props.result));
  const burner = createMemo(() => burnerFor(props.result, rate()));
  return (
    <section class="size-others" aria-labelledby="others-title">
      <h3 id="others-title">{words().title}</h3>
      <Show when={props.peakVapour_kg_s}>
        {(peak) => (
          <p>
            {buildingSheetMessages(reader()).separatorBore(sheetMeasures(scenario(), peak()))}{' '}
            <WorkingButton
              topic="separator-cut"
              words="how"
              of="the width of the separator"
              scenario={scenario()}
              units={props.units}
            />
          </p>
        )}
      </Show>
      <Show when={props.tub.answer()}>
        {(found) => (
          <p classList={{ 'is-asking': props.tub.asking() }}>
            {words().tub(found(), scenario())}{' '}
            <Show when={props.water.answer()}>
              {(water) => <>{wholeMessage(sizingMessages(reader()).leastWater(water(), scenario()))} </>}
            </Show>
            <WorkingButton
              topic="tub-warming"
              words="how"
              of="the warming of the tub"
              scenario={scenario()}
              units={props.units}
            />
          </p>
        )}
      </Show>
      <QuantityField
        label={words().wanted}
        value={rate()}
        unit="kg/s"
        hint="distillateFlow"
        {...RATES}
        system={props.units}
        onCommit={(value) => void setWanted(value)}
      />
      <Show when={burner()} fallback={<p>{words().noBurner}</p>}>
        {(found) => (
          <p>
            {words().burner(found())}{' '}
            <SheetButton sheet={() => burnerSheet(found())} units={props.units} of="the power of the heat" />
          </p>
        )}
      </Show>
    </section>
  );
}
