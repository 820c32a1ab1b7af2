/** The colours of a temperature field with their ends in words. */
import { For } from 'solid-js';
import type { StripLane } from '../model/chart.ts';
import type { ChartLayout } from '../model/layout.ts';
import { shownUnit, shownWords, type UnitSystem } from '../model/measure.ts';
import { heatColours, type Palette } from '../model/palette.ts';

export interface HeatKeyProps {
  readonly lane: StripLane;
  readonly layout: ChartLayout;
  readonly palette: Palette;
  readonly units: UnitSystem;
}

const STEPS = 12;

export function HeatKey(props: HeatKeyProps) {
  const words = (value: number) => {
    const unit = shownUnit(props.lane.valueMeasure, props.units);
    return shownWords(unit.fromSI(value), 0, unit.label);
  };
  return (
    <p class="chart-heat-key" style={{ right: `${props.layout.width - props.layout.right}px` }}>
      {words(props.lane.valueDomain[0])}
      <span class="chart-heat-ramp" aria-hidden="true">
        <For each={heatColours(props.palette, STEPS)}>{(colour) => <span style={{ background: colour }} />}</For>
      </span>
      {words(props.lane.valueDomain[1])}
    </p>
  );
}
