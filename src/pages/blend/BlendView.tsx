/** A blend of oils: how it fades, how it is diluted, saved and labelled. */
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import {
  coefficientSheet,
  COEFFICIENT_RANGE_m_s,
  displayUnit,
  formatNumber,
  formatQuantity,
  halfTimeSheet,
  isReal,
  SURFACES,
  USUAL_SURFACES,
  type Fading,
  type SurfaceKind,
  type UnitSystem,
} from '../../../sim/index.ts';
import {
  changeBlend,
  currentBlend,
  newBlend,
  openBlends,
  openRecipe,
  recipes,
  removeRecipe,
  saveRecipe,
  type KeptBlend,
} from '../../state/blend-store.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { createThrottled } from '../../ui/throttled.ts';
import { Toggle } from '../../ui/Toggle.tsx';
import { LabelSheet, printLabels } from '../labels/LabelSheet.tsx';
import { labelFor } from '../labels/label-sizes.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { AmountRow, RadioRow, TextRow } from '../parts/fields.tsx';
import { Source } from '../parts/Source.tsx';
import { SheetButton } from '../working/SheetButton.tsx';
import { BlendOils, libraryOil, oilOfRun } from './BlendOils.tsx';
import { Dilution } from './Dilution.tsx';
import { FadePicture } from './FadePicture.tsx';
import { fadingOf, LATEST_ms, sharesOf, surfaceOf, timeWords } from './fade-picture.ts';
import './blend.css';

const SURFACE_WORDS: Readonly<Record<SurfaceKind, string>> = { paper: 'paper', skin: 'skin', dish: 'dish' };

const firstBlend = (context: AnalysisContext): KeptBlend => {
  const own = oilOfRun(context, 40);
  const others = [libraryOil('orange-peel', 30), libraryOil('clove-bud', 10)];
  return newBlend([own ?? libraryOil('lavender-true', 40), ...others]);
};

export function BlendView(props: { readonly context: AnalysisContext }) {
  const first = (): KeptBlend => firstBlend(props.context);
  onMount(() => {
    void openBlends(first);
  });
  return (
    <article class="answer blend-view" aria-labelledby="blend-title">
      <header class="answer-head">
        <h2 id="blend-title">Which oil is smelled when?</h2>
        <Show when={currentBlend()} fallback={<p class="answer-quiet">Opening your blend…</p>}>
          {(blend) => <BlendBody blend={blend()} context={props.context} />}
        </Show>
      </header>
    </article>
  );
}

