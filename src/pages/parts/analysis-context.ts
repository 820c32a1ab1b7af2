/** What the answers are given of the bench: the still, its run, how to show them, and the ways to change them. */
import type { Accessor } from 'solid-js';
import type { Reader, RunResult, Scenario, UnitSystem } from '../../../sim/index.ts';

export interface AnalysisContext {
  /** The scenario as it stands, perhaps ahead of its run. */
  readonly scenario: Accessor<Scenario>;
  /** The last run that went through; the answers are for its scenario. */
  readonly result: Accessor<RunResult>;
  readonly units: Accessor<UnitSystem>;
  /** Who reads what is said, in which units and currency. */
  readonly reader: Accessor<Reader>;
  /** Whatever the page's colours depend on. */
  readonly theme: Accessor<unknown>;
  /** Changes one field; changes that share a `gesture` are undone together. */
  change(path: string, value: unknown, gesture?: string): void;
  changeMany(values: Readonly<Record<string, unknown>>, gesture?: string): void;
  /** Puts another scenario on the bench; resolves with what is wrong with it, in words, or null. */
  load(scenario: unknown): Promise<string | null>;
}
