/** A plant of the reader's own: the fields of a library's plant, begun as one that it is like. */
import { createSignal, createUniqueId, For, Index, Show } from 'solid-js';
import {
  botanicals,
  constituents,
  formatQuantity,
  LONGEST_PLANT_NAME,
  OWN_LIMITS,
  ownPlantLike,
  ownPlantMessages,
  PLANT_KINDS,
  type OwnPlant,
  type OwnPlantProblem,
  type OwnPlantState,
} from '../../../sim/index.ts';
import { keepOwnPlant } from '../../state/own-plants-store.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { Toggle } from '../../ui/Toggle.tsx';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { AmountRow, ChoiceRow, TextRow } from '../parts/fields.tsx';
import { LookAlikes } from './LookAlikes.tsx';
import { NeverDistil } from './NeverDistil.tsx';
import { sentenceCase, SEVERITY_WORDS } from './plant-rows.ts';
import type { PlantTexts } from './plant-texts.ts';

export interface OwnPlantFormProps {
  /** The plant that is edited; `null` for a new one. */
  readonly edited: OwnPlant | null;
  readonly context: AnalysisContext;
  readonly texts: PlantTexts;
  /** The name under which it is kept; `null` where nothing is. */
  readonly onDone: (name: string | null) => void;
}

const USUAL_LIKE = 'lavender-true';
const MOST_LOOK_ALIKES = 12;
const MOST_CONSTITUENTS = 12;

const CUTTING = ['part', 'stage', 'season', 'hour', 'wilting', 'cutting'] as const;
const CARE = ['hydrosol', 'quality', 'whoAvoids', 'otherWay'] as const;
type TextKey = (typeof CUTTING)[number] | (typeof CARE)[number];
const TEXT_WORDS: Readonly<Record<TextKey, string>> = {
  part: 'What to cut',
  stage: 'When in its growth',
  season: 'Season',
  hour: 'Hour',
  wilting: 'Wilting',
  cutting: 'Before charging',
  hydrosol: 'Its hydrosol',
  quality: 'What makes a good oil',
  whoAvoids: 'Who should avoid it',
  otherWay: 'Other ways than steam',
};

const STATES = ['fresh', 'dry'] as const;
const RANGES = [
  { key: 'homeRun_s', title: 'Run at home', unit: 's', hint: 'duration', limits: OWN_LIMITS.homeRun_s },
  {
    key: 'harvest_kg_m2',
    title: 'Harvest of a year',
    unit: 'kg/m²',
    hint: 'harvest',
    limits: OWN_LIMITS.harvest_kg_m2,
  },
  {
    key: 'plants_per_m2',
    title: 'Plants on an area',
    unit: '1/m²',
    hint: 'plantsPerArea',
    limits: OWN_LIMITS.plants_per_m2,
  },
] as const;
const ENDS = ['least', 'most'] as const;
const YIELDS = [
  ['low', 'least'],
  ['typical', 'usually'],
  ['high', 'most'],
] as const;

const constituentOptions = [...constituents]
  .sort((a, b) => a.name.localeCompare(b.name))
  .map(({ id, name }) => ({ value: id, words: name }));

/** Every deadly plant that is taken for one of the library, once. */
const deadlyOnes = ({ lookAlikes }: PlantTexts) => {
  const all = Object.values(lookAlikes)
    .flat()
    .filter(({ severity }) => severity === 'deadly');
  return [...new Map(all.map((each) => [each.plant, each])).values()];
};