function BlendBody(props: { readonly blend: KeptBlend; readonly context: AnalysisContext }) {
  const [otherId, setOtherId] = createSignal('');
  const units = () => props.context.units();
  const fading = createMemo(() => fadingOf(props.blend));
  const other = createMemo(() => {
    const recipe = recipes().find(({ id }) => id === otherId());
    const end = fading()?.fade.times_s.at(-1);
    const of = recipe && end !== undefined ? fadingOf(recipe, end) : null;
    return recipe && of ? { name: recipe.name, fading: of } : null;
  });
  /** What is told of it, as fast as it can be read. */
  const told = createThrottled(() => fading(), LATEST_ms);
  const classes = () => told()?.summary.classes;
  const percent = (share: number) => formatQuantity(share, '1', units(), { hint: 'share' });
  // The picture comes first while a share is dragged; the label follows when the hand rests.
  const rested = createThrottled(() => props.blend, LATEST_ms);
  const label = createMemo(() => {
    const blend = rested();
    const shares = sharesOf(blend);
    return {
      name: blend.name,
      under: blend.oils
        .map(
          ({ name }, i) => `${name} ${formatQuantity(shares[i] ?? 0, '1', units(), { hint: 'share', significant: 2 })}`,
        )
        .join(', '),
      lines: [
        `${formatQuantity(blend.product_m3, 'm³', units(), { hint: 'oilVolume' })}${blend.strength < 1 ? ', in a fixed oil' : ''}`,
      ],
      cautions: [
        'Flammable. Do not swallow. Keep from children, pets, food and flames. Not in the eyes. Not under 12 without a professional.',
      ],
    };
  });
  return (
    <>
      <p class="answer-lead" role="status">
        <Show when={told()} fallback="Drag the share of an oil up to begin.">
          {(of) => (
            <>
              Half of it has left the {SURFACE_WORDS[props.blend.surface]} after {timeWords(of().summary.half_s)}{' '}
              <TimeWorking of={of()} lost="half" blend={props.blend} units={units()} />, nine tenths after{' '}
              {timeWords(of().summary.nineTenths_s)}{' '}
              <TimeWorking of={of()} lost="nineTenths" blend={props.blend} units={units()} />.
            </>
          )}
        </Show>
      </p>
      <div class="blend-columns">
        <div class="blend-left">
          <BlendOils blend={props.blend} context={props.context} />
          <section class="blend-surface" aria-labelledby="blend-surface-title">
            <h3 id="blend-surface-title">The film</h3>
            <RadioRow
              label="Spread on"
              value={props.blend.surface}
              options={SURFACES.map((kind) => ({ value: kind, words: `on ${SURFACE_WORDS[kind]}` }))}
              onChoose={(surface) => changeBlend({ surface, temperature_K: USUAL_SURFACES[surface].temperature_K })}
            />
            <AmountRow
              now={props.blend}
              change={changeBlend}
              of="temperature_K"
              label="Temperature"
              unit="K"
              hint="temperature"
              min={278.15}
              max={313.15}
              units={units()}
            />
            <AmountRow
              now={props.blend}
              change={changeBlend}
              of="coefficient_m_s"
              label="Air at the film"
              unit="m/s"
              hint="speed"
              min={COEFFICIENT_RANGE_m_s[0] / 4}
              max={COEFFICIENT_RANGE_m_s[1] * 4}
              units={units()}
            />
            <p class="answer-quiet">
              Transfer coefficient of limonene, {formatQuantity(COEFFICIENT_RANGE_m_s[0], 'm/s', units())} to{' '}
              {formatQuantity(COEFFICIENT_RANGE_m_s[1], 'm/s', units())} in a calm room. All times go with its inverse:
              they are known to a factor of two.{' '}
              <Source
                of={{ kind: 'estimated', source: 'air of calm rooms over small dishes; weigh a strip to know yours' }}
              />
            </p>
            <Toggle on={props.blend.diluted} onChange={(on) => changeBlend({ diluted: on })}>
              Spread it diluted, with the fixed oil below
            </Toggle>
            <Toggle on={props.blend.real} onChange={(on) => changeBlend({ real: on })}>
              Real mixture: alcohols leave sooner from other oils (estimate, neat blends only)
            </Toggle>
            <Show when={told()}>
              {(of) => (
                <HomeTest blend={props.blend} half={(share) => of().timeToLose(share)} context={props.context} />
              )}
            </Show>
          </section>
        </div>
        <Show when={fading()}>
          {(of) => (
            <div class="blend-right">
              <FadePicture
                fading={of()}
                other={other()}
                oilNames={props.blend.oils.map(({ name }) => name)}
                theme={props.context.theme()}
                units={units()}
                surface={SURFACE_WORDS[props.blend.surface]}
              />
              <p>
                Top notes {percent(classes()?.top ?? 0)}, middle {percent(classes()?.middle ?? 0)}, base{' '}
                {percent(classes()?.base ?? 0)} of what can leave, by weight.{' '}
                <Source
                  of={{
                    kind: 'derived',
                    source:
                      'weights of the constituents; top notes above 35 Pa of vapour pressure at 25 °C, base notes below 3 Pa, bounds of our own',
                  }}
                />
              </p>
            </div>
          )}
        </Show>
      </div>
      <Dilution blend={props.blend} context={props.context} />
      <section class="blend-recipes" aria-labelledby="blend-recipes-title">
        <h3 id="blend-recipes-title">Recipes</h3>
        <div class="answer-tools">
          <TextRow label="Name" longest={80} value={props.blend.name} onType={(name) => changeBlend({ name })} />
          <button type="button" class="is-first" onClick={() => saveRecipe(props.blend.name.trim() || 'Blend')}>
            Save as a recipe
          </button>
          <button type="button" onClick={printLabels}>
            Print the label
          </button>
        </div>
        <Show when={recipes().length > 0} fallback={<p class="answer-quiet">A recipe that you save appears here.</p>}>
          <ul>
            <For each={recipes()}>
              {(recipe) => (
                <li class="kept-recipe">
                  <span>{recipe.name}</span>{' '}
                  <button type="button" onClick={() => openRecipe(recipe)}>
                    Open<span class="visually-hidden"> {recipe.name}</span>
                  </button>{' '}
                  <button
                    type="button"
                    class="word"
                    aria-pressed={otherId() === recipe.id}
                    onClick={() => setOtherId(otherId() === recipe.id ? '' : recipe.id)}
                  >
                    Compare<span class="visually-hidden"> with {recipe.name}</span>
                  </button>{' '}
                  <button type="button" class="word" onClick={() => removeRecipe(recipe.id)}>
                    Delete<span class="visually-hidden"> {recipe.name}</span>
                  </button>
                </li>
              )}
            </For>
          </ul>
        </Show>
        <LabelSheet of={[label()]} size={labelFor(props.blend.product_m3)} />
      </section>
    </>
  );
}

