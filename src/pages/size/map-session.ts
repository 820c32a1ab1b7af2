/** Works out the picture's points: a coarse grid first, so that something is seen at once, then finer ones and the edge. */
import { createSignal, type Accessor } from 'solid-js';
import type { Scenario } from '../../../sim/index.ts';
import type { WorkerPool } from '../../workers/pool.ts';
import type { MapDetail, MapNode, OutletReading } from '../../workers/condenser-map.ts';
import { changesOf, nodeAt, placeOf, placesOf, STRIDES, type MapBounds, type MapField } from './map-grid.ts';
import { errorMessage, wasGivenUp } from '../../workers/errors.ts';

export interface MapSession {
  /** As fine as it has become; `null` before the first grid is whole. */
  readonly field: Accessor<MapField | null>;
  readonly running: Accessor<boolean>;
  readonly problem: Accessor<string | null>;
  start(scenario: Scenario, bounds: MapBounds): void;
  stop(): void;
}

const POINTS_A_TASK = [3, 4, 6] as const;
const URGENCY = [0, 2, 4] as const;
/** Halvings by which the edge of the region where vapour escapes is found. */
const HALVINGS = 3;

export function createMapSession(pool: WorkerPool): MapSession {
  const [field, setField] = createSignal<MapField | null>(null);
  const [running, setRunning] = createSignal(false);
  const [problem, setProblem] = createSignal<string | null>(null);
  let latest: AbortController | null = null;

  const stop = () => {
    latest?.abort();
    latest = null;
    setRunning(false);
  };

  const work = async (scenario: Scenario, bounds: MapBounds, controller: AbortController): Promise<void> => {
    let readings = new Map<number, OutletReading>();
    const ask = (nodes: readonly MapNode[], urgency: number, detail: MapDetail = 'fine') =>
      pool.ask('outlets', [scenario, bounds.axis, nodes, detail], { signal: controller.signal, urgency });
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
          ask(nodes, URGENCY[stage] ?? 4, detail).then((found) => {
            some.forEach(([column, row], index) => {
              const reading = found[index];
              if (reading) readings.set(placeOf(column, row), reading);
            });
          }),
        );
      }
      await Promise.all(tasks);
      if (latest !== controller) return;
      setField({ bounds, stride, readings: new Map(readings), edges: new Map() });
    }
    await findEdges(bounds, readings, ask, controller);
    if (latest === controller) stop();
  };

  const findEdges = async (
    bounds: MapBounds,
    readings: ReadonlyMap<number, OutletReading>,
    ask: (nodes: readonly MapNode[], urgency: number) => Promise<readonly OutletReading[]>,
    controller: AbortController,
  ) => {
    const whole: MapField = { bounds, stride: 1, readings, edges: new Map() };
    const edges = new Map<number, number>();
    await Promise.all(
      changesOf(whole).map(async ({ column, fails_m, holds_m }) => {
        let [low, high] = [fails_m, holds_m];
        for (let halving = 0; halving < HALVINGS; halving++) {
          const middle = (low + high) / 2;
          const [reading] = await ask([{ x: nodeAt(bounds, column, 0).x, length_m: middle }], 4);
          if (reading?.fails === true) low = middle;
          else high = middle;
        }
        edges.set(column, (low + high) / 2);
      }),
    );
    if (latest === controller) setField({ ...whole, edges });
  };

  return {
    field,
    running,
    problem,
    stop,
    start: (scenario, bounds) => {
      stop();
      const controller = new AbortController();
      latest = controller;
      setProblem(null);
      setRunning(true);
      work(scenario, bounds, controller).catch((reason: unknown) => {
        if (wasGivenUp(reason) || latest !== controller) return;
        setProblem(errorMessage(reason));
        stop();
      });
    },
  };
}
