/** The buttons of a part that open its libraries, and the sheets behind them. */
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import type { ScenarioPart } from '../../../../sim/index.ts';
import { valueAtPath } from '../../../state/field-path.ts';
import { openGathered } from '../../../state/gathered-store.ts';
import { openOwnPlants } from '../../../state/own-plants-store.ts';
import { withFuelPrice } from '../settings/goes-along.ts';
import type { SettingsContext } from '../settings/settings-context.ts';
import { LibraryPicker } from './LibraryPicker.tsx';
import { madeToFit, type Values } from './make-it-fit.ts';
import { browserTextStore, createOwnEntries, type PickerId } from './own-entries.ts';
import { PART_PICKERS, type PartPicker } from './part-picker-list.ts';
import { isInUse } from './picker-row.ts';

export interface PartPickersProps {
  readonly part: ScenarioPart;
  readonly context: SettingsContext;
}

export function PartPickers(props: PartPickersProps) {
  const [open, setOpen] = createSignal<PickerId | null>(null);
  const [told, setTold] = createSignal<{ readonly part: ScenarioPart; readonly words: string } | null>(null);
  const pickers = createMemo(() =>
    PART_PICKERS.filter((picker) => picker.part === props.part && picker.isUseful(props.context.scenario)),
  );
  onMount(() => {
    void openOwnPlants();
    void openGathered();
  });
  const pick = (picker: PartPicker, values: Values): string | null => {
    const { scenario, units } = props.context;
    const ready = picker.prepare?.(values, scenario) ?? values;
    if (typeof ready === 'string') return ready;
    const priced = withFuelPrice(ready, scenario);
    const fitted = madeToFit(scenario, priced.values, units);
    const refused = props.context.editMany(fitted.values);
    const also = fitted.notes.length === 0 ? '' : `To make it fit, this also set ${fitted.notes.join(' and ')}.`;
    const words = [priced.says, also].filter((sentence) => sentence !== '').join(' ');
    if (refused === null) setTold(words === '' ? null : { part: props.part, words });
    return refused;
  };
  return (
    <Show when={pickers().length > 0}>
      <div class="pickers">
        <For each={pickers()}>
          {(picker) => (
            <>
              <button type="button" onClick={() => setOpen(picker.id)}>
                Choose a {picker.what}
              </button>
              <Show when={open() === picker.id}>
                <OpenPicker
                  picker={picker}
                  context={props.context}
                  onPick={(values) => pick(picker, values)}
                  onClose={() => setOpen(null)}
                />
              </Show>
            </>
          )}
        </For>
        <For each={pickers()}>
          {(picker) => (
            <Show when={picker.cautions}>
              {(cautions) => (
                <Dynamic component={cautions()} scenario={props.context.scenario} units={props.context.units} />
              )}
            </Show>
          )}
        </For>
        <Show when={told()?.part === props.part && told()}>
          {(note) => (
            <p class="field-note" role="status">
              {note().words}
            </p>
          )}
        </Show>
      </div>
    </Show>
  );
}

interface OpenPickerProps {
  readonly picker: PartPicker;
  readonly context: SettingsContext;
  readonly onPick: (values: Values) => string | null;
  readonly onClose: () => void;
}

function OpenPicker(props: OpenPickerProps) {
  const entries = createOwnEntries(browserTextStore());
  const rows = createMemo(() => props.picker.rows(props.context.units));
  const [changes, setChanges] = createSignal(0);
  const own = createMemo(() => (changes(), entries.list(props.picker.id)));
  const refresh = () => setChanges(changes() + 1);
  const present = (path: string) => valueAtPath(props.context.scenario, path);
  const keep = (name: string): boolean => {
    const paths = Object.keys(rows()[0]?.values ?? {});
    const kept = entries.keep(props.picker.id, name, Object.fromEntries(paths.map((path) => [path, present(path)])));
    refresh();
    return kept;
  };
  return (
    <LibraryPicker
      open
      what={props.picker.what}
      columns={props.picker.columns}
      groups={props.picker.groups}
      rows={rows()}
      about={props.picker.about}
      units={props.context.units}
      own={own()}
      isInUse={(values) => isInUse(values, props.picker.knownBy, present)}
      onPick={props.onPick}
      onKeep={keep}
      onRemove={(id) => {
        entries.remove(props.picker.id, id);
        refresh();
      }}
      onClose={props.onClose}
    />
  );
}