/** One range of which either end may stand for both. */
function Range(props: {
  readonly of: (typeof RANGES)[number];
  readonly draft: OwnPlant;
  readonly change: (changed: Partial<OwnPlant>) => void;
  readonly units: 'metric' | 'us';
}) {
  const set = (end: 0 | 1, value: number | null) => {
    const now = props.draft[props.of.key];
    const other = now?.[1 - end] ?? value;
    const after = value === null || other === null ? null : end === 0 ? [value, other] : [other, value];
    props.change({ [props.of.key]: after });
  };
  return (
    <For each={ENDS}>
      {(words, end) => (
        <QuantityField
          label={`${props.of.title}, ${words}`}
          value={props.draft[props.of.key]?.[end() as 0 | 1] ?? null}
          unit={props.of.unit}
          hint={props.of.hint}
          min={props.of.limits[0]}
          max={props.of.limits[1]}
          system={props.units}
          onClear={() => set(end() as 0 | 1, null)}
          onCommit={(value) => void set(end() as 0 | 1, value)}
        />
      )}
    </For>
  );
}

export function OwnPlantForm(props: OwnPlantFormProps) {
  const id = createUniqueId();
  // eslint-disable-next-line solid/reactivity -- where the form starts from; afterwards the reader edits it
  const [draft, setDraft] = createSignal<OwnPlant>(props.edited ?? ownPlantLike(USUAL_LIKE));
  const [compared, setCompared] = createSignal(false);
  const [problems, setProblems] = createSignal<readonly OwnPlantProblem[]>([]);
  const units = () => props.context.units();
  const messages = () => ownPlantMessages(props.context.reader());
  const change = (changed: Partial<OwnPlant>) => setDraft((before) => ({ ...before, ...changed }));
  const changeState = (state: (typeof STATES)[number], changed: Partial<OwnPlantState>) => {
    const of = draft().states[state];
    if (of) change({ states: { ...draft().states, [state]: { ...of, ...changed } } });
  };
  const toggleState = (state: (typeof STATES)[number], on: boolean) => {
    const usual = ownPlantLike(draft().like).states;
    change({ states: { ...draft().states, [state]: on ? (usual[state] ?? usual.fresh ?? usual.dry) : undefined } });
  };
  /** A new plant takes over the figures of the plant that it is like; what was typed of an old one stays. */
  const choose = (like: string) => {
    const { states, composition, kind } = ownPlantLike(like);
    change(props.edited === null ? { like, states, composition, kind } : { like });
  };
  const sum = () => draft().composition.reduce((whole, { share }) => whole + share, 0);
  const changePart = (at: number, changed: Partial<OwnPlant['composition'][number]>) =>
    change({ composition: draft().composition.map((part, k) => (k === at ? { ...part, ...changed } : part)) });
  const changeAlike = (at: number, changed: Partial<OwnPlant['lookAlikes'][number]>) =>
    change({ lookAlikes: draft().lookAlikes.map((each, k) => (k === at ? { ...each, ...changed } : each)) });
  const addPart = () => {
    const used = new Set(draft().composition.map(({ constituent }) => constituent));
    const free = constituentOptions.find(({ value }) => !used.has(value));
    if (free) change({ composition: [...draft().composition, { constituent: free.value, share: 0 }] });
  };
  const save = (event: SubmitEvent) => {
    event.preventDefault();
    if (!compared()) return;
    const named = { ...draft(), lookAlikes: draft().lookAlikes.filter(({ plant }) => plant.trim() !== '') };
    const found = keepOwnPlant(named, props.edited?.name ?? null);
    setProblems(found);
    if (found.length === 0) props.onDone(named.name.trim());
  };
  const texts = (keys: readonly TextKey[]) => (
    <For each={keys}>
      {(key) => (
        <TextRow
          label={TEXT_WORDS[key]}
          value={draft()[key]}
          onType={(text) => change({ [key]: text })}
          class="is-long"
        />
      )}
    </For>
  );

  return (
    <form class="own-plant" aria-labelledby={`${id}-title`} onSubmit={save}>
      <header>
        <h2 id={`${id}-title`}>{props.edited ? `Edit ${props.edited.name}` : 'A plant of your own'}</h2>
        <p class="answer-lead is-small">
          The model knows only what you type here. It takes the rest from a plant that yours is like: how it gives up
          its oil, its pieces and its heat.
        </p>
      </header>
      <NeverDistil texts={props.texts} />
      <section aria-labelledby={`${id}-name`}>
        <h3 id={`${id}-name`}>Which plant</h3>
        <div class="form-rows">
          <TextRow label="Name" longest={LONGEST_PLANT_NAME} value={draft().name} onType={(name) => change({ name })} />
          <TextRow label="Latin name" value={draft().latinName} onType={(latinName) => change({ latinName })} />
          <ChoiceRow
            label="What goes into the still"
            value={draft().kind}
            options={PLANT_KINDS.map((kind) => ({ value: kind, words: kind }))}
            onChoose={(kind) => change({ kind })}
          />
          <ChoiceRow
            label="Gives up its oil like"
            value={draft().like}
            options={botanicals.map((plant) => ({ value: plant.id, words: sentenceCase(plant.name.value) }))}
            onChoose={choose}
          />
          <TextRow
            label="Where the figures come from"
            value={draft().source}
            onType={(source) => change({ source })}
            class="is-long"
          />
        </div>
      </section>
      <section aria-labelledby={`${id}-alike`}>
        <h3 id={`${id}-alike`}>What it may be mistaken for</h3>
        <Toggle on={draft().wild} onChange={(wild) => change({ wild })}>
          Gathered wild
        </Toggle>
        <Show when={draft().wild}>
          <p class="answer-problem">
            Plants from the wild are mistaken for deadly ones every year. Compare yours with each of these, write below
            how you tell it apart, and have it identified by a person who knows it for certain.
          </p>
          <LookAlikes
            of={deadlyOnes(props.texts)}
            name={draft().name.trim() || 'your plant'}
            reader={props.context.reader()}
          />
          <div class="form-rows">
            <TextRow
              label="Who identified it"
              value={draft().identifiedBy}
              onType={(identifiedBy) => change({ identifiedBy })}
              class="is-long"
            />
          </div>
        </Show>
        <Index each={draft().lookAlikes}>
          {(each, at) => (
            <div class="form-rows">
              <ChoiceRow
                label={`Look-alike ${at + 1} is`}
                value={each().severity}
                options={(['deadly', 'harmful', 'quality'] as const).map((value) => ({
                  value,
                  words: SEVERITY_WORDS[value].toLowerCase(),
                }))}
                onChoose={(severity) => changeAlike(at, { severity })}
              />
              <TextRow
                label="Plant"
                longest={100}
                value={each().plant}
                onType={(plant) => changeAlike(at, { plant })}
              />
              <TextRow
                label="How to tell it apart"
                value={each().tellApart}
                onType={(tellApart) => changeAlike(at, { tellApart })}
                class="is-long"
              />
              <button
                type="button"
                class="word"
                onClick={() => change({ lookAlikes: draft().lookAlikes.filter((_, k) => k !== at) })}
              >
                Remove<span class="visually-hidden"> look-alike {at + 1}</span>
              </button>
            </div>
          )}
        </Index>
        <button
          type="button"
          aria-disabled={draft().lookAlikes.length >= MOST_LOOK_ALIKES}
          onClick={() =>
            draft().lookAlikes.length < MOST_LOOK_ALIKES &&
            change({ lookAlikes: [...draft().lookAlikes, { plant: '', tellApart: '', severity: 'deadly' }] })
          }
        >
          Add a look-alike
        </button>
      </section>
      <section aria-labelledby={`${id}-figures`}>
        <h3 id={`${id}-figures`}>What it gives</h3>
        <For each={STATES}>
          {(state) => (
            <>
              <Toggle on={draft().states[state] !== undefined} onChange={(on) => toggleState(state, on)}>
                {state === 'fresh' ? 'Charged fresh' : 'Charged dried'}
              </Toggle>
              <Show when={draft().states[state] !== undefined}>
                <StateFields
                  state={state}
                  of={draft().states[state] as OwnPlantState}
                  units={units()}
                  change={(changed) => changeState(state, changed)}
                />
              </Show>
            </>
          )}
        </For>
        <div class="form-rows">
          <For each={RANGES}>{(of) => <Range of={of} draft={draft()} change={change} units={units()} />}</For>
        </div>
      </section>
      <section aria-labelledby={`${id}-oil`}>
        <h3 id={`${id}-oil`}>What its oil is made of</h3>
        <p class="answer-quiet">
          By weight. It adds up to {formatQuantity(sum(), '1', units(), { hint: 'share' })}. For a constituent that is
          not listed take the one that boils closest.
        </p>
        <Index each={draft().composition}>
          {(part, at) => (
            <div class="form-rows">
              <ChoiceRow
                label={`Constituent ${at + 1}`}
                value={part().constituent}
                options={constituentOptions}
                onChoose={(constituent) => changePart(at, { constituent })}
              />
              <QuantityField
                label={`Share of constituent ${at + 1}`}
                value={part().share}
                unit="1"
                hint="share"
                min={0}
                max={1}
                system={units()}
                onCommit={(share) => void changePart(at, { share })}
              />
              <Show when={draft().composition.length > 1}>
                <button
                  type="button"
                  class="word"
                  onClick={() => change({ composition: draft().composition.filter((_, k) => k !== at) })}
                >
                  Remove<span class="visually-hidden"> constituent {at + 1}</span>
                </button>
              </Show>
            </div>
          )}
        </Index>
        <button
          type="button"
          aria-disabled={draft().composition.length >= MOST_CONSTITUENTS}
          onClick={() => draft().composition.length < MOST_CONSTITUENTS && addPart()}
        >
          Add a constituent
        </button>
      </section>
      <section aria-labelledby={`${id}-cut`}>
        <h3 id={`${id}-cut`}>Cutting and care</h3>
        <div class="form-rows">
          {texts(CUTTING)}
          {texts(CARE)}
        </div>
      </section>
      <div class="own-plant-save">
        <Toggle on={compared()} onChange={setCompared}>
          I know this plant for certain. It is none of those that must never be distilled.
        </Toggle>
        <Show when={problems().length > 0}>
          <ul class="answer-problem" role="alert">
            <For each={problems()}>{(problem) => <li>{messages().problem(problem)}</li>}</For>
          </ul>
        </Show>
        <div class="answer-tools">
          <button type="submit" class="is-first" aria-disabled={!compared()}>
            Keep this plant
          </button>
          <button type="button" onClick={() => props.onDone(null)}>
            Cancel
          </button>
        </div>
      </div>
    </form>
  );
}

