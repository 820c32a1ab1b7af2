/** The hot end: heat source, boiler, pot, charge and swan neck. */
import { createMemo, Show } from 'solid-js';
import { boxAround, boxesAlong, bottom, pathThrough, subdivide } from '../geometry/shapes.ts';
import type { VesselShape } from '../geometry/vessel-shape.ts';
import { Charge } from './Charge.tsx';
import { HeatSource } from './HeatSource.tsx';
import { Neck } from './Neck.tsx';
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
import { VesselBody, VesselLid } from './Vessel.tsx';

/** Steam rate at which the surface is drawn liveliest, kg/s. */
const LIVELY = 0.0008;

export function PotParts(props: PartContext) {
  const shapes = () => props.layout().shapes;
  const state = () => props.state();
  const heatWords = createPartButton(props, 'heat');
  const potWords = createPartButton(props, 'pot');
  const boilerWords = createPartButton(props, 'boiler');
  const chargeWords = createPartButton(props, 'charge');
  const neckWords = createPartButton(props, 'neck');
  const inWater = () => shapes().heat.rod.length > 0;
  const depth = createQuantised(
    () => state()?.potDepth_m ?? (props.layout().sizes.boiler ?? props.layout().sizes.pot).depth_m,
    LEVEL_STEP,
  );
  const boil = createQuantised(() => Math.min(1, (state()?.steam_kg_s ?? 0) / LIVELY), 0.05);
  const waterWarmth = createQuantised(
    () => warmthOf(state()?.potTemperature_K ?? props.scenario().pot.waterTemperature_K),
    WARMTH_STEP,
  );
  const heatShare = createQuantised(() => state()?.heatShare ?? 0, 0.02);
  const front = createQuantised(() => state()?.frontHeight_m ?? 0, LEVEL_STEP);
  const waterAlarm = createMemo(() => (state()?.alarms.potDry ? 'dry' : state()?.alarms.potLow ? 'low' : 'none'));
  const pressure = createMemo(() => state()?.alarms.pressure ?? false);
  const vesselBox = (vessel: VesselShape) => ({
    ...vessel.outer,
    y: vessel.lidTop,
    height: bottom(vessel.outer) - vessel.lidTop,
  });
  const surfaceY = () => bottom(shapes().pot.inner) - depth() * props.layout().pxPerMetre;
  const warmth = createQuantisedList(() => {
    const now = state();
    const cold = props.scenario().site.airTemperature_K;
    if (!now) return [];
    const boilK = Math.max(now.vapourTemperature_K, 350);
    return now.bedTemperature_K.map((temperature) => Math.min(1, Math.max(0, (temperature - cold) / (boilK - cold))));
  }, 0.02);
  const neckBoxes = createMemo(() => {
    const { neck } = shapes();
    return boxesAlong(subdivide(neck.run, 40), neck.width + 8);
  });
  const neckRing = createMemo(() =>
    boxAround(
      shapes().neck.midRun.x,
      shapes().neck.midRun.y - shapes().neck.width / 2 - 4,
      60,
      shapes().neck.width + 8,
    ),
  );

  const heat = () => (
    <PartButton
      id="heat"
      boxes={[shapes().heat.body]}
      words={heatWords.words}
      place={heatWords.place()}
      textScale={props.layout().textScale}
      selected={heatWords.selected()}
      onSelect={heatWords.choose}
    >
      <HeatSource shape={shapes().heat} share={heatShare()} />
    </PartButton>
  );

  return (
    <>
      <Show when={!inWater()}>{heat()}</Show>
      <Show when={shapes().boiler}>
        {(boiler) => (
          <PartButton
            id="boiler"
            boxes={[vesselBox(boiler())]}
            words={boilerWords.words}
            place={boilerWords.place()}
            textScale={props.layout().textScale}
            selected={boilerWords.selected()}
            onSelect={boilerWords.choose}
          >
            <VesselBody
              shape={boiler()}
              pxPerMetre={props.layout().pxPerMetre}
              depth_m={depth()}
              boil={boil()}
              warmth={waterWarmth()}
              waterAlarm={waterAlarm()}
            />
            <VesselLid shape={boiler()} pressureAlarm={pressure()} />
          </PartButton>
        )}
      </Show>
      <PartButton
        id="pot"
        boxes={[vesselBox(shapes().pot)]}
        words={potWords.words}
        place={potWords.place()}
        textScale={props.layout().textScale}
        selected={potWords.selected()}
        onSelect={potWords.choose}
      >
        <VesselBody
          shape={shapes().pot}
          pxPerMetre={props.layout().pxPerMetre}
          depth_m={shapes().boiler ? null : depth()}
          boil={boil()}
          warmth={waterWarmth()}
          waterAlarm={shapes().boiler ? 'none' : waterAlarm()}
        />
        <VesselLid shape={shapes().pot} pressureAlarm={pressure()} />
        <Show when={shapes().steamPipe.length > 0}>
          <path class="drawing-tube-wall" d={pathThrough(shapes().steamPipe)} style={{ 'stroke-width': '10' }} />
          <path class="drawing-tube-bore" d={pathThrough(shapes().steamPipe)} style={{ 'stroke-width': '7' }} />
          <path class="drawing-leg-wall" d={pathThrough(shapes().bedDrain)} style={{ 'stroke-width': '5' }} />
          <path class="drawing-leg-bore" d={pathThrough(shapes().bedDrain)} style={{ 'stroke-width': '3' }} />
        </Show>
      </PartButton>
      <Show when={inWater()}>{heat()}</Show>
      <PartButton
        id="charge"
        boxes={[shapes().bed.place]}
        words={chargeWords.words}
        place={chargeWords.place()}
        textScale={props.layout().textScale}
        selected={chargeWords.selected()}
        onSelect={chargeWords.choose}
      >
        <Charge
          shape={shapes().bed}
          pxPerMetre={props.layout().pxPerMetre}
          front_m={front()}
          warmth={warmth()}
          surfaceY={shapes().bed.submerged ? surfaceY() : null}
        />
      </PartButton>
      <PartButton
        id="neck"
        boxes={[neckRing(), ...neckBoxes()]}
        words={neckWords.words}
        place={neckWords.place()}
        textScale={props.layout().textScale}
        selected={neckWords.selected()}
        onSelect={neckWords.choose}
      >
        <Neck shape={shapes().neck} />
      </PartButton>
    </>
  );
}
