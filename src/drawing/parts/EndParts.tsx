/** The cold end: cooling water, condenser, separator and jug. */
import { createMemo, Show } from 'solid-js';
import { boxesAlong, pathThrough, subdivide } from '../geometry/shapes.ts';
import { condenserBoxes } from '../geometry/condenser-shape.ts';
import { jugBox } from '../geometry/separator-shape.ts';
import { condensingShare } from '../still-state.ts';
import { Condenser } from './Condenser.tsx';
import { Cooling } from './Cooling.tsx';
import { Escape } from './Escape.tsx';
import {
  LEVEL_STEP,
  createPartButton,
  createQuantised,
  createQuantisedList,
  WARMTH_STEP,
  warmthOf,
  type PartContext,
} from './part-context.ts';
import { PartButton } from './PartButton.tsx';
import { Jug, Separator } from './Separator.tsx';

export function EndParts(props: PartContext) {
  const shapes = () => props.layout().shapes;
  const sizes = () => props.layout().sizes;
  const state = () => props.state();
  const coolingWords = createPartButton(props, 'cooling');
  const condenserWords = createPartButton(props, 'condenser');
  const separatorWords = createPartButton(props, 'separator');
  const receiverWords = createPartButton(props, 'receiver');
  const flows = createMemo(() => (state() ? (state()?.coolantFlow_kg_s ?? 0) > 0 : sizes().flowing));
  const start = () => warmthOf(props.scenario().cooling.startTemperature_K);
  const tubWarmth = createQuantisedList(() => {
    const now = state();
    if (!now) return [start(), start()];
    const layers = now.tubTemperature_K.map(warmthOf);
    if (layers.length === 1) return [layers[0] as number, layers[0] as number];
    return layers.length > 0 ? layers : [warmthOf(now.tubMean_K), warmthOf(now.tubMean_K)];
  }, WARMTH_STEP);
  const jacketWarmth = createQuantisedList(() => {
    const now = state();
    if (!now) return [start(), start()];
    const ends = [warmthOf(now.coolantOut_K), warmthOf(now.coolantIn_K)] as const;
    const { condenser } = sizes();
    return condenser.kind === 'straight' && !condenser.counterflow ? [ends[1], ends[0]] : ends;
  }, WARMTH_STEP);
  const escaping = createMemo(() => state()?.alarms.escaping ?? false);
  const tubHot = createMemo(() => state()?.alarms.tubHot ?? false);
  const sinks = createMemo(() => state()?.oilSinks ?? false);
  const runsLiquid = createMemo(() => (state()?.condensate_kg_s ?? 0) > 0);
  const tubDepth = createQuantised(
    () => state()?.tubDepth_m ?? (sizes().tub?.height_m ?? 0) * props.scenario().cooling.tubFill,
    LEVEL_STEP,
  );
  const mixedDepth = createQuantised(() => (flows() ? (state()?.mixedDepth_m ?? 0) : 0), LEVEL_STEP);
  const ice = createQuantised(() => state()?.ice_kg ?? 0, 0.05);
  const oilLayer = createQuantised(() => state()?.oilLayer_m ?? 0, LEVEL_STEP / 2);
  const hydrosol = createQuantised(() => state()?.hydrosol_kg ?? 0, 0.002);
  const coolingBoxes = createMemo(() => [
    shapes().cooling.tub?.outer ?? shapes().cooling.box,
    ...boxesAlong(subdivide(shapes().cooling.supply, 60), 14),
  ]);
  const condensing = createQuantised(() => {
    const now = state();
    return now ? condensingShare(now, props.scenario().condenser.length_m) : 0;
  }, 0.005);
  const counterflow = () => {
    const { condenser } = sizes();
    return condenser.kind === 'straight' && condenser.counterflow;
  };

  return (
    <>
      {/* Under all parts and their words. */}
      <Show when={escaping() && shapes().condenser.tail.at(-1)}>{(tip) => <Escape at={tip()} />}</Show>
      <PartButton
        id="cooling"
        boxes={coolingBoxes()}
        words={coolingWords.words}
        place={coolingWords.place()}
        textScale={props.layout().textScale}
        selected={coolingWords.selected()}
        onSelect={coolingWords.choose}
      >
        <Cooling
          shape={shapes().cooling}
          depth_m={tubDepth()}
          mixed_m={mixedDepth()}
          warmth={tubWarmth()}
          ice_kg={ice()}
          stirred={sizes().stirred}
          flows={flows()}
          hot={tubHot()}
          floorY={props.layout().ground.y}
        />
      </PartButton>
      <PartButton
        id="condenser"
        boxes={[shapes().condenser.box, ...condenserBoxes(shapes().condenser)]}
        words={condenserWords.words}
        place={condenserWords.place()}
        textScale={props.layout().textScale}
        selected={condenserWords.selected()}
        onSelect={condenserWords.choose}
      >
        <Condenser
          shape={shapes().condenser}
          condensing={condensing()}
          runsLiquid={runsLiquid()}
          escaping={escaping()}
          warmth={jacketWarmth()}
          counterflow={counterflow()}
          flows={flows()}
        />
      </PartButton>
      <Show when={shapes().returnLine.length > 0}>
        <path class="drawing-return" d={pathThrough(shapes().returnLine)} />
      </Show>
      <PartButton
        id="separator"
        boxes={[shapes().separator.box]}
        words={separatorWords.words}
        place={separatorWords.place()}
        textScale={props.layout().textScale}
        selected={separatorWords.selected()}
        onSelect={separatorWords.choose}
      >
        <Separator shape={shapes().separator} oilLayer_m={oilLayer()} sinks={sinks()} />
      </PartButton>
      <PartButton
        id="receiver"
        boxes={[jugBox(shapes().jug)]}
        words={receiverWords.words}
        place={receiverWords.place()}
        textScale={props.layout().textScale}
        selected={receiverWords.selected()}
        onSelect={receiverWords.choose}
      >
        <Jug shape={shapes().jug} hydrosol_kg={hydrosol()} />
      </PartButton>
    </>
  );
}
