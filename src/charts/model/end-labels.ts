/** Names beside the ends of the lines: as near to the end as the others allow. */
import type { Measure } from './measure.ts';
import type { Ink } from './palette.ts';
import { lastValue, pixelOf, type PreparedChart, type PreparedLane } from './prepare.ts';
import { hasNames } from './layout.ts';
import { spreadLabels } from './spread-labels.ts';
import { stackTops } from './stack.ts';

export interface EndLabel {
  /** Key of the series or derived reading. */
  readonly key: string;
  readonly label: string;
  readonly says: string;
  readonly measure: Measure;
  readonly ink: Ink;
  /** Layers of a stack are told apart by a patch of their colour. */
  readonly patch: boolean;
  /** Pixels right of the plot's left edge where the line ends. */
  readonly endX: number;
  /** Pixel where the line ends, and where there was room for the label; `null` when there was none. */
  readonly wantedY: number;
  readonly y: number | null;
}

export const endLabels = (prepared: PreparedChart): readonly EndLabel[] =>
  prepared.lanes.flatMap((lane, index) => {
    const wanted = wantedLabels(prepared, lane);
    const box = prepared.layout.lanes[index];
    if (!box) return [];
    if (!hasNames(prepared.layout)) return wanted.map(({ rank: _, ...label }) => ({ ...label, y: null }));
    const slack = prepared.layout.line / 2;
    const places = spreadLabels(
      wanted.map(({ wantedY, rank }) => ({ at: wantedY, size: prepared.layout.line, rank })),
      box.top - slack,
      box.top + box.height + slack,
    );
    return wanted.map(({ rank: _, ...label }, index) => ({ ...label, y: places[index] ?? null }));
  });

type WantedEndLabel = Omit<EndLabel, 'y'> & { readonly rank: number };

function wantedLabels(prepared: PreparedChart, axis: PreparedLane): readonly WantedEndLabel[] {
  const { lane } = axis;
  const labelled = lane.series.filter(({ run, labelled: how }) => run === 0 && how === 'end');
  const tops = lane.kind === 'stack' ? stackTops(labelled) : [];
  const own = labelled.map((series, index): WantedEndLabel => {
    const top = tops[index]?.at(-1);
    const end = top === undefined ? lastValue(series) : top - lastValue(series) / 2;
    const at = series.anchor ?? end;
    const isEmpty = !Number.isFinite(at);
    return {
      key: series.key,
      label: series.label,
      says: series.says,
      measure: series.measure,
      ink: series.ink,
      patch: lane.kind === 'stack',
      endX: isEmpty || series.anchor !== undefined ? Infinity : pixelOf(prepared, series.xs.at(-1) ?? Infinity),
      wantedY: isEmpty ? axis.y.offset + axis.y.slope * axis.domain[0] : axis.yOf(at),
      rank: lane.kind === 'stack' ? lastValue(series) : isEmpty ? -1 : series.weight,
    };
  });
  const derived = prepared.chart.derived
    .filter(({ lane: key }) => key === lane.key)
    .flatMap((reading): readonly WantedEndLabel[] => {
      const minuend = lane.series.find(({ key, run }) => key === reading.minuend && run === 0);
      const subtrahend = lane.series.find(({ key, run }) => key === reading.subtrahend && run === 0);
      if (!minuend || !subtrahend) return [];
      return [
        {
          key: reading.key,
          label: reading.label,
          says: reading.says,
          measure: reading.measure,
          ink: 'ink-muted',
          patch: false,
          endX: Infinity,
          wantedY: axis.yOf((lastValue(minuend) + lastValue(subtrahend)) / 2),
          rank: 0,
        },
      ];
    });
  return [...own, ...derived];
}
