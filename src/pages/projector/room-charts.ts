/** What the chart of the projector view can show: one quantity over time, on axes that tell nothing of the run. */
import type { CurveQuantity, RunResult } from '../../../sim/index.ts';
import type { PlainAxes } from '../../charts/plain/plain-scale.ts';
import type { PlainCurve } from '../../charts/plain/PlainPlot.tsx';

export const ROOM_CHARTS = ['oil', 'distillate', 'pot', 'water'] as const;
export type RoomChartId = (typeof ROOM_CHARTS)[number];

export const ROOM_CHART_NAMES: Readonly<Record<RoomChartId, string>> = {
  oil: 'Oil collected',
  distillate: 'Distillate',
  pot: 'Water in the pot',
  water: 'Cooling water out',
};

const COLUMNS = {
  oil: 'oilCollected_kg',
  distillate: 'condensateTemperature_K',
  pot: 'potTemperature_K',
  water: 'coolantOut_K',
} as const;

/** Temperatures at a still that boils water. */
const TEMPERATURES = { min: 273.15, max: 383.15, quantity: 'temperature' } as const;
/** An oil of which the density is not known. */
const USUAL_DENSITY = 900;
const MOST_POINTS = 300;

export interface RoomChart {
  readonly axes: PlainAxes & { readonly quantity: CurveQuantity };
  readonly curve: PlainCurve;
}

export function roomChart(id: RoomChartId, result: RunResult, end_s: number): RoomChart {
  const { record, summary } = result;
  const density = summary.oilDensity_kg_m3 ?? USUAL_DENSITY;
  const scale = id === 'oil' ? 1 / density : 1;
  const every = Math.max(1, Math.ceil(record.rows / MOST_POINTS));
  const at_s: number[] = [];
  const values: (number | null)[] = [];
  for (let row = 0; row < record.rows; row += every) {
    at_s.push(record.columns.time_s[row] as number);
    const flows = id !== 'distillate' || (record.columns.condensateRate_kg_s[row] as number) > 0;
    values.push(flows ? scale * (record.columns[COLUMNS[id]][row] as number) : null);
  }
  return {
    // All the oil in the plant: more cannot come, whatever the run does.
    axes:
      id === 'oil'
        ? { until_s: end_s, min: 0, max: Math.max(1e-6, summary.oilInCharge_kg / density), quantity: 'oilVolume' }
        : { until_s: end_s, ...TEMPERATURES },
    curve: { name: ROOM_CHART_NAMES[id], at_s, values, class: 'is-run' },
  };
}