/** How a time of the film came about: exact where Raoult’s law holds, from moment to moment where the mixture is real. */
function TimeWorking(props: {
  readonly of: Fading;
  readonly lost: 'half' | 'nineTenths';
  readonly blend: KeptBlend;
  readonly units: UnitSystem;
}) {
  return (
    <Show
      when={isReal(props.of.film, props.blend.real)}
      fallback={
        <SheetButton
          sheet={() => halfTimeSheet(props.of.film, surfaceOf(props.blend), props.lost)}
          units={props.units}
          of={`the time until ${props.lost === 'half' ? 'half' : 'nine tenths'} has left`}
        />
      }
    >
      <Source
        of={{
          kind: 'computed',
          source:
            'the film from moment to moment, with activity coefficients by van Laar’s equation between alcohols and the rest',
          note: 'ends of the curve from group contribution',
        }}
      />
    </Show>
  );
}

const MINUTE_s = 60;

/** A strip weighed at home: what it really lost sets the coefficient. */
function HomeTest(props: {
  readonly blend: KeptBlend;
  /** Time in which the film loses a share, s. */
  readonly half: (share: number) => number;
  readonly context: AnalysisContext;
}) {
  const [after_s, setAfter] = createSignal(30 * MINUTE_s);
  const [lost, setLost] = createSignal(0.5);
  const fitted = () => (props.blend.coefficient_m_s * props.half(lost())) / after_s();
  const unit = () => displayUnit('m/s', props.context.units(), 'speed', fitted());
  return (
    <details class="home-test">
      <summary>Weigh a strip at home</summary>
      <p>Put a drop on a strip of paper on a fine scale. Note how much of the drop has left after a time.</p>
      <QuantityField
        label="After"
        value={after_s()}
        unit="s"
        hint="duration"
        min={60}
        max={864000}
        system={props.context.units()}
        onCommit={(value) => void setAfter(value)}
      />
      <QuantityField
        label="Lost"
        value={lost()}
        unit="1"
        hint="share"
        min={0.02}
        max={0.98}
        system={props.context.units()}
        onCommit={(value) => void setLost(value)}
      />
      <button type="button" onClick={() => changeBlend({ coefficient_m_s: fitted() })}>
        Use {formatNumber(unit().fromSI(fitted()), 2)}&#8239;{unit().label}
      </button>{' '}
      <SheetButton
        sheet={() => coefficientSheet(props.blend.coefficient_m_s, props.half(lost()), after_s())}
        units={props.context.units()}
        of="the air at the film"
      />
    </details>
  );
}
