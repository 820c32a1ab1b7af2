/** Every field of a scenario, part by part: what it is, what is allowed, where the default comes from. */
import { createMemo, createSignal, For, Show } from 'solid-js';
import { scenarioFields, type FieldInfo, type ScenarioPart, type UnitSystem } from '../../../../sim/index.ts';
import { valueAtPath } from '../../../state/field-path.ts';
import { Tabs } from '../../../ui/Tabs.tsx';
import { Toggle } from '../../../ui/Toggle.tsx';
import { PartPickers } from '../pickers/PartPickers.tsx';
import { FieldRow } from './FieldRow.tsx';
import { isSame } from './field-values.ts';
import { PARTS } from './part-words.ts';
import { isRelevant, isRelevantPart } from './relevance.ts';
import { sectionsOf, type Section } from './sections.ts';
import { createSettingsContext, type SettingsContextProps, type SettingsContext } from './settings-context.ts';
import './settings.css';

/** What may be typed, beside the unit that a field shows. */
const TYPED: Readonly<Record<UnitSystem, string>> = {
  metric: '12 mm, 2.5 L, 65 °C, 1 h 30, 2 * 1.5 kg',
  us: '3/8 in, 2.5 gal, 65 F, 1 h 30, 2 * 1.5 lb',
};

export interface SettingsPanelProps extends SettingsContextProps {
  readonly part: ScenarioPart;
  readonly onPart: (part: ScenarioPart) => void;
}

export function SettingsPanel(props: SettingsPanelProps) {
  const context = createSettingsContext(props);
  const [showsAll, setShowsAll] = createSignal(false);
  // The list depends on the part alone, so that a change of the scenario never rebuilds a row that is typed in.
  const sections = createMemo(() => sectionsOf(props.part));
  const isShown = (field: FieldInfo) => showsAll() || isRelevant(field.path, props.scenario);
  const hidden = createMemo(
    () =>
      sections()
        .flatMap(({ fields }) => fields)
        .filter((field) => !isRelevant(field.path, props.scenario)).length,
  );
  const isChanged = (part: ScenarioPart) =>
    scenarioFields.some(
      (field) =>
        (field.part ?? 'run') === part &&
        !isSame(valueAtPath(context.scenario, field.path), valueAtPath(context.loaded, field.path)),
    );
  const tabs = createMemo(() =>
    PARTS.filter(({ part }) => showsAll() || part === props.part || isRelevantPart(part, props.scenario)).map(
      ({ part, short }) => {
        const changed = isChanged(part);
        return { id: part, words: short, marked: changed, heard: changed ? ', changed' : '' };
      },
    ),
  );
  const says = () => PARTS.find(({ part }) => part === props.part)?.says;
  return (
    <section class="settings" aria-label="Settings">
      <Tabs label="Parts" tabs={tabs()} chosen={props.part} onChoose={(id) => props.onPart(id as ScenarioPart)}>
        <p class="settings-says">{says()}</p>
        <PartPickers part={props.part} context={context} />
        <For each={sections()}>
          {(section) => <SettingsSection section={section} context={context} isShown={isShown} />}
        </For>
        <div class="settings-foot">
          <p class="settings-how">
            Numbers take any unit, sums and products: {TYPED[context.units]}. Arrow keys nudge, Escape gives back.
          </p>
          <Toggle on={showsAll()} onChange={setShowsAll}>
            Show all fields
            <Show when={hidden() > 0 && !showsAll()}>
              , also {hidden() === 1 ? 'the one that doesn’t' : `the ${hidden()} that don’t`} matter here
            </Show>
          </Toggle>
        </div>
      </Tabs>
    </section>
  );
}

interface SettingsSectionProps {
  readonly section: Section;
  readonly context: SettingsContext;
  readonly isShown: (field: FieldInfo) => boolean;
}

function SettingsSection(props: SettingsSectionProps) {
  const fields = createMemo(() => props.section.fields.filter((field) => props.isShown(field)));
  const rows = () => (
    <div class="settings-rows">
      <For each={fields()}>{(field) => <FieldRow field={field} context={props.context} />}</For>
    </div>
  );
  return (
    <Show when={fields().length > 0}>
      <Show
        when={props.section.folded}
        fallback={
          <div class="settings-section">
            <Show when={props.section.title !== ''}>
              <h3>{props.section.title}</h3>
            </Show>
            {rows()}
          </div>
        }
      >
        <details class="settings-section">
          <summary>
            <h3>{props.section.title}</h3>
          </summary>
          {rows()}
        </details>
      </Show>
    </Show>
  );
}
