/**
 * The whole still in section, fire to receiver, at the proportions of the scenario and the moment of the time mark. Each
 * part is a button; together they are the way to everything about it.
 */
import { makeResizeObserver } from '@solid-primitives/resize-observer';
import {
  batch,
  createMemo,
  createSignal,
  For,
  lazy,
  onCleanup,
  onMount,
  Show,
  Suspense,
  type Accessor,
} from 'solid-js';
import type { RunResult, Scenario, ScenarioPart, UnitSystem } from '../../sim/index.ts';
import { cautionAt, type Caution } from './cautions.ts';
import type { HazardId, LabelId } from './geometry/labels.ts';
import { placedStill, type LayoutOptions, type PlacedLayout } from './geometry/still-layout.ts';
import { drawMarks, drawPlume } from './marks/draw-marks.ts';
import { MarksCanvas } from './marks/MarksCanvas.tsx';
import { EndParts } from './parts/EndParts.tsx';
import { Hazard } from './parts/Hazard.tsx';
import { Patterns } from './parts/Patterns.tsx';
import { PotParts } from './parts/PotParts.tsx';
import { Floor, ScaleBar, Stands, WaterKey } from './parts/Surroundings.tsx';
import { partSentence } from './part-facts.ts';
import { createDeferred, createVisibility } from '../ui/visibility.ts';
import { createThrottled } from '../ui/throttled.ts';
import { stillStateAt } from './still-state.ts';
import './drawing.css';
import './drawing-tubes.css';
import './drawing-words.css';

export interface StillDrawingProps {
  readonly scenario: Scenario;
  readonly result: RunResult | undefined;
  readonly time_s: Accessor<number>;
  readonly selected: ScenarioPart | null;
  /** The part that is being changed from elsewhere: its general cautions show too. */
  readonly touched?: ScenarioPart | null;
  readonly onSelect: (part: ScenarioPart) => void;
  readonly units: UnitSystem;
  readonly reducedMotion: boolean;
  /** The run shown is older than the scenario. */
  readonly stale: boolean;
  /** Whether the drawing fills the height it is given, instead of growing to what it needs. */
  readonly fills?: boolean;
  /** Lays the still out with those beside it; else it is laid out alone. */
  readonly placed?: ((options: LayoutOptions) => PlacedLayout | undefined) | undefined;
}

const FIRST_WIDTH = 1280;
const TEXT_SIZE = 15;
const WORDS_EVERY_MS = 120;
const LIST_EVERY_MS = 1000;
const PARTS: readonly LabelId[] = [
  'heat',
  'boiler',
  'pot',
  'charge',
  'neck',
  'condenser',
  'cooling',
  'separator',
  'receiver',
];
/** Few need it: fetched when it is asked for. */
const CautionDialog = lazy(async () => ({ default: (await import('./CautionDialog.tsx')).CautionDialog }));
const HAZARDS: readonly HazardId[] = ['lid', 'flame', 'tub', 'outlet'];

export function StillDrawing(props: StillDrawingProps) {
  let root!: HTMLDivElement;
  const [width, setWidth] = createSignal(FIRST_WIDTH);
  const [height, setHeight] = createSignal<number>();
  const [textScale, setTextScale] = createSignal(1);
  const placed = createMemo(() => {
    const options = { width: width(), height: height(), textScale: textScale() };
    return props.placed?.(options) ?? placedStill(props.scenario, options);
  });
  const layout = () => placed().layout;
  const { near, watch } = createVisibility();
  const shown_s = createDeferred(() => props.time_s(), near);
  const state = createMemo(() => (props.result ? stillStateAt(props.result, shown_s()) : null));
  const said = createThrottled(() => state(), WORDS_EVERY_MS);
  const heard_s = createThrottled(() => props.time_s(), LIST_EVERY_MS);
  const heard = createMemo(() => (props.result ? stillStateAt(props.result, heard_s()) : null));
  const listed = createMemo(() => PARTS.filter((id) => id !== 'boiler' || layout().shapes.boiler));
  const shared = {
    layout,
    state,
    said,
    scenario: () => props.scenario,
    selected: () => props.selected,
    units: () => props.units,
    onSelect: (part: ScenarioPart) => props.onSelect(part),
  };

  onMount(() => {
    /** All that was measured at once: a layout takes time. */
    const measure = () =>
      batch(() => {
        setWidth(Math.round(root.clientWidth));
        if (props.fills) setHeight(Math.round(root.clientHeight));
        setTextScale(Math.round((parseFloat(getComputedStyle(root).fontSize) / TEXT_SIZE) * 100) / 100 || 1);
      });
    measure();
    makeResizeObserver(measure).observe(root);
    const themes = new MutationObserver(measure);
    themes.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
    onCleanup(() => themes.disconnect());
  });

  const caution = (hazard: HazardId): Caution | null =>
    cautionAt(hazard, props.scenario, said(), props.selected ?? props.touched ?? null, props.units);
  const told = createMemo(() => HAZARDS.map((hazard) => caution(hazard)?.words).filter((words) => words !== undefined));
  const [reading, setReading] = createSignal<'never' | 'open' | 'closed'>('never');
  return (
    <div
      class="drawing"
      classList={{ 'is-stale': props.stale, 'fills-its-place': props.fills === true }}
      ref={(element) => {
        root = element;
        watch(element);
      }}
    >
      <div
        class="drawing-sheet"
        style={{
          height: `${layout().height}px`,
          'margin-top': `${placed().above}px`,
          'margin-bottom': `${placed().below}px`,
        }}
      >
        <MarksCanvas marks={drawPlume} layout={layout()} state={state()} reducedMotion={props.reducedMotion} />
        <svg
          class="drawing-svg"
          role="group"
          aria-label="The still in section, drawn to scale"
          viewBox={`0 0 ${layout().width} ${layout().height}`}
          width={layout().width}
          height={layout().height}
        >
          <Patterns />
          <Floor ground={layout().ground} />
          <Stands stands={layout().shapes.potStands} />
          <Stands stands={layout().shapes.endStands} />
          <PotParts {...shared} />
          <EndParts {...shared} />
          <ScaleBar
            x={layout().scaleBar.x}
            y={layout().scaleBar.y}
            pxPerMetre={layout().pxPerMetre}
            units={props.units}
            textScale={layout().textScale}
            isInline={layout().scaleBar.isInline}
          />
          <Show when={layout().waterKey}>{(at) => <WaterKey at={at()} units={props.units} />}</Show>
          <For each={layout().cautions}>
            {(place) => (
              <Hazard
                place={place}
                caution={caution(place.id)}
                textScale={layout().textScale}
                onRead={() => setReading('open')}
              />
            )}
          </For>
        </svg>
        <MarksCanvas marks={drawMarks} layout={layout()} state={state()} reducedMotion={props.reducedMotion} />
      </div>
      <Show when={reading() !== 'never'}>
        <Suspense>
          <CautionDialog cautions={told()} open={reading() === 'open'} onClose={() => setReading('closed')} />
        </Suspense>
      </Show>
      <ul class="visually-hidden" aria-label="State of each part">
        <For each={listed()}>{(id) => <li>{partSentence(id, props.scenario, heard(), props.units)}</li>}</For>
        <For each={told()}>{(words) => <li>{words}</li>}</For>
      </ul>
    </div>
  );
}
