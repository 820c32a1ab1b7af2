/** The separator at a moment of a run: what stands in it, how fast water and drops move, and what leaves. */
import { tableLiquidDensity } from '../fluids/water-table.ts';
import { circleArea } from '../geometry/cylinder.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { overflowRate } from '../transfer/settling.ts';
import { captureByDropSize, type DropCapture } from './drop-capture.ts';
import { columnAt, type RunRecord } from './record.ts';

export interface SeparatorMoment {
  readonly temperature_K: number;
  readonly layer_m: number;
  readonly oil_kg: number;
  /** Of the layer. */
  readonly oilRate_kg_s: number;
  /** Water that flows through; the little oil it keeps is counted with it. */
  readonly water_kg_s: number;
  /** Speed of the water away from the layer, with the allowance for turbulence: slower drops are carried off. */
  readonly overflow_m_s: number;
  readonly capture: DropCapture;
  /** Speed through the water towards the layer of each size class of `capture`; zero while no drop comes. */
  readonly speed_m_s: Float64Array;
}

export function separatorAt(scenario: Scenario, record: RunRecord, time_s: number): SeparatorMoment {
  const { separator } = scenario;
  const capture = captureByDropSize(scenario, record, time_s);
  const temperature_K = columnAt(record, 'separatorTemperature_K', time_s);
  const oilRate_kg_s = columnAt(record, 'oilRate_kg_s', time_s);
  const water_kg_s = Math.max(0, columnAt(record, 'condensateRate_kg_s', time_s) - oilRate_kg_s);
  const flow = (water_kg_s / tableLiquidDensity(temperature_K)) * separator.turbulenceFactor;
  const overflow_m_s = overflowRate(flow, circleArea(separator.bore_m));
  const { cutSize_m } = capture;
  return {
    temperature_K,
    layer_m: columnAt(record, 'oilLayer_m', time_s),
    oil_kg: columnAt(record, 'oilCollected_kg', time_s),
    oilRate_kg_s,
    water_kg_s,
    overflow_m_s,
    capture,
    // The drop of the cut size keeps up with the water; speed goes with the square of the size.
    speed_m_s: capture.diameter_m.map((d) => (cutSize_m > 0 ? overflow_m_s * (d / cutSize_m) ** 2 : 0)),
  };
}
