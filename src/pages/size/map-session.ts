/** Works out the picture's points: a coarse grid first, so that something is seen at once, then finer ones and the edge. */
import { createSignal, type Accessor } from 'solid-js';
import type { Scenario } from '../../../sim/index.ts';
import { createBackgroundJob } from '../../state/background-job.ts';
import type { Priority, WorkerPool } from '../../workers/pool.ts';
import type { MapDetail, MapNode, OutletReading } from '../../workers/condenser-map.ts';
import { changesOf, nodeAt, placeOf, placesOf, STRIDES, type MapBounds, type MapField } from './map-grid.ts';

export interface MapSession {
  /** As fine as it has become; `null` before the first grid is whole. */
  readonly field: Accessor<MapField | null>;
  /** The same of the run that decides for nine runs of ten, on a coarser grid; `null` until it is known. */
  readonly doubt: Accessor<MapField | null>;
  readonly running: Accessor<boolean>;
  readonly problem: Accessor<string | null>;
  start(scenario: Scenario, bounds: MapBounds): void;
  /** Works out `doubt`, in the place of an earlier one. */
  startDoubt(scenario: Scenario, bounds: MapBounds): void;
  stop(): void;
}

const POINTS_A_TASK = [3, 4, 6] as const;
/** Beyond the first picture the lengths come first, and before the last points the tubes of the table. */
const PRIORITY = ['high', 'normal', 'low'] as const;
/** Of the run that decides: its edge is smooth, so fewer points do. */
const DOUBT_STRIDE = 2;
const DOUBT_POINTS = 6;
/** Halvings by which the edge of the region where vapour escapes is found. */
const HALVINGS = 3;

export function createMapSession(pool: WorkerPool): MapSession {
  const [field, setField] = createSignal<MapField | null>(null);
  const [doubt, setDoubt] = createSignal<MapField | null>(null);
  const job = createBackgroundJob();
  const doubtJob = createBackgroundJob();

  const work = async (scenario: Scenario, bounds: MapBounds, signal: AbortSignal): Promise<void> => {
    let readings = new Map<number, OutletReading>();
    const ask = (nodes: readonly MapNode[], priority: Priority, detail: MapDetail = 'fine') =>
      pool.ask('outlets', [scenario, bounds.axis, nodes, detail], { signal, priority });
    for (const [stage, stride] of STRIDES.entries()) {
      // The first picture is rough, so that it comes at once; the next is reckoned anew.
      const detail = stage === 0 ? 'rough' : 'fine';
      if (stage === 1) readings = new Map();
      const places = placesOf(stride, readings);
      const size = POINTS_A_TASK[stage] ?? 4;
      const tasks: Promise<void>[] = [];
      for (let from = 0; from < places.length; from += size) {
        const some = places.slice(from, from + size);
        const nodes = some.map(([column, row]) => nodeAt(bounds, column, row));
        tasks.push(
          ask(nodes, PRIORITY[stage] ?? 'normal', detail).then((found) => {
            some.forEach(([column, row], index) => {
              const reading = found[index];
              if (reading) readings.set(placeOf(column, row), reading);
            });
          }),
        );
      }
      await Promise.all(tasks);
      setField({ bounds, stride, readings: new Map(readings), edges: new Map() });
    }
    await findEdges(bounds, readings, ask);
  };

  const workDoubt = async (scenario: Scenario, bounds: MapBounds, signal: AbortSignal): Promise<void> => {
    const readings = new Map<number, OutletReading>();
    const places = placesOf(DOUBT_STRIDE, readings);
    const tasks: Promise<void>[] = [];
    for (let from = 0; from < places.length; from += DOUBT_POINTS) {
      const some = places.slice(from, from + DOUBT_POINTS);
      const nodes = some.map(([column, row]) => nodeAt(bounds, column, row));
      tasks.push(
        pool.ask('outlets', [scenario, bounds.axis, nodes, 'fine'], { signal, priority: 'low' }).then((found) => {
          some.forEach(([column, row], index) => {
            const reading = found[index];
            if (reading) readings.set(placeOf(column, row), reading);
          });
        }),
      );
    }
    await Promise.all(tasks);
    setDoubt({ bounds, stride: DOUBT_STRIDE, readings, edges: new Map() });
  };

  const findEdges = async (
    bounds: MapBounds,
    readings: ReadonlyMap<number, OutletReading>,
    ask: (nodes: readonly MapNode[], priority: Priority) => Promise<readonly OutletReading[]>,
  ) => {
    const whole: MapField = { bounds, stride: 1, readings, edges: new Map() };
    const edges = new Map<number, number>();
    await Promise.all(
      changesOf(whole).map(async ({ column, fails_m, holds_m }) => {
        let [low, high] = [fails_m, holds_m];
        for (let halving = 0; halving < HALVINGS; halving++) {
          const middle = (low + high) / 2;
          const [reading] = await ask([{ x: nodeAt(bounds, column, 0).x, length_m: middle }], 'low');
          if (reading?.fails === true) low = middle;
          else high = middle;
        }
        edges.set(column, (low + high) / 2);
      }),
    );
    setField({ ...whole, edges });
  };

  return {
    field,
    doubt,
    running: job.running,
    problem: job.problem,
    stop: () => {
      job.stop();
      doubtJob.stop();
    },
    start: (scenario, bounds) => {
      doubtJob.stop();
      setDoubt(null);
      job.start((signal) => work(scenario, bounds, signal));
    },
    startDoubt: (scenario, bounds) => doubtJob.start((signal) => workDoubt(scenario, bounds, signal)),
  };
}
