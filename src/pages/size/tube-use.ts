/**
 * Puts a tube of the table on the still. The length in the table rests on the runs that decide one's own tube, and in
 * another tube other runs may decide: so the tube is sized for itself first, and goes on the still with that length.
 */
import { createSignal, onCleanup, type Accessor } from 'solid-js';
import { isCoil, withTube, type Scenario, type Tube, type TubeVerdict } from '../../../sim/index.ts';
import { inCentimetres, sizeQuestion } from '../../state/length-that-holds.ts';
import { errorMessage, wasGivenUp } from '../../workers/errors.ts';
import type { WorkerPool } from '../../workers/pool.ts';

/** Why a tube did not go on the still: no length of it is enough, or it could not be worked out. */
export type NotUsed =
  { readonly tube: Tube; readonly verdict: TubeVerdict } | { readonly tube: Tube; readonly problem: string };

export interface TubeUse {
  /** The tube that is being sized; `null` when none is. */
  readonly sizing: Accessor<Tube | null>;
  readonly notUsed: Accessor<NotUsed | null>;
  use(tube: Tube): void;
}

/**
 * @param asked the still that tubes are sized for, and the margin on the length
 * @param changeMany changes fields of the still as one
 */
export function createTubeUse(
  pool: Pick<WorkerPool, 'ask'>,
  asked: () => { readonly scenario: Scenario; readonly margin: number },
  changeMany: (changes: Readonly<Record<string, unknown>>) => void,
): TubeUse {
  const [sizing, setSizing] = createSignal<Tube | null>(null);
  const [notUsed, setNotUsed] = createSignal<NotUsed | null>(null);
  let latest: AbortController | null = null;
  onCleanup(() => latest?.abort());

  /** What happened to the tube, or `null` when it is on the still. */
  const put = async (tube: Tube, signal: AbortSignal): Promise<NotUsed | null> => {
    const { scenario, margin } = asked();
    const changed = withTube(scenario, tube);
    if (!('scenario' in changed)) return { tube, verdict: changed.verdict };
    const { lengthWithMargin_m, verdict } = await pool.ask('sizeOwnTube', [sizeQuestion(changed.scenario), margin], {
      signal,
      priority: 'high',
      remember: true,
    });
    const now = asked();
    // The still or the margin changed meanwhile: the length would be that of another question.
    if (now.margin !== margin || JSON.stringify(now.scenario) !== JSON.stringify(scenario)) return put(tube, signal);
    if (lengthWithMargin_m === null) return { tube, verdict };
    const { condenser } = changed.scenario;
    changeMany({
      'condenser.insideDiameter_m': condenser.insideDiameter_m,
      'condenser.outsideDiameter_m': condenser.outsideDiameter_m,
      'condenser.material': condenser.material,
      'condenser.length_m': inCentimetres(lengthWithMargin_m),
      ...(isCoil(condenser) ? { 'condenser.coilPitch_m': condenser.coilPitch_m } : {}),
    });
    return null;
  };

  return {
    sizing,
    notUsed,
    use: (tube) => {
      latest?.abort();
      const controller = new AbortController();
      latest = controller;
      setNotUsed(null);
      setSizing(tube);
      const done = (outcome: NotUsed | null) => {
        if (latest !== controller) return;
        setSizing(null);
        setNotUsed(outcome);
      };
      put(tube, controller.signal).then(done, (reason: unknown) => {
        if (!wasGivenUp(reason)) done({ tube, problem: errorMessage(reason) });
      });
    },
  };
}
