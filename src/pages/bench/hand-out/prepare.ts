/** What the hand-out needs beside the run: a link to the still, and the likely runs that give its ranges. */
import { createSignal, type Accessor } from 'solid-js';
import {
  summariseEnsemble,
  USUAL_SEED,
  type EnsembleSummary,
  type MemberResult,
  type Scenario,
} from '../../../../sim/index.ts';
import { shareHash } from '../../../state/share-link.ts';
import { workerPool } from '../../../workers/start-pool.ts';

/** Enough for a range of 8 in 10, few enough to wait for. */
const LIKELY_RUNS = 30;
const RUNS_A_TASK = 3;

interface For<T> {
  readonly scenario: Scenario;
  readonly found: T;
}

export interface Prepared {
  /** Address that opens the scenario, once it is known. */
  link(scenario: Scenario): string | null;
  likely(scenario: Scenario): EnsembleSummary | null;
  readonly working: Accessor<boolean>;
  findLink(scenario: Scenario): Promise<void>;
  /** Resolves when the ranges are there, or cannot be had. */
  findLikely(scenario: Scenario): Promise<void>;
}

async function likelyRuns(scenario: Scenario): Promise<EnsembleSummary> {
  const pool = workerPool();
  const design = await pool.ask('design', [scenario, LIKELY_RUNS, USUAL_SEED, {}]);
  const rows = design.rows.flatMap(({ kind }, index) => (kind === 'swing' ? [] : [index]));
  const found: MemberResult[] = [];
  const tasks = Array.from({ length: Math.ceil(rows.length / RUNS_A_TASK) }, (_, task) =>
    rows.slice(task * RUNS_A_TASK, (task + 1) * RUNS_A_TASK),
  );
  await Promise.all(tasks.map(async (part) => found.push(...(await pool.ask('members', [design, part])))));
  return summariseEnsemble(design, found);
}

export function createPrepared(): Prepared {
  const [link, setLink] = createSignal<For<string> | null>(null);
  const [likely, setLikely] = createSignal<For<EnsembleSummary> | null>(null);
  const [working, setWorking] = createSignal(false);
  const of = <T>(kept: For<T> | null, scenario: Scenario): T | null =>
    kept?.scenario === scenario ? kept.found : null;
  return {
    link: (scenario) => of(link(), scenario),
    likely: (scenario) => of(likely(), scenario),
    working,
    findLink: async (scenario) => {
      const found = new URL(await shareHash(scenario), location.href).href;
      setLink({ scenario, found });
    },
    findLikely: async (scenario) => {
      if (of(likely(), scenario)) return;
      setWorking(true);
      try {
        const found = await likelyRuns(scenario);
        setLikely({ scenario, found });
      } catch {
        setLikely(null);
      } finally {
        setWorking(false);
      }
    },
  };
}