function StateFields(props: {
  readonly state: 'fresh' | 'dry';
  readonly of: OwnPlantState;
  readonly units: 'metric' | 'us';
  readonly change: (changed: Partial<OwnPlantState>) => void;
}) {
  const words = () => (props.state === 'fresh' ? 'fresh' : 'dried');
  return (
    <div class="form-rows">
      <AmountRow
        now={props.of}
        change={props.change}
        of="moisture"
        label={`Water in it, ${words()}`}
        hint="share"
        units={props.units}
        min={OWN_LIMITS.moisture[0]}
        max={OWN_LIMITS.moisture[1]}
      />
      <For each={YIELDS}>
        {([of, end]) => (
          <AmountRow
            now={props.of.oil_m3_kg}
            change={(changed) => props.change({ oil_m3_kg: { ...props.of.oil_m3_kg, ...changed } })}
            of={of}
            label={`Oil, ${words()}, ${end}`}
            unit="m³/kg"
            hint="oilYield"
            units={props.units}
            min={OWN_LIMITS.oil_m3_kg[0]}
            max={OWN_LIMITS.oil_m3_kg[1]}
          />
        )}
      </For>
      <AmountRow
        now={props.of}
        change={props.change}
        of="packing_kg_m3"
        label={`Packs to, ${words()}`}
        unit="kg/m³"
        hint="density"
        units={props.units}
        min={OWN_LIMITS.packing_kg_m3[0]}
        max={OWN_LIMITS.packing_kg_m3[1]}
      />
    </div>
  );
}
